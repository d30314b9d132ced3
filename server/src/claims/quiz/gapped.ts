/** Lines with a gap, and what fills it: on the same line, below it, or in brackets behind it. */
import type { Span } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import type { Desk } from './desk.ts';
import { severalEntries } from './entries.ts';
import { fillsWhole } from './fillers.ts';
import { bracketed, gapIn } from './gap.ts';
import { linesOf } from './lines.ts';
import type { Pair } from './pairs.ts';
import { piece } from './piece.ts';
import { LONGEST_LINE, questionIn, replyIn } from './turns.ts';

/** What follows the sentence of a gap on its line, else the passage below. */
export function gapped(desk: Desk, read: Read, line: Span, below: Span | undefined): Pair[] {
  const gap = line.end - line.start > LONGEST_LINE ? undefined : gapIn(read, line);
  if (!gap) return [];
  const filling = bracketed(read, gap, line.end);
  if (filling)
    return [
      {
        question: questionIn(read, { start: sentenceStart(read, line, gap), end: gap.end }),
        reply: piece(read, filling.start, filling.end),
        marked: true,
      },
    ];
  const stop = /[.?!](?=["”’'*)]*(?:\s|$))/.exec(read.passage.text.slice(gap.end, line.end));
  const cut = stop ? gap.end + stop.index : line.end;
  const rest = { start: Math.min(cut + 1, line.end), end: line.end };
  const question = questionIn(read, { start: sentenceStart(read, line, gap), end: cut });
  const here = /[\p{L}\p{N}]/u.test(read.passage.text.slice(rest.start, rest.end));
  const next = nextOf(desk, read);
  const reply = here
    ? replyIn(read, rest)
    : below
      ? gapIn(read, below) === undefined
        ? replyIn(read, below)
        : undefined
      : next && prose(next) && (next.passage.list === undefined || next.passage.list.parent !== undefined)
        ? replyIn(next, linesOf(next)[0] ?? { start: 0, end: 0 })
        : undefined;
  return reply && !severalEntries(reply.piece.read)
    ? [{ question, reply: reply.piece, marked: reply.marked }]
    : [];
}

/** "Fill in: a 24 Fr catheter is ___ mm": the sentence of the gap begins after the last stop before it. */
function sentenceStart(read: Read, line: Span, gap: Span): number {
  const before = read.passage.text.slice(line.start, gap.start);
  const stop = before.search(/[.?!:]\s(?!.*[.?!:]\s)/);
  return stop < 0 || /^\W*\d{1,2}\.\s/.test(before.slice(stop - 3)) ? line.start : line.start + stop + 1;
}

/** The passage below, past those that only tell the learner what to do. */
function nextOf({ reads }: Desk, { passage: { index } }: Read): Read | undefined {
  const next = reads[index + 1];
  return next && fillsWhole(next) ? reads[index + 2] : next;
}

const prose = ({ passage }: Read) => passage.kind === 'paragraph' || passage.kind === 'caption';
