/** What the same sentence takes back, in words that the readers of its claims do not look at. */

import { finds } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import type { Operand } from '../model.ts';
import { joined } from '../text/joined.ts';
import { keysIn, placeOf, type Scene, sizeKeys } from '../text/scene.ts';

/** Is this reading taken back, or not meant as a statement, by what stands around it? */
export function takenBack(scene: Scene, reading: Reading): boolean {
  const { claim } = reading;
  switch (claim.kind) {
    case 'fit':
      return (
        notPassed(scene, [claim.thing, claim.container]) ||
        nextWillNot(scene) ||
        bothSides(scene) ||
        twoScales(claim.thing, claim.container)
      );
    case 'formula':
      return nextWillNot(scene) || WISHED.test(joined(scene.items));
    case 'equivalence':
      return (
        mended(scene, claim.left, claim.right) ||
        PICTURED.test(joined(scene.items)) ||
        sentInstead(scene, claim.left, claim.right) ||
        goTogether(scene, claim.left, claim.right) ||
        ofUnit(scene, claim.left)
      );
    case 'comparison':
      return (
        finds(OTHER_SIDE, joined(scene.items)) ||
        finds(UNLIKE, joined(scene.items)) ||
        sitsTight(scene, reading) ||
        sheathOutside(scene, [claim.left, claim.right]) ||
        [claim.left, claim.right].some((side) => noughtDropped(scene, side))
      );
    default:
      return false;
  }
}

/** "A 6.0 would be tighter still": in the child, which takes a thick one to be. */
const sitsTight = ({ items }: Scene, { at }: Reading): boolean =>
  /^(?:tight|snug)/.test(items[at]?.word ?? '') &&
  !/\b(?:lumens?|bores?|inside|airways?|hubs?)\b/.test(joined(items));

/** "The picture of a 30 Fr drain measures 12 mm on the page": so wide is the picture. */
const PICTURED =
  /\b(?:pictures?|photos?|photographs?|drawings?|diagrams?|sketch(?:es)?|images?|figures?|printouts?) of (?:an?|the|our|your)\b|\b(?:drawn|printed|shown|measures|is) (?:\S+ ){0,3}on (?:the|this|that|your) (?:page|paper|screen|slide|poster|print)\b/;

/** "ordered 10 Fr, came 10 mm", "wanted a 4 Fr and was given 4 mm": one was had for the other. */
function sentInstead(scene: Scene, left: Operand, right: Operand): boolean {
  const [a, b] = places(scene, [left, right]).sort((x, y) => x - y) as [number, number];
  return (
    a >= 0 &&
    /\b(?:order(?:ed)?|orders|asked(?: for)?|wanted|requested|meant|needed|sent for|called for|expected|booked)(?: \S+){0,4}$/.test(
      joined(scene.items, 0, a),
    ) &&
    /\b(?:came|comes|got|gets|arrived|sent|given|gave|received|delivered|brought|opened|had)\b/.test(
      joined(scene.items, a + 1, b),
    )
  );
}

/** "The 18 G needle is the one for the 0.035 in wire": neither is the other. */
function goTogether(scene: Scene, left: Operand, right: Operand): boolean {
  const [a, b] = places(scene, [left, right]).sort((x, y) => x - y) as [number, number];
  return a >= 0 && FOR.test(joined(scene.items, a + 1, b));
}
const FOR =
  /\b(?:is|are|was) (?:\w+ ){0,3}(?:ones?|choice|needle|right|best|meant|made|there) (?:for|to take|with)\b/;

/** "thicker on the outside than that": than its own inside. */
const OTHER_SIDE = /\b(?:outside|inside|inner|outer)\b.*\bthan (?:that|this|it)(?= [,.;!)]|$)/;

/** "the 20 with a cuff is faster than the 18 without": the two are not used alike. */
const UNLIKE = /\b(?:with|under|on) (?:an?|the|its|full|high)?\b.{1,60}\bthan\b.{1,60}\bwithout\b/;

/** "that a sheath should be named by its outside, and nobody will change it": how it ought to be. */
const WISHED =
  /\b(?:should|ought to|could|might) (?:really |rather |better )?(?:be|have been) (?:named|called|sized|labelled|labeled|numbered)\b/;

/** "The introducer, 8.5 Fr, …. An 8.5 is therefore thicker outside than a 9 Fr catheter.": a sheath, named by its inside. */
const sheathOutside = ({ items, before }: Scene, sides: readonly Operand[]): boolean =>
  items.some(({ word }) => /^(?:outside|outer|externally)$/.test(word)) &&
  before.some(
    (sentence) =>
      sentence.items.some(({ word }) => /^(?:introducers?|sheaths?)$/.test(word)) &&
      sides.some(({ sizes }) => sizeKeys(sizes).some((size) => keysIn(sentence.items).includes(size))),
  );

/** "One French is a third of a millimetre, which makes a 6 Fr …": the third is the unit's. */
const ofUnit = ({ items }: Scene, { sizes }: Operand): boolean =>
  sizes[0]?.system === 'millimetre' &&
  Math.abs(sizes[0].value - 1 / 3) < 0.02 &&
  /\b(?:one|an?|each|every|1) (?:french|fr|charri[eè]re|ch) (?:is|equals|=|means|counts)\b/.test(
    joined(items),
  );

const places = ({ items }: Scene, sides: readonly Operand[]): number[] =>
  sides.map((side) => placeOf(items, side));

/** "6 Fr catheter through 5 Fr sheath: no.", "0.038 in wire forced into a 21 G and sheared": it did not go. */
function notPassed(scene: Scene, sides: readonly Operand[]): boolean {
  const { items } = scene;
  const last = Math.max(...places(scene, sides));
  return (
    last >= 0 &&
    (FAILED.test(joined(items, last + 1)) ||
      /^(?:[a-z]+ ){0,2}[:=–—-] (?:no|never|not|impossible|wrong)\b/.test(
        joined(items, last + 1, last + 6),
      ) ||
      items.some(({ word }) => DAMAGED.test(word)))
  );
}
/** "… and it just bends, it can't go in": tried, and told how it ended. */
const FAILED =
  /^(?:[a-z]+ ){0,3}?(?:,? ?(?:and|but) )?(?:it|they|the \w+) (?:\w+ )?(?:bends?|buckles?|jams?|(?:can't|cannot|won't|doesn't|didn't|wouldn't|will not|does not|did not|would not) (?:go|fit|pass|run|slide|enter|budge|move))\b/;
/** "Inside 8.0 mm, outside 11.0 mm": one thing measured twice. */
const bothSides = ({ items }: Scene): boolean =>
  /^(?:inside|inner) [^;]*, (?:and )?(?:outside|outer) [^,;]*$|^(?:outside|outer) [^;]*, (?:and )?(?:inside|inner) [^,;]*$/.test(
    joined(items),
  );
/** "An eighteen goes through an eighteen": of the same number without a unit one is a wire's and one a needle's. */
const twoScales = (thing: Operand, container: Operand): boolean =>
  [thing, container].every(({ mentions }) => mentions[0]?.notation === 'bare') &&
  sizeKeys(thing.sizes).join() === sizeKeys(container.sizes).join();
/** "The picture shows a 14 Fr going down a 5.0 tube. It will not go." */
const nextWillNot = ({ after, next }: Scene): boolean =>
  /^(?:it|that|this|they|which) (?:(?:will|would|does|did|could|can) not|won't|wouldn't|doesn't|didn't|can't|cannot|couldn't) (?:go|fit|pass|work|run|slide|happen)\b/.test(
    joined((after[0] ?? next)?.items ?? [], 0, 5),
  );
const DAMAGED = /^(?:forced|sheared|snapped|stuck|jammed|kinked|stripped)$/;

/** "label says 16 Fr = 6.3 mm, should be 5.3", "for 22 Fr read 22 G": the one is put in the place of the other. */
function mended(scene: Scene, left: Operand, right: Operand): boolean {
  const [a, b] = places(scene, [left, right]).sort((x, y) => x - y) as [number, number];
  if (a < 0) return false;
  const { items } = scene;
  return (
    /^[,;:(–—-] (?:it |this |that |which )?(?:should|ought to|must) (?:be|read|have been)\b/.test(
      joined(items, b + 1, b + 8),
    ) ||
    (items[a - 1]?.word === 'for' && joined(items, a + 1, b) === 'read') ||
    PRINTED_AS.test(joined(items, a + 1, b)) ||
    (/^(?:was|were)$/.test(joined(items, a + 1, b)) && ONCE.test(joined(items, b + 1, b + 6)))
  );
}
/** "The 12 mm was 12 Fr in our manuscript": what stood there before. */
const ONCE =
  /^(?:in (?:our|my|the|his|her|their|an?) (?:[a-z]+ )?(?:manuscript|draft|proofs?|original|first|earlier|last|old|previous|source|script|version|edition|typescript|file)|once|originally|before|until|at first)\b/;
/** "8 Fr was printed as 8 mm", "the 18 G had been typed in as 1.8 mm": what a page once said. */
const PRINTED_AS =
  /\b(?:was|were|had been|got) (?:[a-z]+ly )?(?:mis)?(?:printed|typed|written|entered|copied|given|shown|quoted|put|listed|set|recorded|transcribed|rendered|translated)(?: down| in| up)? (?:as|with)\b/;

/** "Is a 5-0 finer than a 3-0?" "The 5's the finer.": said without its nought. */
function noughtDropped({ note }: Scene, { sizes, mentions }: Operand): boolean {
  const [mention] = mentions;
  const [size] = sizes;
  if (size?.system !== 'usp' || size.value < 3 || mention?.notation !== 'bare') return false;
  const above = note.text.slice(Math.max(0, mention.source.start - REACH), mention.source.start);
  const after = note.text.slice(mention.source.end, mention.source.end + 2);
  return /^['’]s/.test(after) && new RegExp(`\\b${size.value}[-/]0\\b`).test(above);
}
const REACH = 600;
