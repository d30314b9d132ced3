/**
 * A passage as a row of items: each is a size mention, a word with its senses, or a punctuation mark.
 * Linear in the passage's length.
 */

import type { Mention } from '../../mentions/model.ts';
import { finds } from '../../notes/patterns.ts';
import type { System } from '../../sizes/model.ts';
import type { Axis } from '../model.ts';
import { COLOUR_WORDS } from '../words/colours.ts';
import {
  comparativeOf,
  type Degree,
  MAGNITUDES,
  type MagnitudeRow,
  OTHER_COMPARED,
  OTHER_QUALITIES,
  superlativeOf,
} from '../words/magnitude.ts';
import { AXIS_NOUNS, DEVICE_NOUNS, SYSTEM_NOUNS } from '../words/nouns.ts';
import { EFFORT_WORDS, laboured } from './effort.ts';
import { JOINT, kindAt, LETTER, PAIR, SPACE } from './letters.ts';
import { TIME_WORDS, timed, verbal } from './verbs.ts';

export interface Magnitude {
  readonly axis: Axis;
  readonly sign: 1 | -1;
  readonly degree: Degree;
  readonly row?: MagnitudeRow;
  /** "too thin". */
  readonly excess?: boolean;
  /** Settled by the words around it: no noun beside it changes what it measures. */
  readonly settled?: boolean;
}

export interface Item {
  readonly start: number;
  readonly end: number;
  /** Lower case; straight quotes; the mark itself for punctuation. */
  readonly word: string;
  readonly kind: 'word' | 'size' | 'punctuation';
  readonly capital: boolean;
  readonly mention?: Mention | undefined;
  magnitude?: Magnitude | undefined;
  readonly axisNoun?: { axis: Axis; sign: 1 | -1 } | undefined;
  readonly deviceNoun?: boolean | undefined;
  system?: System | 'usp-zeros' | undefined;
  readonly colour?: string | undefined;
  /** A length: what its words leave open, mm. */
  readonly said?: { readonly min: number; readonly max: number } | undefined;
}

const FORMS = new Map<string, Magnitude>();
for (const row of MAGNITUDES) {
  const add = (form: string, degree: Degree) =>
    FORMS.set(form, { axis: row.axis, sign: row.sign, degree, row });
  if (!row.comparedOnly) add(row.word, 'plain');
  add(row.comparative ?? comparativeOf(row.word), 'comparative');
  add(row.superlative ?? superlativeOf(row.word), 'superlative');
}
for (const row of MAGNITUDES)
  if (row.axis === 'flow') FORMS.set(`${row.word}ly`, { axis: 'flow', sign: row.sign, degree: 'plain', row });
for (const word of OTHER_QUALITIES) {
  for (const form of [word, comparativeOf(word), superlativeOf(word)])
    if (!FORMS.has(form))
      FORMS.set(form, {
        axis: 'other',
        sign: 1,
        degree: form === word ? 'plain' : form.endsWith('est') ? 'superlative' : 'comparative',
      });
}
for (const word of OTHER_COMPARED)
  FORMS.set(word, { axis: 'other', sign: 1, degree: word.endsWith('st') ? 'superlative' : 'comparative' });

/** Items of a passage. Mentions must be sorted by span. */
export function readItems(text: string, mentions: readonly Mention[]): Item[] {
  const items: Item[] = [];
  let at = 0;
  let joins = 0;
  for (const mention of mentions) {
    if (mention.span.start < at) continue;
    joins |= words(text, at, mention.span.start, items);
    const size = sizeItem(text, mention);
    items.push(size);
    joins |= joinsAs(size.word);
    at = mention.span.end;
    // "The 10's the bigger": the size is; not "the 10's bore".
    if (finds(CONTRACTED, text.slice(at, at + 16)))
      at = push(items, itemOf(at, at + 2, 'is', 'word', false, undefined, NO_SENSES));
  }
  joins |= words(text, at, text.length, items);
  const whole = joins & DENIES ? joinDenied(items) : items;
  return joins & JOINS ? joinDegrees(joinSystems(whole)) : whole;
}

/** What is read together with its neighbours: a word that denies the next, one of degree or the like. Most passages hold neither. */
const [DENIES, JOINS] = [1, 2];
const joinsAs = (word: string): number => (word === 'non' ? DENIES : JOINED.has(word) ? JOINS : 0);

/** "non absorbable", "non- absorbable": one word, as if its hyphen were there. */
function joinDenied(items: readonly Item[]): Item[] {
  const joined: Item[] = [];
  for (let i = 0; i < items.length; i++) {
    const own = items[i]!;
    const next = items[own.word === 'non' && items[i + 1]?.word === '-' ? i + 2 : i + 1];
    if (own.word !== 'non' || next?.kind !== 'word' || next.start - own.end > 2) joined.push(own);
    else {
      const word = shared(`non-${next.word}`);
      joined.push(
        itemOf(own.start, next.end, word, 'word', own.capital, undefined, SENSES.get(word) ?? NO_SENSES),
      );
      i = items.indexOf(next, i);
    }
  }
  return joined;
}

const CONTRACTED =
  /^['’]s\s(?:the|an?|too|much|far|so|not|way|still|what|(?!outer|inner|diam|numb)[a-z]+er)\b/;

function push(items: Item[], item: Item): number {
  items.push(item);
  return item.end;
}

/** One shape for all items: reading a property of any of them is then as fast as can be. */
function itemOf(
  start: number,
  end: number,
  word: string,
  kind: Item['kind'],
  capital: boolean,
  mention: Mention | undefined,
  senses: Senses,
): Item {
  const { magnitude, axisNoun, deviceNoun, system, colour } = senses;
  return { start, end, word, kind, capital, mention, magnitude, axisNoun, deviceNoun, system, colour };
}

function sizeItem(text: string, mention: Mention): Item {
  const { start, end } = mention.span;
  return itemOf(start, end, text.slice(start, end).toLowerCase(), 'size', false, mention, NO_SENSES);
}

/** Words and signs of a stretch: a word is letters and digits, with joining signs inside it. Returns what it joins (`joinsAs`). */
function words(text: string, from: number, to: number, into: Item[]): number {
  let joins = 0;
  for (let at = from; at < to; ) {
    const kind = kindAt(text, at, to);
    if (kind === SPACE) at++;
    else if ((kind & ~PAIR) === LETTER) {
      const last = lastOfWord(text, at, to);
      joins |= pushWord(text.slice(at, last), at, into);
      // Joining signs behind the last letter are signs, one by one.
      for (at = last; at < to && kindAt(text, at, to) === JOINT; at++) sign(text, at, at + 1, into);
    } else at = sign(text, at, at + (kind >= PAIR ? 2 : 1), into);
  }
  return joins;
}

function sign(text: string, start: number, end: number, into: Item[]): number {
  into.push(itemOf(start, end, text.slice(start, end), 'punctuation', false, undefined, NO_SENSES));
  return end;
}

/** Where the last letter of a word ends. */
function lastOfWord(text: string, start: number, to: number): number {
  let last = start;
  for (let end = start; end < to; ) {
    const kind = kindAt(text, end, to);
    const letter = (kind & ~PAIR) === LETTER;
    if (!letter && kind !== JOINT) break;
    end += kind >= PAIR ? 2 : 1;
    if (letter) last = end;
  }
  return last;
}

type Senses = Pick<Item, 'magnitude' | 'axisNoun' | 'deviceNoun' | 'system' | 'colour'>;

const COLOURED = 'hub hubbed winged coded capped topped ringed funnel funnelled funneled banded'.split(' ');

/** "pink", or "blue-hubbed". */
function colourWord(word: string): string | undefined {
  const dash = word.lastIndexOf('-');
  return COLOUR_WORDS.get(dash > 0 && COLOURED.includes(word.slice(dash + 1)) ? word.slice(0, dash) : word);
}

/** What each word of the tables can mean, looked up once a word; most words mean nothing to us. */
const SENSES: ReadonlyMap<string, Senses> = new Map(
  [
    ...FORMS.keys(),
    ...AXIS_NOUNS.keys(),
    ...DEVICE_NOUNS,
    ...SYSTEM_NOUNS.keys(),
    ...COLOUR_WORDS.keys(),
    ...[...COLOUR_WORDS.keys()].flatMap((colour) => COLOURED.map((kind) => `${colour}-${kind}`)),
  ].map((word) => [word, sensesOf(word)] as const),
);

/** One shape for all of them too. */
function sensesOf(word: string): Senses {
  const [magnitude, axisNoun] = [FORMS.get(word), AXIS_NOUNS.get(word)];
  const [system, colour] = [SYSTEM_NOUNS.get(word), colourWord(word)];
  return { magnitude, axisNoun, deviceNoun: DEVICE_NOUNS.has(word) || undefined, system, colour };
}

const NO_SENSES: Senses = sensesOf('');

const NUMBERED =
  /^(?:low|lower|high|higher|small|smaller|large|larger|big|bigger)-(?:gauge|french|number|numbered)$/;

/** A word as it is written, read once. */
interface Form {
  readonly word: string;
  readonly capital: boolean;
  readonly senses: Senses;
  /** Read as two words, up to its hyphen and from behind it. */
  readonly cut: number;
  readonly joins: number;
}

/** Forms remembered; a language has more, a course hardly. */
const MOST_FORMS = 20_000;
const known = new Map<string, Form>();

/** Returns what the word joins. */
function pushWord(body: string, start: number, into: Item[]): number {
  const { word, capital, senses, cut, joins } = known.get(body) ?? learn(body);
  if (cut > 0)
    return pushWord(body.slice(0, cut), start, into) | pushWord(body.slice(cut + 1), start + cut + 1, into);
  into.push(itemOf(start, start + body.length, word, 'word', capital, undefined, senses));
  return joins;
}

function learn(body: string): Form {
  if (known.size >= MOST_FORMS) known.clear();
  // A copy: a word cut from a long text would keep all of it.
  const own = ` ${body}`.slice(1);
  const form = formOf(own);
  known.set(own, form);
  return form;
}

/** The engine keeps one string for all keys alike, which it compares with the words of the tables at a glance. */
const shared = (word: string): string => Object.keys({ [word]: true })[0]!;

function formOf(body: string): Form {
  // "thinner-walled" is a quality of its own; "small-bore" is read by the category words.
  const lower = body.toLowerCase();
  const dash = lower.indexOf('-');
  // "low-gauge needles" says what "low gauge needles" says.
  const cut = dash > 2 && NUMBERED.test(lower) ? dash : 0;
  const word = shared(lower.includes('’') ? lower.replaceAll('’', "'") : lower);
  const senses = SENSES.get(word.endsWith("'s") ? word.slice(0, -2) : word) ?? NO_SENSES;
  const capital = lower !== body && body[0] !== body[0]!.toLowerCase();
  return { word, capital, senses, cut, joins: joinsAs(word) };
}

/** First words of the names of the metric scale in two words. */
const METRIC_FIRST = new Set(
  [...SYSTEM_NOUNS].flatMap(([name, system]) =>
    system === 'ep-metric' && name.includes(' ') ? [name.slice(0, name.indexOf(' '))] : [],
  ),
);

/** "metric number", "EP size": names of a scale in two words. */
function joinSystems(items: Item[]): Item[] {
  for (let i = 0; i + 1 < items.length; i++) {
    const item = items[i]!;
    if (!METRIC_FIRST.has(item.word) || item.kind !== 'word' || item.system) continue;
    const system = SYSTEM_NOUNS.get(`${item.word} ${items[i + 1]!.word.replace(/s$/, '')}`);
    if (system === 'ep-metric') items[i] = { ...item, system };
  }
  return items;
}

const flip = (sign: 1 | -1): 1 | -1 => (sign === 1 ? -1 : 1);

/** Reads "more slender", "less roomy", "too thin" and "more flow" into one magnitude. */
function joinDegrees(items: Item[]): Item[] {
  for (let i = 0; i + 1 < items.length; i++) {
    const item = items[i]!;
    if (!JOINING.has(item.word)) continue;
    const likened = LIKENED.get(item.word);
    if (likened) {
      if (stands(items, i)) item.magnitude = { axis: 'outer', sign: likened, degree: 'plain', settled: true };
      continue;
    }
    const next = items[i + 1]!;
    const time = timed(items, i) ?? (EFFORT_WORDS.has(item.word) ? laboured(items, i) : undefined);
    if (time) item.magnitude = { ...time, settled: true };
    if (item.word === 'too' && next.magnitude?.degree === 'plain')
      next.magnitude = { ...next.magnitude, excess: true };
    const counted = /^(?:suture|thread)$/.test(next.word) ? items[i + 2] : next;
    if (METRIC.has(item.word) && counted?.axisNoun && !item.system) item.system = 'ep-metric';
    const degree = time ? undefined : DEGREE_WORDS.get(item.word);
    if (degree && EASE.test(next.word) && parts(items, i)) {
      item.magnitude = { axis: 'strength', sign: flip(degree.sign), degree: degree.degree, settled: true };
      continue;
    }
    if (degree && EASE.test(next.word) && items[i + 2]?.word !== 'to' && eased(items, i)) {
      item.magnitude = { axis: 'flow', sign: degree.sign, degree: degree.degree, settled: true };
      continue;
    }
    if (!degree) continue;
    const done = verbal(items, i);
    if (done) {
      const sign = degree.sign === 1 ? done.sign : flip(done.sign);
      item.magnitude = { axis: done.axis, sign, degree: degree.degree, settled: true };
    } else if (next.magnitude?.degree === 'plain') {
      const sign = degree.sign === 1 ? next.magnitude.sign : flip(next.magnitude.sign);
      next.magnitude = { ...next.magnitude, degree: degree.degree, sign };
    } else if (!item.magnitude && next.system === 'usp-zeros' && degree.degree === 'superlative') {
      item.magnitude = { axis: 'number', sign: degree.sign, degree: 'superlative' };
    } else if (!item.magnitude && rate(items, i)) {
      item.magnitude = { axis: 'flow', sign: degree.sign, degree: degree.degree, settled: true };
    } else if (!item.magnitude && SUBSTANCE.test(next.word)) {
      item.magnitude = { axis: 'outer', sign: degree.sign, degree: degree.degree, settled: true };
    } else if (!item.magnitude && LOAD.test(next.word) && bears(items, i)) {
      item.magnitude = { axis: 'strength', sign: degree.sign, degree: degree.degree, settled: true };
    } else if (!item.magnitude && stretched(items, i)) {
      item.magnitude = { axis: 'outer', sign: degree.sign, degree: degree.degree, settled: true };
    } else if (!item.magnitude) {
      const noun = items.slice(i + 1, i + 4).find((near) => near.kind === 'word' && near.axisNoun);
      if (noun && ROOM.test(noun.word) && elsewhere(items, items.indexOf(noun, i))) continue;
      if (noun?.axisNoun && noun.axisNoun.axis !== 'number')
        item.magnitude = { axis: noun.axisNoun.axis, sign: degree.sign, degree: degree.degree };
    }
  }
  return items;
}

/** "more room in the vein", "less space around it": not within the tube. */
const ROOM = /^(?:room|space|elbow-room|headroom)$/;
const elsewhere = (items: readonly Item[], at: number): boolean =>
  /^(?:for (?:\w+ ){1,2}(?:to \w+ )?)?(?:around|beside|alongside|outside|between|past|(?:for|in|inside|within|of) (?:(?:the|her|his|their|your|a|an|that|this|our) )?(?:\w+ )?(?:veins?|arter(?:y|ies)|vessels?|urethra|airways?|trachea|nostrils?|nose|throat|mouth|chest|pleura|wounds?|bladder|canal|box|drawer|cart|tray|kit|bag))\b/.test(
    items
      .slice(at + 1, at + 10)
      .map((item) => item.word)
      .join(' '),
  );

/** What thick and thin things are likened to: "6-0 is the hair and 1 is the rope". */
const LIKENED: ReadonlyMap<string, 1 | -1> = new Map([
  ...['rope', 'cable', 'hosepipe', 'drainpipe', 'broomstick'].map((word) => [word, 1] as const),
  ...['hair', 'whisker', 'cobweb'].map((word) => [word, -1] as const),
]);
const stands = (items: readonly Item[], i: number): boolean =>
  /^(?:the|a|an)$/.test(items[i - 1]?.word ?? '') &&
  /^(?:is|are|like|being)$/.test(items[i - 2]?.word ?? '') &&
  /^(?:[.,;!)]|and|while|but|whereas)$/.test(items[i + 1]?.word ?? '.');

const METRIC = new Set(['metric', 'ep', 'decimetric']);

const EASE = /^(?:easily|readily|often|quickly)$/;
/** "snaps more easily": what parts easily is weak. */
const parts = (items: readonly Item[], i: number) =>
  items.slice(Math.max(0, i - 3), i).some((near) => /^(?:snaps?|breaks?|tears?|parts?)$/.test(near.word));

/** The two words before, those of degree left out. */
const wordsBefore = (items: readonly Item[], i: number): string => {
  const last = /^(?:far|much|rather|even|a lot)$/.test(items[i - 1]?.word ?? '') ? i - 1 : i;
  return `${items[last - 2]?.word} ${items[last - 1]?.word}`;
};

/** "carries gas more easily", "blood comes less readily": what runs with ease runs fast. */
const eased = (items: readonly Item[], i: number) =>
  /^(?:carr(?:y|ies)|runs?|flows?|drains?|comes?|drips?)$/.test(items[i - 1]?.word ?? '') ||
  // "blood comes back far more readily": a needle that comes out does not flow.
  (/^(?:runs?|flows?|drains?|comes?) (?:back|out|through|in)$/.test(wordsBefore(items, i)) &&
    items
      .slice(Math.max(0, i - 5), i)
      .some((near) => /^(?:fluids?|blood|water|saline|urine|pus|contrast|plasma)$/.test(near.word))) ||
  // "thick fluids pass more easily through": not the needle itself.
  (/^(?:pass|passes|go|goes|get|gets)$/.test(items[i - 1]?.word ?? '') &&
    items[i + 2]?.word === 'through' &&
    items
      .slice(Math.max(0, i - 4), i - 1)
      .some((near) =>
        /^(?:fluids?|blood|water|saline|contrast|litres?|plasma|drugs?|oil)$/.test(near.word),
      )) ||
  (/^(?:carr(?:y|ies)|passes|lets|drains|takes|moves)$/.test(items[i - 2]?.word ?? '') &&
    /^(?:gas|air|blood|fluids?|water|saline|urine|clots?)$/.test(items[i - 1]?.word ?? ''));

/** "more fluid a minute", "more per minute". */
const rate = (items: readonly Item[], i: number) =>
  items
    .slice(i + 1, i + 5)
    .some((near) => ['minute', 'minutes', 'second', 'hour', 'volume'].includes(near.word)) ||
  (/^(?:fluid|blood|water|saline)$/.test(items[i + 1]?.word ?? '') &&
    /^(?:pass|passes|delivers?|carries|carry|lets|moves|allows|admits)$/.test(items[i - 1]?.word ?? ''));

/** "has more body", "with less bulk": what a thread or a tube is made of. */
const SUBSTANCE = /^(?:body|bulk|substance|meat|heft|beef|stoutness|plastic)$/;

/** "would hold a lot more weight": what bears more is stronger. */
const LOAD = /^(?:weight|load|tension|strain|pull|force)$/;
const bears = (items: readonly Item[], i: number): boolean =>
  items
    .slice(Math.max(0, i - 4), i)
    .some((near) =>
      /^(?:holds?|held|bears?|carr(?:y|ies)|takes?|withstands?|stands?|resists?)$/.test(near.word),
    );

/** "stretches the meatus a bit more". */
const stretched = (items: readonly Item[], i: number) =>
  items
    .slice(Math.max(0, i - 6), i)
    .some((near) => /^(?:stretch|stretches|dilates?|distends?)$/.test(near.word)) &&
  !items.slice(i + 1, i + 3).some((near) => near.kind === 'word' && near.axisNoun);

const DEGREE_WORDS: ReadonlyMap<string, { sign: 1 | -1; degree: Degree }> = new Map([
  ['more', { sign: 1, degree: 'comparative' }],
  ['less', { sign: -1, degree: 'comparative' }],
  ['most', { sign: 1, degree: 'superlative' }],
  ['least', { sign: -1, degree: 'superlative' }],
  ['fewest', { sign: -1, degree: 'superlative' }],
  ['extra', { sign: 1, degree: 'comparative' }],
]);

/** Every word that `joinDegrees` reads together with others. */
const JOINING: ReadonlySet<string> = new Set([
  ...TIME_WORDS,
  ...EFFORT_WORDS,
  'too',
  ...METRIC,
  ...DEGREE_WORDS.keys(),
  ...LIKENED.keys(),
]);
/** The same, and what `joinSystems` reads. */
const JOINED: ReadonlySet<string> = new Set([...JOINING, ...METRIC_FIRST]);
