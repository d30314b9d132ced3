/**
 * The measure of a size that was named before: "a 12 Fr. The thing takes up 5.3 mm", "two wires, 0.035 and 0.038 inch. The
 * second comes to 1.38 mm". The sentence must take up what was spoken of, and nothing else may be meant.
 */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { withFigures } from '../text/lengths.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { ACROSS, OWNERS, SETS, SIDES, STUFF } from '../words/gist.ts';
import { asPacked, isCrossed, withCrosses } from './crossed.ts';
import {
  apart,
  CONTRAST,
  kindOf,
  LENGTHS,
  passedBy,
  plausible,
  stops,
  tells,
  twoNumbers,
} from './gist-pair.ts';
import { closes, LIGHT, neutral, ofStuff, subjectOf, tail } from './measure-owner.ts';
import type { Reading } from './model.ts';
import { clausesOf, isOne, LONGEST, MOST_PICKED, pickedHere, pickOf } from './picked-here.ts';
import { asOne } from './resumed.ts';
import { slip } from './slips.ts';

/** A length that is written out. */
export const UNIT = /^(?:\d+(?:[.,]\d+)?)?(?:[mc]m|(?:mill|cent)imet(?:re|er)s?)$/;
/** Takes up what was measured in the sentence before. */
export const TAKES_UP =
  /^(?:makes?|call|so|therefore|hence|sold|labelled|order|french|charri[eè]re|ask|write|that's|it's)$/;
/** Tells a thread's other number. */
export const NUMBERS = /^(?:metric|european|ep|usp|pharmacopoeia)\b/;

const BACK = 2;
/** The measure of the one size spoken of before, or the size that the measure told before comes to. */
export function carried(scene: Scene): Reading[] {
  const { items } = scene;
  const own = pickedHere(scene);
  if (own.length > 0) return own;
  const [right, ...more] = withCrosses(items, groups(items));
  if (right && more.length > 0) return eachPicked(scene, [right, ...more]);
  if (!right || right.mentions.length > 1 || right.sizes.length > 1) return [];
  const kind = kindOf(right);
  if (!kind) return [];
  const from = onPacket(items, right) || inMetric(items, right) ? 0 : takenUpAt(items, right);
  const may = from >= 0 ? [] : clausesOf(items, right);
  if (from < 0 && may.length === 0) return [];
  // A size after its measure is told by a word for that: "the catheter is a 15 Fr" begins anew.
  if (
    !LENGTHS.has(kind) &&
    !items.some(({ word }) => TAKES_UP.test(word) || UNIT.test(word) || NUMBERS.test(word))
  )
    return [];
  for (const previous of earlier(scene)) {
    const held = withFigures(previous.items).items;
    const all = distinct(withCrosses(held, groups(held)));
    if (all.length === 0 && from >= 0 && held.some(({ word }) => OWNERS.test(word)) && !nounAt(items, from))
      return [];
    if (all.length === 0) continue;
    const fits = all.filter((g) => (tells(g, right) || sameSizes(g, right)) && !toldInMm(g, all));
    const picked = pickOf(items, right, held, fits);
    if (picked) return joinedPair(scene, previous, held, picked.size, right, picked.to);
    const [first] = fits;
    const left = from >= 0 && first ? endOf(first, items, right) : undefined;
    if (fits.length !== 1 || !left || !isOne(left) || !tells(left, right)) return [];
    if (all.some((g) => g !== first && g.sizes[0]!.system === left.sizes[0]!.system)) return [];
    return meansAnother(items, from, right, held, left)
      ? []
      : joinedPair(scene, previous, held, left, right, from);
  }
  return [];
}

/** "The first is 1.2 mm across and the second 0.6 mm": each measure with the one that is picked before it. */
function eachPicked(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const [previous] = earlier(scene);
  const fit = all.every((g) => isOne(g) && kindOf(g) === 'length') && all.length <= MOST_PICKED;
  if (!previous || !fit) return [];
  const held = withFigures(previous.items).items;
  const told = distinct(groups(held));
  const picked = all.map((g, i) =>
    pickOf(items.slice(0, g.to + 1), g, held, told, (all[i - 1]?.to ?? -1) + 1),
  );
  if (picked.some((one) => one === undefined)) return [];
  if (new Set(picked.map((one) => one!.size.sizes[0]!.value)).size < all.length) return [];
  return all.flatMap((g, i) => joinedPair(scene, previous, held, picked[i]!.size, g, picked[i]!.to));
}

/** "a Hegar 8 (eight millimetres)": one thing, told twice. */
const toldInMm = (group: Group, all: readonly Group[]): boolean =>
  kindOf(group) === 'hegar' &&
  all.some((g) => kindOf(g) === 'length' && g.sizes[0]!.value === group.sizes[0]!.value);

/** "8 to 12 Fr. The narrowest of them is …": the end that is meant of a range or a list. */
function endOf(group: Group, items: readonly Item[], right: Group): Group {
  const words = measuredWords(items).filter(({ degree, at }) => degree === 'superlative' && at < right.from);
  const [word] = words;
  if (!word || words.length > 1 || word.axis !== 'outer' || group.sizes[0]!.system !== 'french') return group;
  const sorted = group.sizes.toSorted((a, b) => word.sign * (b.value - a.value));
  return { ...group, sizes: sorted.slice(0, 1), mentions: group.mentions.slice(0, 1) };
}

/** Sentences before, nearest first; for the first of a passage the one that leads to it. */
const earlier = (scene: Scene): readonly Sentence[] =>
  (scene.before.length > 0 ? scene.before.slice(-BACK) : scene.context.slice(-1)).toReversed();

/**
 * Where the sentence takes up what was spoken of: a pronoun or the bare device before the size, or nothing but its measure;
 * -1 when it does not.
 */
function takenUpAt(items: readonly Item[], right: Group): number {
  const lead = items.slice(0, right.from);
  if (ofStuff(items, right) || theMeasured(items, right)) {
    const clause = clausesOf(items, right).at(-1) ?? 0;
    const words = lead.slice(clause);
    if (!lead.some((item, i) => CONTRAST.test(item.word) && stops(lead, i, item)))
      return words.some((item, i) => stops(words, i, item) || OWNERS.test(item.word)) ? -1 : clause;
  }
  const pronoun = Math.max(
    0,
    lead.findLastIndex(({ word }) => /^(?:it|that|this|which)$/.test(word)),
  );
  // "the vein around it takes up 9 mm": said of the vein.
  if (/^(?:it|this|that)$/.test(lead[pronoun]?.word ?? '') && ROUND_ABOUT.test(lead[pronoun - 1]?.word ?? ''))
    return -1;
  // "look at the stone: it measures": what was named right before.
  const named =
    (/^[:;,]$/.test(lead[pronoun - 1]?.word ?? '') && OWNERS.test(lead[pronoun - 2]?.word ?? '')) ||
    // "the vein is wide, since it …": the subject of the clause before.
    lead.some(
      ({ word }, i) =>
        i < pronoun &&
        OWNERS.test(word) &&
        /^(?:is|are|was|were|looks?|has|have)$/.test(lead[i + 1]?.word ?? ''),
    );
  if (!named && takesUp(lead.slice(pronoun))) return pronoun;
  const width = clausesOf(items, right).findLast((i) => WITH_WIDTH.test(joined(items, i, right.from)));
  if (width !== undefined && !lead.some(({ word, deviceNoun }) => OWNERS.test(word) || deviceNoun === true))
    return width;
  const at = clausesOf(items, right).findLast((i) => THING.test(`${joined(items, i, i + 6)} `)) ?? -1;
  if (at < 0 || !takesUp(lead.slice(at))) return -1;
  const fills = FILLS.test(textOf(lead.slice(at))) || nounAt(items, at) !== undefined;
  const skipped = lead.slice(0, at);
  const other = skipped.some(
    (item, i) =>
      item.kind === 'size' ||
      (CONTRAST.test(item.word) &&
        stops(skipped, i, item) &&
        !(item.word === 'no' && /^(?:wonder|surprise)$/.test(skipped[i + 1]?.word ?? ''))) ||
      (OWNERS.test(item.word) && !fills),
  );
  return other ? -1 : at;
}
/** "I changed the 11 mm tube for a new one": a thing called by its measure. */
const theMeasured = (items: readonly Item[], right: Group): boolean =>
  /^(?:the|that|this|your|his|her|their)$/.test(items[right.from - 1]?.word ?? '') &&
  THING_NOUN.test(items[right.to + 1]?.word ?? '') &&
  !items.slice(0, right.from).some(({ word, deviceNoun }) => deviceNoun === true || OWNERS.test(word)) &&
  !items.some(({ word }) => /^(?:others?|another|next|second|instead|stents?)$/.test(word));
const ROUND_ABOUT =
  /^(?:around|round|in|inside|beside|behind|over|under|above|below|beneath|through|near|with|into|against|from|to|for|about)$/;

/** "When the supplier wants the metric size I tell him 1.5": nothing but the other number of what was spoken of. */
const inMetric = (items: readonly Item[], right: Group): boolean =>
  (kindOf(right) === 'metric' || kindOf(right) === 'length') &&
  right.from <= MOST_WORDS &&
  items.slice(0, right.to + 1).some(({ word }) => NUMBERS.test(word)) &&
  items.slice(0, right.from).every(({ word }) => TO_ORDER.test(word));
const MOST_WORDS = 16;
const TO_ORDER =
  /^(?:[,:]|when|whenever|the|an?|our|her|his|its|suppliers?|firm|company|rep|stores?|lady|pharmacy|shop|catalogue|catalog|label|packet|pack|box|foil|side|european|metric|ep|size|number|figure|system|scale|value|name|packets|boxes|labels|packs|gives?|millimetres|mm|asks?|wants?|needs?|for|of|on|in|by|you|i|we|they|she|he|say|says|tell|write|orders?|her|him|them|us|suture|thread|it|is|this|that|same|to|reads?|shows?|gives?|called|call|calls|look|which|means|makes|so|and|then|would|be|as|must|will|under|there|here|equivalent|counterpart|hears|finds?|find|therefore)$/;

/** "The wrapper says 0.8 × 30 mm, "On the box you'll find it as": the packet of what was spoken of. */
const onPacket = (items: readonly Item[], right: Group): boolean =>
  isCrossed(items, right) &&
  PACKET.test(joined(items, 0, right.from)) &&
  !items
    .slice(0, right.from)
    .some(({ word }) => /^(?:others?|another|next|second|wrong|old|instead|of)$/.test(word));
const PACKET =
  /^(?:and |so )?(?:(?:on|in) )?(?:the|its|our|your|a) (?:[a-z]+ )?(?:pack|packet|package|packaging|box|wrapper|sleeve|label|carton|foil|lid|catalogue|catalog|shelf)\b/;

/** "the thing", "this line". */
const THING =
  /^(?:(?:for|to) (?:her|him|them|us|me|you) ,? ?|there |here )?(?:the|that|this|your|our) (?:whole |same |very |outer |outside |external |overall )?(?:thing|diameter|width|thickness|calib(?:re|er)|shaft|barrel|strand|stitch|steel|plastic|metal|tubes?|catheter|drain|line|needle|cannula|wire|guidewire|thread|suture|foley|dilator|bougie|stent|pigtail|pipe|device|instrument) /;
const THING_NOUN =
  /^(?:tubes?|catheters?|drains?|lines?|needles?|cannulas?|cannula|wires?|guidewires?|foleys?|dilators?|bougies?|pigtails?|shaft|barrel)$/;
/** The device that a clause begins with: "the tube", "this needle". */
function nounAt(items: readonly Item[], from: number): string | undefined {
  const noun = NOUN.exec(joined(items, from, from + 6).replace(FOR_WHOM, ''))?.[1];
  return noun !== undefined && THING_NOUN.test(noun) ? noun : undefined;
}
/** What is done to the room there is. */
export const FILLS = /\b(?:takes? up|fills?(?! (?:with|up|in))|occup(?:y|ies)|uses up)\b/;
/** "…, with an outer diameter of just 5 mm". */
const WITH_WIDTH =
  /^with (?:an?|its) (?:(?:outer|outside|external) )?(?:diameter|width|thickness|calib(?:re|er)) of(?: (?:just|only|about|some))?$/;

function takesUp(lead: readonly Item[]): boolean {
  const words = lead.filter(({ kind }) => kind === 'word');
  const end = ONE_END.test(textOf(words));
  if (words.some((item, i) => (stops(words, i, item) && !(end && i === 1)) || OWNERS.test(item.word)))
    return false;
  if (words.length > LONGEST) return false;
  const text = ` ${textOf(words)} `;
  return (
    end ||
    PRONOUN.test(text) ||
    MEASURE.test(text) ||
    CONCLUDES.test(text) ||
    words.every(
      ({ word }) => LIGHT.test(word) || /^(?:so|and|then|yes|right|that|is|in|millimetres|a|an)$/.test(word),
    )
  );
}

/** "Outside diameter: 5.3 mm", "its width in millimetres". */
const MEASURE =
  /^ (?:(?:the|its|their|this) )?(?:(?:outer|outside|external|overall) )?(?:diameter|width|thickness|od|calib(?:re|er)) (?:in (?:mm|millimetres) )?(?:is )?$/;

/** "The wire is 2 mm" behind a 6 Fr catheter, "the tube" where another was named: not the size spoken of. */
function meansAnother(
  items: readonly Item[],
  from: number,
  right: Group,
  held: readonly Item[],
  left: Group,
): boolean {
  const near = theMeasured(items, right) ? items[right.to + 1]!.word : undefined;
  const noun = near ?? NOUN.exec(joined(items, from, from + 6).replace(FOR_WHOM, ''))?.[1];
  if (!noun) return false;
  const stem = stemOf(noun);
  if (FOREIGN.get(left.sizes[0]!.system)?.test(stem)) return true;
  const named = new Set(held.filter(({ word }) => FAMILY.test(word)).map(({ word }) => stemOf(word)));
  const own = held.slice(Math.max(0, left.from - 4), left.to + 3).some(({ word }) => stemOf(word) === stem);
  return named.size > 1 && !own;
}
const FOR_WHOM = /^(?:for|to) (?:her|him|them|us|me|you) (?:, )?/;
const NOUN = /^(?:the|that|this|your|our) (?:same )?([a-z]+)/;
const FAMILY = /^(?:tube|catheter|drain|line|needle|cannula|wire|guidewire|thread|suture|foley|dilator)s?$/;
const stemOf = (word: string): string => word.replace(/s$/, '').replace(/^guidewire$/, 'wire');
/** Things that are not sized on the scale. */
const FOREIGN: ReadonlyMap<string, RegExp> = new Map([
  ['french', /^(?:needle|wire|thread|suture)$/],
  ['needle-gauge', /^(?:wire|thread|suture|drain)$/],
  ['usp', /^(?:needle|wire|catheter|tube|drain|cannula)$/],
  ['wire-inch', /^(?:needle|catheter|tube|drain|cannula|thread|suture)$/],
]);

/** "The narrowest of them", "the widest one". */
const ONE_END =
  /^the [a-z]+est (?:(?:one|ones|tube|catheter|drain|size|line|pigtail|stent|sound|dilator)s? )?(?:(?:of|among|in|on) (?:them|these|those|the|that|this|our) (?:\w+ )?)?(?:is|are|measures?|comes|works|has|makes)\b/;
const CONCLUDES =
  /^ (?:so|then|therefore|hence|which) .*(?:order|ordered|ask|asked|write|wrote|call|called|chart|charted|book|booked|label|labelled|makes?|need|want|have|is|sold|go|went) /;
const PRONOUN =
  / (?:it|that|this|these|those|they|such an? [a-z]+|which|that's|it's|its|that'll|it'll|(?:the|that|this) (?:(?:outer|outside|external|overall|whole|same) )?(?:tube|catheter|drain|line|needle|cannula|wire|guidewire|thread|suture|thing|same|lot|latter|outside|diameter|width|thickness|calib(?:re|er)|shaft|barrel|strand|stitch|steel|plastic|metal|one)|what you (?:feel|see|hold|have|push|pass|are (?:holding|pushing|passing|looking at))|measured one|measured (?:one|mine) (?:yesterday|today|once)) /;

/** "4 mm of the vein": of the room there is. */
const ofRoom = (items: readonly Item[], right: Group): boolean =>
  /^of (?:the|its|her|his|their|that|an?)$/.test(joined(items, right.to + 1, right.to + 3)) &&
  OWNERS.test(items[right.to + 3]?.word ?? '');

/** "With its 2 mm it …". */
const WITH_ITS = /(?:^|, )(?:with|at) its$/;

function joinedPair(
  scene: Scene,
  previous: Sentence,
  held: readonly Item[],
  left: Group,
  right: Group,
  from: number,
): Reading[] {
  const { items } = scene;
  if (!plausible(left, right, items) || right.mentions[0]!.bound) return [];
  const lead = textOf(items.slice(0, right.from));
  const length = kindOf(right) === 'length' || kindOf(right) === 'inch';
  const after = WITH_ITS.test(lead) || FILLS.test(lead) ? [] : tail(items, right);
  const measured =
    [...items.slice(0, right.from), ...after].some(({ word }) => ACROSS.test(word)) ||
    SIDES.test(textOf(after)) ||
    (after[0]?.word === 'of' && after.some(({ word }) => STUFF.test(word)));
  const told = length
    ? measured ||
      SETS.test(lead) ||
      slip(left, right) ||
      inMetric(items, right) ||
      asPacked(scene, left, right)
    : SETS.test(lead) || CONCLUDES.test(` ${lead} `) || inMetric(items, right);
  if (
    !told ||
    (items[right.to + 1] &&
      !closes(items, right) &&
      !(FILLS.test(lead) && ofRoom(items, right)) &&
      !(WITH_ITS.test(lead) && items[right.to + 1]!.word === 'it')) ||
    (!ofStuff(items, right) && after.some(({ word }) => OWNERS.test(word)))
  )
    return [];
  if (previous.close === '?' && length && right.from > 4) return [];
  const subject = subjectOf(items.slice(from, right.from));
  if (subject && !neutral(subject)) return [];
  if (!length && !twoNumbers(left, right) && !previousMeasures(held, left)) return [];
  // "takes a 0.035 wire. The wire itself is …": called by its own name.
  const named = nounAt(items, from);
  const own = named !== undefined && stemOf(held[left.to + 1]?.word ?? '') === stemOf(named);
  return passedBy(held, left) && !own ? [] : asOne(scene, held, left, right, apart);
}

/** The length of the sentence before is a thing's width. */
const previousMeasures = (held: readonly Item[], left: Group): boolean => {
  // Hegar's numbers are millimetres across.
  if (held.some(({ mention }) => mention?.sizes[0]?.system === 'hegar')) return true;
  const words = [...held.slice(Math.max(0, left.from - 6), left.from), ...tail(held, left)];
  return words.some(({ word }) => ACROSS.test(word)) && !words.some(({ word }) => OWNERS.test(word));
};
