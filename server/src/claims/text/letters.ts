/** What kind of character stands where: all that a row of words needs to know, by table for Latin letters. */

/** White space. */
export const SPACE = 0;
/** A letter or a digit. */
export const LETTER = 1;
/** Inside a word part of it, elsewhere a sign. */
export const JOINT = 2;
/** Any other sign. */
const OTHER = 3;
/** Added for a character of two code units. */
export const PAIR = 4;

const KINDS = new Uint8Array(0x250);
for (let code = 0; code < KINDS.length; code++) KINDS[code] = kindOf(String.fromCharCode(code));

function kindOf(character: string): number {
  if (/[\p{L}\p{N}]/u.test(character)) return LETTER;
  if (/\s/u.test(character)) return SPACE;
  return /['’/.-]/.test(character) ? JOINT : OTHER;
}

/** What stands at an offset; a pair cut in two by the end of the stretch counts as a half. */
export function kindAt(text: string, at: number, to: number): number {
  const code = text.charCodeAt(at);
  if (code < KINDS.length) return KINDS[code]!;
  const whole = at + 1 < to ? text.codePointAt(at)! : code;
  return whole > 0xffff ? PAIR + kindOf(String.fromCodePoint(whole)) : kindOf(String.fromCharCode(code));
}
