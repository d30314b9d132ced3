/** Bare number tokens of a passage and the runs they form: "24, 22, 18 or 16". */

import type { Notation } from '../../../../grammars/notations/index.ts';
import type { Span } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import type { Candidate } from '../scan.ts';
import { readNumber, WORD_NUMBER } from '../words/numbers.ts';

const START = '(?<![0-9A-Za-zÀ-ÿ.,:/⁄$€£#%°_+^-])';
const END = '(?![0-9A-Za-zÀ-ÿ%°_]|[.,:/][0-9]|-(?![0-9]{1,2}[.][05](?![0-9]))[0-9A-Za-z])';
const SPOKEN = `twenties|thirties|(?:twenty|thirty)-[a-z]{3,5}(?=s(?![a-z]))|${WORD_NUMBER}(?:-(?:oh|five)|[\\s](?:point[\\s](?:five|oh|zero)|and[\\s]a[\\s]half))?`;

/** Digits, words, the far end of "7.0-8.0"; a plural s may follow. */
const TOKEN_HERE = new RegExp(
  `(?:${START}(?:[0-9]{1,2}(?:[.][0-9]{1,2})?|${SPOKEN})|(?<=[0-9][.][05]-)[0-9]{1,2}[.][05])(?:(?:s|ish)(?![0-9A-Za-zÀ-ÿ]))?${END}`,
  'iy',
);

/** Signs with which a number begins, in digits or in words, and those right behind which none does. */
const [BEGINS, INSIDE] = [1, 2];
const SIGNS = new Uint8Array(0x80);
for (let code = 0; code < SIGNS.length; code++) {
  const sign = String.fromCharCode(code);
  if (/[0-9a-z]/i.test(sign)) SIGNS[code] = INSIDE;
  if (/[0-9efnostz]/i.test(sign)) SIGNS[code] = INSIDE | BEGINS;
}

/** The long pattern is tried only where a word or a number begins. */
function tokensIn(text: string): readonly RegExpExecArray[] {
  const found: RegExpExecArray[] = [];
  let before = 0;
  for (let at = 0; at < text.length; at++) {
    const sign = SIGNS[text.charCodeAt(at)] ?? 0;
    const inside = (before & INSIDE) !== 0;
    before = sign;
    if (inside || (sign & BEGINS) === 0) continue;
    TOKEN_HERE.lastIndex = at;
    const match = TOKEN_HERE.exec(text);
    if (!match) continue;
    found.push(match);
    at += match[0].length - 1;
    before = SIGNS[text.charCodeAt(at)] ?? 0;
  }
  return found;
}

/** Stands in for a notation: a bare number has no writing of its own. */
const NOTATION: Notation = {
  id: 'bare',
  title: 'Bare number',
  about: 'A number without unit whose system the context settles.',
  pattern: '',
  anyCase: true,
  read: () => [],
  examples: [],
  counterExamples: [],
};

/** Numbers joined by commas, "or" and the like. */
export interface Run extends Span {
  readonly values: readonly number[];
}

/** A bare number with its place in a run of numbers. */
export interface Bare extends Candidate {
  readonly value: number;
  readonly decimals: number;
  readonly spoken: boolean;
  /** Written "20s". */
  readonly plural: boolean;
  /** The run of numbers it stands in; all its members share one. */
  readonly run: Run;
}

/** A candidate for the number at a span; undefined when the text is none. */
export function bareCandidate(text: string, span: Span): Omit<Bare, 'run'> | undefined {
  const written = text.slice(span.start, span.end);
  const plural = finds(
    /(?:[0-9]|teen|y-(?:one|two|three|four|five|seven|eight|nine))s$|(?:twenti|thirti)es$/i,
    written,
  );
  const read = readBare(singular(written.replace(/(?<=[0-9])ish$/i, ''), plural));
  if (!read) return undefined;
  const { value, decimals, spoken } = read;
  const item = {
    start: 0,
    end: written.length,
    values: [value],
    decimals,
    ...(spoken ? { spoken: true } : {}),
  };
  return { notation: NOTATION, span, match: span, item, value, decimals, spoken, plural };
}

const singular = (written: string, plural: boolean): string =>
  plural ? written.replace(/ies$/i, 'y').replace(/s$/i, '') : written;

/** "seven-oh" and "seven-five" are said of tubes: 7.0 and 7.5. */
function readBare(text: string): ReturnType<typeof readNumber> {
  const tube = /^([a-z]+)-(oh|five)$/i.exec(text);
  const whole = tube && readNumber(tube[1]!);
  if (tube && whole && whole.value < 12) {
    return { value: whole.value + (/five/i.test(tube[2]!) ? 0.5 : 0), decimals: 1, spoken: true };
  }
  return readNumber(text);
}

const LINK =
  /^["”’']?\s?(?:,|→|>|<|\/|–|-|>>|->)\s?(?:(?:and|or|then|not)\s)?(?:an?\s|the\s)?["“‘']?$|^["”’']?\s(?:or|nor|and|to|then|than|versus|vs\.?|à|et|ou|bis|und|oder)\s(?:an?\s|the\s)?["“‘']?$/i;

/** Numbers outside the taken spans (in order), in text order, each knowing its run. */
export function bareNumbers(text: string, taken: readonly Span[]): readonly Bare[] {
  const found: Omit<Bare, 'run'>[] = [];
  let next = 0;
  for (const match of tokensIn(text)) {
    const span = { start: match.index, end: match.index + match[0].length };
    while (next < taken.length && taken[next]!.end <= span.start) next++;
    if (next < taken.length && taken[next]!.start < span.end) continue;
    const candidate = bareCandidate(text, span);
    if (candidate) found.push(candidate);
  }
  return withRuns(text, found);
}

function withRuns(text: string, found: readonly Omit<Bare, 'run'>[]): readonly Bare[] {
  const all: Bare[] = [];
  for (let from = 0; from < found.length; ) {
    let to = from + 1;
    while (to < found.length && together(text, found[to - 1]!, found[to]!)) to++;
    const members = found.slice(from, to);
    const run: Run = {
      start: members[0]!.span.start,
      end: members.at(-1)!.span.end,
      values: members.map((one) => one.value),
    };
    for (const member of members) all.push(inRun(member, run));
    from = to;
  }
  return all;
}

/** One by one: spreading them takes longer. */
function inRun(member: Omit<Bare, 'run'>, run: Run): Bare {
  const { notation, span, match, item, value, decimals, spoken, plural } = member;
  return { notation, span, match, item, value, decimals, spoken, plural, run };
}

/** "of those three, the 14": a count in words begins no list in digits. */
const together = (text: string, a: Omit<Bare, 'run'>, b: Omit<Bare, 'run'>): boolean =>
  a.spoken === b.spoken && linked(text, a.span, b.span) && !(a.decimals > 0 && isDepth(text, b));

/** "8.0, 23 at the lip": how far the tube is in. */
const isDepth = (text: string, { span, value, decimals }: Omit<Bare, 'run'>): boolean =>
  decimals === 0 &&
  value >= 7 &&
  /^\s?(?:cm\s)?(?:at|@)\s(?:the\s)?(?:lips?|teeth|gums?|nares|nostrils?|nose|incisors?|skin)\b/i.test(
    text.slice(span.end, span.end + 24),
  );

/** "7 gauge (the largest) to 33": a word in brackets between the ends of a range. */
const REMARKED = /^\s\([a-z][a-z -]{2,20}\)(?=\s(?:to|through|and|or)\s$)/;

/** Do two neighbours belong to one run? */
export const linked = (text: string, a: Span, b: Span): boolean => {
  if (b.start - a.end > LINK_REACH) return false;
  const between = text.slice(a.end, b.start).replace(REMARKED, '');
  return between.length < 14 && LINK.test(between);
};

/** The most that may stand between two linked numbers. */
export const LINK_REACH = 32;
