/**
 * Any question met by any reply: what is asked for is found by its words wherever they stand, the reply by its kind. Only what
 * has one reading is read; the judge decides on intervals. Tried when the grammar has read nothing.
 */
import type { Span } from '../../../notes/model.ts';
import type { Claim, Stance } from '../../model.ts';
import { textOf } from '../../text/joined.ts';
import type { Desk, KeyReading } from '../desk.ts';
import type { Piece } from '../piece.ts';
import { extreme } from './choices.ts';
import { offered } from './offered.ts';
import { sorted } from './orders.ts';
import { placing } from './placing.ts';
import { directed, measuredBy, operated, stepOf } from './rules.ts';
import { headOf, wavers } from './said.ts';
import { suctioned } from './suction.ts';
import { agreedTo, hue, materialChosen, substituted } from './things.ts';
import { beyond, converted, excepted, same } from './values.ts';

/** A question and what was said to it. */
export interface Told {
  readonly question: Piece;
  /** The reply without its reason. */
  readonly head: Piece;
  readonly reply: Piece;
  readonly options: readonly Piece[];
  /** Where a finding points. */
  readonly focus: Span;
  readonly desk: Desk;
}

/** Nobody asks at greater length, nor answers. */
const LONGEST = 60;
const LONGEST_HEAD = 10;

type Reader = (
  told: Told,
) => readonly (Claim | { readonly claim: Claim; readonly stance: Stance })[] | undefined;

const READERS: readonly Reader[] = [
  agreedTo,
  suctioned,
  placing,
  sorted,
  extreme,
  hue,
  offered,
  converted,
  beyond,
  excepted,
  same,
  stepOf,
  operated,
  measuredBy,
  directed,
  materialChosen,
  substituted,
];

export function loosely(
  question: Piece,
  reply: Piece,
  options: readonly Piece[],
  focus: Span,
  desk: Desk,
): KeyReading[] {
  const head = headOf(reply);
  if (question.items.length > LONGEST || head.items.length === 0 || head.items.length > LONGEST_HEAD)
    return [];
  if (PERSONS.test(textOf(question.items)) || reply.items.at(-1)?.word === '?') return [];
  const told = { question, head, reply, options, focus, desk };
  for (const read of READERS) {
    if (read !== agreedTo && read !== suctioned && wavers(head)) continue;
    const found = read(told);
    if (found) return found.map((one) => ('claim' in one ? one : { claim: one, stance: 'asserted' }));
  }
  return [];
}
/** What people think, say, like or do is no fact about sizes. */
const PERSONS =
  /\b(?:who|whose|did (?:you|he|she|they|the|she)|do you (?:prefer|like|think|keep|have|use|want|carry)|would you (?:rather|like)|your (?:favou?rite|own)|wrong answers?|common (?:mistake|error)|do (?:students|people|juniors|they)|why (?:i|we|you|she|he|they|my|was|were|did)|(?:can|could|would|will) (?:someone|somebody|anyone|anybody) (?:please )?explain)\b/;
