/** Lists and ranges of numbers that share a unit: "14, 16 and 18 G", "27- to 30-gauge", "4-5-7 French". */
import { readNumber } from '../../server/src/mentions/words/numbers.ts';
import type { Item } from './model.ts';

/**
 * Before a number: no digit, letter, point, slash or sign that would make it part of something else. A hyphen after a unit
 * ("18G-20G", "8Fr-10Fr") joins two sizes.
 */
export const BEFORE =
  '(?:(?<![0-9A-Za-zÀ-ÿ.,°$€£#_−-])|(?<=[0-9][GFm″"]-)|(?<=[0-9](?:Fr|mm)-))(?<![0-9][/⁄:])';
/** After a unit. */
export const AFTER = '(?![0-9A-Za-zÀ-ÿ_]|-?[A-Z][0-9])';

/** After a number that ends a notation: it is not the head of a longer one ("4" of "4-0"). */
export const AFTER_NUMBER = '(?![0-9A-Za-zÀ-ÿ_%°]|[.,:][0-9]|[-‐‑–−/⁄][0-9])';

/** Space inside a size: plain, no-break, narrow no-break, thin. At most a line break. */
export const GAP = '[\\s]?';

const DASHES = '-‐‑‒–—−';
/** What may stand between two numbers of one series. */
export const JOIN = `(?:[\\s]?[${DASHES}/&+][\\s]?(?!0(?![0-9]|[.,][0-9]))|-?,[\\s](?:(?:and|or)[\\s])?|-?[\\s](?:to|through|and|or|und|oder|bis|a|y|o|ou|et|à|versus|vs\\.?)[\\s](?:(?:an?|the|even[\\s]an?)[\\s])?)`;

/** `number (join number)*`, bounded. */
export const series = (number: string, most = 9): string => `${number}(?:${JOIN}${number}){0,${most}}`;

const RANGE = new RegExp(`^[\\s]?[${DASHES}][\\s]?$|^-?[\\s](?:to|through|bis|a|à)[\\s]$`, 'i');

interface Part {
  readonly start: number;
  readonly end: number;
  readonly value: number;
  readonly decimals: number;
  readonly spoken: boolean;
}

/** Numbers of a series with their offsets; undefined when one cannot be read. */
function parts(text: string, number: RegExp): readonly Part[] | undefined {
  const found: Part[] = [];
  for (const match of text.matchAll(number)) {
    const read = readNumber(match[0]);
    if (!read) return undefined;
    found.push({ start: match.index, end: match.index + match[0].length, ...read });
  }
  return found;
}

const item = (first: Part, last: Part): Item => ({
  start: first.start,
  end: last.end,
  values: first === last ? [first.value] : [first.value, last.value],
  decimals: Math.max(first.decimals, last.decimals),
  ...(first.spoken ? { spoken: true } : {}),
});

/**
 * Reads a series: `text` is the match, `numbers` the source of one number, `plausible` the values its system has.
 * Implausible numbers at the left are somebody else's ("day 3, 14 Fr"); one inside spoils what stands before it.
 * The last item reaches to the end of the match, unit included.
 */
export function readSeries(
  text: string,
  numbers: string,
  plausible: (value: number) => boolean,
  unit: 'after' | 'before' = 'after',
  commas: 'stranger' | 'list' = 'stranger',
): readonly Item[] {
  const all = parts(text, new RegExp(numbers, 'gi'));
  if (!all) return [];
  const good = all.slice(all.findLastIndex((part) => !plausible(part.value)) + 1);
  const kept = commas === 'list' ? good : withoutStranger(good, text, unit);
  const items: Item[] = [];
  for (let i = 0; i < kept.length; i++) {
    const first = kept[i]!;
    const next = kept[i + 1];
    const after = kept[i + 2];
    const chain =
      after !== undefined && text.slice(next!.end, after.start) === text.slice(first.end, next!.start);
    if (next && RANGE.test(text.slice(first.end, next.start)) && !chain && !chained(kept, i, text)) {
      items.push(item(first, next));
      i++;
    } else items.push(item(first, first));
  }
  return stretched(items, text, unit);
}

/** True when a dash also stands before part i: "4-5-7" is a chain of three, not a range. */
function chained(all: readonly Part[], i: number, text: string): boolean {
  const before = all[i - 1];
  return before !== undefined && RANGE.test(text.slice(before.end, all[i]!.start));
}

/** Two numbers with a bare comma between are no list: "on day 3, 14 Fr". The one at the unit stays. */
function withoutStranger(all: readonly Part[], text: string, unit: 'after' | 'before'): readonly Part[] {
  // "down a 6.0 a 10 Fr": two things said one after the other; ranges in other languages keep one writing.
  if (
    all.length === 2 &&
    text.slice(all[0]!.end, all[1]!.start) === ' a ' &&
    all[0]!.decimals > all[1]!.decimals
  )
    return unit === 'after' ? all.slice(1) : all.slice(0, 1);
  if (all.length !== 2 || !/^,\s$/.test(text.slice(all[0]!.end, all[1]!.start))) return all;
  return unit === 'after' ? all.slice(1) : all.slice(0, 1);
}

function stretched(items: readonly Item[], text: string, unit: 'after' | 'before'): readonly Item[] {
  if (items.length === 0) return items;
  const at = unit === 'after' ? items.length - 1 : 0;
  return items.map((one, i) => {
    if (i !== at) return one;
    return unit === 'after' ? { ...one, end: text.length } : { ...one, start: 0 };
  });
}
