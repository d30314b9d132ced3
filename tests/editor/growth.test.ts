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

const [SMALL, LARGE] = [1000, 8000];
const [small, large] = [noteOf(SMALL), noteOf(LARGE)];
/** 1 is linear, 2 the square; what is above 1 leaves room for memory and a busy machine. */
const EXPONENT = 1.5;
const ROUNDS = 8;

/** Processor time, so that other work on the machine does not count. */
function timeOf(run: () => unknown): number {
  const start = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(start);
  return Math.max(50, user + system);
}

/** The best of some rounds: what grows with the square fails in every one. */
test.each(Object.keys(ANSWERS))('%s', (name) => {
  const answer = ANSWERS[name]!;
  expect(JSON.stringify(answer(small))).not.toBe('[]');
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS && best > EXPONENT; round++) {
    const times = [small, large].map((analysis) => timeOf(() => answer(analysis)));
    best = Math.min(best, Math.log(times[1]! / times[0]!) / Math.log(LARGE / SMALL));
  }
  expect(best).toBeLessThanOrEqual(EXPONENT);
});
