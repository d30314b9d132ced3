/** Where the flat side of a triangular needle lies: opposite its third edge. "The flat face lies on the outer curve." */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { PointAt } from '../text/points.ts';

interface Flat {
  readonly point: PointAt;
  readonly at: number;
  readonly property: 'flat:inner' | 'flat:outer';
}

/** Between the name of the side and the curve: that it is there, and nothing that turns it round. */
const LIES =
  /^(?:(?:flat |broad )*(?:face|side|surface|base|part|aspect|edge|one)? ?)?(?:of (?:the|that|this|its|a) (?:triangle|needle|section|cross-section|body) ?)?(?:lies|sits|is|faces|forms|makes|runs|being|stands|belongs|on|along|lying|comes)(?: (?:always|then|here|found|turned|put|placed))?(?: (?:on|along|to|towards?|at|against|up|down))?(?: (?:the|its|an?))?$/;
const ABOUT = /^(?:curves?|curvature|bend|side|aspect|of|edge|surface|$)/;

/** One triangular point, its flat side and one of the curves. */
export function flatSide(items: readonly Item[], named: readonly PointAt[]): Flat[] {
  const [point, ...more] = named;
  if (!point || more.length > 0 || (point.id !== 'reverse-cutting' && point.id !== 'cutting')) return [];
  const flat = items.findIndex(
    ({ word }, i) =>
      (word === 'flat' || word === 'base') &&
      i > point.to &&
      /^(?:the|its|that|a)$/.test(items[i - 1]?.word ?? ''),
  );
  const at = items.findIndex(({ word }, i) => i > flat && (INNER.test(word) || OUTER.test(word)));
  if (flat < 0 || at < 0 || at - flat > 12) return [];
  const sides = items.filter(({ word }, i) => i > flat && (INNER.test(word) || OUTER.test(word)));
  if (sides.length > 1 || !LIES.test(joined(items, flat + 1, at))) return [];
  if (!ABOUT.test(items[at + 1]?.kind === 'word' ? items[at + 1]!.word : '')) return [];
  return [{ point, at, property: INNER.test(items[at]!.word) ? 'flat:inner' : 'flat:outer' }];
}
const INNER = /^(?:inner|inside|concave)$/;
const OUTER = /^(?:outer|outside|convex)$/;

/** "the flat side of the triangle faces inwards": the edge is elsewhere. */
export function flatThere(items: readonly Item[], at: number): boolean {
  const before = items.slice(Math.max(0, at - REACH), at);
  const cut = before.findLastIndex(({ word }) => /^(?:[;.:]|but|and|while|whereas)$/.test(word));
  const clause = before.slice(cut + 1);
  const last = clause.findLastIndex(({ word }) => /^(?:flat|base|edges?|apex)$/.test(word));
  return (
    last >= 0 &&
    (/^(?:flat|base)$/.test(clause[last]!.word) || /^(?:flat|blunt)$/.test(clause[last - 1]?.word ?? ''))
  );
}
const REACH = 11;
