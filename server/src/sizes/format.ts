/** Reading and writing the value of a size. */
import type { Size, System } from './model.ts';

/** Rank of a USP size as written: "2-0", "2/0", "00", "0", "1-0", "#2". Undefined when it is none. */
export function uspRank(text: string): number | undefined {
  const clean = text
    .trim()
    .replace(/^#/, '')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/[oO]/g, '0');
  const dashed = /^([0-9]+(?:\.[0-9]+)?)[-/]0$/.exec(clean);
  if (dashed) return 1 - Number(dashed[1]);
  if (/^0{1,12}$/.test(clean)) return 1 - clean.length;
  return /^[0-9]{1,2}$/.test(clean) ? Number(clean) : undefined;
}

/** Reads the value of a system as reports write it. Undefined when the text is no value of it. */
export function parseValue(system: System, text: string): Size | undefined {
  const value = system === 'usp' ? uspRank(text) : number(text);
  return value === undefined || !Number.isFinite(value) ? undefined : { system, value };
}

/** "4.7", "4,7", ".035"; a fraction of an inch "5/8" or "1 1/2" too. */
function number(text: string): number | undefined {
  const clean = text.trim().replace(',', '.');
  const fraction = /^(?:([0-9]{1,3}) )?([0-9]{1,3})\/([0-9]{1,3})$/.exec(clean);
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  return /^[0-9]*\.?[0-9]+$/.test(clean) ? Number(clean) : undefined;
}

/** Rounds away binary noise: 12 significant digits. */
export const tidy = (value: number): number =>
  Number.isInteger(value) && Math.abs(value) < 1e12 ? value : Number(value.toPrecision(12));

/** "2-0", "18", "4.7", "0.035": the value without its unit, no trailing zeros. */
export function writeValue(size: Size): string {
  if (size.system !== 'usp') return String(tidy(size.value));
  return size.value >= 0 ? String(size.value) : `${tidy(1 - size.value)}-0`;
}

const LABELS: Readonly<Record<System, (value: string) => string>> = {
  usp: (v) => `USP ${v}`,
  'ep-metric': (v) => `metric ${v}`,
  'needle-gauge': (v) => `${v} G`,
  'wire-gauge': (v) => `${v}-gauge wire`,
  french: (v) => `${v} Fr`,
  millimetre: (v) => `${v} mm`,
  inch: (v) => `${v} in`,
  'wire-inch': (v) => `${v} in`,
  'tube-id': (v) => `${v} mm ID`,
  hegar: (v) => `Hegar ${v}`,
};

/** As a clinician writes it: "2-0", "18 G", "14 Fr", "metric 3", "7.5 mm ID". */
export const label = (size: Size): string =>
  size.system === 'usp' ? writeValue(size) : LABELS[size.system](writeValue(size));

/** `label` with the system said: "USP 2-0". */
export const fullLabel = (size: Size): string => LABELS[size.system](writeValue(size));

/** Names of the systems as shown. */
export const SYSTEM_NAMES: Readonly<Record<System, string>> = {
  usp: 'USP suture size',
  'ep-metric': 'metric (European Pharmacopoeia) suture number',
  'needle-gauge': 'needle gauge',
  'wire-gauge': 'wire gauge',
  french: 'French (Charrière)',
  millimetre: 'millimetres',
  inch: 'inches',
  'wire-inch': 'guidewire diameter in inches',
  'tube-id': 'tube inner diameter, mm',
  hegar: 'Hegar number',
};

/** Does a larger number mean a thicker thing? USP is split: n-0 runs down, whole numbers run up. */
export function direction(system: System): 'up' | 'down' | 'split' {
  if (system === 'usp') return 'split';
  return system === 'needle-gauge' || system === 'wire-gauge' ? 'down' : 'up';
}

/** One clause on how the system runs, for hovers and messages. */
export const DIRECTION_WORDS: Readonly<Record<System, string>> = {
  usp: 'more zeros are thinner, whole numbers above 0 are thicker',
  'ep-metric': 'a larger number is thicker',
  'needle-gauge': 'a larger gauge number is thinner',
  'wire-gauge': 'a larger gauge number is thinner',
  french: 'a larger French number is thicker',
  millimetre: 'a larger number is thicker',
  inch: 'a larger number is thicker',
  'wire-inch': 'a larger number is thicker',
  'tube-id': 'a larger number is wider inside',
  hegar: 'a larger number is thicker',
};
