/** Suture needle points: where the edge of a cutting needle lies, and that a taper point has none. */
import { type Item, readItems } from '../text/items.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

interface PointAt {
  readonly at: number;
  readonly to: number;
  readonly id: 'reverse-cutting' | 'cutting' | 'taper' | 'blunt';
}

const INNER = new Set(['inner', 'inside', 'concave', 'wound-side', 'surface-seeking', 'upward', 'top']);
const OUTER = new Set(['outer', 'outside', 'convex', 'depth-seeking', 'underside', 'belly', 'back']);

export const points: Construction = {
  id: 'points',
  needs: () => [{ like: POINT }, { like: HEADED }],
  read(scene) {
    const own = pointsIn(scene.items);
    const named = own.length > 0 ? own : headed(scene);
    return [
      ...edges(scene, named),
      ...edgeless(scene, named),
      ...denied(scene, named),
      ...cuts(scene, named),
      ...section(scene, named),
    ];
  },
};

/** With which the name of a point begins. */
const POINT = /^(?:reverse|cutting|reverse-cutting|taper|taper-?point|tapered|round|round-?bodied|blunt)$/;
const HEADED = /^(?:edges?|curve|section|cross-section)$/;

/** The one point that the heading right above names: its sentences are about it. */
function headed(scene: Scene): PointAt[] {
  if (!scene.items.some((item) => HEADED.test(item.word))) return [];
  const named = pointsIn(readItems(scene.headings.at(-1) ?? '', []));
  const only = named[0];
  return only && named.length === 1 ? [{ ...only, at: -1, to: -1 }] : [];
}

function pointsIn(items: readonly Item[]): PointAt[] {
  const cutting = items.some((item) => item.word === 'cutting');
  const found: PointAt[] = [];
  for (let i = 0; i < items.length; i++) {
    const word = items[i]!.word;
    const next = items[i + 1]?.word ?? '';
    if ((word === 'reverse' && next === 'cutting') || word === 'reverse-cutting')
      found.push({ at: i, to: word === 'reverse' ? i + 1 : i, id: 'reverse-cutting' });
    else if (cutting && word === 'conventional' && /^(?:ones?|kind|sort|type)$/.test(next))
      found.push({ at: i, to: i + 1, id: 'cutting' });
    else if (
      word === 'cutting' &&
      items[i - 1]?.word !== 'reverse' &&
      (next === 'needle' ||
        next === 'needles' ||
        items[i - 1]?.word === 'conventional' ||
        items[i - 1]?.word === 'standard') &&
      next !== 'edge'
    )
      found.push({ at: i, to: i, id: 'cutting' });
    else if (
      ['taper', 'taper-point', 'tapered', 'round-bodied', 'roundbodied', 'taperpoint'].includes(word) ||
      (word === 'round' && /^bod(?:y|ied)$/.test(next))
    )
      found.push({ at: i, to: i, id: 'taper' });
    else if (word === 'blunt' && /^(?:needle|point|taper|tip|suture)/.test(next))
      found.push({ at: i, to: i, id: 'blunt' });
  }
  return found;
}

/** "its edge faces the wound", "points away from the wound". */
function facing(items: readonly Item[], at: number): 'inner' | 'outer' | undefined {
  const word = items[at]!.word;
  const wound = items.slice(at + 1, at + 4).some((item) => /^(?:wound|incision)$/.test(item.word));
  const edge = items.slice(Math.max(0, at - 4), at).some((item) => /^(?:edges?|apex|third)$/.test(item.word));
  if (!wound || !edge) return undefined;
  if (word === 'away') return 'outer';
  if (!/^(?:faces|facing|towards?)$/.test(word) || items[at - 1]?.word === 'away') return undefined;
  return 'inner';
}

/** "reverse cutting: the edge lies on the outer curve". One point and one side in the clause, or they alternate. */
function edges(scene: Scene, named: readonly PointAt[]): Reading[] {
  const { items } = scene;
  const cutting = named.filter((p) => p.id === 'reverse-cutting' || p.id === 'cutting');
  const sides = items.flatMap((item, at) => {
    const side = INNER.has(item.word) ? 'inner' : OUTER.has(item.word) ? 'outer' : facing(items, at);
    const near = items.slice(Math.max(0, at - 8), at + 4).some((word) => EDGE.has(word.word));
    const wound = items
      .slice(at + 1, at + 6)
      .map((next) => next.word)
      .join(' ');
    if (
      /^(?:edge|side|margin|lip)s? of (?:the |a |each )?(?:wound|incision|skin|lesion|flap|cut)/.test(wound)
    )
      return [];
    return side && (near || items[at]!.word.endsWith('seeking')) ? [{ at, side }] : [];
  });
  const settled = sides.filter((s, i) => i === 0 || s.side !== sides[i - 1]!.side);
  if (cutting.length === 0 || cutting.length !== settled.length) return [];
  return cutting.flatMap((point, i) => {
    const { at, side } = settled[i]!;
    const next = cutting[i + 1];
    const madeBy = cutting.length === 1 && at < point.at && makes(items.slice(at + 1, point.at));
    if ((at < point.to && !madeBy) || (next && at > next.at)) return [];
    return [reading(scene, point, at, `edge:${side}`)];
  });
}
/** "The edge on the outer curve makes it a reverse cutting needle." */
const makes = (between: readonly Item[]) =>
  between.length <= 8 && between.some((item) => /^(?:makes?|means|marks|defines)$/.test(item.word));
const EDGE = new Set(['edge', 'edges', 'curve', 'curvature', 'apex', 'side', 'cutting', 'third', 'surface']);

/** "a taper point has three cutting edges". */
function edgeless(scene: Scene, named: readonly PointAt[]): Reading[] {
  const taper = named.find((p) => p.id === 'taper' || p.id === 'blunt');
  if (!taper || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex((item, i) => i > taper.to && /^edges?$/.test(item.word));
  if (at < 0 || at - taper.to > 14) return [];
  const between = items.slice(taper.to, at);
  const says = between.some((item) => /^(?:has|have|with|carries|cuts|three|sharp|its)$/.test(item.word));
  // "a taper needle, since a sharp edge could …": the edge is another needle's.
  const reason = between.findIndex((item) => /^(?:since|because|as|so|where|unlike|than)$/.test(item.word));
  const foreign =
    reason >= 0 && !between.slice(reason).some((item) => /^(?:its|it|they|their)$/.test(item.word));
  return says && !foreign ? [reading(scene, taper, at, 'edge:some')] : [];
}

/** "a reverse cutting needle has no edges at all". */
function denied(scene: Scene, named: readonly PointAt[]): Reading[] {
  const cutting = named.find((p) => p.id === 'reverse-cutting' || p.id === 'cutting');
  if (!cutting || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex((item, i) => i > cutting.to && /^edges?$/.test(item.word));
  const near = items.slice(Math.max(cutting.to, at - 4), at);
  if (at < 0 || at - cutting.to > 8 || !near.some((item) => item.word === 'no' || item.word === 'without'))
    return [];
  return [{ ...reading(scene, cutting, at, 'edge:none'), own: true }];
}

/** "a taper needle cuts tissue". */
function cuts(scene: Scene, named: readonly PointAt[]): Reading[] {
  const taper = named.find((p) => p.id === 'taper' || p.id === 'blunt');
  if (!taper || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex((item, i) => i > taper.to && /^(?:cuts?|slices?)$/.test(item.word));
  const object = items.slice(at + 1, at + 4).some((item) => /^tissues?$/.test(item.word));
  return at > 0 && at - taper.to <= 3 && object ? [reading(scene, taper, at, 'edge:some')] : [];
}

/** "taper needles are round in section", "a cutting needle is triangular". */
function section(scene: Scene, named: readonly PointAt[]): Reading[] {
  const point = named[0];
  if (!point || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex(
    (item, i) => i > point.to && (item.word === 'triangular' || item.word === 'round'),
  );
  const between = items.slice(point.to + 1, Math.max(at, 0));
  const said = items.slice(at + 1, at + 4).some((item) => /^(?:cross-)?section$/.test(item.word));
  if (at < 0 || !said || between.length > 5 || !between.some((item) => /^(?:is|are)$/.test(item.word)))
    return [];
  return [reading(scene, point, at, `section:${items[at]!.word}`)];
}

function reading(scene: Scene, point: PointAt, at: number, property: string): Reading {
  return {
    claim: {
      kind: 'property',
      construction: 'points',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[at]!),
      subject: point.id,
      of: 'point',
      property,
      has: true,
    },
    at,
    from: point.at < 0 ? at : Math.min(point.at, at),
    to: Math.max(point.to, at),
  };
}
