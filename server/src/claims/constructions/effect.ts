/**
 * What an exchange does: "swapping the 20 G for a 16 G speeds up the flow", "going from 16 Fr to 14 Fr reduces trauma";
 * and an exchange that answers a wish: "Need more flow? Take the 16 rather than the 18."
 */
import type { Axis } from '../model.ts';
import type { Item } from '../text/items.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { groups, type Scene, sameSizes, sameSystem, spanOf } from '../text/scene.ts';
import { EXCHANGE_WORDS, EXCHANGES, exchangeIn } from './exchange.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

const RAISES = new Set(
  'increases raises boosts improves gain gains widens enlarges lifts increase raise boost improve'.split(' '),
);
const LOWERS = new Set(
  'decreases reduces lowers cuts lose loses narrows lessens limits restricts decrease reduce lower cut'.split(
    ' ',
  ),
);

export const effect: Construction = {
  id: 'effect',
  needs: () => [{ sizes: 2, words: EXCHANGE_WORDS, like: EXCHANGES }],
  read(scene) {
    const exchange = exchangeIn(scene.items);
    if (!exchange || !sameSystem(exchange.given, exchange.chosen)) return [];
    if (sameSizes(exchange.given, exchange.chosen)) return [];
    const own = measuredWords(scene.items).some((m) => m.degree === 'comparative');
    const done = effectIn(
      scene.items,
      Math.max(exchange.chosen.to, exchange.given.to),
      Math.min(exchange.chosen.from, exchange.given.from),
    );
    if (done) return own ? [] : [comparison(scene, 'effect', exchange.chosen, exchange.given, done)];
    const goal = own ? undefined : (wished(scene) ?? aim(scene.items, exchange.chosen.from));
    return goal ? [answer(scene, exchange.chosen, exchange.given, goal)] : [];
  },
};

/** Verbs that say what they act on: "slows the infusion". */
const OWN: ReadonlyMap<string, 1 | -1> = new Map([
  ...['speeds', 'speed', 'sped', 'speeded', 'quickens', 'quickened', 'hastens'].map(
    (word) => [word, 1] as const,
  ),
  ...['slows', 'slow', 'slowed', 'retards'].map((word) => [word, -1] as const),
]);
const INFUSED = /^(?:infusions?|transfusions?|flow|drips?|bag|fluids?|blood|rate|it|things)$/;

/** A verb of raising or lowering with the quantity it acts on, after the exchange or as the aim before it. */
function effectIn(items: readonly Item[], from: number, first: number): Measured | undefined {
  const after = Array.from({ length: 6 }, (_, k) => from + 1 + k);
  const before = Array.from({ length: Math.min(first, 6) }, (_, k) => k);
  for (const i of [...after, ...before]) {
    const word = items[i]?.word ?? '';
    const own = OWN.get(word);
    const acted = [...items.slice(i + 1, i + 5), ...items.slice(Math.max(0, i - 3), i)];
    if (own && acted.some((item) => INFUSED.test(item.word))) return measured(i, 'flow', own);
    const sign = RAISES.has(word) ? 1 : LOWERS.has(word) ? -1 : 0;
    const noun = sign === 0 ? undefined : items.slice(i + 1, i + 5).find((item) => item.axisNoun)?.axisNoun;
    if (!noun || noun.axis === 'number') continue;
    return measured(i, noun.axis, (sign * noun.sign) as 1 | -1);
  }
  return undefined;
}

const measured = (at: number, axis: Axis, sign: 1 | -1): Measured => ({
  at,
  to: at,
  axis,
  sign,
  degree: 'comparative',
  excess: false,
  idiom: false,
  attributive: false,
});

/** "Need more flow?" right before. */
function wished(scene: Scene): Measured | undefined {
  const question = scene.before.at(-1);
  if (question?.close !== '?' || question.items.length > 9 || groups(question.items).length > 0)
    return undefined;
  const opens = /^(?:need|want|needs|after|looking|must|require|is)$/.test(question.items[0]?.word ?? '');
  const tooMuch = measuredWords(question.items).some((m) => m.excess);
  if (!opens && !tooMuch) return undefined;
  const word = measuredWords(question.items).find((m) => m.degree === 'comparative');
  const excess = measuredWords(question.items).find((m) => m.excess);
  const thing =
    excess && (excess.axis === 'flow' || ledIn(question.items, excess.at).some((item) => item.deviceNoun));
  if (excess && thing && decidable(excess.axis)) return { ...excess, sign: excess.sign === 1 ? -1 : 1 };
  return word && word.axis !== 'other' && word.axis !== 'number' && !word.idiom ? word : undefined;
}

/** The words of its own part: in "Tip – too tight?" the first word opens, and is no tip. */
const ledIn = (items: readonly Item[], at: number): readonly Item[] =>
  items.slice(items.findLastIndex(({ word }, i) => i < at && /^(?:[–—:,;-]|that)$/.test(word)) + 1, at);

/** "when you need speed", "for the smallest hole": what the choice is for. */
function aim(items: readonly Item[], chosen: number): Measured | undefined {
  for (let i = 0; i + 1 < items.length; i++) {
    if (!AIMS.test(items[i]!.word)) continue;
    const best = measuredWords(items).find((m) => m.degree === 'superlative' && m.at > i && m.at - i <= 2);
    if (best && best.to > best.at && decidable(best.axis) && !best.idiom && best.at < chosen) return best;
    const noun = items[i + 1]!.word === 'the' ? items[i + 2] : items[i + 1];
    const axis = noun?.axisNoun;
    if (axis && decidable(axis.axis) && WISHED.test(noun.word)) return measured(i, axis.axis, axis.sign);
  }
  return undefined;
}
const AIMS = /^(?:need|needs|want|wants|for)$/;
const WISHED = /^(?:speed|flow|strength|throughput|width)$/;

/** The claim stands on the size chosen: the wish is in another sentence. */
function answer(
  scene: Scene,
  chosen: Parameters<typeof comparison>[2],
  given: Parameters<typeof comparison>[3],
  goal: Measured,
): Reading {
  const reading = comparison(scene, 'wish', chosen, given, { ...goal, at: chosen.from, to: chosen.to });
  if (reading.claim.kind !== 'comparison') return reading;
  const { word: _, ...claim } = reading.claim;
  return {
    claim: { ...claim, focus: spanOf(scene, scene.items[chosen.from]!, scene.items[chosen.to]!) },
    at: chosen.from,
    from: chosen.from,
    to: chosen.to,
  };
}
