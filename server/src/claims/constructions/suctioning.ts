/**
 * A suction catheter and the tracheal tube that it goes down, in whatever words: "with a 7.0 tube you may go up to 18 Fr",
 * "the fattest catheter I'd put through an 8.0 is a 20 Fr". One tube, one catheter and talk of suction must be all there
 * is; judged only when the catheter lies well over twice the tube, since rules and tables round.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { overTube } from '../text/suction.ts';
import type { Construction } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

export const suctioning: Construction = {
  id: 'suctioning',
  needs: () => [
    { sizes: 1, holds: ['tube'] },
    { sizes: 1, like: TUBES },
  ],
  read(scene) {
    const { items } = scene;
    const pair = scene.sentence.close === '?' || items.length > 45 ? undefined : pairIn(items);
    if (!pair || !overTube(pair.french.sizes[0]!.value, pair.tube)) return [];
    const text = joined(items);
    if (STOPS.test(text.replace(RULED, ' ')) || !ofSuction(scene, text)) return [];
    const { from, to } = pair.french;
    const claim = ruleClaim(scene, 'suctioning', 'tube-id', 'suction-over-tube', from);
    return [{ claim, at: from, from: Math.min(pair.at, from), to, own: true }];
  },
};

const TUBES = /^(?:tubes?|ett|suction(?:ing|ed)?|place|in|through|down)$/;

/** "No more than twice the tube size": the rule, not a comparison of what was taken. */
const RULED =
  /\b(?:(?:no|not|never|(?:must|should|can|may|do|need)(?: ?n't| not)|cannot) (?:be |go |get |come |anything |any )*(?:more|larger|wider|bigger|greater|thicker|over|above|exceed|beyond)(?: ,[^,]{1,20},)?(?: than)?(?: (?:twice|double|two times|half))?|big enough|wide enough|large enough|no (?:trouble|fuss|bother)|(?:rules?|formula|card|chart|guideline)(?: of \w+)? says?)\b/g;

/** What turns the sentence, or says what went wrong with such a catheter. */
const STOPS =
  /\b(?:not|never|no|nor|neither|without|too|blocks?|blocked|jams?|jammed|stuck|sticks|tight|tightly|wedged?|instead|rather|than|if|why|unless|until|wrong|mistake|wider|bigger|larger|smaller|narrower|wide|big|large|over-?size[ds]?|refuses?|refused|fails?|failed|would(?: \w+)? (?:block|fill|be)|fills|occlud\w+|collapse[sd]?|was|were|had|swap\w*|chang\w+|replac\w+|exchang\w+|beside|alongside|before|after|once|then|bougies?|introducers?|stylets?|airway exchange|foleys?|urinary|urethral|bladder|chest|pleural|drains?|feeding|nasogastric|ng|gastric|orogastric|og|stomach|mouth|phar\w+|\w+pharyn\w+|suckers?|ports?|tubing|outside|outer|walls?|double[- ]lumen|lumens?|bronchoscopes?|scopes?|old|used|some|others|argued|claims?|claimed|says|said|swears|or)\b|\w+n't|\?/;

interface Pair {
  readonly tube: number;
  readonly at: number;
  readonly french: Group;
}

/** The only tube and the only French of a sentence, with no other size. */
function pairIn(items: readonly Item[]): Pair | undefined {
  const all = groups(items).filter((g) => !bareTube(items, g));
  const [french, ...more] = all.filter((g) => g.sizes[0]!.system === 'french');
  if (!french || more.length > 0 || french.sizes.length > 1) return undefined;
  const tubes = items.flatMap((item, at) => tubeAt(items, item, at));
  const [tube] = tubes;
  return tube && tubes.length === 1 && all.length - 1 === (items[tube.at]!.mention ? tubesIn(all) : 0)
    ? { ...tube, french }
    : undefined;
}

const tubesIn = (all: readonly Group[]): number =>
  all.filter(({ sizes }) => sizes[0]!.system === 'tube-id').length;

/** "a 3.5 in place", "for tube size 7.5": a half or a naught behind the point, whatever else was thought of it. */
const bareTube = (items: readonly Item[], { from, to, mentions }: Group): boolean =>
  mentions[0]!.kind === 'size' &&
  mentions[0]!.sizes[0]!.system !== 'tube-id' &&
  /^(?:size )?\d\.[05]$/.test(mentions[0]!.text) &&
  /\btubes?\b/.test(`${joined(items, from - 2, from)} ${items[to + 1]?.word}`);

function tubeAt(items: readonly Item[], { mention, word }: Item, at: number): { tube: number; at: number }[] {
  const [size] = mention?.sizes ?? [];
  if (size?.system === 'tube-id' && mention!.sizes.length === 1 && !mention!.bound)
    return [{ tube: size.value, at }];
  const bare = /^(?:size )?([2-9]\.[05])$/.exec(mention?.text ?? word)?.[1];
  const named = /\btubes?\b/.test(`${joined(items, at - 2, at)} ${items[at + 1]?.word}`);
  return bare &&
    (named ||
      ((mention === undefined || mention.kind === 'ambiguous') &&
        /^(?:an?|the|her|his|your|that|this|our)$/.test(items[at - 1]?.word ?? '')))
    ? [{ tube: Number(bare), at }]
    : [];
}

const SUCTION = /\bsuction\w*\b/;
/** Says which catheter a tube takes, where the suction was named before. */
const TAKEN =
  /\b(?:up to|limit\w*|largest|biggest|widest|fattest|thickest|maximum|max|most|ceiling|through|down|gets?|takes?|means|goes?|go|pass|passes|use|uses|choose|open|have|has|need|needs|gives?|wants?|allows?|suits?|calls for|so|therefore|hence|it's|is)\b/;

/** Suction is spoken of here, or right before and this sentence goes on with it. */
function ofSuction({ before, context, headings }: Scene, text: string): boolean {
  if (SUCTION.test(text)) return true;
  if (!TAKEN.test(text)) return false;
  const near = [...context.slice(-2), ...before].slice(-3);
  return (
    near.some(({ items }) => SUCTION.test(joined(items))) ||
    SUCTION.test((headings.at(-1) ?? '').toLowerCase())
  );
}
