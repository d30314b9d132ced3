/** Words in pictures of sizes. */
import type { Texts } from '../../texts/index.ts';

export const PICTURE = {
  inside: { en: '{length} inside', de: 'innen {length}' },
  bar: { en: '{mm} mm', de: '{mm} mm' },
  barWider: {
    en: '{mm} mm; the finest is drawn wider to be seen',
    de: '{mm} mm; das Feinste ist breiter gezeichnet',
  },
  toScale: { en: 'To scale: {sizes}', de: 'Maßstäblich: {sizes}' },
} as const satisfies Texts;
