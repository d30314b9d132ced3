/** Colours, materials, needle points, classes, rules, fits and sizes that do not exist, judged. */
import { describe, expect, it } from 'vitest';
import type { ColourClaim, PropertyClaim } from '../../../server/src/claims/model.ts';
import { FORMULAS } from '../../../server/src/claims/words/formulas.ts';
import type { Device } from '../../../server/src/sizes/index.ts';
import { at, judged, NOBODY, type Said, side, type Written } from './claims.ts';

describe('a colour', () => {
  const colour = (said: string, text: string | readonly string[], device?: Device, written: Written = {}): Said => ({
    kind: 'colour', size: side('needle-gauge', text, written), colour: said, same: true, ...(device && { device }),
  }); // biome-ignore format: a value
  const french = (said: string, text: string, device?: Device): Said =>
    ({ ...colour(said, '18', device), size: side('french', text) }) as Said;

  // ISO 6009 (needles) and ISO 10555-5 (IV catheters).
  it.each([
    ['pink', '18', 'needle', 'agrees'],
    ['green', '18', 'needle', 'contradicted'],
    ['green', '18', 'cannula', 'agrees'],
    ['pink', '18', 'cannula', 'contradicted'],
    ['pink', '18', undefined, 'agrees'],
    ['green', '18', undefined, 'agrees'],
    ['yellow', '18', undefined, 'contradicted'],
    ['pink', '18', 'winged-set', 'agrees'],
    ['pink', '18', 'guidewire', 'cannot-tell'],
    ['pink', '18', 'catheter', 'agrees'],
    ['pink', '18', 'suction-catheter', 'cannot-tell'],
    ['pink', '35', 'needle', 'contradicted'],
    ['beige', '35', 'needle', 'cannot-tell'],
    // The colours of the finest needles are from memory.
    ['pink', '31', 'needle', 'cannot-tell'],
  ] as const)('%s on %s G, %s: %s', (said, text, device, verdict) => {
    expect(judged(colour(said, text, device)).verdict).toBe(verdict);
  });

  it('goes by the device of the size, unless it is a needle, as which hubs are spoken of', () => {
    expect(judged(colour('green', '18', undefined, { device: 'cannula' })).verdict).toBe('agrees');
    expect(judged(colour('pink', '18', undefined, { device: 'cannula' })).verdict).toBe('contradicted');
    expect(judged(colour('green', '18', undefined, { device: 'needle' })).verdict).toBe('agrees');
  });

  it('of a gauge that one list alone has goes by that list', () => {
    expect(judged(colour('yellow', '30')).verdict).toBe('agrees');
    expect(judged(colour('pink', '30')).verdict).toBe('contradicted');
  });

  it('of a gauge that the list of the device lacks belongs to another', () => {
    const said = judged(colour('pink', '19', 'cannula'));
    expect(said).toMatchObject({
      verdict: 'contradicted',
      says: 'Says 19 G is pink.',
      holds: 'Pink is 20 G on an IV cannula. Read the marked size, not the colour.',
      source: 'ISO 10555-5',
    });
    expect(said.sources.length).toBeGreaterThan(0);
    expect(judged(colour('beige', '19', 'cannula')).verdict).toBe('cannot-tell');
  });

  it('of a French size needs its device', () => {
    expect(judged(french('green', '14', 'urinary-catheter')).verdict).toBe('agrees');
    expect(judged(french('orange', '14', 'urinary-catheter')).verdict).toBe('contradicted');
    expect(judged(french('green', '14', 'suction-catheter')).verdict).toBe('agrees');
    expect(judged(french('green', '14')).verdict).toBe('cannot-tell');
    expect(judged(french('green', '14', 'needle')).verdict).toBe('cannot-tell');
    expect(judged(french('green', '15', 'urinary-catheter')).verdict).toBe('cannot-tell');
  });

  it('of no size or several is not judged', () => {
    expect(judged(colour('pink', []))).toMatchObject({ verdict: 'cannot-tell', says: '', holds: '' });
    expect(judged(colour('pink', ['18', '20'])).verdict).toBe('cannot-tell');
  });

  it('says what holds by each code that may be meant', () => {
    expect(judged(colour('yellow', '18'))).toMatchObject({
      says: 'Says 18 G is yellow.',
      holds:
        '18 G is pink on a hypodermic needle hub, and deep green on an IV cannula. Read the marked size, not the colour.',
      source: 'ISO 6009, ISO 10555-5',
    });
    const several = judged(colour('yellow', '35', 'needle'));
    expect(several.holds).toMatch(/^Yellow is 20 G or 30 G on a hypodermic needle hub\./);
    expect(several.derivation[1]).toMatchObject({ label: 'value', text: 'yellow: 20 G or 30 G (ISO 6009)' });
    expect(judged(colour('beige', '35', 'needle')).holds).toBe('No colour is listed for this size.');
    expect(judged(french('green', '14')).holds).toBe('No colour is listed for this size.');
    expect(judged(colour('yellow', '18')).sources).toHaveLength(4);
    expect(judged(french('red', '6', 'urinary-catheter')).holds).toContain(
      '6 Fr is green or yellow-green on',
    );
    const catheter = judged(french('orange', '14', 'urinary-catheter'));
    expect(catheter.source).not.toBe('');
    expect(catheter.holds).toContain('14 Fr is green on a urinary catheter');
    expect(catheter.source).not.toContain('ISO');
    expect(catheter.derivation[1]!.text).toBe('14 Fr: green (urinary catheter)');
  });

  const mend = (text: string, word: string, claim: Said) => {
    const repair = judged({ ...claim, focus: at(text, word) } as ColourClaim, { text }).repair;
    return repair && [repair.title, repair.edit.text];
  };
  it('is mended where one code is meant, in the capitals of the word', () => {
    expect(mend('An 18 G needle is green.', 'green', colour('green', '18', 'needle'))).toEqual([
      'Write “pink”',
      'pink',
    ]);
    expect(mend('Green: 18 G needle', 'Green', colour('green', '18', 'needle'))).toEqual([
      'Write “Pink”',
      'Pink',
    ]);
    expect(mend('The 18 G is yellow.', 'yellow', colour('yellow', '18'))).toBeUndefined();
    expect(mend('Answer: C', 'C', colour('green', '18', 'needle'))).toBeUndefined();
    expect(mend('The needle is green1 yes.', 'green1', colour('green', '18', 'needle'))).toBeUndefined();
    expect(
      mend('The needle is (dark) green.', '(dark) green', colour('green', '18', 'needle')),
    ).toBeUndefined();
    expect(mend('The needle is dark green.', 'dark green', colour('green', '18', 'needle'))).toEqual([
      'Write “pink”',
      'pink',
    ]);
    expect(mend('The needle is #0f0.', '#0f0', colour('green', '18', 'needle'))).toBeUndefined();
    expect(mend('An 18 G needle is pink.', 'pink', colour('pink', '18', 'needle'))).toBeUndefined();
  });
});

const property = (subject: string, of: PropertyClaim['of'], words: string): Said => ({
  kind: 'property', subject, of, property: words, has: true,
}); // biome-ignore format: a value

// Facts and their sources: the table of materials in sizes.
describe('a material', () => {
  it.each([
    ['silk', 'absorbable:no', 'agrees', 'Says silk is nonabsorbable.'],
    ['silk', 'absorbable:yes', 'contradicted', 'Says silk is absorbable.'],
    ['silk', 'structure:multifilament', 'agrees', 'Says silk is braided or multifilament.'],
    ['silk', 'structure:monofilament', 'contradicted', 'Says silk is a monofilament.'],
    ['silk', 'origin:natural', 'agrees', 'Says silk is natural.'],
    ['silk', 'origin:synthetic', 'contradicted', 'Says silk is synthetic.'],
    ['nylon', 'structure:monofilament', 'cannot-tell', 'Says nylon is a monofilament.'],
    ['plain-gut', 'structure:monofilament', 'cannot-tell', 'Says plain gut is a monofilament.'],
    [
      'polydioxanone',
      'structure:multifilament',
      'contradicted',
      'Says polydioxanone is braided or multifilament.',
    ],
    ['stainless-steel', 'origin:natural', 'cannot-tell', 'Says stainless steel is natural.'],
    ['stainless-steel', 'absorbable:yes', 'contradicted', 'Says stainless steel is absorbable.'],
    // Known from memory only: nobody is corrected on it.
    ['polyglyconate', 'absorbable:no', 'cannot-tell', 'Says polyglyconate is nonabsorbable.'],
    ['horsehair', 'absorbable:no', 'cannot-tell', 'Says horsehair is nonabsorbable.'],
  ] as const)('%s %s: %s', (subject, words, verdict, says) => {
    expect(judged(property(subject, 'material', words))).toMatchObject({ verdict, says });
  });

  it('is described whole', () => {
    expect(judged(property('silk', 'material', 'absorbable:yes')).holds).toBe(
      'Silk is natural, nonabsorbable and braided (multifilament).',
    );
    expect(judged(property('polydioxanone', 'material', 'absorbable:no')).holds).toBe(
      'Polydioxanone is synthetic, absorbable and monofilament.',
    );
    expect(judged(property('stainless-steel', 'material', 'absorbable:yes')).holds).toBe(
      'Stainless steel is metal, nonabsorbable and monofilament or twisted or braided (multifilament).',
    );
    expect(judged(property('silk', 'material', 'absorbable:yes')).source).not.toBe('');
  });
});

describe('a needle point', () => {
  it.each([
    ['cutting', 'edge:inner', 'agrees'],
    ['cutting', 'edge:outer', 'contradicted'],
    ['reverse-cutting', 'edge:outer', 'agrees'],
    ['reverse-cutting', 'edge:inner', 'contradicted'],
    ['reverse-cutting', 'edge:none', 'contradicted'],
    ['cutting', 'edge:some', 'agrees'],
    ['taper', 'edge:some', 'contradicted'],
    ['taper', 'edge:none', 'cannot-tell'],
    ['taper', 'edge:inner', 'contradicted'],
    ['spatula', 'edge:outer', 'contradicted'],
    ['spatula', 'edge:some', 'cannot-tell'],
    ['tapercut', 'edge:inner', 'cannot-tell'],
    ['unheard-of', 'edge:inner', 'cannot-tell'],
    ['taper', 'section:round', 'agrees'],
    ['taper', 'section:triangular', 'contradicted'],
    ['cutting', 'section:triangular', 'agrees'],
    ['cutting', 'section:round', 'contradicted'],
    ['spatula', 'section:round', 'cannot-tell'],
    ['unheard-of', 'section:round', 'cannot-tell'],
    ['taper', 'use:bowel', 'agrees'],
    ['taper', 'use:tough skin', 'contradicted'],
    ['taper', 'use:liver', 'cannot-tell'],
    ['blunt', 'use:skin', 'contradicted'],
    ['unheard-of', 'use:skin', 'cannot-tell'],
    ['cutting', 'cuts-out:conventional', 'agrees'],
    ['cutting', 'cuts-out:reverse', 'contradicted'],
  ] as const)('%s, %s: %s', (subject, words, verdict) => {
    const said = judged(property(subject, 'point', words));
    expect(said.verdict).toBe(verdict);
    if (verdict !== 'cannot-tell') expect([said.source, said.sources.length > 0]).not.toEqual(['', false]);
  });

  it.each([
    [
      'cutting',
      'edge:outer',
      'Says the edge of a conventional cutting needle lies on the outer curve.',
      'A conventional cutting needle has its third edge on the inner curve.',
    ],
    [
      'taper',
      'edge:some',
      'Says a taper (round-bodied) needle has a cutting edge.',
      'A taper (round-bodied) needle has no cutting edge.',
    ],
    [
      'reverse-cutting',
      'edge:none',
      'Says a reverse cutting needle has no edge.',
      'A reverse cutting needle has its third edge on the outer curve.',
    ],
    [
      'spatula',
      'edge:outer',
      'Says the edge of a spatula (side-cutting) needle lies on the outer curve.',
      'A spatula (side-cutting) needle has its edges at the sides.',
    ],
    [
      'taper',
      'section:triangular',
      'Says a taper (round-bodied) needle is triangular in section.',
      'A taper (round-bodied) needle is round in section.',
    ],
    [
      'cutting',
      'section:round',
      'Says a conventional cutting needle is round in section.',
      'A conventional cutting needle is triangular in section.',
    ],
    [
      'cutting',
      'cuts-out:reverse',
      'Says a reverse cutting needle is the likelier to cut out.',
      'A conventional cutting needle has its edge towards the wound and can cut out; a reverse cutting needle is the safer.',
    ],
  ] as const)('%s, %s is said in words', (subject, words, says, holds) => {
    expect(judged(property(subject, 'point', words))).toMatchObject({ says, holds });
  });

  it('that is unheard of is named as it is', () => {
    expect(judged(property('unheard-of', 'point', 'edge:inner')).says).toContain('unheard-of');
    expect(judged(property('unheard-of', 'point', 'edge:none')).says).toBe(
      'Says a unheard-of needle has no edge.',
    );
    expect(judged(property('unheard-of', 'point', 'edge:some')).says).toContain(
      'unheard-of needle has a cutting edge',
    );
    expect(judged(property('unheard-of', 'point', 'use:skin')).says).toBe(
      'Says a unheard-of needle is for skin.',
    );
    expect(judged(property('unheard-of', 'point', 'section:round')).says).toContain(
      'unheard-of needle is round',
    );
  });

  it('for the wrong tissue is shown the right one', () => {
    const said = judged(property('blunt', 'point', 'use:skin'));
    expect(said.says).toBe('Says a blunt taper needle is for skin.');
    expect(said.holds).toMatch(/^A blunt taper needle is for liver, kidney, spleen, friable tissue/);
  });
});

describe('a class', () => {
  const member = (category: string, texts: string | readonly string[], is: boolean, each?: boolean): Said => ({
    kind: 'category', size: side('needle-gauge', texts), category, member: is, ...(each === undefined ? {} : { each }),
  }); // biome-ignore format: a value

  it.each([
    ['14', true, undefined, 'agrees'],
    ['14', false, undefined, 'contradicted'],
    ['22', true, undefined, 'contradicted'],
    ['22', false, undefined, 'agrees'],
    ['18', true, undefined, 'cannot-tell'],
    [['14', '22'], true, undefined, 'cannot-tell'],
    [['14', '22'], true, true, 'contradicted'],
    [['14', '22'], false, true, 'cannot-tell'],
  ] as const)('%s G is large-bore (%s, each %s): %s', (texts, is, each, verdict) => {
    expect(judged(member('large-bore-iv', texts, is, each)).verdict).toBe(verdict);
  });

  it('is said in words', () => {
    expect(judged(member('large-bore-iv', '22', true)).says).toMatch(/^Says 22 G is large-bore/);
    expect(judged(member('large-bore-iv', '22', false)).says).toMatch(/^Says 22 G is not large-bore/);
    expect(judged(member('large-bore-iv', '22', true)).holds).toMatch(/\.$/);
  });

  it('of what is usual is contradicted only far outside', () => {
    const usual = (texts: string | readonly string[]): Said => ({
      kind: 'category',
      size: side('tube-id', texts),
      category: 'usual-tracheal-adult',
      member: true,
    });
    expect(judged(usual('4'))).toMatchObject({
      verdict: 'contradicted',
      says: 'Says 4 mm ID for this patient.',
    });
    expect(judged(usual('4')).holds).toMatch(/Local practice decides\.$/);
    expect(judged(usual('5')).verdict).toBe('contradicted');
    expect(judged(usual('6')).verdict).toBe('cannot-tell');
    expect(judged(usual(['4', '7'])).verdict).toBe('cannot-tell');
  });

  it('that no table has is not judged', () => {
    expect(judged(member('unheard-of', '22', true)).verdict).toBe('cannot-tell');
  });
});

describe('a size that does not exist', () => {
  const existing = (text: string, written: Written = {}): Said => ({
    kind: 'existence',
    size: side('usp', text, written),
  });
  it('is contradicted with the reason', () => {
    expect(judged(existing('13-0'))).toMatchObject({
      verdict: 'contradicted',
      says: 'Names a size 13-0.',
      holds: '13-0 does not exist: USP sizes end at 12-0, the finest.',
    });
    expect(judged(existing('13-0')).source).not.toBe('');
  });

  it('is nothing where it exists, or may', () => {
    expect(judged(existing('12-0')).verdict).toBe('cannot-tell');
    expect(judged(existing('13-0', { material: 'eptfe' })).verdict).toBe('cannot-tell');
  });
});

describe('a rule of conversion', () => {
  const formula = (id: string, sum?: string): Said => ({
    kind: 'formula', system: 'french', formula: id, ...(sum === undefined ? {} : { sum }),
  }); // biome-ignore format: a value
  it.each(FORMULAS.map((row) => [row.id, row] as const))('%s is as its row says', (id, row) => {
    expect(judged(formula(id))).toMatchObject({
      verdict: row.true ? 'agrees' : 'contradicted',
      says: `Says ${row.says}.`,
      holds: `${row.holds}.`,
      source: row.standard,
    });
    expect(judged(formula(id, '8 ÷ 4 = 2')).holds).toBe(`${row.holds}: 8 ÷ 4 = 2.`);
  });

  it('that no table has is not judged', () => {
    expect(judged(formula('unheard-of')).verdict).toBe('cannot-tell');
  });
});

describe('a fit', () => {
  const through = (thing: ReturnType<typeof side>, container: ReturnType<typeof side>): Said => ({
    kind: 'fit',
    thing,
    container,
  });
  const wire = side('wire-inch', '0.035');
  it.each([
    [wire, side('needle-gauge', '18', { device: 'needle' }), 'cannot-tell'],
    [wire, side('needle-gauge', '22', { device: 'needle' }), 'contradicted'],
    [wire, side('millimetre', '2'), 'agrees'],
    [wire, side('millimetre', '0.5'), 'contradicted'],
    [side('french', '6'), side('french', '7', { device: 'sheath' }), 'agrees'],
    [side('french', '7'), side('french', '6', { device: 'sheath' }), 'contradicted'],
    [side('french', '14'), side('french', '12'), 'contradicted'],
    [side('french', '12'), side('french', '14'), 'cannot-tell'],
    [side('tube-id', '7'), side('millimetre', '5'), 'cannot-tell'],
    [wire, side('usp', '11'), 'cannot-tell'],
  ] as const)('%o through %o: %s', (thing, container, verdict) => {
    expect(judged(through(thing, container)).verdict).toBe(verdict);
  });

  it('is said in words', () => {
    expect(judged(through(wire, side('millimetre', '0.5')))).toMatchObject({
      says: 'Says 0.035 in goes through 0.5 mm.',
      holds: '0.035 in is 0.89 mm thick, and the hole is 0.5 mm wide.',
    });
    expect(judged(through(side('french', '14'), side('french', '12'))).holds).toMatch(
      /and 12 Fr is at most 4 mm across\.$/,
    );
    expect(judged(through(side('french', '7'), side('french', '6', { device: 'sheath' }))).holds).toMatch(
      /and 6 Fr is at most 2 mm wide inside\.$/,
    );
  });
});

it('a key says its problem', () => {
  expect(judged({ kind: 'key', problem: 'B is right.' })).toMatchObject({
    verdict: 'contradicted',
    says: 'The key marks this answer',
    holds: 'B is right.',
  });
});

it('nothing is said of nobody', () => {
  expect(judged({ kind: 'existence', size: NOBODY }).verdict).toBe('cannot-tell');
});
