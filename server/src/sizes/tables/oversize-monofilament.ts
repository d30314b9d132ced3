/**
 * Second diameter column printed for some synthetic absorbable monofilaments ("USP except for diameter"), mm.
 * Such a thread may be thicker than the USP row of its label: its measured diameter is never called wrong.
 * Single source: PhEur-table, jpvet.
 */
import type { OversizeRow } from './rows.ts';

export const OVERSIZE_SOURCES = ['PhEur-table', 'jpvet'] as const;

export const OVERSIZE_MONOFILAMENT: readonly OversizeRow[] = [
  { rank: -6, min: 0.05, max: 0.094 },
  { rank: -5, min: 0.095, max: 0.149 },
  { rank: -4, min: 0.15, max: 0.199 },
  { rank: -3, min: 0.2, max: 0.249 },
  { rank: -2, min: 0.25, max: 0.339 },
  { rank: -1, min: 0.34, max: 0.399 },
  { rank: 0, min: 0.4, max: 0.499 },
  { rank: 1, min: 0.5, max: 0.57 },
  { rank: 2, min: 0.571, max: 0.61 },
];
