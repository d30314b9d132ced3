/** Which way numbers run, and what goes with width. */
import type { Text, Texts } from '../../texts/index.ts';

export const DIRECTION = {
  says: { en: 'Says {number} is {end}.', de: 'Hier steht: {^number} heißt {end}.' },
  saysMany: { en: 'Says {number} are {end}.', de: 'Hier steht: {^number} heißt {end}.' },
  holds: { en: 'With {system}, {rule}.', de: 'Bei {system} gilt: {rule}.' },
  coupled: { en: 'Says what is {wide} is {end}.', de: 'Hier steht: Was {wide} ist, ist {end}.' },
  coupledHolds: {
    en: 'All else equal, what is {wide} is {end}.',
    de: 'Bei sonst gleichen Bedingungen gilt: Was {wide} ist, ist {end}.',
  },
  moreZeros: { en: 'more zeros', de: 'mehr Nullen' },
  fewerZeros: { en: 'fewer zeros', de: 'weniger Nullen' },
  moreZerosThinner: { en: 'more zeros are thinner', de: 'mehr Nullen heißt dünner' },
  larger: { en: 'a larger {name} number', de: 'eine größere {name}' },
  smaller: { en: 'a smaller {name} number', de: 'eine kleinere {name}' },
} as const satisfies Texts;

/** The number of a system, as in "a larger … number". */
export const NUMBER = {
  gauge: { en: 'gauge', de: 'Gauge-Zahl' },
  French: { en: 'French', de: 'Charrière-Zahl' },
  metric: { en: 'metric', de: 'metrische Zahl' },
  size: { en: 'size', de: 'Stärkenzahl' },
} as const satisfies Texts;

/** Both ends of an axis: the greater and the less. */
export const ENDS = {
  outer: [
    { en: 'thicker', de: 'dicker' },
    { en: 'thinner', de: 'dünner' },
  ],
  bore: [
    { en: 'wider inside', de: 'innen weiter' },
    { en: 'narrower inside', de: 'innen enger' },
  ],
  flow: [
    { en: 'faster', de: 'schneller' },
    { en: 'slower', de: 'langsamer' },
  ],
  strength: [
    { en: 'stronger', de: 'reißfester' },
    { en: 'weaker', de: 'weniger reißfest' },
  ],
  hole: [
    { en: 'a larger hole', de: 'ein größeres Loch' },
    { en: 'a smaller hole', de: 'ein kleineres Loch' },
  ],
  number: [
    { en: 'a higher number', de: 'eine höhere Zahl' },
    { en: 'a lower number', de: 'eine niedrigere Zahl' },
  ],
  other: [
    { en: 'more', de: 'mehr' },
    { en: 'less', de: 'weniger' },
  ],
} as const satisfies Readonly<Record<string, readonly [Text, Text]>>;
