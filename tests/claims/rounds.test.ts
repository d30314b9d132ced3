/**
 * Whole teaching notes with labels, in many voices, by authors who did not know the reader. Each folder keeps in
 * `open.txt` what is still missed or wrong there, and in `sizes.txt` which sizes are; nothing may be added to either unseen,
 * and `UPDATE=1` writes them anew.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openLines, type Score, scoreFolder, sizeLines } from '../../server/tools/score.ts';

const ROUNDS = join(import.meta.dirname, 'rounds');

/** Lines that the file does not have; asked to, it is written with these and no others. */
function added(path: string, lines: readonly string[]): string[] {
  if (process.env.UPDATE) writeFileSync(path, lines.map((line) => `${line}\n`).join(''));
  const known = new Set(readFileSync(path, 'utf8').split('\n'));
  return lines.filter((line) => !known.has(line));
}

describe.each(readdirSync(ROUNDS))('round %s', (round) => {
  const folder = join(ROUNDS, round);
  /** Read by the first test that asks, not while the tests are collected. */
  let read: Score | undefined;
  const score = (): Score => {
    read ??= scoreFolder(folder);
    return read;
  };

  test('what is read right stays so, and nothing true is called wrong anew', () => {
    expect(score().contradictionRecall.all).toBeGreaterThan(20);
    expect(added(join(folder, 'open.txt'), openLines(score()))).toEqual([]);
  });

  test('what is seen stays so, and no size is seen anew where none is', () => {
    expect(score().mentionRecall.all).toBeGreaterThan(20);
    expect(added(join(folder, 'sizes.txt'), sizeLines(score()))).toEqual([]);
  });

  test('nearly every size is found, and nearly nothing else', () => {
    const { mentionRecall, mentionPrecision } = score();
    expect(mentionRecall.right / mentionRecall.all).toBeGreaterThan(0.93);
    expect(mentionPrecision.right / mentionPrecision.all).toBeGreaterThan(0.93);
  });
});
