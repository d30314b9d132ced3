/**
 * A size put in a class in free words, where no tighter reading was found: "We put two small-bore lines in her arms, both
 * 14 gauge", "heavy sutures – think of the 6-0 –", "being a 16, that cannula is among the narrow ones". One class and one
 * size that can be of it, and nothing between them that parts the two.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { CategoryRow } from '../words/categories.ts';
import { type Form, rowFor } from './class-forms.ts';

/** The class, its row and the size said to be of it, which may stand in the question before. */
export interface ClassTold {
  readonly form: Form;
  readonly asked?: true;
  readonly group: Group;
  readonly row: CategoryRow;
}

/** Between a class and a size: what parts them, turns the statement round or makes another of it. */
const PARTS =
  /^(?:and|or|with|without|through|over|into|via|beside|alongside|next|than|plus|from|then|before|after|if|when|until|unless|but|because|since|where|whereas|while|not|no|never|nor|neither|isn't|aren't|wasn't|unlike|instead|rather|except|failed|lost|too|nearly|almost|hardly|barely|close|away|changed?|replaced?|swap(?:ped)?|upgraded?|became|becomes|once|may|might|could|would|should|smaller|larger|bigger|narrower|wider|thinner|thicker|finer|heavier|coarser|inside|within|around|about|per|times|cm|mm|inch|long|by|needs?|required?|also|against|under|versus|vs|down|up|out|bypass|only|a?s?ide|behind)$/;
/** Before the class: what is wanted, or missing. */
const WANTED =
  /\b(?:no|not|without|failed|lost|lacking|never|wanted|asked for|hoped|needed|trying|tried|tries|ideally|supposed|can't|cannot|couldn't|didn't|don't|doesn't|isn't|if|unless|instead of|rather than|unlike|than|neither|nor|or|too|less|as|so|very|relatively|comparatively|for want of|short of|call|calls|called)(?: (?:\w+ ){0,3})?$/;
const ADVERSE =
  /\b(?:opposite|second to|why|had to do|gave way|way to|not available|run out|ran out|if you|question|quiz|\?|compared|comparison|study|trial|some (?:texts|units|books)|depend(?:s|ing)|disagree|neonat\w*|prem\w*|newborns?|bab(?:y|ies)|infants?|child(?:ren)?|paediatric|pediatric|toddlers?|kittens?|pupp(?:y|ies)|mice|mouse|rats?|rabbits?)\b/;

export function classTold(scene: Scene, forms: readonly Form[]): ClassTold[] {
  const { items } = scene;
  if (items.length > 60 || scene.sentence.close === '?') return [];
  const all = groups(items);
  if (all.length === 0) return forms.length === 1 ? carried(scene, forms[0]!) : [];
  // "Fine suture and heavy suture: 6-0 and 0": each class has its own size.
  const sizes = all.filter((g) => forms.some((form) => rowFor(form, g)));
  if (sizes.length < forms.length) return [];
  return forms.flatMap((form, i) => {
    const [from, to] = [forms[i - 1]?.to ?? -1, forms[i + 1]?.at ?? items.length];
    const near = all.filter((g) => g.from > from && g.to < to && rowFor(form, g) && !leftOut(items, g));
    // "(6-0, 7-0) sit left, and the heavy ones (1, 2)": right behind its class.
    const behind = near.find((g) => g.from > form.to && g.from - form.to <= 3);
    const [group, ...more] = behind ? [behind] : near;
    const row = group && rowFor(form, group);
    if (!group || !row || more.length > 0 || group.mentions.some((m) => m.bound)) return [];
    return tied(scene, form, group, row) ? [{ form, group, row }] : [];
  });
}

/** "and those of 28 are not", "a 28 is anything but": what the sentence says of this one is left to the reader. */
export const leftOut = (items: readonly Item[], { to }: Pick<Group, 'to'>): boolean =>
  LEFT_OUT.test(joined(items, to + 1, to + 6));
const LEFT_OUT =
  /^(?:[a-z]+ ){0,2}?(?:(?:is|are|was|were|do|does|would|will|can) (?:not|anything but|nothing of the (?:sort|kind))|isn't|aren't|wasn't|don't|doesn't|won't)(?: (?:so|it|one|that|count|qualify|either))?(?: [.;,)]|$)/;

function tied(scene: Scene, form: Form, group: Group, row: CategoryRow): boolean {
  const { items } = scene;
  const after = group.from > form.to;
  const put = after ? undefined : putUnder(items, group.to + 1, form.at);
  const between = after ? items.slice(form.to + 1, group.from) : items.slice(group.to + 1, put ?? form.at);
  if (
    between.length > 16 ||
    between.some((item) => PARTS.test(item.word) || /^(?:[;?]|\d.*)$/.test(item.word))
  )
    return false;
  const start = put ?? form.at;
  if (WANTED.test(`${joined(items, start - 6, start)} `) || ADVERSE.test(joined(items))) return false;
  if (row.close && after && /\bfor [^,:(]* ,/.test(joined(items, form.to + 1, group.from))) return false;
  const told = joined(items, Math.min(form.at, group.from), Math.max(form.to, group.to) + 1);
  // A relative word: "is a small cannula" may be small for somebody; "among the small ones" and a list are not.
  return (
    row.listed !== true ||
    (after ? EXAMPLE.test(joined(items, form.to + 1, group.from)) : put !== undefined || AMONG.test(told))
  );
}

/** "goes under", "is filed as", "belongs with the": where the words begin that put it in the class right behind them. */
function putUnder(items: readonly Item[], from: number, to: number): number | undefined {
  const last = Math.max(from, to - PUT_WORDS);
  const at = items.findIndex(({ word }, i) => i >= last && i < to && PUT.test(word));
  return at >= 0 && UNDER.test(joined(items, at + 1, to)) ? at : undefined;
}
const PUT_WORDS = 5;
const PUT =
  /^(?:goes|go|going|comes?|falls?|fell|filed?|files|lists?|listed|enter(?:ed|s)?|record(?:ed|s)?|log(?:ged|s)?|class(?:ed|es)?|classif(?:y|ied|ies)|categori[sz]ed|counts?|counted|counting|belongs?|sits?|lives?|stays?|puts?|book(?:ed|s)?|written|grouped?|lumped?|bracketed|shelved|sort(?:ed|s)?|ranks?|ranked|kept|placed?|tall(?:y|ied)|rates?|rated|qualif(?:y|ies|ied)|passes|treated|marked|tagged|labelled|labeled|stored|stocked|racked|down)$/;
const UNDER =
  /^(?:down )?(?:under|among|amongst|with|as|in|into|to|on|for|by)(?: (?:an?|the|our|your|all|those|these|being|everything|anything|heading|label|head|shelf|group|class|category|section|of|side|bin|drawer|end))*$/;
const AMONG =
  /\b(?:among|amongst|one of|counts? among|belongs? (?:to|with)|sits with|lives with|goes with|is with)\b/;
const EXAMPLE =
  /^(?:\(|:|,? ?(?:such as|like|e\.g|for (?:example|instance)|namely|say|think of|[–—-] (?:think of|say|take)|that is|meaning|i\.e)\b)/;

/** "Is a 26 gauge a thick needle? It is one of the thick ones.": the one size of the sentence before. */
function carried(scene: Scene, form: Form): ClassTold[] {
  const before = scene.before.at(-1);
  const opening = joined(scene.items, 0, 8);
  if (before?.close !== '?' || !/\b(?:it|it's|that|this|that's|they|these)\b/.test(opening) || form.at > 14)
    return [];
  const own = groups(before.items);
  const [group, ...more] = own;
  const row = group && rowFor(form, group);
  if (!group || more.length > 0 || !row || group.mentions.some((m) => m.bound)) return [];
  const words = scene.items.slice(0, form.at);
  const said = joined(scene.items, 0, form.to + 1);
  if (
    words.some((item) => PARTS.test(item.word) && !/^(?:no|too|with)$/.test(item.word)) ||
    ADVERSE.test(said)
  )
    return [];
  if (row.listed && !AMONG.test(said)) return [];
  return [{ form, group, row, asked: true }];
}
