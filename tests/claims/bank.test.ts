/**
 * The sentence bank: each true sentence raises nothing, each false twin is contradicted and its fix mends it.
 * Rules behind the sentences: the tables of `sizes`, each with its source in VALUES.md.
 */
import { describe, expect, test, vi } from 'vitest';
import type { Finding } from '../../server/src/checks/model.ts';
import { analyse } from '../../server/src/course/analyse.ts';
import { pieces } from '../support/pieces.ts';
import { readBank, type Twin } from './bank.ts';

const twins = readBank();
const parts = [...new Set(twins.map((twin) => twin.file))].flatMap((file) =>
  pieces(twins.filter((twin) => twin.file === file)).map(({ part, items }) => [file + part, items] as const),
);
/** Each text is analysed once: two tests look at it. */
const known = new Map<string, readonly Finding[]>();

function contradictions(text: string): readonly Finding[] {
  const found =
    known.get(text) ??
    analyse(text).findings.filter((finding) => finding.kind === 'contradiction' && !finding.deliberate);
  known.set(text, found);
  return found;
}

function failures(list: readonly Twin[]): string[] {
  return list.flatMap(({ line, right, wrong }) => {
    const calm = contradictions(right).map(
      (finding) => `line ${line}: true, yet “${finding.says}” — ${right}`,
    );
    const missed =
      contradictions(wrong).length === 0 ? [`line ${line}: false, yet nothing said — ${wrong}`] : [];
    return [...calm, ...missed];
  });
}

const ENOUGH = 900;
/** Near two thousand analyses: a busy machine takes its time. */
vi.setConfig({ testTimeout: 240_000 });

describe('sentence bank', () => {
  test('holds enough twins, each once', () => {
    expect(twins.length).toBeGreaterThanOrEqual(ENOUGH);
    expect(new Set(twins.map(({ right, wrong }) => `${right}\n${wrong}`)).size).toBe(twins.length);
  });

  test.each(parts)('%s: true twins are silent, false twins are contradicted', (_, items) => {
    expect(failures(items)).toEqual([]);
  });

  test.each(parts)('%s: the fix of a false twin makes it true', (_, items) => {
    const broken = items.flatMap(({ file, line, wrong }) => {
      const fix = contradictions(wrong)[0]?.fixes.find((one) => one.safety === 'safe');
      if (!fix) return [];
      const [edit] = fix.edits;
      if (!edit) return [`${file}:${line}: a fix that changes nothing`];
      const mended = wrong.slice(0, edit.span.start) + edit.text + wrong.slice(edit.span.end);
      return contradictions(mended).length > 0 ? [`${file}:${line}: ${mended}`] : [];
    });
    expect(broken).toEqual([]);
  });
});
