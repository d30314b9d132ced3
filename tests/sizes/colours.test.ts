/** Colour words, families and codes. */
import { describe, expect, it } from 'vitest';
import {
  COLOURS,
  colourCodeOf,
  colourFamily,
  colourFits,
  colourOf,
  gaugesOf,
} from '../../server/src/sizes/index.ts';

it.each([
  ['dark blue', 'blue'],
  ['Deep  Green', 'green'],
  ['gray', 'grey'],
  ['medium grey', 'grey'],
  ['mauve', 'purple'],
  ['violet', 'purple'],
  ['lavender', 'purple'],
  ['light brown', 'brown'],
  ['olive brown', 'brown'],
  ['pale-blue', 'blue'],
  ['turquoise', 'blue-green'],
  ['blue-grey', 'blue-grey'],
  ['constructor', 'constructor'],
  ['', ''],
])('%j is of the family %j', (words, family) => {
  expect(colourFamily(words)).toBe(family);
});

describe('the codes, as printed', () => {
  // Japan, notice of October 2006; Japanese Wikipedia; German page citing EN ISO 6009.
  const NEEDLES =
    '10 olive brown,11 green-yellow,12 pale blue,13 purple,14 pale green,15 blue-grey,16 white,17 red-violet,18 pink,19 cream,20 yellow,21 deep green,22 black,23 deep blue,24 medium purple,25 orange,26 brown,27 medium grey,28 blue-green,29 red,30 yellow';
  // Notfallmedizin up2date 2015;10:102-106, Table 1; Japan, notice of October 2006.
  const CANNULAS =
    '10 light brown,12 pale blue,13 red,14 orange,16 medium grey,17 white,18 deep green,20 pink,22 deep blue,24 yellow,26 violet';
  // Nursing pages on urinary catheters; 22 Fr is brown or violet and left out.
  const URINARY = '6 green,8 blue,10 black,12 white,14 green,16 orange,18 red,20 yellow,24 blue';
  // Japan, notice of October 2006.
  const SUCTION =
    '5 grey,6 light green,7.5 pink,8 light blue,9 blue-green,10 black,12 white,14 green,15 brown,16 orange,18 red,20 yellow';

  const printed = (code: keyof typeof COLOURS, least = 'single-source') =>
    COLOURS[code]
      .filter((row) => least === 'memory' || row.confidence !== 'memory')
      .map((row) => `${row.size} ${row.colour}`)
      .join(',');

  it('hold', () => {
    expect(printed('ISO 6009')).toBe(NEEDLES);
    expect(printed('ISO 10555-5')).toBe(CANNULAS);
    expect(printed('urinary catheter')).toBe(URINARY);
    expect(printed('suction catheter')).toBe(SUCTION);
  });
  it('share a family on two gauges only: brown on 10 G in two shades, pale blue on 12 G', () => {
    const shared = COLOURS['ISO 6009'].filter((row) => colourFits('ISO 10555-5', row.size, row.family));
    expect(shared.map((row) => row.size)).toEqual([10, 12]);
  });
  it('give the row of a size', () => {
    expect(colourOf('ISO 6009', 21)).toMatchObject({
      colour: 'deep green',
      family: 'green',
      confidence: 'confirmed',
    });
    expect(colourOf('ISO 6009', 9)).toBeUndefined();
    expect(colourOf('urinary catheter', 22)).toBeUndefined();
    expect(colourOf('urinary catheter', 6)?.colours).toEqual(['green', 'yellow-green']);
    expect(colourFits('urinary catheter', 6, 'yellow')).toBe(true);
    expect(gaugesOf('urinary catheter', 'green')).toEqual([6, 14]);
  });
  it('belong to things', () => {
    expect(colourCodeOf('winged-set')).toBe('ISO 6009');
    expect(colourCodeOf('cannula')).toBe('ISO 10555-5');
    expect(colourCodeOf('urinary-catheter')).toBe('urinary catheter');
    expect(colourCodeOf('suction-catheter')).toBe('suction catheter');
    expect(colourCodeOf('needle')).toBe('ISO 6009');
    expect(colourCodeOf('sheath')).toBeUndefined();
  });
});

it.each([
  ['ISO 6009', 10, ['brown', 'green']],
  ['ISO 6009', 11, ['green-yellow', 'green', 'yellow']],
  ['ISO 6009', 15, ['blue-grey', 'blue', 'grey']],
  ['ISO 6009', 17, ['red-violet', 'red', 'purple']],
  ['ISO 6009', 18, ['pink']],
  ['ISO 6009', 19, ['cream', 'white', 'yellow']],
  ['ISO 6009', 28, ['blue-green', 'blue', 'green']],
  ['urinary catheter', 6, ['green', 'yellow-green', 'green', 'yellow']],
] as const)('%s %f may be called %j', (code, size, families) => {
  expect(colourOf(code, size)?.families).toEqual(families);
});

it('trims, and takes a shade only in front', () => {
  expect(colourFamily('  pink ')).toBe('pink');
  expect(colourFamily('blue dark green')).toBe('blue dark green');
});

it('keeps colours, sources and confidence of each row', () => {
  expect(colourOf('urinary catheter', 20)).toMatchObject({
    colours: ['yellow'],
    confidence: 'single-source',
    sources: ['foley'],
  });
  expect(colourOf('suction catheter', 8)).toMatchObject({
    colours: ['light blue'],
    confidence: 'single-source',
    sources: ['JPneedle'],
  });
  expect(colourOf('ISO 6009', 31)).toMatchObject({ colours: ['white'], confidence: 'memory' });
});
