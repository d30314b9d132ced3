/** How a thread is built, in words: "polyglactin 910 consists of many filaments", "nylon is made of a single strand". */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { materialsIn, type NamedMaterial } from '../text/materials.ts';
import type { Scene } from '../text/scene.ts';
import { materialClaim } from './material-claim.ts';
import type { Construction, Reading } from './model.ts';

const COUNT: ReadonlyMap<string, string> = new Map([
  ...['single', 'one', '1'].map((word) => [word, 'structure:monofilament'] as const),
  ...['many', 'several', 'multiple', 'numerous'].map((word) => [word, 'structure:multifilament'] as const),
]);
const FILAMENT = /^(?:filaments?|strands?|fibres?|fibers?)$/;
const BUILT = /^(?:consists?|made|composed|built|spun|woven|plaited|twisted|braided|formed|wound)$/;

export const strands: Construction = {
  id: 'strands',
  needs: () => [{ holds: ['material'], like: MADE }],
  read(scene) {
    const { items } = scene;
    const named = materialsIn(scene.items);
    const subject = named[0];
    if (!subject || items.some((item) => /^(?:not|never|unlike|like|than|no)$/.test(item.word))) return [];
    const one = new Set(named.map((m) => m.id)).size === 1;
    return [...(one ? counted(scene, subject) : []), ...from(scene, named)];
  },
};

/** "consists of many filaments", "has one strand". */
function counted(scene: Scene, subject: NamedMaterial): Reading[] {
  const { items } = scene;
  const built = items.findIndex(
    (item, i) => i > subject.to && (BUILT.test(item.word) || item.word === 'has'),
  );
  if (built < 0 || built - subject.to > 4) return [];
  const at = items.findIndex((item, i) => i > built && i <= built + 4 && COUNT.has(item.word));
  const strand = items.findIndex((item, i) => i > at && i <= at + 3 && FILAMENT.test(item.word));
  if (at < 0 || strand < 0) return [];
  // "has one strand broken" counts something else.
  if (items[built]!.word === 'has' && items[strand + 1] && items[strand + 1]!.kind !== 'punctuation')
    return [];
  return [reading(scene, subject, at, COUNT.get(items[at]!.word)!)];
}

const MADE =
  /^(?:consists?|made|composed|built|spun|formed|wound|plaited|braided|has|comes?|derived|prepared|twisted|woven|is|are|animal|plant|polymer|vegetable|collagen|silkworms?)$/;
const SOURCE = /^(?:made|spun|comes?|derived|prepared|twisted|woven|drawn)$/;
const ORIGINS: ReadonlyMap<string, string> = new Map([
  ...'animal animals sheep cow cows cattle beef ox collagen intestine bowel silkworm silkworms cocoon cocoons worm worms wool hair animals'
    .split(' ')
    .map((word) => [word, 'origin:animal'] as const),
  ...'plant plants flax cotton vegetable cellulose'.split(' ').map((word) => [word, 'origin:plant'] as const),
  ...'polymer polymers plastic petroleum oil synthetics'
    .split(' ')
    .map((word) => [word, 'origin:synthetic'] as const),
]);
const BEFORE_SOURCE =
  /^(?:an?|the|from|of|out|natural|fine|pure|treated|twisted|cleaned|purified|mammalian|healthy|beaten|fibres?|fibers?|wall|walls|small|lining|synthetic|single|gut)$/;

/** "is made from animal protein", "comes from sheep gut", "is a plant fibre". */
function from(scene: Scene, named: readonly NamedMaterial[]): Reading[] {
  const { items } = scene;
  const [subject, ...others] = listedFirst(items, named);
  const source = items.findIndex((item, i) => i > subject!.to && ORIGINS.has(item.word));
  // "comes from sheep gut": the gut is the animal's, not a thread.
  if (
    source < 0 ||
    others.some((m) => m.at < source && items[m.to + 1]?.word !== 'of') ||
    others.some((m) => m.at > source + 1)
  )
    return [];
  const between = items.slice(subject!.to + 1, source);
  const verb = between.findIndex((item) => SOURCE.test(item.word));
  const said = between.slice(between.findLastIndex((item) => item.word === ',') + 1);
  const noun =
    said.length <= 2 &&
    said.length > 0 &&
    said.every((item) => /^(?:is|an?)$/.test(item.word)) &&
    /^(?:fibre|fiber|protein|product|material|thread)$/.test(items[source + 1]?.word ?? '');
  const made =
    verb >= 0 &&
    verb <= 3 &&
    /^(?:from|of|out)$/.test(between[verb + 1]?.word ?? '') &&
    between
      .slice(0, verb)
      .every((item) => /^(?:,|is|are|was|which|that|sutures?|usually|a|thread)$/.test(item.word)) &&
    between.slice(verb + 1).every((item) => BEFORE_SOURCE.test(item.word));
  // "Silk: animal protein."
  const labelled =
    between[0]?.word === ':' &&
    between.slice(1).every((item) => BEFORE_SOURCE.test(item.word)) &&
    between.length <= 3;
  // "The box of silk, made from cardboard, …".
  if (between[0]?.word === ',' && KEPT_IN.test(joined(items, subject!.at - 4, subject!.at))) return [];
  const { length } = named;
  const all = named.slice(0, length - others.length);
  return made || labelled || (noun && between.length > 0)
    ? all.map((one) => reading(scene, one, source, ORIGINS.get(items[source]!.word)!))
    : [];
}

const KEPT_IN =
  /\b(?:box|boxes|packs?|packets?|sleeves?|reels?|cards?|wrappers?|drawers?|bags?|labels?) of\b/;

/** "Cotton, linen and nylon come from plants": said of each; the last of them leads on. */
function listedFirst(items: readonly Item[], named: readonly NamedMaterial[]): readonly NamedMaterial[] {
  let last = 0;
  while (
    named[last + 1] &&
    items.slice(named[last]!.to + 1, named[last + 1]!.at).every((item) => /^(?:,|and)$/.test(item.word))
  )
    last++;
  return named.slice(last);
}

function reading(scene: Scene, subject: NamedMaterial, at: number, property: string): Reading {
  const claim = materialClaim(scene, 'strands', subject.id, property, at);
  return { claim, at, from: subject.at, to: at };
}
