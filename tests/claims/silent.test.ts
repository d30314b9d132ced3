/**
 * Sentences that look like claims about sizes and are not, or that are true in a way a hasty reader would miss:
 * price, pain, length and place; sizes in company; other people's words. Nothing may be said about any of them.
 */
import { expect, test } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';
import { pieces } from '../support/pieces.ts';
import { lookAlikes } from './kept.ts';

const sentences = lookAlikes();

const parts = pieces(sentences).map(({ part, items }) => [part, items] as const);

test('there are sentences to be silent about', () => {
  expect(sentences.length).toBeGreaterThan(100);
});

test.each(parts)('none of them is contradicted%s', (_, items) => {
  const spoken = items.flatMap((text) =>
    analyse(text)
      .findings.filter((finding) => finding.kind === 'contradiction')
      .map((finding) => `${text} — ${finding.says}`),
  );
  expect(spoken).toEqual([]);
});
