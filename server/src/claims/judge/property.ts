/** What a suture material or a needle point is said to be. */
import { materialById, POINTS, pointById } from '../../sizes/index.ts';
import type { Material } from '../../sizes/materials.ts';
import type { Point } from '../../sizes/points.ts';
import type { PropertyClaim, Verdict } from '../model.ts';
import { judgeLasting } from './lasting.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';

export function judgeProperty(claim: PropertyClaim): Judgement {
  if (/^(?:outlasts|gone|weak):/.test(claim.property)) return judgeLasting(claim);
  return claim.of === 'material' ? judgeMaterial(claim) : judgePoint(claim);
}

const WORDS: Readonly<Record<string, string>> = {
  'absorbable:yes': 'absorbable',
  'absorbable:no': 'nonabsorbable',
  'structure:monofilament': 'a monofilament',
  'structure:multifilament': 'braided or multifilament',
  'origin:natural': 'natural',
  'origin:synthetic': 'synthetic',
  'origin:animal': 'of animal origin',
  'origin:plant': 'of plant origin',
};

function judgeMaterial(claim: PropertyClaim): Judgement {
  const material = materialById(claim.subject);
  const says = `Says ${material?.name ?? claim.subject} is ${WORDS[claim.property] ?? claim.property}.`;
  // A fact known only from memory is shown in the tables; nobody is corrected on it.
  if (!material || material.confidence === 'memory') return cannotTell(says, '');
  const holds = `${capital(material.name)} is ${describe(material)}.`;
  const [property, value] = claim.property.split(':');
  return {
    verdict: materialVerdict(material, property!, value!),
    says,
    holds,
    source: sourceNames(material.sources) || 'common practice, no source',
    sources: material.sources,
    steps: [{ label: 'value', text: holds, sources: material.sources, confidence: material.confidence }],
  };
}

function materialVerdict(material: Material, property: string, value: string): Verdict {
  const truth = (holds: boolean): Verdict => (holds ? 'agrees' : 'contradicted');
  if (property === 'absorbable') return truth(material.absorbable === (value === 'yes'));
  if (property === 'origin' && (value === 'animal' || value === 'plant'))
    return truth(material.origin === 'natural' && (value === 'plant') === PLANTS.has(material.id));
  if (property === 'origin')
    return material.origin === 'metal' ? 'cannot-tell' : truth(material.origin === value);
  if (material.structure.some((one) => one === value))
    return material.structure.length === 1 ? 'agrees' : 'cannot-tell';
  return material.structure.includes('twisted') ? 'cannot-tell' : 'contradicted';
}

const PLANTS: ReadonlySet<string> = new Set(['cotton', 'linen']);

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

const STRUCTURE: Readonly<Record<string, string>> = {
  multifilament: 'braided (multifilament)',
  monofilament: 'monofilament',
  twisted: 'twisted',
};

export function describe(material: Material): string {
  const structure = material.structure.map((one) => STRUCTURE[one]).join(' or ');
  return `${material.origin === 'metal' ? 'metal' : material.origin}, ${material.absorbable ? 'absorbable' : 'nonabsorbable'} and ${structure}`;
}

function judgePoint(claim: PropertyClaim): Judgement {
  if (claim.property.startsWith('section:')) return judgeSection(claim);
  if (claim.property.startsWith('use:')) return judgeUse(claim);
  if (claim.property.startsWith('cuts-out:')) return judgeTearing(claim);
  const point = pointById(claim.subject);
  const value = claim.property.split(':')[1];
  const says =
    value === 'none'
      ? `Says a ${point?.name ?? claim.subject} needle has no edge.`
      : value === 'some'
        ? `Says a ${point?.name ?? claim.subject} needle has a cutting edge.`
        : `Says the edge of a ${point?.name ?? claim.subject} needle lies on the ${value} curve.`;
  if (!point) return cannotTell(says, '');
  const right = value === 'some' ? point.edge !== 'none' : point.edge === value;
  if (value === 'none' && point.edge === 'none') return cannotTell(says, '');
  const where =
    point.edge === 'none'
      ? 'has no cutting edge'
      : point.edge === 'sides'
        ? 'has its edges at the sides'
        : `has its third edge on the ${point.edge} curve`;
  const holds = `A ${point.name} needle ${where}.`;
  return {
    verdict: undecided(point, value) ? 'cannot-tell' : right ? 'agrees' : 'contradicted',
    says,
    holds,
    source: sourceNames(point.sources),
    sources: point.sources,
    steps: [{ label: 'value', text: holds, sources: point.sources, confidence: point.confidence }],
  };
}

/** A spatula's edges lie at its sides: on neither curve, but texts word it in several ways. */
const undecided = (point: Point, value: string | undefined): boolean =>
  point.edge === 'sides' && !(point.id === 'spatula' && (value === 'inner' || value === 'outer'));

/** Which of the two cutting needles is the likelier to cut out: the one whose edge faces the wound. */
function judgeTearing(claim: PropertyClaim): Judgement {
  const conventional = claim.property === 'cuts-out:conventional';
  const point = pointById('cutting')!;
  const holds =
    'A conventional cutting needle has its edge towards the wound and can cut out; a reverse cutting needle is the safer.';
  return {
    verdict: conventional ? 'agrees' : 'contradicted',
    says: `Says a ${conventional ? 'conventional' : 'reverse'} cutting needle is the likelier to cut out.`,
    holds,
    source: sourceNames(point.sources),
    sources: point.sources,
    steps: [{ label: 'rule', text: holds, sources: point.sources }],
  };
}

/** A point said to be for a tissue that every text gives to another. */
function judgeUse(claim: PropertyClaim): Judgement {
  const point = pointById(claim.subject);
  const tissue = claim.property.split(':')[1]!;
  const says = `Says a ${point?.name ?? claim.subject} needle is for ${tissue}.`;
  if (!point) return cannotTell(says, '');
  const right = POINTS.find((one) => one.fit.includes(tissue));
  const holds = `A ${point.name} needle is for ${point.use}${right ? `; ${tissue} takes a ${right.name} needle` : ''}.`;
  return {
    verdict: point.unfit.includes(tissue)
      ? 'contradicted'
      : point.fit.includes(tissue)
        ? 'agrees'
        : 'cannot-tell',
    says,
    holds,
    source: sourceNames(point.sources),
    sources: point.sources,
    steps: [{ label: 'value', text: holds, sources: point.sources, confidence: point.confidence }],
  };
}

/** Round or triangular in section: the points with a third edge are triangular, the edgeless ones round. */
function judgeSection(claim: PropertyClaim): Judgement {
  const point = pointById(claim.subject);
  const shape = claim.property.split(':')[1];
  const says = `Says a ${point?.name ?? claim.subject} needle is ${shape} in section.`;
  if (!point || point.edge === 'sides') return cannotTell(says, '');
  const holds = `A ${point.name} needle is ${point.edge === 'none' ? 'round' : 'triangular'} in section.`;
  return {
    verdict: (shape === 'round') === (point.edge === 'none') ? 'agrees' : 'contradicted',
    says,
    holds,
    source: sourceNames(point.sources),
    sources: point.sources,
    steps: [{ label: 'value', text: holds, sources: point.sources, confidence: point.confidence }],
  };
}
