/** Every match of a pattern, in order. `matchAll` makes a new pattern of it each time, which takes longer than most searches. */

const NONE: readonly RegExpExecArray[] = [];

/** Matches of a global pattern; they are all found before any is looked at. */
export function matchesOf(text: string, pattern: RegExp): readonly RegExpExecArray[] {
  pattern.lastIndex = 0;
  let match = pattern.exec(text);
  if (match === null) return NONE;
  const found: RegExpExecArray[] = [];
  for (; match !== null; match = pattern.exec(text)) {
    found.push(match);
    if (match[0] === '') pattern.lastIndex++;
  }
  return found;
}
