/**
 * Two ways of saying one size. The value said must lie in the interval of the size, widened by the rounding of the
 * digits as written; it contradicts only when it lies clearly outside: more than half a step to the next size.
 */

import type { Context } from '../../mentions/model.ts';
import type { Note } from '../../notes/model.ts';
import {
  convert,
  designatesAnother,
  innerDiameter,
  label,
  neighbours,
  outerDiameter,
} from '../../sizes/index.ts';
import type { Interval, Lens, Size } from '../../sizes/model.ts';
import { list, type Part, type Phrase, phrase, quote } from '../../texts/index.ts';
import type { EquivalenceClaim, Operand, Verdict } from '../model.ts';
import { FRAME } from '../texts/frame.ts';
import { MEASURE } from '../texts/measures.ts';
import { measureEdit } from './measure.ts';
import { misrounded } from './misrounded.ts';
import { cannotTell, intervalWords, type JudgedStep, type Judgement, lensOf, sourceNames } from './model.ts';
import { labels } from './words.ts';

const LENGTHS = new Set(['millimetre', 'inch', 'wire-inch', 'hegar']);
const UNIT_MM: Readonly<Record<string, number>> = { millimetre: 1, inch: 25.4, 'wire-inch': 25.4, hegar: 1 };

/** A size as said: a fraction of an inch as it is written, its unit aside, all else as labelled. */
function shown({ sizes, mentions }: Operand): Part {
  const fraction = FRACTION.exec(mentions[0]?.text ?? '')?.[0];
  return mentions.length === 1 && fraction && sizes[0]?.system === 'inch'
    ? quote(`${fraction} in`)
    : labels(sizes, FRAME.to);
}
const FRACTION = /(?:[0-9]+[ -])?[0-9]+\/[0-9]+/;

const AXIS_HOLDS: Readonly<Record<string, Phrase>> = {
  bore: phrase(MEASURE.inside),
  radius: phrase(MEASURE.radius),
  around: phrase(MEASURE.around),
};

const saysOf = ({ axis, left, right }: EquivalenceClaim): Phrase =>
  phrase(AXIS_SAYS[axis] ?? MEASURE.says, { left: shown(left), right: shown(right) });

const AXIS_SAYS = {
  bore: MEASURE.saysInside,
  radius: MEASURE.saysRadius,
  around: MEASURE.saysAround,
  outer: MEASURE.says,
  length: MEASURE.says,
} as const;

export function judgeEquivalence(claim: EquivalenceClaim, note: Note, context?: Context): Judgement {
  const [a, b] = [claim.left.sizes, claim.right.sizes];
  const says = saysOf(claim);
  if (a.length === 0 || b.length === 0) return cannotTell(says, '');
  const [named, measured] =
    LENGTHS.has(b[0]!.system) || !LENGTHS.has(a[0]!.system)
      ? [claim.left, claim.right]
      : [claim.right, claim.left];
  if (!LENGTHS.has(measured.sizes[0]!.system)) return judgeNumbers(claim, says, note, context);
  return judgeMeasured(claim, named, measured, says, note, context);
}

function judgeMeasured(
  claim: EquivalenceClaim,
  named: Operand,
  measured: Operand,
  says: Part,
  note: Note,
  context?: Context,
): Judgement {
  const lens = lensOf(named, context);
  const truth = intervalOf(named, claim.axis, lens);
  const said = claim.said ?? saidInterval(measured);
  if (!truth || !said) return cannotTell(says, phrase(MEASURE.noTable));
  // Words that leave a length open have been given their room already.
  const loose = claim.approximate && !claim.said ? truth.max * 0.1 : 0;
  const rounding = (claim.said ? 0 : roundingOf(measured)) + roundingOf(named) + loose;
  // The metric number is itself a least diameter: "at least 0.3 mm" gives its value.
  const least = named.sizes[0]!.system === 'ep-metric' && measured.mentions[0]?.bound === 'at-least';
  const bounded = least
    ? undefined
    : (packedVerdict(claim, named, said) ?? boundVerdict(measured, said, truth));
  const margin = marginOf(named, truth, lens);
  const compared =
    bounded ??
    (measured.sizes.length === 2
      ? ends(said, truth, rounding, margin, named.sizes.length === 2 || limitsOfThread(named, rounding))
      : misrounded(claim, named, measured, note)
        ? 'contradicted'
        : overlap(said, truth, rounding, margin));
  const open =
    limitsOfGut(claim, named, said, lens, note) ||
    thinWalled(claim, named, said, lens) ||
    (CROSSED.test(note.text.slice(claim.span.start, claim.span.end)) && isBore(named.sizes[0]!, said));
  const verdict = compared === 'contradicted' && open ? 'cannot-tell' : compared;
  // A key is mended where it stands; what its question says is not what is wrong.
  const mendable = claim.construction !== 'answer-key' || measured.span.start >= claim.focus.start;
  const repair =
    verdict === 'contradicted' && mendable && !claim.among ? measureEdit(note, measured, truth) : undefined;
  return {
    verdict,
    says,
    holds: holdsOf(claim, named, measured, truth),
    source: truth.standard || sourceNames(truth.sources),
    sources: truth.sources,
    ...(repair ? { repair } : {}),
    steps: [tabled(named, truth), written(said, rounding)],
  };
}

const holdsOf = (claim: EquivalenceClaim, named: Operand, measured: Operand, truth: Interval): Phrase =>
  phrase(MEASURE.holds, {
    size: labels(named.sizes, FRAME.to),
    measure: intervalWords(truth),
    axis: AXIS_HOLDS[claim.axis] ?? '',
    inch: inchWords(measured, truth),
    caution: truth.caution ? phrase(MEASURE.caution, { caution: truth.caution }) : '',
  });

const tabled = (named: Operand, truth: Interval): JudgedStep => ({
  label: 'value',
  text: phrase(MEASURE.by, {
    size: label(named.sizes[0]!),
    measure: intervalWords(truth),
    standard: truth.standard,
  }),
  sources: truth.sources,
  confidence: truth.confidence,
});

const written = (said: { min: number; max: number }, rounding: number): JudgedStep => ({
  label: 'value',
  text: phrase(MEASURE.written, {
    said: said.min === said.max ? said.min : phrase(MEASURE.range, said),
    rounding: Number(rounding.toFixed(4)),
  }),
});

/** "0.7 × 40 mm" of a 21 G needle: the designated size of another gauge. */
function packedVerdict(
  { packed }: EquivalenceClaim,
  { sizes: [size], device }: Operand,
  said: { min: number; max: number },
): Verdict | undefined {
  if (!packed || size?.system !== 'needle-gauge' || (device && !NEEDLES.has(device))) return undefined;
  return said.min === said.max && designatesAnother(size.value, said.min) ? 'contradicted' : undefined;
}

const NEEDLES: ReadonlySet<string> = new Set(['needle', 'winged-set']);

/** A length beside it, or a word for the inside somewhere: "21 G (0.51 mm), 25 G (0.26 mm), bores in brackets". */
const CROSSED = /\d\s?(?:mm|G)?\s?[x×]\s?\d|\b(?:bores?|lumens?|inner|inside)\b/i;

/** "27 G (32 mm × 0.2 mm)": some lists give the bore beside the length. */
function isBore(size: Size, said: { min: number; max: number }): boolean {
  const bore = innerDiameter(size, { device: 'needle' });
  return bore !== undefined && said.min >= bore.min - BORE_SLACK && said.max <= bore.max + BORE_SLACK;
}
/** Half of the last digit of a bore given in tenths, or a little less in hundredths, mm. */
const BORE_SLACK = 0.02;

/** Both limits as the table of gut has them, with no thread named: the table of another material may be meant. */
function limitsOfGut(
  claim: EquivalenceClaim,
  named: Operand,
  said: { min: number; max: number },
  lens: Lens,
  note: Note,
): boolean {
  const [size] = named.sizes;
  if (
    size?.system !== 'usp' ||
    named.sizes.length > 1 ||
    lens.material !== undefined ||
    said.min === said.max
  )
    return false;
  if (SYNTHETIC.test(note.text.slice(claim.span.start, claim.span.end))) return false;
  const gut = outerDiameter(size, { ...lens, material: 'gut' });
  return gut !== undefined && ends(said, gut, 0.011, 0) === 'agrees';
}

/** Both walls of the thinnest needles made, mm. From memory. */
const THINNEST_WALLS = 0.1;

/** A bore wider than the tables have it, and still with walls around it. */
function thinWalled(
  { axis }: EquivalenceClaim,
  { sizes }: Operand,
  said: { min: number; max: number },
  lens: Lens,
): boolean {
  const [size] = sizes;
  if (axis !== 'bore' || size?.system !== 'needle-gauge' || sizes.length > 1) return false;
  const [outer, inner] = [outerDiameter(size, lens), innerDiameter(size, lens)];
  return !!outer && !!inner && said.min > inner.min && said.max <= outer.max - THINNEST_WALLS;
}

const inchWords = (measured: Operand, truth: Interval): Part =>
  UNIT_MM[measured.sizes[0]!.system] === 25.4
    ? phrase(MEASURE.inch, { value: Number(((truth.nominal ?? truth.min) / 25.4).toFixed(3)) })
    : '';

/** Interval of a size or of a range of sizes, mm. */
function intervalOf(operand: Operand, axis: EquivalenceClaim['axis'], lens: Lens): Interval | undefined {
  const parts = operand.sizes.map((size) =>
    axis === 'bore' && !LENGTHS.has(size.system) ? innerDiameter(size, lens) : outerDiameter(size, lens),
  );
  const known = parts.filter((part) => part !== undefined);
  const first = known[0];
  if (!first || known.length < parts.length) return undefined;
  if (known.length === 1) return scaled(first, FACTORS[axis] ?? 1);
  const { nominal: _, ...rest } = first;
  const [min, max] = [Math.min(...known.map((k) => k.min)), Math.max(...known.map((k) => k.max))];
  return scaled({ ...rest, min, max }, FACTORS[axis] ?? 1);
}

/** Of a diameter: half of it, or the way around it. */
const FACTORS: Readonly<Record<string, number>> = { radius: 0.5, around: Math.PI };
const scaled = (interval: Interval, factor: number): Interval =>
  factor === 1
    ? interval
    : {
        ...interval,
        min: interval.min * factor,
        max: interval.max * factor,
        ...(interval.nominal === undefined ? {} : { nominal: interval.nominal * factor }),
      };

function saidInterval(measured: Operand): { min: number; max: number } | undefined {
  const values = measured.sizes.map((size) => size.value * (UNIT_MM[size.system] ?? Number.NaN));
  return values.some(Number.isNaN) ? undefined : { min: Math.min(...values), max: Math.max(...values) };
}

/** Half of the last digit as written, mm. A fraction of an inch is exact. */
function roundingOf(operand: Operand): number {
  const mention = operand.mentions[0];
  const unit = UNIT_MM[operand.sizes[0]?.system ?? ''];
  if (!mention || unit === undefined) return 0;
  if (/[/¼½¾⅛⅜⅝⅞]/.test(mention.text)) return 0;
  const scale = /\bcm\b|centim/i.test(mention.text) ? 10 : 1;
  const half = 0.5 * 10 ** -mention.decimals * unit * scale;
  // "1 mm" leaves less than half a millimetre open: nobody rounds 0.5 mm to it.
  const whole = mention.decimals === 0 && scale === 1 ? (operand.sizes[0]?.value ?? 0) * unit * WHOLE : half;
  return Math.min(half, whole) * (unit === 25.4 && mention.decimals === 0 ? 0.1 : 1);
}

/** What a whole number of millimetres leaves open at most, as a share of it. */
const WHOLE = 0.25;

/** How far outside the interval a value must lie to contradict: over half a step to the next size, at most 15 %. */
function marginOf(named: Operand, truth: Interval, lens: Lens): number {
  const size = named.sizes[0]!;
  if (LENGTHS.has(size.system)) return truth.max * (size.system === 'wire-inch' ? 0.05 : 0.08);
  // A tracheal tube is called by its inside: half a size off is another tube.
  if (size.system === 'tube-id') return TUBE_STEP;
  const { thinner, thicker } = neighbours(size);
  const centre = truth.nominal ?? (truth.min + truth.max) / 2;
  const steps = [thinner, thicker].flatMap((other) => {
    const interval = other && outerDiameter(other, lens);
    return interval ? [Math.abs((interval.nominal ?? (interval.min + interval.max) / 2) - centre)] : [];
  });
  const step = steps.length > 0 ? Math.min(...steps) : centre * 0.2;
  return Math.min(step * 0.6, centre * 0.15);
}

const TUBE_STEP = 0.3;

function overlap(
  said: { min: number; max: number },
  truth: Interval,
  rounding: number,
  margin: number,
): Verdict {
  const gap = Math.max(truth.min - said.max, said.min - truth.max, 0);
  if (gap <= rounding + 1e-9) return 'agrees';
  return gap > rounding + margin ? 'contradicted' : 'cannot-tell';
}

/** "at least 4 mm": only a bound that the whole interval breaks contradicts. */
function boundVerdict(
  measured: Operand,
  said: { min: number; max: number },
  truth: Interval,
): Verdict | undefined {
  const bound = measured.mentions[0]?.bound;
  if (!bound) return undefined;
  const least = bound === 'at-least' || bound === 'more-than';
  const broken = least ? truth.max * 1.1 < said.min : truth.min > said.max * 1.1;
  return broken ? 'contradicted' : 'cannot-tell';
}

/**
 * A range said of one size: both ends must be off before it contradicts, and in the same direction. Of a range of sizes
 * each end is its own: with one end right, the other may be wrong by itself, if by far.
 */
function ends(
  said: { min: number; max: number },
  truth: Interval,
  rounding: number,
  margin: number,
  paired = false,
): Verdict {
  const [low, high] = [said.min - truth.min, said.max - truth.max];
  const slack = rounding + 1e-9;
  if (Math.abs(low) <= slack && Math.abs(high) <= slack) return 'agrees';
  const [near, far] = Math.abs(low) < Math.abs(high) ? [low, high] : [high, low];
  const wrong = Math.abs(far) > rounding + 2 * margin && Math.abs(far) > FAR * truth.max;
  if (paired && Math.abs(near) <= slack && wrong) return 'contradicted';
  const away =
    Math.sign(low) === Math.sign(high) && Math.min(Math.abs(low), Math.abs(high)) > rounding + margin;
  return away ? 'contradicted' : 'cannot-tell';
}

/** Both limits of a thread's row, to the thousandth: where one is right, the other is as well. */
const limitsOfThread = ({ sizes }: Operand, rounding: number): boolean =>
  /^(?:usp|ep-metric)$/.test(sizes[0]!.system) && rounding < 0.001;

/** How far one end of a range of sizes must be off when the other is right, as a share of the greater end. */
const FAR = 0.2;

/** USP against metric number, or gauge against French. */
function judgeNumbers(claim: EquivalenceClaim, says: Part, note: Note, context?: Context): Judgement {
  const a = claim.left.sizes[0]!;
  const b = claim.right.sizes[0]!;
  // "The distal lumen of the 7 Fr is a 16 G": one of several lumens, of which no table tells.
  if (
    claim.axis === 'bore' &&
    a.system !== b.system &&
    LUMENS.test(note.text.slice(claim.span.start, claim.span.end))
  )
    return cannotTell(says, '');
  if (claim.left.sizes.length > 1 || claim.right.sizes.length > 1) return cannotTell(says, '');
  const sutures = new Set(['usp', 'ep-metric']);
  return sutures.has(a.system) && sutures.has(b.system)
    ? judgeSutures(claim, says, note, context)
    : judgeAcross(claim, says, context);
}

const LUMENS = /\b(?:distal|proximal|medial|middle|lumens?|channels?|brown|blue|white)\b/i;
const SYNTHETIC = /\b(?:synthetics?|non-?absorbables?)\b/i;

function judgeSutures(claim: EquivalenceClaim, says: Part, note: Note, context?: Context): Judgement {
  const [usp, metric] =
    claim.left.sizes[0]!.system === 'usp' ? [claim.left, claim.right] : [claim.right, claim.left];
  const lens = lensOf(usp, context);
  const synthetic =
    lens.material !== undefined || SYNTHETIC.test(note.text.slice(claim.span.start, claim.span.end));
  const lenses: Lens[] = synthetic ? [lens] : [lens, { ...lens, material: 'gut' }];
  const values = lenses
    .flatMap((one) => convert(usp.sizes[0]!, one))
    .filter((c) => c.to === 'ep-metric' && c.value !== undefined);
  const said = metric.sizes[0]!.value;
  if (values.length === 0) return cannotTell(says, '');
  const first = values[0]!;
  const near = values.some((c) => Math.abs(c.value! - said) < 1e-9);
  return {
    verdict: near ? 'agrees' : 'contradicted',
    says,
    holds: phrase(MEASURE.is, {
      size: label(usp.sizes[0]!),
      values: list([...new Set(values.map((c) => c.text))], FRAME.orForGut),
    }),
    source: first.standard,
    sources: first.sources,
    steps: values.map((c) => ({
      label: 'value' as const,
      text: phrase(MEASURE.step, { size: label(usp.sizes[0]!), values: c.text }),
      sources: c.sources,
      confidence: c.confidence,
    })),
  };
}

function judgeAcross(claim: EquivalenceClaim, says: Part, context?: Context): Judgement {
  const [a, b] = [claim.left, claim.right];
  const truth = outerDiameter(a.sizes[0]!, lensOf(a, context));
  const other = outerDiameter(b.sizes[0]!, lensOf(b, context));
  if (!truth || !other)
    return judgeTube(a, b, truth ?? other, says) ?? cannotTell(says, phrase(MEASURE.noTables));
  const margin = Math.max(marginOf(a, truth, lensOf(a, context)), marginOf(b, other, lensOf(b, context)));
  const verdict = overlap(other, truth, 0, Math.max(margin, 0.12 * truth.max));
  return {
    verdict,
    // Near each other in the tables: one thing of either size may still be thicker than one of the other.
    ...(verdict === 'agrees' ? { partly: true as const } : {}),
    says,
    holds: phrase(MEASURE.both, {
      left: label(a.sizes[0]!),
      leftMeasure: intervalWords(truth),
      right: label(b.sizes[0]!),
      rightMeasure: intervalWords(other),
    }),
    source: [...new Set([truth.standard, other.standard])].join(', '),
    sources: [...truth.sources, ...other.sources],
    steps: [truth, other].map((t) => ({
      label: 'value' as const,
      text: phrase(MEASURE.measureBy, { measure: intervalWords(t), standard: t.standard }),
      sources: t.sources,
      confidence: t.confidence,
    })),
  };
}

/** A tube named by its inside is wider than that outside, and nowhere twice as wide: enough to tell it from another scale. */
function judgeTube(a: Operand, b: Operand, other: Interval | undefined, says: Part): Judgement | undefined {
  const tube = [a, b].map(({ sizes }) => sizes[0]!).find(({ system }) => system === 'tube-id');
  const named = a.sizes[0] === tube ? b : a;
  if (!tube || !other || (other.max >= tube.value && other.min <= 2 * tube.value)) return undefined;
  const inside = innerDiameter(tube);
  const holds = phrase(MEASURE.tube, {
    tube: label(tube),
    value: tube.value,
    size: label(named.sizes[0]!),
    measure: intervalWords(other),
  });
  return {
    verdict: 'contradicted',
    says,
    holds,
    source: inside?.standard ?? '',
    sources: [...(inside?.sources ?? []), ...other.sources],
    steps: [{ label: 'value', text: holds, sources: other.sources, confidence: other.confidence }],
  };
}
