/** The rungs of evidence for the system of a bare number: each names the systems that one kind of context speaks of. */
import type { Device, System } from '../../sizes/model.ts';
import type { Mention } from '../model.ts';
import { type Hit, headingsOf, labelsOf, type Scene, within } from '../scene.ts';
import { factsOf } from '../sense/note-facts.ts';
import { earlier, type Place } from '../sense/place.ts';
import { systemOf } from '../sense/systems.ts';
import { type Board, dominant, holds, mentionsIn, systemsOf } from './board.ts';
import type { Frame } from './frame.ts';
import { fellowOptions } from './options.ts';
import type { Question, Rung } from './question.ts';
import { asked, reply } from './replies.ts';
import { saidOnce } from './said-once.ts';
import { inTable, settingWords, WHICH_FLOWS, wordsBefore } from './setting.ts';
import { suits } from './suits.ts';
import { bracket, metricFigure, ofMetric, sentenceThread, threadRule } from './thread-rungs.ts';
import type { Bare } from './tokens.ts';

const sizedNoun: Rung = ({ place, bare }) => {
  const end = Math.max(place.span.end, bare.run.end);
  const next = place.devices.find((hit) => hit.start >= end && hit.start - end < 18);
  if (!next || !/^[\s-](?:[a-z-]+\s){0,2}$/i.test(place.scene.passage.text.slice(end, next.start))) return [];
  if (next.means === 'k-wire') return bare.decimals > 0 ? ['millimetre'] : [];
  if (next.means === 'catheter' && /^tub/.test(next.word))
    return bare.decimals > 0 || /^\scuffed\b/i.test(place.after) ? ['tube-id'] : [];
  return known(systemOf(next.means));
};

/** "Foley 16", "ETT 7", "the cannula's 16": the thing right before. */
const nounBefore: Rung = ({ place, bare, board }) => {
  const start = Math.min(bare.run.start, place.span.start);
  const hit = place.devices.find(({ end }) => end === start - 1 || end === start - "'s ".length);
  if (!hit || !/^(?:['’]s)?\s$/.test(place.scene.passage.text.slice(hit.end, start))) return [];
  // "The catheter's 14": one of those that have a number, where the note counts them in French.
  const catheters = isGeneral(hit) && hit.end < start - 1 && factsOf(board.around).french;
  return catheters ? ['french'] : isGeneral(hit) ? [] : known(systemOf(hit.means));
};

/** "Butterfly, 23.", "ETT (7.5)": the thing, and its size apart. */
const nounApart: Rung = ({ place }) => {
  const hit = place.devices.findLast((one) => one.end < place.span.start);
  if (!hit || isGeneral(hit)) return [];
  if (/(?:s|ae)$/.test(hit.word) && !WHAT_FOR.test(place.after)) return [];
  const between = place.scene.passage.text.slice(hit.end, place.span.start);
  return /^(?:,|:|\s?\(|\s[–—=-])\s?(?:size\s)?$/.test(between) &&
    (/^(?:\)|[.;]|$|\s*\n)|^,\s/.test(place.after) || (between.startsWith(':') && WHAT_FOR.test(place.after)))
    ? known(systemOf(hit.means))
    : [];
};

/** "The tubes are numbered by the inside diameter. A cat takes a 4": the sentence before says what the number is. */
const innerNumbered: Rung = ({ place: { scene, sentence, text } }) => {
  const before = scene.passage.text.slice(Math.max(0, sentence.start - 160), sentence.start);
  return INNER_NUMBERED.test(before) || INNER_NUMBERED.test(text) ? ['tube-id'] : [];
};
const INNER_NUMBERED =
  /\b(?:tubes?|ETTs?)\b[^.;:]{0,40}\b(?:numbered|sized|named|called|measured|go|number is)\b[^.;]{0,24}\b(?:inside|inner|internal)\b|\bETT number is mm inside\b/i;

/** "The purple cannula is the big trauma one, 14.": the thing of the sentence, and its size at the end. */
const endsWithSize: Rung = ({ place }) => {
  if (!ONE_APART.test(place.before) || !/^\s?(?:[.;]|$)/.test(place.after)) return [];
  const systems = ofDevices(place.devices);
  return systems.length === 1 ? systems : [];
};
const ONE_APART = /\b(?:the|an?|our|this|that)\s(?:[a-z-]+\s){0,3}ones?,\s$/i;

/** "NG tube: 12 for feeding, 16 for drainage". */
const WHAT_FOR = /^\sfor\s(?!(?:\d|the\s(?:week|month|day|year))\b)[a-z]/i;

/** "His catheter is a 14": no word says of which kind, and none that it lies in a vein. */
const catheterIs: Rung = ({ place, board }) =>
  CATHETER_IS.test(place.before) && !VENOUS.test(place.before) && factsOf(board.around).french
    ? ['french']
    : [];
const CATHETER_IS = /\bcatheter\s(?:[a-z]+\s){0,2}(?:is|was)\s(?:now\s|only\s|just\s)?an?\s$/i;
const VENOUS = /\b(?:iv|intravenous|peripheral|venous|vein|hand|arm|wrist|elbow|gauge)\b/i;

/** "a gauge of 18", "gauge (21)", "the French number is 14": the unit stands just before, a word between. */
const unitBefore: Rung = ({ place, bare }) => {
  const { text } = place.scene.passage;
  const start = Math.max(place.sentence.start, bare.run.start - 40);
  if (ON_SCALE.test(place.before)) return known(UNITS.french);
  const word = (UNIT_BEFORE.exec(text.slice(start, bare.run.start)) ??
    UNIT_RIGHT_BEFORE.exec(place.before))?.[1]?.toLowerCase();
  return word === undefined ? [] : known(UNITS[word.replace(/s$/, '')]);
};
const UNIT_BEFORE =
  /\b(gau?ges?|French|charri[eè]re|Ch|metric)(?:\s(?:number|size|figure|value)s?)?(?:\s(?:for|of)\s(?:an?\s|the\s)?(?:[0-9]-)?[0-9]\s[a-z]{3,16})?(?:\s?\(|\s?[:=]\s?|\s(?:is|of|was|are|reads|says)\s)$/i;
/** "On the French scale that would be 18", "in Charrière it is a 15". */
const ON_SCALE =
  /\b(?:on|in)\s(?:the\s)?(?:French|charri[eè]re)(?:\sscale)?,?\s(?:it|that|this|(?:the|that|this|your|our)\s[a-z-]{3,12})(?:['’]s|\s(?:is|makes?|comes\sto|gives?|would\sbe|will\sbe|reads|means|becomes?))\s(?:(?:about|roughly|only|just)\s)?(?:an?\s)?$/i;
/** "metric 4 is USP 1" within quotation marks, of which the last looks like inches. */
const UNIT_RIGHT_BEFORE = /\b(USP|metric|French|Fr|Ch|gauge)\s$/;
const UNITS: Readonly<Record<string, System>> = {
  usp: 'usp',
  fr: 'french',
  gauge: 'needle-gauge',
  gage: 'needle-gauge',
  french: 'french',
  charrière: 'french',
  charriere: 'french',
  ch: 'french',
  metric: 'ep-metric',
};

/** "12 → 4" where French is turned into millimetres: the second is a third of the first. */
export function isThird(place: Place, { value }: Bare): boolean {
  const first = /([0-9]{1,2})\s?(?:Fr\s?)?(?:→|->|=|⇒|\b(?:is|makes|gives))\s?$/.exec(
    place.before.slice(-18),
  )?.[1];
  const third = first !== undefined && Math.abs(Number(first) / 3 - value) < 0.06;
  return third && /\bmm\b|millimet|÷\s?3|\/\s?3|third/i.test(place.text);
}
const aThird: Rung = ({ place, bare }) => (isThird(place, bare) ? ['millimetre'] : []);

/** "so twelve is 4 mm": three times the millimetres. */
const thrice: Rung = ({ bare, place }) => {
  const mm =
    /^\s(?:is|=|equals|means|makes|measures|comes to)\s(?:about\s|roughly\s)?([0-9]{1,2}(?:\.[0-9]{1,2})?)\s?mm\b/i.exec(
      place.after,
    )?.[1];
  return mm !== undefined && Math.abs(bare.value / 3 - Number(mm)) < 0.1 ? ['french'] : [];
};

const sentenceMentions: Rung = ({ place, bare, known, settledBare }) => {
  const here = mentionsIn(known, place.sentence);
  const again = systemsOf(
    settledBare.slice(-6).filter((one) => one.span.start >= place.sentence.start && holds(one, bare.value)),
  );
  if (again.length === 1 && !here.some((one) => holds(one, bare.value))) return again;
  const near = systemsOf(here);
  if (near.length > 1) return systemsOf(nearestTwo(here, place.span.start));
  return near.length > 0
    ? near
    : systemsOf(settledBare.slice(-6).filter((one) => one.span.start >= place.sentence.start));
};

/** The nearest mention on each side. */
function nearestTwo(mentions: readonly Mention[], at: number): readonly Mention[] {
  const before = mentions.filter((one) => one.span.end <= at).at(-1);
  const after = mentions.find((one) => one.span.start >= at);
  return [before, after].filter((one): one is Mention => one !== undefined);
}

/** "25 mm for the shin, 45 mm for the arm. The 45 is longer": one of two lengths told before. */
const longer: Rung = ({ place, known, bare }) =>
  LONGER.test(place.after) &&
  mentionsIn(known, { start: Math.max(0, place.sentence.start - 300), end: place.sentence.start }).some(
    ({ sizes: [size] }) => size?.system === 'millimetre' && size.value === bare.value,
  )
    ? ['millimetre']
    : [];
const LONGER = /^\s(?:is|are|was)\s(?:the\s)?(?:just\s|only\s|simply\s|much\s)?(?:long|short)er\b/i;

const earlierMentions: Rung = ({ place, known, bare, settledBare }) => {
  const start = Math.max(0, place.sentence.start - 600);
  const before = [
    ...mentionsIn(known, { start, end: place.sentence.start }, 60).slice(-6),
    ...settledBare.slice(-3),
  ].sort((a, b) => a.span.start - b.span.start);
  const same = systemsOf(before.filter((one) => holds(one, bare.value)));
  return same.length === 1 ? same : systemsOf(before.slice(-3));
};

/** Sizes anywhere near in the passage, later ones too. */
const passageMentions: Rung = ({ place, known }) =>
  systemsOf(mentionsIn(known, { start: Math.max(0, place.span.start - 600), end: place.span.end + 600 }, 60));

/** Things named anywhere near in the passage, later ones too. */
/** "14.20 …", and on the next line "14.50 …": an entry of a log says nothing of the one before it. */
function entryEnd({ scene, span }: Place): number {
  const { text } = scene.passage;
  const next = text.slice(span.end, span.end + 300).search(/\n\s{0,3}[0-9]{1,2}[.:][0-9]{2}\s/);
  return next < 0 ? text.length : span.end + next;
}

const passageDevices: Rung = ({ place }) =>
  ofDevices(
    within(place.scene.devices, {
      start: Math.max(0, place.span.start - 300),
      end: Math.min(place.span.end + 300, entryEnd(place)),
    }).slice(0, 12),
  );

const sentenceDevices: Rung = ({ place, frame, known }) =>
  frame === 'handed' && mentionsIn(known, place.sentence).length > 0 ? [] : ofDevices(place.devices);

/** "an 18 in the right arm": where cannulas go. */
const site: Rung = ({ place }) =>
  SITE.test(place.after) || SITE_BEFORE.test(place.before) ? ['needle-gauge'] : [];
const SITE_BEFORE =
  /\bin(?:to)?\s(?:the|each|either|one|both|his|her|their)\s(?:(?:back\sof\sthe|right|left|other)\s)*(?:arms?|hands?|forearms?|antecubital|acf|veins?|foot)\b[a-z\s]{0,24}\s(?:an?|the)\s$/i;
const SITE =
  /^\s?(?:or\s(?:an?\s)?[0-9]{2}\s)?(?:(?:went|goes|sits|is|was)\s)?in(?:to)?\s(?:the|each|either|one|both|his|her|their|your|my|a|that)\s(?:(?:back\sof\s(?:the|his|her)|right|left|other|same|good|big|first|crook\sof\sthe)\s)*(?:arms?|hands?|forearms?|elbows?|wrists?|antecubital|acf|cubital|veins?|foot|cephalic|basilic)\b/i;

/** "7 for most women, 8 for most men", where tracheal tubes were just spoken of. */
const forPeople: Rung = ({ place, bare, board }) => {
  if (bare.value < 5 || bare.value > 9.5) return [];
  if (!PEOPLE.test(place.after) && !PEOPLE_BEFORE.test(place.before.slice(-48))) return [];
  const { index } = place.scene.passage;
  const near = [0, 1, 2, 3].flatMap((back) => board.around.scenes[index - back] ?? []);
  const scene = near.find((one) => one.kinds.size > 0);
  const halved = bare.decimals > 0 && place.devices.length === 0 && factsOf(board.around).tracheal;
  return halved || scene?.kinds.has('tracheal-tube') ? ['tube-id'] : [];
};
const PEOPLE_BEFORE =
  /\b(?:wom[ae]n|m[ae]n|males?|females?|lady|ladies|adults?|patients?|people|girls?|boys?)(?:\s(?:usually|often|mostly|generally|mainly))?(?:\s(?:an?|get|gets|take|takes|have|has|need|needs))*[:,]?\s["“]?$/i;
const PEOPLE =
  /^\sfor\s(?:(?:most|an?|the|all|many|adult|average|grown|small|large|big|tall|normal)\s){0,3}(?:wom[ae]n|m[ae]n|adults?|males?|females?|ladies|lady)\b/i;

const earlierDevices: Rung = ({ place, frame }) =>
  frame === 'handed' && !TURN_BY_TURN.test(place.before)
    ? []
    : ofDevices(earlier(place, place.scene.devices)).slice(0, 1);
/** "The first is 23 and the second is 22": of the two things named before. */
const TURN_BY_TURN = /\b(?:first|second|former|latter)(?:\sone)?\s(?:is|was)\s$/i;

/** "Gauge runs backwards. A 14 is …": a word for the system in the sentence before. */
const earlierWords: Rung = ({ place }) => wordsBefore(place.scene.passage.text, place.sentence.start);

/** Words such as "gauge" in the sentence. */
const sentenceWords: Rung = ({ place }) => settingWords(place.text);

/** "a catheter", "a tube" may be sized in several systems: last of all they stand for French. */
const isGeneral = (hit: Hit<Device>): boolean => hit.means === 'catheter';
const generalDevices: Rung = ({ place }) => (place.devices.some(isGeneral) ? ['french'] : []);

const ofDevices = (hits: readonly Hit<Device>[]): readonly System[] => ofKinds(hits.map((hit) => hit.means));
const ofKinds = (devices: readonly Device[]): readonly System[] =>
  unique(
    devices
      .filter((device) => device !== 'catheter')
      .flatMap((device) => (device === 'k-wire' ? ['millimetre' as const] : known(systemOf(device)))),
  );

/** A decimal in a note of tracheal tubes. */
const tubeDecimal: Rung = ({ place, bare, frame }) =>
  (bare.decimals > 0 || bare.run.values.some((value) => value % 1 === 0.5)) &&
  !(bare.spoken && /\b(?:says|reads|gives|ratio|factor|times|is)\s$/i.test(place.before)) &&
  (frame !== 'loose' ||
    place.scene.kinds.has('tracheal-tube') ||
    (bare.span.start === 0 && labelsOf(place.around, place.scene.passage).row?.kinds.has('tracheal-tube')) ||
    place.devices.some((hit) => /^tub/.test(hit.word)) ||
    /\b(?:inside|inner|internal) diameter\b/i.test(place.text)) &&
  (factsOf(place.around).tracheal ||
    (!bare.spoken && /\btubes?\b/i.test(place.scene.passage.text.slice(0, 2000))))
    ? ['tube-id']
    : [];

const labels: Rung = ({ place, board }) => {
  const { around } = board;
  const at = (index: number | undefined): Scene | undefined => around.scenes[index ?? -1];
  const { header, row } = labelsOf(around, place.scene.passage);
  if (row && sizedElsewhere(place, board)) return firstSet([header], place);
  const list = place.scene.passage.list;
  return firstSet([row, header, at(list?.parent), at(list?.leadIn)], place);
};

/** "| IV cannula | 18 G | green | 22 |": the thing of the row has its size in another cell, headed "Size" or standing first. */
function sizedElsewhere({ around, scene: { passage } }: Place, { settled }: Board): boolean {
  const { rows } = around.note.tables[passage.cell!.table]!;
  return rows[passage.cell!.row]!.slice(0, WIDEST_ROW).some(
    (index, column) =>
      index !== passage.index &&
      (settled[index] ?? []).some((one) => one.sizes.length > 0) &&
      (column === 0 || SIZE_HEAD.test(around.scenes[rows[0]![column] ?? -1]?.passage.text ?? '')),
  );
}
const WIDEST_ROW = 12;
const SIZE_HEAD =
  /^\W*(?:[a-z]+\s)?(?:sizes?|gau?ges?|G|French|Fr|Ch|USP|number|no\.?)(?:\s?\(.{1,12}\))?\W*$/i;

const heading: Rung = ({ place, board }) =>
  firstSet(headingsOf(board.around, place.scene.passage).slice(0, 1), place);
const title: Rung = ({ place, board }) =>
  firstSet(headingsOf(board.around, place.scene.passage).slice(1, 2), place);

/** "22 or 18, which pours faster?": asked of cannulas, in a note that has gauges. */
const whichFlows: Rung = ({ place, bare, board }) =>
  bare.run.values.every((value) => GAUGES.has(value)) &&
  factsOf(board.around).gauge &&
  WHICH_FLOWS.test(place.scene.passage.text.slice(Math.max(0, place.sentence.start - 60), place.sentence.end))
    ? ['needle-gauge']
    : [];

/** Talk of flow is talk of cannulas, in a note that has gauges. */
const flow: Rung = ({ place, board }) =>
  factsOf(board.around).gauge && (FLOW.test(lately(place)) || FLOW.test(turnBefore(place)))
    ? ['needle-gauge']
    : [];

/** The sentence and what stands shortly before it in the passage. */
const lately = ({ scene, sentence }: Place): string =>
  scene.passage.text.slice(Math.max(0, sentence.start - 100), sentence.end);

/** A short passage just before under the same heading that names no thing: the turn of talk that is answered. */
function turnBefore({ around, scene }: Place): string {
  const last = around.scenes[scene.passage.index - 1];
  if (!last || last.kinds.size > 0 || last.passage.kind === 'heading' || last.passage.text.length > 120)
    return '';
  return last.passage.path.join() === scene.passage.path.join() ? last.passage.text : '';
}
const FLOW =
  /\b(?:drips?|flows?|runs? like|runs? (?:faster|slower)|volume|(?:for|of|take) (?:the )?blood|contrast|bled|bleeds?|bleeding|ha?emorrhages?|resus\w*|transfus\w*|infus\w*|bolus\w*|saline|lit(?:er|re) (?:first|faster)|veins?)\b/i;

/** "14, 16, 18, 20": the gauges of the cannulas, where the note speaks more of gauge than of French. */
const gaugeRun: Rung = ({ bare, board }) => {
  const { values } = bare.run;
  const gauges = values.length >= 3 && values.length <= 12 && values.every((value) => GAUGES.has(value));
  return gauges && (board.counts.get('needle-gauge') ?? 0) > (board.counts.get('french') ?? 0)
    ? ['needle-gauge']
    : [];
};
const GAUGES: ReadonlySet<number> = new Set([14, 16, 17, 18, 20, 22, 24, 26]);

/** How far up and down a column a cell looks. */
const COLUMN = 12;

/** Sizes in the cell's column; beside it only thread. */
const cells: Rung = ({ place, board, frame }) => {
  const cell = place.scene.passage.cell;
  if (!cell || frame !== 'alone' || Number(place.scene.passage.text) === cell.row) return [];
  const { rows } = board.around.note.tables[cell.table]!;
  const start = Math.max(1, cell.row - COLUMN);
  const column = rows.slice(start, cell.row + COLUMN).map((row) => row[cell.column]!);
  const row = [-1, 1].map((step) => rows[cell.row]?.[cell.column + step] ?? -1);
  const down = systemsOf(column.flatMap((index) => board.settled[index] ?? []));
  return down.length > 0
    ? down
    : systemsOf(row.flatMap((index) => board.settled[index] ?? [])).filter((system) => system === 'usp');
};

const SIBLING: ReadonlySet<Frame> = new Set<Frame>(['alone', 'option', 'colour']);

/** Siblings of a list: the options of one question share their system. */
const siblings: Rung = ({ place, board, frame }) => {
  const list = place.scene.passage.list;
  if (!list || !(SIBLING.has(frame) || (frame === 'article' && /\b(?:the|that|this)\s$/i.test(place.before))))
    return [];
  const { index } = place.scene.passage;
  const near = [-1, 1, -2, 2, -3, 3].flatMap((step) => {
    const other = board.around.scenes[index + step]?.passage;
    return other?.list?.list === list.list ? board.settled[other.index]! : [];
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
    if (!scene || scene.passage.path.join() !== passage.path.join()) break;
    if (scene.passage.cell) return passage.cell ? [] : inTable(scene, board, bare);
    const systems = systemsOf(board.settled[scene.passage.index]!).filter((system) => suits(system, bare));
    const set = systems.length > 0 ? systems : setting(scene);
    if (set.filter((system) => suits(system, bare)).length > 0) return set;
  }
  return [];
};

/** A small table on the way counts for nothing. */
const MOST_CELLS = 24;

/** "3.5 Fr" in the table before: a decimal that was written in full there. */
export const writtenBefore = ({ place, board, bare }: Question, system: System): boolean =>
  bare.decimals > 0 &&
  recent(place, board, 8).some(
    (one) => one.decimals > 0 && one.sizes[0]?.system === system && holds(one, bare.value),
  );

/** Mentions of the passages before under the same heading. */
function recent(place: Place, board: Board, most: number): readonly Mention[] {
  const { passage } = place.scene;
  const found: Mention[] = [];
  const path = passage.path.join();
  for (let back = 1, cells = 0; back <= most + cells; back++) {
    const scene = board.around.scenes[passage.index - back];
    if (!scene || scene.passage.path.join() !== path) break;
    if (scene.passage.cell && !passage.cell && cells < MOST_CELLS) cells++;
    found.push(...board.settled[scene.passage.index]!);
  }
  return found;
}

const noteWide: Rung = ({ board }) => known(dominant(board));

const known = (system: System | undefined): readonly System[] => (system ? [system] : []);
const unique = <T>(all: readonly T[]): readonly T[] => [...new Set(all)];

/** Systems a scene sets by its words, else by its devices. */
export function setting(scene: Scene): readonly System[] {
  const words = settingWords(scene.brief);
  return words.length > 0 ? words : ofKinds([...scene.kinds]);
}

function firstSet(scenes: readonly (Scene | undefined)[], place: Place): readonly System[] {
  for (const scene of scenes) {
    const systems = scene && scene !== place.scene ? setting(scene) : [];
    if (systems.length > 0) return systems;
  }
  return [];
}

export const RUNGS = {
  reply,
  'sentence-thread': sentenceThread,
  bracket,
  'metric-figure': metricFigure,
  'of-metric': ofMetric,
  'fellow-options': fellowOptions,
  asked,
  'a-third': aThird,
  'said-once': saidOnce,
  noun: sizedNoun,
  'noun-before': nounBefore,
  'noun-apart': nounApart,
  'ends-with': endsWithSize,
  'inner-numbered': innerNumbered,
  'catheter-is': catheterIs,
  thrice,
  longer,
  'thread-rule': threadRule,
  site,
  'for-people': forPeople,
  'unit-before': unitBefore,
  sentence: sentenceMentions,
  cells,
  siblings,
  'sentence-word': sentenceWords,
  'sentence-device': sentenceDevices,
  earlier: earlierMentions,
  'earlier-device': earlierDevices,
  'earlier-word': earlierWords,
  label: labels,
  passage: passageMentions,
  'passage-device': passageDevices,
  before: passagesBefore,
  heading,
  title,
  flow,
  'which-flows': whichFlows,
  'tube-decimal': tubeDecimal,
  'gauge-run': gaugeRun,
  note: noteWide,
  'general-device': generalDevices,
} as const satisfies Readonly<Record<string, Rung>>;
