/**
 * Comparisons of what goes with two sizes and not of the sizes: "the wound closed with 5-0 was larger than the one closed with
 * 3-0", "the hand that held the 24 G …", "in popularity the 4-0 is bigger", "the 5-0 has the larger needle".
 */
import { finds } from '../../notes/patterns.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { remembered } from '../text/remember.ts';

/** What has a size of its own and takes, holds or comes with the thing that is sized: bodies, people, packing, parts. */
const OWNERS =
  /^(?:hands?|arms?|legs?|veins?|vessels?|arter(?:y|ies)|wounds?|cuts?|incisions?|scars?|marks?|bruises?|haematomas?|man|men|wom[ae]n|child|children|bab(?:y|ies)|boys?|girls?|persons?|people|patients?|students?|pupils?|nurses?|fellow|lad|dogs?|cats?|horses?|box(?:es)?|packs?|packets?|reels?|bottles?|drawers?|shel(?:f|ves)|labels?|caps?|wings|flanges?|handles?|hubs?|balloons?|funnels?|valves?|shafts?|tips?|knots?|orders?|stocks?|piles?|heaps?|groups?|class(?:es)?|teams?|lessons?|chapters?|pages?|syringes?|bags?|dressings?|swellings?)$/;
const NEEDLES = /^needles?$/;
const STANDS_FOR = /^(?:that|those|(?:the )?ones?) (?:of|with|from|on|in|who|which|that|closed|sewn|tied)\b/;

/** Set against one another in what has nothing to do with how thick they are. */
const RESPECTS = 'price|cost|popularity|age|sales|votes|demand|fame';
const MEASURES = 'thickness|size|width|gauge';
const MEANS = 'pocket|purse|budget|nerves';
const PICTURES = 'charts?|graph|plot|figure|drawing|photo|picture|cartoon|diagram';
const LENSES = 'lens|glass|loupe|microscope|magnifier';
const OTHER_RESPECT = new RegExp(
  `\\b(?:in|by|for) (?:${RESPECTS})\\b|\\bin length\\b|\\bfor (?:its|their) (?:${MEASURES})\\b|\\bon (?:the|my|our|your) (?:${MEANS})\\b|\\btakes? up (?:more|less) (?:room|space)\\b|\\bnot to scale\\b|\\bfrom where i\\b|\\b(?:in|on) (?:the|this|my|his|her|that) (?:${PICTURES})\\b|\\btogether (?:are )?(?:thicker|wider|bigger|larger)\\b|\\blooks? (?:\\S+ ){1,6}(?:under|through) (?:the|an?|my|our) (?:${LENSES})\\b`,
);
/** One of these is in all of that. */
const RESPECT = cue(
  new RegExp(`${RESPECTS}|length|${MEASURES}|${MEANS}|room|space|scale|where|${PICTURES}|together|${LENSES}`),
);

/** A third channel leaves less room in each. */
const WAYS = /\b(?:three-way|3-way|three way)\b/;
const TWO_WAY = /\b(?:two-way|2-way|two way)\b/;

const COMPARES = cue(['than', 'as']);

const OUTSIDE = /\b(?:outside|outer|externally)\b/;
const INSIDE = /\b(?:inside|inner|internally|bore|lumen)\b/;

/** Is it something else that is compared here? */
export const ofOwners = remembered(
  (items: readonly Item[]): boolean =>
    (holds(items, RESPECT) && finds(OTHER_RESPECT, joined(items))) ||
    ofNeedles(items) ||
    (WAYS.test(joined(items)) && TWO_WAY.test(joined(items)) && INSIDE.test(joined(items))) ||
    ofBothScales(items) ||
    ofOwner(items) ||
    (holds(items, COMPARES) &&
      items.some((item, at) => (item.word === 'than' || likens(items, at)) && besideThan(items, at))),
);

function besideThan(items: readonly Item[], than: number): boolean {
  const start = items.findLastIndex((item, i) => i < than && /^[;:.]$/.test(item.word)) + 1;
  const right = items.findIndex((item, i) => i > than && item.kind === 'size');
  const measured = measuredWords(items).findLast((m) => m.at < than && m.degree === 'comparative');
  if (
    measured?.axis === 'flow' ||
    right < 0 ||
    (items[than - 1]?.deviceNoun && items[than - 1]?.word !== 'set')
  )
    return false;
  const end = items.findIndex(
    (item, i) => i > right && (item.kind === 'punctuation' || item.kind === 'size'),
  );
  const before = joined(items, start, than);
  const after = joined(items, than + 1, end < 0 ? items.length : end);
  return (
    (ownedBefore(items, start, than) && ownedAfter(items, than, right)) ||
    sameNoun(items, start, than, right) ||
    (AFTER.test(after) && comesAfter(items, start, than)) ||
    (OUTSIDE.test(before) && INSIDE.test(after) && !OUTSIDE.test(after)) ||
    (/^(?:heavier|lighter)$/.test(items[than - 1]?.word ?? '') && PACKED.test(after))
  );
}
const PACKED = /\bin (?:the|its|their) (?:box|pack|packet|carton|hand)\b/;

/** "the needle on the 5-0": a thread's needle is sized by nothing that stands there. */
const owns = (items: readonly Item[], at: number, size: number): boolean =>
  finds(OWNERS, items[at]?.word ?? '') || (NEEDLES.test(items[at]?.word ?? '') && thread(items[size]));
const thread = (item: Item | undefined): boolean =>
  item?.mention?.kind === 'size' && item.mention.sizes[0]?.system === 'usp';

/** An owner leads up to the size, or stands right behind it: "the hand that held the 24 G", "the 22 G bruise". */
function ownedBefore(items: readonly Item[], start: number, than: number): boolean {
  const size = items.findIndex((item, i) => i >= start && i < than && item.kind === 'size');
  if (size < 0) return false;
  const mark = items.findLastIndex((item, i) => i < size && item.kind === 'punctuation');
  return (
    owns(items, size + 1, size) ||
    items
      .slice(Math.max(start, mark + 1), size)
      .some((_, i) => owns(items, Math.max(start, mark + 1) + i, size))
  );
}

function ownedAfter(items: readonly Item[], than: number, right: number): boolean {
  return (
    STANDS_FOR.test(joined(items, than + 1, right)) ||
    owns(items, right + 1, right) ||
    items.slice(than + 1, right).some((_, i) => owns(items, than + 1 + i, right))
  );
}

/** "The 4-0 has the largest needle": said of needles where only threads are sized. */
function ofNeedles(items: readonly Item[]): boolean {
  const sizes = items.filter((item) => item.kind === 'size');
  return (
    sizes.length > 1 &&
    sizes.every(thread) &&
    measuredWords(items).some((m) => m.degree !== 'plain' && NEEDLES.test(items[m.to + 1]?.word ?? ''))
  );
}

/** The second "as" of "as large as". */
const likens = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'as' && items.slice(Math.max(0, at - 3), at).some(({ word }) => word === 'as');

/** "The swelling after the 22 G was larger than after the 18 G". */
const AFTER = /^(?:after|following|over|with|on) /;
const comesAfter = (items: readonly Item[], start: number, than: number): boolean =>
  items
    .slice(start, than)
    .some(
      (item, i, own) =>
        AFTER.test(`${item.word} `) && /^(?:the|an?)$/.test(own[i - 2]?.word ?? '') && foreign(own[i - 1]!),
    );

/** "The price of the 24 G is greater than the price of the 18 G", "the 18 G group … the 22 G group": a noun that is no part of it is said twice. */
function sameNoun(items: readonly Item[], start: number, than: number, right: number): boolean {
  const left = items.findIndex((item, i) => i >= start && i < than && item.kind === 'size');
  if (left < 0) return false;
  const own = items.slice(than + 1, right).find((_, i) => leads(items, than + 1 + i));
  const behind = items[right + 1];
  return (
    (own !== undefined && items.slice(start, left).some(({ word }) => word === own.word)) ||
    // "The 7.0 with cuff up is wider than the 8.0 with cuff down."
    ([items[left + 1], behind].every((item) => /^with(?:out)?$/.test(item?.word ?? '')) &&
      !items.some((item) => item.colour)) ||
    (behind?.kind === 'word' &&
      foreign(behind) &&
      /^(?:is|was|are|were|looks|had|has)$/.test(items[left + 2]?.word ?? '') &&
      items[left + 1]?.word === behind.word)
  );
}

/** A noun with a word behind it that leads to the size: "price of", "bag on". */
const leads = (items: readonly Item[], at: number): boolean =>
  foreign(items[at]!) &&
  LEADS.test(items[at + 1]?.word ?? '') &&
  /^(?:the|an?)$/.test(items[at - 1]?.word ?? '');
const LEADS = /^(?:of|on|with|after|over|from|for|about|to)$/;

/** Neither a device nor a measure, nor what a needle makes or lets through. */
const foreign = (item: Item): boolean =>
  item.kind === 'word' &&
  !item.deviceNoun &&
  (!item.axisNoun || item.axisNoun.axis === 'number') &&
  !item.colour &&
  !item.magnitude &&
  !finds(OWN, item.word);
const OWN =
  /^(?:and|or|but|cores?|samples?|is|are|was|were|in|on|at|by|when|if|than|thread|holes?|bores?|lumens?|channels?|openings?|punctures?|tracks?|walls?|sizes?|figures?|stream|jet|drip|speed|rate|ends?|sort|kind|one|ones|outside|inside)$/;

/** "being where the vein was bigger": the only comparing word is said of the owner. */
function ofOwner(items: readonly Item[]): boolean {
  const words = measuredWords(items).filter((m) => m.degree === 'comparative' && m.axis !== 'other');
  const at = words[0]?.at ?? 0;
  return (
    words.length === 1 &&
    /^(?:is|was|are|were)$/.test(items[at - 1]?.word ?? '') &&
    finds(OWNERS, items[at - 2]?.word ?? '') &&
    /^(?:the|his|her|my|their)$/.test(items[at - 3]?.word ?? '') &&
    items[words[0]!.to + 1]?.word !== 'than'
  );
}

/** "forward as a gauge because it's thicker than 20, and as a French because it's wider than 14": bare numbers of either scale. */
const ofBothScales = (items: readonly Item[]): boolean =>
  /\bgauges?\b/.test(joined(items)) &&
  /\b(?:french|fr|charri[eè]re)\b/.test(joined(items)) &&
  items.every((item) => item.kind !== 'size' || item.mention?.notation === 'bare');
