/** Text that cannot command a terminal: control characters and direction overrides are written out. */

const UNSAFE =
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/g;

function named(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
}

/** Keeps tabs and line feeds. */
export function safe(text: string): string {
  return text.replace(UNSAFE, named);
}

/** One line: tabs become blanks, line endings are written out. */
export function safeLine(text: string): string {
  return safe(text.replace(/\t/g, ' ').replace(/\n/g, '\\n'));
}
