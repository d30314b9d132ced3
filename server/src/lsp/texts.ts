/** What the server itself says. */
import type { Texts } from '../texts/index.ts';

export const ANSWER = {
  sizes: { en: 'Sizes', de: 'Größen' },
} as const satisfies Texts;
