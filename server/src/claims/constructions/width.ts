/**
 * A size and a length said to be its width, in words of any kind: "the drain was a 24 Fr, so a tube some 8 mm wide", "you
 * are sewing with something 0.02 mm thick". What the length measures is said beside it; so the words between may be any,
 * as long as they bring in no other thing that could be so wide.
 */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { equate, LENGTHS } from './equate.ts';
import { readPairs } from './equivalence.ts';
import { ofForeign } from './measure-owner.ts';
import type { Construction, Reading } from './model.ts';
import { beyond, crossedLength, ofAnother, second } from './set-apart.ts';
import { inSum } from './sums.ts';

export const width: Construction = {
  id: 'width',
  needs: () => [{ sizes: 2, holds: ['length', 'mixed'], like: MEASURE }],
  read(scene) {
    const all = groups(scene.items);
    // "So the 10 G is what, a millimetre across?": asked, and often to be put right.
    if (scene.sentence.close === '?' || readPairs(scene).length > 0) return [];
    return all.slice(0, -1).flatMap((left, i) => read(scene, left, all[i + 1]!));
  },
};

const MEASURE = /^(?:across|wide|thick|diameter|width|thickness|od|calib(?:re|er)|thickness|girth)$/;
const NAMED: ReadonlySet<string> = new Set(['needle-gauge', 'french', 'usp', 'ep-metric', 'wire-inch']);
const REACH = 14;

function read(scene: Scene, left: Group, right: Group): Reading[] {
  const { items } = scene;
  const [named, length] = NAMED.has(left.sizes[0]!.system) ? [left, right] : [right, left];
  const systems = [named.sizes[0]!.system, length.sizes[0]!.system] as const;
  if (!NAMED.has(systems[0]) || !LENGTHS.has(systems[1]) || systems[0] === systems[1]) return [];
  if (left.mentions.length > 1 || right.mentions.length > 1) return [];
  const between = spoken(items.slice(left.to + 1, right.from));
  if (between.length === 0 || between.length > REACH || !measured(items, length, between)) return [];
  if (
    second(items, left) ||
    beyond(items, left, between) ||
    [left, right].some((g) => crossedLength(items, g))
  )
    return [];
  if (ofAnother(left, between)) return [];
  if (inSum(items, left.from) || inSum(items, right.from)) return [];
  if (between.some((item, i) => breaks(item) && !(length === right && resumed(between, i)))) return [];
  if (otherThing(between, length === right) || ofForeign(systems[0], between)) return [];
  if (passed(items, left) && !between.some((item) => SOMETHING.test(item.word))) return [];
  if (/^(?:shorter|longer|wider|narrower|thicker|thinner|more|less|and|or|than)$/.test(after(items, length)))
    return [];
  return equate(scene, left, right);
}

/** Without what is said of the size aside (", the big three-way,") and without the "on" of "count on". */
function spoken(between: readonly Item[]): readonly Item[] {
  const close = between[0]?.word === ',' ? between.findIndex((item, i) => i > 0 && item.word === ',') : -1;
  const aside =
    close > 1 &&
    close <= 7 &&
    /^(?:the|our|an?|my|your|his|her|their)$/.test(between[1]!.word) &&
    VERBS.test(between[close + 1]?.word ?? '');
  return (aside ? between.slice(close + 1) : between).filter(
    (item, i, all) =>
      !/^(?:on|with)$/.test(item.word) || !/^(?:count|reckon|plan|bank)$/.test(all[i - 1]?.word ?? ''),
  );
}
const VERBS = /^(?:is|was|measures?|measured|comes?|came|has|runs?)$/;

/** "12 mm across", "8 mm in diameter", "a diameter of 8 mm", "calipers … showed 0.5 mm". */
function measured(items: readonly Item[], length: Group, between: readonly Item[]): boolean {
  const next = items.slice(length.to + 1, length.to + 4).map((item) => item.word);
  if (/^(?:across|wide|thick)$/.test(next[0] ?? '')) return true;
  if (/^(?:in|of)$/.test(next[0] ?? '') && next.slice(1).some((word) => NOUNS.test(word))) return true;
  return length.from > 0 && between.slice(-4).some((item) => NOUNS.test(item.word));
}
const NOUNS = /^(?:diameter|width|thickness)$/;

const after = (items: readonly Item[], g: Group): string => {
  const at = items.slice(g.to + 1, g.to + 4).findIndex((item) => MEASURE.test(item.word));
  return items[g.to + 1 + at + 1]?.word ?? '';
};

/** Words that begin another clause, compare, deny, or bring in what is not the thing itself. */
const BREAKS =
  /^(?:[;.:!?]|than|but|while|whereas|if|when|unless|because|since|until|before|once|after|or|and|not|without|unlike|like|through|into|inside|past|down|over|under|behind|beside|between|against|via|for|from|on|in|onto|around|along|above|below|within|per|each|every|plus|minus|needs?|wants?|takes?|accepts?|fits?|admits?|requires?|allows?|replaces?|hub|hubs|balloon|balloons|cuff|cuffs|tip|tips|eye|eyes|wing|wings|wall|walls|bevel|handle|flange|funnel|stylet|bore|lumen|lumens|channel|radius|circumference|girth|length|long|apart|longer|shorter|what|which|how|half|twice|double|times|difference|sheath|sheaths|introducer|guiding|guide|tube's|step|steps|another|other)$/;
const breaks = (item: Item): boolean =>
  item.kind === 'size' ||
  BREAKS.test(item.word) ||
  NEGATIONS.has(item.word) ||
  item.magnitude?.degree === 'comparative' ||
  item.magnitude?.degree === 'superlative';

const SOMETHING = /^(?:something|anything|talking|looking|dealing)$/;
const PLAIN =
  /^(?:about|around|roughly|nearly|almost|just|some|only|a|an|good|full|of|approximately|approx|exactly|at|most|least|bit|hair|shade|touch|over|under|something|anything|thing|measuring|that|which|is|are|was|comes?|to|out|measures?|it|its|outside|outer|total|whole|overall|,|\(|nominal|diameter|width|thickness|size|round|actual|real|near|enough|so|count|expect|reckon|figure|plan)$/;

/** "…, which means it measures 1.8 mm across": the size itself, taken up again. */
const RESUMES =
  /(?:^| )(?:which means|meaning|that means|so|hence|therefore|you know|we know) (?:that )?(?:it|that|this|the (?:cannula|needle|catheter|drain|tube|thread|wire|size)) (?:is|measures|comes to|comes out at|will be|must be|should be|has to be)(?: (?:about|around|roughly|nearly|some|only|just))*$/;

const resumed = (between: readonly Item[], at: number): boolean =>
  between[at]!.word === 'which' && RESUMES.test(` ${textOf(between.slice(at))}`);

/** "makes a scar 12 mm wide": a noun of its own right before the length; a device or "something" is the thing itself. */
function otherThing(between: readonly Item[], lengthLast: boolean): boolean {
  if (lengthLast && RESUMES.test(textOf(between))) return false;
  const vague = between.findLastIndex((item) => SOMETHING.test(item.word));
  if (vague >= 0 && lengthLast) return !between.slice(vague + 1).every((item) => PLAIN.test(item.word));
  const article = between.findLastIndex((item) => /^(?:an?|the|its|their|his|her|your|our)$/.test(item.word));
  const tail = lengthLast ? between.slice(article + 1) : between;
  const strange = tail.filter(
    (item) =>
      !PLAIN.test(item.word) && item.deviceNoun !== true && !item.magnitude && !item.word.endsWith('ly'),
  );
  return article >= 0 && lengthLast ? strange.length > 0 : strange.length > 1;
}

const passed = (items: readonly Item[], left: Group): boolean =>
  items
    .slice(Math.max(0, left.from - 3), left.from)
    .some((item) =>
      /^(?:fits?|takes|accepts|passes|through|into|over|down|past|via|inside|onto|with|for|than|by|to|like|unlike)$/.test(
        item.word,
      ),
    );
