/** "does not dissolve quickly", "is not absorbed before the wound has healed": denied is only how fast, or until when. */

const HOW =
  /^ ?(?:away )?(?:[a-z]+ly|fast|faster|early|earlier|soon|sooner|for|until|till|before|under|overnight|right|straight|within|after|as|so|too|that|any|while|when|by|during|at|enough|yet|much|over|in)\b/;
/** In no body, by nothing, ever: denied as a whole. */
const AT_ALL =
  /^ ?(?:away )?(?:at all|ever|in (?:the |a |our |his |her |your |any |either )?(?:body|tissues?|patients?|wounds?|skin|flesh|life)|by (?:itself|the body)|after all)\b/;

/** Of the lower-case words behind a denied word of going or staying. */
export const onlyHow = (after: string): boolean => HOW.test(after) && !AT_ALL.test(after);
