/**
 * The way a row of sizes runs, by what the sentence before says of where it is kept: "the largest nearest the door. You walk
 * in and meet 28 Fr, then 24 …", "begin at the heavy end. Size 1, then 0, then 2-0", "the widest at the left. Left to right: …".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable, measuredWords } from '../text/magnitudes.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { type Cue, orderCue } from './order.ts';

/** `first` is the item at which the row begins. */
export function saidBefore(scene: Scene, first: number): Cue | undefined {
  const previous = scene.before.at(-1);
  if (!previous || previous.close === '?') return undefined;
  const { items } = previous;
  const open = items.some(({ kind, word }) => kind === 'size' || NEGATIONS.has(word) || OPEN.test(word));
  if (open || scene.items.some(({ word }, i) => OPEN.test(word) && !expected(scene.items, i)))
    return undefined;
  const last = scene.items.findLastIndex(({ kind }) => kind === 'size');
  const opening =
    `${joined(scene.items, 0, first)} ${READ.exec(joined(scene.items, last + 1))?.[0] ?? ''}`.trim();
  const cue = placed(items, opening) ?? (STARTS.test(opening) ? begun(items) : undefined);
  return cue && decidable(cue.axis) ? { ...cue, at: -1, to: -1 } : undefined;
}
const OPEN =
  /^(?:if|unless|should|would|wrong|wrongly|reverse|reversed|wish|wishes|want|wants|ought|used|once|formerly|until|instead|rather)$/;
/** "You should have 14, 16, 18": what is right. */
export const expected = (items: readonly Item[], i: number): boolean =>
  /^you should (?:have|see|get|find|read)$/.test(joined(items, i - 1, i + 2));
/** "… from left to right", behind the row. */
const READ =
  /^(?:reading |read )?(?:from )?(?:the )?(?:left to (?:the )?right|right to (?:the )?left|top to bottom|front to back)(?= [.;,!]|$)/;
/** Nothing before the row but its name or who comes past it. */
const STARTS =
  /^(?:(?:so|and|then|usp|size|sizes|gauge|the|that is|that's|it goes|they go|they run|it runs|you (?:pass|meet|see|find|get|have|reach|count)|first|first come|first comes|in order|:|,) ?)*$/;

/** "begin at the heavy end", "start with the heaviest". */
function begun(items: readonly Item[]): Cue | undefined {
  const at = items.findIndex(({ word }) =>
    /^(?:begin|begins|beginning|start|starts|starting|counting|count|work|working|read|reading)$/.test(word),
  );
  if (at < 0) return undefined;
  const word = measuredWords(items).find(
    (m) =>
      m.at > at &&
      m.degree !== 'comparative' &&
      /\b(?:from|at|with)(?: the)?$/.test(joined(items, m.at - 2, m.at)) &&
      (m.degree === 'superlative' || /^(?:ends?|side|ones?)\b/.test(joined(items, m.to + 1, m.to + 2))),
  );
  return word && !word.idiom
    ? { at: word.at, to: word.to, axis: word.axis, runs: word.sign === 1 ? 'down' : 'up' }
    : orderCue(items.slice(at));
}

const PLACE =
  /^(?:(?:ones?|sizes?|size|tubes?|needles?|drains?|catheters?|cannula[es]?|sutures?|threads?) )?(?:(?:are|is|being|kept|stored|sits?|stands?|hangs?|lies|lie|live|goes|go|placed|hung|come|comes) )?(?:right |just |always )?(?:nearest|closest|next|at|on|by|beside|in|near)(?: to)?(?: (?:the|our|my|your))? (?:very |far )?([a-z]+)\b/;
const OPPOSITE: ReadonlyMap<string, string> = new Map(
  [
    ['left', 'right'],
    ['top', 'bottom'],
    ['front', 'back'],
  ].flatMap(([a, b]) => [[a!, b!] as const, [b!, a!] as const]),
);

/** "the largest nearest the door": which end stands where, and where the row is read from. */
function placed(items: readonly Item[], opening: string): Cue | undefined {
  // As it is written: "the thinnest hang by the window" has no noun.
  const words = items.flatMap(({ magnitude }, at) =>
    magnitude?.degree === 'superlative' && decidable(magnitude.axis)
      ? [{ at, to: at, axis: magnitude.axis, sign: magnitude.sign }]
      : [],
  );
  const [word, other, ...more] = words;
  if (!word || more.length > 0 || !/^(?:the|[,:])$/.test(items[word.at - 1]?.word ?? '')) return undefined;
  // "widest on the left, narrowest on the right": both ends are told.
  if (other && (other.axis !== word.axis || other.sign === word.sign)) return undefined;
  const place = PLACE.exec(joined(items, word.to + 1, word.to + 9))?.[1];
  const from = startOf(opening);
  if (!place || !from || /\b(?:by|for|with|of|about)\b/.test(opening)) return undefined;
  const near = place === from || from === 'there' || (place === 'entrance' && from === 'door');
  if (!near && OPPOSITE.get(place) !== from) return undefined;
  const down = (word.sign === 1) === near;
  return { at: word.at, to: word.to, axis: word.axis, runs: down ? 'down' : 'up' };
}

/** Where the reading begins: "you walk in and meet", "from the sink you find", "left to right". */
function startOf(opening: string): string | undefined {
  const way =
    /\b(?:from (?:the )?)?(left|right|top|bottom|front|back) (?:to|down to|up to|through to) (?:the )?(left|right|top|bottom|front|back)\b/.exec(
      opening,
    );
  if (way) return OPPOSITE.get(way[1]!) === way[2] ? way[1] : undefined;
  if (
    /\b(?:you|we) (?:walk|come|go|step) in\b|\b(?:entering|coming in|walking in|as you enter)\b/.test(opening)
  )
    return 'door';
  if (/\b(?:starting|start|from|beginning) there\b/.test(opening)) return 'there';
  if (/^(?:you )?open (?:the|it)\b/.test(opening)) return 'front';
  return /\b(?:from|starting at|starting from|beginning at) (?:the|our|my) ([a-z]+)\b/.exec(opening)?.[1];
}
