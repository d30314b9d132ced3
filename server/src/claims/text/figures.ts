/** Numbers of a sum as the text writes them: a size with its unit, a length, or a bare number in digits or in words. */
import { wordValue } from '../../mentions/words/numbers.ts';
import type { System } from '../../sizes/model.ts';
import type { Item } from './items.ts';

export interface Figure {
  readonly at: number;
  readonly to: number;
  readonly value: number;
  readonly decimals: number;
  /** As written: a size with its unit, a length, or a bare number. */
  readonly unit?: System;
}

const UNIT_WORDS: ReadonlyMap<string, System> = new Map([
  ...['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((w) => [w, 'millimetre'] as const),
  ...['fr', 'french', 'charrière', 'charriere'].map((w) => [w, 'french'] as const),
]);

/** The number at item `i`, with its unit when one is written. */
export function figureAt(items: readonly Item[], i: number): Figure | undefined {
  const item = items[i];
  const size = item?.mention?.sizes[0];
  if (item?.mention) {
    if (!size || item.mention.sizes.length > 1 || item.mention.length) return undefined;
    const bare = /^\d+(?:[.,]\d+)?$/.test(item.mention.text);
    const shared = { at: i, to: i, decimals: item.mention.decimals };
    if (!bare) return { ...shared, value: size.value, unit: size.system };
    return { ...shared, value: Number(item.mention.text.replace(',', '.')) };
  }
  if (item?.kind !== 'word') return undefined;
  const digits = /^\d+(?:[.,]\d+)?$/.test(item.word);
  const value = digits
    ? Number(item.word.replace(',', '.'))
    : /^(?:pi|π)$/.test(item.word)
      ? Math.PI
      : wordValue(item.word);
  if (value === undefined || Number.isNaN(value)) return undefined;
  const unit = UNIT_WORDS.get(items[i + 1]?.word ?? '');
  const decimals = digits ? (item.word.split(/[.,]/)[1] ?? '').length : 0;
  return { at: i, to: unit ? i + 1 : i, value, decimals, ...(unit ? { unit } : {}) };
}
