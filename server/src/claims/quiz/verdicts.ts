/**
 * Keys that list numbers under a verdict or say them in a sentence: "True: 1, 3", "Numbers 1 and 3 are true; 2 is false", "All are
 * true except 2", "No. 1 is a, no. 2 is c".
 */
import { everyMatch, firstMatch } from '../../notes/patterns.ts';

export interface Said {
  readonly number: number;
  /** "true", "false", or the letter or number of a choice. */
  readonly answer: string;
  readonly at: number;
  readonly end: number;
}

const NUMBERS = '\\d{1,2}(?:\\s*(?:,|and|&|, and)\\s*\\d{1,2})*';
const TRUTH = 'true|false|right|wrong|correct|incorrect|untrue';
const LISTED = new RegExp(
  `\\b(?!(?:right|correct) (?:one|answer) )(${TRUTH})(?: (?:statements?|ones?|items?|answers?|numbers?))?\\s*(?:[:=–—-]|is|are)\\s*(?:numbers? |nos?\\.? |statements? )?(${NUMBERS})(?![\\d.]*\\s*(?:mm|fr|g\\b|ch|gauge|%|marks?|points?|out|of|or|\\/))`,
  'gi',
);
const SENTENCE = new RegExp(
  `(?:^|[\\s(])(?:numbers?|nos?\\.?|statements?|items?|questions?|q)?\\s?(${NUMBERS}) (?:is|are) (${TRUTH})\\b`,
  'gi',
);
const EXCEPT = new RegExp(
  `\\ball (?:of them |statements )?(?:are )?(${TRUTH})(?:,)? (?:except|but|save|apart from)(?: for)? (?:numbers? |nos?\\.? )?(${NUMBERS})\\b`,
  'i',
);
const ONLY = new RegExp(
  `\\bonly (?:numbers? |nos?\\.? |statements? )?(${NUMBERS}) (?:is|are) (${TRUTH})\\b`,
  'i',
);
const CHOSEN =
  /(?:^|[\s(;,.])(?:no\.?|numbers?|questions?|q|for|item|to question)\s?(\d{1,2}),?\s*(?:is|was|:|=|→|–|-)?\s*(?:option |choice |answer |number )?\(?([a-f]|[1-6])\)?(?=[\s.;,:)]|$)/gi;

/** Nobody lists verdicts in a longer text, nor judges more statements at once. */
const LONGEST = 220;
const MANY = 20;

const truthOf = (word: string): 'true' | 'false' =>
  /^(?:true|right|correct)$/i.test(word) ? 'true' : 'false';
const other = (truth: 'true' | 'false'): 'true' | 'false' => (truth === 'true' ? 'false' : 'true');
const numbersIn = (text: string): number[] => (text.match(/\d+/g) ?? []).map(Number);

/** What a short text says of numbered questions; empty for any other. */
export function saidIn(text: string): Said[] {
  if (text.length > LONGEST || !/\d/.test(text)) return [];
  const [all, listed, exact] = [allBut(text), verdicts(text), everyMatch(CHOSEN, text)];
  if (all.length > 0) return all;
  if (listed.length > 0) return listed;
  if (exact.length < 2) return backwards(text);
  return exact.map((match) => ({
    number: Number(match[1]),
    answer: match[2]!.toLowerCase(),
    at: match.index + match[0].lastIndexOf(match[2]!),
    end: match.index + match[0].length,
  }));
}

/** "b (Q1), c (Q2)", "c for question 2", "b is the answer to 1": the letter first. */
const BACKWARDS =
  /(?:^|[\s,;.(])([A-Fa-f])\)?\s*(?:\(\s*(?:q(?:uestion)?\s?|no\.?\s?)?(\d{1,2})\s*\)|(?:(?:is|was|goes|answers) )?(?:the (?:right |correct )?answer )?(?:to|for|in|answers?) (?:q(?:uestion)?|no\.?|number|item)\s?(\d{1,2}))(?=[\s,;.]|$)/gi;
function backwards(text: string): Said[] {
  const found = everyMatch(BACKWARDS, text);
  const covered = found.reduce((sum, [whole]) => sum + whole!.length, 0);
  return covered < MOSTLY * text.length
    ? []
    : found.map((match) => {
        const at = match.index + match[0].indexOf(match[1]!);
        return { number: Number(match[2] ?? match[3]), answer: match[1]!.toLowerCase(), at, end: at + 1 };
      });
}
const MOSTLY = 0.6;

function allBut(text: string): Said[] {
  const match = firstMatch(EXCEPT, text);
  const only = match ? null : firstMatch(ONLY, text);
  const hit = match ?? only;
  if (!hit) return [];
  const truth = truthOf(match ? match[1]! : only![2]!);
  const named = new Set(numbersIn(match ? match[2]! : only![1]!));
  const own = match ? other(truth) : truth;
  const place = { at: hit.index, end: hit.index + hit[0].length };
  return Array.from({ length: MANY }, (_, i) => i + 1).map((number) => ({
    number,
    answer: named.has(number) ? own : other(own),
    ...place,
  }));
}

function verdicts(text: string): Said[] {
  const found = [
    ...everyMatch(LISTED, text).map((match) => ({ match, truth: match[1]!, numbers: match[2]! })),
    ...everyMatch(SENTENCE, text).map((match) => ({ match, truth: match[2]!, numbers: match[1]! })),
  ];
  return found.flatMap(({ match, truth, numbers }) =>
    numbersIn(numbers).map((number) => ({
      number,
      answer: truthOf(truth),
      at: match.index,
      end: match.index + match[0].length,
    })),
  );
}
