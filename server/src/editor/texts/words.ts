/** Words beside values. Devices and units are told like all words of tables; the rest stands in both languages here. */
import type { Device, System } from '../../sizes/model.ts';
import type { Texts } from '../../texts/index.ts';

export const VERDICT = {
  contradicted: { en: 'Does not hold', de: 'Stimmt nicht' },
  agrees: { en: 'Holds', de: 'Stimmt' },
  'cannot-tell': { en: 'Cannot be judged', de: 'Lässt sich nicht beurteilen' },
} as const satisfies Texts;

/** Why a statement that is not asserted is left alone. */
export const STANCE = {
  asserted: { en: '', de: '' },
  denied: { en: 'The text denies this', de: 'Der Text verneint das' },
  asked: { en: 'A question, so not judged', de: 'Eine Frage, darum nicht beurteilt' },
  quoted: { en: 'A quotation, so not judged', de: 'Ein Zitat, darum nicht beurteilt' },
  hypothetical: { en: 'A supposition, so not judged', de: 'Eine Annahme, darum nicht beurteilt' },
  option: {
    en: 'An answer option, so not judged by itself',
    de: 'Eine Antwortmöglichkeit, darum nicht für sich beurteilt',
  },
  hedged: { en: 'Said with reserve, so not judged', de: 'Mit Vorbehalt gesagt, darum nicht beurteilt' },
} as const satisfies Texts;

export const CONFIDENCE = {
  confirmed: { en: 'confirmed by several sources', de: 'durch mehrere Quellen bestätigt' },
  'single-source': { en: 'one source only', de: 'nur eine Quelle' },
  memory: {
    en: 'some values from memory, not checked against a source',
    de: 'einige Werte aus dem Gedächtnis, nicht an einer Quelle geprüft',
  },
  'common-practice': { en: 'common practice, no source', de: 'üblich, ohne Quelle' },
} as const satisfies Texts;

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
