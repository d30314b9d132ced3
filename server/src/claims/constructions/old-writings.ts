/**
 * The old writing of a thread and today's: "the old boxes say 000; in modern writing that's 3-0", "he closes with 00 cotton,
 * meaning what we order today as 2-0", "- 0000: 4-0". A row of zeros and a counted zero, in one sentence or two, tied by a
 * word of naming and a word of time; what is used instead today is another thread.
 */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Group, groups, type Scene, sameSizes } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';

/** The two writings, with the place of the word that ties them; `before` when the first stands in the sentence before. */
export interface OldWriting {
  readonly a: Group;
  readonly b: Group;
  readonly cue: number;
  readonly before: boolean;
}

const ROW = /^0{2,}$/;
const COUNTED = /^\d{1,2}\s?[-/–]\s?[0Oo]$/;
const written = (group: Group | undefined, as: RegExp): boolean =>
  group !== undefined &&
  group.sizes.length === 1 &&
  group.sizes[0]!.system === 'usp' &&
  as.test(group.mentions[0]?.text ?? '');

/** The writings of a sentence, or of one and the sentence before, when they are said to be one. */
export function oldWriting(scene: Scene): OldWriting | undefined {
  const { items } = scene;
  const all = writingsIn(items);
  if (all.length === 2) {
    const [a, b] = all as [Group, Group];
    if (!pair(a, b) || items.some(turns)) return undefined;
    return ties(items, a, b) ? { a, b, cue: b.from - 1, before: false } : undefined;
  }
  const [b, ...more] = all;
  const previous = scene.before.at(-1);
  if (!b || more.length > 0 || !previous || previous.close === '?') return undefined;
  const [a, ...others] = writingsIn(previous.items);
  if (!a || others.length > 0 || !pair(a, b) || items.some(turns) || previous.items.some(turns))
    return undefined;
  const lead = joined(items, 0, b.from);
  return b.from <= LONGEST &&
    TIME.test(`${joined(previous.items)} ${joined(items)}`) &&
    NAMES.test(lead) &&
    !USES.test(lead)
    ? { a, b, cue: b.from, before: true }
    : undefined;
}
const LONGEST = 10;

/** The sizes of a sentence; one said in words beside the figure is the same one: "4-0: four-oh, in the old style 0000". */
function writingsIn(items: readonly Item[]): readonly Group[] {
  const all = groups(items);
  const plain = all.filter((group) => written(group, ROW) || written(group, COUNTED));
  return all.every((group) => plain.includes(group) || plain.some((one) => sameSizes(one, group)))
    ? plain
    : all;
}

const pair = (a: Group, b: Group): boolean =>
  new Set([a, b].flatMap(({ mentions }) => mentions[0]!.material ?? [])).size < 2 &&
  ((written(a, ROW) && written(b, COUNTED)) || (written(a, COUNTED) && written(b, ROW)));

/** "0000: 4-0", "3-0 (000)", or a word of naming between them and of time anywhere. */
function ties(items: readonly Item[], a: Group, b: Group): boolean {
  const between = textOf(items.slice(a.to + 1, b.from));
  if (/^[:=(]$/.test(between)) return items.length - b.to <= 3;
  if (
    b.from - a.to > LONGEST + 4 ||
    USES.test(between) ||
    /\b(?:and|but|or) (?!(?:is|was|that)\b)/.test(between)
  )
    return false;
  return (NAMES.test(between) || NAMED_BEFORE.test(joined(items, 0, a.from))) && TIME.test(joined(items));
}

const TIME =
  /\b(?:today|today's|nowadays|now|modern|current|currently|present-day|these days|old|older|former|formerly|used to|those days|earlier|then|grandfather\S*|grandmother\S*|historic\S*|past|once|19\d0s?|(?:sixt|sevent|fift|eight)ies)\b/;
const NAMES =
  /(?:^| )(?:mean(?:s|t|ing)?|is|are|was|that's|it's|this is|=|stands? for|stood for|becomes?|(?:would|will|should) be|calls?|called|writ(?:e|es|ten|ing)|wrote|known|labell?ed|labels?|sold|order(?:s|ed)?|marked|says?|said|reads?|spell(?:s|ed|t)?|style|today's|our|notation|notes|corresponds? to)(?: |$)/;
/** "wrote 0000 for what is 4-0 today". */
const NAMED_BEFORE =
  /\b(?:wrote|write|writes|called|calls|say|said|says|spelled|spelt|labelled|marked|reads)(?: an?| the)?$/;
/** Another thread in its place. */
const USES =
  /\b(?:us(?:e|es|ed|ing)|take|takes|took|clos(?:e|es|ed|ing)|sew|sews|prefer|prefers|chose|choose|went|go|goes|switch\S*|replac\S*|instead|moved|move|put|puts|reach|recommend\S*|stock|buy|keep|next|steps?|above|below|under|over|enough|finer|thicker|thinner|heavier|than|enough|suffices?|would do|will do|does)\b/;

const turns = ({ word, magnitude }: Item): boolean =>
  NEGATIONS.has(word) ||
  magnitude?.degree === 'comparative' ||
  /^(?:if|unless|whether|mistak\S*|misread\S*|confus\S*|wrong\S*|error|slip|different|differs?|between|versus|vs|except|instead)$/.test(
    word,
  );
