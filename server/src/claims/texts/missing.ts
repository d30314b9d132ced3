/** Sizes that no system has. */
import type { Texts } from '../../texts/index.ts';

export const MISSING = {
  says: { en: 'Names a size {size}.', de: 'Nennt eine Größe {size}.' },
  holds: { en: '{size} does not exist: {because}.', de: '{size} gibt es nicht: {because}.' },
  /** Of a writing that is no size of any system. */
  saysWritten: { en: 'Names a size {written}.', de: 'Nennt eine Größe „{written}“.' },
  holdsWritten: { en: '{written} does not exist: {because}.', de: '„{written}“ gibt es nicht: {because}.' },
} as const satisfies Texts;

/** Sizes said not to exist that do. */
export const ABSENT = {
  itself: { en: 'Says there is no size {size}.', de: 'Hier steht: Eine Größe {size} gibt es nicht.' },
  finer: {
    en: 'Says nothing finer than {size} exists.',
    de: 'Hier steht: Feiner als {size} gibt es nichts.',
  },
  thicker: {
    en: 'Says nothing thicker than {size} exists.',
    de: 'Hier steht: Dicker als {size} gibt es nichts.',
  },
  between: {
    en: 'Says there is no size between {size}.',
    de: 'Hier steht: Zwischen {size} gibt es keine Größe.',
  },
  uneven: {
    en: 'Says needle gauges are even numbers only.',
    de: 'Hier steht: Kanülen gibt es nur in geraden Gauge-Zahlen.',
  },
  exists: { en: '{size} exists: {because}.', de: '{size} gibt es: {because}.' },
  finerExists: {
    en: '{size} is finer and exists: {because}.',
    de: '{size} ist feiner, und es gibt sie: {because}.',
  },
  thickerExists: {
    en: '{size} is thicker and exists: {because}.',
    de: '{size} ist dicker, und es gibt sie: {because}.',
  },
  betweenExists: {
    en: '{size} lies between them: {because}.',
    de: '{size} liegt dazwischen: {because}.',
  },
  needle: {
    en: 'it is a hypodermic needle, {mm} mm thick',
    de: 'eine Injektionskanüle von {mm} mm Außendurchmesser',
  },
  and: { en: ' and ', de: ' und ' },
  none: { en: 'Right: {because}.', de: 'Richtig: {because}.' },
} as const satisfies Texts;
