/** Many constructions ask the same of one sentence: the answer is worked out once and kept as long as the sentence. */

/**
 * The same function, with its answers kept by the identity of what is asked about, which must not change. The one asked
 * about last is known without a look in the map: questions about one sentence come in a row.
 */
export function remembered<Key extends object, Answer>(ask: (about: Key) => Answer): (about: Key) => Answer {
  const known = new WeakMap<Key, { readonly answer: Answer }>();
  let last: { readonly about: Key; readonly answer: Answer } | undefined;
  return (about) => {
    if (last?.about === about) return last.answer;
    const before = known.get(about);
    const answer = before ? before.answer : ask(about);
    if (!before) known.set(about, { answer });
    last = { about, answer };
    return answer;
  };
}
