/** The word of the other sign that can stand in a comparing word's place, in its degree and capitals. */

import type { Note, Span } from '../../notes/model.ts';
import { phrase, quote } from '../../texts/index.ts';
import { REPAIR } from '../texts/repairs.ts';
import {
  comparativeOf,
  type Degree,
  MAGNITUDES,
  type MagnitudeRow,
  superlativeOf,
} from '../words/magnitude.ts';
import type { Repair } from './model.ts';

const OPPOSITES = new Map<string, string>(
  Object.entries({
    more: 'less',
    less: 'more',
    most: 'least',
    least: 'most',
    up: 'down',
    down: 'up',
    climbs: 'falls',
    rises: 'falls',
    falls: 'rises',
    increases: 'decreases',
    decreases: 'increases',
    drops: 'rises',
    widens: 'narrows',
    narrows: 'widens',
    thickens: 'thins',
    thins: 'thickens',
    grows: 'shrinks',
    shrinks: 'grows',
    slows: 'quickens',
    quickens: 'slows',
    increase: 'decrease',
    decrease: 'increase',
    same: 'different',
  }),
);
OPPOSITES.delete('same');

const BY_WORD = new Map(MAGNITUDES.map((row) => [row.word, row]));
const formOf = (row: MagnitudeRow, degree: Degree): string =>
  degree === 'plain'
    ? row.word
    : degree === 'comparative'
      ? (row.comparative ?? comparativeOf(row.word))
      : (row.superlative ?? superlativeOf(row.word));

for (const row of MAGNITUDES)
  for (const degree of ['plain', 'comparative', 'superlative'] as const) {
    const other = BY_WORD.get(row.opposite);
    if (other && !OPPOSITES.has(formOf(row, degree)))
      OPPOSITES.set(formOf(row, degree), formOf(other, degree));
  }

/** An edit that swaps the word at `span`, when it is one word with a known opposite. */
export function swapEdit(note: Note, span: Span): Repair | undefined {
  const word = note.text.slice(span.start, span.end);
  const opposite = OPPOSITES.get(word.toLowerCase());
  if (!opposite || articleClash(note.text, span.start, opposite)) return undefined;
  const text = capitalised(word) ? opposite.charAt(0).toUpperCase() + opposite.slice(1) : opposite;
  return { title: phrase(REPAIR.word, { text: quote(text), word: quote(word) }), edit: { span, text } };
}

const capitalised = (word: string) => word.charAt(0) !== word.charAt(0).toLowerCase();

/** "a" and "an" would have to change too: then there is no one-word fix. */
function articleClash(text: string, start: number, word: string): boolean {
  const before = /\b(an?)\s+$/i.exec(text.slice(Math.max(0, start - 4), start))?.[1]?.toLowerCase();
  return before !== undefined && (before === 'an') !== /^[aeiou]/.test(word);
}
