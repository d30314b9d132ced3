/** Writings that no system has and no notation reads: "0-4 nylon", "a −1 Fr dilator", "an 8-0 Fr catheter", "a 0 G needle". */
import type { ExistenceClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { materialsIn } from '../text/materials.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

export const oddSizes: Construction = {
  id: 'odd-sizes',
  leaning: true,
  needs: () => [{ like: ODD }, { sizes: 1, like: /^(?:usp|size) \d{1,2}-1$/ }],
  read(scene) {
    return scene.items.flatMap((_, i) => {
      const odd = oddAt(scene.items, i);
      return odd ? [reading(scene, odd)] : [];
    });
  },
};

/** What such a writing may begin with. */
const ODD = /^(?:\d{1,2}[-/]\d{1,2}(?:[-/]\d)?|\d[.,]\d[-/]0|0|[-−–])$/;

interface Odd {
  readonly from: number;
  readonly to: number;
  readonly because: string;
}

const UNIT = /^(?:fr|french|g|gauge|ch)$/;
const THING =
  /^(?:needles?|cannulas?|cannulae|catheters?|tubes?|drains?|dilators?|sheaths?|foley|lines?|stents?|hypodermic|iv|spinal)$/;
const USP = 'USP sizes are whole numbers, or a count of zeros before “-0”: 0, 2-0, 3-0';
const WHOLE = 'gauge and French are numbers above zero';

function oddAt(items: readonly Item[], i: number): Odd | undefined {
  const { word, kind } = items[i]!;
  if (kind === 'size') return zerosWithUnit(items, i) ?? slashed(items, i) ?? named(items, i);
  const next = items[i + 1]?.word ?? '';
  if (/^\d{1,2}[-/]0$/.test(word) && UNIT.test(next))
    return { from: i, to: i + 1, because: 'a count of zeros belongs to sutures, not to gauge or French' };
  if (word === '0' && UNIT.test(next) && THING.test(items[i + 2]?.word ?? '') && bare(items, i))
    return { from: i, to: i + 1, because: WHOLE };
  if (/^[-−–]$/.test(word)) return negative(items, i);
  return thread(items, i) ? { from: i, to: i, because: USP } : undefined;
}

/** "a 9-0 French feeding tube": read as a suture size, and yet with the unit of another scale. */
function zerosWithUnit(items: readonly Item[], i: number): Odd | undefined {
  const { word } = items[i]!;
  return /^\d{1,2}[-/]0$/.test(word) &&
    UNIT.test(items[i + 1]?.word ?? '') &&
    THING.test(items[i + 2]?.deviceNoun ? items[i + 2]!.word : (items[i + 3]?.word ?? ''))
    ? { from: i, to: i + 1, because: 'a count of zeros belongs to sutures, not to gauge or French' }
    : undefined;
}

/** "with polyglactin, USP 2-1, twice round": named as one size of a thread, and no range of a table. */
function named(items: readonly Item[], i: number): Odd | undefined {
  const [, first] = /^(?:usp |size )(\d{1,2})-1$/.exec(items[i]!.word) ?? [];
  const after = joined(items, i + 1, i + 3);
  return first !== undefined &&
    Number(first) > 1 &&
    materialsIn(items).some((m) => i - m.to <= 3 && i > m.at) &&
    !/^(?:to|or|and|-|–|depend\w*|as|by|sutures|threads|according)\b/.test(after) &&
    !items.slice(0, i).some(({ word }) => /^(?:sizes|from|between|range|usually|sutures|threads)$/.test(word))
    ? { from: i, to: i, because: USP }
    : undefined;
}

/** "1/0/0": a size with another slash and number. */
function slashed(items: readonly Item[], i: number): Odd | undefined {
  const [item, mark, more] = [items[i]!, items[i + 1], items[i + 2]];
  const usp = item.mention?.sizes[0]?.system === 'usp';
  if (!usp || mark?.word !== '/' || mark.start !== item.end || more?.word !== '0' || more.start !== mark.end)
    return undefined;
  return { from: i, to: i + 2, because: USP };
}

const bare = (items: readonly Item[], i: number): boolean =>
  /^(?:an?|the|with|of|our|one|use|take|pass|stock)$/.test(items[i - 1]?.word ?? '');

/** "a −1 Fr dilator". */
function negative(items: readonly Item[], i: number): Odd | undefined {
  const [number, unit, thing] = [items[i + 1], items[i + 2], items[i + 3]];
  const close = number?.start === items[i]!.end && bare(items, i);
  return close &&
    /^\d{1,2}$/.test(number.word) &&
    UNIT.test(unit?.word ?? '') &&
    THING.test(thing?.word ?? '')
    ? { from: i, to: i + 2, because: WHOLE }
    : undefined;
}

/** "0-4 nylon", "8-1 nylon", "0.5-0", right before a material: not "2-3 stitches", a count. */
function thread(items: readonly Item[], i: number): boolean {
  const { word } = items[i]!;
  const pair = /^(\d{1,2})[-/](\d)$/.exec(word);
  const [first, second] = [Number(pair?.[1] ?? 0), Number(pair?.[2] ?? 0)];
  const backwards =
    pair !== null && second > 0 && (first === 0 ? second > 1 : first > second && second === 1);
  const many = pair !== null && second === 0 && first > 20;
  if (/^0[.,]\d[-/]0$/.test(word)) return true;
  if (/^\d[.,]\d[-/]0$/.test(word))
    return (
      bare(items, i) ||
      (/^(?:for|and|or|in|as|,|:|to)$/.test(items[i - 1]?.word ?? '') && amongThreads(items))
    );
  return (
    (backwards || many) &&
    (materialsIn(items).some((m) => m.at === i + 1) || (ofThread(items) && bare(items, i) && backwards)) &&
    !/^(?:to|and|or|x|×)$/.test(items[i - 1]?.word ?? '')
  );
}

/** Beside sizes of threads, or beside what they are made of. */
const amongThreads = (items: readonly Item[]): boolean =>
  ofThread(items) || items.some((item) => item.mention?.sizes[0]?.system === 'usp');

/** "It's a very fine thread, an 8-1": a thread is what the sentence is about. */
const ofThread = (items: readonly Item[]): boolean =>
  items.some((item) => /^(?:threads?|sutures?|silk|nylon)$/.test(item.word)) &&
  !items.some((item) => /^(?:won|lost|score|scored|beat|ratio|page|room|ward)$/.test(item.word));

function reading(scene: Scene, { from, to, because }: Odd): Reading {
  const [first, last] = [scene.items[from]!, scene.items[to]!];
  const span = spanOf(scene, first, last);
  const claim: ExistenceClaim = {
    kind: 'existence',
    construction: 'odd-sizes',
    span: sentenceSpan(scene),
    focus: span,
    size: { sizes: [], mentions: [], span },
    odd: { written: scene.passage.text.slice(first.start, last.end), because },
  };
  return { claim, at: from, from, to };
}
