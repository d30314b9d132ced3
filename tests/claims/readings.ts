/**
 * How a whole text is read, a line each: its sizes, then every statement with its verdict, its stance, what read it and the
 * word it points at; of a contradiction also what a reader is shown and what the fix puts there.
 */
import type { Statement } from '../../server/src/claims/model.ts';
import type { Analysis } from '../../server/src/course/analyse.ts';
import type { Span } from '../../server/src/notes/model.ts';
import { told } from '../mentions/fixtures.ts';

/** A break would end the line it stands on. */
const onOneLine = (text: string): string => text.replaceAll('\n', '⏎');

/** What a reader of a contradiction is shown: what the text says, what holds, by which values, and the fix. */
function shown({ says, holds, source, repair, derivation }: Statement, cut: (span: Span) => string): string {
  const values = derivation.filter(({ label }) => label === 'value' || label === 'rule');
  const mended = repair ? ` [${cut(repair.edit.span)} → ${repair.edit.text}]` : '';
  return `${says} ${holds} (${[...values.map(({ text }) => text), source].join('; ')})${mended}`;
}

function statementLine(statement: Statement, text: string): string {
  const { claim, verdict, stance } = statement;
  const cut = ({ start, end }: Span): string => text.slice(start, end);
  const read = `${verdict} ${stance} ${claim.kind}/${claim.construction} “${cut(claim.focus)}”`;
  return verdict === 'contradicted' ? `${read}: ${shown(statement, cut)}` : read;
}

/** Sizes on one line; of a longer text on a line each, so that a difference can be read. */
const FEW = 6;
const sizesIn = ({ mentions }: Analysis): string[] => {
  if (mentions.length === 0) return [];
  const all = mentions.map(told);
  return all.length > FEW ? all.map((one) => `size ${one}`) : [`sizes ${all.join('; ')}`];
};

const readingOf = (analysis: Analysis): string[] => [
  ...sizesIn(analysis),
  ...analysis.statements.map((statement) => statementLine(statement, analysis.note.text)),
];

/** Of a text longer than both, only its ends: enough to know it by. */
const ENDS = 50;

function labelOf(text: string): string {
  const line = onOneLine(text);
  return line.length > 2 * ENDS ? `> ${line.slice(0, ENDS)} … ${line.slice(-ENDS)}` : `> ${line}`;
}

/** A text, and indented below it what is read there. */
export const blockOf = (text: string, analysis: Analysis): string =>
  [labelOf(text), ...readingOf(analysis).map((line) => `  ${onOneLine(line)}`)].join('\n');
