/**
 * A long note is read as a short one is. Of long notes only what was read last is kept; here next to nothing is kept of any
 * note, so that whatever is asked for twice is read twice, and every reading stays what it was.
 */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { readStatements } from '../../server/src/claims/index.ts';
import { ROOM } from '../../server/src/claims/text/reads.ts';
import { analyse } from '../../server/src/course/analyse.ts';
import { findMentions } from '../../server/src/mentions/index.ts';
import { readNote } from '../../server/src/notes/index.ts';
import { pieces } from '../support/pieces.ts';
import { keptTexts, storedIn } from './kept.ts';
import { blockOf } from './readings.ts';

vi.setConfig({ testTimeout: 120_000 });

const usual = { ...ROOM };
beforeEach(() => {
  Object.assign(ROOM, { text: 0, items: 0, passages: 1, sentences: 0 });
});
afterEach(() => {
  Object.assign(ROOM, usual);
});

const rounds = [...keptTexts()]
  .filter(([name], i) => /^r\d/.test(name) && i % 3 === 0)
  .flatMap(([name, texts]) => pieces(texts).map(({ part, items }) => [name + part, name, items] as const));

it.each(rounds)('%s is read as it was', (_, name, texts) => {
  const stored = storedIn(name);
  expect(texts.map((text) => blockOf(text, analyse(text))).filter((block) => !stored.has(block))).toEqual([]);
});

it('sentences of one long paragraph are read as ever, and what was found out about them is let go of', () => {
  const text = 'A 4-0 thread is thicker than a 2-0 thread. The 14 G cannula is green. '.repeat(60);
  const note = readNote(text);
  const mentions = findMentions(note);
  const few = readStatements(note, mentions);
  Object.assign(ROOM, usual);
  const again = readNote(text);
  const all = readStatements(again, findMentions(again));
  expect(all.length).toBeGreaterThanOrEqual(120);
  expect(few).toEqual(all);
});
