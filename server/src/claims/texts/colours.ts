/** Colours of hubs, funnels and connectors. */
import type { Texts } from '../../texts/index.ts';

export const COLOUR = {
  says: { en: 'Says {size} is {colour}.', de: 'Hier steht: {size} ist {colour}.' },
  unlisted: { en: 'No colour is listed for this size.', de: 'Für diese Größe ist keine Farbe verzeichnet.' },
  holds: {
    en: '{size} is {colours}. Read the marked size, not the colour.',
    de: '{size} ist {colours}. Maßgeblich ist die aufgedruckte Größe, nicht die Farbe.',
  },
  on: { en: '{colours} {where}', de: '{where} {colours}' },
  elsewhere: {
    en: '{^colour} is {sizes} {where}. Read the marked size, not the colour.',
    de: '{^colour} ist {where} {sizes}. Maßgeblich ist die aufgedruckte Größe, nicht die Farbe.',
  },
  value: { en: '{size}: {colour} ({code})', de: '{size}: {colour} ({code})' },
} as const satisfies Texts;

export const COLOURED = {
  'ISO 6009': { en: 'on a hypodermic needle hub', de: 'am Ansatz einer Kanüle' },
  'ISO 10555-5': { en: 'on an IV cannula', de: 'an einer Venenverweilkanüle' },
  'urinary catheter': { en: 'on a urinary catheter', de: 'an einem Blasenkatheter' },
  'suction catheter': { en: 'on a suction catheter', de: 'an einem Absaugkatheter' },
} as const satisfies Texts;
