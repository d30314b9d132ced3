/** A ladder of evidence for the system of a bare number: the nearest rung that names one system decides. */
import type { System } from '../../sizes/model.ts';
import type { Mention } from '../model.ts';
import { headingsOf, labelsOf, type Scene } from '../scene.ts';
import { earlier, type Place } from '../sense/place.ts';
import { systemOf } from '../sense/systems.ts';
import { SETTING } from '../words/frames.ts';
import { type Board, dominant, holds, mentionsIn, systemsOf } from './board.ts';
import type { Frame } from './frame.ts';
import { suits } from './suits.ts';
import type { Bare } from './tokens.ts';

/** What a rung may look at. */
export interface Question {
  readonly board: Board;
  readonly place: Place;
  readonly bare: Bare;
  readonly frame: Frame;
  /** Mentions of this passage, chains included, in text order. */
  readonly known: readonly Mention[];
}

export interface Settled {
  readonly system: System;
  readonly rung: string;
}

type Rung = (question: Question) => readonly System[];

const sizedNoun: Rung = ({ place, bare }) => {
  const next = place.devices.find((hit) => hit.start >= place.span.end && hit.start - place.span.end < 18);
  if (!next || !/^[\s-](?:[a-z-]+\s){0,2}$/i.test(place.scene.passage.text.slice(place.span.end, next.start)))
    return [];
  if (next.means === 'catheter' && /^tub/.test(next.word)) return bare.decimals > 0 ? ['tube-id'] : [];
  return known(systemOf(next.means));
};

const sentenceMentions: Rung = ({ place, known }) => {
  const here = mentionsIn(known, place.sentence);
  const near = systemsOf(here);
  return near.length > 1 ? systemsOf(nearestTwo(here, place.span.start)) : near;
};

/** The nearest mention on each side. */
function nearestTwo(mentions: readonly Mention[], at: number): readonly Mention[] {
  const before = mentions.filter((one) => one.span.end <= at).at(-1);
  const after = mentions.find((one) => one.span.start >= at);
  return [before, after].filter((one): one is Mention => one !== undefined);
}

const earlierMentions: Rung = ({ place, known, bare }) => {
  const before = known.filter((one) => one.span.end <= place.sentence.start).slice(-6);
  const same = systemsOf(before.filter((one) => holds(one, bare.value)));
  return same.length === 1 ? same : systemsOf(before.slice(-3));
};

const sentenceDevices: Rung = ({ place }) =>
  unique(place.devices.flatMap((hit) => known(systemOf(hit.means))));

const earlierDevices: Rung = ({ place }) =>
  unique(earlier(place, place.scene.devices).flatMap((hit) => known(systemOf(hit.means)))).slice(0, 1);

const labels: Rung = ({ place, board }) => {
  const { around } = board;
  const at = (index: number | undefined): Scene | undefined => around.scenes[index ?? -1];
  const { header, row } = labelsOf(around, place.scene.passage);
  const list = place.scene.passage.list;
  return firstSet([row, header, at(list?.parent), at(list?.leadIn)], place);
};

const headings: Rung = ({ place, board }) =>
  firstSet(headingsOf(board.around, place.scene.passage).slice(0, 2), place);

/** Siblings of a list: the options of one question share their system. */
const siblings: Rung = ({ place, board, frame }) => {
  const list = place.scene.passage.list;
  if (!list || (frame !== 'alone' && frame !== 'option' && frame !== 'colour')) return [];
  const { index } = place.scene.passage;
  const near = [-1, 1, -2, 2, -3, 3].flatMap((step) => {
    const other = board.around.scenes[index + step]?.passage;
    return other?.list?.list === list.list ? (board.settled[other.index] ?? []) : [];
  });
  return systemsOf(near);
};

/** Passages just before, under the same heading: mentions first, then words that set a system. */
const passagesBefore: Rung = ({ place, board, bare }) => {
  const { passage } = place.scene;
  const same = systemsOf(recent(place, board, 8).filter((one) => holds(one, bare.value)));
  if (same.length === 1) return same;
  for (let back = 1; back <= 4; back++) {
    const scene = board.around.scenes[passage.index - back];
    if (!scene || scene.passage.path.join() !== passage.path.join() || scene.passage.cell) break;
    const systems = systemsOf(board.settled[scene.passage.index] ?? []).filter((system) =>
      suits(system, bare),
    );
    const set = systems.length > 0 ? systems : setting(scene);
    if (set.filter((system) => suits(system, bare)).length > 0) return set;
  }
  return [];
};

/** Mentions of the passages before under the same heading. */
function recent(place: Place, board: Board, most: number): readonly Mention[] {
  const { passage } = place.scene;
  const found: Mention[] = [];
  for (let back = 1; back <= most; back++) {
    const scene = board.around.scenes[passage.index - back];
    if (!scene || scene.passage.path.join() !== passage.path.join()) break;
    found.push(...(board.settled[scene.passage.index] ?? []));
  }
  return found;
}

const noteWide: Rung = ({ board }) => known(dominant(board));

const known = (system: System | undefined): readonly System[] => (system ? [system] : []);
const unique = <T>(all: readonly T[]): readonly T[] => [...new Set(all)];

/** Systems a scene sets by its words, else by its devices. */
function setting(scene: Scene): readonly System[] {
  const words = SETTING.filter(([, pattern]) => pattern.test(scene.passage.text)).map(([system]) => system);
  return words.length > 0 ? words : unique(scene.devices.flatMap((hit) => known(systemOf(hit.means))));
}

function firstSet(scenes: readonly (Scene | undefined)[], place: Place): readonly System[] {
  for (const scene of scenes) {
    const systems = scene && scene !== place.scene ? setting(scene) : [];
    if (systems.length > 0) return systems;
  }
  return [];
}

/** Rungs from near to far, and the frames in which each may be climbed. */
const LADDER: readonly (readonly [string, Rung, readonly Frame[] | 'any'])[] = [
  ['noun', sizedNoun, ['article', 'plural', 'handed', 'run', 'colour', 'colon', 'loose']],
  ['sentence', sentenceMentions, 'any'],
  ['siblings', siblings, ['alone', 'option', 'colour']],
  ['sentence-device', sentenceDevices, ['article', 'plural', 'run', 'colour', 'handed', 'option']],
  ['earlier', earlierMentions, ['article', 'plural', 'run', 'colour', 'handed', 'colon', 'option']],
  ['earlier-device', earlierDevices, ['article', 'plural', 'run', 'colour', 'colon', 'option']],
  ['label', labels, ['article', 'plural', 'run', 'colour', 'colon', 'option', 'alone']],
  ['before', passagesBefore, ['article', 'plural', 'run', 'colour', 'option', 'handed']],
  ['heading', headings, ['article', 'plural', 'run', 'colour', 'colon']],
  ['note', noteWide, ['run', 'colour', 'plural']],
];

/** The system that the context settles, with the rung that did. */
export function settle(question: Question): Settled | undefined {
  const { frame, bare, place } = question;
  for (const [rung, climb, frames] of LADDER) {
    if (frames !== 'any' && !frames.includes(frame)) continue;
    if (place.scene.passage.list && rung === 'before' && frame !== 'colour') continue;
    const systems = climb(question).filter((system) => suits(system, bare));
    if (systems.length === 1)
      return allowed(systems[0]!, question) ? { system: systems[0]!, rung } : undefined;
    if (systems.length > 1) return undefined;
  }
  return undefined;
}

/** Thread numbers and small number words need more than a context. */
function allowed(system: System, { bare, frame, place }: Question): boolean {
  if (bare.spoken && bare.value < 12 && system !== 'usp' && bare.decimals === 0) return false;
  if (system !== 'usp') return true;
  if (bare.spoken) return false;
  return (
    frame === 'alone' ||
    frame === 'option' ||
    bare.value === 0 ||
    /\b(?:thick|thin|heav|fin|strong|weak|stout|coarse|plain|whole|numbers?|sizes?|USP)/i.test(place.text)
  );
}
