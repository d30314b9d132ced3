/** Which of two sizes is thicker. */
import { type Phrase, phrase, tell } from '../texts/index.ts';
import { outerDiameter, uspRow } from './diameter.ts';
import { direction, fullLabel } from './format.ts';
import { distinct, isPoint, mmText, overlaps } from './interval.ts';
import { keptOfTwo } from './kept.ts';
import { isCollagen, mayBeOversize } from './materials.ts';
import type { Interval, Lens, Size, Thickness } from './model.ts';
import { COMPARING } from './texts/comparing.ts';

type Result = Thickness['result'];

const toResult = (difference: number): Result =>
  Math.abs(difference) < 1e-9 ? 'same' : difference > 0 ? 'thicker' : 'thinner';

/**
 * How thick `a` is against `b`. Within one system on like things the numbers decide, save for documented exceptions;
 * otherwise diameters that do not overlap decide, and overlapping ones leave it open.
 */
export const compareThickness = keptOfTwo(thicknesses);

function thicknesses(a: Size, b: Size, lensA: Lens, lensB: Lens): Thickness {
  const left = outerDiameter(a, lensA);
  const right = outerDiameter(b, lensB);
  const measured = measures(a, b, left, right);
  const sources = distinct([...(left?.sources ?? []), ...(right?.sources ?? [])]);
  if (a.system === b.system && alike(a, b, lensA, lensB)) {
    const result = byNumber(a, b, lensA);
    return { result, ...told(measured ?? orderReason(a, b)), sources };
  }
  const result = left && right ? byDiameter(a, b, left, right, lensA, lensB) : 'cannot-tell';
  return { result, ...told(measured ?? unknownReason(a, b, left)), sources };
}

const told = (ground: Phrase): Pick<Thickness, 'because' | 'ground'> => ({ because: tell(ground), ground });

function byNumber(a: Size, b: Size, lens: Lens): Result {
  if (a.system === 'usp' && a.value !== b.value && shareRow(a, b, lens)) return 'cannot-tell';
  const sign = direction(a.system) === 'down' ? -1 : 1;
  return toResult(sign * (a.value - b.value));
}

/** USP 3 and 4 share one row of the synthetic table. */
function shareRow(a: Size, b: Size, lens: Lens): boolean {
  const gut = isCollagen(lens.material);
  const left = uspRow(a.value, gut);
  const right = uspRow(b.value, gut);
  return left !== undefined && right !== undefined && left.metric === right.metric;
}

/** May the numbers of one system be compared as they stand on these two things? */
function alike(a: Size, b: Size, lensA: Lens, lensB: Lens): boolean {
  if (a.system === 'usp') return likeThreads(a, b, lensA.material, lensB.material);
  if (a.system === 'needle-gauge') return likeGauges(lensA, lensB);
  return a.system !== 'french' || frenchOf(lensA) === frenchOf(lensB);
}

function likeThreads(a: Size, b: Size, left?: string, right?: string): boolean {
  if (left === 'eptfe' || right === 'eptfe') return left === right;
  if (isCollagen(left) !== isCollagen(right)) return false;
  if (left === undefined || right === undefined || a.value === b.value) return true;
  return mayBeOversize(left) === mayBeOversize(right);
}

/** Needles and IV catheters have a table each; a thing not said follows the other. */
function likeGauges(a: Lens, b: Lens): boolean {
  const left = gaugeList(a);
  const right = gaugeList(b);
  return left === undefined || right === undefined || left === right;
}

function gaugeList({ device }: Lens): 'needle' | 'cannula' | 'wire' | undefined {
  if (device === 'needle' || device === 'winged-set') return 'needle';
  if (device === 'steel-wire' || device === 'k-wire') return 'wire';
  return device === 'cannula' ? 'cannula' : undefined;
}

/** What the French number measures on the thing. */
function frenchOf({ device }: Lens): 'inside' | 'either' | 'outside' {
  if (device === 'sheath') return 'inside';
  return device === 'guiding-catheter' ? 'either' : 'outside';
}

function byDiameter(a: Size, b: Size, x: Interval, y: Interval, lensA: Lens, lensB: Lens): Result {
  if (!overlaps(x, y)) return gutAgainstUnsaid(a, b, lensA, lensB, x.min > y.max ? 'thicker' : 'thinner');
  if (isPoint(x) && isPoint(y)) return 'same';
  return sameMetric(a, b, lensA, lensB) ? 'same' : 'cannot-tell';
}

/** Gut against a thread whose material is not said: the other may be gut too, so the numbers must agree. */
function gutAgainstUnsaid(a: Size, b: Size, lensA: Lens, lensB: Lens, result: Result): Result {
  const unsaid = lensA.material === undefined || lensB.material === undefined;
  if (a.system !== 'usp' || b.system !== 'usp' || !unsaid) return result;
  return toResult(a.value - b.value) === result ? result : 'cannot-tell';
}

/** A USP size and the metric number of its row name one thing; gut and silk of one metric only share limits. */
function sameMetric(a: Size, b: Size, lensA: Lens, lensB: Lens): boolean {
  if (a.system === b.system) return false;
  const left = metricOf(a, lensA);
  return left !== undefined && left === metricOf(b, lensB);
}

function metricOf(size: Size, { material }: Lens): number | undefined {
  if (size.system === 'ep-metric') return size.value;
  if (size.system !== 'usp' || mayBeOversize(material)) return undefined;
  return uspRow(size.value, isCollagen(material))?.metric;
}

function measures(a: Size, b: Size, left?: Interval, right?: Interval): Phrase | undefined {
  if (!left || !right) return undefined;
  return phrase(COMPARING.measured, {
    left: fullLabel(a),
    leftMeasure: mmText(left),
    right: fullLabel(b),
    rightMeasure: mmText(right),
  });
}

function orderReason(a: Size, b: Size): Phrase {
  if (a.value === b.value) return phrase(COMPARING.same, { size: fullLabel(a) });
  const runs = direction(a.system) === 'down' ? COMPARING.thinner : COMPARING.thicker;
  return phrase(runs, { left: fullLabel(a), right: fullLabel(b) });
}

const unknownReason = (a: Size, b: Size, left?: Interval): Phrase =>
  phrase(COMPARING.unknown, { size: fullLabel(left ? b : a) });
