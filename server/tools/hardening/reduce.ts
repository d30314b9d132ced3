/** A find cut down: ever shorter pieces are left out as long as it stays a find. */

/** At most `tries` calls of `holds`; `holds(text)` must be true. */
export function reduce(text: string, holds: (text: string) => boolean, tries = 400): string {
  let kept = text;
  let left = tries;
  for (let size = Math.ceil(kept.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2))
    for (let at = 0; at < kept.length && left > 0; left--) {
      const shorter = kept.slice(0, at) + kept.slice(at + size);
      if (holds(shorter)) kept = shorter;
      else at += size;
    }
  return kept;
}
