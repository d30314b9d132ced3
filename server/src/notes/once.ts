/** What comes again and again in a text, held once. A long note has few words of its own kind, and each of them many times. */

/** The same function with its answers kept by their key, all forgotten at once beyond so many. Answers must not be changed. */
export function heldOnce<Answer>(most: number): (key: string, make: () => Answer) => Answer {
  const known = new Map<string, Answer>();
  return (key, make) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    if (known.size >= most) known.clear();
    const made = make();
    known.set(key, made);
    return made;
  };
}

/** One string for all that are alike. */
export function oneForAll(most: number): (text: string) => string {
  const once = heldOnce<string>(most);
  // A copy: a piece cut from a long text would keep all of it.
  return (text) => once(text, () => ` ${text}`.slice(1));
}
