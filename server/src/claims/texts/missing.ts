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
    en: 'Says {things} are even numbers only.',
    de: 'Hier steht: {things} sind immer gerade Zahlen.',
  },
  half: {
    en: 'Says {things} are whole numbers only.',
    de: 'Hier steht: {things} sind immer ganze Zahlen.',
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

/** Of what it is said that it has only even or whole numbers. */
export const WHOLE_SERIES = {
  needle: { en: 'needle gauges', de: 'Gauge-Zahlen von Kanülen' },
  fistula: { en: 'gauges of fistula needles', de: 'Gauge-Zahlen von Fistelkanülen' },
  spinal: { en: 'gauges of spinal needles', de: 'Gauge-Zahlen von Spinalkanülen' },
  epidural: { en: 'gauges of epidural needles', de: 'Gauge-Zahlen von Epiduralkanülen' },
  dental: { en: 'gauges of dental needles', de: 'Gauge-Zahlen von Dentalkanülen' },
  pen: { en: 'gauges of pen needles', de: 'Gauge-Zahlen von Pen-Nadeln' },
  winged: { en: 'gauges of winged needles', de: 'Gauge-Zahlen von Flügelkanülen' },
  french: { en: 'French sizes', de: 'Charrière-Zahlen' },
} as const satisfies Texts;
