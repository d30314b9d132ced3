/**
 * Gut against a synthetic thread of one and the same USP size, of which it is a step the thicker: "3-0 chromic gut is
 * thinner than a 3-0 synthetic", "size for size catgut is the finer of the two".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { materialsIn } from '../text/materials.ts';
import { groups, type Scene, sameSizes } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

export const gutRule: Construction = {
  id: 'gut-rule',
  needs: () => [{ holds: ['compared', 'material'], words: ['than'] }],
  read(scene) {
    const { items } = scene;
    if (scene.sentence.close === '?' || items.length > 45) return [];
    const than = items.findIndex(({ word }) => word === 'than');
    const words = measuredWords(items).filter((m) => m.degree === 'comparative' && m.axis !== 'other');
    const word = words.find((m) => m.at < than && than - m.to <= 3);
    if (word?.axis !== 'outer' || word.idiom || !ofOneSize(items)) return [];
    if (items.some(({ word: own }) => NEGATIONS.has(own) || OPEN.test(own))) return [];
    const [left, right] = [kindIn(items, 0, word.at), kindIn(items, than + 1, sideEnd(items, than))];
    if (!left || !right || left === right) return [];
    const thicker = (word.sign === 1) === (left === 'gut');
    return [reading(scene, word.at, than, thicker)];
  },
};

const OPEN =
  /^(?:if|unless|may|might|could|would|knots?|wet|dry|swollen|used|once|old|monofilaments?|handle|handles|feels?|touch|tie|ties|tying)$/;

/** Both sides in one size, or the words that say so. */
function ofOneSize(items: readonly Item[]): boolean {
  const [a, b, ...more] = groups(items);
  if (!a) return SIZE_FOR_SIZE.test(joined(items));
  if (!b) return a.sizes.length === 1 && SAME_SIZE.test(joined(items));
  return more.length === 0 && sameSizes(a, b) && a.sizes[0]!.system === 'usp';
}
const SIZE_FOR_SIZE =
  /\b(?:(?:the|one and the) same (?:usp )?(?:size|number)|equal (?:usp )?(?:size|number)|size for size|number for number|like for like|one (?:usp )?(?:size|number))\b/;
const SAME_SIZE =
  /\b(?:(?:of|in|with|at) the same (?:usp )?(?:size|number)|one of the same (?:size|number)|size for size)\b/;

/** The side after "than": up to the next mark. */
const sideEnd = (items: readonly Item[], than: number): number => {
  const mark = items.findIndex((item, i) => i > than && item.kind === 'punctuation');
  return Math.min(than + 9, mark < 0 ? items.length : mark);
};

/** The one kind of thread a stretch is about. */
function kindIn(items: readonly Item[], from: number, to: number): 'gut' | 'synthetic' | undefined {
  const ids = new Set(materialsIn(items).flatMap(({ at, id }) => (at >= from && at < to ? [id] : [])));
  const synthetic = items.slice(from, to).some(({ word }) => /^synthetics?$/.test(word));
  const [id, ...more] = [...ids];
  if (more.length > 0) return undefined;
  if (id && /(?:^|-)gut$/.test(id)) return synthetic ? undefined : 'gut';
  return (id && SYNTHETIC.test(id)) || (!id && synthetic) ? 'synthetic' : undefined;
}
/** Not the absorbable monofilaments, which may be as thick as gut. */
const SYNTHETIC = /^(?:polyglactin-910|polyglycolic-acid|nylon|polypropylene|polyester|silk)$/;

function reading(scene: Scene, at: number, than: number, thicker: boolean): Reading {
  const claim = ruleClaim(scene, 'gut-rule', 'usp', thicker ? 'gut-is-thicker' : 'gut-is-thinner', at);
  return { claim, at, from: at, to: than };
}
