/** What hovers, tooltips and hints say. */
import type { Texts } from '../../texts/index.ts';

export const HOVER = {
  unclear: {
    en: '**{text}** can be read in more than one way:',
    de: '**{text}** lässt sich auf mehrere Weisen lesen:',
  },
  reading: { en: '- {words} — write **{write}**', de: '- {words} — dann **{write}** schreiben' },
  length: {
    en: '**{size}**: a length along the device, not a thickness',
    de: '**{size}**: eine Länge des Instruments, keine Dicke',
  },
  outside: { en: '{measure} outside', de: 'außen {measure}' },
  inside: { en: '{measure} inside', de: 'innen {measure}' },
  thinnerThan: { en: 'thinner than {size}', de: 'dünner als {size}' },
  thickerThan: { en: 'thicker than {size}', de: 'dicker als {size}' },
  narrowerThan: { en: 'narrower than {size}', de: 'enger als {size}' },
  widerThan: { en: 'wider than {size}', de: 'weiter als {size}' },
  system: { en: '{system}: {rule}', de: '{system}: {rule}' },
  source: { en: 'Source: {source}', de: 'Quelle: {source}' },
  sourced: { en: 'Source: {standard}{cited} — {confidence}', de: 'Quelle: {standard}{cited} — {confidence}' },
  cited: { en: ' ({works})', de: ' ({works})' },
  citedMore: { en: ' ({works} and {count} more)', de: ' ({works} und {count} weitere)' },
  or: { en: ' or ', de: ' oder ' },
  /** Between the material and the thing: "silk suture". */
  ofMaterial: { en: ' ', de: ', ' },
} as const satisfies Texts;

/** Column titles. */
export const COLUMN = {
  size: { en: 'size', de: 'Größe' },
  unit: { en: 'unit', de: 'Einheit' },
  value: { en: 'value', de: 'Wert' },
  by: { en: 'by', de: 'nach' },
  sameLength: { en: 'same length', de: 'gleiche Länge' },
} as const satisfies Texts;

export const HUB = {
  needle: { en: 'Hub colour on a needle', de: 'Farbe am Ansatz einer Kanüle' },
  cannula: { en: 'Hub colour on an over-needle IV catheter', de: 'Farbe an einer Venenverweilkanüle' },
  urinary: {
    en: 'Colour of a urinary catheter of this size',
    de: 'Farbe eines Blasenkatheters dieser Größe',
  },
  suction: {
    en: 'Colour of a suction catheter of this size',
    de: 'Farbe eines Absaugkatheters dieser Größe',
  },
  colour: { en: '{on}: {colours}', de: '{on}: {colours}' },
  colourBy: { en: '{on}: {colours} ({by})', de: '{on}: {colours} ({by})' },
} as const satisfies Texts;

export const TOOLTIP = {
  unclear: { en: '{text} can be read as {readings}', de: '{text} lässt sich lesen als {readings}' },
  or: { en: ', or ', de: ', oder als ' },
  outer: { en: 'Outer diameter by {standard}', de: 'Außendurchmesser nach {standard}' },
  inner: { en: 'Inner diameter by {standard}', de: 'Innendurchmesser nach {standard}' },
  innerShort: { en: '{measure} ID', de: '{measure} ID' },
} as const satisfies Texts;
