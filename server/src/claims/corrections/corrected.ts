/**
 * A sentence as an erratum leaves it: "for "thicker than 5-0" read "thinner than 5-0"", "after "24 Fr" insert "which is 12 mm
 * across"", "in "a 16 G is wider than a 20 G" change "wider" to "narrower"". The words given in quotation marks are put
 * where the erratum wants them, and the whole is read like any other sentence.
 */
import type { Item } from '../text/items.ts';
import { materialsIn } from '../text/materials.ts';
import { PROPERTY_WORDS } from '../words/properties.ts';

/** Items between quotation marks, without the marks. */
interface Quoted {
  readonly from: number;
  readonly to: number;
  readonly items: readonly Item[];
  /** The word before the opening mark. */
  readonly before: string;
}

const OPEN = /^["“‘«]$/;
const CLOSE = /^["”’»]$/;

/** Nobody corrects more at once. */
const LONGEST = 60;

/** The mended sentence; undefined where none is built and what holds stands by itself. `earlier`: the sentence before. */
export function corrected(items: readonly Item[], earlier: readonly Item[]): readonly Item[] | undefined {
  if (items.length > LONGEST) return undefined;
  const marked = quotedIn(items);
  const quoted = [...marked, ...unmarked(items, marked)];
  const outside = items.filter((_, i) => !quoted.some(({ from, to }) => i >= from && i <= to));
  return (
    inserted(quoted, outside) ??
    alone(quoted, outside) ??
    moved(items, quoted, earlier) ??
    exchanged(quoted, outside) ??
    (quoted.length === 0 ? plainly(items) : undefined)
  );
}

/** "The colour of the 20 G cannula should be pink, not blue": no marks, and the word that was struck left out. */
function plainly(items: readonly Item[]): readonly Item[] | undefined {
  const should = items.findIndex(
    (item, i) => item.word === 'should' && /^(?:be|read)$/.test(items[i + 1]?.word ?? ''),
  );
  const given = items.slice(should + 2);
  const stop = given.findIndex((item) => /^[,.;(]$/.test(item.word));
  const told = trimmed(stop < 0 ? given : given.slice(0, stop));
  const colonAt = items.findIndex((item) => item.word === ':');
  const before = items.slice(colonAt > 0 && colonAt < should ? colonAt + 1 : 0, Math.max(0, should));
  const kind = told[0] && kindOf(told[0]);
  if (should < 1 || kind === undefined || kind === 'compared' || told.length > 3) return undefined;
  return replaced(before, told) ?? (subjectIn(before) && [...before, is, ...told]);
}

function quotedIn(items: readonly Item[]): Quoted[] {
  const found: Quoted[] = [];
  for (let i = 0; i < items.length; i++) {
    if (!OPEN.test(items[i]!.word)) continue;
    const close = items.findIndex((item, at) => at > i && CLOSE.test(item.word));
    if (close < 0) break;
    const inner = trimmed(items.slice(i + 1, close));
    if (inner.length > 0) found.push({ from: i, to: close, items: inner, before: items[i - 1]?.word ?? '' });
    i = close;
  }
  return found;
}

/** "For green read blue", without quotation marks: from the word to the next mark. */
function unmarked(items: readonly Item[], marked: readonly Quoted[]): Quoted[] {
  const free = (at: number) => !marked.some(({ from, to }) => at >= from && at <= to);
  const start = items.findIndex(
    (item, i) => item.word === 'for' && free(i) && !OPEN.test(items[i + 1]?.word ?? ''),
  );
  const read = items.findIndex((item, i) => i > start && item.word === 'read' && free(i));
  if (start < 0 || read < start + 2 || read > start + 8 || OPEN.test(items[read + 1]?.word ?? '')) return [];
  const stop = items.findIndex((item, i) => i > read && (/^[,.;(]$/.test(item.word) || ENDS.test(item.word)));
  const end = stop < 0 ? items.length : stop;
  const part = (from: number, to: number, before: string): Quoted => ({
    from,
    to: to - 1,
    items: items.slice(from, to),
    before,
  });
  return end > read + 1 ? [part(start + 1, read, 'for'), part(read + 1, end, 'read')] : [];
}
const ENDS = /^(?:as|in|on|at|under|below|above)$/;

/** Without a stop at the end, or brackets around it. */
const trimmed = (items: readonly Item[]): readonly Item[] =>
  items.filter(
    (item, i) => !/^[()]$/.test(item.word) && !(i === items.length - 1 && /^[.,;]$/.test(item.word)),
  );

const INSERTS = /^(?:insert|add|append|inserted|added)$/;

/** "After X insert Y", "insert Y after X". */
function inserted(quoted: readonly Quoted[], outside: readonly Item[]): readonly Item[] | undefined {
  const anchor = quoted.find(({ before }) => before === 'after');
  const added = quoted.find(({ before }) => INSERTS.test(before));
  if (!anchor || !added || outside.some((item) => item.kind === 'size')) return undefined;
  const own = /^(?:which|that|and)$/.test(added.items[0]!.word) ? added.items.slice(1) : added.items;
  const verb = /^(?:is|are|measures|has|have)$/.test(own[0]?.word ?? '');
  return [...anchor.items, ...(verb ? [] : [colon]), ...own];
}

/** "Insert "silk is braided".": nothing else is said. */
const alone = ([only, ...more]: readonly Quoted[], outside: readonly Item[]): readonly Item[] | undefined =>
  only && more.length === 0 && ALONE.test(only.before) && !outside.some((item) => item.kind === 'size')
    ? only.items
    : undefined;
const ALONE = /^(?:insert|add|write|substitute)$/;

const MOVES = /^(?:move|moved|transfer|shift)$/;

/** "Move polyglactin 910 from "braided" to "monofilament"", "It is listed under "braided". Please move it to "…"". */
function moved(
  items: readonly Item[],
  quoted: readonly Quoted[],
  earlier: readonly Item[],
): readonly Item[] | undefined {
  const goal = quoted.find(({ before }) => /^(?:to|under|into|with)$/.test(before));
  const verb = items.findIndex((item) => MOVES.test(item.word));
  if (verb < 0 || !goal || !goal.items.some((item) => PROPERTY_WORDS.has(item.word) || item.colour))
    return undefined;
  const subject =
    subjectIn(items.slice(verb)) ?? (items[verb + 1]?.word === 'it' ? subjectIn(earlier) : undefined);
  return subject && [...subject, is, ...goal.items];
}

/** The one material or size that is spoken of. */
function subjectIn(items: readonly Item[]): readonly Item[] | undefined {
  const named = materialsIn(items);
  if (named.length === 1) return items.slice(named[0]!.at, named[0]!.to + 1);
  const sizes = items.filter((item) => item.kind === 'size');
  return named.length === 0 && sizes.length === 1 ? sizes : undefined;
}

const STRIKES =
  /^(?:for|change|changed|replace|replaced|correct|corrected|amend|delete|strike|alter|remove|cross|from)$/;
const GIVES = /^(?:read|reads|put|write|to|with|by|insert|say|be|substitute|have|add)$/;

/** "For X read Y": Y in the place of the word or measure of X that it replaces. */
function exchanged(quoted: readonly Quoted[], outside: readonly Item[]): readonly Item[] | undefined {
  const given = quoted.find(({ before }) => GIVES.test(before));
  const struck = quoted.find((one) => one !== given && (STRIKES.test(one.before) || one === quoted[0]));
  if (!given || !struck || given.from < struck.from) return undefined;
  const frame = quoted.find((one) => one !== given && one !== struck && holds(one.items, struck.items));
  const whole = frame?.items ?? (holds(outside, struck.items) ? outside : undefined);
  if (whole) {
    const at = placeOf(whole, struck.items);
    return [...whole.slice(0, at), ...given.items, ...whole.slice(at + struck.items.length)];
  }
  return replaced(struck.items, given.items) ?? besideSubject(struck.items, given.items, outside);
}

/** "3-0 is thicker than 5-0", "thinner than 5-0" → "3-0 is thinner than 5-0"; "thinner" alone keeps what follows. */
function replaced(struck: readonly Item[], given: readonly Item[]): readonly Item[] | undefined {
  const kind = kindOf(given[0]!);
  if (kind === undefined || given.length > struck.length) return undefined;
  const at =
    kind === 'measure'
      ? struck.findLastIndex((item) => kindOf(item) === kind)
      : struck.findIndex((item) => kindOf(item) === kind);
  if (at < 1) return undefined;
  const rest = given.length === 1 ? struck.slice(at + 1) : [];
  return [...struck.slice(0, at), ...given, ...rest];
}

/** "for "2 mm" read "6 mm" (12 Fr catheter)": said of the one size or material outside the marks. */
function besideSubject(
  struck: readonly Item[],
  given: readonly Item[],
  outside: readonly Item[],
): readonly Item[] | undefined {
  const kind = kindOf(given[0]!);
  if (kind === undefined || kind !== kindOf(struck[0]!) || given.length > 2 || struck.length > 2)
    return undefined;
  const subject = outside.filter((item) => item.kind === 'size');
  const device = outside.filter((item) => item.deviceNoun);
  if (subject.length !== 1 || kindOf(subject[0]!) === 'measure') return undefined;
  return kind === 'compared' ? undefined : [...subject, ...device, colon, ...given];
}

/** What a word can take the place of. */
function kindOf(item: Item): 'compared' | 'colour' | 'measure' | 'property' | undefined {
  if (item.magnitude && item.magnitude.degree !== 'plain') return 'compared';
  if (item.colour) return 'colour';
  if (PROPERTY_WORDS.has(item.word)) return 'property';
  const system = item.mention?.sizes[0]?.system;
  return system === 'millimetre' || system === 'inch' ? 'measure' : undefined;
}

const placeOf = (whole: readonly Item[], part: readonly Item[]): number =>
  whole.findIndex((_, at) => part.every((item, i) => whole[at + i]?.word === item.word));
const holds = (whole: readonly Item[], part: readonly Item[]): boolean =>
  whole.length > part.length && placeOf(whole, part) >= 0;

/** Marks of our own between what the erratum joins. */
const own = (word: string, kind: Item['kind']): Item => ({ start: 0, end: 0, word, kind, capital: false });
const colon = own(':', 'punctuation');
const is = own('is', 'word');
