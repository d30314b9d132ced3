/**
 * The two numbers on one box: "on the label of the 3-0 silk you will also see metric 2", "the 2-0 held; on the box the same
 * thread is marked as metric 3". The words say where the number stands, not that it is the same size; a box says both.
 */
import { joined } from '../text/joined.ts';
import { changed } from '../text/place.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { equate } from './equate.ts';
import type { Construction, Reading } from './model.ts';
import { resumed } from './resumed.ts';

const BOXES = new Set(
  'box boxes label labels packet packets pack packs packaging wrapper wrappers foil foils sachet sachets carton cartons printed marked labelled labeled'.split(
    ' ',
  ),
);

export const boxed: Construction = {
  id: 'boxed',
  leaning: true,
  needs: () => [{ sizes: 1, words: BOXES, also: MARKS }],
  read(scene) {
    const all = groups(scene.items);
    const metric = all.filter((g) => g.sizes[0]!.system === 'ep-metric');
    const [right] = metric;
    if (!right || metric.length > 1 || right.sizes.length > 1 || all.length > 2) return [];
    if (scene.sentence.close === '?' || scene.items.slice(0, right.to + 4).some(otherwise)) return [];
    const own = all.find((g) => g !== right);
    return own ? here(scene, own, right) : takenUp(scene, right);
  },
};

const MARKS =
  /^(?:marked|labelled|labeled|printed|reads?|says?|shows?|shown|see|find|called|calls|stands?|carries|carry|bears?|has|gives?|is|are|will|'ll)$/;
const OTHERWISE =
  /^(?:beside|next|another|other|others|neighbouring|different|above|below|under|over|but|unlike|instead|than|mistake|mistaken|mistakenly|wrong|wrongly|confused|confusing|asked|expected|wanted|needed|if|whether|unless|or|gut|catgut|chromic|old|older|former|formerly|used|near|nearest)$/;
const otherwise = ({ word }: { readonly word: string }): boolean =>
  OTHERWISE.test(word) || NEGATIONS.has(word);

/** "On the label of the 3-0 silk you'll also see metric 3": the number is the last thing said of the one thread. */
function here(scene: Scene, left: Group, right: Group): Reading[] {
  const between = joined(scene.items, left.to + 1, right.from);
  if (left.sizes[0]!.system !== 'usp' || left.sizes.length > 1 || left.from > right.from) return [];
  if (
    !OF_BOX.test(joined(scene.items, 0, left.from)) &&
    !/\b(?:box|label|packet|pack|wrapper|foil|sachet)\b/.test(between)
  )
    return [];
  if (!SEEN.test(between) || right.from - left.to > 10) return [];
  // What stands before the thread says where the number is found, not what is measured.
  const shift = left.from;
  const own = changed(scene, { items: scene.items.slice(shift) });
  const back = (g: Group): Group => ({ ...g, from: g.from - shift, to: g.to - shift });
  return equate(own, back(left), back(right)).map((reading) => ({
    ...reading,
    at: right.from,
    from: left.from,
    to: right.to,
  }));
}
const OF_BOX =
  /\b(?:box|label|packet|pack|wrapper|foil|sachet|carton)s? (?:of|for|on|with) (?:an?|the|our|your|every|each)?(?: |$)?$/;
const SEEN =
  /(?:^| )(?:(?:you|we|they|one)(?: will|'ll| can)?(?: also| then)? (?:see|read|find)(?: the (?:words?|number|figure))?|you'll (?:also )?(?:see|read|find)|(?:it|that|which)? ?(?:also )?(?:says|reads|shows|carries|bears|gives)(?: the (?:words?|number|figure|mark|marking|legend))?|stands|is (?:also )?(?:marked|printed|labelled|labeled))(?: as| also| the number| its)?$/;

/** "The 2-0 held. On the box the same thread is marked as metric 2": the one thread of the sentence before. */
const takenUp = (scene: Scene, right: Group): Reading[] =>
  TAKEN_UP.test(joined(scene.items, 0, right.from))
    ? resumed(scene, right, (left) => left.sizes[0]!.system === 'usp')
    : [];
const TAKEN_UP =
  /^(?:and |on (?:the|its) (?:box|label|packet|pack|wrapper|foil|sachet|carton) )?(?:,? ?)(?:(?:the|this|that) same (?:thread|strand|suture|size|one|silk|nylon)|this (?:thread|strand|suture|size|one)|it|that)(?: (?:is|was|will be|would be))?(?: (?:also|always))?(?: (?:marked|labelled|labeled|printed|shown|called))?(?: (?:as|with|under|down as))?$|^the (?:box|label|packet|pack|wrapper|foil|sachet|carton) (?:then )?(?:calls it|marks it|marks it as|gives it as|shows it as|says|reads|shows|carries)$/;
