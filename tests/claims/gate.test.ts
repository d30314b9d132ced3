/** What a construction needs never hides a reading: the constructions left out of a sentence have nothing to say there. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { CONSTRUCTIONS, constructionsFor } from '../../server/src/claims/constructions/index.ts';
import { readWhole } from '../../server/src/claims/text/scenes.ts';
import { speaksOfTrade } from '../../server/src/claims/text/trade.ts';
import { findMentions } from '../../server/src/mentions/index.ts';
import { readNote } from '../../server/src/notes/index.ts';
import { runs } from '../notes/markdown-pieces.ts';
import { readBank } from './bank.ts';

const lines = (name: string): string[] =>
  readFileSync(join(import.meta.dirname, 'bank', name), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.replaceAll('⏎', '\n'));

const NOTES = [
  ...readBank().flatMap(({ right, wrong }) => [right, wrong]),
  ...lines('silent.txt'),
  ...lines('missed.txt'),
];

/** Constructions that read something though they are not tried, with the sentence. */
function hidden(text: string): string[] {
  const note = readNote(text);
  return [...readWhole(note, findMentions(note)).scenes].flatMap((scene) => {
    const tried = new Set(constructionsFor(scene));
    const trade = speaksOfTrade(scene.items);
    return CONSTRUCTIONS.filter((one) => !tried.has(one) && (trade || one.leaning))
      .filter((one) => one.read(scene).length > 0)
      .map((one) => `${one.id}: ${text}`);
  });
}

/** Every construction over some five thousand notes: a busy machine takes its time. */
vi.setConfig({ testTimeout: 480_000 });

describe('what a construction needs', () => {
  it('hides nothing in the bank and its look-alikes', () => {
    expect(NOTES.length).toBeGreaterThan(1000);
    expect(NOTES.flatMap(hidden)).toEqual([]);
  });

  it('hides nothing where sentences stand together or run into each other', () => {
    const note = fc.constantFrom(...NOTES);
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    const mixed = fc.tuple(note, note, place, place).map(([a, b, from, to]) => {
      const [left, right] = [a.split(' '), b.split(' ')];
      const cut = Math.floor(from * left.length);
      return [...left.slice(0, cut), ...right.slice(Math.floor(to * right.length)), ...left.slice(cut)].join(
        ' ',
      );
    });
    const check = (text: string): void => {
      expect(hidden(text)).toEqual([]);
    };
    fc.assert(fc.property(mixed, check), { numRuns: runs(600), seed: 5 });
  });

  it('leaves most constructions out of most sentences', () => {
    const scenes = NOTES.flatMap((text) => {
      const note = readNote(text);
      return [...readWhole(note, findMentions(note)).scenes];
    });
    const tried = scenes.reduce((sum, scene) => sum + constructionsFor(scene).length, 0);
    expect(tried / scenes.length).toBeLessThan(CONSTRUCTIONS.length / 2);
  });
});
