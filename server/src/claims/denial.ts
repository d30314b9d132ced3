/** Negations and hedges that reach a claim, clause by clause. */
import type { Reading } from './constructions/model.ts';
import type { Stance } from './model.ts';
import type { Item } from './text/items.ts';
import type { Scene } from './text/scene.ts';
import { CONDITIONS, HEDGES, NEGATIONS } from './words/changes.ts';

/** A negation on the comparing word denies; one anywhere else in the clause leaves the claim open. */
export function negated(scene: Scene, { at }: Reading): Stance | undefined {
  const { items } = scene;
  const near = items.slice(Math.max(0, at - 3), at);
  const cut = near.findLastIndex((item) => item.kind === 'punctuation' && item.word !== "'");
  const close = near.slice(cut + 1).filter((item) => item.kind !== 'size');
  const direct = close.findIndex((item) => DIRECT.has(item.word));
  if (direct >= 0 && close.slice(direct + 1).every((item) => ADVERBS.has(item.word))) return 'denied';
  if (FAR_FROM.test(close.map((item) => item.word).join(' '))) return 'denied';
  const start = clauseFrom(items, at);
  const open = items
    .slice(start, at + 1)
    .some(
      (item, i) =>
        NEGATIONS.has(item.word) && !LOOSE.has(item.word) && !REMINDS.has(items[start + i + 1]?.word ?? ''),
    );
  return open ? 'hedged' : undefined;
}

/** "anything but narrower". */
const FAR_FROM = /\b(?:anything but|nowhere near|a long way from|by no means)(?: any)?$/;

/** "Don't forget that", "no doubt": a negation that stresses what follows. */
const REMINDS = new Set('matter forget overlook doubt wonder surprise panic worry fret neglect'.split(' '));

const DIRECT = new Set([
  "isn't",
  "aren't",
  'not',
  'no',
  'never',
  "wasn't",
  "doesn't",
  "don't",
  "won't",
  'nor',
  'cannot',
  "can't",
]);
const ADVERBS = new Set(
  'way a an the any actually really necessarily always ever even much make makes get gets be become becomes flow flows run runs mean means go goes give gives'.split(
    ' ',
  ),
);
/** Negations that seldom reach the size: "without a second trip". */
const LOOSE = new Set(['without', 'none']);
const CLAUSE_MARKS = new Set([
  'which',
  'where',
  ';',
  ':',
  '—',
  '.',
  '!',
  '(',
  'but',
  'because',
  'since',
  'so',
]);

function clauseFrom(items: readonly Item[], at: number): number {
  for (let i = at - 1; i >= 0; i--) {
    if (CLAUSE_MARKS.has(items[i]!.word) || resumes(items, i) || grounds(items, i))
      return asideTo(items, i + 1, at);
    if (items[i]!.word === ',' && closesCondition(items, i)) return i + 1;
  }
  return 0;
}

/** "The orange one, which you will hardly ever open, is a 22 G": past an aside that closes before the claim goes on. */
function asideTo(items: readonly Item[], from: number, at: number): number {
  if (!/^(?:which|who|where)$/.test(items[from - 1]!.word) || items[from - 2]?.word !== ',') return from;
  const closes = items.findIndex((item, i) => i >= from && i < at && item.word === ',');
  return closes > 0 && GOES_ON.test(items[closes + 1]?.word ?? '') ? closes + 1 : from;
}
const GOES_ON = /^(?:is|are|was|has|have|means|measures?|runs?|comes?|goes|gives?|takes?|holds?|stands?)$/;

/** "need not be taken out, for it is absorbed": the ground is a clause of its own. */
const grounds = (items: readonly Item[], i: number) =>
  items[i]!.word === 'for' &&
  items[i - 1]?.word === ',' &&
  /^(?:it|they|this|that|these)$/.test(items[i + 1]?.word ?? '');

/** "You may see a 20 G, and that sits …": a pronoun takes up what was said, in a clause of its own. */
const resumes = (items: readonly Item[], i: number) =>
  items[i]!.word === 'and' &&
  items[i - 1]?.word === ',' &&
  /^(?:that|this|it)$/.test(items[i + 1]?.word ?? '') &&
  /^(?:is|also|lies|sits|falls|comes|counts|includes|covers|will|slips|goes|passes|fits)$/.test(
    items[i + 2]?.word ?? '',
  );

/** "If a 12 Fr will not pass, …": the comma ends the condition that opened the sentence. */
function closesCondition(items: readonly Item[], comma: number): boolean {
  const opener = items
    .slice(0, 3)
    .findIndex((item) => CONDITIONS.has(item.word) || item.word === 'when' || item.word === 'once');
  return opener >= 0 && opener < comma && !items.slice(opener, comma).some((item) => item.word === ',');
}

export function hedged(scene: Scene, { at }: Reading): boolean {
  const start = clauseFrom(scene.items, at);
  const { items } = scene;
  return items.slice(start, at + 1).some(
    (item, i) =>
      HEDGES.has(item.word) &&
      !(item.word === 'may' && item.capital) &&
      !wanting(items, start + i) &&
      // "some 12 mm wide": about as much, said of a number.
      !(item.word === 'some' && items[start + i + 1]?.kind === 'size'),
  );
}

const PEOPLE =
  /^(?:you|we|they|who|anyone|students?|trainees?|nurses?|juniors?|registrars?|learners?|staff|doctors?|midwives|paramedics?)$/;

/** "you may want to go up to": advice, said kindly. */
const wanting = (items: readonly Item[], i: number): boolean => {
  const next = items[i + 1]?.word ?? '';
  if (items[i]!.word !== 'may') return false;
  if (/^(?:want|wish|need|have|like|as)$/.test(next)) return true;
  // "students may take the next one thicker": leave is given, to people.
  const people = items.slice(Math.max(0, i - 8), i).some(({ word }) => PEOPLE.test(word));
  return people && /^(?:take|use|try|open|choose|pick|swap|go|pass|put|insert)$/.test(next);
};
