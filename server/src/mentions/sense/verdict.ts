/** What a sense rule answers about a candidate. */
import type { System } from '../../sizes/model.ts';
import type { Evidence, Reading } from '../model.ts';

export type Verdict =
  | {
      readonly is: 'size';
      readonly system: System;
      readonly values?: readonly number[];
      readonly evidence: Evidence;
    }
  | { readonly is: 'ambiguous'; readonly readings: readonly Reading[]; readonly evidence: Evidence }
  | { readonly is: 'nothing' };

export const NOTHING: Verdict = { is: 'nothing' };
export const size = (system: System, rule: string, saw: string, values?: readonly number[]): Verdict => ({
  is: 'size',
  system,
  evidence: { rule, saw },
  ...(values ? { values } : {}),
});
export const ask = (readings: readonly Reading[], rule: string, saw: string): Verdict => ({
  is: 'ambiguous',
  readings,
  evidence: { rule, saw },
});
