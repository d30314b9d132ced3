/** Words that name a thread material, longest first, with the generic id of `sizes/materials.ts`. */
import { MATERIALS } from '../../sizes/materials.ts';

/** Everyday and foreign short forms beside the generic names. */
const EXTRA: readonly (readonly [string, string])[] = [
  ['gut', 'gut'],
  ['steel', 'stainless-steel'],
  ['seda', 'silk'],
  ['seide', 'silk'],
  ['soie', 'silk'],
  ['catgut', 'gut'],
  ['cotton', 'cotton'],
];

/** "silk" → "silk", "catgut" → "gut". */
export const MATERIAL_WORDS: ReadonlyMap<string, string> = new Map([
  ...EXTRA,
  ...MATERIALS.flatMap((material) =>
    [material.name, ...material.names].map((name) => [name.toLowerCase(), material.id] as const),
  ),
]);
