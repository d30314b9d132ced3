/** Which of the two cutting needles is the likelier to cut out through the edge of the wound. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { PointAt } from '../text/points.ts';

interface Tearing {
  readonly point: PointAt;
  readonly at: number;
  readonly property: 'cuts-out:conventional' | 'cuts-out:reverse';
}

/** "A reverse cutting needle is more likely to cut out than a conventional one", "compared with conventional cutting, …". */
export function tearing(items: readonly Item[], named: readonly PointAt[]): Tearing[] {
  const [first, second] = named;
  if (!first || !second || named.length !== 2 || first.at < 0) return [];
  const pair = [first.id, second.id];
  if (!pair.includes('reverse-cutting') || !pair.includes('cutting')) return [];
  const beside = SET_BESIDE.test(joined(items, 0, first.at));
  const point = beside ? second : first;
  const end = items.findIndex(
    ({ word }, i) => i > point.to && (beside ? /^(?:[.;,]|than|but|because|since)$/ : /^than$/).test(word),
  );
  if (!beside && (end < 0 || end > second.at)) return [];
  const text = joined(items, point.to + 1, end < 0 ? items.length : end);
  const match = TEARS.exec(text) ?? TORN.exec(text) ?? RISK.exec(text);
  if (!match || /\b(?:not|never|no|if|nor|neither|may|might|could)\b/.test(text)) return [];
  const less = /^(?:less|lower|smaller)/.test(match[1]!);
  const at = items.findIndex((item, i) => i > point.to && item.word === match[1]);
  const conventional = less === (point.id === 'reverse-cutting');
  return [{ point, at, property: conventional ? 'cuts-out:conventional' : 'cuts-out:reverse' }];
}

const SET_BESIDE =
  /^(?:when )?(?:compared (?:with|to)|in comparison (?:with|to)|against|next to|beside|set against|relative to)(?: (?:an?|the|your|our))*$/;
const OUT = '(?:out|through|towards|into|the)\\b';
const TEARS = new RegExp(
  `\\b(more|less|likelier)(?: likely| prone| apt| inclined| liable| often| readily| easily)? (?:to )?(?:cut|tear|pull|slice)(?:s|ting|ing)? ${OUT}`,
);
/** "cut out through the edge more readily". */
const TORN =
  /\b(?:cut|tear|pull|slice)s? (?:out|through)\b.{0,40}? (more|less) (?:readily|often|easily|frequently)\b/;
/** "carries a greater risk of cutting out". */
const RISK =
  /\b(greater|higher|bigger|larger|lower|smaller|more|less)(?: of an?)? (?:risk|danger|chance|tendency|likelihood) (?:of|to) (?:cut|tear|pull|slice)(?:ting|ing)? (?:out|through)\b/;
