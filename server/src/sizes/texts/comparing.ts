/** Why one size is thicker than another. */
import type { Texts } from '../../texts/index.ts';

export const COMPARING = {
  measured: {
    en: '{left} is {leftMeasure}, {right} is {rightMeasure}',
    de: '{left} entspricht {leftMeasure}, {right} entspricht {rightMeasure}',
  },
  same: { en: 'both are {size}', de: 'beide sind {size}' },
  thinner: {
    en: '{left} against {right}: a larger number is thinner',
    de: '{left} gegen {right}: eine größere Zahl heißt dünner',
  },
  thicker: {
    en: '{left} against {right}: a larger number is thicker',
    de: '{left} gegen {right}: eine größere Zahl heißt dicker',
  },
  unknown: {
    en: 'the outer diameter of {size} is not given by its size',
    de: 'der Außendurchmesser von {size} ergibt sich nicht aus der Größe',
  },
} as const satisfies Texts;
