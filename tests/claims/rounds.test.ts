/**
 * Whole teaching notes with labels, in many voices, by authors who did not know the reader. Each folder keeps in
 * `open.txt` what is still missed or wrong there; nothing may be added to it unseen, and `UPDATE=1` writes it anew.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Score, scoreFolder } from '../../server/tools/score.ts';

const ROUNDS = join(import.meta.dirname, 'rounds');

const openIn = ({ missed, wrong }: Score): string[] => [
  ...missed.map((place) => `missed ${place}`),
  ...wrong.map((place) => `wrong ${place}`),
];

const known = (folder: string): Set<string> =>
  new Set(readFileSync(join(folder, 'open.txt'), 'utf8').split('\n').filter(Boolean));

describe.each(readdirSync(ROUNDS))('round %s', (round) => {
  const folder = join(ROUNDS, round);
  /** Read by the first test that asks, not while the tests are collected. */
  let read: Score | undefined;
  const score = (): Score => {
    read ??= scoreFolder(folder);
    return read;
  };

  test('what is read right stays so, and nothing true is called wrong anew', () => {
    const open = openIn(score());
    if (process.env.UPDATE) writeFileSync(join(folder, 'open.txt'), open.map((line) => `${line}\n`).join(''));
    expect(score().contradictionRecall.all).toBeGreaterThan(20);
    expect(open.filter((line) => !known(folder).has(line))).toEqual([]);
  });

  test('nearly every size is found, and nearly nothing else', () => {
    const { mentionRecall, mentionPrecision } = score();
    expect(mentionRecall.right / mentionRecall.all).toBeGreaterThan(0.93);
    expect(mentionPrecision.right / mentionPrecision.all).toBeGreaterThan(0.93);
  });
});
