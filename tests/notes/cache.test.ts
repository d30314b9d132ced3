/** The cache of stretches stays within its bound and keeps what is in use. */
import { expect, it } from 'vitest';
import { BoundedCache } from '../../server/src/notes/cache.ts';

/** A cache of the keys' lengths, each of which weighs as much, and how often one was worked out. */
function counted(limit: number) {
  const cache = new BoundedCache<number>(limit, (key) => key.length);
  const made: string[] = [];
  const get = (key: string) =>
    cache.get(key, (own) => {
      made.push(own);
      return own.length;
    });
  return { get, made };
}

it('works a value out once', () => {
  const { get, made } = counted(100);
  expect([get('abc'), get('abc'), get('')]).toEqual([3, 3, 0]);
  expect(made).toEqual(['abc', '']);
});

it('lets go of what was not used for long, keeps what is used', () => {
  const { get, made } = counted(40);
  for (let index = 0; index < 50; index++) {
    get('always');
    get(`key ${index}`);
  }
  expect(made.filter((key) => key === 'always')).toHaveLength(1);
  get('key 0');
  expect(made.filter((key) => key === 'key 0')).toHaveLength(2);
});

it('takes a key longer than its bound without keeping others out', () => {
  const { get, made } = counted(10);
  get('x'.repeat(1000));
  get('short');
  get('short');
  expect(made).toHaveLength(2);
});

it('is bounded by what values weigh, however short their keys are', () => {
  const cache = new BoundedCache<object>(1000, () => 200);
  const made: string[] = [];
  const get = (key: string): void => {
    cache.get(key, (own) => {
      made.push(own);
      return {};
    });
  };
  for (const key of 'abcdefghijklmnopqrstuvwxyz') get(key);
  for (const key of 'wxyz') get(key);
  expect(made).toHaveLength(26);
  for (const key of 'abc') get(key);
  expect(made).toHaveLength(29);
});
