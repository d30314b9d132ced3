/** Finds the comparing words of a sentence and settles what each measures, by the noun it stands before. */
import { finds } from '../../notes/patterns.ts';
import type { Axis } from '../model.ts';
import type { Degree } from '../words/magnitude.ts';
import { EFFORT_WORDS } from './effort.ts';
import type { Item } from './items.ts';
import { remembered } from './remember.ts';

export interface Measured {
  readonly at: number;
  /** Last item that belongs to it ("bigger bore" ends on "bore"). */
  readonly to: number;
  readonly axis: Axis;
  readonly sign: 1 | -1;
  readonly degree: Degree;
  readonly excess: boolean;
  /** "larger gauge": the number to some authors, the bore to others. */
  readonly idiom: boolean;
  /** Set when it measures the number of a system rather than a thing. */
  readonly system?: Item['system'] | undefined;
  /** Stands before a noun ("a thinner wire"), not after a verb. */
  readonly attributive: boolean;
}

/** Words after which a comparing word stands alone ("is thinner than", "runs faster through"). */
const PREDICATE_FOLLOWERS = new Set(
  `than of and but or for to in on at by with when so because which since if as is are was were will would through
  here there upwards downwards onwards upward downward still yet again too across inside outside all overall altogether under over around after before while whereas
  the a an it they you we i that this these those then now not into down up out from wins go goes and/or side
  also only just even means mean equals our my we your next first last end both each every any no per though although unless where who whose what how
  compared against beside besides among amongst alongside without until till once rather indeed anyway instead always usually
  often between along within already ever never really simply can could should must may might does do did
  he she they'd nobody him me us them whichever whatever whenever wherever however therefore thus hence otherwise relative
  choose pick reach versus vs obviously clearly certainly naturally provided despite like onto towards toward throughout during via`
    .split(/\s+/)
    .filter(Boolean),
);
const SKIP = new Set(
  'its their maximum max peak total average mean possible potential and , more very much slightly single plain new old standard guide steel outer inner overall internal external actual'.split(
    ' ',
  ),
);

/** The comparing words of a sentence, in its order. */
export const measuredWords = remembered((items: readonly Item[]): readonly Measured[] => {
  const found: Measured[] = [];
  for (let i = 0; i < items.length; i++) {
    const measured = items[i]!.magnitude && measure(items, i);
    if (measured) found.push(otherEnd(items, found.at(-1), measured) ?? measured);
  }
  return found;
});

/** "From highest resistance to lowest": the noun is said once, and holds for both ends. */
function otherEnd(items: readonly Item[], first: Measured | undefined, last: Measured): Measured | undefined {
  if (!first || first.to === first.at || last.at !== first.to + 2 || items[first.to + 1]!.word !== 'to')
    return undefined;
  if (!/^(?:high|low|great|small|larg|bigg)est$/.test(items[last.at]!.word) || last.degree !== first.degree)
    return undefined;
  return { ...first, at: last.at, to: last.at, sign: first.sign === 1 ? -1 : 1, attributive: false };
}

const NTH = /^(?:second|third|fourth|fifth|2nd|3rd|next|second-|third-)$/;

/** What is done fast or slowly without anything flowing. */
const OTHER_VERBS =
  /^(?:clogs?|blocks?|heals?|seals?|closes?|stops?|dulls?|bends?|breaks?|kinks?|wears?|dissolves?|absorbs?|dry|dries|works?|acts?|tires?|fails?|leaks?|bleeds?|blunts?|snaps?|weakens?|loses?|occludes?|clots?)$/;

function measure(items: readonly Item[], i: number): Measured | undefined {
  const magnitude = items[i]!.magnitude;
  if (!magnitude) return undefined;
  const { axis: own, sign: way } = magnitude;
  // "the second widest" is not the widest.
  if (magnitude.degree === 'superlative' && NTH.test(items[i - 1]?.word ?? ''))
    return measuredAs(magnitude, i, i, 'other', way, false);
  const effort = EFFORT_WORDS.has(items[i]!.word);
  if (own === 'flow' && !effort && OTHER_VERBS.test(items[i - 1]?.word ?? ''))
    return measuredAs(magnitude, i, i, 'other', way, false);
  const noun = magnitude.settled ? -1 : nounAfter(items, i);
  if (own === 'flow' && !effort && toDo(items, i)) return measuredAs(magnitude, i, i, 'other', way, false);
  if (noun < 0) {
    const said = predicated(items, i);
    const axis = said?.axis ?? own;
    const sign = (way * (said?.sign ?? 1)) as 1 | -1;
    return measuredAs(magnitude, i, i, axis, sign, false, axis === 'number' ? said?.system : undefined);
  }
  const item = items[noun]!;
  const valued = VALUED.get(items[i]!.word);
  const better =
    items[i]!.word === 'good' || (valued !== undefined && (valued === 1 || item.axisNoun?.axis === 'flow'));
  if (item.axisNoun && (own !== 'other' || better)) {
    const axis = own === 'flow' && item.axisNoun.axis === 'number' ? 'other' : item.axisNoun.axis;
    const sign = (way * item.axisNoun.sign * (valued ?? 1)) as 1 | -1;
    const system = axis === 'number' ? items[noun - 1]?.system : undefined;
    return measuredAs(magnitude, i, noun, axis, sign, true, system);
  }
  if (item.system) return systemNumber(items, i, magnitude, noun);
  if (wayIn(items, i, noun)) return measuredAs(magnitude, i, noun, 'hole', way, true);
  if (magnitude.degree === 'plain' && otherEndOf(items, i))
    return measuredAs(magnitude, i, i, own, way, false);
  if (item.kind !== 'size' && KEPT_IN.test(item.word)) return measuredAs(magnitude, i, i, 'other', way, true);
  if (item.kind === 'size' || item.deviceNoun || item.colour || (own === 'flow' && finds(FLOWING, item.word)))
    return measuredAs(magnitude, i, i, own, way, true);
  return measuredAs(magnitude, i, i, 'other', way, true);
}

/** One shape for all, set at once: spreading parts together took longer than finding them. */
const measuredAs = (
  { degree, excess = false }: NonNullable<Item['magnitude']>,
  at: number,
  to: number,
  axis: Axis,
  sign: 1 | -1,
  attributive: boolean,
  system?: Item['system'],
  idiom = false,
): Measured => ({ at, to, axis, sign, degree, excess, idiom, system, attributive });

/** "a faster drip", "a quicker bolus": what flows. */
const FLOWING =
  /^(?:drips?|injections?|infusions?|transfusions?|bolus|boluses|outflow|inflow|drainage|flush|delivery|washout|fluids?|blood|stream|litres?)$/;

/** "needs a bigger vein than a 20 G does": what a size goes into is as wide as it. */
const wayIn = (items: readonly Item[], i: number, noun: number): boolean =>
  INTO.test(items[noun]!.word) && items.slice(Math.max(0, i - 3), i).some((item) => NEEDS.test(item.word));
const INTO = /^(?:veins?|vessels?|nick|incision|cut|nostril|urethra|meatus|gap|slit|entry|needle-hole|stab)$/;
const NEEDS = /^(?:needs?|needed|wants?|requires?|demands?|asks|makes?|takes)$/;

/**
 * "my thick to thin rack: …", "from narrow to wide the cupboard runs …": both ends of what a row runs along, whatever holds the
 * row.
 */
const otherEndOf = (items: readonly Item[], i: number): boolean =>
  (/^(?:the|our|my|this)$/.test(items[i + 1]?.word ?? '') ||
    (ROW.test(items[i + 1]?.word ?? '') && items.slice(i + 2, i + 8).some(({ word }) => word === ':'))) &&
  items[i - 1]?.word === 'to' &&
  items[i - 2]?.magnitude?.degree === 'plain' &&
  items[i - 2]!.magnitude!.sign !== items[i]!.magnitude!.sign;
const ROW = /^(?:racks?|rows?|shelf|shelves|order|line|list|series|sequence|run)$/;

/** Where sizes are kept: "in the bigger drawer" says nothing of the sizes. */
const KEPT_IN = /^(?:drawers?|trays?|kits?|packets?|boxes|box|bags?|cupboards?|bins?)$/;

const GIVES = /^(?:give|get|push|put|deliver|pass|move|pour)$/;
const FLUIDS = /^(?:fluids?|blood|litres?|liters?|saline|bags?|bolus|volume|plasma|units?)$/;

/** "slower to insert", "quicker to place": a task, not a flow. */
const toDo = (items: readonly Item[], i: number) =>
  !(
    GIVES.test(items[i + 2]?.word ?? '') && items.slice(i + 3, i + 6).some((item) => FLUIDS.test(item.word))
  ) &&
  items[i + 1]?.word === 'to' &&
  /^(?!(?:the|our|its|this|that)$|run|flow|drain|empty|infuse|fill)[a-z]{3,}$/.test(
    items[i + 2]?.word ?? '',
  ) &&
  items[i + 2]?.kind === 'word' &&
  !items[i + 2]?.magnitude;

/**
 * "Resistance is lower in …", "the flow you get from a 20 G is lower than …": high and low take their measure from the
 * subject; "gauge numbers get smaller" speaks of the number.
 */
function predicated(
  items: readonly Item[],
  i: number,
): { axis: Axis; sign: 1 | -1; system?: Item['system'] } | undefined {
  const { magnitude } = items[i]!;
  if (magnitude?.degree === 'plain' || !VERB.test(items[i - 1]?.word ?? '')) return undefined;
  const near = items[i - 2]?.axisNoun ?? (finds(FLOWING, items[i - 2]?.word ?? '') ? FLOW : undefined);
  if (near?.axis === 'number')
    return headNumber(items, i) ? { ...near, system: items[i - 3]?.system } : undefined;
  const valued = VALUED.get(items[i]!.word);
  if (valued && (near?.axis === 'flow' || near?.axis === 'strength'))
    return { axis: near.axis, sign: (valued * near.sign) as 1 | -1 };
  if (magnitude?.axis !== 'number') return undefined;
  const noun = near ?? subjectNoun(items, i - 2);
  return noun && noun.axis !== 'number' ? noun : undefined;
}

const FLOW = { axis: 'flow', sign: 1 } as const;

/** "Flow is better through …": better is more of what is wanted. */
const VALUED: ReadonlyMap<string, 1 | -1> = new Map([
  ['better', 1],
  ['best', 1],
  ['worse', -1],
  ['worst', -1],
  ['poorer', -1],
]);

const VERB = /^(?:is|are|was|were|get|gets|become|becomes|stays)$/;
/** "gauge numbers get smaller": the number is what the sentence is about, not "needles with a lower gauge number". */
function headNumber(items: readonly Item[], i: number): boolean {
  if (!GENERIC.test(items[i]!.word)) return false;
  const start =
    items.slice(0, i - 2).findLastIndex((item) => item.kind === 'punctuation' || OPENS.test(item.word)) + 1;
  return items
    .slice(start, i - 2)
    .every((item) => item.system !== undefined || /^(?:the|its|these)$/.test(item.word));
}
const GENERIC = /^(?:smaller|larger|bigger|greater|higher|lower)$/;
const OPENS = /^(?:as|when|if|because|since|while|and|but|so)$/;

const SUBJECT_REACH = 8;

/** The one quantity between the start of the clause and its verb, right after an article. */
function subjectNoun(items: readonly Item[], from: number): Item['axisNoun'] {
  const start = items.slice(0, from).findLastIndex((item) => item.kind === 'punctuation') + 1;
  const nouns = items.slice(Math.max(start, from - SUBJECT_REACH), from).filter((item) => item.axisNoun);
  const first = items.slice(start, start + 3).find((item) => item.axisNoun);
  return nouns.length === 1 && nouns[0] === first ? first?.axisNoun : undefined;
}

/** "higher gauge", "larger gauge number", "bigger French", "more zeros". */
function systemNumber(
  items: readonly Item[],
  i: number,
  magnitude: NonNullable<Item['magnitude']>,
  noun: number,
): Measured {
  const system = items[noun]!.system;
  const number = items[noun + 1]?.axisNoun?.axis === 'number';
  const clear = number || magnitude.axis === 'number' || system !== 'needle-gauge';
  const axis = magnitude.axis === 'other' ? 'other' : 'number';
  return measuredAs(magnitude, i, number ? noun + 1 : noun, axis, magnitude.sign, true, system, !clear);
}

/** Index of the noun the word at `i` stands before, or −1 when it stands alone. */
function nounAfter(items: readonly Item[], i: number): number {
  for (let k = i + 1; k < items.length && k <= i + 4; k++) {
    const item = items[k]!;
    if (item.kind === 'size') return k;
    if (item.kind === 'punctuation')
      return item.word === ',' && items[k + 1]?.magnitude ? nounAfter(items, k) : -1;
    if (item.axisNoun || item.system || item.deviceNoun) return followedByAxis(items, k);
    if (PREDICATE_FOLLOWERS.has(item.word)) {
      if ((item.word === 'and' || item.word === 'or') && items[k + 1]?.magnitude) continue;
      return item.word === 'the' && k === i + 1 ? afterThe(items, k) : -1;
    }
    if (item.magnitude || SKIP.has(item.word) || item.word.endsWith('ly')) continue;
    if (item.colour) continue;
    return k;
  }
  return -1;
}

/** "larger needle bore": the last of several nouns decides. */
function followedByAxis(items: readonly Item[], k: number): number {
  const next = items[k + 1];
  if (!items[k]!.system && items[k]!.deviceNoun && next?.axisNoun && next.kind === 'word') return k + 1;
  return k;
}

/** "the thicker the needle": the noun follows the second article. */
function afterThe(items: readonly Item[], k: number): number {
  for (let n = k + 1; n <= k + 3 && n < items.length; n++) {
    const item = items[n]!;
    if (item.axisNoun || item.system || item.deviceNoun) return followedByAxis(items, n);
    if (item.kind === 'punctuation') return -1;
    if (item.magnitude) return -1;
  }
  return items[k + 1]?.kind === 'word' ? k + 1 : -1;
}

/** A comparing word of our own making, for constructions that compare by a verb or a ratio. */
export const compares = (at: number, axis: Axis, sign: 1 | -1): Measured => ({
  at,
  to: at,
  axis,
  sign,
  degree: 'comparative',
  excess: false,
  idiom: false,
  system: undefined,
  attributive: false,
});

/** Axes that a size decides. */
export const decidable = (axis: Axis): boolean => axis !== 'other' && axis !== 'number';
