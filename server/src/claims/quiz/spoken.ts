/** Keys read out loud: "For number one you should have C. Number two was A. Three, B. And the last one, five, is A." */

import { matchesOf } from '../../notes/index.ts';
import type { Passage } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import { remembered } from '../text/remember.ts';
import type { Said } from './verdicts.ts';

const COUNTED = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
export const WORDS = COUNTED.join('|');

const LABEL = new RegExp(`^[\\s*_(]*(?:q(?:uestion)? |number )?(${WORDS})[.:)][\\s*_]`, 'i');

/** "Three. A blue cannula is: …": a question counted in words. */
export const wordNumber = (text: string): number | undefined => numberOf(LABEL.exec(`${text} `)?.[1]);

/** How long that label is. */
export const wordLabel = (text: string): number => LABEL.exec(text)?.[0].length ?? 0;

const numberOf = (word: string | undefined): number | undefined => {
  const place = COUNTED.indexOf((word ?? '').toLowerCase());
  return place < 0 ? undefined : place + 1;
};

/** "two", "2": the number of a question. */
export const counted = (word: string): number | undefined =>
  numberOf(word) ?? (/^\d{1,2}$/.test(word) ? Number(word) : undefined);

const SPOKEN = new RegExp(
  `(?:^|[\\s(;,.])(${WORDS}|\\d{1,2})(?:,? ?(?:is|was|it's|it is|(?:you|we|they|that|it) (?:should|ought to|must) (?:be|have(?: been| put| written)?)|should (?:be|have been|read|say)|needs?|wants?|goes to|the answer (?:is|was)|=|:),?|,)? (?:the letter |letter |option |answer |choice )?([A-F])(?=[.,;!)]|\\s*$|\\n)`,
  'gi',
);
const LONGEST = 700;
const FEWEST = 3;

/** What a short passage says of three questions or more, each by its number and a capital. */
export const spokenIn = remembered(({ text }: Passage): Said[] => {
  if (text.length > LONGEST || !/\b[B-F][.,;!)]/.test(text)) return [];
  const said = matchesOf(text, SPOKEN).flatMap((match): Said[] => {
    const [whole, which, letter] = match as unknown as [string, string, string];
    const number = counted(which) ?? Number.NaN;
    if (letter < 'A' || letter > 'F' || !Number.isFinite(number)) return [];
    const end = match.index! + whole.length;
    return [{ number, answer: letter.toLowerCase(), at: end - 1, end }];
  });
  const rising = said.every(({ number }, i) => i === 0 || number > said[i - 1]!.number);
  return said.length >= FEWEST && rising ? said : [];
});

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];
const COUNT = new RegExp(
  `(?<=^|[;:.,!?]\\s{1,2}|\\band )(?:so |and |the )*(?:(?:number|question|no\\.?) )?(${WORDS}|${ORDINALS.join('|')})(?: (?:is|was)|[,:=])+(?: (?:is|was))? (?=\\S)`,
  'gi',
);
const ANNOUNCED = /\b(?:answers?|key|solutions?|results?)\b|^\W*(?:so )?number one\b/i;

/** "K's answers: one, yellow; two, the 10 Fr; three, 5 mm": a key that counts in words and answers in words. */
export const wordedIn = remembered(({ text }: Passage): readonly Worded[] => {
  if (text.length > LONGEST || !finds(ANNOUNCED, text)) return [];
  const marks = matchesOf(text, COUNT).map((match) => ({
    number: numberOf(match[1]) ?? ORDINALS.indexOf(match[1]!.toLowerCase()) + 1,
    at: match.index,
    body: match.index + match[0].length,
  }));
  // "One: which is wider? Two: …": the questions.
  if (marks.some(({ body }, i) => text.slice(body, marks[i + 1]?.at).includes('?'))) return [];
  const counts = marks.length >= FEWEST && marks.every(({ number }, i) => number === i + 1);
  return counts
    ? marks.map(({ number, body }, i) => ({
        number,
        start: body,
        end: trimmed(text, body, marks[i + 1]?.at),
      }))
    : [];
});

/** An entry of such a key, in its passage. */
export interface Worded {
  readonly number: number;
  readonly start: number;
  readonly end: number;
}

const trimmed = (text: string, from: number, to = text.length): number =>
  from + text.slice(from, to).replace(/[\s;,.:]*(?:\band)?\s*$/, '').length;
