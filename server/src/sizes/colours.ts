/** Hub, funnel and connector colours: which size a colour means depends on the code. */
import type { Confidence, Device, SourceKey } from './model.ts';
import { CANNULA_COLOUR_SOURCES, CANNULA_COLOURS } from './tables/colours-cannula.ts';
import { SUCTION_COLOURS, URINARY_COLOURS } from './tables/colours-french.ts';
import { NEEDLE_COLOUR_SOURCES, NEEDLE_COLOURS } from './tables/colours-needle.ts';

export type ColourCode = 'ISO 6009' | 'ISO 10555-5' | 'urinary catheter' | 'suction catheter';

export interface Colour {
  /** Gauge or French. */
  readonly size: number;
  /** As the code names it: "deep green"; alternatives follow in `colours`. */
  readonly colour: string;
  readonly colours: readonly string[];
  /** Family of `colour`. */
  readonly family: string;
  /** Every family a reader may call it by: "red-violet" is red or purple to most. */
  readonly families: readonly string[];
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
}

const FAMILIES: Readonly<Record<string, string>> = {
  gray: 'grey',
  silver: 'grey',
  navy: 'blue',
  rose: 'pink',
  violet: 'purple',
  mauve: 'purple',
  lilac: 'purple',
  lavender: 'purple',
  ivory: 'cream',
  turquoise: 'blue-green',
  teal: 'blue-green',
};
const SHADE = /^(?:deep|dark|light|pale|medium|mid|bright|olive)[ -]/;

/** Family of a colour in words: "dark blue" → "blue", "gray" → "grey", "mauve" → "purple". */
export function colourFamily(words: string): string {
  const plain = words.trim().toLowerCase().replace(/\s+/g, ' ').replace(SHADE, '');
  return Object.hasOwn(FAMILIES, plain) ? FAMILIES[plain]! : plain;
}

/** Mixed hues go by either part in everyday speech. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  'red-violet': ['red', 'purple'],
  'blue-grey': ['blue', 'grey'],
  'green-yellow': ['green', 'yellow'],
  'yellow-green': ['green', 'yellow'],
  'blue-green': ['blue', 'green'],
  'olive brown': ['green'],
  cream: ['white', 'yellow'],
};

const familiesOf = (colour: string): string[] => [colourFamily(colour), ...(ALSO[colour] ?? [])];

interface Row {
  readonly size: number;
  readonly colours: readonly string[];
  readonly confidence: Confidence;
}
const build = (rows: readonly Row[], sources: readonly SourceKey[]): readonly Colour[] =>
  rows.map(({ size, colours, confidence }) => ({
    size,
    colour: colours[0]!,
    colours,
    family: colourFamily(colours[0]!),
    families: colours.flatMap(familiesOf),
    confidence,
    sources,
  }));
const byGauge = (row: { gauge: number; colour: string; confidence: Confidence }): Row => ({
  size: row.gauge,
  colours: [row.colour],
  confidence: row.confidence,
});
const byFrench = (row: { french: number; colours: readonly string[]; confidence: Confidence }): Row => ({
  size: row.french,
  colours: row.colours,
  confidence: row.confidence,
});

/** Every row of each code. */
export const COLOURS: Readonly<Record<ColourCode, readonly Colour[]>> = {
  'ISO 6009': build(NEEDLE_COLOURS.map(byGauge), NEEDLE_COLOUR_SOURCES),
  'ISO 10555-5': build(CANNULA_COLOURS.map(byGauge), CANNULA_COLOUR_SOURCES),
  'urinary catheter': build(URINARY_COLOURS.map(byFrench), ['foley']),
  'suction catheter': build(SUCTION_COLOURS.map(byFrench), ['JPneedle']),
};

/** Row of a gauge or French number; undefined when the code lists none. */
export const colourOf = (code: ColourCode, size: number): Colour | undefined =>
  COLOURS[code].find((row) => row.size === size);

/** May a size be called by this family in the code? Undefined when the code lists no colour for the size. */
export const colourFits = (code: ColourCode, size: number, family: string): boolean | undefined =>
  colourOf(code, size)?.families.includes(family);

/** Sizes whose colour is of a family, in the order of the code; mixed hues ("blue-grey") are no family's. */
export const gaugesOf = (code: ColourCode, family: string): number[] =>
  COLOURS[code].filter((row) => row.family === family).map((row) => row.size);

/** The code that colours a kind of thing. */
export function colourCodeOf(device: Device): ColourCode | undefined {
  return Object.hasOwn(CODES, device) ? CODES[device] : undefined;
}
const CODES: Partial<Readonly<Record<Device, ColourCode>>> = {
  needle: 'ISO 6009',
  'winged-set': 'ISO 6009',
  cannula: 'ISO 10555-5',
  'urinary-catheter': 'urinary catheter',
  'suction-catheter': 'suction catheter',
};
