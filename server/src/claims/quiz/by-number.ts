/** Answers told in passing, each by the number of its question: "For question 2 I want 3-0.", "On four we accept 30 G." */

import { matchesOf } from '../../notes/index.ts';
import type { Passage } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import { remembered } from '../text/remember.ts';
import { counted, WORDS, type Worded } from './spoken.ts';

const LONGEST = 700;
const NUMBER = `(${WORDS}|\\d{1,2})`;
const WANTS =
  "(?:(?:i|we|you|they|markers?|examiners?)(?:'d|'ll| will| would| should| must| can| are| am)? )?(?:want|wants|wanted|accept|accepts|expect|expects|take|takes|need|needs|have|be|allow|allows|looking for|look for|write|put)|(?:(?:the|our|my) )?(?:right |correct |model )?answer (?:is|was|should be)";

/** "For question 2 I accept …", "Question 2 wants …": the number of a question, and what earns its mark. */
const TOLD = new RegExp(
  `(?<=^|[.;!?\\n]\\s{0,3})(?:and |so |then )?(?:(?:for|on|in|with|at) (?:(?:question|number|item|q|no\\.?) ?)?${NUMBER},? (?:${WANTS})|(?:question|number|item|q) ?${NUMBER},? (?:wants|needs|should (?:be|have|read|say)|takes|asks for))(?: either)?:? (?=[^.;!?\\n])`,
  'gi',
);

/** Each answer of a passage, by the number of its question. */
export const toldByNumber = remembered(({ text }: Passage): readonly Worded[] => {
  if (text.length > LONGEST || !finds(ABOUT, text)) return [];
  return matchesOf(text, TOLD).flatMap((match): Worded[] => {
    const number = counted(match[1] ?? match[2] ?? '');
    const start = match.index + match[0].length;
    const stop = END.exec(text.slice(start));
    return number === undefined ? [] : [{ number, start, end: start + (stop?.index ?? text.length - start) }];
  });
});

const ABOUT =
  /\b(?:want|wants|accept|accepts|expect|expects|answer|looking for|look for|needs?|takes?|should)\b/i;
/** Where the answer ends: at the stop, not at the point of a figure; at the reason. */
const END = /[.;!?](?=\s|$)|\n|,? (?:because|since|as|and not|but)\b/;
