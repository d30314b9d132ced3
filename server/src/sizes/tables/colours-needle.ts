/**
 * ISO 6009 hub colours of hypodermic needles. The colour never replaces the marked size. 31 to 34 G from memory.
 */
import type { ColourRow } from './rows.ts';

export const NEEDLE_COLOUR_SOURCES = [
  'ISO6009-92',
  'ISO6009-16',
  'JPneedle',
  'jawiki',
  'jpnurse',
  'de6009',
] as const;

export const NEEDLE_COLOURS: readonly ColourRow[] = [
  { gauge: 10, colour: 'olive brown', confidence: 'confirmed' },
  { gauge: 11, colour: 'green-yellow', confidence: 'confirmed' },
  { gauge: 12, colour: 'pale blue', confidence: 'confirmed' },
  { gauge: 13, colour: 'purple', confidence: 'confirmed' },
  { gauge: 14, colour: 'pale green', confidence: 'confirmed' },
  { gauge: 15, colour: 'blue-grey', confidence: 'confirmed' },
  { gauge: 16, colour: 'white', confidence: 'confirmed' },
  { gauge: 17, colour: 'red-violet', confidence: 'confirmed' },
  { gauge: 18, colour: 'pink', confidence: 'confirmed' },
  { gauge: 19, colour: 'cream', confidence: 'confirmed' },
  { gauge: 20, colour: 'yellow', confidence: 'confirmed' },
  { gauge: 21, colour: 'deep green', confidence: 'confirmed' },
  { gauge: 22, colour: 'black', confidence: 'confirmed' },
  { gauge: 23, colour: 'deep blue', confidence: 'confirmed' },
  { gauge: 24, colour: 'medium purple', confidence: 'confirmed' },
  { gauge: 25, colour: 'orange', confidence: 'confirmed' },
  { gauge: 26, colour: 'brown', confidence: 'confirmed' },
  { gauge: 27, colour: 'medium grey', confidence: 'confirmed' },
  { gauge: 28, colour: 'blue-green', confidence: 'confirmed' },
  { gauge: 29, colour: 'red', confidence: 'confirmed' },
  { gauge: 30, colour: 'yellow', confidence: 'confirmed' },
  { gauge: 31, colour: 'white', confidence: 'memory' },
  { gauge: 32, colour: 'deep green', confidence: 'memory' },
  { gauge: 33, colour: 'black', confidence: 'memory' },
  { gauge: 34, colour: 'orange', confidence: 'memory' },
];
