/**
 * Birmingham (Stubs iron) wire gauge, inches. Confirmed. A needle diameter is never computed from it.
 */
import type { WireRow } from './rows.ts';

export const BWG_SOURCES = ['BWG1', 'BWG2', 'BWG3', 'BWG4'] as const;

export const BWG: readonly WireRow[] = [
  { gauge: 0, inch: 0.34 },
  { gauge: 1, inch: 0.3 },
  { gauge: 2, inch: 0.284 },
  { gauge: 3, inch: 0.259 },
  { gauge: 4, inch: 0.238 },
  { gauge: 5, inch: 0.22 },
  { gauge: 6, inch: 0.203 },
  { gauge: 7, inch: 0.18 },
  { gauge: 8, inch: 0.165 },
  { gauge: 9, inch: 0.148 },
  { gauge: 10, inch: 0.134 },
  { gauge: 11, inch: 0.12 },
  { gauge: 12, inch: 0.109 },
  { gauge: 13, inch: 0.095 },
  { gauge: 14, inch: 0.083 },
  { gauge: 15, inch: 0.072 },
  { gauge: 16, inch: 0.065 },
  { gauge: 17, inch: 0.058 },
  { gauge: 18, inch: 0.049 },
  { gauge: 19, inch: 0.042 },
  { gauge: 20, inch: 0.035 },
  { gauge: 21, inch: 0.032 },
  { gauge: 22, inch: 0.028 },
  { gauge: 23, inch: 0.025 },
  { gauge: 24, inch: 0.022 },
  { gauge: 25, inch: 0.02 },
  { gauge: 26, inch: 0.018 },
  { gauge: 27, inch: 0.016 },
  { gauge: 28, inch: 0.014 },
  { gauge: 29, inch: 0.013 },
  { gauge: 30, inch: 0.012 },
  { gauge: 31, inch: 0.01 },
  { gauge: 32, inch: 0.009 },
  { gauge: 33, inch: 0.008 },
  { gauge: 34, inch: 0.007 },
  { gauge: 35, inch: 0.005 },
  { gauge: 36, inch: 0.004 },
];
