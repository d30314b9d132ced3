/**
 * A question and its reply told as a story: '"Which is thicker, 2-0 or 4-0?" asked the sister. "4-0," said the student, and she
 * nodded.', "Asked for the wider of 12 Fr and 16 Fr, he said 12 Fr. Right." Only what somebody approves of is read.
 */

import type { Span } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import type { Read } from '../text/scenes.ts';
import type { Pair } from './pairs.ts';
import { questionIn, replyIn } from './turns.ts';

const LONGEST = 900;
const ASKS = /\b(?:asked|asks|wanted|wants|question|quizzed|name|which|what)\b/i;
const SAYS =
  /\b(?:said|says|answered|answers|replied|replies|offered|called out|wrote|came back with|answer given)(?:,| that| the| a| an| it was| it is)*\s+/i;
/** Somebody who knows is content. */
const APPROVES =
  /\b(?:nodd\w+|agreed|agrees|smiled|beamed|was right|is right|were right|correct(?! (?:him|her|them|it|that|this))|correctly|right(?=["”’']?(?:[.,!;]|$))|well done|praised|ticked|full marks|exactly|spot on|got the (?:mark|point))\b/i;
const OBJECTS =
  /\b(?:not|never|no|wrong\w*|shook|frown\w*|sigh\w*|laugh\w*|groan\w*|but|should|incorrect\w*|instead|rather|almost|nearly|if)\b|n['’]t\b/i;
/** Between a question and its reply stands who asked. */
const LONGEST_TAG = 50;
const LONGEST_REPLY = 60;

export function narrated(read: Read): Pair[] {
  const { text } = read.passage;
  if (read.passage.cell || text.length > LONGEST || !finds(APPROVES, text) || !ASKS.test(text)) return [];
  return [...inQuotes(read), ...toldOf(read)];
}

function inQuotes(read: Read): Pair[] {
  const { text } = read.passage;
  return read.quotes.flatMap(([start, end], i) => {
    const [next, third] = [read.quotes[i + 1], read.quotes[i + 2]];
    if (!next || next[0] - end > LONGEST_TAG || next[1] - next[0] > LONGEST_REPLY) return [];
    const asked = text.slice(start, end);
    const tag = text.slice(end, next[0]);
    if (!/\?\W*$/.test(asked) && !/^\W*(?:name|give|tell|say|which|what)\b/i.test(asked)) return [];
    if (OBJECTS.test(tag) || /\n\s*\n/.test(tag)) return [];
    const near = third && third[0] - next[1] <= LONGEST_TAG;
    const after = text.slice(next[1], near ? third[1] : sentenceEnd(text, next[1]));
    return approved(after) ? [pairOf(read, { start, end }, { start: next[0], end: next[1] })] : [];
  });
}

/** "Asked for the wider of …, he said 12 Fr. Right.", "He asked which is …. I said the 20, and he agreed." */
function toldOf(read: Read): Pair[] {
  const { text } = read.passage;
  return read.sentences.flatMap((sentence, i) => {
    const own = text.slice(sentence.start, sentence.end);
    const says = SAYS.exec(own);
    if (!says || own.length > 200 || /["“”]/.test(own)) return [];
    const before = read.sentences[i - 1];
    const inside = ASKS.test(own.slice(0, says.index)) && says.index > 20;
    const question = inside
      ? { start: sentence.start, end: sentence.start + says.index }
      : before && ASKS.test(text.slice(before.start, before.end))
        ? { start: before.start, end: before.end }
        : undefined;
    const from = sentence.start + says.index + says[0].length;
    const stop = /[,;.]/.exec(text.slice(from, sentence.end).replace(/(?<=\d)\.(?=\d)/g, '·'));
    const end = stop ? from + stop.index : sentence.end;
    const next = read.sentences[i + 1];
    const rest = `${text.slice(end, sentence.end)} ${next && next.items.length <= 5 ? text.slice(next.start, next.end) : ''}`;
    return question && end - from <= LONGEST_REPLY && approved(rest)
      ? [pairOf(read, question, { start: from, end })]
      : [];
  });
}

const approved = (after: string): boolean => finds(APPROVES, after) && !OBJECTS.test(after);
const sentenceEnd = (text: string, from: number): number => {
  const stop = text.slice(from).search(/[.!?](?:\s|$)/);
  return stop < 0 ? Math.min(text.length, from + 90) : from + stop;
};
const pairOf = (read: Read, question: Span, reply: Span): Pair => ({
  question: questionIn(read, question),
  reply: replyIn(read, reply).piece,
  marked: true,
});
