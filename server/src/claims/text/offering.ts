/** Which sentences of a passage offer something to choose from, and where the offering ends. */

/** "… C. 22 G\nAnswer: B. Reason: the higher number is the thinner needle.": what stands behind the key offers nothing. */
export const pastKey = (text: string, at: number): boolean =>
  at > 0 &&
  at < LONGEST_KEYED &&
  (KEY_SAID.test(text.slice(0, at)) ||
    (GIVES_REASON.test(text.slice(at, at + 14)) && !/\b(?:assertion|statement)\b/i.test(text)));
const LONGEST_KEYED = 1200;
const KEY_SAID =
  /(?:[\n.?!)]\s*)(?:(?:the )?(?:right |correct |best |model )?(?:answers?|key|solution)|ans|correct)\W{1,4}(?:is |was )?\(?[A-Fa-f1-6]\b(?!\W+(?:or|and)\b)[^\n?]{0,60}$/i;
/** Behind the choices, why one of them is right. */
const GIVES_REASON = /^\W*(?:because|reason|rationale|explanation|commentary)\b/i;

/** Two lines or more that open with an empty box: choices, up to the last of them. */
export const boxed = (text: string, at: number): boolean =>
  /[○◯□☐]/.test(text) &&
  BOXED_LINES.test(text) &&
  at <= Math.max(...[...'○◯□☐'].map((box) => text.lastIndexOf(box)));
const BOXED_LINES = /(?:^|\n)[ \t]*[○◯□☐] [^\n]*\n[ \t]*[○◯□☐] /u;
