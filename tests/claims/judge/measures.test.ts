/** Two ways of saying one size, judged, and the number that would be right. */
import { describe, expect, it } from 'vitest';
import { measureEdit } from '../../../server/src/claims/judge/measure.ts';
import type { EquivalenceClaim, Operand } from '../../../server/src/claims/model.ts';
import { tell } from '../../../server/src/texts/index.ts';
import { at, judged, NOBODY, noteOf, type Said, side, type Written } from './claims.ts';

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

/** Where the verdict changes while the length said grows: "from: verdict". */
function edges(
  left: Operand,
  [from, to, step]: readonly [number, number, number],
  right: (value: string) => Operand,
  more = {},
) {
  const found: string[] = [];
  for (let k = Math.round(from / step); k <= Math.round(to / step); k++) {
    const value = String(Number((k * step).toFixed(4)));
    const { verdict } = judged(equal(left, right(value), more));
    if (found.at(-1)?.split(': ')[1] !== verdict) found.push(`${value}: ${verdict}`);
  }
  return found;
}

// The rule: agrees within the limits and half of the last digit; contradicts when it is further away by more than 0.6 of the
// step to the next size, or by 15 % of it (8 % of a length, 5 % of a wire); open between.
describe('how far a length may lie off', () => {
  const inMm = (decimals: number) => (value: string) => mm(value, decimals);
  const inInches = (decimals: number) => (value: string) =>
    side('inch', value, { text: `${value} in`, decimals });
  const inCm = (value: string) =>
    side('millimetre', value, { text: `${Number(value) / 10} cm`, decimals: 1 });

  it.each([
    // 4.66 to 4.7 mm, the next sizes 4 and 5.33 mm.
    ['14 Fr, one decimal', fr('14'), [3, 7, 0.01], inMm(1), ['4.22', '4.61', '4.76', '5.15']],
    ['14 Fr, two decimals', fr('14'), [3, 7, 0.01], inMm(2), ['4.26', '4.66', '4.71', '5.11']],
    ['14 Fr, none', fr('14'), [3, 7, 0.01], inMm(0), ['3.77', '4.16', '5.21', '5.61']],
    ['14 Fr in cm', fr('14'), [3, 7, 0.01], inCm, ['3.77', '4.16', '5.21', '5.61']],
    ['14 Fr in inches', fr('14'), [0.1, 0.3, 0.001], inInches(2), ['0.163', '0.179', '0.191', '0.206']],
    ['14 Fr in thousandths', fr('14'), [0.1, 0.3, 0.001], inInches(3), ['0.168', '0.183', '0.186', '0.202']],
    // 0.2 to 0.249 mm, the next sizes 0.15 and 0.3 mm.
    [
      '3-0 silk',
      side('usp', '3-0', { material: 'silk' }),
      [0.1, 0.4, 0.001],
      inMm(3),
      ['0.17', '0.2', '0.25', '0.28'],
    ],
    ['18 G needle', needle('18'), [0.8, 1.8, 0.005], inMm(2), ['1.14', '1.195', '1.31', '1.365']],
    [
      '20 G cannula',
      side('needle-gauge', '20', { device: 'cannula' }),
      [0.6, 1.6, 0.005],
      inMm(2),
      ['0.815', '0.945', '1.155', '1.29'],
    ],
    ['Hegar 8', side('hegar', '8'), [6, 10, 0.01], inMm(1), ['7.32', '7.95', '8.06', '8.7']],
    [
      '0.035 in wire',
      side('wire-inch', '0.035'),
      [0.7, 1.1, 0.001],
      inMm(2),
      ['0.84', '0.884', '0.895', '0.939'],
    ],
    ['0.5 in', side('inch', '0.5'), [10, 15, 0.01], inMm(1), ['11.64', '12.65', '12.76', '13.77']],
    // Two scales of wire, 0.812 and 0.914 mm.
    ['20 wire', side('wire-gauge', '20'), [0.5, 1.3, 0.005], inMm(2), ['0.75', '0.81', '0.92', '0.98']],
    ['12 to 14 Fr', fr(['12', '14']), [3, 6, 0.01], inMm(1), ['3.76', '3.95', '4.76', '4.95']],
  ] as const)('%s', (_, left, sweep, right, [open, agrees, openAgain, off]) => {
    expect(edges(left, sweep, right)).toEqual([
      `${sweep[0]}: contradicted`,
      `${open}: cannot-tell`,
      `${agrees}: agrees`,
      `${openAgain}: cannot-tell`,
      `${off}: contradicted`,
    ]);
  });

  it('is a tenth more when it is said to be about', () => {
    expect(edges(fr('14'), [3, 7, 0.01], inMm(1), { approximate: true }).map((one) => one.split(':')[0])).toEqual([
      '3', '3.75', '4.14', '5.23', '5.62',
    ]); // biome-ignore format: a list
  });

  it('counts at both ends of a range', () => {
    const verdict = (low: string, high: string) => judged(equal(fr('14'), mm([low, high]))).verdict;
    expect(verdict('4.7', '4.7')).toBe('agrees');
    expect(verdict('4.7', '5.5')).toBe('cannot-tell');
    expect(verdict('4', '4.7')).toBe('cannot-tell');
    expect(verdict('5', '5.5')).toBe('cannot-tell');
    expect(verdict('5.2', '5.6')).toBe('contradicted');
    expect(verdict('3.5', '4.2')).toBe('contradicted');
    expect(verdict('4', '5.5')).toBe('cannot-tell');
    expect(verdict('3', '6.5')).toBe('cannot-tell');
  });

  it('is a tenth for a bound', () => {
    const bounded = (text: string, bound: Written['bound']) =>
      judged(equal(fr('14'), mm(text, 1, { bound }))).verdict;
    expect([bounded('5.1', 'at-least'), bounded('5.2', 'at-least')]).toEqual(['cannot-tell', 'contradicted']);
    expect([bounded('4.3', 'at-most'), bounded('4.2', 'at-most')]).toEqual(['cannot-tell', 'contradicted']);
  });

  it('is the width of a tube beyond its inside, and not twice it', () => {
    const tube = side('tube-id', '5');
    const verdicts = ['14', '15', '30', '31'].map((text) => judged(equal(fr(text), tube)).verdict);
    expect(verdicts).toEqual(['contradicted', 'cannot-tell', 'cannot-tell', 'contradicted']);
    const off = judged(equal(tube, fr('14')));
    expect(off.holds).toBe('A 5 mm ID tube is 5 mm inside and wider outside; 14 Fr is 4.67 mm.');
    expect(off.source).toBe('tube size = inner diameter in mm');
    expect(off.sources).toEqual(expect.arrayContaining(['ett', 'UCUM']));
    expect(off.derivation[1]).toMatchObject({ label: 'value', text: off.holds });
  });

  it('is the wider step of two scales', () => {
    const french = (text: string) => judged(equal(needle('18'), fr(text))).verdict;
    expect(['2', '3', '3.5', '4', '4.5', '5', '6'].map(french)).toEqual([
      'contradicted', 'contradicted', 'agrees', 'agrees', 'contradicted', 'contradicted', 'contradicted',
    ]); // biome-ignore format: a list
    const off = judged(equal(needle('18'), fr('18')));
    expect(off.source).toBe('ISO 9626, nominal needle chart, 1 Fr = 1/3 mm');
    expect(off.sources).toEqual(expect.arrayContaining(['ISO9626-scope', 'UCUM']));
    expect(off.derivation.slice(1, 3)).toMatchObject([
      { label: 'value', text: expect.stringMatching(/ mm by ISO 9626, nominal needle chart$/) },
      { label: 'value', text: '6 mm by 1 Fr = 1/3 mm' },
    ]);
  });
});

describe('what is said of a length', () => {
  it('shows a fraction of an inch as it is written, and nothing else', () => {
    const says = (right: Operand) => judged(equal(fr('9'), right)).says;
    expect(says(side('inch', '1/8', { text: '1/8 in', decimals: 3 }))).toBe('Says 9 Fr is 1/8 in.');
    expect(says(side('inch', '0.125', { text: '.125 in', decimals: 3 }))).toBe('Says 9 Fr is 0.125 in.');
    expect(says(side('inch', '1/8'))).toBe('Says 9 Fr is 0.125 in.');
    expect(says(side('millimetre', '3', { text: '1/8 in or 3 mm' }))).toBe('Says 9 Fr is 3 mm.');
    expect(judged(equal(side('usp', '3-0', { text: '3/0' }), mm('0.2'))).says).toBe('Says 3-0 is 0.2 mm.');
    expect(judged(equal(NOBODY, mm('0.2')))).toMatchObject({ says: 'Says  is 0.2 mm.', holds: '' });
  });

  it('that cannot be told says why', () => {
    expect(judged(equal(fr('6', { device: 'guiding-catheter' }), mm('2'))).holds).toBe(
      'No table gives this value.',
    );
    expect(judged(equal(side('tube-id', '7.5'), side('tube-id', '7'))).holds).toBe(
      'No table gives both diameters.',
    );
    expect(judged(equal(fr(['6', '14'], { device: 'guiding-catheter' }), mm('9'))).verdict).toBe(
      'cannot-tell',
    );
    expect(judged(equal(side('usp', ['3-0', '15']), mm('9'))).verdict).toBe('cannot-tell');
  });

  it('of thread heeds the words of its own sentence alone', () => {
    const text = 'Synthetics differ. A 3-0 is metric 3.';
    const claim = equal(side('usp', '3-0'), side('ep-metric', '3'));
    expect(judged({ ...claim, span: at(text, 'A 3-0 is metric 3.') } as Said, { text }).verdict).toBe(
      'agrees',
    );
    expect(judged({ ...claim, span: { start: 0, end: text.length } } as Said, { text }).verdict).toBe(
      'contradicted',
    );
    const steps = judged(claim).derivation.filter(({ label }) => label === 'value');
    expect(steps.map((step) => step.text)).toEqual(['3-0 is metric 2', '3-0 is metric 3']);
  });

  it('that agrees is not mended', () => {
    const text = 'A 14 Fr is 4.7 mm.';
    const right = side('millimetre', '4.7', { text: '4.7 mm', span: at(text, '4.7 mm'), decimals: 1 });
    expect(judged(equal(fr('14'), right), { text }).repair).toBeUndefined();
    const near = 'A 14 Fr is 5.0 mm.';
    const open = side('millimetre', '5', { text: '5.0 mm', span: at(near, '5.0 mm'), decimals: 1 });
    expect(judged(equal(fr('14'), open), { text: near })).toMatchObject({ verdict: 'cannot-tell' });
    expect(judged(equal(fr('14'), open), { text: near }).repair).toBeUndefined();
  });
});

describe('the edit of a measured value', () => {
  const truth = (min: number, max: number, nominal?: number) => ({
    min, max, standard: 'one', sources: [], confidence: 'confirmed' as const, ...(nominal === undefined ? {} : { nominal }),
  }); // biome-ignore format: a value
  const written = (
    words: string,
    [system, value]: readonly ['millimetre' | 'inch' | 'hegar', string | readonly string[]],
    decimals: number,
    right: ReturnType<typeof truth>,
  ) => {
    const text = `It is ${words}.`;
    const found = measureEdit(
      noteOf(text),
      side(system, value, { text: words, span: at(text, words), decimals }),
      right,
    );
    if (!found) return undefined;
    const { title, edit } = found;
    return [tell(title), text.slice(0, edit.span.start) + edit.text + text.slice(edit.span.end)];
  };

  it.each([
    ['6.0 mm', ['millimetre', '6'], 1, truth(2, 4), ['Write 3.0 instead of 6.0', 'It is 3.0 mm.']],
    [
      'roughly 6.0 mm',
      ['millimetre', '6'],
      1,
      truth(2, 4, 3.5),
      ['Write 3.5 instead of 6.0', 'It is roughly 3.5 mm.'],
    ],
    ['Hegar 9', ['hegar', '9'], 0, truth(8, 8, 8), ['Write 8 instead of 9', 'It is Hegar 8.']],
    ['0 mm', ['millimetre', '0'], 0, truth(5, 5, 5), ['Write 5 instead of 0', 'It is 5 mm.']],
    ['9 mm', ['millimetre', '9'], 0, truth(4.6, 4.7, 4.667), ['Write 4.7 instead of 9', 'It is 4.7 mm.']],
    ['9 mm', ['millimetre', '9'], 0, truth(4.9, 4.9, 4.9), ['Write 4.9 instead of 9', 'It is 4.9 mm.']],
    ['9 mm', ['millimetre', '9'], 0, truth(4.95, 4.95, 4.95), ['Write 5 instead of 9', 'It is 5 mm.']],
    [
      '9 mm',
      ['millimetre', '9'],
      0,
      truth(0.0123, 0.0123, 0.0123),
      ['Write 0.01 instead of 9', 'It is 0.01 mm.'],
    ],
    ['9 mm', ['millimetre', '9'], 0, truth(0.001, 0.001, 0.001), undefined],
    [
      '9 µm',
      ['millimetre', '0.009'],
      0,
      truth(0.25, 0.25, 0.25),
      ['Write 250 instead of 9', 'It is 250 µm.'],
    ],
    ['.9 in', ['inch', '0.9'], 1, truth(5.08, 5.08, 5.08), ['Write .2 instead of .9', 'It is .2 in.']],
    ['9,0 mm', ['millimetre', '9'], 1, truth(5, 5, 5), ['Write 5,0 instead of 9,0', 'It is 5,0 mm.']],
    ['5.0 mm', ['millimetre', '5'], 1, truth(5, 5, 5), undefined],
    ['6.0 × 7.0 mm', ['millimetre', '6'], 1, truth(5, 5, 5), undefined],
    ['6 mm', ['millimetre', ['6', '7']], 0, truth(5, 5, 5), undefined],
    ['six mm', ['millimetre', '6'], 0, truth(5, 5, 5), undefined],
    ['½ mm', ['millimetre', '0.5'], 0, truth(5, 5, 5), undefined],
    ['1½ mm', ['millimetre', '1.5'], 0, truth(5, 5, 5), undefined],
  ] as const)('%s', (words, size, decimals, right, expected) => {
    expect(written(words, size, decimals, right)).toEqual(expected);
  });

  it('needs a place to write to', () => {
    expect(measureEdit(noteOf('It is 6 mm.'), side('millimetre', '6'), truth(5, 5, 5))).toBeUndefined();
    expect(measureEdit(noteOf('It is 6 mm.'), NOBODY, truth(5, 5, 5))).toBeUndefined();
  });
});
