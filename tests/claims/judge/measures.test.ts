/** Two ways of saying one size, judged, and the number that would be right. */
import { describe, expect, it } from 'vitest';
import type { EquivalenceClaim, Operand } from '../../../server/src/claims/model.ts';
import { at, judged, NOBODY, type Said, side, type Written } from './claims.ts';

const equal = (
  left: Operand,
  right: Operand,
  more: Partial<Pick<EquivalenceClaim, 'axis' | 'approximate' | 'said'>> = {},
): Said => ({ kind: 'equivalence', left, right, axis: 'outer', approximate: false, ...more });

const mm = (texts: string | readonly string[], decimals = 1, more: Written = {}) =>
  side('millimetre', texts, { text: `${[texts].flat().join(' to ')} mm`, decimals, ...more });
const fr = (texts: string | readonly string[], more: Written = {}) => side('french', texts, more);
const needle = (text: string) => side('needle-gauge', text, { device: 'needle' });

describe('a length said of a size', () => {
  // 1 Fr = 1/3 mm (UCUM, ISO 20696): 14 Fr is 4.67 mm.
  it.each([
    [fr('14'), mm('4.7'), 'agrees'],
    [fr('14'), mm('4.67', 2), 'agrees'],
    [fr('14'), mm('5', 0), 'agrees'],
    [fr('14'), mm('5.0'), 'cannot-tell'],
    [fr('14'), mm('6.0'), 'contradicted'],
    [fr('14'), mm('3.0'), 'contradicted'],
    [fr('14'), mm('14', 0), 'contradicted'],
    [mm('4.7'), fr('14'), 'agrees'],
    [mm('6.0'), fr('14'), 'contradicted'],
    [fr(['12', '14']), mm(['4', '4.7']), 'agrees'],
    [fr(['12', '14']), mm(['6', '7']), 'contradicted'],
    [fr(['12', '14']), mm(['3.5', '7']), 'cannot-tell'],
    [fr('14'), mm(['4.7', '4.7']), 'agrees'],
    [fr('14'), mm(['4.6', '4.8']), 'cannot-tell'],
    [fr('14'), mm(['7', '8']), 'contradicted'],
    [fr('14'), mm(['1', '2']), 'contradicted'],
    [fr('14'), mm(['2', '8']), 'cannot-tell'],
    [fr('14', { device: 'guiding-catheter' }), mm('9'), 'cannot-tell'],
    [fr(['14', '16'], { device: 'guiding-catheter' }), mm('9'), 'cannot-tell'],
    [side('usp', '3-0'), mm('0.2'), 'agrees'],
    [side('usp', '3-0'), mm('0.9'), 'contradicted'],
    [side('hegar', '8'), mm('8'), 'agrees'],
    [side('wire-inch', '0.035'), mm('0.89', 2), 'agrees'],
    [side('wire-inch', '0.035'), mm('0.35', 2), 'contradicted'],
    [side('inch', '0.5'), mm('12.7'), 'agrees'],
    [side('inch', '0.5'), mm('15'), 'contradicted'],
    [needle('18'), side('inch', '0.05', { text: '0.050 in', decimals: 3 }), 'agrees'],
    [needle('18'), side('inch', '0.5', { text: '0.5 in', decimals: 1 }), 'contradicted'],
    [NOBODY, mm('1'), 'cannot-tell'],
    [fr('14'), NOBODY, 'cannot-tell'],
  ] as const)('%o is %o: %s', (left, right, verdict) => {
    expect(judged(equal(left, right)).verdict).toBe(verdict);
  });

  it('is taken more loosely when it is said to be about', () => {
    expect(judged(equal(fr('14'), mm('5.4'))).verdict).toBe('contradicted');
    expect(judged(equal(fr('14'), mm('5.4'), { approximate: true })).verdict).toBe('cannot-tell');
    expect(judged(equal(fr('14'), mm('5.1'), { approximate: true })).verdict).toBe('agrees');
    const said = { min: 5.3, max: 5.5 };
    expect(judged(equal(fr('14'), mm('5.4'), { approximate: true, said })).verdict).toBe('contradicted');
    expect(judged(equal(fr('14'), mm('5.4'), { said: { min: 4.5, max: 5 } })).verdict).toBe('agrees');
  });

  it('that is a bound is broken only by the whole size', () => {
    const bounded = (text: string, bound: Written['bound']) =>
      judged(equal(fr('14'), mm(text, 1, { bound }))).verdict;
    expect(bounded('4', 'at-least')).toBe('cannot-tell');
    expect(bounded('6', 'at-least')).toBe('contradicted');
    expect(bounded('6', 'more-than')).toBe('contradicted');
    expect(bounded('6', 'at-most')).toBe('cannot-tell');
    expect(bounded('4', 'at-most')).toBe('contradicted');
    expect(bounded('4', 'less-than')).toBe('contradicted');
    expect(bounded('5', 'at-least')).toBe('cannot-tell');
  });

  it('of a metric number is its least diameter', () => {
    const least = (text: string) =>
      judged(equal(side('ep-metric', '3'), mm(text, 1, { bound: 'at-least' }))).verdict;
    expect(least('0.3')).toBe('agrees');
    expect(least('0.9')).toBe('contradicted');
  });

  it('is rounded as it is written: digits, centimetres, fractions', () => {
    const cm = (value: string, decimals: number) =>
      side('millimetre', value, { text: `${Number(value) / 10} cm`, decimals });
    expect(judged(equal(fr('30'), cm('10', 0))).verdict).toBe('agrees');
    expect(judged(equal(fr('27'), cm('10', 0))).verdict).toBe('agrees');
    expect(judged(equal(fr('27'), mm('10.0', 1))).verdict).not.toBe('agrees');
    const fraction = side('inch', '1/8', { text: '1/8 in', decimals: 3 });
    expect(judged(equal(fr('9.5'), fraction)).says).toBe('Says 9.5 Fr is 1/8 in.');
    expect(judged(equal(fr('9.5'), fraction)).verdict).toBe('agrees');
    const inch = side('inch', '1', { text: '1 in', decimals: 0 });
    expect(judged(equal(mm('25.4'), inch)).verdict).toBe('agrees');
    expect(judged(equal(mm('21.0'), inch)).verdict).toBe('contradicted');
  });

  it('may be inside, half or around', () => {
    const tube = side('tube-id', '7.5');
    expect(judged(equal(tube, mm('7.5'), { axis: 'bore' }))).toMatchObject({
      verdict: 'agrees',
      says: 'Says 7.5 mm ID is inside 7.5 mm.',
    });
    expect(judged(equal(tube, mm('9.5'), { axis: 'bore' })).verdict).toBe('contradicted');
    expect(judged(equal(tube, mm('9.5'))).verdict).toBe('cannot-tell');
    expect(judged(equal(fr('15'), mm('2.5'), { axis: 'radius' }))).toMatchObject({
      verdict: 'agrees',
      says: 'Says the radius of 15 Fr is 2.5 mm.',
      holds: '15 Fr is 2.5 mm in radius.',
    });
    expect(judged(equal(fr('15'), mm('5'), { axis: 'radius' })).verdict).toBe('contradicted');
    expect(judged(equal(fr('15'), mm('15.7'), { axis: 'around' }))).toMatchObject({
      verdict: 'agrees',
      says: 'Says 15 Fr is 15.7 mm around.',
    });
    expect(judged(equal(fr(['12', '15']), mm(['12.6', '15.7']), { axis: 'around' })).verdict).toBe('agrees');
    expect(judged(equal(fr('15'), mm('5'), { axis: 'around' })).verdict).toBe('contradicted');
    expect(judged(equal(mm('3'), mm('2'), { axis: 'bore' })).verdict).toBe('contradicted');
  });

  it('shows what was said, what holds and by what', () => {
    const said = judged(equal(fr('14'), mm('6.0')));
    expect(said).toMatchObject({
      says: 'Says 14 Fr is 6 mm.',
      holds: '14 Fr is 4.67 mm.',
      source: '1 Fr = 1/3 mm',
    });
    expect(said.derivation[1]!.text).toBe('14 Fr: 4.67 mm by 1 Fr = 1/3 mm');
    expect(said.derivation[2]!.text).toBe('written: 6 mm, read with a tolerance of 0.05 mm for rounding');
    expect(judged(equal(fr('14'), mm(['7', '8']))).derivation[2]!.text).toContain('written: 7 to 8 mm');
    expect(judged(equal(needle('18'), side('inch', '0.5', { text: '0.5 in', decimals: 1 }))).holds).toMatch(
      /^18 G is .+ mm \(0\.047 in\)\.$/,
    );
    expect(judged(equal(side('usp', '3-0'), mm('0.9'))).holds).toBe(
      '3-0 is 0.2 mm (gut of the same size is one step thicker).',
    );
    expect(judged(equal(fr(['12', '14']), mm(['6', '7'])))).toMatchObject({
      says: 'Says 12 Fr to 14 Fr is 6 mm to 7 mm.',
      holds: '12 Fr to 14 Fr is 4 to 4.7 mm.',
    });
  });
});

describe('a number that would be right', () => {
  const mended = (text: string, written: string, left: Operand, right: (more: Written) => Operand) => {
    const measured = right({ text: written, span: at(text, written) });
    const edit = judged(equal(left, measured), { text }).repair?.edit;
    return edit && text.slice(0, edit.span.start) + edit.text + text.slice(edit.span.end);
  };
  const millimetres = (value: string | readonly string[], decimals: number) => (more: Written) =>
    side('millimetre', value, { ...more, decimals });

  it('has the digits and the unit of the one that is written', () => {
    expect(mended('A 14 Fr is 6.0 mm.', '6.0 mm', fr('14'), millimetres('6', 1))).toBe('A 14 Fr is 4.7 mm.');
    expect(mended('A 14 Fr is 6,0 mm.', '6,0 mm', fr('14'), millimetres('6', 1))).toBe('A 14 Fr is 4,7 mm.');
    expect(mended('A 14 Fr is 7 mm.', '7 mm', fr('14'), millimetres('7', 0))).toBe('A 14 Fr is 4.7 mm.');
    expect(mended('A 15 Fr is 9 mm.', '9 mm', fr('15'), millimetres('9', 0))).toBe('A 15 Fr is 5 mm.');
    expect(mended('A 15 Fr is 0.9 cm.', '0.9 cm', fr('15'), millimetres('9', 1))).toBe('A 15 Fr is 0.5 cm.');
    expect(mended('A 3 Fr is .5 mm.', '.5 mm', fr('3'), millimetres('0.5', 1))).toBe('A 3 Fr is 1.0 mm.');
    expect(
      mended('A 3-0 is .9 mm.', '.9 mm', side('usp', '3-0', { material: 'silk' }), millimetres('0.9', 1)),
    ).toBe('A 3-0 is .2 mm.');
    expect(
      mended('A 14 Fr is 0.9 in.', '0.9 in', fr('14'), (more) =>
        side('inch', '0.9', { ...more, decimals: 1 }),
      ),
    ).toBe('A 14 Fr is 0.184 in.');
  });

  it('is none for words, fractions, ranges and what is right', () => {
    expect(
      mended('A 14 Fr is six millimetres.', 'six millimetres', fr('14'), millimetres('6', 0)),
    ).toBeUndefined();
    expect(
      mended('A 14 Fr is 1/2 in.', '1/2 in', fr('14'), (more) =>
        side('inch', '1/2', { ...more, decimals: 1 }),
      ),
    ).toBeUndefined();
    expect(
      mended('A 14 Fr is 7 to 8 mm.', '7 to 8 mm', fr('14'), millimetres(['7', '8'], 0)),
    ).toBeUndefined();
    expect(mended('A 14 Fr is 4.7 mm.', '4.7 mm', fr('14'), millimetres('4.7', 1))).toBeUndefined();
    expect(judged(equal(fr('14'), side('millimetre', '9'))).repair).toBeUndefined();
  });
});

describe('numbers of two systems', () => {
  const usp = (text: string, material?: string) => side('usp', text, material ? { material } : {});
  const metric = (text: string) => side('ep-metric', text);
  // European Pharmacopoeia comparison table: 3-0 synthetic is metric 2, 3-0 gut is metric 3.
  it.each([
    [usp('3-0'), metric('2'), 'agrees'],
    [usp('3-0'), metric('3'), 'agrees'],
    [usp('3-0'), metric('4'), 'contradicted'],
    [metric('2'), usp('3-0'), 'agrees'],
    [usp('3-0', 'silk'), metric('3'), 'contradicted'],
    [usp('3-0', 'gut'), metric('3'), 'agrees'],
    [usp('3-0', 'gut'), metric('2'), 'contradicted'],
    [usp('15'), metric('2'), 'cannot-tell'],
    [side('usp', ['3-0', '2-0']), metric('2'), 'cannot-tell'],
    [usp('3-0'), side('ep-metric', ['2', '3']), 'cannot-tell'],
  ] as const)('%o is %o: %s', (left, right, verdict) => {
    expect(judged(equal(left, right)).verdict).toBe(verdict);
  });

  it('of thread show both tables unless the text or the course settles one', () => {
    expect(judged(equal(usp('3-0'), metric('4')))).toMatchObject({
      says: 'Says 3-0 is metric 4.',
      holds: '3-0 is metric 2, or for gut metric 3.',
      source: 'USP <861>',
    });
    const text = 'A synthetic 3-0 is metric 3.';
    const span = { start: 0, end: text.length };
    expect(judged({ ...equal(usp('3-0'), metric('3')), span } as Said, { text }).verdict).toBe(
      'contradicted',
    );
    expect(judged(equal(usp('3-0'), metric('2')), { context: { suture: 'collagen' } }).verdict).toBe(
      'contradicted',
    );
  });

  it.each([
    [needle('18'), fr('4'), 'agrees'],
    [needle('18'), fr('18'), 'contradicted'],
    [fr('18'), needle('18'), 'contradicted'],
    [fr('24'), side('tube-id', '5'), 'cannot-tell'],
    [fr('14'), side('tube-id', '7.5'), 'contradicted'],
    [side('tube-id', '7.5'), fr('14'), 'contradicted'],
    [side('tube-id', '3'), fr('24'), 'contradicted'],
    [side('tube-id', '7.5'), side('tube-id', '7'), 'cannot-tell'],
  ] as const)('%o is %o: %s', (left, right, verdict) => {
    expect(judged(equal(left, right)).verdict).toBe(verdict);
  });

  it('of other scales show both lengths', () => {
    expect(judged(equal(needle('18'), fr('18')))).toMatchObject({
      source: expect.stringContaining('1 Fr = 1/3 mm'),
    });
    expect(judged(equal(needle('18'), fr('18'))).holds).toMatch(/^18 G is .+ mm; 18 Fr is 6 mm\.$/);
    expect(judged(equal(fr('14'), side('tube-id', '7.5'))).holds).toBe(
      'A 7.5 mm ID tube is 7.5 mm inside and wider outside; 14 Fr is 4.67 mm.',
    );
  });
});
