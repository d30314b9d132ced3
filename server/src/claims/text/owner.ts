/**
 * Whose predicate a word is: "Silk is what we were taught on; it handles well and is absorbed in ten days." From the word
 * back to the first thing that can be its subject: a thing named, a pronoun for it, or something else.
 */
import type { Item } from './items.ts';

/** A thing named in the sentence: a material, a needle point. */
export interface Thing {
  readonly at: number;
  readonly to: number;
  readonly id: string;
}

/** Named in the sentence, spoken of before it, one of two that were, both of those named, or something else altogether. */
export type Owner<T extends Thing> = T | 'before' | 'former' | 'latter' | 'both' | 'other';

const OPENS =
  /^(?:[,;:(—–-]|and|but|so|because|since|as|while|whereas|when|where|if|that|which|who|though|although|then|or)$/;
const PRONOUN = /^(?:it|it's|it'll|they|they're|they'll|this|that's|these|those|stuff)$/;
const RELATIVE = /^(?:that|which)$/;
const ARTICLE = /^(?:the|an?|our|your|his|her|my|their|every|each|any|all|most|some|no)$/;
const PEOPLE =
  /^(?:we|you|i|he|she|who|nobody|no-one|someone|somebody|everyone|everybody|people|patients?|surgeons?|nurses?)$/;
const TURNS = /^(?:than|unless|whether)$/;
/** "unlike silk", "over silk": what is said is not said of it. */
const LIKENS =
  /^(?:like|unlike|than|as|not|without|instead|over|against|versus|vs|or|except|but|under|beside|beneath|above|from|to|plus)$/;
const PIECES =
  /^(?:knots?|loops?|sections?|cross-sections?|shape|body|edges?|tips?|profile|structure|nature|strength|support|strands?|stitch|stitches|lengths?|sutures?|threads?|packets?|pieces?|types?|kinds?|forms?|ties?|use|pack|box)$/;

/** The thing that the word at `at` is said of. `nouns` are the words that stand for any such thing. */
export function ownerOf<T extends Thing>(
  items: readonly Item[],
  at: number,
  things: readonly T[],
  nouns: RegExp,
): Owner<T> {
  for (let i = at - 1; i >= 0; i--) {
    const { word } = items[i]!;
    const thing = things.find((one) => one.at <= i && i <= one.to);
    if (thing && !likened(items, thing)) return thing;
    if (thing) {
      i = thing.at;
      continue;
    }
    if (word === ',' || word === '–' || word === '—' || word === ')') {
      const skipped = beforeAside(items, i, things);
      if (skipped) return skipped;
    }
    if (TURNS.test(word)) return 'other';
    if (ONE_OF_TWO.test(word)) return oneOfTwo(items, i, things);
    if (word === 'both') return things.filter((one) => one.to < i).length === 2 ? 'both' : 'other';
    if (PRONOUN.test(word)) return meant(items, i, things);
    if (RELATIVE.test(word)) return relative(items, i, things, nouns);
    if (PEOPLE.test(word)) return 'other';
    if (ARTICLE.test(word) && opens(items, i))
      return nouns.test(items[i + 1]?.word ?? '') || nouns.test(items[i + 2]?.word ?? '')
        ? meant(items, i, things)
        : 'other';
    if (nouns.test(word) && opens(items, i)) return meant(items, i, things);
  }
  return 'before';
}

/** "Poliglecaprone, the one we use after a spay, is …": a thing with an aside behind it, and then its verb. */
function beforeAside<T extends Thing>(
  items: readonly Item[],
  close: number,
  things: readonly T[],
): T | undefined {
  if (!VERB.test(items[close + 1]?.word ?? '')) return undefined;
  const mark = items[close]!.word === ')' ? '(' : items[close]!.word;
  const open = items.findLastIndex(({ word }, j) => j < close - 1 && word === mark);
  const named = things.filter((one) => one.to < open && open - one.to <= 3);
  const inside = things.some((one) => one.at > open && one.to < close);
  const [thing, ...more] = named;
  if (open < 0 || !thing || inside || more.length > 0 || likened(items, thing)) return undefined;
  return items
    .slice(thing.to + 1, open)
    .every(({ kind, word }) => kind === 'size' || PIECES.test(word) || NAMED.test(word))
    ? thing
    : undefined;
}
const VERB =
  /^(?:is|are|was|has|have|had|does|do|will|gets?|goes|comes|stays|remains|needs?|must|can|cannot|isn't|doesn't|dissolves|lasts|counts|belongs)$/;
const NAMED = /^(?:needles?|points?|itself|too|also|ones?)$/;

/** A clause begins here; "as a braid" is none. */
const opens = (items: readonly Item[], i: number): boolean =>
  i === 0 || (OPENS.test(items[i - 1]!.word) && (items[i - 1]!.word !== 'as' || items[i - 2]?.word === ','));

const ONE_OF_TWO = /^(?:former|latter)$/;
/** "Of nylon and silk only the former …". */
function oneOfTwo<T extends Thing>(items: readonly Item[], at: number, things: readonly T[]): Owner<T> {
  const named = things.filter((one) => one.to < at);
  const former = items[at]!.word === 'former';
  if (named.length === 0) return former ? 'former' : 'latter';
  return named.length === 2 ? named[former ? 0 : 1]! : 'other';
}

function likened(items: readonly Item[], { at }: Thing): boolean {
  const before = ARTICLE.test(items[at - 1]?.word ?? '') ? at - 1 : at;
  if (
    items[before - 1]?.word === 'of' &&
    /^(?:instead|outside|short|made)$/.test(items[before - 2]?.word ?? '')
  )
    return true;
  return LIKENS.test(items[before - 1]?.word ?? '') && !PIECES.test(items[before - 2]?.word ?? '');
}

/** "nylon, which …", "a thread that …"; "glue that dissolves" is another thing. */
function relative<T extends Thing>(
  items: readonly Item[],
  at: number,
  things: readonly T[],
  nouns: RegExp,
): Owner<T> {
  const before = things.findLast((thing) => thing.to < at);
  const gap = items.slice(Math.max(before ? before.to + 1 : 0, at - 3), at);
  const named =
    before &&
    at - before.to <= 3 &&
    gap.every((item) => item.word === ',' || item.kind === 'size' || nouns.test(item.word));
  if (named) return likened(items, before) ? 'other' : before;
  return gap.some((item) => nouns.test(item.word)) || at === 0 ? meant(items, at, things) : 'other';
}

/** A pronoun stands for the one thing named before it in the sentence, else for what was spoken of before. */
function meant<T extends Thing>(items: readonly Item[], at: number, things: readonly T[]): Owner<T> {
  const before = things.filter((thing) => thing.to < at);
  if (before.length === 0) return 'before';
  const own = before.filter((thing) => !likened(items, thing));
  const only = own.at(-1);
  return only && own.every(({ id }) => id === only.id) ? only : 'other';
}
