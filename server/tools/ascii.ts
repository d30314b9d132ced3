/** Programs are written in ASCII. */

/** A character beyond ASCII where writing it as an escape would change its meaning: escaped already, or in raw text. */
const LEFT_ALONE = /\\[^\0-\x7f]|\braw`[^`]*[^\0-\x7f]/;

/**
 * The bundler escapes what is in strings but not what is in patterns. In ASCII a program reads alike whatever
 * encoding it is taken for, and the engine keeps it in half the space.
 */
export function inAscii(code: string): string {
  const found = LEFT_ALONE.exec(code);
  if (found) throw new Error(`cannot be written in ASCII: ${found[0]}`);
  return code.replace(/[^\0-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
