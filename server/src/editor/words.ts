/** Words the editor shows beside values: devices, verdicts, stances, confidence. */
import type { Stance, Verdict } from '../claims/model.ts';
import type { Confidence, Device, System } from '../sizes/model.ts';

export const DEVICE_WORDS: Readonly<Record<Device, string>> = {
  needle: 'needle',
  'winged-set': 'winged set',
  cannula: 'over-needle IV catheter',
  suture: 'suture',
  'suture-needle': 'suture needle',
  'steel-wire': 'steel wire',
  catheter: 'catheter',
  'urinary-catheter': 'urinary catheter',
  'suction-catheter': 'suction catheter',
  'feeding-tube': 'feeding tube',
  'chest-tube': 'chest tube',
  drain: 'drain',
  'central-line': 'central line',
  sheath: 'sheath',
  'guiding-catheter': 'guiding catheter',
  'tracheal-tube': 'tracheal tube',
  'double-lumen-tube': 'double-lumen tube',
  guidewire: 'guidewire',
  'k-wire': 'K-wire',
  dilator: 'dilator',
};

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  contradicted: 'Does not hold',
  agrees: 'Holds',
  'cannot-tell': 'Cannot be judged',
};

/** Why a statement that is not asserted is left alone. */
export const STANCE_WORDS: Readonly<Record<Stance, string>> = {
  asserted: '',
  denied: 'The text denies this',
  asked: 'A question, so not judged',
  quoted: 'A quotation, so not judged',
  hypothetical: 'A supposition, so not judged',
  option: 'An answer option, so not judged by itself',
  hedged: 'Said with reserve, so not judged',
};

export const CONFIDENCE_WORDS: Readonly<Record<Confidence, string>> = {
  confirmed: 'confirmed by several sources',
  'single-source': 'one source only',
  memory: 'some values from memory, not checked against a source',
  'common-practice': 'common practice, no source',
};

/** Column titles of conversions. */
export const TARGET_WORDS: Readonly<Record<System, string>> = {
  usp: 'USP',
  'ep-metric': 'metric',
  'needle-gauge': 'gauge',
  'wire-gauge': 'wire gauge',
  french: 'French',
  millimetre: 'mm',
  inch: 'inch',
  'wire-inch': 'inch',
  'tube-id': 'tube ID',
  hegar: 'Hegar',
};

export { CAUTION } from '../sizes/index.ts';
