/** Every kind of thing a size is written on, to be offered or tried; checked against the type by the compiler. */
import type { Device } from './model.ts';

export const DEVICES = [
  'needle',
  'winged-set',
  'cannula',
  'suture',
  'suture-needle',
  'steel-wire',
  'catheter',
  'urinary-catheter',
  'suction-catheter',
  'feeding-tube',
  'chest-tube',
  'drain',
  'central-line',
  'sheath',
  'guiding-catheter',
  'tracheal-tube',
  'double-lumen-tube',
  'guidewire',
  'k-wire',
  'dilator',
] as const satisfies readonly Device[];
