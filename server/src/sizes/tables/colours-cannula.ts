/**
 * ISO 10555-5 hub colours of over-needle peripheral IV catheters.
 */
import type { ColourRow } from './rows.ts';

export const CANNULA_COLOUR_SOURCES = ['ISO10555-5', 'JPneedle', 'hilbert', 'ivcol', 'ivcolde'] as const;

export const CANNULA_COLOURS: readonly ColourRow[] = [
  { gauge: 10, colour: 'light brown', confidence: 'single-source' },
  { gauge: 12, colour: 'pale blue', confidence: 'single-source' },
  { gauge: 13, colour: 'red', confidence: 'single-source' },
  { gauge: 14, colour: 'orange', confidence: 'confirmed' },
  { gauge: 16, colour: 'medium grey', confidence: 'confirmed' },
  { gauge: 17, colour: 'white', confidence: 'confirmed' },
  { gauge: 18, colour: 'deep green', confidence: 'confirmed' },
  { gauge: 20, colour: 'pink', confidence: 'confirmed' },
  { gauge: 22, colour: 'deep blue', confidence: 'confirmed' },
  { gauge: 24, colour: 'yellow', confidence: 'confirmed' },
  { gauge: 26, colour: 'violet', confidence: 'confirmed' },
];
