/**
 * What is reported. Lives here: one file a check, the list of them, deliberate marks. Not here: reading or judging
 * (`claims`), settings or several notes (`course`).
 */
import type { Locale } from '../texts/index.ts';
import { absence } from './absence.ts';
import { answerKey } from './answer-key.ts';
import { category } from './category.ts';
import { colour } from './colour.ts';
import { comparison } from './comparison.ts';
import { courseDiffers } from './course-differs.ts';
import type { CheckDefinition, CheckInput } from './definition.ts';
import { coverDeliberate, idleMark } from './deliberate.ts';
import { direction } from './direction.ts';
import { equivalence } from './equivalence.ts';
import { existence } from './existence.ts';
import { fit } from './fit.ts';
import { flow } from './flow.ts';
import { formula } from './formula.ts';
import { houseStyle } from './house-style.ts';
import { letterZero } from './letter-zero.ts';
import { material } from './material.ts';
import type { Finding } from './model.ts';
import { needlePoint } from './needle-point.ts';
import { order } from './order.ts';
import { range } from './range.ts';
import { sizeSheet } from './size-sheet.ts';
import { ABOUT_DE } from './texts/about.ts';
import { unclear } from './unclear.ts';

export { type CheckDefinition, type CheckInput, type HouseStyle, STYLE_KEYS } from './definition.ts';
export type * from './model.ts';
export { closingMark, type KeptSheet, sheetBody, sheetsOf } from './size-sheet.ts';

/** Every check, in the order in which the README lists them. */
export const CHECKS: readonly CheckDefinition[] = [
  direction,
  comparison,
  flow,
  equivalence,
  order,
  range,
  category,
  fit,
  formula,
  colour,
  material,
  needlePoint,
  existence,
  absence,
  answerKey,
  unclear,
  letterZero,
  houseStyle,
  courseDiffers,
  sizeSheet,
  idleMark,
];

/** Findings of one note in source order. Those left in on purpose carry the reason in `deliberate`. */
export function runChecks(input: CheckInput): Finding[] {
  const found = CHECKS.flatMap((check) => check.run(input));
  return coverDeliberate(input.note, found, input.locale).sort(
    (a, b) => a.span.start - b.span.start || a.span.end - b.span.end,
  );
}

/** Title and page of a check in a language. */
export function aboutCheck(
  { id, title, docs }: CheckDefinition,
  locale?: Locale,
): Pick<CheckDefinition, 'title' | 'docs'> {
  return (locale === 'de' ? ABOUT_DE[id] : undefined) ?? { title, docs };
}
