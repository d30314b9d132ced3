/** The allowed word a wrong one was probably meant to be. */

/** Edits (insert, delete, replace) from `a` to `b`. */
export function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}

/** Nothing when no allowed word is near enough to be a slip. */
export function nearest(word: string, allowed: readonly string[]): string | undefined {
  if (word.length > 60) return undefined;
  const small = word.toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const one of allowed) {
    const steps = distance(small, one.toLowerCase());
    if (steps < least) [best, least] = [one, steps];
  }
  return best;
}
