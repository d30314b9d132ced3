/** Effort as a measure of flow: what is harder to breathe through, or takes more push on the plunger, lets less through. */
import type { Item } from './items.ts';
import type { Sense } from './verbs.ts';

const BREATH = /^(?:breaths?|breathe|breathes|breathing|inhale|exhale)$/;
const PLUNGER = /^(?:plungers?|syringes?|contrast|injectors?|inject|injects|injecting|injection)$/;
const FORCE = /^(?:push|force|effort|pressure|thumb|squeeze|pushing|work)$/;
const HARDER = /^(?:harder|tougher)$/;

/** The words that `laboured` answers to. */
export const EFFORT_WORDS: ReadonlySet<string> = new Set(['more', 'less', 'harder', 'tougher', 'easier']);

/** How far from the word its plunger or its breath may stand, in one clause. */
const REACH = 9;
const CUTS = /^(?:[,;:.!?—()]|and|but|because|since|while|whereas|although|though)$/;

/** "must work harder to draw the same breath", "takes less push on the plunger", "breathing is easier". */
export function laboured(items: readonly Item[], i: number): Sense | undefined {
  const { word } = items[i]!;
  const amount = word === 'more' || word === 'less';
  const next = items[i + 1]?.word ?? '';
  if (amount ? !FORCE.test(next) : next === 'to' && !TASKS.test(items[i + 2]?.word ?? '')) return undefined;
  const clause = clauseAround(items, i);
  const breath = clause.some((item) => BREATH.test(item.word));
  const pushed =
    clause.some((item) => PLUNGER.test(item.word)) &&
    (amount ||
      items.slice(Math.max(0, i - 2), i + 3).some((item) => FORCE.test(item.word) || TASKS.test(item.word)));
  if (!breath && !pushed) return undefined;
  return { axis: 'flow', sign: word === 'more' || HARDER.test(word) ? -1 : 1, degree: 'comparative' };
}

/** "harder to breathe through", "easier to inject through": not "harder to insert". */
const TASKS = /^(?:breathe|inhale|draw|suck|inject|push|depress|press)$/;

function clauseAround(items: readonly Item[], i: number): readonly Item[] {
  let [from, to] = [i, i];
  while (from > 0 && i - from < REACH && !CUTS.test(items[from - 1]!.word)) from--;
  while (to + 1 < items.length && to - i < REACH && !CUTS.test(items[to + 1]!.word)) to++;
  return items.slice(from, to + 1);
}
