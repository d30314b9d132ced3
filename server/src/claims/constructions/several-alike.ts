/** Three sizes or more of as many scales said to be one: "3 Fr, 1 mm and 19 gauge are all about alike", "equal: 6 Fr, 2 mm, 14 G". */
import type { EquivalenceClaim } from '../model.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

export const severalAlike: Construction = {
  id: 'several-alike',
  needs: () => [
    {
      sizes: 3,
      holds: ['mixed'],
      words: 'alike same one equal equals identical equivalent equivalents interchangeable'.split(' '),
    },
  ],
  read(scene) {
    const { items, sentence } = scene;
    if (sentence.close === '?' || TURNS.test(joined(items))) return [];
    const run = runIn(scene);
    const [first, last] = [run[0], run.at(-1)];
    if (!first || !last || run.length < 3) return [];
    const after = joined(items, last.to + 1, last.to + 14);
    if (!ARE_ALIKE.test(after) && !(EQUAL.test(joined(items, 0, first.from)) && /^(?:[.;!)]|$)/.test(after)))
      return [];
    // French says its width to the third of a millimetre, a length as it is rounded.
    const of = (system: string) => run.find((g) => g.sizes[0]!.system === system);
    const anchor = of('french') ?? of('millimetre') ?? first;
    return run.filter((g) => g !== anchor).map((g) => reading(scene, anchor, g));
  },
};

const TURNS =
  /\b(?:not|never|no|nor|neither|nowhere|hardly|than|but|if|unless|except|although|whereas|unlike|wrong|mistake|myth|sheaths?|introducers?|inner|inside|lumen|bore|long|length|deep|\w+n't)\b/;
const ARE_ALIKE =
  /^(?:[a-z]+ )?(?:[:,–—] ?(?:these|all|the|they)(?: (?:two|three|four|five|sizes))? )?(?:(?:are|is|come|comes|all|work out|measure)\b|[:—–])(?: (?:all|three|four|just|much|about|roughly|nearly|practically|more or less|very|exactly|approximately|to|out|at|as|be|of|come|mean|measure))*(?: (?:the|one and the))? (?:one (?:width|size|thickness|diameter)|alike|same|equal|identical|equivalent|interchangeable)(?: (?:in )?(?:width|size|thickness|diameter|calib(?:re|er)|thing|outside))?(?: across| to a hair)?(?= ?[.,;!)]|$)/;
const EQUAL =
  /(?:^|[ :,])(?:(?:roughly|about|nearly|practically|more or less|exactly|of|all) )*(?:the )?(?:equal|alike|same|identical|equivalents?|equivalent sizes|interchangeable)(?: (?:in )?(?:width|size|thickness|diameter|calib(?:re|er)|thing))? :$/;

const SCALES: ReadonlySet<string> = new Set(
  'needle-gauge french usp ep-metric millimetre inch wire-inch'.split(' '),
);

/** Sizes one behind the other, each of another scale. */
function runIn({ items }: Scene): Group[] {
  const run: Group[] = [];
  for (const g of groups(items)) {
    const system = g.sizes[0]!.system;
    const gap = run.length === 0 ? ',' : joined(items, run.at(-1)!.to + 1, g.from);
    const plain = g.sizes.length === 1 && !g.mentions[0]!.bound;
    if (!plain || !SCALES.has(system) || run.some((one) => one.sizes[0]!.system === system)) return [];
    if (!GAP.test(gap)) return [];
    run.push(g);
  }
  return run;
}
const GAP = /^(?:catheters? |needles? |wires? |tubes? )?(?:,|and|, and|=|\/|,? or)(?: an?| the)?$/;

function reading(scene: Scene, left: Group, right: Group): Reading {
  const [from, to] = [Math.min(left.from, right.from), Math.max(left.to, right.to)];
  const claim: EquivalenceClaim = {
    kind: 'equivalence',
    construction: 'several-alike',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[right.from]!, scene.items[right.to]!),
    left: operand(scene, left),
    right: operand(scene, right),
    approximate: true,
    axis: 'outer',
    among: true,
  };
  return { claim, at: right.from, from, to };
}
