/**
 * What the prose asserts about sizes. Lives here: words of the trade, the small grammar that turns a sentence into typed
 * claims, the author's stance and the verdict on intervals. Not here: finding sizes (`mentions`), reporting (`checks`).
 */
import type { Context, Mention } from '../mentions/model.ts';
import type { Note, Span } from '../notes/model.ts';
import { inCompany } from './company.ts';
import { spared } from './compound.ts';
import { settleCode } from './constructions/hub-settle.ts';
import { constructionsFor } from './constructions/index.ts';
import type { Reading } from './constructions/model.ts';
import { putRight } from './corrections/put-right.ts';
import { takenBack } from './corrections/taken-back.ts';
import { readFacts } from './facts.ts';
import { readHeaded } from './headed.ts';
import { judge as judgeSettled } from './judge/index.ts';
import { readLists } from './lists.ts';
import type { Claim, ComparisonClaim, Stance, Statement } from './model.ts';
import { comparesParts } from './parts.ts';
import type { Answers } from './quiz/answers.ts';
import { readKeys } from './quiz/index.ts';
import { stanceOf } from './stance/index.ts';
import { readCells } from './tables/cells.ts';
import { readTables } from './tables/index.ts';
import { readTold } from './tables/told.ts';
import { barely, plainly, quietly } from './text/asides.ts';
import { ofOtherGauge } from './text/foreign.ts';
import { fullClauses } from './text/full-clauses.ts';
import type { Item } from './text/items.ts';
import { changed } from './text/place.ts';
import { type Scene, sameSizes, spanOf } from './text/scene.ts';
import { readWhole } from './text/scenes.ts';
import { speaksOfTrade } from './text/trade.ts';
import { keySpan } from './truth.ts';

export type * from './model.ts';
export { type NamedSize, namedSizes } from './named.ts';
export { CATEGORIES } from './words/categories.ts';
export { FORMULAS } from './words/formulas.ts';

/** Every claim of the note, in source order, read and judged. `mentions` must be those of the note. */
export function readStatements(note: Note, mentions: readonly Mention[], context?: Context): Statement[] {
  const whole = readWhole(note, mentions);
  const { reads, scenes } = whole;
  const read = putRight(inCompany(scenes, (scene) => readScene(scene, context)));
  const prose = whole.answers.empty ? read : read.filter(ofOneAnswer(whole.answers));
  const keys = readKeys(note, whole);
  const keyed = spared(keys.readings.map(({ claim, stance }) => judge(claim, stance, note, context)));
  const offered = within(keys.choices);
  const listed = [...readLists(note, reads), ...readHeaded(note, reads, context)];
  const placed = [...readTables(note, reads), ...listed].map((claim) =>
    judge(claim, 'asserted', note, context),
  );
  const told = [
    ...readFacts(reads, scenes),
    ...readCells(note, reads, scenes),
    ...readTold(note, reads, scenes),
  ];
  const key = ({ claim }: { readonly claim: Claim }) => `${claim.kind} ${claim.focus.start}`;
  const heard = new Set(told.length > 0 ? prose.map(key) : []);
  const facts = told
    .filter((fact) => !heard.has(key(fact)))
    .map(({ claim, stance }) => judge(claim, stance, note, context));
  const asked = answeredIn(keyed);
  const said = [...prose, ...facts, ...placed].filter(
    (statement) => !offered(statement.claim.focus.start) && !asked(statement),
  );
  return [...said, ...keyed]
    .filter(({ claim }) => inEnglish(context) || WITHOUT_WORDS.has(claim.kind))
    .sort((a, b) => a.claim.focus.start - b.claim.focus.start);
}

/** "Thinnest to thickest, please: 2-0, 4-0, 0": what a key answers was asked, and asserts no order or comparison itself. */
function answeredIn(keyed: readonly Statement[]): (statement: Statement) => boolean {
  const byKind = new Map(
    (['order', 'comparison'] as const).map((kind) => {
      const spans = keyed.filter(({ claim }) => claim.kind === kind && claim.construction === 'answer-key');
      return [kind as string, within(spans.map(({ claim }) => claim.span))] as const;
    }),
  );
  return ({ claim }) =>
    claim.construction !== 'answer-key' && (byKind.get(claim.kind)?.(claim.focus.start) ?? false);
}

/** "3 = 16 Fr; 4 = 10 mm" in a key: the 4 counts the answer and is no size, and the two answers say nothing of one another. */
function ofOneAnswer(answers: Answers): (statement: Statement) => boolean {
  const counted = answers.labels;
  const answerAt = indexIn(answers.bodies);
  return ({ claim }) => {
    if (claim.kind !== 'equivalence' && claim.kind !== 'comparison') return true;
    const sides = [claim.left, claim.right];
    const places = new Set(sides.map(({ span }) => answerAt(span.start)).filter((at) => at >= 0));
    const labels = sides.some(({ mentions }) =>
      mentions.some(({ source, text }) => counted.has(source.end) && !/\D/.test(text)),
    );
    return places.size < 2 && !labels;
  };
}

/** What the place of a claim settles is settled; then it is judged. */
const judge = (claim: Claim, stance: Stance, note: Note, context?: Context): Statement =>
  judgeSettled(claim.kind === 'colour' ? settleCode(claim, note) : claim, stance, note, context);

/** Does an offset lie in one of these spans? */
function within(spans: readonly Span[]): (at: number) => boolean {
  const place = indexIn(spans);
  return (at) => place(at) >= 0;
}

/** In which of these spans, sorted, an offset lies; −1 in none. */
function indexIn(spans: readonly Span[]): (at: number) => number {
  const sorted = [...spans].sort((a, b) => a.start - b.start);
  return (at) => {
    let low = 0;
    let high = sorted.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sorted[middle]!.start <= at) low = middle + 1;
      else high = middle;
    }
    const span = sorted[low - 1];
    return span !== undefined && at < span.end ? low - 1 : -1;
  };
}

/** The words of statements are English; sizes set beside one another say the same in every language. */
const WITHOUT_WORDS: ReadonlySet<Claim['kind']> = new Set(['equivalence', 'existence']);
const inEnglish = (context?: Context): boolean => context?.languages?.includes('en') ?? true;

const NOTHING: readonly Statement[] = [];

function readScene(whole: Scene, context?: Context): readonly Statement[] {
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
    ? (readWith(scene, plainly) ?? readWith(scene, barely, anywhere))
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
  counts: (claim: Claim, items: readonly Item[]) => boolean = () => true,
): Readings | undefined {
  const items = shorten(scene.items);
  if (!items) return undefined;
  const shortened = changed(scene, { items });
  const found = readings(shortened)?.filter(({ claim }) => counts(claim, items));
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

/** Holds wherever it is. What is the widest on a ward or flows faster in an arm is said of the place. */
const anywhere = (claim: Claim, items: readonly Item[]): boolean =>
  claim.kind === 'comparison'
    ? ['outer', 'bore'].includes(claim.axis) &&
      claim.relation !== 'same' &&
      !items.some(({ magnitude }) => magnitude?.degree === 'superlative')
    : ANYWHERE.has(claim.kind);
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
