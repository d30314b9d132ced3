/**
 * No other is more: "nothing on this trolley is wider than the 14 G: the others are 18 and 20 G", "none of our drains,
 * 20, 24 or 28 Fr, is narrower than the 20 Fr". The size after "than" stands at the end of its set. "All of them are wider
 * than a 10 Fr": the set of the sentence before.
 */
import { single } from '../text/focus.ts';
import { joined } from '../text/joined.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction } from './model.ts';
import { comparison, withEach, wordless } from './than.ts';

export const nothing: Construction = {
  id: 'nothing',
  needs: () => [
    { sizes: 3, holds: ['compared'], words: ['than'] },
    { sizes: 1, holds: ['compared'], words: ['them', 'these', 'those', 'nothing', 'none', 'no'] },
  ],
  read(scene) {
    const { items } = scene;
    const of = OF_THEM.exec(joined(items, 0, 5));
    // "All of them are wider": each is so; "none of them is wider": the last is the widest.
    const allSo = of !== null && of[1] !== 'none';
    const none = allSo ? 0 : items.findIndex((item, i) => i <= 2 && NONE.test(item.word));
    const than = items.findIndex((item, i) => i > none && item.word === 'than');
    const word = measuredWords(items).find((m) => m.degree === 'comparative' && m.at < than && m.at > none);
    const all = groups(items);
    const last = all.find((g) => g.from > than && g.from - than <= 3);
    if (none < 0 || !word || !last || than - word.to > 2 || last.sizes.length !== 1) return [];
    if (!decidable(word.axis) || word.idiom) return [];
    if (of && !IS.test(joined(items, of[0].split(' ').length, word.at))) return [];
    const here = of ? setBefore(scene, last) : restOf(scene, last, all);
    // "We carry 14, 16 and 18 G. Nothing there is wider than the 14 G.": of the set that holds it.
    const rest =
      here.length < 2 && !of && all.length === 1 && ofSet(scene, last) ? setBefore(scene, last) : here;
    if (rest.length < 2) return [];
    const other: Group = {
      from: last.from,
      to: last.to,
      mentions: rest.flatMap((g) => g.mentions),
      sizes: rest.flatMap((g) => g.sizes).filter((size) => size.value !== last.sizes[0]!.value),
    };
    if (other.sizes.length === 0) return [];
    const more = (word.sign === 1) !== allSo;
    const claim = comparison(scene, 'nothing', last, other, word, more ? 'more' : 'less');
    return [withEach({ ...wordless(claim), at: last.from, from: last.from, to: last.to, own: true })];
  },
};

const IS = /^(?:is|are|was|were|runs?|flows?|looks?)(?: (?:any|much|even|far|a bit|still|also|certainly))*$/;
const OF_THEM = /^(none|all|each|every one) of (?:them|these|those)\b/;

/** The sizes that the sentence before lists. */
function setBefore({ before }: Scene, last: Group): Group[] {
  const previous = before.at(-1);
  const listed = previous && previous.close !== '?' ? groups(previous.items).flatMap(single) : [];
  const plain = listed.every((g) => sameSystem(g, last) && g.sizes.length === 1);
  return plain ? listed.filter((g) => !sameSizes(g, last)) : [];
}

const ofSet = ({ before, items }: Scene, last: Group): boolean =>
  groups(before.at(-1)?.items ?? [])
    .flatMap(single)
    .some((g) => sameSizes(g, last)) &&
  THERE.test(joined(items, 0, 6)) &&
  /^(?:[.,;:!)—–]|cannula[es]?|needles?|drains?|tubes?|catheters?|one|)$/.test(
    items[last.to + 1]?.word ?? '',
  );
const THERE =
  /^(?:nothing|none|no (?:other|cannula|needle|drain|tube|catheter|one|thread|suture))(?: (?:else|there|here|on it|in it|of ours|we have|we carry|in stock))? (?:is|runs|flows)\b/;

const NONE = /^(?:nothing|none|no)$/;
const OTHERS = /^(?:others?|rest|remaining|besides|beside|only|also)$/;

/** Sizes of the set: before "than" in its own list, or after a word for the rest. */
function restOf({ items }: Scene, last: Group, all: readonly Group[]): Group[] {
  const alike = all.filter((g) => g !== last && sameSystem(g, last));
  const before = alike.filter((g) => g.to < last.from && g.sizes.length >= 2);
  if (before.length > 0) return before.flatMap((g) => g.mentions.map((_, i) => part(g, i)));
  const at = items.findIndex((item, i) => i > last.to && OTHERS.test(item.word));
  const list = alike.find((g) => g.from > at);
  if (at < 0 || !list || items[last.to + 1]?.kind !== 'punctuation') return [];
  const said = items.slice(at + 1, list.from);
  if (!said.every((item) => ARE.test(item.word) || item.deviceNoun)) return [];
  return said.some((item) => /^(?:are|is|:|being)$/.test(item.word)) && list.sizes.length >= 2
    ? list.mentions.map((_, i) => part(list, i))
    : [];
}
const ARE = /^(?:are|is|:|being|all|sizes?|the|a|an|only)$/;

const part = (group: Group, i: number): Group => ({
  ...group,
  mentions: [group.mentions[i]!],
  sizes: group.mentions[i]!.sizes,
});
