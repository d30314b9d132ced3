/** What stands between a question and its answer and is neither: "Turn over.", "Put your pens down.", "(1 mark)", "____". */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';

const LONGEST = 10;
const TELLS =
  /^(?:now |and |please |then |first |so )*(?:turn|flip|scroll|look|put|think|take|cover|wait|stop|pause|discuss|write|pens?|pencils?|no (?:peeking|cheating|looking|phones|books|notes)|time|ready|try|have a (?:go|guess|think)|talk|vote|hands?|don't|do not|see|answers? (?:on|over|below|next|overleaf)|over(?:leaf)?|next page|cards? (?:up|down)|count|guess|decide|commit)\b/;
/** "Distractor: 10 Fr.", "Level: easy.": about the question, and no answer to it. */
const ASIDE =
  /^(?:distractors?|hints?|clues?|level|source|topic|time|objective|tags?|difficulty|points?|marks?)$/;
const MARKS = /^\(? ?\d{1,2} (?:marks?|points?|pts?) ?\)?$/;

/** Nothing of ours is in it, and it tells the learner what to do, or what the answer earns. */
export function fills({ items, close }: Sentence): boolean {
  if (close === '?' || items.length > LONGEST) return false;
  const words = items.filter(({ kind }) => kind !== 'punctuation');
  if (words.length === 0 || (ASIDE.test(words[0]!.word) && items[1]?.word === ':')) return true;
  return MARKS.test(textOf(words)) || (TELLS.test(textOf(words)) && !words.some(speaks));
}

/** "Take the 16 G in your hand.": names a size, and answers nothing. */
export const tells = ({ items }: Sentence): boolean =>
  items.length > 3 &&
  /^(?:now |please |then )*(?:take|put|look|hold|turn|pass|open|hand)\b/.test(textOf(items.slice(0, 4)));

const speaks = ({ kind, magnitude, colour, system }: Item): boolean =>
  kind === 'size' || magnitude !== undefined || colour !== undefined || system !== undefined;

/** A passage of nothing else. */
export const fillsWhole = ({ passage, sentences }: Read): boolean =>
  passage.text.length <= 60 && !passage.cell && passage.kind !== 'heading' && sentences.every(fills);
