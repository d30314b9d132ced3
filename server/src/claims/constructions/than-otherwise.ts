/** What stands beside "than" and yet compares no two sizes: numbers as numbers, things left out or thought of, flows with help. */
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import type { Group } from '../text/scene.ts';

/** Words that say nothing of what they measure. */
export const GENERAL = new Set([
  'greater',
  'higher',
  'lower',
  'less',
  'more',
  'larger',
  'smaller',
  'bigger',
  'lesser',
]);

/** "The 4 Fr single lumen runs faster than each lumen of the 5 Fr", "a 22 looks bigger on paper", "the number 22 is larger". */
export const otherwiseMeant = (items: readonly Item[], word: Measured): boolean =>
  (word.axis === 'flow' && driven(items)) ||
  items.some(
    (item, i) =>
      // "a 6.0 ETT is bigger than 6-0 suture": no thread is a tube.
      (item.mention?.sizes[0]?.system === 'usp' && /^(?:ett|etts|tubes?)$/.test(items[i + 1]?.word ?? '')) ||
      (item.word === 'paper' && items[i - 1]?.word === 'on') ||
      (item.mention?.text.toLowerCase().startsWith('number') === true &&
        items[i - 1]?.word === 'the' &&
        /^(?:is|looks|seems)$/.test(items[i + 1]?.word ?? '')),
  );

/** "Although 27 is greater than 25, a 27 G is the finer": the figures are compared, and then the things. */
export const asNumbers = (items: readonly Item[], word: Measured, left: Group, right: Group): boolean =>
  GENERAL.has(items[word.at]!.word) &&
  [left, right].every(
    ({ from, mentions }) =>
      /^\d+$/.test(mentions[0]!.text) && !/^(?:an?|the|our|your)$/.test(items[from - 1]?.word ?? ''),
  ) &&
  items.some((item) => CONCEDES.test(item.word));
const CONCEDES = /^(?:although|though|but|yet|while|whilst|whereas|however|because|since|still)$/;

/** One of them has help or is held up, or carries another liquid: "with a pressure bag … than without", "the clamp was half shut". */
/** "in the elbow … in the hand": where each of them lies counts too. */
const SITES =
  /\b(?:in|into|at|on) (?:the|his|her|my|their|one|an?) (?:left |right |other )?(hand|wrist|elbow|arm|forearm|foot|ankle|leg|neck|fossa|scalp|thigh|groin|tibia|humerus|jugular)\b/g;
const sitesApart = (items: readonly Item[]): boolean =>
  new Set([...joined(items).matchAll(SITES)].map(([, site]) => site)).size > 1;
const HINDERED = /^(?:clamp|clamped|kinked|bent|clotted|blocked|tissued|infiltrated|positional|spasm)$/;
function driven(items: readonly Item[]): boolean {
  const has = (words: RegExp) => items.some((item) => words.test(item.word));
  return (
    has(/^(?:single|double|triple)$/) ||
    (has(/^(?:pressure|pressurised|pressurized|pump|pumped|bag|squeezed)$/) &&
      has(/^(?:without|gravity|unaided|stand|hung)$/) &&
      !alike(items)) ||
    has(HINDERED) ||
    sitesApart(items) ||
    (has(/^my$/) && has(/^(?:her|his|your|their)$/)) ||
    (has(/^blood$/) && has(/^(?:water|saline|crystalloids?|plasma|fluids)$/))
  );
}

/** "If both hang from the same stand", "given the same bag and pole": neither has help. */
const alike = (items: readonly Item[]): boolean =>
  items.some(
    (item, i) =>
      item.word === 'same' &&
      items.slice(i + 1, i + 5).some(({ word }) => /^(?:stand|pole|bag|height|hook|pressure)$/.test(word)),
  ) && !items.some(({ word }) => /^(?:without|gravity|unaided)$/.test(word));

/** "All catheters over 18 Fr are thicker than 6 mm": not that size, but what lies beyond it. */
export const bounded = (items: readonly Item[], left: Group, right: Group): boolean =>
  left.sizes[0]!.system !== right.sizes[0]!.system &&
  (/^(?:over|above|beyond|under|below|past)$/.test(items[left.from - 1]?.word ?? '') ||
    items.slice(Math.max(0, left.from - 2), left.from).some((item) => item.word === 'than'));

/** "All but the 0 are finer than 1-0", "except for the 24 G, all …": said of the others. */
export const excepted = (items: readonly Item[], left: Group): boolean =>
  (finds(EXCEPT, joined(items, 0, left.from)) &&
    items[left.to + 1]?.word === ',' &&
    ALL.test(items[left.to + 2]?.word ?? '')) ||
  (finds(
    /\b(?:but|except|save|besides|excepting)(?: for)?(?: (?:the|an?|our|that))?$/,
    joined(items, Math.max(0, left.from - 3), left.from),
  ) &&
    items.slice(Math.max(0, left.from - 6), left.from).some(({ word }) => ALL.test(word))) ||
  // "Neither the former (4-0) nor the latter (5-0) …", "some 4-0 is …", "few who know them would say …"
  (items[left.from - 1]?.word === '(' && items.slice(0, left.from).some(({ word }) => word === 'nor')) ||
  items[left.from - 1]?.word === 'some' ||
  FEW_SAY.test(joined(items, 0, left.from));
const FEW_SAY = /^(?:very )?few (?:\S+ ){1,7}(?:say|think|believe|call|claim|hold)\b/;
const EXCEPT =
  /^(?:except(?:ing)?(?: for)?|apart from|aside from|other than|besides|save(?: for)?)(?: (?:the|our|that))?$/;
const ALL = /^(?:all|every|everything|each|any|anything)$/;

/** "A 4-0 thicker than a 3-0 does not exist": a thing thought of, of which the verb tells. */
export const imagined = (items: readonly Item[], left: Group, word: Measured, right: Group): boolean =>
  left.to < word.at &&
  /^(?:an?|any)$/.test(items[left.from - 1]?.word ?? '') &&
  items.slice(left.to + 1, word.at).every((item) => item.deviceNoun) &&
  /^(?:does|do|would|could|cannot|can't|is|has|will|makes|means)$/.test(
    items.slice(right.to + 1, right.to + 3).find((item) => !item.deviceNoun)?.word ?? '',
  );
