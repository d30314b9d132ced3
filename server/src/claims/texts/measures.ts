/** Sizes said to equal a value. */
import type { Texts } from '../../texts/index.ts';

export const MEASURE = {
  mm: { en: '{value} mm', de: '{value} mm' },
  span: { en: '{min} to {max} mm', de: '{min} bis {max} mm' },
  says: { en: 'Says {left} is {right}.', de: 'Hier steht: {left} entspricht {right}.' },
  saysInside: { en: 'Says {left} is inside {right}.', de: 'Hier steht: {left} entspricht innen {right}.' },
  saysRadius: {
    en: 'Says the radius of {left} is {right}.',
    de: 'Hier steht: Der Radius von {left} ist {right}.',
  },
  saysAround: { en: 'Says {left} is {right} around.', de: 'Hier steht: {left} hat {right} Umfang.' },
  noTable: { en: 'No table gives this value.', de: 'Keine Tabelle nennt diesen Wert.' },
  noTables: { en: 'No table gives both diameters.', de: 'Keine Tabelle nennt beide Durchmesser.' },
  noDiameters: { en: 'No table gives these diameters.', de: 'Keine Tabelle nennt diese Durchmesser.' },
  holds: {
    en: '{size} is {measure}{axis}{inch}{caution}.',
    de: '{size} entspricht {measure}{axis}{inch}{caution}.',
  },
  caution: { en: ' ({caution})', de: ' ({caution})' },
  inch: { en: ' ({value} in)', de: ' ({value} in)' },
  inside: { en: ' inside', de: ' innen' },
  radius: { en: ' in radius', de: ' im Radius' },
  around: { en: ' around', de: ' im Umfang' },
  by: { en: '{size}: {measure} by {standard}', de: '{size}: {measure} nach {standard}' },
  measureBy: { en: '{measure} by {standard}', de: '{measure} nach {standard}' },
  written: {
    en: 'written: {said} mm, read with a tolerance of {rounding} mm for rounding',
    de: 'geschrieben: {said} mm, mit {rounding} mm Spielraum für das Runden gelesen',
  },
  range: { en: '{min} to {max}', de: '{min} bis {max}' },
  is: { en: '{size} is {values}.', de: '{size} entspricht {values}.' },
  step: { en: '{size} is {values}', de: '{size} entspricht {values}' },
  both: {
    en: '{left} is {leftMeasure}; {right} is {rightMeasure}.',
    de: '{left} entspricht {leftMeasure}; {right} entspricht {rightMeasure}.',
  },
  tube: {
    en: 'A {tube} tube is {value} mm inside and wider outside; {size} is {measure}.',
    de: 'Ein Tubus mit {tube} ist innen {value} mm weit und außen dicker; {size} entspricht {measure}.',
  },
} as const satisfies Texts;
