/** "green → 14: 15. 18: 6.", "1 mm: 7. 3 mm: 4.": how many gave which answer, in a note of what people were asked. */
import type { Note, Passage } from '../../notes/model.ts';
import { lineAt } from '../text/lines.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';

/** No tally has longer lines. */
const LONGEST = 200;
/** Passages before and after that may say what is counted. */
const NEAR = 2;

export function tallied({ note, passage, sentence }: Scene): boolean {
  if (passage.cell) return false;
  const { start, end } = lineAt(passage, sentence.start);
  if (end - start > LONGEST) return false;
  const parts = passage.text.slice(start, end).split(/[.,;:](?=\s|$)/);
  if (parts.filter((part) => COUNT.test(part)).length < 2) return false;
  return countsPeople(note, passage);
}
/** "1 mm: 7" is cut at its colon. */
const COUNT = /^\s?(?:[^\d]{0,24}\s)?\d{1,3}\s?$/;

function countsPeople(note: Note, { index }: Passage): boolean {
  const around = note.passages.slice(Math.max(0, index - NEAR), index + NEAR + 1);
  return around.some(asks);
}
const asks = remembered(({ text }: Passage): boolean => PEOPLE.test(text.slice(0, 1200)));
const PEOPLE =
  /\b(?:asked|polled|surveyed|questioned|tested) \d{1,3} \w|\b\d{1,3} (?:said|answered|ticked|voted|replied|guessed)\b|\b(?:don't know|no idea|not sure|abstained|blank|no answer):? \d{1,2}\b/i;
