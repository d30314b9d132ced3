/** What settles a number without a unit, and what leaves it alone. */
import { expect, test } from 'vitest';
import { BARE } from './bare-cases.ts';
import { readIn } from './fixtures.ts';

test.each(BARE)('%j', (note, expected) => {
  expect(readIn(note)).toEqual(expected);
});
