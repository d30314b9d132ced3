/** Every answer about a note grows with its length and not faster. */
import { expect, test } from 'vitest';
import type { Finding } from '../../server/src/checks/model.ts';
import type { Analysis } from '../../server/src/course/index.ts';
import { actionsIn, safeEdits } from '../../server/src/editor/actions.ts';
import { chartRows } from '../../server/src/editor/chart.ts';
import { completionsAt } from '../../server/src/editor/completion.ts';
import { hintsIn } from '../../server/src/editor/hints.ts';
import { hoverAt } from '../../server/src/editor/hover.ts';
import { mentionsOf } from '../../server/src/editor/references.ts';
import { renameIn } from '../../server/src/editor/rename.ts';
import { outline } from '../../server/src/editor/symbols.ts';
import { tokensOf } from '../../server/src/editor/tokens.ts';
import { moved } from '../../server/src/lsp/typing.ts';
import type { Mention } from '../../server/src/mentions/model.ts';
import { readNote } from '../../server/src/notes/index.ts';

const LINE = 'Take an 18 G cannula.\n\n';
const SIZE = { system: 'needle-gauge', value: 18 } as const;

function noteOf(lines: number): Analysis {
  const note = readNote(LINE.repeat(lines));
  const mentions = note.passages.map((passage, index): Mention => {
    const start = index * LINE.length + 8;
    return {
      passage: passage.index,
      span: { start: 8, end: 12 },
      source: { start, end: start + 4 },
      text: '18 G',
      kind: 'size',
      sizes: [SIZE],
      readings: [],
      notation: 'gauge-after',
      device: 'cannula',
      decimals: 0,
      evidence: [],
    };
  });
  const findings = mentions.map(({ source }): Finding => {
    const edits = [{ span: source, text: '20 G' }];
    const fixes = [{ title: 'Write 20 G', safety: 'safe' as const, edits }];
    const shared = { says: '', holds: '', source: '', sources: [], related: [], derivation: [] };
    return { check: 'x', kind: 'contradiction', severity: 'warning', span: source, fixes, ...shared };
  });
  return { note, mentions, statements: [], findings };
}

const ANSWERS: Readonly<Record<string, (analysis: Analysis) => unknown>> = {
  hover: (analysis) => hoverAt(analysis, analysis.note.text.length - 14, { picture: false }),
  fixes: (analysis) => actionsIn(analysis, { start: 9, end: 9 }),
  'fix all': (analysis) => safeEdits(analysis.findings),
  hints: (analysis) => hintsIn(analysis, { start: 0, end: analysis.note.text.length }),
  colours: tokensOf,
  outline,
  references: (analysis) => mentionsOf(analysis, SIZE),
  rename: (analysis) => renameIn(analysis, SIZE, { ...SIZE, value: 20 }),
  completion: (analysis) => completionsAt(analysis, analysis.note.text.length),
  chart: (analysis) => chartRows([{ note: 'a', analysis }]),
  typing: ({ note, findings }) => moved({ text: note.text, findings }, `x${note.text}`),
};

const [SMALL, LARGE] = [1000, 16_000];
const [small, large] = [noteOf(SMALL), noteOf(LARGE)];

/** The quickest of some runs: a busy machine only ever makes one slower. */
function quickest(run: () => unknown): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 5; i++) {
    const start = performance.now();
    run();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

test.each(Object.keys(ANSWERS))('%s', (name) => {
  const answer = ANSWERS[name]!;
  expect(JSON.stringify(answer(small))).not.toBe('[]');
  const growth =
    quickest(() => answer(large)) /
    Math.max(
      0.2,
      quickest(() => answer(small)),
    );
  // Sixteen times the length: a quadratic answer would take 256 times as long; memory has its price too.
  expect(growth).toBeLessThan((LARGE / SMALL) * 6);
});
