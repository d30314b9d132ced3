/**
 * Over-needle peripheral IV catheters, outer diameter, mm. `listed`: diameters listed for the gauge (JPneedle, single
 * source). `min`, `max`: ranges of ISO 10555-5, from memory; they agree with the list.
 */
import type { CannulaRow } from './rows.ts';

export const IV_CANNULA: readonly CannulaRow[] = [
  { gauge: 10, listed: [3.3, 3.4], min: 3.25, max: 3.549 },
  { gauge: 12, listed: [2.6, 2.7, 2.8], min: 2.55, max: 2.849 },
  { gauge: 13, listed: [2.3, 2.4, 2.5], min: 2.25, max: 2.549 },
  { gauge: 14, listed: [1.9, 2.0, 2.1, 2.2], min: 1.85, max: 2.249 },
  { gauge: 16, listed: [1.6, 1.7, 1.8], min: 1.55, max: 1.849 },
  { gauge: 17, listed: [1.4, 1.5], min: 1.35, max: 1.549 },
  { gauge: 18, listed: [1.2, 1.3], min: 1.15, max: 1.349 },
  { gauge: 20, listed: [1.0, 1.1], min: 0.95, max: 1.149 },
  { gauge: 22, listed: [0.8, 0.9], min: 0.75, max: 0.949 },
  { gauge: 24, listed: [0.7], min: 0.65, max: 0.749 },
  { gauge: 26, listed: [0.6], min: 0.55, max: 0.649 },
];
