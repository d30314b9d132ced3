/** Sizes said to run in an order. */

import type { Context } from '../../mentions/model.ts';
import type { Note } from '../../notes/model.ts';
import { compareThickness, label } from '../../sizes/index.ts';
import type { Thickness } from '../../sizes/model.ts';
import { list, type Part, phrase } from '../../texts/index.ts';
import type { Operand, OrderClaim } from '../model.ts';
import { OUTCOME } from '../texts/comparison.ts';
import { FRAME } from '../texts/frame.ts';
import { ORDER } from '../texts/order.ts';
import { REPAIR } from '../texts/repairs.ts';
import { cannotTell, type Judgement, lensOf, type Repair, sourceNames } from './model.ts';
import { endWords, ruleWords, sizeWords } from './words.ts';

export function judgeOrder(claim: OrderClaim, note: Note, context?: Context): Judgement {
  const up = claim.runs === 'up';
  const says = phrase(ORDER.says, {
    first: endWords(claim.axis, !up),
    last: endWords(claim.axis, up),
    items: list(claim.items.map(itemWords), FRAME.comma),
  });
  const steps = claim.items.slice(1).map((item, i) => compareItems(claim.items[i]!, item, context));
  if (steps.some((step) => step === undefined)) return cannotTell(says, phrase(ORDER.uncompared));
  const bad = steps.findIndex((step) => step !== (up ? 'thinner' : 'thicker') && step !== 'cannot-tell');
  const known = steps.every((step) => step !== 'cannot-tell');
  if (bad < 0) return { ...cannotTell(says, phrase(ORDER.right)), verdict: known ? 'agrees' : 'cannot-tell' };
  const [a, b] = [claim.items[bad]!, claim.items[bad + 1]!];
  const first = a.sizes.at(-1)!;
  const second = b.sizes[0]!;
  const sources = compareThickness(first, second, lensOf(a, context), lensOf(b, context)).sources;
  const repair = known ? sortEdit(claim, note, context) : undefined;
  const outcome = steps[bad] === 'thicker' || steps[bad] === 'thinner' ? steps[bad] : 'same';
  return {
    verdict: 'contradicted',
    says,
    holds: phrase(ORDER.holds, {
      first: label(first),
      outcome: phrase(OUTCOME[outcome]),
      second: label(second),
      rule: ruleWords(first, second),
    }),
    source: sourceNames(sources) || ruleWords(first, second),
    sources,
    ...(repair ? { repair } : {}),
    steps: [{ label: 'rule', text: ruleWords(first, second), sources }],
  };
}

const itemWords = (item: Operand): Part => sizeWords(item, FRAME.to);

/** How `a` stands to `b`; undefined when the sizes are not of one system. */
function compareItems(a: Operand, b: Operand, context?: Context): Thickness['result'] | undefined {
  const [first, second] = [a.sizes.at(-1), b.sizes[0]];
  if (!first || !second || first.system !== second.system) return undefined;
  return compareThickness(first, second, lensOf(a, context), lensOf(b, context)).result;
}

/** One edit that writes the same sizes in the order the text announces. Needs every item to be a single mention. */
function sortEdit(claim: OrderClaim, note: Note, context?: Context): Repair | undefined {
  const singles = claim.items.every((item) => item.mentions.length === 1 && item.sizes.length === 1);
  // A key lists its choices in an order of its own: nothing is to be moved there.
  const inText = claim.items.slice(1).every((item, i) => item.span.start >= claim.items[i]!.span.end);
  if (!singles || !inText) return undefined;
  const start = claim.items[0]!.span.start;
  const end = claim.items.at(-1)!.span.end;
  const texts = claim.items.map((item) => note.text.slice(item.span.start, item.span.end));
  // A shared unit on the last item would travel with it: reorder only when all are written alike.
  if (new Set(texts.map((text) => text.replace(/[\d.]+/g, '#').replace(/\p{L}{3,}/gu, 'w'))).size > 1)
    return undefined;
  const order = claim.items
    .map((item, i) => ({ item, text: texts[i]! }))
    .sort((a, b) => {
      const step = compareItems(a.item, b.item, context);
      const sign = step === 'thicker' ? 1 : step === 'thinner' ? -1 : 0;
      return claim.runs === 'up' ? sign : -sign;
    });
  let text = '';
  claim.items.forEach((item, i) => {
    const next = claim.items[i + 1];
    text += order[i]!.text + (next ? note.text.slice(item.span.end, next.span.start) : '');
  });
  return { title: phrase(REPAIR.order), edit: { span: { start, end }, text } };
}
