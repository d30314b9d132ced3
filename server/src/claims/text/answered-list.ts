/**
 * A list below a question that is its answer: "Which way do the numbers run?", and then a line for gauge, one for French,
 * one for tubes. Choices are short and stand alone; an answer explains itself in more than one sentence somewhere.
 */
import type { Note, Passage } from '../../notes/model.ts';
import { TEST_HEADING } from '../words/frames.ts';

/** Asks to choose or to judge, or asks for what somebody said: what follows is not the author's answer. */
const CHOICE =
  /\bwhich\b(?! way\b)|\b(?:true|false|right|wrong|correct|incorrect|best|odd|myths?|mistakes?|errors?|spot|find|pick|choose|tick|select|mark|match|say|says|said|think|thinks|thought|believe|hear|heard|write|wrote|answered|claims?|one|statements?|options?|following|these|those)\b/i;

/** What a test has besides the parts with a heading of that kind. */
const MORE_TESTS = /\b(?:quizzes|exams|papers?|assessments|q ?\d+|exercises?|marking)\b/i;

const LABELLED = /^\W*(?:[A-Ea-e]|\d{1,2}|[ivx]{1,4})[).:]\s/;

/** A sentence ends, another begins and ends. */
const TWO_SENTENCES = /[a-z0-9)%]\.\s+["“(]?[A-Z0-9][^.?!]{6,}\.\W*$/;

/** Items looked at on either side. */
const REACH = 8;

/**
 * Does the list that `passage` is an item of answer the question it stands under? `question` is the heading or lead-in that
 * asks. False for lettered, numbered or ticked items, in tests, and below a question to choose or to judge.
 */
export function answersItself(note: Note, passage: Passage, question: string | undefined): boolean {
  const { list, path, index } = passage;
  if (!list || question === undefined || list.ordered || list.checked !== undefined || CHOICE.test(question))
    return false;
  const heads = path.map((heading) => note.passages[heading]?.text ?? '');
  if (heads.some((head) => TEST_HEADING.test(head) || MORE_TESTS.test(head))) return false;
  const near = note.passages.slice(Math.max(0, index - REACH), index + REACH + 1);
  const items = near.filter((other) => other.list?.list === list.list);
  return (
    items.some(({ text }) => TWO_SENTENCES.test(text)) &&
    !items.some(({ text }) => LABELLED.test(text) || /\?\W*$/.test(text))
  );
}
