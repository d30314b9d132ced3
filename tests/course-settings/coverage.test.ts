import { describe, expect, test } from 'vitest';
import { analyse, extentOf, partKey, TOPICS, taughtIn } from '../../server/src/course/index.ts';

/** A note that teaches each topic; facts and their sources are those of the reference tables of `sizes`. */
const TEACHES: Readonly<Record<string, string>> = {
  'gauge-direction': 'The higher the gauge, the thinner the needle.',
  'french-direction': 'The higher the French number, the thicker the catheter.',
  'zeros-direction': 'The more zeros, the thinner the suture.',
  'french-formula': 'To get millimetres, divide the French by three.',
  'tube-inner': 'A tracheal tube is sized by its inner diameter.',
  'sheath-inner': 'A sheath is sized by its inner diameter.',
  'metric-tenths': 'A 3-0 suture is metric 2.',
  'bore-and-flow': 'A 16 G cannula flows faster than a 20 G cannula.',
  'large-bore': 'A 14 G cannula is large-bore.',
  'needle-colours': 'An 18 G needle is pink.',
  'cannula-colours': 'An 18 G IV cannula is green.',
  absorbable: 'Polydioxanone is absorbable.',
  structure: 'Silk is braided.',
  'point-edges': 'The cutting edge of a reverse cutting needle lies on the outer curve.',
  'gauge-against-french':
    'A 20 G needle is thinner than an 18 G needle. A 20 Fr catheter is thicker than an 18 Fr catheter.',
  'across-zero': 'A size 2 suture is thicker than a 2-0 suture.',
  'colour-codes-differ': 'An 18 G needle is pink.\n\nAn 18 G IV cannula is green.',
  'inside-against-outside':
    'A tracheal tube is sized by its inner diameter.\n\nTo get millimetres, divide the French by three.',
};

const extents = (text: string) => {
  const taught = new Set(taughtIn(analyse(text)).map(partKey));
  return new Map(TOPICS.map((topic) => [topic.id, extentOf(topic, taught)]));
};

describe('coverage of the topic', () => {
  test.each(TOPICS.map(({ id }) => id))('%s can be taught', (id) => {
    expect(extents(TEACHES[id]!).get(id)).toBe('taught');
  });

  test('a note about something else teaches nothing', () => {
    expect(new Set(extents('Listen first, then ask.').values())).toEqual(new Set(['missing']));
  });

  test('what is said wrongly, asked or quoted teaches nothing', () => {
    for (const text of [
      'The higher the gauge, the thicker the needle.',
      'Is the needle thinner, the higher the gauge?',
      'An 18 G needle is green.',
    ])
      expect(new Set(extents(text).values())).toEqual(new Set(['missing']));
  });

  test('what is rightly denied is taught', () => {
    expect(extents('A 16 G cannula does not flow slower than a 20 G cannula.').get('bore-and-flow')).toBe(
      'taught',
    );
  });

  test('one side of a paradox is a part of it', () => {
    expect(extents('An 18 G needle is pink.').get('colour-codes-differ')).toBe('partly');
  });
});
