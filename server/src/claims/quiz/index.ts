/** What keys and answers assert: choices marked right, and questions together with their replies. */
import type { Note, Span } from '../../notes/model.ts';
import type { Whole } from '../text/scenes.ts';
import { readChoice } from './choice.ts';
import { quizzes } from './collect.ts';
import { crossed } from './crosses.ts';
import { deskOf, type KeyReading, spanOf } from './desk.ts';
import { keyed } from './key.ts';
import { matched } from './matching.ts';
import { type Pair, pairs } from './pairs.ts';
import { readReason } from './reasons.ts';
import { readReply } from './reply.ts';
import { sectionPairs, tablePairs } from './sections.ts';
import { sortedPairs } from './sorting.ts';

export type { KeyReading } from './desk.ts';

export interface Keys {
  readonly readings: readonly KeyReading[];
  /** The choices of every question with a key: what they say is said by the key, or not at all. */
  readonly choices: readonly Span[];
}

export function readKeys(note: Note, { reads, scenes, answers }: Whole): Keys {
  const desk = deskOf(note, reads, scenes);
  const all = quizzes(note, reads);
  const asking = new Set(all.map(({ question }) => question.read.passage.index));
  const match = matched(desk, answers, asking);
  const offering = all.filter(({ question }) => !match.numbers.has(question.read.passage.index));
  const offered = new Set(
    offering.flatMap(({ question, options }) => [question, ...options].map(({ read }) => read.passage.index)),
  );
  const keys = keyed(note, reads, offering, answers);
  const settled = new Set(keys.map(({ quiz }) => quiz.question.read.passage.index));
  const replied = [
    ...pairs(desk, offered),
    ...reads.flatMap((read) => sortedPairs(desk, read)),
    ...tablePairs(desk),
    ...sectionPairs(desk, answers),
  ];
  const free = replied.filter((pair) => !settled.has(pair.question.read.passage.index) && !quotedWhole(pair));
  return {
    readings: [
      ...[...keys, ...crossed(note, reads)].flatMap((key) => readChoice(key, desk)),
      ...keys.flatMap((key) => readReason(key, note, reads)),
      ...match.readings,
      ...free.flatMap((pair) => readReply(pair, desk)),
    ],
    choices: keys.flatMap(({ quiz }) => quiz.options.map(spanOf)),
  };
}

/** "\"wider: 20 G or 18 G? 20 G\". It's the 18.": question and reply in one quotation are somebody else's. */
const quotedWhole = ({ question, reply }: Pair): boolean =>
  question.read === reply.read &&
  question.read.quotes.some(
    ([start, end]) => start <= question.span.start && question.span.end < end && reply.span.start < end,
  );
