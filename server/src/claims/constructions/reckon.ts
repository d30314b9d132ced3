/**
 * A sum that the text works out step by step and that does not come out: "four over four plus four, so a 4.5 tube", "three
 * fours make 16, and that is its French size", "doubled six, got twelve, went one below and opened a 14". Whatever the rule,
 * the figures are judged as they stand.
 */
import { resultsIn, type Told } from '../text/arithmetic.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';
import { sums } from './sums.ts';

export const reckon: Construction = {
  id: 'reckon',
  leaning: true,
  needs: () => [{ like: SIGNS }],
  read(scene) {
    if (scene.sentence.close === '?' || !ofSizes(scene) || sums.read(scene).length > 0) return [];
    const found = resultsIn(scene.items).flatMap((told) => reading(scene, told));
    const wrong = found.filter(({ claim }) => claim.kind === 'formula' && claim.formula.endsWith('-wrong'));
    return (wrong.length > 0 ? wrong : found).slice(0, 1);
  },
};

/** One of these stands in every sum. */
const SIGNS =
  /^(?:over|\/|÷|×|\*|x|times|divid\w+|multipl\w+|plus|\+|add(?:s|ed|ing)?|minus|−|subtract\w*|quarters|halves|thirds|twice|thrice|doubl\w+|trebl\w+|tripl\w+|halv\w+|\d{1,2}\/[2-6]|twos|threes|fours|fives|sixes|sevens|eights|nines|tens)$/;

const SIZES =
  /\b(?:tubes?|ett|cuffed|uncuffed|french|fr|ch|charri[eè]re|mm|millimet\w+|suction|catheters?|drains?|guidewires?|wires?|cuff)\b/;
const OTHER =
  /\b(?:mg|mcg|ml|mls|kg|doses?|drops?|litres?|hours?|minutes?|joules?|weight|%|percent|flow|area|resistance|score)\b/;

/** "12s come in fives": how many go into a box. */
const PACKED = /\bin (?:twos|threes|fours|fives|sixes|sevens|eights|nines|tens)\b/;

/** The sentence, the one before, or the heading speaks of sizes, and the sentence of nothing that is dosed or timed. */
function ofSizes(scene: Scene): boolean {
  const { items } = scene;
  if (OTHER.test(textOf(items)) || PACKED.test(textOf(items))) return false;
  const near = [
    items,
    ...scene.before.slice(-1).map((s) => s.items),
    ...scene.context.slice(-2).map((s) => s.items),
  ];
  return (
    near.some((row) => row.some((item) => item.mention !== undefined || SIZES.test(item.word))) ||
    SIZES.test(scene.headings.join(' '))
  );
}

const ABOUT = /^(?:about|roughly|around|nearly|almost|some|approximately|say|just|over|under)$/;

function reading(scene: Scene, told: Told): Reading[] {
  const { result, value, onward } = told;
  const [formula, right] = onward
    ? (['next-of-sum', onward === 'below' ? result.value < value : result.value > value] as const)
    : (['sum-comes-out', comesOut(scene.items, told)] as const);
  if (!right && (!telling(told) || keptBelow(scene.items, told))) return [];
  if (right && tripled(scene.items, told)) {
    const claim = ruleClaim(scene, 'reckon', 'french', 'mm-is-french-times-3', result.at, result.to);
    return [{ claim, at: result.at, from: told.from, to: result.to }];
  }
  const id = right ? formula : formula === 'sum-comes-out' ? 'sum-wrong' : 'next-of-sum-wrong';
  const claim = {
    ...ruleClaim(scene, 'reckon', 'french', id, result.at, result.to),
    sum: `${told.steps} = ${Number(value.toPrecision(3))}`,
  };
  return [{ claim, at: result.at, from: told.from, to: result.to }];
}

/** "An 18 Fr tube: multiply by three, 54 mm": the sum comes out, and is the wrong one. */
const tripled = (items: readonly Item[], { result, steps }: Told): boolean =>
  /^[\d.]+ × 3$/.test(steps) &&
  items[result.to]?.mention?.sizes[0]?.system === 'millimetre' &&
  items.some(
    ({ mention }) =>
      mention?.sizes[0]?.system === 'french' && mention.sizes[0].value === Number.parseFloat(steps),
  );

/** Within the digits as written; a rounded word leaves more room, and a tube of half a size is the nearest to a quarter. */
function comesOut(items: readonly Item[], { result, value }: Told): boolean {
  const near = items.slice(Math.max(0, result.at - 3), result.at).some(({ word }) => ABOUT.test(word));
  const slack = Math.max(
    result.half,
    near ? 0.1 * value : 0,
    result.unit === 'tube-id' || value < 10 ? 0.26 : 0,
  );
  return Math.abs(result.value - value) <= slack + 1e-9;
}

/** "below 2 x 9, so 16": the product is a limit, and what is taken keeps it. */
const keptBelow = (items: readonly Item[], { from, result, value }: Told): boolean =>
  result.value < value && /^(?:below|under|beneath|than|within|most)$/.test(items[from - 1]?.word ?? '');

/** Farther off than any slip: another number altogether. */
const FARTHEST = 5;

/** Far enough off to be no rounding: twice the tube and a catheter below it is the rule itself. */
const telling = ({ result, value, doubled, onward }: Told): boolean =>
  onward !== undefined ||
  (!(doubled && result.value < value) &&
    Math.abs(result.value - value) > 0.04 * value &&
    result.value < FARTHEST * value &&
    value < FARTHEST * result.value);
