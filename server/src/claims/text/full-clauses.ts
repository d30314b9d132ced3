/**
 * Full clauses of one sentence: "a 14 G is orange, and a 6 mm tube is wider than a 12 Fr catheter". Each has its own subject
 * and verb and points at nothing outside it, so that each can be read alone.
 */
import type { Item } from './items.ts';

type Items = readonly Item[];

/** One clause. */
export interface Clause {
  readonly items: Items;
  /** A verb, and nothing compared with what the clause does not name. */
  readonly complete: boolean;
}

/** Words of a clause, at least. */
const SHORTEST = 3;

/** The clauses in source order; nothing where the sentence is one clause. */
export function fullClauses(items: Items): readonly Clause[] | undefined {
  const clauses: Clause[] = [];
  let from = 0;
  for (let i = 1; i < items.length - 1; i++) {
    const past = joinPast(items, i);
    if (
      past === undefined ||
      i - from < SHORTEST ||
      !items.slice(from, i).some(ofTrade) ||
      !stands(items, past)
    )
      continue;
    clauses.push(clause(items.slice(from, i)));
    from = past;
  }
  return clauses.length > 0 ? [...clauses, clause(items.slice(from))] : undefined;
}

const clause = (items: Items): Clause => ({
  items,
  complete: items.some(({ kind }) => kind === 'size') && hasVerb(items) && !comparesBeyond(items),
});

const JOINS = new Set(['and', 'while', 'whereas']);

/** Past "; ", ", and ", ", while ", ", just as ". */
function joinPast(items: Items, at: number): number | undefined {
  const { word } = items[at]!;
  const next = items[at + 1]!.word;
  if (word === ';') return listed(items, at) ? undefined : JOINS.has(next) ? at + 2 : at + 1;
  if (word !== ',') return undefined;
  if (next === 'just' && items[at + 2]?.word === 'as') return at + 3;
  return JOINS.has(next) ? at + 2 : undefined;
}

/** "None of these holds: …; …": entries of one list. */
const listed = (items: Items, at: number): boolean => items.slice(0, at).some(({ word }) => word === ':');

const VERBS = new Set(
  `is are was has have gives give lets let means mean measures measure flows flow runs run carries carry makes make goes go takes take
  passes pass comes come equals equal counts count needs need suits fits`.split(/\s+/),
);

const hasVerb = (items: Items): boolean =>
  items.some(({ word }, i) => i > 0 && i < items.length - 1 && VERBS.has(word));

/** In front of what a clause names they point out of it, or make it depend on another. */
const LEANING = new Set(
  `it its they them their one ones other others another both either neither former latter same this that these those he she so
  too also then else if because since although though who which whose opposite reverse vice than as not`.split(
    /\s+/,
  ),
);

/** These do so anywhere in it. */
const BACKWARDS = new Set(
  'it its they them that those these so therefore divided times multiplied'.split(' '),
);

const ofTrade = (item: Item): boolean =>
  item.kind === 'size' || item.system !== undefined || item.deviceNoun === true;

/** What follows up to the next joint names something of its own, and leans on nothing before it. */
function stands(items: Items, from: number): boolean {
  let to = from + 1;
  while (to < items.length && !(to < items.length - 1 && joinPast(items, to) !== undefined)) to++;
  const rest = items.slice(from, to);
  const named = rest.findIndex(ofTrade);
  if (named < 0 || rest.some(({ word }) => BACKWARDS.has(word))) return false;
  return !rest.slice(0, named).some(({ word }) => LEANING.has(word)) && !comparesBeyond(rest);
}

/** "… and a 2-0 is thinner", "… and the 20 G is the thinnest": than what stands before it. */
const comparesBeyond = (items: Items): boolean =>
  items.some(({ magnitude }) => magnitude !== undefined && magnitude.degree !== 'plain') &&
  !items.some(({ word }) => word === 'than') &&
  items.filter(({ kind }) => kind === 'size').length < 2;
