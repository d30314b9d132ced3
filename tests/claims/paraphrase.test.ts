/**
 * One claim in many wordings keeps one verdict, and one word flipped turns it. `flip` names the word and what stands in
 * its place; every wording holds it exactly once. Rules: ISO 9626, UCUM, ISO 20696, USP <861>, hub colour codes.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';

interface Group {
  readonly claim: string;
  /** [true wording, the word, its replacement that makes it false] */
  readonly wordings: readonly (readonly [text: string, word: string, flipped: string])[];
}

const GROUPS: readonly Group[] = [
  {
    claim: 'a larger gauge number is a thinner needle',
    wordings: [
      ['The larger the gauge number, the thinner the needle.', 'thinner', 'thicker'],
      ['A higher gauge number means a thinner needle.', 'thinner', 'wider'],
      ['As the gauge number rises, the needle gets narrower.', 'narrower', 'wider'],
      ['Bigger gauge number, smaller needle.', 'smaller', 'larger'],
      ['When the gauge number goes up, the diameter goes down.', 'down', 'up'],
      ['Gauge number and diameter are inversely related.', 'inversely', 'directly'],
      ['Needles with a lower gauge number are thicker.', 'thicker', 'thinner'],
      ['The needle narrows as the gauge number climbs.', 'narrows', 'widens'],
      ['Rising gauge numbers mean finer needles.', 'finer', 'coarser'],
    ],
  },
  {
    claim: 'a larger French number is a wider catheter',
    wordings: [
      ['The larger the French number, the wider the catheter.', 'wider', 'narrower'],
      ['A higher French number means a thicker tube.', 'thicker', 'thinner'],
      ['As the French size rises, the catheter gets wider.', 'wider', 'narrower'],
      ['With French sizes, bigger numbers are bigger tubes.', 'tubes', 'numbers are smaller tubes'],
      ['The French scale is directly proportional to the diameter.', 'directly', 'inversely'],
      ['A smaller French number gives a narrower catheter.', 'narrower', 'wider'],
    ],
  },
  {
    claim: 'more zeros are a thinner thread',
    wordings: [
      ['The more zeros, the thinner the thread.', 'thinner', 'thicker'],
      ['Every extra zero makes the suture finer.', 'finer', 'coarser'],
      ['Fewer zeros means a thicker suture.', 'thicker', 'thinner'],
      ['More noughts, finer thread.', 'finer', 'thicker'],
      ['Adding a zero makes the strand thinner.', 'thinner', 'thicker'],
    ],
  },
  {
    claim: '18 G is wider than 22 G',
    wordings: [
      ['An 18 G is wider than a 22 G.', 'wider', 'narrower'],
      ['A 22 G is thinner than an 18 G.', 'thinner', 'thicker'],
      ['Compared with a 22 G, an 18 G is wide.', 'wide', 'narrow'],
      ['The 18-gauge cannula has a bigger bore than the 22-gauge.', 'bigger', 'smaller'],
      ['Of the 18 G and the 22 G, the 22 G is the narrower.', 'narrower', 'wider'],
      ['Going from 22 G to 18 G gives you a wider cannula.', 'wider', 'narrower'],
      ['Choose an 18 G rather than a 22 G when you want a larger bore.', 'larger', 'smaller'],
      ['An eighteen gauge is fatter than a twenty-two gauge.', 'fatter', 'thinner'],
      ['In bore, 18 G > 22 G.', '>', '<'],
      ['The 22 G, being narrower than the 18 G, suits small veins.', 'narrower', 'wider'],
    ],
  },
  {
    claim: '2-0 silk is thicker than 4-0 silk',
    wordings: [
      ['2-0 silk is thicker than 4-0 silk.', 'thicker', 'thinner'],
      ['4-0 silk is finer than 2-0 silk.', 'finer', 'coarser'],
      ['4-0 silk is weaker than 2-0 silk.', 'weaker', 'stronger'],
      ['Swap the 4-0 silk for a 2-0 if you need a thicker thread.', 'thicker', 'thinner'],
      ['Next to 4-0 silk, 2-0 silk looks thick.', 'thick', 'thin'],
      ['A two-oh silk is a heavier suture than a four-oh.', 'heavier', 'lighter'],
    ],
  },
  {
    claim: '14 G flows faster than 20 G',
    wordings: [
      ['Fluid runs faster through a 14 G than through a 20 G.', 'faster', 'slower'],
      ['A 14 G has a higher flow rate than a 20 G.', 'higher', 'lower'],
      ['A 20 G is slower than a 14 G for blood.', 'slower', 'faster'],
      ['Swapping a 20 G for a 14 G increases the flow.', 'increases', 'reduces'],
      ['Resistance is lower in a 14 G than in a 20 G.', 'lower', 'higher'],
    ],
  },
  {
    claim: '12 Fr is 4 mm',
    wordings: [
      ['A 12 Fr catheter is 4 mm in diameter.', '4', '6'],
      ['12 Fr = 4 mm.', '4', '12'],
      ['The 12 French tube (4 mm) fits.', '4', '8'],
      ['An outer diameter of 4 mm corresponds to 12 Fr.', '12', '16'],
      ['A 12 Ch catheter measures 4 mm across.', '4', '6'],
      ['A twelve French tube is 4 mm wide.', '4', '12'],
    ],
  },
  {
    claim: 'French is three times the diameter in millimetres',
    wordings: [
      ['French is three times the outer diameter in millimetres.', 'three', 'two'],
      ['Divide the French size by 3 to get millimetres.', 'Divide', 'Multiply'],
      ['mm = Fr ÷ 3.', '÷', '×'],
      ['Multiply the diameter in mm by three for the French size.', 'Multiply', 'Divide'],
      ['One French is a third of a millimetre.', 'third', 'half'],
      ['A millimetre is three French.', 'three', 'five'],
    ],
  },
  {
    claim: 'a 20 G IV cannula is pink',
    wordings: [
      ['A 20 G IV cannula is pink.', 'pink', 'blue'],
      ['The pink IV cannula is a 20 G.', 'pink', 'green'],
      ['IV cannulas of 20 G have a pink hub.', 'pink', 'grey'],
      ['Pink means 20 G on an IV cannula.', 'Pink', 'Orange'],
    ],
  },
  {
    claim: 'polypropylene is a nonabsorbable monofilament',
    wordings: [
      ['Polypropylene is nonabsorbable.', 'nonabsorbable', 'absorbable'],
      ['Polypropylene is a monofilament.', 'monofilament', 'braid'],
      ['Nonabsorbable sutures include polypropylene.', 'Nonabsorbable', 'Absorbable'],
      ['A monofilament such as polypropylene slides well.', 'monofilament', 'braid'],
      ['Polypropylene is made of a single strand.', 'a single strand', 'many strands'],
    ],
  },
  {
    claim: 'the edge of a reverse cutting needle lies on the outer curve',
    wordings: [
      ['A reverse cutting needle has its third edge on the outer curve.', 'outer', 'inner'],
      ['Reverse cutting: edge on the convex side.', 'convex', 'concave'],
      ['With a reverse cutting needle the apex lies on the outside of the curve.', 'outside', 'inside'],
      ['The edge on the outer curve makes it a reverse cutting needle.', 'outer', 'inner'],
    ],
  },
  {
    claim: 'the sizes run from thick to thin',
    wordings: [
      ['Thickest first: 14 G, 16 G, 18 G, 20 G.', 'Thickest', 'Thinnest'],
      ['From wide to narrow: 14 G, 16 G, 18 G.', 'wide to narrow', 'narrow to wide'],
      ['In decreasing bore: 14 G, 16 G, 18 G.', 'decreasing', 'increasing'],
      ['The needles get thinner as you read along: 18 G, 21 G, 23 G.', 'thinner', 'thicker'],
      ['In bore, 14 G > 16 G > 18 G.', '> 16 G >', '< 16 G <'],
    ],
  },
];

/** What the statements of a text come to: contradicted, agreeing, or nothing that can be told. */
function verdictOf(text: string): 'contradicted' | 'agrees' | 'nothing' {
  const { findings, statements } = analyse(text);
  if (findings.some((finding) => finding.kind === 'contradiction')) return 'contradicted';
  return statements.some(({ verdict }) => verdict === 'agrees') ? 'agrees' : 'nothing';
}

describe.each(GROUPS)('$claim', ({ wordings }) => {
  test('holds in every wording', () => {
    const verdicts = wordings.map(([text]) => ({ text, verdict: verdictOf(text) }));
    expect(verdicts).toEqual(wordings.map(([text]) => ({ text, verdict: 'agrees' })));
  });

  test('turns when one word is flipped', () => {
    const flipped = wordings.map(([text, word, other]) => {
      expect(text.split(word).length, `“${word}” stands once in: ${text}`).toBe(2);
      return text.replace(word, other);
    });
    const verdicts = flipped.map((text) => ({ text, verdict: verdictOf(text) }));
    expect(verdicts).toEqual(flipped.map((text) => ({ text, verdict: 'contradicted' })));
  });
});
