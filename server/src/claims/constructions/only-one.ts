/**
 * One thread told from those named before by what it is: "silk, nylon, polyglactin 910: the only one the body absorbs is the
 * nylon", "the only monofilament of these is the silk". What the words say is said of the one named behind them.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { materialsIn, type NamedMaterial } from '../text/materials.ts';
import { qualityAt } from '../text/qualities.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { fateIn } from '../words/fates.ts';
import { materialClaim } from './material-claim.ts';
import type { Construction, Reading } from './model.ts';

export const onlyOne: Construction = {
  id: 'only-one',
  needs: () => [{ holds: ['material'], words: ['only', 'one', 'sole', 'single'] }],
  read(scene) {
    const { items } = scene;
    const opened = items.findIndex((_, i) => OPENS.test(joined(items, i, i + 2)));
    const named = materialsIn(items);
    const chosen = named.at(-1);
    if (opened < 0 || !chosen || chosen.at < opened || scene.sentence.close === '?') return [];
    const is = chosen.at - (/^(?:the|our|an?)$/.test(items[chosen.at - 1]?.word ?? '') ? 2 : 1);
    const end = items[chosen.to + 1];
    if (!/^(?:is|are|was|:|=|being)$/.test(items[is]?.word ?? '') || (end && end.kind !== 'punctuation'))
      return [];
    if (is - opened > LONGEST || named.some((m) => m.at > opened && m !== chosen)) return [];
    if (!setNames(scene, named.slice(0, -1), opened, chosen)) return [];
    return toldBy(items, opened, is).map(({ at, property }) => reading(scene, chosen, at, property));
  },
};

const OPENS = /^the (?:only|sole|single|one)\b/;
const LONGEST = 14;

/** "The only one": one of two or more named before it, in the sentence or the one before. */
function setNames(
  scene: Scene,
  here: readonly NamedMaterial[],
  opened: number,
  { id }: NamedMaterial,
): boolean {
  const own = here.filter((m) => m.to < opened);
  const previous = scene.before.at(-1);
  const set = own.length > 0 ? own : previous && previous.close !== '?' ? materialsIn(previous.items) : [];
  const ids = new Set(set.map((m) => m.id));
  return ids.size >= 2 && ids.has(id);
}

/** What the words between say of it: one quality, or one fate. */
function toldBy(
  items: readonly Item[],
  from: number,
  to: number,
): { readonly at: number; readonly property: string }[] {
  const words = items.slice(from, to);
  if (
    words.some(({ word, kind }) => kind === 'punctuation' || NEGATIONS.has(word) || OTHER.test(word)) ||
    items.slice(0, from).some(({ word }) => /^(?:if|unless|not|never|suppose)$/.test(word))
  )
    return [];
  const qualities = words.flatMap((_, i) => {
    const row = qualityAt(items, from + i);
    return row ? [{ at: from + i, property: `${row.property}:${row.value}` }] : [];
  });
  const [quality, ...more] = qualities;
  if (quality && more.length === 0 && PLAIN.test(joined(items, from, quality.at))) return [quality];
  if (qualities.some(({ property }) => !property.startsWith('absorbable'))) return [];
  const text = joined(items, from, to);
  const stays =
    /\b(?:stays?|remains?)(?: in)?(?: (?:for (?:good|ever|life)|forever|behind|permanently))?$/.test(text);
  const fate = BODY.test(text) ? 'absorbable:yes' : stays ? 'absorbable:no' : fateIn(text)?.property;
  const goes = DISSOLVES.test(text) ? 'absorbable:yes' : undefined;
  const property = fate ?? goes;
  return property ? [{ at: to - 1, property }] : [];
}
/** "the only absorbable", "the only one of these that is braided". */
const PLAIN =
  /^the (?:only|sole|single|one)(?: (?:one|ones|thread|suture|material|strand|of|these|those|them|the|four|three|two|five|that|which|is|a|an|truly|really|fully|all))*$/;
const BODY =
  /\bthe (?:body|tissues?|patient|wound|enzymes?|cells?) (?:absorbs?|digests?|dissolves?|breaks? down|takes? up|clears?(?: away)?|gets? rid of|removes?|eats?(?: up)?|resorbs?|hydrolyses|disposes of)(?: (?:by itself|within (?:weeks|months|days|a few weeks|a few months)|completely|fully|in time|over time|away|at all))*$/;
const DISSOLVES =
  /\b(?:that|which|to|will) (?:slowly |fully |completely |really |ever )?(?:dissolves?|melts?|disappears?|goes away|is absorbed|gets absorbed|be absorbed|vanish(?:es)?)(?: (?:by itself|on its own|in the body|within (?:weeks|months)|over time))?$/;
/** Another respect, or another person's view of it. */
const OTHER =
  /^(?:quickly|fast|faster|fastest|slowly|slowest|slower|sooner|soonest|first|last|longest|best|most|least|before|until|than|used|called|said|we|like|nearly|almost)$/;

function reading(scene: Scene, m: NamedMaterial, at: number, property: string): Reading {
  const claim = materialClaim(scene, 'only-one', m.id, property, m.at, m.to);
  return { claim, at: m.at, from: Math.min(at, m.at), to: m.to, own: true };
}
