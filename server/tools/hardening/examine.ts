/**
 * What must hold for any text at all: nothing throws, no step hangs, every span lies in the text, and reading again,
 * reading from scratch or reading after the quick scan gives the same. Runs instrumented inside the fuzzer.
 */
import { runChecks } from '../../src/checks/index.ts';
import { readStatements } from '../../src/claims/index.ts';
import { type Analysis, analyse, analyseWhole } from '../../src/course/index.ts';
import { actionsIn, hintsIn, hoverAt, outline, tokensOf, tooltip } from '../../src/editor/index.ts';
import { findMentions } from '../../src/mentions/index.ts';
import type { Span } from '../../src/notes/index.ts';
import { readWhole } from '../../src/notes/read-markdown.ts';

/** Longest a short text may take, ms of processor time. */
const HANG = 1000;

/** Times a slow text is read again before it counts as slow: the machine may have been busy, the code cold. */
const AGAIN = 2;

/** The first thing wrong with how `text` is read; undefined when all is well. `thorough`: everything, not just the usual. */
export function examine(text: string, path: string, thorough: boolean): string | undefined {
  try {
    const wrong = () => usual(text, path) ?? (thorough ? rest(text, path) : undefined);
    const start = performance.now();
    const first = wrong();
    // Asking for processor time takes long itself, and it is never more than the time gone by.
    if (first !== undefined || performance.now() - start <= HANG) return first;
    let took = 0;
    for (let round = 0; round <= AGAIN; round++) {
      const before = process.cpuUsage();
      const again = wrong();
      took = process.cpuUsage(before).user / 1000;
      if (again !== undefined || took <= HANG) return again;
    }
    return `took ${Math.round(took)} ms`;
  } catch (error) {
    return error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
}

function usual(text: string, path: string): string | undefined {
  const analysis = analyseWhole(text, undefined, path);
  const outside = spansOf(analysis).find(
    ({ start, end }) => !(Number.isInteger(start) && 0 <= start && start <= end && end <= text.length),
  );
  return outside && `span ${outside.start} to ${outside.end} outside the text of ${text.length}`;
}

function spansOf({ note, mentions, statements, findings }: Analysis): Span[] {
  return [
    ...note.tables.map(({ span }) => span),
    ...note.comments.map(({ span }) => span),
    ...mentions.map(({ source }) => source),
    ...statements.flatMap(({ claim, repair }) => [claim.focus, ...(repair ? [repair.edit.span] : [])]),
    ...findings.flatMap(({ span, fixes, related }) => [
      span,
      ...fixes.flatMap(({ edits }) => edits.map((edit) => edit.span)),
      ...related.map((each) => each.span),
    ]),
  ];
}

const shape = (analysis: Pick<Analysis, 'mentions' | 'findings'>): string =>
  JSON.stringify([analysis.mentions, analysis.findings]);

function fromScratch(text: string): Pick<Analysis, 'mentions' | 'findings'> {
  const note = readWhole(text);
  const mentions = findMentions(note);
  return { mentions, findings: runChecks({ note, mentions, statements: readStatements(note, mentions) }) };
}

function rest(text: string, path: string): string | undefined {
  const whole = analyseWhole(text, undefined, path);
  const said = shape(whole);
  if (shape(analyseWhole(text, undefined, path)) !== said) return 'read twice, two results';
  if (JSON.stringify(analyse(text, undefined, path).findings) !== JSON.stringify(whole.findings))
    return 'the quick scan changes the findings';
  if (path.endsWith('.md') && shape(fromScratch(text)) !== said) return 'from scratch, another result';
  inEditor(whole);
  return undefined;
}

/** Only looks whether anything throws. */
function inEditor(analysis: Analysis): void {
  for (const { source } of analysis.mentions) hoverAt(analysis, source.start, { picture: true });
  for (const { claim } of analysis.statements) hoverAt(analysis, claim.focus.start, { picture: false });
  const all = { start: 0, end: analysis.note.text.length };
  actionsIn(analysis, all);
  hintsIn(analysis, all);
  outline(analysis);
  tokensOf(analysis);
  analysis.mentions.map((mention) => tooltip(mention));
}
