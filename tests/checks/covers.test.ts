/** Which check reports what: each contradicted claim is reported by one check and no other; what is not contradicted by none. */
import { describe, expect, it } from 'vitest';
import { aboutCheck, CHECKS, runChecks } from '../../server/src/checks/index.ts';
import type { Claim, Statement, Verdict } from '../../server/src/claims/model.ts';
import type { Note } from '../../server/src/notes/model.ts';

const TEXT = 'A 20 G cannula is wider than a 16 G, so use the 20 G.';
const note: Note = { text: TEXT, passages: [], tables: [], comments: [] };

/** What a check looks at: the kind of a claim, what read it, and what it is about. */
interface Shape {
  readonly kind: Claim['kind'];
  readonly construction?: string;
  readonly axis?: string;
  readonly of?: string;
  readonly absent?: string;
}

const statement = (
  shape: Shape,
  verdict: Verdict = 'contradicted',
  focus = { start: 18, end: 23 },
): Statement => ({
  claim: { construction: 'than', span: { start: 0, end: 35 }, focus, ...shape } as Claim,
  stance: 'asserted',
  verdict,
  says: 'Says so.',
  holds: 'It does not hold.',
  source: 'ISO 9626',
  sources: ['UCUM'],
  repair: { title: 'Write “narrower”', edit: { span: focus, text: 'narrower' } },
  derivation: [{ label: 'rule', text: 'a rule' }],
});

const found = (...statements: Statement[]) => runChecks({ note, mentions: [], statements });

describe('a contradicted claim is reported by one check', () => {
  const CASES: readonly (readonly [Shape, string])[] = [
    [{ kind: 'direction' }, 'size-direction'],
    [{ kind: 'direction', axis: 'flow' }, 'size-direction'],
    [{ kind: 'comparison', axis: 'outer' }, 'size-comparison'],
    [{ kind: 'comparison', axis: 'bore' }, 'size-comparison'],
    [{ kind: 'comparison', axis: 'strength' }, 'size-comparison'],
    [{ kind: 'comparison', axis: 'flow' }, 'flow-comparison'],
    [{ kind: 'equivalence' }, 'size-conversion'],
    [{ kind: 'order' }, 'size-order'],
    [{ kind: 'range' }, 'size-range'],
    [{ kind: 'limit' }, 'size-range'],
    [{ kind: 'category' }, 'size-class'],
    [{ kind: 'fit' }, 'size-fit'],
    [{ kind: 'formula' }, 'conversion-rule'],
    [{ kind: 'formula', construction: 'hues' }, 'hub-colour'],
    [{ kind: 'colour' }, 'hub-colour'],
    [{ kind: 'colour', construction: 'hues' }, 'hub-colour'],
    [{ kind: 'property', of: 'material' }, 'suture-material'],
    [{ kind: 'property', of: 'point' }, 'needle-point'],
    [{ kind: 'existence' }, 'no-such-size'],
    [{ kind: 'existence', absent: 'itself' }, 'size-exists'],
    [{ kind: 'existence', absent: 'itself', construction: 'answer-key' }, 'quiz-key'],
    [{ kind: 'key' }, 'quiz-key'],
  ];
  it.each(CASES)('%j: %s', (shape, id) => {
    expect(found(statement(shape)).map(({ check }) => check)).toEqual([id]);
    for (const verdict of ['agrees', 'cannot-tell'] as const)
      expect(found(statement(shape, verdict))).toEqual([]);
  });

  it.each(
    CASES.filter(
      ([{ kind, construction }]) => !construction && !/^(?:range|limit|fit|existence)$/.test(kind),
    ),
  )('that a key makes of it is about the key: %j', (shape) => {
    expect(found(statement({ ...shape, construction: 'answer-key' })).map(({ check }) => check)).toEqual([
      'quiz-key',
    ]);
  });

  it('is told as it was judged', () => {
    const span = { start: 18, end: 23 };
    expect(found(statement({ kind: 'direction' }))).toEqual([
      {
        check: 'size-direction',
        kind: 'contradiction',
        severity: 'warning',
        span,
        says: 'Says so.',
        holds: 'It does not hold.',
        source: 'ISO 9626',
        sources: ['UCUM'],
        fixes: [{ title: 'Write “narrower”', safety: 'safe', edits: [{ span, text: 'narrower' }] }],
        related: [],
        derivation: [{ label: 'rule', text: 'a rule' }],
      },
    ]);
  });

  it('leaves the fix to the author where a comparison gives advice, and makes none where there is none', () => {
    const advice = { ...statement({ kind: 'comparison', axis: 'outer' }) };
    const told = (one: Statement) => found(one).map(({ fixes }) => fixes.map(({ safety }) => safety));
    expect(told(advice)).toEqual([['safe']]);
    expect(told({ ...advice, claim: { ...advice.claim, span: { start: 0, end: TEXT.length } } })).toEqual([
      ['choice'],
    ]);
    const { repair: _, ...without } = advice;
    expect(told(without)).toEqual([[]]);
  });

  it('is told once of one word, and in the order of the text', () => {
    const shape: Shape = { kind: 'comparison', axis: 'outer' };
    const twice = [
      statement(shape),
      statement(shape),
      statement(shape, 'contradicted', { start: 2, end: 6 }),
    ];
    expect(found(...twice).map(({ span }) => span.start)).toEqual([2, 18]);
    const nested = [
      statement({ kind: 'direction' }, 'contradicted', { start: 2, end: 30 }),
      statement({ kind: 'order' }, 'contradicted', { start: 2, end: 9 }),
      statement({ kind: 'fit' }, 'contradicted', { start: 2, end: 20 }),
      statement({ kind: 'category' }, 'contradicted', { start: 1, end: 40 }),
    ];
    expect(found(...nested).map(({ span }) => [span.start, span.end])).toEqual([
      [1, 40],
      [2, 9],
      [2, 20],
      [2, 30],
    ]);
  });
});

it('a check is told of in German where that is asked for, else in English', () => {
  const [{ title, docs }] = [CHECKS[0]!];
  expect(aboutCheck(CHECKS[0]!)).toEqual({ title, docs });
  expect(aboutCheck(CHECKS[0]!, 'en')).toEqual({ title, docs });
  expect(aboutCheck(CHECKS[0]!, 'de').title).toBe('Die Zahlen laufen andersherum');
});

it('every check has an id of its own, a title and a page', () => {
  expect(new Set(CHECKS.map(({ id }) => id)).size).toBe(CHECKS.length);
  for (const { title, docs } of CHECKS) expect(Math.min(title.length, docs.length)).toBeGreaterThan(10);
});
