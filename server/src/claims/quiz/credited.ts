/**
 * Marking instructions that say in prose what earns the mark: "Accept green for a 20 G cannula", "Candidates who put the 22 G down as
 * pink should be credited", "One mark for saying that a 5-0 is finer than a 3-0". What is credited is asserted.
 */
import type { Claim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';
import { NEGATIONS } from '../words/changes.ts';
import { leaning } from './carried.ts';
import { type Desk, type KeyReading, mark, onKey, readAs, sceneOf, spanOf } from './desk.ts';
import { loosely } from './loose/index.ts';
import { type Piece, piece } from './piece.ts';
import { AGREED_TO } from './yes.ts';

const LONGEST = 40;
const CREDITS =
  /\b(?:credit(?:ed|s)?|accept(?:ed|s)?|award(?:ed|s)?|allow(?:ed)?|(?:one|two|three|full|the|a|\d) (?:marks?|points?)|^\W*(?:marks?|points?) for|marked (?:right|correct))\b/;
/** What each of these begins with, or turns on. */
const MAY_CREDIT = /credit|accept|award|allow|mark|point/i;
/** What earns nothing, or not always. */
const OTHERWISE =
  /\b(?:(?:no|0|zero) (?:marks?|credit|points?)|half|if|when|notic\w+|spot\w*|slides?|books?|posters?|colleagues?|told|lost|lose|loses|minus|deduct\w*|withh\w+|few|fewer|reject|wrong|incorrect|unless|or|either|nothing|zero|pass mark|out of|each|per|mistake|tempting|common)\b|n't\b/;
/** "−1 mark for 9 mm". */
const LOSES = /[-−–]\s?\d/;
/** Behind it stands what was said. */
const SAYS =
  /^(?:says?|said|saying|writes?|wrote|writing|puts?|putting|answers?|answered|answering|gives?|gave|chose|chooses?)$/;
const ACCEPTS = /^(?:accept|allow|credit|award)$/;
/** What is done with it again, behind it. */
const TAIL = /^(?:should|must|may|can|is|are|gets?|earns?|receives?|deserves?|has|have|will|to)$/;
const SMALL = /^(?:that|the answer|:|,|;|"|“|”|\(|\)|'|also|down|both)$/;

export function credited(desk: Desk, read: Read): KeyReading[] {
  const { text } = read.passage;
  if (!MAY_CREDIT.test(text) || !CREDITS.test(text.toLowerCase())) return [];
  return read.sentences.flatMap((sentence, i) => creditedIn(desk, read, sentence, read.sentences[i - 1]));
}

function creditedIn(desk: Desk, read: Read, sentence: Sentence, before: Sentence | undefined): KeyReading[] {
  const { items } = sentence;
  const text = textOf(items);
  if (LOSES.test(read.passage.text.slice(Math.max(0, sentence.start - 2), sentence.start + 4))) return [];
  if (items.length > LONGEST || sentence.close === '?' || !CREDITS.test(text) || OTHERWISE.test(text))
    return [];
  if (items.some(({ word }) => NEGATIONS.has(word) && !/^non/.test(word))) return [];
  const body = bodyOf(items);
  const scene = sceneOf(desk, piece(read, sentence.start, sentence.end));
  if (body.length === 0 || !scene) return [];
  const whole = pieceOf(read, body);
  const [claim] = readAs(scene, body).filter(({ kind }) => AGREED_TO.has(kind));
  if (claim) return [{ claim: onKey(claim, spanOf(whole), spanOf(whole)), stance: 'asserted' }];
  return paired(desk, read, body) ?? ofBefore(desk, read, whole, before);
}

/** What was said: behind the verb of saying, else behind the verb of crediting, without what is done with it. */
function bodyOf(items: readonly Item[]): readonly Item[] {
  const says = items.findIndex(({ word }) => SAYS.test(word));
  const accepts = items.slice(0, 3).findIndex(({ word }) => ACCEPTS.test(word));
  const from = says >= 0 ? says : accepts >= 0 ? accepts : earning(items);
  if (from < 0) return [];
  const rest = items.slice(from + 1);
  const tail = rest.findIndex(
    ({ word }, i) => TAIL.test(word) && CREDITS.test(textOf(rest.slice(i, i + 5))) && i > 0,
  );
  const stop = rest.findIndex(({ word }) => /^[.;]$/.test(word));
  const ends = [tail, stop].filter((at) => at >= 0);
  const body = rest.slice(0, ends.length > 0 ? Math.min(...ends) : rest.length);
  const first = body.findIndex(({ word }) => !SMALL.test(word));
  return first < 0 ? [] : body.slice(first).filter(({ word }) => !/^["“”]$/.test(word));
}

/** "2 marks for 9 mm", "You get the point for \"orange\"": behind "for" stands what earns it. */
const earning = (items: readonly Item[]): number =>
  items
    .slice(0, 8)
    .findIndex(({ word }, i) => word === 'for' && /^(?:marks?|points?)$/.test(items[i - 1]?.word ?? ''));

const pieceOf = (read: Read, items: readonly Item[]): Piece => ({
  read,
  span: { start: items[0]!.start, end: items.at(-1)!.end },
  items,
});

/** "green for a 20 G cannula", "the 22 G down as pink": what was asked, and what was said to it. */
function paired(desk: Desk, read: Read, body: readonly Item[]): KeyReading[] | undefined {
  const at = body.findIndex(({ word }) => word === 'for' || word === 'as');
  if (at <= 0 || at === body.length - 1) return undefined;
  const [left, right] = [body.slice(0, at).filter(({ word }) => word !== 'down'), body.slice(at + 1)];
  const [asked, said] = body[at]!.word === 'for' ? [right, left] : [left, right];
  return asked.length === 0 || said.length === 0
    ? undefined
    : told(desk, pieceOf(read, asked), pieceOf(read, said));
}

/** "Question 4 asked the width of an 18 Fr catheter. Award the mark to anyone who wrote 9 mm." */
function ofBefore(desk: Desk, read: Read, said: Piece, before: Sentence | undefined): KeyReading[] {
  if (!before || said.items.length > 4) return [];
  const asked = piece(read, before.start, before.end);
  return told(desk, leaning(desk, asked) ?? asked, said);
}

const told = (desk: Desk, asked: Piece, said: Piece): KeyReading[] =>
  loosely({ ...asked, items: [mark('what'), ...asked.items] }, said, [], spanOf(said), desk).filter(
    ({ claim }) => KINDS.has(claim.kind),
  );
const KINDS: ReadonlySet<Claim['kind']> = new Set(['colour', 'equivalence', 'comparison', 'property']);
