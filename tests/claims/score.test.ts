/** The scorer over a small labelled folder, whole and with labels taken away. */
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { report, scoreFolder } from '../../server/tools/score.ts';

const LABELLED = join(import.meta.dirname, 'labelled');
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sizewright-score-'));
  for (const name of ['note-1.md', 'labels.jsonl', 'mentions.jsonl'])
    copyFileSync(join(LABELLED, name), join(folder, name));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const rewrite = (name: string, change: (text: string) => string) =>
  writeFileSync(join(folder, name), change(readFileSync(join(folder, name), 'utf8')));

test('everything in the labelled note is found and nothing else', () => {
  const score = scoreFolder(LABELLED);
  expect(score).toMatchObject({
    contradictionRecall: { right: 4, all: 4 },
    contradictionPrecision: { right: 4, all: 4 },
    ambiguityRecall: { right: 1, all: 1 },
    ambiguityPrecision: { right: 1, all: 1 },
    mentionRecall: { right: 12, all: 12 },
    mentionPrecision: { right: 12, all: 12 },
    missed: [],
    wrong: [],
  });
  expect([...score.byKind]).toEqual(
    ['answer-key', 'direction', 'material', 'table-row'].map((kind) => [kind, { right: 1, all: 1 }]),
  );
});

test('a finding without a label is wrong, a label without a finding is missed', () => {
  rewrite('labels.jsonl', (text) =>
    text.replace('"line": 5, "expect": "contradiction"', '"line": 7, "expect": "contradiction"'),
  );
  const score = scoreFolder(folder);
  expect(score.missed).toEqual(['note-1.md:7 direction']);
  expect(score.wrong).toEqual(['note-1.md:5 size-direction']);
  expect(score.contradictionPrecision).toEqual({ right: 3, all: 4 });
  expect(report(score, true)).toContain('missed  note-1.md:7 direction');
});

test('a mention not labelled costs precision, one not seen costs recall', () => {
  rewrite('mentions.jsonl', (text) => text.replace('"value": "14"', '"value": "15"'));
  const score = scoreFolder(folder);
  expect(score.mentionRecall).toEqual({ right: 11, all: 12 });
  expect(score.mentionPrecision).toEqual({ right: 11, all: 12 });
  expect(score.unseen.map((key) => key.split(':').at(-1))).toEqual(['15']);
  expect(score.extra.map((key) => key.split(':').at(-1))).toEqual(['14']);
  expect(report(score, true)).toMatch(/^unseen {2}note-1\.md:\d+:\S+:15$/m);
});

test('a folder without mentions is scored on its labels alone', () => {
  rmSync(join(folder, 'mentions.jsonl'));
  expect(scoreFolder(folder).mentionRecall).toEqual({ right: 0, all: 0 });
  expect(report(scoreFolder(folder), false)).toMatch(/^contradictionRecall +1\.000 {2}4\/4/);
});
