/** Ways in which a reader could take an unclear size. Each completes "can be read as …". */
import type { Texts } from '../../texts/index.ts';

export const READING = {
  gauge: { en: '{value} gauge', de: '{value} Gauge' },
  needle: { en: '{value} gauge, a needle size', de: '{value} Gauge, eine Kanülengröße' },
  grams: { en: '{value} grams, a weight', de: '{value} Gramm, ein Gewicht' },
  french: { en: '{value} French', de: '{value} Charrière' },
  catheter: { en: '{value} French, a catheter size', de: '{value} Charrière, eine Kathetergröße' },
  outer: { en: '{value} French, outer diameter', de: '{value} Charrière, Außendurchmesser' },
  patient: { en: 'a {value}-year-old female patient', de: 'eine {value}-jährige Patientin' },
  inner: { en: '{value} mm inner diameter', de: '{value} mm Innendurchmesser' },
  tube: {
    en: '{value} mm inner diameter, a tracheal tube',
    de: '{value} mm Innendurchmesser, ein Trachealtubus',
  },
  thread: { en: '{value} USP thread size', de: 'USP-Fadenstärke {value}' },
  whole: { en: 'size {value}, a thick thread', de: 'Stärke {value}, ein dicker Faden' },
  oneZero: { en: '1-0, which is size 0', de: '1-0, also Stärke 0' },
  zeros: { en: '{value} zeros, a thin thread', de: '{value} Nullen, ein dünner Faden' },
  glove: { en: 'a glove of size {value}', de: 'ein Handschuh der Größe {value}' },
  colouredCannula: {
    en: 'a {colour} cannula, {value} G',
    de: 'eine Venenverweilkanüle in {colour}, {value} G',
  },
  colouredNeedle: { en: 'a {colour} needle, {value} G', de: 'eine Kanüle in {colour}, {value} G' },
  wider: { en: 'a wider needle or cannula', de: 'eine weitere Kanüle oder Venenverweilkanüle' },
  thinner: { en: 'a thinner needle or cannula', de: 'eine dünnere Kanüle oder Venenverweilkanüle' },
  thickerThread: { en: 'a thicker thread', de: 'ein dickerer Faden' },
  thinnerThread: { en: 'a thinner thread', de: 'ein dünnerer Faden' },
  higherGauge: {
    en: 'a higher gauge number, which is thinner',
    de: 'eine höhere Gauge-Zahl, also dünner',
  },
  lowerGauge: { en: 'a lower gauge number, which is wider', de: 'eine niedrigere Gauge-Zahl, also weiter' },
  moreZeros: { en: 'a higher number of zeros, which is thinner', de: 'mehr Nullen, also dünner' },
  fewerZeros: { en: 'a lower number of zeros, which is thicker', de: 'weniger Nullen, also dicker' },
} as const satisfies Texts;
