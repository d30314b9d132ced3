/**
 * How long a thread holds or stays, in free words: "half its strength is left after four weeks", "the support of plain gut
 * lasts about a week", "it takes polyglactin two months to be absorbed", "of the absorbables plain gut holds longest".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { NamedMaterial } from '../text/materials.ts';
import type { Scene } from '../text/scene.ts';
import { spanAt } from '../text/spans.ts';

interface Duration {
  readonly at: number;
  readonly property: string;
}

/** Words between which the time of a strength stands. */
const HALF = /\bhalf (?:of )?(?:its |their |the |that )?(?:tensile |original |initial )?strength\b/;
const MOST =
  /\b(?:most|nearly all|almost all|all|the bulk|three quarters) (?:of )?(?:its |their |the )?(?:tensile |original |initial )?strength\b/;
const NONE =
  /\b(?:none|nothing|no more) (?:left )?of (?:its |their |the )?(?:tensile )?strength\b|\bno strength left\b|\bstrength\b.{0,40}: none\b/;
const LEFT = /\b(?:left|remains?|remaining|keeps?|kept|retains?|retained|still (?:has|there)|holds?)\b/;
const LOST = /\b(?:lost|loses?|gone|gives? up|given up|goes)\b/;
const HELD = /\b(?:holds?|supports?|keeps?|retains?)\b/;
const OF_TIME = /^(?:after|by|at|within|in|for|past|lasts?|lasting|takes?|needs?|over)$/;
/** Of something else than the thread itself. */
const NOT_OF_IT = /\b(?:knots?|more than|at least|longer|shelf|packet|pack|boxe?s?|stock)\b/;

/** "half its strength is left after four weeks", "has lost most of it by ten days", "holds for only five days". */
export function durations({ items, sentence }: Scene, m: NamedMaterial): Duration[] {
  const text = joined(items);
  if (sentence.close === '?' || NOT_OF_IT.test(text)) return [];
  const times = items.flatMap((item, i) => {
    const next = items.findIndex((other, k) => k > i && OF_TIME.test(other.word));
    const end = Math.min(i + 8, next < 0 ? items.length : next);
    const time = OF_TIME.test(item.word) ? spanAt(items.slice(i + 1, end)) : laterAt(items, i);
    return time ? [{ at: i, word: item.word, time }] : [];
  });
  const [only, ...more] = times;
  const most = times.length === 0 ? longest(text, items, m) : undefined;
  if (most) return [most];
  if (!only || more.length > 0) return [];
  const kind = partOf(text, only.word, joined(items, m.to + 1, only.at)) ?? goneBy(items, text, only);
  const at = Math.min(only.at + 1, items.length - 1);
  return kind ? [{ at, property: `${kind}:${only.time.low}:${only.time.high}` }] : [];
}

/** "Six weeks after the operation …", "two months later …": the time stands before its word. */
function laterAt(items: readonly Item[], i: number): ReturnType<typeof spanAt> {
  const unit = items
    .slice(i + 1, i + 4)
    .findIndex((item) => /^(?:days?|weeks?|months?|years?)$/.test(item.word));
  const next = items[i + 2 + unit]?.word ?? '';
  const opens = i === 0 || items[i - 1]!.kind === 'punctuation';
  return unit >= 0 && opens && /^(?:after|later|on|from|following)$/.test(next)
    ? spanAt(items.slice(i, i + 2 + unit))
    : undefined;
}

const ABSORBED =
  /^(?:absorbed|absorb|absorbs|dissolves?|dissolved|gone|disappear|disappears|disappeared|vanished|resorbed|hydroly[sz]ed|absorption)$/;
/** Of the strength, of a part, or of the beginning. */
const NOT_WHOLE =
  /\b(?:strength|half|most|part|partly|mainly|begins?|starts?|starting|before|until|review|clinic|visit|again|up to)\b/;

/** "it takes polyglactin about two months to be absorbed", "after six months polydioxanone has gone". */
function goneBy(
  items: readonly Item[],
  text: string,
  time: { readonly at: number; readonly word: string },
): 'gone' | undefined {
  const verbs = items.flatMap((item, i) => (ABSORBED.test(item.word) ? [i] : []));
  const [verb] = verbs;
  if (
    verb === undefined ||
    verbs.length > 1 ||
    NOT_WHOLE.test(text) ||
    /^(?:for|past|lasts?|lasting|at)$/.test(time.word)
  )
    return undefined;
  const between = items.slice(Math.min(verb, time.at), Math.max(verb, time.at));
  const marks = between.filter((item) => item.kind === 'punctuation').length;
  return between.length <= 10 &&
    marks <= (time.at < verb ? 1 : 0) &&
    !between.some((item) => /^(?:and|but|so|because|while)$/.test(item.word))
    ? 'gone'
    : undefined;
}

const HOLDS = /\b(?:holds?|keeps?|lasts?|supports?|retains?)\b/;
/** "Of the absorbables plain gut holds longest": the one that does is polydioxanone. */
function longest(text: string, items: readonly Item[], m: NamedMaterial): Duration | undefined {
  if (!/\babsorbables?\b/.test(text) || !HOLDS.test(text)) return undefined;
  const at = items.findIndex((item) => /^(?:longest|shortest)$/.test(item.word));
  if (at < m.to || items.some((item) => /^(?:second|after|next)$/.test(item.word))) return undefined;
  const long = items[at]!.word === 'longest';
  const rival = long ? 'polydioxanone' : 'fast-gut';
  return m.id === rival
    ? undefined
    : { at, property: long ? `outlasts:strength:${rival}:${m.id}` : `outlasts:strength:${m.id}:${rival}` };
}

/** What is said to be left at that time. */
function partOf(text: string, word: string, between: string): 'half' | 'most' | 'weak' | 'lasts' | undefined {
  const [left, lost] = [LEFT.test(text), LOST.test(text)];
  if (HALF.test(text)) return left !== lost && word !== 'for' ? 'half' : undefined;
  if (NONE.test(text)) return word === 'for' ? undefined : 'weak';
  if (MOST.test(text))
    return left === lost ? undefined : left ? 'most' : /\ball\b/.test(text) ? 'weak' : undefined;
  if (word === 'for' && /\blasts?\b/.test(between)) return 'lasts';
  if (/^last/.test(word)) return /\b(?:support|strength|hold|grip)\b/.test(text) ? 'weak' : undefined;
  return word === 'for' && HELD.test(between) && !/\b(?:up|open|together|apart|still|in)\b/.test(between)
    ? 'weak'
    : undefined;
}
