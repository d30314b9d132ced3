/** What each answer rests on: the standard and sources it names, how sure it is, and the cautions it carries. */
import { describe, expect, it } from 'vitest';
import {
  awg,
  bwg,
  compareThickness,
  contains,
  convert,
  DIRECTION_WORDS,
  innerDiameter,
  isPoint,
  type Lens,
  outerDiameter,
  overlaps,
  parseValue,
  SYSTEM_NAMES,
  type System,
  swg,
  union,
  weakest,
} from '../../server/src/sizes/index.ts';
import { outer, SYSTEMS, size } from './support.ts';

describe('sources', () => {
  it.each([
    ['usp', '3-0', { material: 'silk' }, ['PhEur-table', 'dewiki', 'USP29-861']],
    ['usp', '3-0', { material: 'polydioxanone' }, ['PhEur-table', 'dewiki', 'USP29-861', 'jpvet']],
    ['ep-metric', '3', {}, ['PhEur-table', 'dewiki', 'chu']],
    ['needle-gauge', '20', { device: 'cannula' }, ['ISO10555-5', 'JPneedle']],
    ['wire-gauge', '18', {}, ['GNU', 'BWG2', 'BWG3', 'pfisterer']],
    ['french', '14', {}, ['UCUM', 'GNU', 'ISO20696', 'DICOM3510']],
    ['millimetre', '4', {}, []],
    ['inch', '1', {}, ['UCUM', 'GNU']],
    ['wire-inch', '0.035', {}, ['UCUM', 'GNU']],
    ['hegar', '8', {}, ['hegar']],
  ] as const)('of the outside of %s %s %j', (system, text, lens, sources) => {
    expect(outerDiameter(size(system, text), lens)?.sources).toEqual(sources);
  });

  it('of a needle: both charts, and nothing for limits from memory', () => {
    const { sources, confidence, standard } = outer('needle-gauge', 18, { device: 'needle' });
    expect(sources).toEqual([
      ...['ISO9626-scope', 'GBT18457', 'JPneedle', 'jawiki', 'jpnurse', 'ahn'],
      ...['nomchart', 'irblog', 'catspot', 'tpro'],
    ]);
    expect(confidence).toBe('memory');
    expect(standard).toBe('ISO 9626, nominal needle chart');
    expect(outer('needle-gauge', 7, { device: 'needle' })).toMatchObject({
      confidence: 'confirmed',
      standard: 'nominal needle chart',
    });
    expect(outer('needle-gauge', 34, { device: 'winged-set' }).confidence).toBe('confirmed');
    expect(outer('needle-gauge', 20, { device: 'cannula' }).confidence).toBe('memory');
    expect(outer('needle-gauge', 20).confidence).toBe('memory');
  });

  it('of the inside', () => {
    expect(innerDiameter(size('tube-id', '7.5'))?.sources).toEqual(['ett', 'gupta']);
    expect(innerDiameter(size('french', 6), { device: 'sheath' })?.sources.slice(0, 3)).toEqual([
      'thoracic',
      'learnir',
      'irblog',
    ]);
    const winged: Lens = { device: 'winged-set' };
    expect(innerDiameter(size('needle-gauge', 21), winged)).toMatchObject({ confidence: 'memory' });
    expect(innerDiameter(size('needle-gauge', 8), winged)).toMatchObject({
      confidence: 'single-source',
      standard: 'nominal needle chart',
    });
    expect(innerDiameter(size('tube-id', '0'))).toBeUndefined();
    expect(innerDiameter(size('needle-gauge', 40), winged)).toBeUndefined();
  });

  it('of a comparison: those of both sides, once', () => {
    expect(compareThickness(size('french', 6), size('french', 8)).sources).toEqual([
      'UCUM',
      'GNU',
      'ISO20696',
      'DICOM3510',
    ]);
    expect(compareThickness(size('hegar', 8), size('inch', 1)).sources).toEqual(['hegar', 'UCUM', 'GNU']);
    expect(compareThickness(size('tube-id', 7), size('tube-id', 8)).sources).toEqual([]);
  });

  it('of a conversion, with its caution and confidence', () => {
    const [metric, mm] = convert(size('usp', '2-0'), { material: 'silk' });
    expect(metric).toMatchObject({ standard: 'USP <861>', confidence: 'confirmed', value: 3 });
    expect(metric?.caution).toMatch(/0\.339/);
    expect(mm?.interval).toMatchObject({ min: 0.3, max: 0.349 });
    expect('caution' in convert(size('french', 6))[0]!).toBe(false);
    expect(convert(size('ep-metric', '7'), { material: 'gut' })[0]?.confidence).toBe('single-source');
    expect(convert(size('ep-metric', '8'), { material: 'gut' })[0]?.confidence).toBe('memory');
  });
});

describe('reasons', () => {
  const because = (system: System, a: string, b: string, lens: Lens = {}) =>
    compareThickness(size(system, a), size(system, b), lens, lens).because;
  it('give both diameters, or the way the numbers run', () => {
    expect(because('usp', '2-0', '3-0', { material: 'silk' })).toBe(
      'USP 2-0 is 0.3–0.349 mm, USP 3-0 is 0.2–0.249 mm',
    );
    expect(because('tube-id', '7', '8')).toBe('7 mm ID against 8 mm ID: a larger number is thicker');
    expect(because('tube-id', '7', '7')).toBe('both are 7 mm ID');
    expect(because('needle-gauge', '40', '41')).toBe('40 G against 41 G: a larger number is thinner');
    expect(compareThickness(size('millimetre', 7), size('tube-id', 7)).because).toBe(
      'the outer diameter of 7 mm ID is not given by its size',
    );
  });
  it('have a name and a direction in words for each system', () => {
    for (const system of SYSTEMS) {
      expect(SYSTEM_NAMES[system]).toMatch(/\w/);
      expect(DIRECTION_WORDS[system]).toMatch(/thinner|thicker|wider/);
    }
  });
});

describe('things', () => {
  it('of one kind share a table', () => {
    for (const device of ['needle', 'winged-set'] as const)
      expect(convert(size('needle-gauge', 21), { device }).map((c) => c.text)).toEqual([
        '0.8–0.83 mm',
        '0.032 in',
        'about 2.4 Fr',
      ]);
    for (const device of ['steel-wire', 'k-wire'] as const) {
      expect(outer('needle-gauge', 18, { device }).standard).toBe('AWG or SWG');
      expect(convert(size('needle-gauge', 18), { device })).toHaveLength(2);
    }
  });
  it('of unlike kinds are not compared by number', () => {
    const compare = (a: Lens, b: Lens) =>
      compareThickness(size('needle-gauge', 22), size('needle-gauge', 24), a, b).result;
    expect(compare({ device: 'winged-set' }, { device: 'cannula' })).toBe('cannot-tell');
    expect(compare({ device: 'cannula' }, { device: 'cannula' })).toBe('thicker');
    expect(
      compareThickness(
        size('needle-gauge', 18),
        size('needle-gauge', 19),
        { device: 'steel-wire' },
        { device: 'needle' },
      ).result,
    ).toBe('cannot-tell');
    expect(compare({ device: 'steel-wire' }, { device: 'k-wire' })).toBe('thicker');
    expect(compare({}, { device: 'steel-wire' })).toBe('thicker');
    expect(compare({ device: 'central-line' }, { device: 'cannula' })).toBe('thicker');
  });
  it('keep a monofilament not said and said apart only where both are said', () => {
    const mono: Lens = { material: 'polydioxanone' };
    expect(compareThickness(size('usp', '2-0'), size('usp', '3-0'), {}, mono).result).toBe('thicker');
    expect(compareThickness(size('usp', '2-0'), size('usp', '3-0'), { material: 'silk' }, mono).result).toBe(
      'cannot-tell',
    );
    expect(
      compareThickness(size('usp', '2-0'), size('usp', '3-0'), { material: 'silk' }, { material: 'eptfe' })
        .result,
    ).toBe('cannot-tell');
  });
  it('finds gauges of a measured needle, one or several', () => {
    const found = (mm: number, device: 'needle' | 'winged-set' | 'cannula') =>
      convert(size('millimetre', mm), { device });
    expect(found(0.9, 'winged-set')[0]).toMatchObject({ text: '20 G', value: 20 });
    expect(found(0.25, 'needle')[0]?.text).toBe('31 G');
    expect(found(0.23, 'needle')[0]).toMatchObject({ text: '32 G', value: 32 });
    expect(found(0.9, 'cannula')[0]?.value).toBe(22);
    expect(found(1, 'needle').map((c) => c.to)).toEqual(['inch']);
  });
  it('give nothing for sizes that no table has', () => {
    for (const [system, text, lens] of [
      ['ep-metric', '3.2', {}],
      ['needle-gauge', '40', {}],
      ['needle-gauge', '40', { device: 'needle' }],
      ['wire-gauge', '70', {}],
      ['french', '0', {}],
      ['french', '0', { device: 'sheath' }],
      ['millimetre', '0', {}],
      ['inch', '0', {}],
      ['tube-id', '0', {}],
      ['hegar', '0', {}],
      ['usp', '13-0', {}],
    ] as const)
      expect(convert(size(system, text), lens)).toEqual([]);
    expect(outerDiameter({ system: 'french', value: 1e6 })).toBeUndefined();
    expect(outerDiameter({ system: 'needle-gauge', value: -1 })).toBeUndefined();
    expect(outer('wire-gauge', 0).max).toBeCloseTo(8.25, 2);
    expect(outer('wire-gauge', 55).standard).toBe('AWG or SWG');
  });
});

describe('wire scales', () => {
  // How Many? A Dictionary of Units of Measurement: No. 36 AWG is 0.005 in, No. 0 is 0.3249 in.
  it('end where their tables end', () => {
    expect(awg(36)?.min).toBeCloseTo(0.127, 9);
    expect(awg(0)?.min).toBeCloseTo(0.3249 * 25.4, 2);
    expect(awg(56)).toMatchObject({ standard: 'AWG', sources: ['GNU', 'BWG2', 'BWG3'] });
    for (const n of [-1, 57, 18.5]) expect(awg(n)).toBeUndefined();
    for (const n of [-1, 51, 18.5]) expect(swg(n)).toBeUndefined();
    for (const n of [-1, 37, 18.5]) expect(bwg(n)).toBeUndefined();
    expect(swg(50)).toMatchObject({ standard: 'SWG', sources: ['GNU', 'BWG2', 'BWG3'] });
    expect(bwg(36)).toMatchObject({ standard: 'BWG', sources: ['BWG1', 'BWG2', 'BWG3', 'BWG4'] });
  });
});

describe('intervals', () => {
  const make = (min: number, max: number) =>
    ({ min, max, standard: 'x', sources: ['UCUM'], confidence: 'confirmed' }) as const;
  it('touch, hold their ends and join', () => {
    expect(overlaps(make(1, 2), make(2, 3))).toBe(true);
    expect(overlaps(make(2, 3), make(1, 2))).toBe(true);
    expect(overlaps(make(1, 2), make(2.1, 3))).toBe(false);
    expect([1, 2, 0.99, 2.01].map((mm) => contains(make(1, 2), mm))).toEqual([true, true, false, false]);
    expect([isPoint(make(1, 1)), isPoint(make(1, 1.1))]).toEqual([true, false]);
    expect(union([make(1, 2), { ...make(3, 4), confidence: 'memory', caution: 'c' }], 'y', 'd')).toEqual({
      min: 1,
      max: 4,
      standard: 'y',
      sources: ['UCUM'],
      confidence: 'memory',
      caution: 'd; c',
    });
    expect(union([])).toBeUndefined();
  });
  it('are as sure as their least sure part', () => {
    expect(weakest([])).toBe('confirmed');
    expect(weakest(['memory', 'confirmed'])).toBe('memory');
    expect(weakest(['single-source', 'common-practice', 'confirmed'])).toBe('common-practice');
    expect(weakest(['confirmed', 'single-source'])).toBe('single-source');
  });
});

describe('written values', () => {
  it.each([
    ['usp', ' 2-0 ', -1],
    ['usp', '12.25-0', -11.25],
    ['millimetre', ' 4.7 ', 4.7],
    ['inch', '10 15/16', 10.9375],
    ['inch', '100/200', 0.5],
  ] as const)('%s %j is %f', (system, text, value) => {
    expect(parseValue(system, text)?.value).toBe(value);
  });
  it.each([
    ['usp', 'x2-0'],
    ['usp', '2-0x'],
    ['usp', '2#'],
    ['inch', 'x1/2'],
    ['inch', '1/2x'],
  ] as const)('%s %j is none', (system, text) => {
    expect(parseValue(system, text)).toBeUndefined();
  });
});
