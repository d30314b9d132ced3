/** What comes again is held once, and what is held is bounded. */
import { expect, it } from 'vitest';
import { heldOnce, oneForAll } from '../../server/src/notes/once.ts';

it('an answer is made once and given again', () => {
  const once = heldOnce<{ readonly of: string }>(2);
  const make = (of: string) => once(of, () => ({ of }));
  expect(make('a')).toBe(make('a'));
  expect(make('b')).toEqual({ of: 'b' });
});

it('beyond so many all are forgotten', () => {
  const once = heldOnce<{ readonly of: string }>(2);
  const make = (of: string) => once(of, () => ({ of }));
  const [a, b] = [make('a'), make('b')];
  expect(make('b')).toBe(b);
  make('c');
  expect(make('a')).not.toBe(a);
});

it('texts stay what they are', () => {
  const one = oneForAll(2);
  for (const text of ['18 G', '', ' ', '18 G', '2-0', '18 G']) expect(one(text)).toBe(text);
});
