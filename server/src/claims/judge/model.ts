/** A verdict on a claim as if asserted, with its words and its derivation. */

import type { Edit, Step } from '../../checks/model.ts';
import type { Context } from '../../mentions/model.ts';
import { SOURCES } from '../../sizes/index.ts';
import type { Interval, Lens, Size } from '../../sizes/model.ts';
import { type Part, type Phrase, phrase } from '../../texts/index.ts';
import type { Operand, Verdict } from '../model.ts';
import { MEASURE } from '../texts/measures.ts';

/** Its words are not yet in any language. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly says: Part;
  readonly holds: Part;
  readonly source: Part;
  readonly sources: readonly string[];
  readonly repair?: Repair;
  readonly steps: readonly JudgedStep[];
  /** Holds of one thing that could be meant and not of another: to deny it is no mistake. */
  readonly partly?: true;
}

export interface Repair {
  readonly title: Part;
  readonly edit: Edit;
}

export interface JudgedStep extends Omit<Step, 'text'> {
  readonly text: Part;
}

export const cannotTell = (says: Part, holds: Part): Judgement => ({
  verdict: 'cannot-tell',
  says,
  holds,
  source: '',
  sources: [],
  steps: [],
});

/** What decides the thickness of an operand: its own device and material, else what the course settles. */
export function lensOf(operand: Operand, context?: Context): Lens {
  const device = operand.device ?? context?.device;
  const material = operand.material ?? (context?.suture === 'collagen' ? 'gut' : undefined);
  return { ...(device ? { device } : {}), ...(material ? { material } : {}) };
}

/** All of one kind, or undecided. */
export function unanimous<T>(values: readonly T[]): T | undefined {
  const first = values[0];
  return values.every((value) => value === first) ? first : undefined;
}

/** Millimetres as shown in a message: three decimals below 1 mm, two above, no trailing zeros. */
export const mm = (value: number): string => `${Number(value.toFixed(value < 1 ? 3 : 2))}`;

/** "0.30 to 0.349 mm", or "4.67 mm" when both ends are close. */
export function intervalWords(interval: Interval): Phrase {
  const { min, max, nominal } = interval;
  if (max - min <= 0.051 && nominal !== undefined)
    return phrase(MEASURE.mm, { value: mm(Number(nominal.toFixed(2))) });
  if (mm(min) === mm(max)) return phrase(MEASURE.mm, { value: mm(min) });
  return phrase(MEASURE.span, { min: mm(min), max: mm(max) });
}

/** The first two names of sources, each once. */
export function sourceNames(keys: readonly string[]): string {
  let first: string | undefined;
  for (const key of keys) {
    const name = SOURCES[key]?.short;
    if (name === undefined || name === first) continue;
    if (first !== undefined) return `${first}; ${name}`;
    first = name;
  }
  return first ?? '';
}

export const sizesOf = (operand: Operand): readonly Size[] => operand.sizes;
