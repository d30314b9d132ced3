/**
 * What becomes of the sizes on the way from one label to another, where the sentence before sets them out: "row A 14 G, row B
 * 18 G, row C 22 G. Going from A to C the cannulas get smaller."
 */
import { firstMatch } from '../../notes/patterns.ts';
import { sentencesBefore, single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable } from '../text/magnitudes.ts';
import { type Group, groups, operand, type Scene, sameSystem, sentenceSpan, spanOf } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { becomes } from './changing.ts';
import type { Reading } from './model.ts';

const FROM_TO =
  /\bfrom (?:(?:the )?(?:row|tray|drawer|shelf|hook|box|station|bin|table|bay|slot|rack|hole|place|number|item|lumen|case|bed) )?([a-z]|\d{1,2}|one|first|four) (?:through |down |up |along )?to (?:(?:the )?(?:row|tray|drawer|shelf|hook|box|station|bin|table|bay|slot|rack|hole|place|number|item|lumen|case|bed) )?([a-z]|\d{1,2})(?= |$)/;

export function labelledRow(scene: Scene): Reading[] {
  const { items } = scene;
  const found = firstMatch(FROM_TO, joined(items, 0, 14));
  const cue = found ? becomes(items) : undefined;
  if (!found || !cue || !decidable(cue.axis)) return [];
  if (items.some(({ word }) => NEGATIONS.has(word) || OPEN.test(word))) return [];
  const previous = sentencesBefore(scene)[0];
  if (!previous || previous.close === '?') return [];
  const row = groups(previous.items).flatMap(single);
  const labels = row.map((g) => labelOf(previous.items, g));
  const [first, last] = [labels.indexOf(found[1]!), labels.indexOf(found[2]!)];
  if (first < 0 || last < 0 || Math.abs(last - first) < 2 || labels.includes(undefined)) return [];
  if (!row.every((g) => g.sizes.length === 1 && sameSystem(g, row[0]!))) return [];
  const run = first < last ? row.slice(first, last + 1) : row.slice(last, first + 1).toReversed();
  return [
    {
      claim: {
        kind: 'order',
        construction: 'labelled-row',
        span: sentenceSpan(scene),
        focus: spanOf(scene, items[cue.at]!),
        items: run.map((g) => operand(scene, g)),
        axis: cue.axis,
        runs: cue.runs,
      },
      at: cue.at,
      from: cue.at,
      to: cue.to,
    },
  ];
}
const OPEN = /^(?:if|unless|should|would|may|might|could|or|but|longer|shorter)$/;

/** "row A 14 G", "hook 1 is 6-0", "A: 14 G". */
function labelOf(items: readonly Item[], { from }: Group): string | undefined {
  const at = /^(?:is|holds?|has|:|=|carries|,)$/.test(items[from - 1]?.word ?? '') ? from - 2 : from - 1;
  const word = items[at]?.word ?? '';
  return /^(?:[a-z]|\d{1,2})$/.test(word) ? word : undefined;
}
