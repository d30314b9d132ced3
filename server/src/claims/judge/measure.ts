/** The edit that corrects a measured value, in the unit and with the digits the author used. */

import type { Note } from '../../notes/model.ts';
import type { Interval } from '../../sizes/model.ts';
import { phrase, quote } from '../../texts/index.ts';
import type { Operand } from '../model.ts';
import { REPAIR } from '../texts/repairs.ts';
import type { Repair } from './model.ts';

const NUMBER = /\d+(?:[.,]\d+)?|[.,]\d+/g;

/** None when the value is spelled in words, a fraction, a range, or when nothing would be left of it. */
export function measureEdit(note: Note, measured: Operand, truth: Interval): Repair | undefined {
  const mention = measured.mentions[0];
  const size = measured.sizes[0];
  if (!mention || !size || measured.sizes.length > 1) return undefined;
  const written = note.text.slice(mention.source.start, mention.source.end);
  const [only, ...more] = written.matchAll(NUMBER);
  if (!only || more.length > 0 || /[/¼½¾⅛⅜⅝⅞]/.test(written)) return undefined;
  const unit =
    (size.system === 'millimetre' || size.system === 'hegar' ? 1 : 25.4) * scaleOf(only[0], size.value);
  const text = rounded(truth, unit, mention.decimals);
  if (text === undefined || text === only[0]) return undefined;
  const shown = only[0].includes(',')
    ? text.replace('.', ',')
    : only[0].startsWith('.')
      ? text.replace(/^0/, '')
      : text;
  const start = mention.source.start + only.index;
  return {
    title: phrase(REPAIR.value, { text: quote(shown), word: quote(only[0]) }),
    edit: { span: { start, end: start + only[0].length }, text: shown },
  };
}

/** Written units may be cm or µm where the size holds mm: the ratio of value to written number. */
function scaleOf(number: string, value: number): number {
  const raw = Number(number.replace(',', '.'));
  return raw === 0 ? 1 : value / raw;
}

/** Digits are few enough when rounding moves the value by no more than this share of it. */
const NEAR = 0.02;

/** The nominal value with as few digits as keep it near, at least as many as were written. */
function rounded(truth: Interval, unit: number, decimals: number): string | undefined {
  const centre = (truth.nominal ?? (truth.min + truth.max) / 2) / unit;
  const texts = [0, 1, 2].map((more) => centre.toFixed(decimals + more));
  const text = texts.find((one) => Math.abs(Number(one) - centre) <= NEAR * centre) ?? texts.at(-1)!;
  return Number(text) > 0 ? text : undefined;
}
