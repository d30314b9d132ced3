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

/** "foal gut", "the child's gut": before the word it is a bowel, no thread. */
export const GUT_OWNERS: ReadonlySet<string> = new Set(
  `foal foals calf calves horse horses equine bovine pony cow cat cats feline kitten dog dogs canine puppy rabbit bird human baby
  infant child neonate neonatal foetal fetal small large fore mid hind her his my your patient's child's baby's dog's cat's horse's foal's`.split(
    /\s+/,
  ),
);
