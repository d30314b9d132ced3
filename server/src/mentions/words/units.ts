/** Unit words by system and language. Another language is added by adding its words to the rows, and itself to the list. */

/** Languages whose words of units and devices are known (ISO 639-1). Statements are read in English only. */
export const LANGUAGES = ['en', 'es', 'de', 'fr'] as const;
export type Language = (typeof LANGUAGES)[number];

/** `all`: signs and words that every one of the languages uses. Lower case. */
type Row = Readonly<Partial<Record<Language | 'all', readonly string[]>>>;

const GAUGE: Row = {
  all: ['gauges', 'gauge', 'ga', 'g'],
  en: ['gages', 'gage', 'guages', 'guage', 'gauged', 'calibre', 'calibres'],
  es: ['calibre', 'calibres'],
  fr: ['calibre', 'calibres', 'jauge'],
};
const FRENCH: Row = {
  all: ['french', 'charrière', 'charriere', 'charr', 'fr', 'ch', 'fg', 'f'],
  es: ['franceses', 'francés', 'frances'],
};
const MILLIMETRE: Row = {
  all: ['mm'],
  en: ['millimeters', 'millimetres', 'millimeter', 'millimetre'],
  es: ['milímetros', 'milímetro'],
  de: ['millimeter'],
  fr: ['millimètres', 'millimètre'],
};
const CENTIMETRE: Row = {
  all: ['cm'],
  en: ['centimeters', 'centimetres', 'centimeter', 'centimetre'],
  es: ['centímetros'],
  de: ['zentimeter'],
  fr: ['centimètres'],
};
const MICROMETRE: Row = {
  all: ['µm', 'μm', 'um'],
  en: ['micrometers', 'micrometres', 'micrometer', 'micrometre', 'microns', 'micron'],
};
const INCH: Row = {
  all: ['″', '"', '”'],
  en: ['inches', 'inch', 'in'],
  es: ['pulgadas', 'pulgada'],
  de: ['zoll', 'inch'],
  fr: ['pouces', 'pouce'],
};

/** The words of a row, each once, longest first. */
const words = (row: Row): readonly string[] =>
  [...new Set(Object.values(row).flat())].sort((a, b) => b.length - a.length);

export const GAUGE_WORDS = words(GAUGE);
export const FRENCH_WORDS = words(FRENCH);
export const MILLIMETRE_WORDS = words(MILLIMETRE);
export const CENTIMETRE_WORDS = words(CENTIMETRE);
export const MICROMETRE_WORDS = words(MICROMETRE);
export const INCH_WORDS = words(INCH);

/** Words of units that only some of the languages use, with those languages. */
export const WORD_LANGUAGES: ReadonlyMap<string, ReadonlySet<Language>> = languagesByWord();

function languagesByWord(): Map<string, Set<Language>> {
  const found = new Map<string, Set<Language>>();
  for (const row of [GAUGE, FRENCH, MILLIMETRE, CENTIMETRE, MICROMETRE, INCH])
    for (const language of LANGUAGES)
      for (const word of row[language] ?? [])
        found.set(word, (found.get(word) ?? new Set<Language>()).add(language));
  return found;
}

export const alternation = (list: readonly string[]): string =>
  [...list].sort((a, b) => b.length - a.length).join('|');
