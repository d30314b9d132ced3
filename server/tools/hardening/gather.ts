/**
 * Test files without the test runner: what they ask of `vitest` is answered here, and their tests come back as a list. Enough
 * for tests that wait for nothing; one that hands back a promise is told apart by whoever runs it.
 */
import { expect } from 'vitest';

export interface Test {
  readonly name: string;
  readonly run: () => unknown;
}

type Body = (...values: readonly unknown[]) => unknown;
type Named = (name: string, body: Body) => void;
interface Declared extends Named {
  each: (cases: readonly unknown[]) => Named;
}

/** The same for each case; a case that is a list is spread. */
const each =
  (declare: Named): Declared['each'] =>
  (cases) =>
  (name, body) => {
    for (const [i, one] of cases.entries())
      declare(`${name} [${i}]`, () => body(...(Array.isArray(one) ? one : [one])));
  };

const declared = (declare: Named): Declared => Object.assign(declare, { each: each(declare) });

const nothing = (): void => {};

/** What a file imports as `vitest`, and the tests it declares with it. */
export function gather(): { readonly tests: readonly Test[]; readonly vitest: object } {
  const tests: Test[] = [];
  const over: string[] = [];
  const it = declared((name, run) => {
    tests.push({ name: [...over, name].join(' > '), run });
  });
  const describe = declared((name, body) => {
    over.push(name);
    body();
    over.pop();
  });
  const vitest = {
    expect,
    it,
    test: it,
    describe,
    vi: { setConfig: nothing },
    beforeAll: (run: Body) => run(),
  };
  return { tests, vitest };
}
