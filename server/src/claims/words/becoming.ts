/** What becomes of a thread, word by word: it goes by itself, or it stays until somebody takes it out. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { onlyHow } from './how-fast.ts';

interface Becomes {
  readonly stays: boolean;
  /** The words have a subject of their own: "nobody has to take it out", "the body clears it". */
  readonly free: boolean;
  /** Where the thread is to be looked for, when the words have a subject of their own: "which the body will have digested". */
  readonly from?: number;
}

const GOES =
  /^(?:dissolves?|dissolved|dissolving|absorbs?|absorbed|resorbs?|resorbed|hydroly[sz]e[sd]?|melts?|melted|vanish(?:es|ed)?|disappears?|disappeared|disintegrates?|degrades?|degraded|biodegrades?|biodegradable|degradable|digested|gone)$/;
/** With "away", "down", "off" or "out" behind them. */
const PARTS: ReadonlyMap<string, RegExp> = new Map([
  ...['goes', 'go', 'wastes', 'waste', 'fades', 'fade', 'melts', 'melt', 'going'].map(
    (word) => [word, /^away$/] as const,
  ),
  ...['breaks', 'break', 'broken', 'breaking'].map((word) => [word, /^down$/] as const),
  ...['drops', 'drop', 'falls', 'fall'].map((word) => [word, /^(?:off|out)$/] as const),
  ...['eaten', 'cleared', 'taken'].map((word) => [word, /^(?:away|up)$/] as const),
]);
const STAYS = /^(?:stays?|remains?|lasts?|persists?|there|kept|keeps?|carr(?:y|ies)|sits?|lies|lingers?)$/;
const FOR_GOOD =
  /\b(?:for (?:ever|good|life|the rest of|all time|the whole of|(?:his|her|its|their|the patient's|your|the animal's|the dog's) (?:whole )?life)|forever|permanently|indefinitely|as long as (?:he|she|the|they|you)|to the (?:end|grave)|until (?:you|we|somebody|someone|it is|they are|it's|a nurse|the nurse|the vet|the midwife) )/;
const BODY = /^(?:body|tissues?|enzymes?|macrophages?|cells?|mucosa|system|organism|gum|gums|wound|water)$/;
const CLEARS =
  /^(?:clears?|cleared|eats?|takes?|breaks?|broken|absorbs?|absorbed|digests?|digested|dissolves?|dissolved|removes?|destroys?|destroyed|disposes|gets|swallows?|resorbs?|consumes?|melts?)$/;
const OBJECT = /^(?:it|them|this|these|the)$/;
const NOT =
  /^(?:not|never|cannot|no|nothing|nobody|hardly|doesn't|don't|won't|isn't|aren't|can't|didn't|wouldn't|neither|nor|without)$/;
/** "silk absorbs water": something is taken in. */
const AFTER_ABSORBS =
  /^(?:[.,;:!)—–-]|and|but|so|in|within|over|by|after|slowly|completely|fully|quickly|on|from|itself|away|too|well|predictably|steadily|faster|sooner|like|through|with|eventually|gradually|which|because|since|if|when|at|soon|before|during|there|here|without|given)$/;

const NEAR = 5;

/** A word that may tell it, with what stands around it. */
interface Place {
  readonly items: readonly Item[];
  readonly at: number;
  readonly word: string;
  readonly next: string;
  readonly before: readonly Item[];
  /** Before it in its clause. */
  readonly near: readonly Item[];
  readonly denied: boolean;
}

/** Words that tell it; any other is passed over at a glance. */
const TELLS =
  /^(?:remov|taken$|take|come$|cut$|pulled|snipped|left$|remains?$|stay|last|persist|there$|kept$|keep|carr|sits?$|lies$|linger|disp|gets$|swallow|consum|destroy|clear|eat|go|waste|fade|melt|break|broke|drop|fall|dissol|absorb|resorb|hydrol|vanish|disap|disint|degrad|biodegr|digest)/;

/** What the word at `at` says becomes of a thread, with the negation before it. */
export function becomes(items: readonly Item[], at: number): Becomes | undefined {
  const { word, kind } = items[at]!;
  if (kind !== 'word' || !TELLS.test(word)) return undefined;
  const before = items.slice(Math.max(0, at - NEAR), at);
  const cut = before.findLastIndex((item) =>
    /^(?:[,;:(—–]|but|because|since|and|which|so|that)$/.test(item.word),
  );
  const near = before.slice(cut + 1);
  const denied = near.some((item) => NOT.test(item.word));
  const place = { items, at, word, next: items[at + 1]?.word ?? '.', before, near, denied };
  // "no need to book a removal", "without a removal visit".
  if (/^(?:removal|removing)$/.test(word)) return denied ? { stays: false, free: true } : undefined;
  if (denied && partly(place)) return undefined;
  return cleared(place) ?? gone(place) ?? left(place);
}

/** "not only", "does not dissolve quickly": it is not denied, or only how fast. */
function partly({ items, at, near }: Place): boolean {
  const behind = near[near.findIndex((item) => NOT.test(item.word)) + 1]?.word ?? '';
  if (/^(?:only|quite|all|always|yet)$/.test(behind)) return true;
  return onlyHow(joined(items, at + 1));
}

/** "the body clears it", "which the body will have digested". */
function cleared({ items, at, word, next, near, denied }: Place): Becomes | undefined {
  const body = near.findLastIndex((item) => BODY.test(item.word));
  if (body < 0 || !CLEARS.test(word)) return undefined;
  const from = Math.max(0, at - near.length + body - 2);
  const which = items.slice(from, from + 2).findLastIndex((item) => /^(?:which|that)$/.test(item.word));
  if (which >= 0) return { stays: denied, free: false, from: from + which + 1 };
  const thing = next !== 'the' || /^(?:thread|suture|stitch|strand|material)/.test(items[at + 2]?.word ?? '');
  return OBJECT.test(next) && thing ? { stays: denied, free: true } : undefined;
}

/** "dissolves", "goes away", "is gone by then". */
function gone({ items, at, word, next, denied }: Place): Becomes | undefined {
  const part = PARTS.get(word);
  const itself = word.startsWith('go') && next === 'by' && items[at + 2]?.word === 'itself';
  if (part) return part.test(next) || itself ? { stays: denied, free: false } : undefined;
  if (!GOES.test(word)) return undefined;
  if (/^(?:absorbs?|resorbs?|dissolves?|melts?)$/.test(word) && !AFTER_ABSORBS.test(next)) return undefined;
  return word === 'gone' && !AFTER_GONE.test(next) ? undefined : { stays: denied, free: false };
}
const AFTER_GONE = /^(?:[.,;!]|in|within|by|after|before|long|and|of|from|inside|completely|when|at)$/;

/** "has to come out", "nothing is left of it", "stays for good". */
function left({ items, at, word, next, before, near, denied }: Place): Becomes | undefined {
  if (removed(items, at, near)) return { stays: !denied, free: false };
  // "after six months nothing is left of a nylon stitch".
  const nothing = near.some((item) => /^(?:nothing|none|little|trace)$/.test(item.word));
  if (/^(?:left|remains?)$/.test(word) && next === 'of' && nothing) return { stays: false, free: true };
  // "one that stays": for good.
  const relative = /^(?:that|which)$/.test(before.at(-1)?.word ?? '');
  if (/^(?:stays?|remains?)$/.test(word) && relative && /^[.,;)]$/.test(next))
    return { stays: true, free: false };
  if (!STAYS.test(word) || denied) return undefined;
  const after = items.slice(at + 1, at + 9).map((item) => item.word);
  const stop = after.findIndex((one) => /^(?:[.;,]|and|but|knot)$/.test(one));
  const text = `${(stop < 0 ? after : after.slice(0, stop)).join(' ')} `;
  return FOR_GOOD.test(text) ? { stays: true, free: false } : undefined;
}

/** "has to come out", "must be removed", "need not be taken out". */
function removed(items: readonly Item[], at: number, near: readonly Item[]): boolean {
  const must = near.some((item) => /^(?:has|have|needs?|must|ought)$/.test(item.word));
  const { word } = items[at]!;
  const next = items[at + 1]?.word ?? '';
  return must && (word === 'removed' || (/^(?:come|taken|cut|pulled|snipped)$/.test(word) && next === 'out'));
}
