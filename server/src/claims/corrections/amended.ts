/**
 * A sentence of an erratum taken apart: the words that are struck, and the words that hold instead. "For X read Y", "X should
 * read Y", "taper for skin → cutting for skin", "before: … Now: …".
 */

import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import type { Sentence } from '../text/sentences.ts';
import { corrected } from './corrected.ts';
import { correctionAt, printedAt, SIGNS } from './errata.ts';

export interface Part {
  readonly sentence: Sentence;
  readonly erratum?: 'struck' | 'holds';
  /** Put together from what the erratum quotes. */
  readonly built?: true;
}

/** Two sentences of opposite standing; `next` is the sentence behind it. */
export function splitErratum(
  sentence: Sentence,
  earlier: Sentence | undefined,
  next: Sentence | undefined,
  errata: boolean,
): Part[] {
  const { items } = sentence;
  if (!errata && !holds(items, AMENDING)) return [{ sentence }];
  const built = errata ? corrected(items, earlier?.items ?? []) : undefined;
  const cut = correctionAt(items);
  if (built)
    return [
      ...part(sentence, 0, items.length, 'struck'),
      ...part({ ...sentence, items: built }, 0, built.length, 'holds').map(
        (one): Part => ({ ...one, built: true }),
      ),
    ];
  if (cut === undefined) return exchanged(sentence) ?? beforeAndNow(sentence, next) ?? [{ sentence }];
  const printed = printedAt(items, cut);
  return [
    ...part(sentence, 0, cut, 'struck'),
    ...part(sentence, cut + 1, printed, 'holds'),
    ...part(sentence, printed, items.length, 'struck'),
  ];
}

/** Signs and words of which every erratum has one; most sentences have none. */
const AMENDING = cue([...SIGNS, ...'→⇒➜➔>']);

function part(
  { items: all, close }: Sentence,
  from: number,
  to: number,
  erratum?: 'struck' | 'holds',
): Part[] {
  const items = all.slice(from, to);
  if (items.length === 0) return [];
  const sentence = { items, start: items[0]!.start, end: items.at(-1)!.end, close };
  return [erratum ? { sentence, erratum } : { sentence }];
}

/** Where an arrow stands, and of how many signs it is made. */
interface Arrow {
  readonly at: number;
  readonly to: number;
}

function arrowsIn(items: readonly Item[]): Arrow[] {
  return items.flatMap((item, at): Arrow[] => {
    if (/^[→⇒➜➔]$/.test(item.word)) return [{ at, to: at }];
    return /^[-=–—]$/.test(item.word) && items[at + 1]?.word === '>' ? [{ at, to: at + 1 }] : [];
  });
}

/** "taper for skin → cutting for skin; taper for bowel": what the arrow leads away from is struck. */
function exchanged(sentence: Sentence): Part[] | undefined {
  const { items } = sentence;
  const arrows = arrowsIn(items);
  const cuts = arrows.flatMap(({ at, to }, i) => {
    const from = items.findLastIndex(({ word }, j) => j < at && (word === ';' || word === ':')) + 1;
    const next = arrows[i + 1]?.at ?? items.length;
    const ends = items.flatMap(({ word }, j) => (j > to && j < next && /^[;,.]$/.test(word) ? [j] : []));
    const restated = [...ends, items.length].some((end) =>
      saysAnew(wordsOf(items.slice(from, at)), wordsOf(items.slice(to + 1, end))),
    );
    return restated ? [{ from, at, to }] : [];
  });
  if (cuts.length === 0) return undefined;
  return [
    ...cuts.flatMap(({ from, at }, i) => [
      ...part(sentence, i === 0 ? 0 : cuts[i - 1]!.to + 1, from),
      ...part(sentence, from, at, 'struck'),
    ]),
    ...part(sentence, cuts.at(-1)!.to + 1, items.length),
  ];
}

const wordsOf = (items: readonly Item[]): string[] => items.map(({ word }) => word);

/** Does the second stretch say the same thing as the first, but for a word or two? */
export function saysAnew(first: readonly string[], second: readonly string[]): boolean {
  if (Math.abs(first.length - second.length) > 2 || first.some((word) => ASKS.test(word))) return false;
  const shared = first.filter((word) => second.includes(word));
  return (
    shared.length * 2 >= Math.min(first.length, second.length) &&
    shared.some((word) => !SMALL.test(word)) &&
    first.some((word) => !second.includes(word)) &&
    second.some((word) => !first.includes(word))
  );
}
const ASKS = /^(?:or|which|what|how|whether|\?|\/|convert|name)$/;
const SMALL =
  /^(?:\W|an?|the|is|are|for|on|in|to|of|than|and|with|it|more|less|fewer|up|down|high|low|\w+er|\w+est|numbers?|gauges?|french|sizes?|needles?)$/;

/** "Page 36: before: the 18 G is pink. Now: the 18 G is green.": what was there before is struck. */
function beforeAndNow(sentence: Sentence, next: Sentence | undefined): Part[] | undefined {
  const { items } = sentence;
  const was = items.findIndex((_, i) => i < LABEL && labelled(items, i, WAS));
  if (was < 0) return undefined;
  const now = items.findIndex((_, i) => i > was && labelled(items, i, NOW));
  if (now < 0 && !next?.items.some((_, i) => i < 3 && labelled(next.items, i, NOW))) return undefined;
  const end = now < 0 ? items.length : now;
  return [...part(sentence, 0, end, 'struck'), ...part(sentence, end, items.length)];
}
const LABEL = 8;
const labelled = (items: readonly Item[], i: number, word: RegExp): boolean =>
  items[i + 1]?.word === ':' && word.test(items[i]!.word);
const WAS = /^(?:before|was|old|formerly|previously|earlier|printed|originally|original|wrong|error|then)$/;
const NOW = /^(?:now|after|new|corrected|correct|right|correction|amended|today|instead)$/;
