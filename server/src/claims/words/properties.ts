/** What a suture material or a needle point may be said to be. Values come from `sizes`. */
export interface PropertyRow {
  readonly word: string;
  readonly property: 'absorbable' | 'structure' | 'origin';
  readonly value: string;
}

const rows = (property: PropertyRow['property'], value: string, words: string): PropertyRow[] =>
  words.split('|').map((word) => ({ word, property, value }));

export const MATERIAL_PROPERTIES: readonly PropertyRow[] = [
  ...rows(
    'absorbable',
    'yes',
    'absorbable|fast-absorbing|slow-absorbing|quick-absorbing|rapid-absorbing|fast-dissolving|absorbed|absorbs|resorbable|dissolvable|dissolves|dissolving|absorbables|self-dissolving|degradable|biodegradable|bioabsorbable',
  ),
  ...rows(
    'absorbable',
    'no',
    'nonabsorbable|non-absorbable|nonabsorbables|non-absorbables|unabsorbable|permanent|non-resorbable|nonresorbable|non-dissolving|nondissolving|non-dissolvable|nondissolvable|undissolvable|non-absorbing|non-degradable',
  ),
  ...rows(
    'structure',
    'monofilament',
    'monofilament|monofilaments|single-filament|one-filament|unifilament|single-fibre|single-fiber|monofil|single-strand|single-stranded|one-strand|mono-filament',
  ),
  ...rows(
    'structure',
    'multifilament',
    'braided|multifilament|braid|braids|many-stranded|multi-stranded|multi-filament|multifilaments|plaited|woven|interwoven|multistrand|multi-strand',
  ),
  ...rows('origin', 'natural', 'natural|naturally'),
  ...rows('origin', 'synthetic', 'synthetic|man-made|manmade'),
];

/** The row of a property word, lower case. */
export const PROPERTY_WORDS: ReadonlyMap<string, PropertyRow> = new Map(
  MATERIAL_PROPERTIES.map((row) => [row.word, row]),
);
