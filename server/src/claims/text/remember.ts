/** Many constructions ask the same of one sentence: the answer is worked out once and kept as long as the sentence. */

/** The same function, with its answers kept by the identity of what is asked about, which must not change. */
export function remembered<Key extends object, Answer>(ask: (about: Key) => Answer): (about: Key) => Answer {
  const known = new WeakMap<Key, { readonly answer: Answer }>();
  return (about) => {
    const before = known.get(about);
    if (before) return before.answer;
    const answer = ask(about);
    known.set(about, { answer });
    return answer;
  };
}
