/** A dialogue in which the next speaker says it better: "C: 20, it's larger.", "E: 14 is larger."; "A: A 12 is 3 mm.", "B: Four." */
import { finds, firstMatch } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import { joined } from '../text/joined.ts';
import { lineAt } from '../text/lines.ts';
import type { Scene } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';

/** Longest answer of the one who knows better. */
const LONGEST = 9;

export function retold(scene: Scene): boolean {
  const next = scene.after[0] ?? scene.next;
  if (numberBelow(scene)) return true;
  if (!next || next.items.length > LONGEST || !speaks(next) || !speaks(scene.sentence)) return false;
  if (next.close === '?' || next.items[0]!.word === scene.sentence.items[0]!.word) return false;
  if (otherNumber(scene.sentence, next)) return true;
  const said = new Set(
    scene.items.filter((item) => item.magnitude?.degree === 'comparative').map((item) => item.word),
  );
  const own = new Set(sizesOf(scene.sentence));
  const other = sizesOf(next);
  return other.length === 1 && !own.has(other[0]!) && next.items.some((item) => said.has(item.word));
}

/** "me: 24 mm" and below it "today: 8 mm.": what somebody held once, with what holds on the next line. */
export function outgrown({ items, passage }: Scene, { at }: Reading): boolean {
  const place = items[at]?.start;
  if (place === undefined) return false;
  const { end } = lineAt(passage, place);
  return finds(NOWADAYS, passage.text.slice(end, end + 24));
}
const NOWADAYS =
  /^\n\W{0,4}(?:today|now|nowadays|correct(?:ed|ion)?|actually|really|in fact|should be|right answer|better|truth)\W{0,3}:/i;

/** The next speaker answers with a number and no more, and it is none of those just said. */
function otherNumber({ items }: Sentence, next: Sentence): boolean {
  const [, given] = firstMatch(NUMBER, joined(next.items, 2)) ?? [];
  return given !== undefined && !items.some(({ word }) => word === given);
}
/** "Voice 1. Green, twenty." and below it "Voice 2. Eighteen.", or "Eighteen, thank you." */
function numberBelow({ note, passage, sentence: { items, start, end } }: Scene): boolean {
  if (passage.cell || end - start > SHORT || passage.text.slice(end).trim() !== '') return false;
  const below = note.passages[passage.index + 1];
  if (!below || below.cell || below.kind === 'heading') return false;
  // "- 12 Ch", "- 14 Ch": a list of sizes is no talk.
  if (
    passage.list &&
    [passage, below].every(({ list, text }) => list?.list === passage.list?.list && LISTED.test(text))
  )
    return false;
  const [, given] =
    firstMatch(NUMBER, below.text.slice(0, SHORT).replace(SPEAKER, '').trim().toLowerCase()) ?? [];
  return given !== undefined && !items.some(({ word, mention }) => word === given || mention?.text === given);
}
const LISTED = /^(?:\d{1,2}(?:[.,]\d)?-?0?|0) ?(?:mm|fr|ch|g|french|gauge|charri[eè]re)?$/i;
const SHORT = 60;
/** Who speaks: "Voice 2.", "B:", "Tutor –". */
const SPEAKER = /^\W*\p{Lu}[\p{L}]*(?: ?\d{1,2})?\s?[.:–—]\s/u;
const NUMBER =
  /^(?:(?:no|nope|er|well|sorry|actually) ?,? ?)?(\d+(?:\.\d+)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty)(?: (?:mm|millimetres|fr|french|ch|g|gauge))?(?: ?[.!]+| ?, (?:thank you|please|i said|actually|no)\W*)?$/;

const speaks = ({ items }: Sentence): boolean => items[0]?.capital === true && items[1]?.word === ':';

const sizesOf = ({ items }: Sentence): string[] =>
  items.filter((item) => item.kind === 'size').map((item) => String(item.mention?.sizes[0]?.value));
