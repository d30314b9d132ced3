/** "Who is right? Tom: “A 20 G is wider than an 18 G.” Mia: “It is narrower.” Answer: Tom.": what the one who is right says is asserted. */

import { matchesOf } from '../../notes/index.ts';
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';
import { type Desk, type KeyReading, onKey, readAs, sceneOf, spanOf } from './desk.ts';
import { type Piece, piece } from './piece.ts';
import { AGREED_TO } from './yes.ts';

/** Passages that may belong to one such question. */
const FAR = 5;
const WHO =
  /\b(?:who|whom|which)(?: (?:of them|one|student|nurse|doctor|of the (?:two|three|four)))? (?:is|was|has it|got it) (?:right|correct)\b|\bwho (?:do you )?(?:agrees? with|would you believe)\b/i;
const NAME = '\\p{Lu}[\\p{L}.]{0,14}(?: [A-D1-4]\\b)?';
const SAYS = new RegExp(
  `(?<=^|[.!?”"\\n]\\s{0,3})["“]?(${NAME})(?:: ?["“]?| (?:says|said|thinks|claims|argues|believes|maintains|writes|wrote)(?: that)?[,:]? ?["“]?)(?=\\S)`,
  'gu',
);
const LONGEST_KEY = 8;
const DENIES = /\b(?:not|neither|both|nobody|wrong|none|either|or|and|isn't|mistaken)\b/;

interface Said {
  readonly name: string;
  readonly piece: Piece;
}

export function arbitrated(desk: Desk, read: Read): KeyReading[] {
  const { passage } = read;
  if (passage.cell || !finds(WHO, passage.text)) return [];
  const { reads } = desk;
  const near = [read];
  for (let i = passage.index + 1; i <= passage.index + FAR; i++) {
    const next = reads[i];
    if (!next || next.passage.cell || next.passage.kind === 'heading' || finds(WHO, next.passage.text)) break;
    near.push(next);
  }
  for (let i = passage.index - 1; i >= 0 && i >= passage.index - 2; i--) {
    const before = reads[i]!;
    if (before.passage.cell || before.passage.kind === 'heading' || finds(WHO, before.passage.text)) break;
    near.unshift(before);
  }
  const said = near.flatMap(sayings);
  const names = new Set(said.map(({ name }) => name));
  if (names.size < 2 || names.size < said.length) return [];
  const key = keyIn(near, read, said);
  const right = key && said.find(({ name }) => name === key.name);
  return right ? asserted(desk, right, key.at) : [];
}

/** Each speaker's words, up to the next speaker or the end of the sentence. */
function sayings(read: Read): Said[] {
  const { text } = read.passage;
  if (text.length > 900) return [];
  return matchesOf(text, SAYS).flatMap((match): Said[] => {
    const start = match.index + match[0].length;
    const sentence = read.sentences.find((one) => one.start <= match.index && match.index < one.end);
    const end = sentence ? Math.max(sentence.end, start) : start;
    const own = piece(read, start, end);
    const speaks = own.items.some(({ kind, magnitude, colour }) => kind === 'size' || magnitude || colour);
    return speaks && !LABELS.test(match[1]!) ? [{ name: match[1]!.toLowerCase(), piece: own }] : [];
  });
}
const LABELS = /^(?:answer|key|solution|hint|note|who|which|question|say|task|a|q)$/i;

/** "→ Ben is right.", "Answer: Tom.", "Lee.": one short sentence that names one of them, behind all that they say. */
function keyIn(
  near: readonly Read[],
  asked: Read,
  said: readonly Said[],
): { name: string; at: Piece } | undefined {
  const last = said.at(-1)!.piece;
  for (const read of near.slice(near.indexOf(asked)))
    for (const sentence of read.sentences) {
      if (read.passage.index < last.read.passage.index) continue;
      if (read === last.read && sentence.start < last.span.end) continue;
      const name = namedIn(sentence, said);
      if (name) return { name, at: piece(read, sentence.start, sentence.end) };
    }
  return undefined;
}

function namedIn({ items, close }: Sentence, said: readonly Said[]): string | undefined {
  const text = textOf(items);
  if (close === '?' || items.length > LONGEST_KEY || DENIES.test(text)) return undefined;
  const names = said.filter(({ name }) => ` ${text} `.includes(` ${name} `));
  const rest = items.filter(
    ({ word, kind }) => kind !== 'punctuation' && !names.some(({ name }) => name === word),
  );
  return names.length === 1 && rest.every(plain) ? names[0]!.name : undefined;
}
const plain = ({ word }: Item): boolean =>
  /^(?:is|was|right|correct|the|answer|key|solution|it|it's|of|course|has|got|wins?|here|→|ans)$/.test(word);

function asserted(desk: Desk, { piece: own }: Said, at: Piece): KeyReading[] {
  const scene = sceneOf(desk, own);
  const items = own.items.filter(({ word }) => !/^["“”]$/.test(word));
  if (!scene) return [];
  return readAs(scene, items)
    .filter(({ kind }) => AGREED_TO.has(kind))
    .slice(0, 2)
    .map((claim) => ({ claim: onKey(claim, spanOf(at), spanOf(own)), stance: 'asserted' }));
}
