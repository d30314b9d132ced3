/** Worked examples and warnings as handbooks and articles print them, the source beside each. */
import { describe, expect, it } from 'vitest';
import {
  awg,
  bwg,
  colourFits,
  convert,
  FLOW,
  gaugesOf,
  innerDiameter,
  materialById,
  outerDiameter,
  pointById,
  swg,
} from '../../server/src/sizes/index.ts';
import { outer, size } from './support.ts';

const texts = (...[system, value, lens]: Parameters<typeof outer>) =>
  convert(size(system, value), lens).map((c) => c.text);

describe('sutures', () => {
  // Learning module on needle and thread: its table sets gut beside other thread of the same metric number.
  it('says which USP size a metric number is, on gut and on other thread', () => {
    expect(texts('ep-metric', '2')).toContain('USP 3-0 (synthetic, silk, steel)');
    expect(texts('ep-metric', '2')).toContain('USP 4-0 (gut)');
    expect(texts('ep-metric', '2', { material: 'chromic-gut' })[0]).toBe('USP 4-0');
    expect(texts('ep-metric', '6', { material: 'silk' })[0]).toBe('USP 3 and 4');
    expect(convert(size('ep-metric', '6'), { material: 'silk' })[0]?.value).toBeUndefined();
  });
  // European Pharmacopoeia comparison table; USP suture size chart: 2-0 ends at 0.339 or at 0.349.
  it('names both upper limits of 2-0', () => {
    const { max, caution } = outer('usp', '2-0', { material: 'nylon' });
    expect(max).toBe(0.349);
    expect(caution).toMatch(/0\.339.*0\.349/);
    expect(texts('usp', '2-0')).toEqual(['metric 3', '0.3–0.349 mm']);
  });
  // European Pharmacopoeia comparison table, second column: 3-0 may reach 0.339 mm.
  it('widens absorbable monofilaments and says so', () => {
    expect(outer('usp', '3-0', { material: 'poliglecaprone-25' })).toMatchObject({ min: 0.2, max: 0.339 });
    expect(outer('usp', '3-0', { material: 'poliglecaprone-25' }).caution).toMatch(/absorbable monofilament/);
    expect(outer('usp', '5', { material: 'polydioxanone' }).caution).toBeUndefined();
    expect(outer('usp', '3-0', { material: 'polypropylene' }).max).toBe(0.249);
  });
  it('warns that gut is thicker when the material is not said', () => {
    expect(outer('usp', '3-0').caution).toMatch(/gut/);
    expect(outer('usp', '3-0', { material: 'silk' }).caution).toBeUndefined();
  });
  // Encyclopedia excerpt, 1997: ePTFE is sized by its own numbers.
  it('gives no USP diameter for ePTFE', () => {
    expect(outerDiameter(size('usp', '2-0'), { material: 'eptfe' })).toBeUndefined();
    expect(convert(size('usp', '2-0'), { material: 'eptfe' })).toEqual([]);
  });
  it('finds the USP size of a measured thread', () => {
    expect(texts('millimetre', '0.32', { device: 'suture', material: 'silk' })[0]).toBe('USP 2-0');
    expect(texts('millimetre', '0.32', { device: 'suture', material: 'gut' })[0]).toBe('USP 3-0');
  });
});

describe('needles and wires', () => {
  // Radiology teaching page (2015): 21 G is 0.03225 in (0.8192 mm) outside, 0.02025 in (0.514 mm) inside.
  it('gives 21 G as the radiology page does', () => {
    expect(texts('needle-gauge', 21, { device: 'needle' })).toContain('0.032 in');
    expect(innerDiameter(size('needle-gauge', 21), { device: 'needle' })?.nominal).toBeCloseTo(0.514, 3);
  });
  // German supplier page citing EN ISO 9626: 18 AWG 1.024, 18 SWG 1.219, 18 BWG 1.245; the needle is 1.270 (nominal chart).
  it('keeps four kinds of 18 apart', () => {
    expect(awg(18)?.min).toBeCloseTo(1.024, 3);
    expect(swg(18)?.min).toBeCloseTo(1.219, 3);
    expect(bwg(18)?.min).toBeCloseTo(1.245, 3);
    expect(outer('needle-gauge', 18, { device: 'needle' }).max).toBeGreaterThanOrEqual(1.27);
    expect(texts('wire-gauge', 18)).toEqual(['1.02 mm (AWG)', '1.22 mm (SWG)']);
    expect(texts('needle-gauge', 18, { device: 'steel-wire' })).toEqual(['1.02 mm (AWG)', '1.22 mm (SWG)']);
    expect(outer('wire-gauge', 18).caution).toMatch(/mm/);
  });
  // An article on intravitreal administration (doi:10.1208/s12249-021-01949-4), Table III: bores by wall, ISO 9626:2016.
  it.each([
    [30, [0.133, 0.165, 0.19, 0.24]],
    [32, [0.089, 0.105, 0.125, 0.146]],
  ] as const)('holds every wall of %i G', (gauge, walls) => {
    const bore = innerDiameter(size('needle-gauge', gauge), { device: 'needle' })!;
    for (const wall of walls) expect(wall >= bore.min - 1e-9 && wall <= bore.max + 1e-9).toBe(true);
    expect(bore.caution).toMatch(/wall/);
  });
  it('gives no bore where it is not known', () => {
    expect(innerDiameter(size('needle-gauge', 18), { device: 'cannula' })).toBeUndefined();
    expect(innerDiameter(size('needle-gauge', 18))).toBeUndefined();
    expect(innerDiameter(size('needle-gauge', 6), { device: 'needle' })).toBeUndefined();
    expect(innerDiameter(size('french', 6), { device: 'catheter' })).toBeUndefined();
  });
  // Textbook chapter on needles and guidewires: 19 G, 3 Fr, 0.038 in and 1 mm are all about the same.
  it('keeps the rule of thumb of about one millimetre', () => {
    for (const interval of [
      outer('needle-gauge', 19, { device: 'needle' }),
      outer('french', 3),
      outer('wire-inch', '0.038'),
    ])
      expect(Math.abs(interval.nominal! - 1)).toBeLessThanOrEqual(0.1001);
  });
  // Interventional radiology primer (2013): 0.035 in is 0.889 mm; 0.018 in is 0.457 mm.
  it('gives guidewires in millimetres', () => {
    expect(texts('wire-inch', '0.035')).toEqual(['0.889 mm', '2.7 Fr']);
    expect(texts('wire-inch', '0.018')[0]).toBe('0.457 mm');
  });
  // Radiology reference article on K-wires: 0.045 in is 1.143 mm.
  it('gives a K-wire in inches in millimetres', () => {
    expect(outer('inch', '0.045').nominal).toBeCloseTo(1.143, 9);
  });
  // US and Australian immunisation handbooks: 5/8 in is 16 mm.
  it('reads fractions of an inch', () => {
    expect(Math.round(outer('inch', '5/8').nominal!)).toBe(16);
    expect(outer('inch', '1 1/2').nominal).toBeCloseTo(38.1, 9);
  });
  it('shows both tables when needle or IV catheter is not said', () => {
    expect(texts('needle-gauge', 18)).toEqual(['1.2–1.3 mm (needle)', '1.15–1.35 mm (IV catheter)']);
    expect(texts('needle-gauge', 21)).toEqual(['0.8–0.83 mm (needle)']);
    expect(texts('needle-gauge', 18, { device: 'cannula' })).toEqual([
      '1.15–1.35 mm',
      '0.051 in',
      'about 3.9 Fr',
    ]);
    expect(outer('needle-gauge', 18).caution).toMatch(/differ/);
    expect(outer('needle-gauge', 21).caution).toBeUndefined();
  });
});

describe('tubes and catheters', () => {
  // UCUM; ISO 20696: 14 Fr is 4.67 or 4.7 mm.
  it('gives 14 Fr both ways', () => {
    expect(texts('french', 14)).toEqual(['4.67 mm', '0.184 in']);
    expect(outer('french', 14).max).toBeCloseTo(4.7, 9);
  });
  // Procedure guide on wires, catheters, sheaths; textbook chapter on catheter materials: a sheath is named for what it takes.
  it('reads a sheath by what it accepts', () => {
    const sheath = { device: 'sheath' } as const;
    expect(outerDiameter(size('french', 6), sheath)).toBeUndefined();
    expect(innerDiameter(size('french', 6), sheath)?.nominal).toBe(2);
    expect(texts('french', 6, sheath)).toEqual(['accepts 2 mm']);
    expect(convert(size('french', 6), sheath)[0]?.caution).toMatch(/2 Fr/);
  });
  it('gives neither side of a guiding catheter: texts differ', () => {
    const guide = { device: 'guiding-catheter' } as const;
    expect(outerDiameter(size('french', 6), guide)).toBeUndefined();
    expect(innerDiameter(size('french', 6), guide)).toBeUndefined();
    expect(convert(size('french', 6), guide)).toEqual([]);
  });
  // Korean J Anesthesiol 2019;72(1): a single-lumen tube is sized inside in mm, a double-lumen tube outside in French.
  it('reads tracheal tubes inside and double-lumen tubes outside', () => {
    expect(outerDiameter(size('tube-id', '7.5'))).toBeUndefined();
    expect(innerDiameter(size('tube-id', '7.5'))).toMatchObject({ min: 7.5, max: 7.5 });
    expect(texts('tube-id', '7.5')).toEqual(['7.5 mm inside']);
    expect(outer('french', 37, { device: 'double-lumen-tube' }).nominal).toBeCloseTo(12.333, 3);
  });
  // A System of Operative Surgery, vol. 4: Hegar numbers are millimetres.
  it('reads Hegar 8 as 8 mm', () => {
    expect(texts('hegar', 8)).toEqual(['8 mm', '24 Fr']);
  });
});

describe('colours', () => {
  // Japan, notice of October 2006, and five more: the same colour is another gauge on needle and IV catheter.
  it.each([
    ['pink', [18], [20]],
    ['orange', [25, 34], [14]],
    ['yellow', [20, 30], [24]],
    ['red', [29], [13]],
    ['grey', [27], [16]],
  ] as const)('%s', (family, needles, cannulas) => {
    expect(gaugesOf('ISO 6009', family)).toEqual(needles);
    expect(gaugesOf('ISO 10555-5', family)).toEqual(cannulas);
  });
  it('lets mixed hues go by either part', () => {
    for (const family of ['red', 'purple', 'red-violet'])
      expect(colourFits('ISO 6009', 17, family)).toBe(true);
    expect(colourFits('ISO 6009', 17, 'white')).toBe(false);
    expect(colourFits('ISO 10555-5', 19, 'cream')).toBeUndefined();
  });
  // A lexicon prints 25 G brown; six tables print orange, and brown for 26 G.
  it('does not take a 25 G needle for brown', () => {
    expect(colourFits('ISO 6009', 25, 'brown')).toBe(false);
    expect(colourFits('ISO 6009', 26, 'brown')).toBe(true);
  });
  // A quiz page prints 22 G IV catheter grey, 20 G blue, 18 G pink: wrong by ISO 10555-5.
  it('does not take over the colours of a quiz page', () => {
    expect(colourFits('ISO 10555-5', 22, 'grey')).toBe(false);
    expect(colourFits('ISO 10555-5', 20, 'blue')).toBe(false);
    expect(colourFits('ISO 10555-5', 18, 'pink')).toBe(false);
  });
});

// Four independent lists of flow: wider is faster in each.
it('orders the flow of IV catheters by gauge in every list', () => {
  const gauges = FLOW.map((row) => row.gauge);
  expect(gauges).toEqual([...gauges].sort((a, b) => a - b));
  FLOW.slice(1).forEach((row, i) => {
    expect(Math.max(...row.mlPerMinute)).toBeLessThan(Math.max(...FLOW[i]!.mlPerMinute));
    expect(Math.min(...row.mlPerMinute)).toBeLessThan(Math.min(...FLOW[i]!.mlPerMinute));
  });
});

describe('materials and points', () => {
  // USP 32: cotton is class II nonabsorbable; a textbook chapter calls it absorbable and is wrong.
  it('holds cotton for nonabsorbable', () => {
    expect(materialById('cotton')?.absorbable).toBe(false);
  });
  // Suture teaching page; reference article on nonabsorbable sutures (2020); FDA 510(k) K181774.
  it.each([
    ['plain-gut', true],
    ['chromic-gut', true],
    ['polyglactin-910', true],
    ['poliglecaprone-25', true],
    ['polydioxanone', true],
    ['polyglytone-6211', true],
    ['silk', false],
    ['nylon', false],
    ['polypropylene', false],
    ['polyester', false],
    ['polybutester', false],
  ])('%s: absorbable %s', (id, absorbable) => {
    expect(materialById(id)?.absorbable).toBe(absorbable);
  });
  // Reference article on needle points (2020); University teaching page on needle tips.
  it('puts the third edge of cutting needles where it lies', () => {
    expect(pointById('cutting')?.edge).toBe('inner');
    expect(pointById('reverse-cutting')?.edge).toBe('outer');
    expect(pointById('taper')?.edge).toBe('none');
  });
});
