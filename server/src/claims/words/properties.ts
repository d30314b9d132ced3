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
    'absorbable|fast-absorbing|slow-absorbing|quick-absorbing|rapid-absorbing|fast-dissolving|absorbed|absorbs|resorbable|dissolvable|dissolves|dissolving|absorbables',
  ),
  ...rows(
    'absorbable',
    'no',
    'nonabsorbable|non-absorbable|nonabsorbables|non-absorbables|unabsorbable|permanent|non-resorbable|nonresorbable',
  ),
  ...rows(
    'structure',
    'monofilament',
    'monofilament|monofilaments|monofil|single-strand|single-stranded|one-strand|mono-filament',
  ),
  ...rows(
    'structure',
    'multifilament',
    'braided|multifilament|braid|braids|many-stranded|multi-stranded|multi-filament|multifilaments|plaited',
  ),
  ...rows('origin', 'natural', 'natural|naturally'),
  ...rows('origin', 'synthetic', 'synthetic|man-made|manmade'),
];

/** The row of a property word, lower case. */
export const PROPERTY_WORDS: ReadonlyMap<string, PropertyRow> = new Map(
  MATERIAL_PROPERTIES.map((row) => [row.word, row]),
);
