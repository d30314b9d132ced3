/** Verbs beside which "more", "less", "sooner" or "longer" measure a flow or a strength: "carries less", "snaps sooner". */
import { finds } from '../../notes/patterns.ts';
import type { Axis } from '../model.ts';
import type { Degree } from '../words/magnitude.ts';
import type { Item } from './items.ts';

export interface Sense {
  readonly axis: Axis;
  readonly sign: 1 | -1;
  readonly degree: Degree;
}

const near = (items: readonly Item[], from: number, to: number) =>
  items.slice(Math.max(0, from), Math.max(0, to));

const FLOWS = /^(?:deliver|empt|run|drain|drip|flow|infus|fill|clear|pour|give|pass|shift|finish|go)/;
const BREAKS = /^(?:snaps?|snapped|breaks?|broke|tears?|tore|parts|fails?|failed|ruptures?|gives?|yields?)$/;
const TIMES: ReadonlyMap<string, 1 | -1> = new Map([
  ['sooner', 1],
  ['soonest', 1],
  ['earlier', 1],
  ['earliest', 1],
  ['later', -1],
]);

/** The words that `timed` answers to. */
export const TIME_WORDS: ReadonlySet<string> = new Set([
  ...TIMES.keys(),
  ...['better', 'best', 'worse', 'worst', 'poorer'],
  ...['first', 'last', 'longer', 'shorter', 'more', 'less', 'easier', 'harder'],
]);

/** "delivers a litre later", "snaps sooner": time taken is flow when something flows, weakness when something breaks. */
export function timed(items: readonly Item[], i: number): Sense | undefined {
  const sign = TIMES.get(items[i]!.word);
  if (!sign) return taking(items, i) ?? placed(items, i) ?? valued(items, i);
  const degree = items[i]!.word.endsWith('est') ? 'superlative' : 'comparative';
  const direct = items[i - 1]?.word === 'way' ? items[i - 2]?.word : items[i - 1]?.word;
  if (finds(BREAKS, direct ?? '')) return { axis: 'strength', sign: sign === 1 ? -1 : 1, degree };
  const flows = near(items, i - 7, i).some(
    (item) => FLOWS.test(item.word) && !/^(?:give|go)/.test(item.word),
  );
  return flows ? { axis: 'flow', sign, degree } : undefined;
}

const VALUES: ReadonlyMap<string, 1 | -1> = new Map([
  ['better', 1],
  ['best', 1],
  ['worse', -1],
  ['worst', -1],
  ['poorer', -1],
]);

/** "runs even better", "drips worst": how well it flows. */
function valued(items: readonly Item[], i: number): Sense | undefined {
  const { word } = items[i]!;
  const sign = VALUES.get(word);
  if (!sign) return undefined;
  const verb =
    items[i - (/^(?:even|much|far|rather|still)$/.test(items[i - 1]?.word ?? '') ? 2 : 1)]?.word ?? '';
  const after = items[i + 1];
  const ends = !after || after.kind === 'punctuation' || /^(?:than|through|with|still)$/.test(after.word);
  if (!ends || !/^(?:runs?|flows?|drips?|infuses?|empties)$/.test(verb)) return undefined;
  return { axis: 'flow', sign, degree: word.endsWith('st') ? 'superlative' : 'comparative' };
}

/** "Which breaks first", "the 14 G empties first". */
function placed(items: readonly Item[], i: number): Sense | undefined {
  const { word } = items[i]!;
  if (/^(?:easier|harder)$/.test(word) && items[i + 1]?.word === 'through')
    return items.slice(i + 2, i + 5).some((item) => item.kind === 'size')
      ? { axis: 'flow', sign: word === 'easier' ? 1 : -1, degree: 'comparative' }
      : undefined;
  const parting =
    /^(?:easier|harder)$/.test(word) && items[i + 1]?.word === 'to' && PARTED.test(items[i + 2]?.word ?? '');
  if (parting) return { axis: 'strength', sign: word === 'easier' ? -1 : 1, degree: 'comparative' };
  if (word !== 'first' && word !== 'last') return undefined;
  const verb = items[i - 1]?.word ?? '';
  const early = word === 'first' ? 1 : -1;
  if (/^(?:breaks|snaps|tears|fails|parts)$/.test(verb) || (verb === 'way' && items[i - 2]?.word === 'gives'))
    return { axis: 'strength', sign: early === 1 ? -1 : 1, degree: 'superlative' };
  return /^(?:empties|finishes)$/.test(verb)
    ? { axis: 'flow', sign: early, degree: 'superlative' }
    : undefined;
}

const PARTED = /^(?:snap|break|tear|burst|rupture|part)$/;
const LASTS = /^(?:takes?|took|needs?|lasts?|wait|waits)$/;
const FLUID = /^(?:litres?|liters?|bags?|units?|fluids?|blood|infusions?|transfusions?|saline|bolus)$/;

/** "A litre takes longer through …", "less time to run a litre": time is slowness where fluid runs. */
function taking(items: readonly Item[], i: number): Sense | undefined {
  const { word } = items[i]!;
  const longer = word === 'longer' || (word === 'more' && items[i + 1]?.word === 'time');
  const shorter = word === 'shorter' || (word === 'less' && items[i + 1]?.word === 'time');
  if (!longer && !shorter) return undefined;
  const lasts = near(items, i - 3, i).some((item) => LASTS.test(item.word));
  if (fillTime(items, i)) return { axis: 'flow', sign: longer ? -1 : 1, degree: 'comparative' };
  const fluid = near(items, i - 9, i + 9).some((item) => FLUID.test(item.word));
  const filling =
    items[i + 1]?.word === 'to' && /^(?:fill|draw|drain|empty|flush|run)$/.test(items[i + 2]?.word ?? '');
  return lasts && (fluid || filling)
    ? { axis: 'flow', sign: longer ? -1 : 1, degree: 'comparative' }
    : undefined;
}

/** "Fill time is shorter through …", "the time to run in a litre is longer". */
function fillTime(items: readonly Item[], i: number): boolean {
  const verb = near(items, i - 2, i).some((item) => /^(?:is|was|gets|becomes|will)$/.test(item.word));
  const at = items.findIndex((item, k) => k < i && i - k <= 10 && /^times?$/.test(item.word));
  return (
    verb &&
    at >= 0 &&
    (FILLING.test(items[at - 1]?.word ?? '') ||
      (items[at + 1]?.word === 'to' && near(items, at + 2, at + 4).some((item) => FLOWS.test(item.word))))
  );
}
const FILLING =
  /^(?:fill|filling|infusion|transfusion|emptying|running|run|delivery|flow|drip|bag|drainage)$/;

const CARRIES = /^(?:flows?|runs?|carries|carry|delivers?|drips?|drains?|passes|moves?)$/;
const LIMITS = /^(?:limits?|restricts?|impedes?|throttles?|slows|slow|hinders?|reduces?|cuts?)$/;
const HOLDS = /^(?:holds?|bears?|withstands?|stands?|resists?|supports?|tolerates?|takes?|carries)$/;
const LOADS = /^(?:tension|weight|load|strain|force|stress|pulling|pull|traction|kilos?|newtons?|tugging)$/;

/** "More gets through a 16 G than …", "less comes down a 22 G". */
const GETS_THROUGH = /^(?:gets?|goes|go|runs?|comes?|come|passes|pass|flows?|drains?|pours?|drips?)$/;

/** "the more you can push through", "less fluid than you would get through". */
const pushed = (items: readonly Item[], i: number): boolean =>
  /^(?:(?:fluid|blood|volume|saline) )?(?:you|it|we|they|one) (?:(?:can|could|will) )?(?:push|run|get|give|pour|let|lets|pass|passes|put|force|squeeze)s? (?:through|down|in)\b/.test(
    near(items, i + 1, i + 7)
      .map((item) => item.word)
      .join(' '),
  );

/** What "more" or "less" after a verb measures: "carries less than", "bears more weight", "limits the flow more". */
export function verbal(items: readonly Item[], i: number): { axis: Axis; sign: 1 | -1 } | undefined {
  const after = items[i + 1]?.word ?? '';
  const verb = items[i - 1]?.word ?? '';
  const limited =
    (items[i - 1]?.axisNoun?.axis === 'flow' || FLUID.test(verb)) &&
    near(items, i - 4, i - 1).some((item) => LIMITS.test(item.word));
  if (limited) return { axis: 'flow', sign: -1 };
  const fills =
    /^(?:fills?|occup(?:y|ies))$/.test(verb) || (verb === 'up' && /^takes?$/.test(items[i - 2]?.word ?? ''));
  if (
    fills &&
    /^(?:of|room|space)$/.test(after) &&
    !items.some((item) => /^(?:small|big|tiny|large)$/.test(item.word))
  )
    return { axis: 'outer', sign: 1 };
  if (HOLDS.test(verb) && LOADS.test(after)) return { axis: 'strength', sign: 1 };
  if (GETS_THROUGH.test(after) && /^(?:through|down|in|per|a)$/.test(items[i + 2]?.word ?? ''))
    return { axis: 'flow', sign: 1 };
  if (FLUID.test(after) && GETS_THROUGH.test(items[i + 2]?.word ?? '')) return { axis: 'flow', sign: 1 };
  const given = /^(?:gives?|delivers?|passes|you|us|them)$/.test(verb);
  if (
    given &&
    /^(?:litres?|liters?|fluids?|blood|volume|units)$/.test(after) &&
    items[i + 2]?.word === 'than'
  )
    return { axis: 'flow', sign: 1 };
  if (pushed(items, i)) return { axis: 'flow', sign: 1 };
  if (/^lets?$/.test(verb) && after === 'through') return { axis: 'flow', sign: 1 };
  const through = verb === 'through' && /^lets?$/.test(items[i - 2]?.word ?? '');
  const ends = /^(?:than|per|through)$/.test(after);
  if ((CARRIES.test(verb) || through) && ends) return { axis: 'flow', sign: 1 };
  if (/^(?:holds?|withstands?)$/.test(verb) && after === 'than') return { axis: 'strength', sign: 1 };
  return undefined;
}
