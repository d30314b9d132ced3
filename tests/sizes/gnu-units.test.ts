/**
 * French, AWG and SWG against GNU Units 2.22 (Debian package `units`): charriere, wiregauge (American) and
 * brwiregauge (British standard). Skipped, visibly, where the program is not installed.
 */
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { awg, swg } from '../../server/src/sizes/index.ts';
import { outer } from './support.ts';

const installed = spawnSync('units', ['--version']).status === 0;

/** Several questions in one run: one answer a line, mm. */
function inMm(questions: readonly string[]): number[] {
  const input = questions.flatMap((question) => [question, 'mm']).join('\n');
  const { stdout } = spawnSync('units', ['--terse', '--digits', '12'], {
    input: `${input}\n`,
    encoding: 'utf8',
  });
  return stdout.trim().split('\n').map(Number);
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);

describe.skipIf(!installed)(
  `GNU Units${installed ? '' : ' (skipped: the program `units` is not installed)'}`,
  () => {
    it('agrees on French', () => {
      const sizes = range(1, 50);
      const theirs = inMm(sizes.map((n) => `${n} charriere`));
      expect(theirs).toHaveLength(sizes.length);
      sizes.forEach((n, i) => {
        expect(outer('french', n).nominal).toBeCloseTo(theirs[i]!, 7);
      });
    });

    it('agrees on the American wire gauge', () => {
      const sizes = range(0, 40);
      const theirs = inMm(sizes.map((n) => `wiregauge(${n})`));
      expect(theirs).toHaveLength(sizes.length);
      sizes.forEach((n, i) => {
        expect(awg(n)?.nominal).toBeCloseTo(theirs[i]!, 7);
      });
    });

    it('agrees on the British standard wire gauge', () => {
      const sizes = range(0, 50);
      const theirs = inMm(sizes.map((n) => `brwiregauge(${n})`));
      expect(theirs).toHaveLength(sizes.length);
      sizes.forEach((n, i) => {
        expect(swg(n)?.nominal).toBeCloseTo(theirs[i]!, 7);
      });
    });
  },
);
