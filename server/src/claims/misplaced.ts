/** Readings that hold together words which the sentence keeps apart: a word of one pair and the sizes of the next. */
import type { Reading } from './constructions/model.ts';
import type { ComparisonClaim, EquivalenceClaim, Operand } from './model.ts';
import type { Item } from './text/items.ts';
import { joined } from './text/joined.ts';
import { materialsIn } from './text/materials.ts';
import { placeOf, type Scene, spanOf } from './text/scene.ts';

/** Does a reading take what is said of one thing for another's? */
export function misplaced(scene: Scene, reading: Reading): boolean {
  const { claim } = reading;
  switch (claim.kind) {
    case 'comparison':
      return ofOtherPair(scene, claim) || ofWhatItIsNot(scene.items, claim) || ofOtherPassage(scene, claim);
    case 'property':
      return ofTheFirst(scene.items, reading);
    case 'colour':
      return underCondition(scene.items, claim.size);
    case 'equivalence':
      return ofWholeOnes(scene, claim) || ofEitherDevice(scene, claim.left);
    default:
      return false;
  }
}

/** "From 22 G to 18 G you are going wider, from 22 G to 24 G finer": the word belongs to the pair before it. */
function ofOtherPair(scene: Scene, { focus, left, right }: ComparisonClaim): boolean {
  const { items } = scene;
  const at = items.findIndex((item) => spanOf(scene, item).start === focus.start);
  const first = Math.min(placeOf(items, left), placeOf(items, right));
  const from = items.findIndex(({ word }) => word === 'from');
  if (from < 0 || at <= from || first <= at) return false;
  return (
    items.slice(from, at).some(({ kind }) => kind === 'size') &&
    items.slice(at + 1, first).some(({ word }) => word === 'from')
  );
}

/** "It is 2 mm, and feed runs more slowly through it.": against no measure of the paragraph before. */
const ofOtherPassage = ({ items, passage }: Scene, { left, right }: ComparisonClaim): boolean =>
  [left, right].some(
    ({ sizes, mentions: [mention] }) =>
      sizes[0]?.system === 'millimetre' && mention !== undefined && mention.passage !== passage.index,
  ) && items.some(({ word }) => word === 'it');

/** "CV-4 is not 4-0: it is as thick as a 2-0": what it is not is no side of what it is; "beside it, the gut is the heavier". */
function ofWhatItIsNot(items: readonly Item[], claim: ComparisonClaim): boolean {
  const left = placeOf(items, claim.left);
  if (left >= 1 && items[left - 1]!.word === 'not' && IT_IS.test(joined(items, left + 1, left + 4)))
    return true;
  return (
    claim.construction === 'of-two' &&
    /\bit beside (?:an? )?$/.test(`${joined(items, 0, placeOfSize(items))} `)
  );
}
const IT_IS = /^[:;,] (?:it|they|that) /;
const placeOfSize = (items: readonly Item[]): number => items.findIndex(({ kind }) => kind === 'size');

/** "Gut is as thick as polyester, yet its strength is gone": its is the first one's. */
function ofTheFirst(items: readonly Item[], { claim, at }: Reading): boolean {
  if (claim.kind !== 'property' || claim.of !== 'material' || !ITS.test(joined(items, 0, at))) return false;
  const named = materialsIn(items).filter((material) => material.to < at);
  return named.length > 1 && named[0]!.id !== claim.subject;
}
const ITS = /\b(?:as \S+ as|than) .*, (?:yet|but|and|though|while) its\b/;

/** "Orange: 14 G if it is a cannula, 25 G if it is a hub": each under a condition of its own. */
const underCondition = (items: readonly Item[], size: Operand): boolean =>
  /^if (?:it|this|that) (?:is|'s)\b/.test(joined(items, placeOf(items, size) + 1, placeOf(items, size) + 4));

/** "Every third number is a whole millimetre: 12 Fr is 4 mm": no number is told before the colon. */
const ofWholeOnes = ({ note }: Scene, { focus: { start, end } }: EquivalenceClaim): boolean =>
  /\bwhole\b.*:$/.test(note.text.slice(start, Math.min(end, start + LONGEST) + 1));
/** A measure in words, characters. */
const LONGEST = 40;

const NEEDLE = /^needles?$/;
const CANNULA = /^(?:cannula[es]?|cannulas)$/;
/** "The cannula is fatter than the needle. At 20 G it is 1.0 mm": of which of the two, the sentence before says. */
function ofEitherDevice({ items, before }: Scene, { sizes, device }: Operand): boolean {
  const last = before.at(-1)?.items ?? [];
  return (
    sizes[0]?.system === 'needle-gauge' &&
    (device === undefined || device === 'needle') &&
    !items.some(({ deviceNoun }) => deviceNoun) &&
    items.some(({ word }) => word === 'it') &&
    last.some(({ word }) => NEEDLE.test(word)) &&
    last.some(({ word }) => CANNULA.test(word))
  );
}
