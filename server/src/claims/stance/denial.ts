/** Negations and hedges that reach a claim, clause by clause. */
import type { Reading } from '../constructions/model.ts';
import type { Claim, Stance } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { CONDITIONS, HEDGES, NEGATIONS } from '../words/changes.ts';
import { onlyHow } from '../words/how-fast.ts';

/** A negation on the comparing word denies; one anywhere else in the clause leaves the claim open. */
export function negated(scene: Scene, reading: Reading): Stance | undefined {
  const { items } = scene;
  const { at } = reading;
  const near = items.slice(Math.max(0, at - 3), at);
  const cut = near.findLastIndex((item) => item.kind === 'punctuation' && item.word !== "'");
  const close = near.slice(cut + 1).filter((item) => item.kind !== 'size');
  const direct = close.findIndex((item) => DIRECT.has(item.word));
  if (direct >= 0 && close.slice(direct + 1).every((item) => ADVERBS.has(item.word) || DEGREE.has(item.word)))
    return inPart(items, close.slice(direct), reading) ? 'hedged' : 'denied';
  if (FAR_FROM.test(close.map((item) => item.word).join(' '))) return 'denied';
  if (plainly(items, reading)) return 'denied';
  const start = clauseFrom(items, at);
  const open = items
    .slice(start, at + 1)
    .some(
      (item, i) =>
        NEGATIONS.has(item.word) && !LOOSE.has(item.word) && !REMINDS.has(items[start + i + 1]?.word ?? ''),
    );
  return open ? 'hedged' : undefined;
}

/**
 * "The French number isn't three times the diameter", "silk doesn't count as braided": one short clause, its verb denied,
 * with nothing that denies only a part of it and nothing that puts another thing in its place.
 */
function plainly(items: readonly Item[], reading: Reading): boolean {
  const { from, at, claim } = reading;
  if (!WHOLLY.has(claim.kind)) return false;
  const [no, ...more] = items.flatMap(({ word }, i) => (NEGATIONS.has(word) ? [i] : []));
  if (no === undefined || more.length > 0 || items.length > LONGEST_DENIAL) return false;
  const split = items[no]!.word === 'not' && /^(?:is|are|does|do)$/.test(items[no - 1]?.word ?? '');
  if (!split && !/^(?:isn't|aren't|doesn't|don't)$/.test(items[no]!.word)) return false;
  if (no === 0 || no > at || from > at) return false;
  if (claim.kind === 'property' && !bareProperty(items, no, reading)) return false;
  return !items.some(
    (item, i) =>
      i !== no && !(item.word === 'as' && asOfClaim(items, i, claim)) && opensDenial(item, i, items),
  );
}
/** What can be said of a thing in one breath, and denied as a whole. */
const WHOLLY: ReadonlySet<Claim['kind']> = new Set(['comparison', 'property', 'formula', 'direction']);

/** "isn't absorbed quickly" leaves the absorbing: nothing may stand beside the property. */
const bareProperty = (items: readonly Item[], no: number, { at, to }: Reading): boolean =>
  items
    .slice(no + 1, at)
    .every(({ word }) => /^(?:an?|the|counts?|as|classed|considered|regarded)$/.test(word)) &&
  items
    .slice(Math.max(at, to) + 1)
    .every(
      ({ kind, deviceNoun, word }) =>
        kind === 'punctuation' || deviceNoun || /^(?:materials?|kind|type)$/.test(word),
    );

/** "doesn't go down as the needle gets thicker", "doesn't count as braided": the word belongs to the claim. */
const asOfClaim = (items: readonly Item[], i: number, { kind }: Claim): boolean =>
  kind === 'direction' || /^(?:counts?|classed|considered|regarded)$/.test(items[i - 1]?.word ?? '');
const LONGEST_DENIAL = 18;

/** A second clause, a part, a ground, a turn: then it is not the whole that is denied. */
const opensDenial = (item: Item, i: number, items: readonly Item[]): boolean =>
  item.kind === 'punctuation' ? !(item.word === '.' && i === items.length - 1) : PARTLY.test(item.word);
const PARTLY =
  /^(?:inch|inches|centimet(?:re|er)s|cm|colou?r|if|when|whenever|unless|that|whether|who|which|why|what|where|because|since|as|but|or|and|instead|rather|only|just|simply|merely|always|necessarily|quite|exactly|all|every|everyone|everywhere|usually|often|really|entirely|strictly|precisely|much|very|too|so|for|by|due|although|though|except|yet|than|alone|even|by|itself|enough|sure|certain|clear|know|think|believe|say|says|like|mind|matter|care|need|want|have|has|let|forget|until|before|after|you|we|they|i|us|me)$/;

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
  'a an the any actually ever even make makes get gets be become becomes flow flows run runs mean means go goes give gives'.split(
    ' ',
  ),
);
/** "isn't much wider", "not necessarily faster": wider it may be. */
const DEGREE = new Set('way much far really necessarily always'.split(' '));

/** Only how much, how fast or how often is denied. */
function inPart(items: readonly Item[], between: readonly Item[], { at, claim }: Reading): boolean {
  // "in no way narrower" is denied outright.
  const outright = between[0]?.word === 'no' && between[1]?.word === 'way';
  if (!outright && between.some(({ word }) => DEGREE.has(word))) return true;
  // "is not absorbed right away" is absorbed in time; "is not twice as wide" is wider.
  if (claim.kind === 'property') return onlyHow(joined(items, at + 1));
  if (claim.kind !== 'comparison') return false;
  const after = items.slice(at + 1, at + 10).map(({ word }) => word);
  return (
    claim.construction === 'ratio' || / by (?:much|a lot|far|a great deal)\b/.test(` ${after.join(' ')}`)
  );
}

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
      !(item.word === 'some' && numberAt(items[start + i + 1])),
  );
}

const numberAt = (item: Item | undefined): boolean => item?.kind === 'size' || /^\d/.test(item?.word ?? '');

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
