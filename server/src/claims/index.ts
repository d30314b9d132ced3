/**
 * What the prose asserts about sizes. Lives here: words of the trade, the small grammar that turns a sentence into typed
 * claims, the author's stance and the verdict on intervals. Not here: finding sizes (`mentions`), reporting (`checks`).
 */
import type { Context, Mention } from '../mentions/model.ts';
import type { Note, Span } from '../notes/model.ts';
import { inCompany } from './company.ts';
import { spared } from './compound.ts';
import { putRight } from './corrections/put-right.ts';
import { readFacts } from './facts.ts';
import { readHeaded } from './headed.ts';
import { readLists } from './lists.ts';
import type { Claim, Statement } from './model.ts';
import type { Answers } from './quiz/answers.ts';
import { readKeys } from './quiz/index.ts';
import { readScene } from './sentence.ts';
import { judge } from './settled.ts';
import { readCells } from './tables/cells.ts';
import { readTables } from './tables/index.ts';
import { readTold } from './tables/told.ts';
import { readWhole } from './text/scenes.ts';

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
    .filter(({ claim }) => inEnglish(context) || wordless(claim))
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
const wordless = (claim: Claim): boolean =>
  claim.kind === 'equivalence' || (claim.kind === 'existence' && claim.absent === undefined);
const inEnglish = (context?: Context): boolean => context?.languages?.includes('en') ?? true;
