/** Whose a measure is: a noun that is no device, before it or behind it, takes it away from the size. */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import type { Group } from '../text/scene.ts';
import { ACROSS, NEUTRAL, OWNERS, SIDES, STUFF } from '../words/gist.ts';

const TAIL = 6;
/** What follows up to the next clause. */
export function tail(items: readonly Item[], right: Group): readonly Item[] {
  const next = items.slice(right.to + 1, right.to + 1 + TAIL);
  const stop = next.findIndex(
    ({ word, kind }) => kind === 'punctuation' || /^(?:and|but|so|because|which|while|as|since)$/.test(word),
  );
  return stop < 0 ? next : next.slice(0, stop);
}

/** "7 mm of tubing in the vein": the measure says whose it is. */
export const ofStuff = (items: readonly Item[], right: Group): boolean =>
  items[right.to + 1]?.word === 'of' &&
  items.slice(right.to + 2, right.to + 5).some(({ word }) => STUFF.test(word));

/** A noun that is no device stands as what is so wide, or has the measure before it. */
export function ownedElsewhere(
  items: readonly Item[],
  between: readonly Item[],
  left: Group,
  right: Group,
): boolean {
  const said = [
    ...items.slice(Math.max(0, left.from - 4), left.from),
    ...between,
    ...(ofStuff(items, right) ? [] : tail(items, right)),
  ];
  if (!SIDES.test(textOf(said)) && said.some(({ word }) => OWNERS.test(word))) return true;
  const next = items[right.to + 1];
  if (next && !closes(items, right)) return true;
  const subject = subjectOf(between);
  if (subject && !neutral(subject)) return true;
  const { system } = (MEASURES.has(left.sizes[0]!.system) ? right : left).sizes[0]!;
  if (withNoun(between)) return true;
  return objectOf(between).some((item) => !neutral(item)) || ofForeign(system, between);
}

const MEASURES: ReadonlySet<string> = new Set(['millimetre', 'inch']);

/** Devices that are not sized on the scale: what is so thick is the needle, not the thread on it. */
const FOREIGN: ReadonlyMap<string, RegExp> = new Map([
  ['usp', /^(?:needles?|cannulas?|wires?|catheters?|tubes?|drains?)$/],
  ['ep-metric', /^(?:needles?|cannulas?|wires?|catheters?|tubes?|drains?)$/],
  ['french', /^(?:needles?|cannulas?|wires?|guidewires?|threads?|sutures?|stitch(?:es)?|strings?|cords?)$/],
  ['needle-gauge', /^(?:wires?|guidewires?|threads?|sutures?)$/],
]);

/** Is the thing named right before the measure one that the scale does not size? */
export const ofForeign = (system: string, between: readonly Item[]): boolean =>
  objectOf(between).some(({ word }) => FOREIGN.get(system)?.test(word) === true);

/** "with sidewalls 0.4 mm thick": a part of it. */
function withNoun(between: readonly Item[]): boolean {
  const at = between.findLastIndex(({ word }) => word === 'with');
  const rest = at < 0 ? [] : between.slice(at + 1);
  return (
    rest.length > 0 &&
    rest.length <= 3 &&
    rest.some(
      (item) =>
        item.kind === 'word' &&
        !neutral(item) &&
        !LIGHT.test(item.word) &&
        !/^(?:an?|the|its)$/.test(item.word),
    )
  );
}

export const neutral = (item: Item): boolean =>
  item.deviceNoun === true ||
  item.colour !== undefined ||
  item.axisNoun !== undefined ||
  item.magnitude !== undefined ||
  NEUTRAL.test(item.word) ||
  ACROSS.test(item.word) ||
  STUFF.test(item.word);

/** "the gap is 4 mm": the noun right before the last verb of being, when it has an article of its own. */
export function subjectOf(between: readonly Item[]): Item | undefined {
  const verb = between.findLastIndex(({ word }) =>
    /^(?:is|are|was|were|measures?|measured|comes|has|had|reaches|spans)$/.test(word),
  );
  // "is the fatter and comes to": a second verb of the subject before it.
  if (verb < 2 || between[verb - 1]!.kind === 'punctuation' || between[verb - 1]!.word === 'and')
    return undefined;
  const article = between.slice(Math.max(0, verb - 4), verb).some(({ word }) => DETERMINER.test(word));
  return article ? between[verb - 1] : undefined;
}
const DETERMINER = /^(?:the|an?|his|her|their|its|our|my|your)$/;

/** "leaves a scar 6 mm wide": what stands between the last article and the length, the words of measure left out. */
function objectOf(between: readonly Item[]): readonly Item[] {
  const article = between.findLastIndex(({ word }) => /^(?:an?|the|his|her|its|your|our)$/.test(word));
  if (article < 0) return [];
  const object = between.slice(article + 1);
  if (object.length === 0 || object.length > 4) return [];
  return object.some(({ word, kind }) => kind !== 'word' || VERBAL.test(word))
    ? []
    : object.filter(({ word }) => !LIGHT.test(word)).slice(-1);
}
const VERBAL =
  /^(?:is|are|was|comes?|works?|measures?|gives?|makes?|means?|equals?|reads?|gets?|has|have|which|that|you|it|at|to|in|of|out|as|says?|said|shows?|prints?)$/;
/** Words of measure and of rounding. */
export const LIGHT =
  /^(?:about|around|roughly|nearly|almost|just|some|only|good|full|approximately|exactly|hair|shade|touch|over|under|bit|little|measuring|nominal|mere|bare|clear|whole|total|round|near|enough|neat|solid|fat|very|close|on|single|little|of)$/;

/** May the sentence end or go on here: a mark, another clause, a word of measure, the thing itself? */
export function closes(items: readonly Item[], right: Group): boolean {
  const next = items[right.to + 1]!;
  if (next.kind === 'punctuation') return !/^[×*/]$/.test(next.word);
  if (roundAbout(items, right) || ofStuff(items, right)) return true;
  if (/^(?:in|of|from|on|at|to)$/.test(next.word))
    return LEADS_ON.test(joined(items, right.to + 1, right.to + 6));
  if (/^(?:across|wide|thick|broad|fat)$/.test(next.word)) {
    // "rides on 0.4 mm wide wire", "20 mm across the rib": of something else.
    const after = items[right.to + 2];
    return (
      after === undefined ||
      after.kind === 'punctuation' ||
      CONTINUES.test(after.word) ||
      AFTER_ACROSS.test(after.word)
    );
  }
  return ACROSS.test(next.word) || CONTINUES.test(next.word) || next.deviceNoun === true;
}
const AFTER_ACROSS = /^(?:in|at|on|going|outside|overall|from|of|to|under|over|through|inside)$/;
/** "… pi times the diameter, so it measures 31 mm round": the way around it. */
export const roundAbout = (items: readonly Item[], right: Group): boolean =>
  /^(?:round|around)$/.test(items[right.to + 1]?.word ?? '') &&
  items.some(({ word }) => /^(?:circumferences?|girth|perimeter)$/.test(word));

const LEADS_ON =
  /^(?:in (?:the |an? |outer |outside |overall )?(?:diameter|width|thickness|calibre|caliber|section|all|total|everyday|old|real|vein|artery|chest|bladder|urethra|nose|practice|millimet|outside|size)|of (?:the |an? )?(?:diameter|width|thickness)|from (?:one )?(?:side|edge|wall|rim)|on (?:the |its |a |your |our )?(?:outside|packet|pack|box|sleeve|wrapper|package|packaging|carton|shelf|foil|lid|calipers?|callipers?|micrometer|ruler|outer|european|label|scale)|at (?:its|the) (?:widest|outside|shaft)|to (?:the |my |a )?(?:eye|naked|nearest|ruler|caliper))/;
const CONTINUES =
  /^(?:and|but|so|which|because|since|as|while|when|once|before|if|though|although|that|or|exactly|overall|total|full|outright|going|lying|sitting|each|apiece|too|also|again|only|near|roughly|precisely|then|where|by|for|with|whatever|whichever|however|whereas|give|will|would|can|you|we|they|is|was|they'd|then|here|these|today|now)$/;
