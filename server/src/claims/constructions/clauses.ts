/** The clauses of a sentence that tells which way one scale or several run. */
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';

/** Where each begins and ends. Cut at semicolons, and where a second system begins its own statement. */
export function clauses(items: readonly Item[]): [number, number][] {
  const cuts: [number, number][] = [];
  let from = 0;
  for (let i = 0; i < items.length; i++) {
    const comma =
      items[i]!.word === ',' &&
      (OPENS.has(items[i + 1]?.word ?? '') ||
        rulesAfter(items, from, i) ||
        everyZero(items, i) ||
        ADVISES.test(joined(items, i + 1, i + 3)) ||
        finds(OTHER_WAY, joined(items, i + 1, i + 6)) ||
        otherScale(items, from, i));
    if (items[i]!.word !== ';' && !comma) continue;
    cuts.push([from, i]);
    from = i + 1;
  }
  cuts.push([from, items.length]);
  return cuts;
}
const OPENS = new Set(['but', 'while', 'whereas', 'although', 'though']);

/** "…, so if the vein is tiny, drop to a lower number": what is to be done then. */
const ADVISES = /^(?:and )?so (?:if|when|whenever)\b/;

/** "…, and the other way round for French". */
const OTHER_WAY =
  /^and (?:it is |it's |they are )?(?:exactly |just )?(?:the (?:other way|opposite|reverse)|vice versa)\b/;

/** "…, so every extra zero costs you thickness": a rule of its own. */
const everyZero = (items: readonly Item[], comma: number): boolean =>
  /^(?:so|hence|and so|therefore) (?:every|each)\b/.test(joined(items, comma + 1, comma + 4)) &&
  items.slice(comma + 2, comma + 6).some(({ system }) => system === 'usp-zeros') &&
  !items.slice(comma + 1).some(({ kind }) => kind === 'size');

/** "more gauge is less needle, more French is more catheter": each scale has a clause. */
const otherScale = (items: readonly Item[], from: number, comma: number): boolean => {
  const [before] = items.slice(from, comma).flatMap(({ system }) => system ?? []);
  const after = items.slice(comma + 1, comma + 4).find(({ system }) => system)?.system;
  return (
    before !== undefined &&
    after !== undefined &&
    before !== after &&
    /^(?:more|less|fewer|higher|lower|larger|bigger|smaller|extra)$/.test(items[comma + 1]?.word ?? '')
  );
};

/** "A 5.0 tube is tighter than a 6.0, the number goes up as …": two sizes compared, and the rule told after them. */
const rulesAfter = (items: readonly Item[], from: number, comma: number): boolean =>
  finds(
    /^(?:because |since |as |for )?the (?:numbers?|figures?|gauge|french) (?:goes|go|runs?|rises?|falls?|climbs?|drops?|gets?|grows?|comes?)\b/,
    joined(items, comma + 1, comma + 6),
  ) &&
  items.slice(from, comma).some(({ word }) => word === 'than') &&
  items.slice(from, comma).filter(({ kind }) => kind === 'size').length === 2 &&
  !items.slice(comma + 1).some(({ kind }) => kind === 'size');
