/** What becomes of the sizes along a row, said by a verb: "they get narrower", "widens with every step", "climbs in bore". */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import type { Cue } from './order.ts';

const GETS =
  /\b(?:get|gets|getting|become|becomes|becoming|grow|grows|turn|turns)(?: (?:ever|steadily|gradually|always|each time|progressively|only|a little|slightly))?$/;
/** Whose they are: the sizes of the row, or what is named by them. */
const OF_ROW =
  /(?:^|\s)(?:they|these|those|it|which|and|,|:|bores?|threads?|sutures?|needles?|cannulas?|cannulae|catheters?|drains?|tubes?|wires?|sheaths?|dilators?|sizes?|row|list|steps?)$/;
/** "with every step": along the row, and not by what is done to one of them. */
const ALONG =
  /\b(?:with (?:each|every|the)|from (?:left|top|the left|front|one end)|left to right|top to bottom|step by step|one after (?:another|the other)|in turn|as (?:you|we|they|one) (?:go|read|move|walk|work|look)|along|down the|steadily|stepwise|so that (?:they|it)|staircase|ladder|row|series|order)\b/;
const WIDENS: ReadonlyMap<string, 1 | -1> = new Map([
  ['widen', 1],
  ['widens', 1],
  ['widening', 1],
  ['thicken', 1],
  ['thickens', 1],
  ['thickening', 1],
  ['narrow', -1],
  ['narrows', -1],
  ['narrowing', -1],
  ['shrink', -1],
  ['shrinks', -1],
  ['dwindle', -1],
  ['dwindles', -1],
]);
const MOVES: ReadonlyMap<string, 1 | -1> = new Map([
  ['climb', 1],
  ['climbs', 1],
  ['rise', 1],
  ['rises', 1],
  ['grow', 1],
  ['grows', 1],
  ['gain', 1],
  ['gains', 1],
  ['increase', 1],
  ['increases', 1],
  ['fall', -1],
  ['falls', -1],
  ['drop', -1],
  ['drops', -1],
  ['lose', -1],
  ['loses', -1],
  ['decrease', -1],
  ['decreases', -1],
]);

/** The way the sizes run by what the sentence says becomes of them. */
export function becomes(items: readonly Item[]): Cue | undefined {
  return gets(items) ?? moves(items) ?? eachStep(items) ?? furtherOn(items);
}

const cue = (at: number, to: number, axis: Cue['axis'], sign: number): Cue => ({
  at,
  to,
  axis,
  runs: sign === 1 ? 'up' : 'down',
});

function gets(items: readonly Item[]): Cue | undefined {
  const words = measuredWords(items).filter((m) => m.degree === 'comparative' && !m.idiom);
  const [word, ...more] = words;
  if (!word || more.length > 0 || !decidable(word.axis)) return undefined;
  const before = joined(items, Math.max(0, word.at - 8), word.at);
  const verb = GETS.exec(before);
  const ends = /^(?:[.,;!]|and|from|as|with|along|each|every|$)/.test(items[word.to + 1]?.word ?? '');
  return verb && ends && OF_ROW.test(before.slice(0, verb.index).trim())
    ? cue(word.at, word.to, word.axis, word.sign)
    : undefined;
}

/** "widens with every step", "climbs in bore". */
function moves(items: readonly Item[]): Cue | undefined {
  const text = joined(items);
  for (let i = 1; i < items.length; i++) {
    const word = items[i]!.word;
    const widens = WIDENS.get(word);
    if (widens && ALONG.test(text) && OF_ROW.test(joined(items, Math.max(0, i - 3), i)))
      return cue(i, i, 'outer', widens);
    const noun = /^(?:in)$/.test(items[i + 1]?.word ?? '') ? items[i + 2]?.axisNoun : undefined;
    const way = MOVES.get(word);
    if (way && noun && decidable(noun.axis)) return cue(i, i + 2, noun.axis, way * noun.sign);
  }
  return undefined;
}

/** "The further down you go the narrower they get". */
function furtherOn(items: readonly Item[]): Cue | undefined {
  const lead = FURTHER.exec(joined(items, 0, 9))?.[0];
  const words = measuredWords(items).filter(
    (m) => m.degree === 'comparative' && decidable(m.axis) && !m.idiom,
  );
  const [word, ...more] = words;
  if (!lead || !word || more.length > 0 || items[word.at - 1]?.word !== 'the') return undefined;
  if (!THEY.test(joined(items, word.to + 1, word.to + 3))) return undefined;
  return word.at - lead.split(' ').length <= 3 ? cue(word.at, word.to, word.axis, word.sign) : undefined;
}
const THEY =
  /^(?:they|it|these|those|the (?:needles?|cannula[es]?|cannulas|catheters?|drains?|tubes?|threads?|sutures?|wires?|sizes?|bore))\b/;
const FURTHER =
  /^(?:(?:and|so|here) )?the (?:further|farther|lower|deeper|more)(?: (?:down|along|right|in|on|back|to the right))? (?:you|we|one) (?:go|goes|walk|look|reach|move|read|dig|climb down|get)(?: (?:down|along|on))?(?= |$)/;

/** "Each step down the list is a thinner needle". */
function eachStep(items: readonly Item[]): Cue | undefined {
  const text = joined(items, 0, 14);
  const step = STEP.exec(text);
  const words = measuredWords(items).filter((m) => m.degree === 'comparative' && !m.idiom);
  const [word] = words;
  if (!step || words.length !== 1 || !word || !decidable(word.axis)) return undefined;
  return cue(word.at, word.to, word.axis, word.sign);
}
const STEP =
  /^(?:(?:and|so|here|:|,) )*(?:each|every) (?:next |further |new )?(?:step|line|row|place|item|one)(?: (?:down|along|on|to the right|further|of the (?:list|row)|the|list|row|page|rack))* (?:is|means|gives|brings|makes|adds|holds)(?: (?:an?|you|us|the))* /;
