/** Things said to go through others. */
import type { Texts } from '../../texts/index.ts';

export const FIT = {
  says: { en: 'Says {thing} goes through {container}.', de: 'Hier steht: {thing} passt durch {container}.' },
  holds: { en: '{wide}, and {room}.', de: '{wide}, und {room}.' },
  thick: { en: '{size} is {measure} thick', de: '{size} ist {measure} dick' },
  stated: { en: '{size} is the width given', de: '{size} ist als Dicke angegeben' },
  hole: { en: 'the hole is {size} wide', de: 'die Öffnung ist {size} weit' },
  inside: {
    en: '{size} is at most {value} mm wide inside',
    de: '{size} ist innen höchstens {value} mm weit',
  },
  across: { en: '{size} is at most {value} mm across', de: '{size} ist außen höchstens {value} mm dick' },
} as const satisfies Texts;
