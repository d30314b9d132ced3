/** When a reader would have to ask: a bare thread number, a size fetched without its system. */

import { matchesOf } from '../../notes/index.ts';
import type { System } from '../../sizes/model.ts';
import { phrase } from '../../texts/index.ts';
import { reading } from '../reading.ts';
import { factsOf } from '../sense/note-facts.ts';
import type { Place } from '../sense/place.ts';
import { ask, size, type Verdict } from '../sense/verdict.ts';
import { READING } from '../texts/readings.ts';
import { ASKED_FOR, FETCHED, SAID_WHOLE, SAID_WHOLE_AFTER, WANTED, WANTED_AFTER } from '../words/frames.ts';
import type { Board } from './board.ts';
import { rowTells } from './row.ts';
import { suits } from './suits.ts';
import { SIZE_TALK, supplied } from './supply.ts';
import type { Bare } from './tokens.ts';

const ENDS = /^\s?(?:[.,;!?"”’'*_]|$|on (?:an?|the) (?:round|cutting|taper|reverse|needle|curved|straight))/i;

/** "2 silk", "pass a 2", "three nylon": the size itself or that many zeros. A nought is plain. */
export function threadQuestion(place: Place, bare: Bare): Verdict | undefined {
  const { value } = bare;
  if (!Number.isInteger(value) || bare.decimals > 0 || value < 0 || value > 7 || bare.plural)
    return undefined;
  if (listed(place, value) || /\bmetric\s$/i.test(place.before)) return undefined;
  const material = place.materials.find(
    (hit) =>
      hit.start > place.span.end &&
      hit.start - place.span.end <= 2 &&
      // "2: silk stays", "(2) chromic is slower": an answer and its number.
      !/[:).]/.test(place.scene.passage.text.slice(place.span.end, hit.start)) &&
      !(bare.run.values.length > 1 && place.scene.passage.text[place.span.end] === '\n'),
  );
  if (value <= 1 && !bare.spoken && place.materials.some((hit) => hit.end === place.span.start - 1))
    return size('usp', 'material-before', place.text.slice(0, 40));
  if (material?.means === 'stainless-steel') return size('usp', 'steel', material.word);
  const handed = /\ban?\s["“]?$/i.test(place.before) && !/\ban?\s0\b/i.test(place.text);
  const name = material ? undefined : ownName(place, value);
  if (name) return namedThread(place, bare, name);
  const rung = value === 1 && RUNG_FOR.test(place.before.slice(-24)) && !NOUGHTED.test(place.text);
  if (material && !rung && (value === 0 || (value === 1 && !handed)))
    return counted(place, material.end) && value > 0
      ? undefined
      : size('usp', 'material-follows', material.word);
  if (material ? counted(place, material.end) : !tied(place)) return undefined;
  if (value === 0) return bare.spoken ? undefined : size('usp', 'thread-handed', place.text.slice(0, 40));
  if (
    material &&
    !bare.spoken &&
    (besideWhole(place) ||
      (value === 1 && NOUGHTED.test(place.text)) ||
      besideZeros(place, value) ||
      rankedWhole(place, value) ||
      setApart(place, value) ||
      ofLargeAnimal(place, value) ||
      namedWhole(place, value) ||
      toldBehind(place, value))
  )
    return size('usp', 'whole-number-beside', material.word);
  return explained(place, value) ? undefined : threadAsk(place, value);
}

/** "Theatre rang for 1 polyglactin": one of them, the size, or with its nought lost. */
const RUNG_FOR =
  /\b(?:rang|rung|rings?|phoned|phones?|called|sent|sends?|asked|asks?)\s(?:up\s|down\s|over\s|us\s|me\s)?for\s$/i;

/** "3 silk; 4 green; 5 polydioxanone": the next answer of a row that is numbered. */
const listed = ({ span, scene }: Place, value: number): boolean => {
  const before = scene.passage.text.slice(Math.max(0, span.start - 200), span.start);
  if (value < 3 || !/[;,.|]\s$/.test(before)) return false;
  const counted = matchesOf(before, COUNTED).map((match) => Number(match[1]));
  return counted.includes(value - 1) && counted.includes(value - 2);
};
const COUNTED = /(?:^|[;:,.|]\s)([0-9])(?=\s)/g;

/** A row of what was heard and what was meant: "two silk" beside 2-0. */
function explained({ around, scene }: Place, value: number): boolean {
  const { cell } = scene.passage;
  const row = cell ? around.note.tables[cell.table]!.rows[cell.row]! : [];
  return row
    .slice(0, 8)
    .some((index) => around.scenes[index]?.passage.text.trim().startsWith(`${value}-0`) === true);
}

/** "1 Such loop", where the note also writes "3-0 Such": the name of a thread follows. */
function ownName(place: Place, value: number): string | undefined {
  const word = /^\s(?:looped\s)?([A-Z][A-Za-z]{2,23})\b/.exec(place.after)?.[1];
  const notes = factsOf(place.around);
  if (!word || !notes.thread || notes.threadNames.size === 0) return undefined;
  // Nobody counts none of a thing: after a nought any name will do.
  return value === 0 || notes.threadNames.has(word) ? word : undefined;
}

function namedThread(place: Place, { value, spoken }: Bare, name: string): Verdict | undefined {
  const end = place.span.end + 1 + name.length;
  if (spoken || (value > 0 && counted(place, end))) return undefined;
  return value <= 1 ? size('usp', 'name-follows', name) : threadAsk(place, value);
}

/** "2 nylon is thicker than 1 nylon": another whole number on a thread shows how they are counted. */
const besideWhole = (place: Place): boolean =>
  place.materials.some(
    (hit) =>
      hit.start > place.span.end + 2 &&
      WHOLE_BEFORE.test(place.scene.passage.text.slice(Math.max(place.span.end, hit.start - 6), hit.start)),
  );
/** "A 4-0 nylon will hold more than a 1 nylon": who writes the noughts of the others writes 1-0 where it is meant. */
const NOUGHTED = /(?<![0-9.,/-])(?:[2-9]|1[0-2])-0(?![0-9.,/-])/;
const WHOLE_BEFORE = /(?:^|[^-0-9.,/])[01]\s$/;

/** "closed with a 2 polyglactin. A 2 is heavier than a 1": the next sentence counts in whole numbers. */
const rankedWhole = ({ scene, span, sentence }: Place, value: number): boolean =>
  new RegExp(
    `\\b(?:an?|the|size)\\s${value}\\s(?:is|was)\\s(?:(?:a bit|much|far|one step|a step)\\s)?(?:thick|heavi|stout|strong|coars)er\\sthan\\s(?:an?|the|size)\\s${value - 1}\\b`,
    'i',
  ).test(scene.passage.text.slice(span.end, sentence.end + 160));

/** "gut, USP 3 and 4 … a 3 gut": named with its scale just before. */
const namedWhole = ({ scene, span }: Place, value: number): boolean =>
  new RegExp(`\\bUSP\\s${value}(?![-/0-9])`).test(
    scene.passage.text.slice(Math.max(0, span.start - 160), span.start),
  );

/** "3 polyglactin 910 (USP 3 = metric 6)": told in the brackets after it. */
const toldBehind = ({ after }: Place, value: number): boolean =>
  Number(TOLD.exec(after)?.[1] ?? 'none') === value;
const TOLD = /^[^.;()\n]{0,40}\((?:USP|size|#|No\.?)\s?([0-9])(?![-/0-9])/;

/** "a 5 nylon is not the same thread as 5-0 nylon": set against the thread with that many zeros. */
const setApart = ({ text }: Place, value: number): boolean =>
  new RegExp(`\\b${value}[-/]0\\b`).test(text) &&
  /\b(?:same|thick\w*|thinn?\w*|fine[rst]*|heavi\w*|differ\w*|coarse\w*|wider|widest|(?:wanted|meant|needed|instead)(?!.*[?]))\b/i.test(
    text,
  ) &&
  !/\b(?:could|might|may|maybe|either|unclear|ambiguous|which|whether|asks?|asked|or)\b/i.test(text);

/** The belly of a horse takes whole numbers. */
const ofLargeAnimal = ({ around, text }: Place, value: number): boolean =>
  value <= 3 &&
  factsOf(around).largeAnimals &&
  /\b(?:linea|midline|belly|flank|body wall|abdom\w+|colic)\b/i.test(text);

/** "2 chromic" among the options of a question, where another is "2-0 silk": there the zeros are written. */
function besideZeros(place: Place, value: number): boolean {
  const { index, list } = place.scene.passage;
  const lead = place.around.scenes[list?.leadIn ?? -1]?.passage.text ?? '';
  if (!list || !/\?|\b(?:choose|which|select|pick)\b/i.test(lead)) return false;
  return [-3, -2, -1, 1, 2, 3].some((step) => {
    const other = place.around.scenes[index + step]?.passage;
    return other?.list?.list === list.list && new RegExp(`^${value}[-/]0\\b`).test(other.text);
  });
}

/** The two ways to take a bare thread number. */
const threadAsk = (place: Place, value: number): Verdict =>
  ask(
    [
      reading(phrase(READING.whole, { value }), `#${value}`, { system: 'usp', value }),
      value === 1
        ? reading(phrase(READING.oneZero), '0', { system: 'usp', value: 0 })
        : reading(phrase(READING.zeros, { value }), `${value}-0`, { system: 'usp', value: 1 - value }),
    ],
    'bare-thread-number',
    place.text.slice(0, 60).trim(),
  );

/** "Pass me a 1": handed over by word of mouth, the zero may have got lost. */
export const handedThread = (place: Place, bare: Bare): Verdict | undefined =>
  bare.value >= 1 &&
  !bare.plural &&
  !(bare.value === 1 && NOUGHTED.test(place.text)) &&
  (FETCHED.test(place.before) ||
    (ASKED_FOR.test(place.before) && ENDS.test(place.after)) ||
    (WANTED.test(place.before) && /^\sto (?:close|sew|stitch|tie|suture)\b/i.test(place.after)))
    ? threadAsk(place, bare.value)
    : undefined;

/** "tie the tubing with a two", "pass a 2": thread named in the sentence, nothing after the number. */
const tied = (place: Place): boolean =>
  (/\b(?:clos(?:e|es|ed|ing)|ti(?:e|es|ed)|sew|sewn|stitch(?:ed)?)\swith\s$/i.test(place.before) &&
    ENDS.test(place.after)) ||
  (/\b(?:pass|tie|tied|ties|use|with|hand|close|stitch)\b[a-z\s]{0,30}\san?\s["“‘']?$/i.test(place.before) &&
    (place.devices.some((hit) => hit.means === 'suture') ||
      /^\s?on an? (?:round|taper|cutting|reverse)/i.test(place.after)) &&
    ENDS.test(place.after));

/** "2 silk sutures", "2 polypropylene mesh sheets": a count. */
const counted = (place: Place, from: number): boolean =>
  /^\s?(?:mesh|sheets?|sutures|stitches|ties|strands|threads|knots|patch(?:es)?|clips|packs?|packets?|ligatures|loops|slings?|tapes?|grafts?|lines|wires|rings|plugs?|films|loads|[0-9])(?![a-z])/i.test(
    place.scene.passage.text.slice(from, from + 24),
  );

/** The systems in which things are fetched, each with its words and its writing. */
const FETCHABLE = [
  { system: 'needle-gauge', words: READING.gauge, write: (n: number) => `${n} G` },
  { system: 'french', words: READING.french, write: (n: number) => `${n} Fr` },
  { system: 'tube-id', words: READING.inner, write: (n: number) => `${n} mm ID` },
  { system: 'usp', words: READING.thread, write: (n: number) => `USP ${n}` },
] as const;

/** "fetch a 16", "give me a seven", "leave an 18 by the bed": a size asked for with no system in sight. */
export function fetchQuestion(
  place: Place,
  bare: Bare,
  board: Board,
  followed: boolean,
): Verdict | undefined {
  const notes = factsOf(place.around);
  const told = board.settled.some((mentions) => mentions.length > 0);
  // Before the first size of a note only what is plainly fetched is asked about.
  if (bare.value < 1 || !(told || (fetched(place) && (notes.gauge || notes.french)))) return undefined;
  if (
    !fetched(place) &&
    !(
      openSystem(bare, board) &&
      (wanted(place, bare) || saidWhole(place) || departs(place) || supplied(place, bare, followed))
    )
  )
    return undefined;
  const [sole, ...others] = present(bare, board);
  if (sole === 'usp' && others.length === 0 && !fetched(place)) return threadAsk(place, bare.value);
  return whichSystem(place, bare, board);
}

/** The readings in all systems that have the value; undefined with fewer than two. */
export function whichSystem(place: Place, bare: Bare, board: Board): Verdict | undefined {
  if (rowTells(place, board)) return undefined;
  const { value } = bare;
  const readings = FETCHABLE.filter(({ system }) => suits(system, bare) || wide(system, bare, board)).map(
    ({ system, words, write }) => reading(phrase(words, { value }), write(value), { system, value }),
  );
  const [only] = readings;
  if (only?.size?.system === 'usp' && readings.length === 1) return threadAsk(place, value);
  const glove =
    bare.decimals > 0 && readings.length === 1
      ? [reading(phrase(READING.glove, { value }), `glove size ${value}`)]
      : [];
  if (readings.length + glove.length < 2) return undefined;
  return ask([...readings, ...glove], 'no-system', place.text.slice(0, 80).trim());
}

/** 10 and 12 are gauges too, in a note of gauges. */
const wide = (system: System, { value, decimals }: Bare, board: Board): boolean =>
  system === 'needle-gauge' &&
  decimals === 0 &&
  (value === 10 || value === 12) &&
  factsOf(board.around).gauge;

const fetched = (place: Place): boolean =>
  FETCHED.test(place.before) &&
  /^\s?(?:[.,;:)?!"”’'*_]|$|for\b|when\b|from\b|up\b|over\b|down\b|please\b|now\b|asap\b|and (?:an?|some|two)\b)/.test(
    place.after.trimStart(),
  );

const wanted = (place: Place, bare: Bare): boolean =>
  WANTED.test(place.before) &&
  !SIZE_TALK.test(place.text) &&
  (bare.plural ||
    /\b(?:an?|the)\s(?:spare\s|new\s|clean\s|second\s|fresh\s)?["“‘'*_]?$/i.test(place.before)) &&
  WANTED_AFTER.test(place.after);

/** "A 12, please" and "16 x 5 please" as the whole of what was said. */
const saidWhole = (place: Place): boolean => {
  const { text } = place.scene.passage;
  const before = text.slice(Math.max(0, place.span.start - 12), place.span.start);
  if (
    SIZE_TALK.test(place.text) ||
    REPLIES.test(before) ||
    JUDGED.test(text.slice(place.span.end, place.span.end + 30))
  )
    return false;
  return (
    SAID_WHOLE.test(text.slice(Math.max(0, place.span.start - 20), place.span.start)) &&
    SAID_WHOLE_AFTER.test(text.slice(place.span.end, place.span.end + 30))
  );
};

/** "Which drains better?" "7.": the answer to what was asked. */
const REPLIES = /\?["”’]\s?(?:[—–-]\s)?["“‘](?:an?\s)?$/i;

/** '"5." Reply: yes.': an answer that is judged. */
const JUDGED =
  /^[.,!?]?["”’]\s*(?:[–—-]\s*)?(?:reply|answer|tutor|teacher|examiner|right|wrong|correct|yes|no)\b/i;

/** "16 x 5 please": what looks like a sum, and is all that was written. */
export const saidQuestion = (place: Place, bare: Bare, board: Board): Verdict | undefined =>
  /^\sx\s[0-9]/i.test(place.after) && saidWhole(place) ? fetchQuestion(place, bare, board, false) : undefined;

/** "She goes to the ward with a 14 in": what somebody goes away with, or came with, and nothing more is said of it. */
export const departs = ({ before, after }: Place): boolean =>
  DEPARTS.test(before) &&
  /^\s(?:already\s|still\s)?in(?:\sand\b|\splace\b|\ssitu\b|\s?[.,;:!?"”]|\s*$)/.test(after);
const DEPARTS =
  /\b(?:goes|go|went|gone|going|comes?|came|coming|leaves|left|arrives?|arrived|returns?|returned|sent|moved?|transferred|home|discharged|up|down|back|over|ward|theatre|unit)\b[^.;:?!]{0,40}\bwith\s(?:an?|the)\s["“]?$/i;

/** The note deals in more than one system that has the value. */
export const openSystem = (bare: Bare, board: Board): boolean => {
  const { gauge, french } = factsOf(board.around);
  const [only, ...others] = present(bare, board);
  return (
    others.length > 0 || only === undefined || only === 'usp' || (gauge && french && bare.decimals === 0)
  );
};

function present({ value, decimals, spoken }: Bare, board: Board): readonly System[] {
  const notes = factsOf(board.around);
  const named = {
    'needle-gauge': notes.gauge,
    french: notes.french,
    'tube-id': notes.tracheal,
    usp: notes.thread,
  };
  return FETCHABLE.map(({ system }) => system).filter(
    (system) => named[system] && suits(system, { value, decimals, spoken }),
  );
}
