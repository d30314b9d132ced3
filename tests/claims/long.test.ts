/**
 * A long note is read as a short one is. Of long notes only what was read last is kept; here next to nothing is kept of any
 * note, so that whatever is asked for twice is read twice, and every reading stays what it was.
 */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readStatements } from '../../server/src/claims/index.ts';
import { PassageRead, ROOM, Shelf } from '../../server/src/claims/text/reads.ts';
import { analyse } from '../../server/src/course/analyse.ts';
import { findMentions } from '../../server/src/mentions/index.ts';
import { readNote } from '../../server/src/notes/index.ts';
import { pieces } from '../support/pieces.ts';
import { keptTexts } from './kept.ts';
import { blockOf } from './readings.ts';

vi.setConfig({ testTimeout: 120_000 });

const usual = { ...ROOM };
const least = { text: 0, items: 0, passages: 1, sentences: 0 };
beforeEach(() => {
  Object.assign(ROOM, least);
});
afterEach(() => {
  Object.assign(ROOM, usual);
});

const rounds = [...keptTexts()]
  .filter(([name], i) => /^r\d/.test(name) && i % 3 === 0)
  .flatMap(([name, texts]) => pieces(texts).map(({ part, items }) => [name + part, items] as const));

it.each(rounds)('%s is read as ever', (_, texts) => {
  const read = (room: typeof ROOM): string[] => {
    Object.assign(ROOM, room);
    return texts.map((text) => blockOf(text, analyse(text)));
  };
  expect(read(least)).toEqual(read(usual));
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

describe('what is kept of passages', () => {
  /** So many passages of a note of some length, each read once in order. */
  const readInTurn = (length: number, texts: readonly string[]): PassageRead[] => {
    Object.assign(ROOM, { text: 1000, items: 20, passages: 2 });
    const shelf = new Shelf(length);
    const reads = readNote(texts.join('\n\n')).passages.map((passage) => new PassageRead(passage, [], shelf));
    for (const read of reads) expect(read.items.length).toBe(read.size);
    return reads;
  };
  /** Which of these are given without being read anew, asked one after the other. */
  const kept = (reads: readonly PassageRead[]): boolean[] => {
    const put = vi.spyOn(Shelf.prototype, 'put');
    const found = reads.map((read) => {
      const times = put.mock.calls.length;
      return read.items.length > 0 && put.mock.calls.length === times;
    });
    put.mockRestore();
    return found;
  };

  it('is all of a short note', () => {
    expect(kept(readInTurn(1000, Array(12).fill('one two three four five')))).toEqual(Array(12).fill(true));
  });

  it('is what was read last of a long one', () => {
    const reads = readInTurn(1001, Array(12).fill('one two three four five'));
    // The last first: what is read anew pushes others out.
    expect(kept(reads.slice(8).reverse())).toEqual([true, true, true, true]);
    expect(kept(reads.slice(0, 1))).toEqual([false]);
  });

  it('is a long passage until as much was read behind it', () => {
    const [long, ...short] = [Array(50).fill('word').join(' '), ...Array(11).fill('one two three four five')];
    expect(kept(readInTurn(1001, [long!, ...short.slice(2)]).slice(0, 1))).toEqual([true]);
    expect(kept(readInTurn(1001, [long!, ...short]).slice(0, 1))).toEqual([false]);
  });
});
