/**
 * What one sentence asserts. It is read as it stands; where nothing is read, without what changes nothing in it. What comes
 * out wrong gets a second reading, clause by clause and without asides: a contradiction has to stand in those too.
 */
import type { Context } from '../mentions/model.ts';
import { spared } from './compound.ts';
import { constructionsFor } from './constructions/index.ts';
import type { Reading } from './constructions/model.ts';
import { takenBack } from './corrections/taken-back.ts';
import { misplaced } from './misplaced.ts';
import type { Claim, ComparisonClaim, Statement } from './model.ts';
import { comparesParts } from './parts.ts';
import { judge } from './settled.ts';
import { stanceOf } from './stance/index.ts';
import { barely, plainly, quietly } from './text/asides.ts';
import { withoutConsequence } from './text/consequence.ts';
import { ofOtherGauge } from './text/foreign.ts';
import { fullClauses } from './text/full-clauses.ts';
import type { Item } from './text/items.ts';
import { changed } from './text/place.ts';
import { type Scene, sameSizes, spanOf } from './text/scene.ts';
import { speaksOfTrade } from './text/trade.ts';
import { keySpan } from './truth.ts';

const NOTHING: readonly Statement[] = [];

/** Every claim of a sentence, read and judged. */
export function readScene(whole: Scene, context?: Context): readonly Statement[] {
  const [scene, found] = readEasily(whole) ?? [];
  if (!scene || !found) return NOTHING;
  const said = stated(scene, found, context);
  if (!said.some(contradicts)) return said;
  return heldAlone(scene, context) ?? heldPlainly(scene, said, context);
}

const contradicts = ({ verdict }: Statement): boolean => verdict === 'contradicted';

/** What is wrong with an aside in it is wrong without it too. Else the aside was read for what it is not. */
function heldPlainly(scene: Scene, said: readonly Statement[], context?: Context): readonly Statement[] {
  for (const shorten of [quietly, barely]) {
    const items = shorten(scene.items);
    if (!items) continue;
    const shortened = changed(scene, { items });
    if (said.some((one) => contradicts(one) && !stands(shortened, one.claim))) continue;
    const again = stated(shortened, readings(shortened) ?? [], context);
    if (again.length > 0 && !again.some(contradicts)) return again;
  }
  return said;
}

/** The word a claim turns on was not left out. */
const stands = (scene: Scene, { focus }: Claim): boolean =>
  scene.items.some((item) => spanOf(scene, item).start === focus.start);

/** What the clauses say one by one, where nothing of it is wrong. Else half of one was read with half of another. */
function heldAlone(scene: Scene, context?: Context): readonly Statement[] | undefined {
  const found = eachAlone(scene);
  const each = found && stated(scene, found, context);
  return each?.some(holds) && !each.some(contradicts) ? each : undefined;
}

const holds = ({ stance, verdict }: Statement): boolean => stance === 'asserted' && verdict === 'agrees';

function stated(scene: Scene, found: readonly Reading[], context?: Context): readonly Statement[] {
  const meant = found.filter(
    (reading) =>
      !comparesParts(scene, reading.claim) &&
      !ofOtherGauge(scene, reading.claim) &&
      !misplaced(scene, reading) &&
      !takenBack(scene, reading),
  );
  return spared(
    meant.map((reading) => judge(placed(scene, reading), stanceOf(scene, reading), scene.note, context)),
  );
}

type Readings = readonly [Scene, readonly Reading[]];

/** A sentence as it stands; where nothing is read, without what changes nothing in it. */
function readEasily(scene: Scene): Readings | undefined {
  const found = readings(scene);
  if (found) return [scene, found];
  return speaksOfTrade(scene.items)
    ? (readWith(scene, plainly) ?? readWith(scene, barely, anywhere) ?? readWith(scene, withoutConsequence))
    : undefined;
}

/** The clauses of a sentence one by one, where one of them says all it says by itself: it is not half of what another says. */
function eachAlone(scene: Scene): readonly Reading[] | undefined {
  const clauses = fullClauses(scene.items)?.map(({ items, complete }) => {
    const found = readings(changed(scene, { items })) ?? [];
    return { found, settled: complete && found.length > 0 };
  });
  if (!clauses?.some(({ settled }) => settled)) return undefined;
  return clauses.flatMap(({ found }) => found);
}

function readWith(
  scene: Scene,
  shorten: (items: readonly Item[]) => readonly Item[] | undefined,
  counts: (claim: Claim) => boolean = () => true,
): Readings | undefined {
  const items = shorten(scene.items);
  if (!items) return undefined;
  const shortened = changed(scene, { items });
  const found = readings(shortened)?.filter(({ claim }) => counts(claim));
  return found && found.length > 0 ? [shortened, found] : undefined;
}

/** What the constructions read in a sentence; nothing where none reads anything. */
function readings(scene: Scene): readonly Reading[] | undefined {
  let found: Reading[] | undefined;
  for (const construction of constructionsFor(scene))
    for (const reading of construction.read(scene)) {
      found ??= [];
      if (!found.some((other) => same(other.claim, reading.claim))) found.push(reading);
    }
  return found;
}

/** Holds wherever it is. What is wider, or the widest, on a ward, in a box or on a chart is said of the place. */
const anywhere = (claim: Claim): boolean => ANYWHERE.has(claim.kind);
const ANYWHERE: ReadonlySet<Claim['kind']> = new Set([
  'direction',
  'equivalence',
  'formula',
  'colour',
  'property',
]);

/** A statement keyed true or false is a claim of its key: the finding belongs on the key when that stands apart. */
function placed(scene: Scene, reading: Reading): Claim {
  const at = keySpan(scene);
  return at ? { ...reading.claim, focus: at, construction: 'answer-key' } : reading.claim;
}

/** Two readers of one sentence found the same sizes set against each other in the same way. */
const alike = (a: ComparisonClaim, b: ComparisonClaim): boolean =>
  a.axis === b.axis && a.relation === b.relation && sameSizes(a.left, b.left) && sameSizes(a.right, b.right);

/** Two constructions may read one claim: same kind at the same word. */
function same(a: Claim, b: Claim): boolean {
  if (a.kind === 'comparison' && b.kind === 'comparison' && a.construction !== b.construction && alike(a, b))
    return true;
  if (a.kind !== b.kind || a.focus.start !== b.focus.start) return false;
  if (a.kind === 'comparison' && b.kind === 'comparison') return a.focus.end === b.focus.end;
  if (a.kind === 'property' && b.kind === 'property')
    return a.subject === b.subject && a.property === b.property;
  return a.kind !== 'colour' || (b.kind === 'colour' && a.size.span.start === b.size.span.start);
}
