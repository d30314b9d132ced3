/** Text that cannot command a terminal: control characters and direction overrides are written out. */

const UNSAFE =
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/g;

function named(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
}

/** With these a line tells a runner of continuous integration to do something, wherever they stand in it. */
const RUNNER = /##(?=\w{0,20}\[)/g;

/** Keeps tabs and line feeds. */
export function safe(text: string): string {
  return text.replace(UNSAFE, named).replace(RUNNER, '#\\u0023');
}

/** JSON in which control characters beyond those that JSON itself writes out are written out too. */
export function safeJson(value: unknown): string {
  return JSON.stringify(value).replace(UNSAFE, named);
}

/** A path at the start of a line, which with two colons in front would be a command to a runner. */
export function safePath(path: string): string {
  return safeLine(path).replace(/^\s*:/, './$&');
}

/** One line: tabs become blanks, line endings are written out. */
export function safeLine(text: string): string {
  return safe(text.replace(/\t/g, ' ').replace(/\n/g, '\\n'));
}
