/** Every size of a note or a course once, with its thickness, for the chart view. */

import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import {
  direction,
  fullLabel,
  innerDiameter,
  materialById,
  outerDiameter,
  SYSTEM_NAMES,
} from '../sizes/index.ts';
import type { Interval, Size } from '../sizes/model.ts';
import { type Locale, say, tell } from '../texts/index.ts';
import { lensOf } from './lens.ts';
import { millimetres } from './millimetres.ts';
import { NAME } from './texts/help.ts';
import { DEVICE_WORDS } from './texts/words.ts';

export interface ChartRow {
  readonly label: string;
  readonly system: string;
  /** Devices and materials it was named with, in words. */
  readonly device: string;
  /** Millimetres. */
  readonly min: number;
  readonly max: number;
  readonly measure: string;
  /** The size gives the inside: drawn as a hole. */
  readonly hollow: boolean;
  readonly standard: string;
  readonly caution: string;
  /** Which way the numbers run. */
  readonly runs: 'up' | 'down' | 'split';
  /** Where it stands, by note. */
  readonly places: readonly { readonly note: string; readonly span: Span }[];
}

export interface Named {
  readonly note: string;
  readonly analysis: Analysis;
}

interface Building extends ChartRow {
  readonly devices: Set<string>;
  readonly places: { note: string; span: Span }[];
}

/** Rows from thin to thick; sizes without a known diameter are left out. */
export function chartRows(notes: readonly Named[], locale?: Locale): ChartRow[] {
  const rows = new Map<string, Building>();
  for (const { note, analysis } of notes) {
    for (const mention of analysis.mentions.filter((each) => each.length !== true)) {
      for (const size of mention.sizes) add(rows, size, mention, note, locale);
    }
  }
  return [...rows.values()]
    .sort((a, b) => a.min + a.max - (b.min + b.max) || (a.label < b.label ? -1 : 1))
    .map(({ devices, ...row }) => ({ ...row, device: [...devices].sort().join(', ') }));
}

function add(rows: Map<string, Building>, size: Size, mention: Mention, note: string, locale?: Locale): void {
  const measured = diameter(size, mention);
  if (measured === undefined) return;
  const { min, max } = measured.interval;
  const key = `${fullLabel(size)}|${min}|${max}`;
  const row = rows.get(key) ?? { ...rowOf(size, measured, locale), devices: new Set(), places: [] };
  rows.set(key, row);
  row.places.push({ note, span: mention.source });
  const material = mention.material === undefined ? undefined : materialById(mention.material)?.name;
  const device = mention.device === undefined ? undefined : DEVICE_WORDS[mention.device];
  for (const word of [device, material]) if (word !== undefined) row.devices.add(tell(word, locale));
}

function rowOf(size: Size, { interval, hollow }: Measured, locale?: Locale): Omit<ChartRow, 'places'> {
  const measure = millimetres(interval);
  return {
    label: tell(fullLabel(size), locale),
    system: tell(SYSTEM_NAMES[size.system], locale),
    device: '',
    min: interval.min,
    max: interval.max,
    measure: hollow ? say(locale, NAME.inside, { measure }) : tell(measure, locale),
    hollow,
    standard: tell(interval.standard, locale),
    caution: tell(interval.caution ?? '', locale),
    runs: direction(size.system),
  };
}

interface Measured {
  readonly interval: Interval;
  readonly hollow: boolean;
}

function diameter(size: Size, mention: Mention): Measured | undefined {
  const lens = lensOf(mention);
  const outer = outerDiameter(size, lens);
  if (outer !== undefined) return { interval: outer, hollow: false };
  const inner = innerDiameter(size, lens);
  return inner && { interval: inner, hollow: true };
}
