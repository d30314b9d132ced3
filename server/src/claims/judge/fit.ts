/** Whether one thing goes through another: its outside against the widest inside that the other can have. */

import type { Context } from '../../mentions/model.ts';
import { innerDiameter, label, outerDiameter } from '../../sizes/index.ts';
import type { Interval, Lens, Size } from '../../sizes/model.ts';
import { type Phrase, phrase } from '../../texts/index.ts';
import type { FitClaim } from '../model.ts';
import { FIT } from '../texts/fit.ts';
import { MEASURE } from '../texts/measures.ts';
import { cannotTell, intervalWords, type Judgement, lensOf, mm, sourceNames } from './model.ts';

export function judgeFit(claim: FitClaim, context?: Context): Judgement {
  const [thing, container] = [claim.thing.sizes[0]!, claim.container.sizes[0]!];
  const says = phrase(FIT.says, { thing: label(thing), container: label(container) });
  const outside = outerDiameter(thing, lensOf(claim.thing, context));
  const hole = holeOf(container, lensOf(claim.container, context));
  if (!outside || !hole) return cannotTell(says, phrase(MEASURE.noDiameters));
  const sources = [...new Set([...outside.sources, ...hole.within.sources])];
  const wide =
    thing.system === 'millimetre'
      ? phrase(FIT.stated, { size: label(thing) })
      : phrase(FIT.thick, { size: label(thing), measure: intervalWords(outside) });
  const room = roomWords(container, hole);
  return {
    verdict: verdictOf(outside, hole, container.system === 'tube-id' ? MOST_OF_TUBE : 1),
    says,
    holds: phrase(FIT.holds, { wide, room }),
    source: sourceNames(sources) || hole.within.standard,
    sources,
    steps: [
      { label: 'value', text: wide, sources: outside.sources, confidence: outside.confidence },
      { label: 'value', text: room, sources: hole.within.sources, confidence: hole.within.confidence },
    ],
  };
}

/** `bored`: the inside itself; else only the outside is known, and the hole is narrower still. */
interface Hole {
  readonly within: Interval;
  readonly bored: boolean;
  /** The widest that it can be inside with walls as thin as any are made, mm. */
  readonly thinnest?: number;
}

/**
 * Both walls of the thinnest needle tubing together, mm: sources disagree whether a 0.035 in wire needs an 18 G or goes
 * through a 19 G with thin walls (northcutt against irblog, learnir, thoracic).
 */
const WALLS = 0.2;

function holeOf(size: Size, lens: Lens): Hole | undefined {
  if (isLength(size)) return { within: outerDiameter(size)!, bored: true };
  const inner = innerDiameter(size, lens);
  const outer = outerDiameter(size, lens);
  if (inner) return { within: inner, bored: true, thinnest: Math.max(inner.max, (outer?.max ?? 0) - WALLS) };
  return outer && { within: outer, bored: false };
}

const isLength = ({ system }: Size): boolean =>
  system === 'millimetre' || system === 'inch' || system === 'wire-inch';

/** A hole given in millimetres or inches says its width itself. */
const roomWords = (size: Size, { within, bored }: Hole): Phrase =>
  isLength(size)
    ? phrase(FIT.hole, { size: label(size) })
    : phrase(bored ? FIT.inside : FIT.across, { size: label(size), value: mm(within.max) });

/** Rounding of charts in the last place written, mm. */
const SLACK = 0.03;

/** How much of a tracheal tube a catheter may take: a wider one passes with luck. */
const MOST_OF_TUBE = 0.7;

/** `share`: how much of the inside the thing may take and still plainly go through. */
function verdictOf(
  outside: Interval,
  { within, bored, thinnest = within.max }: Hole,
  share: number,
): Judgement['verdict'] {
  if (outside.min > thinnest + SLACK) return 'contradicted';
  return bored && outside.max < within.min * share ? 'agrees' : 'cannot-tell';
}
