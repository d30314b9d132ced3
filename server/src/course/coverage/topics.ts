/**
 * What a course on sizes can teach: the rules, and the paradoxes where two rules meet. A topic counts as taught
 * where a note says it rightly. Declared here, asked for by an author, never a warning.
 */
import type { Claim, Statement } from '../../claims/model.ts';
import type { Device, System } from '../../sizes/model.ts';

export interface Topic {
  readonly id: string;
  readonly kind: 'rule' | 'paradox';
  readonly title: string;
  /** Why it is worth a sentence. */
  readonly about: string;
  /** Parts that must each be said somewhere in the course; a rule has one, a paradox two. */
  readonly parts: readonly ((claim: Claim) => boolean)[];
}

type Test = (claim: Claim) => boolean;

const direction =
  (system: System, zeros = false): Test =>
  (claim) =>
    claim.kind === 'direction' && claim.system === system && (claim.zeros ?? false) === zeros;

const formula =
  (...ids: readonly string[]): Test =>
  (claim) =>
    claim.kind === 'formula' && ids.includes(claim.formula);

const colour =
  (device: Device): Test =>
  (claim) =>
    claim.kind === 'colour' && claim.device === device;

/** A comparison of two sizes of `system` along `axis`. */
const compared =
  (system: System, axis: string): Test =>
  (claim) =>
    claim.kind === 'comparison' &&
    claim.axis === axis &&
    [...claim.left.sizes, ...claim.right.sizes].every((size) => size.system === system);

/** Two USP sizes on both sides of 0: "2 is thicker than 2-0". */
const acrossZero: Test = (claim) =>
  claim.kind === 'comparison' &&
  [claim.left, claim.right].some(({ sizes }) =>
    sizes.some(({ system, value }) => system === 'usp' && value > 0),
  ) &&
  [claim.left, claim.right].some(({ sizes }) =>
    sizes.some(({ system, value }) => system === 'usp' && value < 0),
  );

/** An equivalence with one side in `a` and the other in `b`. */
const equals =
  (a: System, b: System): Test =>
  (claim) => {
    if (claim.kind !== 'equivalence') return false;
    const systems = [claim.left, claim.right].map(({ sizes }) => sizes[0]?.system);
    return systems.includes(a) && systems.includes(b);
  };

const property =
  (of: 'material' | 'point', start: string): Test =>
  (claim) =>
    claim.kind === 'property' && claim.of === of && claim.property.startsWith(start);

const category: Test = (claim) => claim.kind === 'category';

const gaugeRuns: Test = (claim) =>
  direction('needle-gauge')(claim) || compared('needle-gauge', 'outer')(claim);
const frenchRuns: Test = (claim) => direction('french')(claim) || compared('french', 'outer')(claim);
const tubeInside = formula('tube-is-inner');
const frenchOutside = formula('mm-is-french-over-3', 'french-is-mm-times-3');

// biome-ignore format: one topic a block
export const TOPICS: readonly Topic[] = [
  { id: 'gauge-direction', kind: 'rule', title: 'A larger gauge number is thinner', about: 'The first thing learners get wrong.', parts: [direction('needle-gauge')] },
  { id: 'french-direction', kind: 'rule', title: 'A larger French number is thicker', about: 'French runs the way one expects.', parts: [direction('french')] },
  { id: 'zeros-direction', kind: 'rule', title: 'More zeros are thinner', about: 'Of 3-0 and 5-0 the second is the finer.', parts: [direction('usp', true)] },
  { id: 'french-formula', kind: 'rule', title: 'French is three times the diameter in millimetres', about: 'The one conversion done in the head.', parts: [frenchOutside] },
  { id: 'tube-inner', kind: 'rule', title: 'A tracheal tube is sized by its inner diameter', about: 'Everything else at hand is sized by its outside.', parts: [tubeInside] },
  { id: 'sheath-inner', kind: 'rule', title: 'The French of a sheath is what it accepts', about: 'Its outside is larger.', parts: [formula('sheath-is-inner')] },
  { id: 'metric-tenths', kind: 'rule', title: 'The metric suture number is tenths of a millimetre', about: 'The label carries it beside the USP size.', parts: [(claim) => formula('metric-is-tenths')(claim) || equals('usp', 'ep-metric')(claim)] },
  { id: 'bore-and-flow', kind: 'rule', title: 'The wider cannula flows faster', about: 'Why the gauge matters at all.', parts: [compared('needle-gauge', 'flow')] },
  { id: 'large-bore', kind: 'rule', title: 'Which sizes count as large-bore', about: 'Named in every trauma lecture.', parts: [category] },
  { id: 'needle-colours', kind: 'rule', title: 'Hub colours of needles', about: 'ISO 6009.', parts: [colour('needle')] },
  { id: 'cannula-colours', kind: 'rule', title: 'Colours of IV cannulas', about: 'ISO 10555-5.', parts: [colour('cannula')] },
  { id: 'absorbable', kind: 'rule', title: 'Which materials are absorbed', about: 'Decides who comes back for removal.', parts: [property('material', 'absorbable')] },
  { id: 'structure', kind: 'rule', title: 'Which materials are braided', about: 'Decides how a knot holds.', parts: [property('material', 'structure')] },
  { id: 'point-edges', kind: 'rule', title: 'Where the edge of a cutting needle lies', about: 'Conventional and reverse cutting differ by it.', parts: [property('point', 'edge')] },
  { id: 'gauge-against-french', kind: 'paradox', title: 'Gauge and French run opposite ways', about: 'A 20 G is thinner than an 18 G, a 20 Fr thicker than an 18 Fr.', parts: [gaugeRuns, frenchRuns] },
  { id: 'across-zero', kind: 'paradox', title: '2 and 2-0 are not the same', about: 'Whole numbers rise from 0, zeros fall from it.', parts: [acrossZero] },
  { id: 'colour-codes-differ', kind: 'paradox', title: 'Needles and cannulas use different colours', about: 'An 18 G needle is pink, an 18 G cannula green.', parts: [colour('needle'), colour('cannula')] },
  { id: 'inside-against-outside', kind: 'paradox', title: 'Tubes go by the inside, catheters by the outside', about: 'A 7 mm tube does not fit where a 21 Fr catheter does.', parts: [tubeInside, frenchOutside] },
];

/** Only what is said, and said rightly, teaches. */
export const teaches = ({ verdict, stance }: Statement): boolean =>
  verdict === 'agrees' && (stance === 'asserted' || stance === 'denied');
