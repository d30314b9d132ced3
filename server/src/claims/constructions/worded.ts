/**
 * A size and a length said in words: "a 30 G is a third of a millimetre across", "an 18 G, a shade over a millimetre";
 * and a length said before its size: "at 0.5 mm across, the 25 G …".
 */
import type { Item } from '../text/items.ts';
import { LENGTH_HEDGES, LENGTH_UNITS, withLengths } from '../text/lengths.ts';
import { changed } from '../text/place.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { equate } from './equate.ts';
import { readPairs } from './equivalence.ts';
import type { Construction, Reading } from './model.ts';

export const worded: Construction = {
  id: 'worded',
  needs: () => [
    { sizes: 1, words: LENGTH_UNITS },
    { holds: ['length'], like: LENGTH_HEDGES },
    { holds: ['length', 'mixed'], like: /\b(?:at|being|measuring|of)$/ },
    { holds: ['length'], words: ['it', 'its'] },
  ],
  read(scene) {
    const said = withLengths(scene.items);
    const items = said?.items ?? scene.items;
    const back = (reading: Reading): Reading =>
      said
        ? { ...reading, at: said.at[reading.at]!, from: said.at[reading.from]!, to: said.at[reading.to]! }
        : reading;
    const row = said ? changed(scene, { items }) : scene;
    const pairs = said ? readPairs(row).filter(openEnded) : [];
    return [...pairs, ...ahead(row), ...resumed(row)].map(back);
  },
};

/** Other lengths are the pairs' own construction to read. */
const openEnded = ({ claim }: Reading) => claim.kind === 'equivalence' && claim.said !== undefined;

const ACROSS = /\b(?:across|wide|thick|diameter|outside|width|thickness|od)\b/;
const AHEAD =
  /\b(?:at|being|measuring|with an? (?:outer |outside |external )?(?:diameter|width|thickness) of)(?: (?:only|just|about|roughly|around|nearly|almost|some|under|over|a (?:mere|bare|shade|hair|touch)))*$/;
const BRIDGE =
  /^(?:,|across|wide|thick|in|outer|outside|external|diameter|width|overall|od|of|the|an?|our|this|that|your|fine|thin|slim|little|small|big|fat|stout|usual|steel|silk|nylon|each)$/;

/** "At 0.9 mm across, the 25 G is what we use": only the measure's own words and an article stand between. */
function ahead(scene: Scene): Reading[] {
  const { items } = scene;
  const [length, size] = groups(items);
  if (!length || !size || size.from - length.to > 9 || !isLength(length) || !isSized(size)) return [];
  const before = wordsOf(items, Math.max(0, length.from - 8), length.from);
  const between = items.slice(length.to + 1, size.from);
  if (!AHEAD.test(before) || !between.every((item) => BRIDGE.test(item.word) || item.deviceNoun)) return [];
  const across = ACROSS.test(wordsOf(items, length.to + 1, size.from)) || ACROSS.test(before);
  const fine = length.mentions[0]!.decimals > 0 && size.sizes[0]!.system === 'needle-gauge';
  const states = /^(?:is|has|was|makes|serves|does|suits|remains|stays)$/.test(after(items, size));
  return across || (fine && states) ? equate(scene, size, length) : [];
}

const ITS =
  /^(?:\S+ : )?(?:and |so |then |here )?(?:its (?:outer |outside |external )?(?:diameter|width|thickness|outside|calib(?:er|re))|it)(?: itself)? (?:is|measures|comes to|works out at|comes out at|would be)(?: (?:only|just|about|roughly|around|nearly|almost|then|exactly|some|an?))*$/;

/** "… a 12 Fr drain. It is 6 mm across.": the one size of the sentence before. */
function resumed(scene: Scene): Reading[] {
  const { items } = scene;
  const [length, ...others] = groups(items);
  const previous = scene.before.at(-1);
  if (!length || others.length > 0 || !previous || !isLength(length)) return [];
  const lead = wordsOf(items, 0, length.from);
  const across = ACROSS.test(`${lead} ${wordsOf(items, length.to + 1, length.to + 4)}`);
  const [size, ...more] = groups(previous.items);
  if (!ITS.test(lead) || !across || !size || more.length > 0 || !isSized(size) || size.from > SUBJECT)
    return [];
  if (previous.close === '?' || items[length.to + 1]?.magnitude?.degree === 'comparative') return [];
  const shift = previous.items.length;
  const joined = changed(scene, { items: [...previous.items, ...items] });
  return equate(joined, size, { ...length, from: length.from + shift, to: length.to + shift }).map(
    (reading) => ({
      ...reading,
      at: length.from,
      from: length.from,
      to: length.to,
    }),
  );
}
/** A size this near the start is what its sentence is about. */
const SUBJECT = 7;

/** The first verb after a size, a device's name left out. */
const after = (items: readonly Item[], size: Group): string =>
  items[size.to + (items[size.to + 1]?.deviceNoun ? 2 : 1)]?.word ?? '';

const wordsOf = (items: readonly Item[], from: number, to: number): string =>
  items
    .slice(from, to)
    .map((item) => item.word)
    .join(' ');

const isLength = ({ mentions, sizes }: Group) =>
  mentions.length === 1 && sizes.length === 1 && sizes[0]!.system === 'millimetre' && !mentions[0]!.length;
const isSized = ({ mentions, sizes }: Group) =>
  mentions.length === 1 && /^(?:needle-gauge|french|usp)$/.test(sizes[0]!.system);
