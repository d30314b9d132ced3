/** Spans of time in a row of items, in days. */
import { wordValue } from '../../mentions/words/numbers.ts';
import type { Item } from './items.ts';

const DAYS: Readonly<Record<string, number>> = { day: 1, week: 7, fortnight: 14, month: 30, year: 365 };
/** "about ten days", "two to three weeks", "a fortnight", in days. */
export function spanAt(items: readonly Item[]): { low: number; high: number } | undefined {
  const words = items
    .filter(
      (item) =>
        !/^(?:about|around|roughly|some|only|just|nearly|almost|a|an|the|further|matter|of)$/.test(item.word),
    )
    .map((item) => item.word);
  const unitAt = words.findIndex((word) => Object.hasOwn(DAYS, word.replace(/s$/, '')));
  if (unitAt < 0 || unitAt > 3) return undefined;
  const unit = DAYS[words[unitAt]!.replace(/s$/, '')]!;
  const numbers = words.slice(0, unitAt).flatMap((word) => {
    const span = /^(\d+)[-–](\d+)$/.exec(word);
    if (span) return [Number(span[1]), Number(span[2])];
    const value = wordValue(word) ?? Number(word);
    return Number.isNaN(value) ? [] : [value];
  });
  // "over months" names no number; "a fortnight" is one.
  if (numbers.length === 0 && (unitAt > 0 || words[unitAt]!.endsWith('s'))) return undefined;
  const values = numbers.length === 0 ? [1] : numbers;
  return { low: Math.min(...values) * unit, high: Math.max(...values) * unit };
}
