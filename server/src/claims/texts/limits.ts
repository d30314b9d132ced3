/** Sizes kept to a limit or put in a range. */
import type { Texts } from '../../texts/index.ts';

export const LIMIT = {
  says: {
    en: 'Says {size} keeps to the limit “{limit}”.',
    de: 'Hier steht: {size} hält die Grenze „{limit}“ ein.',
  },
  holds: { en: '{size} {relation} {bound}: {rule}.', de: '{size} {relation} {bound}: {rule}.' },
  is: { en: 'is', de: 'ist' },
  thickerThan: { en: 'thicker than {bound}', de: 'dicker als {bound}' },
  thinnerThan: { en: 'thinner than {bound}', de: 'dünner als {bound}' },
  orThicker: { en: '{bound} or thicker', de: '{bound} oder dicker' },
  orThinner: { en: '{bound} or thinner', de: '{bound} oder dünner' },
} as const satisfies Texts;

export const RANGE = {
  saysInside: {
    en: 'Says {size} is inside {low} to {high}.',
    de: 'Hier steht: {size} liegt innerhalb von {low} bis {high}.',
  },
  saysOutside: {
    en: 'Says {size} is outside {low} to {high}.',
    de: 'Hier steht: {size} liegt außerhalb von {low} bis {high}.',
  },
  saysBetween: {
    en: 'Says {size} lies between {low} and {high}.',
    de: 'Hier steht: {size} liegt zwischen {low} und {high}.',
  },
  end: { en: '{size} is the same size as {end}.', de: '{size} ist dieselbe Größe wie {end}.' },
  inside: { en: '{size} lies inside {low} to {high}.', de: '{size} liegt innerhalb von {low} bis {high}.' },
  outside: { en: '{size} lies outside {low} to {high}.', de: '{size} liegt außerhalb von {low} bis {high}.' },
} as const satisfies Texts;
