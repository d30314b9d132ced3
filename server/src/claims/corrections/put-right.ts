/**
 * "The ward calls a blue cannula an 18. Blue is 22 G.": what is wrong, and right after it the same thing said right. Whatever
 * words bring in the first, the author does not teach it.
 */
import type { Claim, Operand, Statement } from '../model.ts';
import { sizeKeys } from '../text/scene.ts';

/** Characters of the source between the two. */
const NEAR = 20;
/** Who puts right says that and no more; characters. */
const TERSE = 40;

/** Statements that the next one puts right are quoted, and judged no more. */
export function putRight(statements: readonly Statement[]): readonly Statement[] {
  if (!statements.some(wrong)) return statements;
  const right = statements.filter(({ stance, verdict }) => stance === 'asserted' && verdict === 'agrees');
  return statements.map((one) =>
    wrong(one) && right.some(({ claim }) => follows(one.claim, claim) && mends(one.claim, claim))
      ? { ...one, stance: 'quoted', verdict: 'cannot-tell' }
      : one,
  );
}

const wrong = ({ stance, verdict }: Statement): boolean =>
  stance === 'asserted' && verdict === 'contradicted';

/** In the same paragraph or item: rows and lists say one thing after another. */
function follows(a: Claim, b: Claim): boolean {
  const gap = b.span.start - Math.max(a.span.end, a.focus.end);
  return (
    gap > 0 &&
    gap <= NEAR &&
    b.span.end - b.span.start <= TERSE &&
    passageOf(a) !== undefined &&
    passageOf(a) === passageOf(b)
  );
}

const passageOf = (claim: Claim): number | undefined =>
  (claim.kind === 'colour' ? claim.size : 'left' in claim ? claim.left : undefined)?.mentions[0]?.passage;

/** Is the second the first with one of its two parts changed? */
function mends(a: Claim, b: Claim): boolean {
  if (a.kind === 'colour' && b.kind === 'colour')
    return a.same && b.same && (a.colour === b.colour) !== (key(a.size) === key(b.size));
  if (a.kind === 'equivalence' && b.kind === 'equivalence') return changed(pair(a), pair(b));
  if (a.kind === 'comparison' && b.kind === 'comparison')
    return a.axis === b.axis && pair(a).sort().join() === pair(b).sort().join();
  return false;
}

const key = ({ sizes }: Operand): string => sizeKeys(sizes).join();
const pair = ({ left, right }: { readonly left: Operand; readonly right: Operand }): string[] => [
  key(left),
  key(right),
];

/** One size stays, and the other is another of its scale. */
function changed(a: readonly string[], b: readonly string[]): boolean {
  const [gone, come] = [a.filter((size) => !b.includes(size)), b.filter((size) => !a.includes(size))];
  return gone.length === 1 && come.length === 1 && gone[0]!.split(' ')[0] === come[0]!.split(' ')[0];
}
