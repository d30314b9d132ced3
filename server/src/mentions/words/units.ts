/** Unit words by system. Another language is added by adding its words to a row. */

/** English, Spanish, German, French; lower case. Longest first inside a row. */
export const GAUGE_WORDS = [
  'gauges',
  'gauge',
  'gages',
  'gage',
  'gauged',
  'calibre',
  'calibres',
  'jauge',
  'ga',
  'g',
] as const;

export const FRENCH_WORDS = [
  'french',
  'charrière',
  'charriere',
  'charr',
  'franceses',
  'francés',
  'frances',
  'fr',
  'ch',
  'fg',
  'f',
] as const;

export const MILLIMETRE_WORDS = [
  'millimeters',
  'millimetres',
  'millimeter',
  'millimetre',
  'milímetros',
  'milímetro',
  'millimètres',
  'millimètre',
  'millimeter',
  'mm',
] as const;
export const CENTIMETRE_WORDS = [
  'centimeters',
  'centimetres',
  'centimeter',
  'centimetre',
  'centímetros',
  'centimètres',
  'zentimeter',
  'cm',
] as const;
export const MICROMETRE_WORDS = [
  'micrometers',
  'micrometres',
  'micrometer',
  'micrometre',
  'microns',
  'micron',
  'µm',
  'μm',
  'um',
] as const;
export const INCH_WORDS = [
  'inches',
  'inch',
  'pulgadas',
  'pulgada',
  'pouces',
  'pouce',
  'zoll',
  'in',
  '″',
  '"',
  '”',
] as const;

export const alternation = (words: readonly string[]): string =>
  [...words].sort((a, b) => b.length - a.length).join('|');
