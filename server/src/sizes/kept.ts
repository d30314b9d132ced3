/** Answers about sizes, kept: a course names the same few sizes over and over, and the tables do not change. */
import type { Lens, Size } from './model.ts';

/** Beyond this many answers the oldest are forgotten, all at once. */
const MOST = 4000;

const keyOf = ({ system, value }: Size, { device, material }: Lens): string =>
  `${system} ${value} ${device ?? ''} ${material ?? ''}`;

function bounded<Answer>(): (key: string, ask: () => Answer) => Answer {
  const known = new Map<string, { readonly answer: Answer }>();
  return (key, ask) => {
    const before = known.get(key);
    if (before) return before.answer;
    const answer = ask();
    if (known.size >= MOST) known.clear();
    known.set(key, { answer });
    return answer;
  };
}

/** The same function of a size and the thing it is on, with its answers kept. They must not be changed. */
export function kept<Answer>(ask: (size: Size, lens: Lens) => Answer): (size: Size, lens?: Lens) => Answer {
  const answers = bounded<Answer>();
  return (size, lens = {}) => answers(keyOf(size, lens), () => ask(size, lens));
}

/** The same of two sizes. */
export function keptOfTwo<Answer>(
  ask: (a: Size, b: Size, lensA: Lens, lensB: Lens) => Answer,
): (a: Size, b: Size, lensA?: Lens, lensB?: Lens) => Answer {
  const answers = bounded<Answer>();
  return (a, b, lensA = {}, lensB = {}) =>
    answers(`${keyOf(a, lensA)}|${keyOf(b, lensB)}`, () => ask(a, b, lensA, lensB));
}
