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
  needs: () => [
    { holds: ['compared', 'material'], words: ['than'] },
    { holds: ['material'], words: ['same', 'equally', 'as'] },
  ],
  read(scene) {
    const { items } = scene;
    if (scene.sentence.close === '?' || items.length > 45) return [];
    const alike = setEqual(items);
    if (alike.length > 0) return alike.map(({ at, to }) => reading(scene, at, to, 'gut-is-as-thick'));
    const than = items.findIndex(({ word }) => word === 'than');
    const words = measuredWords(items).filter((m) => m.degree === 'comparative' && m.axis !== 'other');
    const word = words.find((m) => m.at < than && than - m.to <= 3);
    if (word?.axis !== 'outer' || word.idiom || !ofOneSize(items)) return [];
    if (items.some(({ word: own }) => NEGATIONS.has(own) || OPEN.test(own))) return [];
    const [left, right] = [kindIn(items, 0, word.at), kindIn(items, than + 1, sideEnd(items, than))];
    if (!left || !right || left === right) return [];
    const thicker = (word.sign === 1) === (left === 'gut');
    return [reading(scene, word.at, than, thicker ? 'gut-is-thicker' : 'gut-is-thinner')];
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

/** "A 3-0 gut and a 3-0 nylon have the same diameter", "4-0 chromic is as thick as 4-0 silk". */
function setEqual(items: readonly Item[]): { at: number; to: number }[] {
  const said = joined(items);
  const match = EQUAL.exec(said);
  if (!match || items.some(({ word }) => NEGATIONS.has(word) || OPEN.test(word) || SETS_APART.test(word)))
    return [];
  const all = groups(items);
  const [first] = all;
  const oneSize = first
    ? all.length > 1 && first.sizes[0]!.system === 'usp' && all.every((g) => sameSizes(first, g))
    : SIZE_FOR_SIZE.test(said);
  const kinds = materialsIn(items).map(({ at, to }) => kindIn(items, at, to + 1));
  if (!oneSize || !kinds.includes('gut') || !kinds.includes('synthetic') || kinds.includes(undefined))
    return [];
  const at = said.slice(0, match.index).split(' ').length - 1;
  return [{ at, to: at + match[0].split(' ').length - 1 }];
}
const EQUAL =
  /\b(?:(?:have|has|share|are) (?:(?:exactly|just|both|all|also) )*(?:(?:one and )?the same|one) (?:diameter|thickness|width|calib(?:re|er))|are (?:(?:exactly|just|both|also) )*equally (?:thick|thin|wide|fine)|is (?:(?:exactly|just|also|quite) )*as (?:thick|thin|wide|fine) as)\b/;
const SETS_APART =
  /^(?:but|while|whereas|although|than|or|except|between|only|once|when|until|myth|mistake|wrong|metric|japan\w*)$/;

function reading(scene: Scene, at: number, to: number, formula: string): Reading {
  return { claim: ruleClaim(scene, 'gut-rule', 'usp', formula, at, to), at, from: at, to };
}
