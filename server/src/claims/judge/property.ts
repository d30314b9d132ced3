/** What a suture material or a needle point is said to be. */

import { materialById, POINTS, pointById } from '../../sizes/index.ts';
import type { Material } from '../../sizes/materials.ts';
import type { Point } from '../../sizes/points.ts';
import { list, type Phrase, phrase } from '../../texts/index.ts';
import type { PropertyClaim, Verdict } from '../model.ts';
import { FRAME } from '../texts/frame.ts';
import { MATERIAL } from '../texts/materials.ts';
import { POINT } from '../texts/points.ts';
import { judgeLasting } from './lasting.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';

export function judgeProperty(claim: PropertyClaim): Judgement {
  if (/^(?:outlasts|gone|weak|half|most|lasts):/.test(claim.property)) return judgeLasting(claim);
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
  const known = materialById(claim.subject);
  const material = known && claim.form ? { ...known, structure: [claim.form] } : known;
  const says = phrase(MATERIAL.says, {
    material: material?.name ?? claim.subject,
    property: WORDS[claim.property] ?? claim.property,
  });
  // A fact known only from memory is shown in the tables; nobody is corrected on it.
  if (!material || material.confidence === 'memory') return cannotTell(says, '');
  const holds = phrase(MATERIAL.holds, { material: material.name, described: described(material) });
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

const STRUCTURE: Readonly<Record<string, string>> = {
  multifilament: 'braided (multifilament)',
  monofilament: 'monofilament',
  twisted: 'twisted',
};

const described = ({ origin, absorbable, structure }: Material): Phrase =>
  phrase(MATERIAL.described, {
    origin,
    absorbed: absorbable ? 'absorbable' : 'nonabsorbable',
    structure: list(
      structure.map((one) => STRUCTURE[one]!),
      FRAME.or,
    ),
  });

function judgePoint(claim: PropertyClaim): Judgement {
  if (claim.property.startsWith('section:')) return judgeSection(claim);
  if (claim.property.startsWith('use:')) return judgeUse(claim);
  if (claim.property.startsWith('cuts-out:')) return judgeTearing(claim);
  if (claim.property.startsWith('flat:')) return judgeFlat(claim);
  const point = pointById(claim.subject);
  const value = claim.property.split(':')[1];
  const called = point?.name ?? claim.subject;
  const says =
    value === 'none'
      ? phrase(POINT.saysNone, { point: called })
      : value === 'some'
        ? phrase(POINT.saysSome, { point: called })
        : phrase(POINT.saysCurve, { point: called, curve: value ?? '' });
  if (!point) return cannotTell(says, '');
  const right = value === 'some' ? point.edge !== 'none' : point.edge === value;
  if (value === 'none' && point.edge === 'none') return cannotTell(says, '');
  const where =
    point.edge === 'none'
      ? phrase(POINT.edgeless)
      : point.edge === 'sides'
        ? phrase(POINT.sided)
        : phrase(POINT.curved, { curve: point.edge });
  const holds = phrase(POINT.holds, { point: point.name, where });
  return ofPoint(
    point,
    undecided(point, value) ? 'cannot-tell' : right ? 'agrees' : 'contradicted',
    says,
    holds,
  );
}

/** A spatula's edges lie at its sides: on neither curve, but texts word it in several ways. */
const undecided = (point: Point, value: string | undefined): boolean =>
  point.edge === 'sides' && !(point.id === 'spatula' && (value === 'inner' || value === 'outer'));

/** Which of the two cutting needles is the likelier to cut out: the one whose edge faces the wound. */
function judgeTearing(claim: PropertyClaim): Judgement {
  const conventional = claim.property === 'cuts-out:conventional';
  const point = pointById('cutting')!;
  const holds = phrase(POINT.tears);
  return {
    verdict: conventional ? 'agrees' : 'contradicted',
    says: phrase(POINT.saysTears, { kind: phrase(conventional ? POINT.conventional : POINT.reverse) }),
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
  const says = phrase(POINT.saysUse, { point: point?.name ?? claim.subject, tissue });
  if (!point) return cannotTell(says, '');
  const right = POINTS.find((one) => one.fit.includes(tissue));
  const better = right ? phrase(POINT.better, { tissue, point: right.name }) : '';
  const holds = phrase(POINT.use, { point: point.name, use: point.use, better });
  return ofPoint(
    point,
    point.unfit.includes(tissue) ? 'contradicted' : point.fit.includes(tissue) ? 'agrees' : 'cannot-tell',
    says,
    holds,
  );
}

/** A verdict that rests on what is known of a point. */
const ofPoint = (point: Point, verdict: Verdict, says: Phrase, holds: Phrase): Judgement => ({
  verdict,
  says,
  holds,
  source: sourceNames(point.sources),
  sources: point.sources,
  steps: [{ label: 'value', text: holds, sources: point.sources, confidence: point.confidence }],
});

/** The flat side of a triangle lies across from its third edge. */
function judgeFlat(claim: PropertyClaim): Judgement {
  const point = pointById(claim.subject);
  const curve = claim.property.split(':')[1] ?? '';
  const says = phrase(POINT.saysFlat, { point: point?.name ?? claim.subject, curve });
  if (!point || (point.edge !== 'inner' && point.edge !== 'outer')) return cannotTell(says, '');
  const where = phrase(POINT.flatAcross, { curve: point.edge === 'inner' ? 'outer' : 'inner' });
  const holds = phrase(POINT.holds, { point: point.name, where });
  return ofPoint(point, curve === point.edge ? 'contradicted' : 'agrees', says, holds);
}

/** Round or triangular in section: the points with a third edge are triangular, the edgeless ones round. */
function judgeSection(claim: PropertyClaim): Judgement {
  const point = pointById(claim.subject);
  const shape = claim.property.split(':')[1] ?? '';
  const says = phrase(POINT.saysSection, { point: point?.name ?? claim.subject, shape });
  if (!point || point.edge === 'sides') return cannotTell(says, '');
  const holds = phrase(POINT.section, {
    point: point.name,
    shape: point.edge === 'none' ? 'round' : 'triangular',
  });
  return ofPoint(
    point,
    (shape === 'round') === (point.edge === 'none') ? 'agrees' : 'contradicted',
    says,
    holds,
  );
}
