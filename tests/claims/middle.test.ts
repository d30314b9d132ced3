/** "Of 20, 28 and 32 Fr the middle one is the 20": what is shown is a stretch of the text, whichever way the sizes stand. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';

const focusOf = (text: string): string => {
  const found = analyse(text).statements.filter(({ verdict }) => verdict === 'contradicted');
  expect(found).toHaveLength(1);
  const { start, end } = found[0]!.claim.focus;
  return text.slice(start, end);
};

describe('the middle of three', () => {
  it.each([
    ['Of our three drains, 20, 28 and 32 Fr, the middle one in width is the 32.', '32'],
    ['Of our three drains, 20, 28 and 32 Fr, the middle one in width is the 20.', '20'],
    ['Of our three drains, 32, 28 and 20 Fr, the middle one in width is the 32.', '32'],
    ['Of our three drains, 32, 28 and 20 Fr, the middle one in width is the 20.', '20'],
  ])('points at words that end on the size: %s', (text, size) => {
    expect(focusOf(text).endsWith(`the middle one in width is the ${size}`)).toBe(true);
  });
});
