/** Flow against length and width as rules: "the longer the cannula, the slower the flow", "a narrow line runs faster". */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { distinct, groups, type Scene, wordsOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

const LONG = new Map<string, 1 | -1>([
  ['long', 1],
  ['longer', 1],
  ['short', -1],
  ['shorter', -1],
]);
/** One gauge, and its length changed or set against another. */
const spoken = (items: readonly Item[]): boolean =>
  OF_TWO.test(joined(items, 0, 12)) || items.some((_, i) => resized(items, i) || opposed(items, i));

/** "Halving the length of an 18 G": shorter. */
function resized(items: readonly Item[], i: number): 1 | -1 | undefined {
  if (items[i]!.word !== 'length' || items[i - 1]?.word !== 'the') return undefined;
  const verb = items[i - 2]?.word ?? '';
  if (/^(?:halv(?:e|es|ed|ing)|shorten(?:s|ed|ing)?|reduc(?:e|es|ed|ing)|cut(?:s|ting)?)$/.test(verb))
    return -1;
  return /^(?:doubl(?:e|es|ed|ing)|increas(?:e|es|ed|ing)|trebl(?:e|es|ed|ing))$/.test(verb) ? 1 : undefined;
}

/** "The long 16 G runs faster than the short 16 G." */
const opposed = (items: readonly Item[], i: number): boolean =>
  LONG.has(items[i]!.word) &&
  items[i + 1]?.kind === 'size' &&
  items
    .slice(i + 2, i + 14)
    .some(
      ({ word }, k, near) => LONG.get(word) === -LONG.get(items[i]!.word)! && near[k + 1]?.kind === 'size',
    );

/** "Of two 16 G catheters, one short and one long, …": both are of one gauge. */
const OF_TWO = /^(?:of|with|between|take|for|given) (?:any )?(?:two|2)\b/;
const TUBES = /^(?:cannulas?|cannulae|catheters?|lines?|tubes?|needles?|ones?|picc)$/;
const FLOWS = /^(?:flows?|runs?|has|gives|delivers|drains|empties|is|carries)$/;
/** Other things that change flow: the rule is not about the tube alone. */
const OTHER =
  /\b(?:pressure|height|raised?|bag|valve|kinked|vein|than|wider|thinner|narrower|thicker|not|never|no|if)\b/;

export const lengths: Construction = {
  id: 'lengths',
  needs: () => [{ holds: ['compared'] }],
  read(scene) {
    const sizes = distinct(groups(scene.items));
    if (sizes.length > 0) return sizes.length === 1 && spoken(scene.items) ? ofLength(scene) : [];
    return [...ofLength(scene), ...ofWidth(scene)];
  },
};

/** "the long one", "a short thin cannula": not "one short and one long". */
function named(items: readonly Item[], at: number): boolean {
  const next = items.slice(at + 1, at + 4);
  const thing = next.findIndex((item) => TUBES.test(item.word));
  return thing >= 0 && !next.slice(0, thing).some((item) => item.word === 'and' || item.word === ',');
}

/** "a short cannula flows faster (than a long one)": the first length word is the subject's. */
function ofLength(scene: Scene): Reading[] {
  const { items } = scene;
  const at = items.findIndex(
    (item, i) =>
      resized(items, i) ||
      opposed(items, i) ||
      (LONG.has(item.word) &&
        (named(items, i) || (items[i - 1]?.word === 'the' && FLOWS.test(items[i + 1]?.word ?? '')))),
  );
  const flow = measuredWords(items).find((m) => m.axis === 'flow' && m.degree === 'comparative' && m.at > at);
  const than = wordsOf(scene.sentence).replace(
    / than (?:a |an |the )?(?:long|longer|short|shorter)\b.*| (?:because|since) .*/,
    '',
  );
  if (at < 0 || !flow || flow.at - at > 10 || OTHER.test(than)) return [];
  const way = resized(items, at) ?? LONG.get(items[at]!.word);
  const slower = way === 1 ? flow.sign === -1 : flow.sign === 1;
  return [rule(scene, slower ? 'longer-is-slower' : 'longer-is-faster', at, flow.at)];
}

/** "the narrower the cannula, the quicker a litre runs in". */
function ofWidth(scene: Scene): Reading[] {
  const { items } = scene;
  const words = measuredWords(items).filter((m) => m.degree === 'comparative' && !m.idiom);
  const width = words.find((m) => m.axis === 'outer' || m.axis === 'bore');
  const flow = words.find((m) => m.axis === 'flow');
  if (
    words.length !== 2 ||
    !width ||
    !flow ||
    items[width.at - 1]?.word !== 'the' ||
    items[flow.at - 1]?.word !== 'the'
  )
    return [];
  return [rule(scene, width.sign === flow.sign ? 'wider-is-faster' : 'wider-is-slower', width.at, flow.at)];
}

function rule(scene: Scene, formula: string, from: number, at: number): Reading {
  return {
    claim: ruleClaim(scene, 'lengths', 'needle-gauge', formula, at),
    at,
    from,
    to: at,
  };
}
