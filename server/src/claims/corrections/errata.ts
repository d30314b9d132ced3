/** Errata: where the words struck end and what holds begins. */
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';

/** Phrases after which an erratum gives what holds: "should read", "changed to", "corrected:". */
const CORRECTIONS: readonly RegExp[] = [
  /\b(?:should|must|ought to) (?:now )?(?:read|be|say)$/,
  /\bnow (?:reads?|says?)$/,
  /\b(?:read|write|say) instead$/,
  /\bcorrected( to| version)?$/,
  /(?<!\bbefore )\bcorrection$/,
  /\bcorrect(?:ly)?$/,
  /\b(?:changed?|altered|amended|corrected|moved) (?:\S+ ){0,3}to$/,
  /\breplaced? (?:\S+ ){0,3}(?:with|by)$/,
  /\bchange (?:it )?to$/,
  /\bfor this read$/,
];

/** How each of them ends: few words do, and only those are worth the patterns. */
const CORRECTION_ENDS =
  /(?:reads?|be|says?|instead|corrected|to|version|correction|correctly|correct|with|by)$/;

/** Index of the item that ends the correcting words of an erratum: what follows holds, what stands before is struck. */
export function correctionAt(items: readonly Item[]): number | undefined {
  if (!items.some((item) => SIGNS.has(item.word))) return undefined;
  const frame = items.some((item, i) => ERRATUM_FRAME.has(item.word) && !aDevice(items, i));
  if (!frame && !items.some((item) => OPENING.has(item.word))) return undefined;
  for (let i = 0; i < items.length; i++) {
    if (!CORRECTION_ENDS.test(items[i]!.word)) continue;
    // 'Corrected "thicker" to "thinner"': what follows at once is what was struck.
    if (items[i]!.word === 'corrected' && items.slice(i + 2).some((item) => item.word === 'to')) continue;
    const text = items
      .slice(Math.max(0, i - 5), i + 1)
      .map((item) => item.word)
      .join(' ');
    if (!CORRECTIONS.some((pattern) => pattern.test(text))) continue;
    const next = items[i + 1]?.word;
    // 'Correction: for "X" read "Y"': the word only opens the erratum.
    if (items[i]!.word === 'correction' && next === ':') {
      const read = forRead(items);
      if (read !== undefined && read > i) return read;
    }
    if (OPENING.has(next ?? '') || (frame && items[i]!.word !== 'correct')) return i;
  }
  return forRead(items);
}

/** "should read 22 G, blue (printed: 22 G, yellow)": in brackets behind what holds stands what was struck. */
export function printedAt(items: readonly Item[], cut: number): number {
  const at = items.findIndex(
    (item, i) => i > cut && item.word === '(' && PRINTED.test(items[i + 1]?.word ?? ''),
  );
  return at < 0 ? items.length : at;
}
const PRINTED = /^(?:printed|misprinted|was|previously|formerly|originally|wrongly|instead|not)$/;

/** "get a second line in": a cannula, not a line of the text, which has a number or is pointed at. */
const aDevice = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'line' &&
  !/^[0-9]/.test(items[i + 1]?.word ?? '') &&
  !(
    /^(?:last|first|second|third|top|bottom|next)$/.test(items[i - 1]?.word ?? '') &&
    items[i - 2]?.word === 'the'
  );

/** What holds, or what is struck, stands behind one of them. */
const OPENING = new Set([':', '"', '“']);
const ERRATUM_FRAME = new Set([
  'page',
  'line',
  'slide',
  'item',
  'printed',
  'erratum',
  'errata',
  'key',
  'paragraph',
  'handout',
  'poster',
  'table',
  'instead',
]);

/** Without one of these there is none. */
export const SIGNS: ReadonlySet<string> = new Set([...OPENING, ...ERRATUM_FRAME]);

/** "for "X" read "Y"": the classical erratum. */
function forRead(items: readonly Item[]): number | undefined {
  const opener = items.findIndex((item, i) => item.word === 'for' && opensWords(items, i));
  if (opener < 0) return undefined;
  const read = items.findIndex(
    (item, i) => i > opener && (item.word === 'read' || item.word === 'put') && opensWords(items, i, opener),
  );
  return read < 0 ? undefined : read;
}

/** What is struck or holds is quoted, or begins with a size right behind the place: "Page 21: for 14 G (grey) read 16 G (grey)". */
const opensWords = (items: readonly Item[], i: number, opener = i): boolean =>
  /^["“]$/.test(items[i + 1]?.word ?? '') ||
  (items[i + 1]?.kind === 'size' && items[opener - 1]?.word === ':' && items[opener + 1]?.kind === 'size');

/** "Correction: on slide 4 we wrote that …": what is corrected is told before it is corrected. */
export const onceSaid = (items: readonly Item[], before: number): boolean =>
  items.slice(0, before).some((item) => /^(?:wrote|said|stated|claimed|taught|told|called)$/.test(item.word));

const ERRATA_HEADING =
  /\b(?:errat(?:a|um)|corrections?|corrigend(?:a|um)|amendments?|misprints?|typos?|slips|changes)\b/;
const ERRATUM_OPENING =
  /^\W{0,4}(?:p\.|pp\.|page|line|slide|sheet|tables?|fig\.|figure|caption|section|paragraph|para|chapter|card|poster|handout|correction|erratum|corrigendum|in table|on (?:page|slide|sheet|card))(?:\s|$|\d|:)/i;

/** Stands among errata: under such a heading, or opening with the place of what is corrected. */
export const ofErrata = (text: string, headings: readonly string[]): boolean =>
  finds(ERRATUM_OPENING, text.slice(0, 24)) || headings.some((heading) => finds(ERRATA_HEADING, heading));
