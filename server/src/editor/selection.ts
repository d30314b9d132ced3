/** Growing selections: number, size, statement, sentence, passage. */
import type { Analysis } from '../course/index.ts';
import { sourceSpan } from '../notes/index.ts';
import type { Passage, Span } from '../notes/model.ts';
import { mentionAt, statementsAt, touches } from './places.ts';

/** Spans around an offset, the smallest first, each strictly inside the next. */
export function spansAround(analysis: Analysis, offset: number): Span[] {
  const mention = mentionAt(analysis, offset);
  const passage = analysis.note.passages.find((each) => touches(whole(each), offset));
  const around = [
    ...(mention === undefined ? [] : [...numberIn(analysis, mention.source), mention.source]),
    ...statementsAt(analysis, offset).map((statement) => statement.claim.span),
    ...(passage === undefined ? [] : [sentenceAt(passage, offset), whole(passage)]),
  ];
  return nested(around.filter((span) => touches(span, offset)));
}

const whole = (passage: Passage): Span => sourceSpan(passage, { start: 0, end: passage.text.length });

function numberIn(analysis: Analysis, span: Span): Span[] {
  const number = /[0-9][0-9.,/-]*/.exec(analysis.note.text.slice(span.start, span.end));
  if (number === null) return [];
  const start = span.start + number.index;
  return [{ start, end: start + number[0].length }];
}

function sentenceAt(passage: Passage, offset: number): Span {
  let start = 0;
  for (const stop of passage.text.matchAll(/[.!?](?=\s)/g)) {
    const span = sourceSpan(passage, { start, end: stop.index + 1 });
    if (touches(span, offset)) return span;
    start = stop.index + 1 + (/^\s*/.exec(passage.text.slice(stop.index + 1))?.[0].length ?? 0);
  }
  return sourceSpan(passage, { start, end: passage.text.length });
}

function nested(spans: readonly Span[]): Span[] {
  const sorted = [...spans].sort((a, b) => a.end - a.start - (b.end - b.start));
  const kept: Span[] = [];
  for (const span of sorted) {
    const inner = kept.at(-1);
    const grows =
      inner === undefined ||
      (span.start <= inner.start && inner.end <= span.end && span.end - span.start > inner.end - inner.start);
    if (grows) kept.push(span);
  }
  return kept;
}
