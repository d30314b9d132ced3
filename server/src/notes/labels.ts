/** Labels of link definitions and footnotes: the only thing by which one part of a note changes another. */

/** A label as compared: case and white space do not count, nor do quote signs at the start of a line. */
export function labelKey(label: string): string {
  return label
    .replace(/[\s>]+/g, '')
    .toLowerCase()
    .toUpperCase();
}

/** A label as it can be written on one line. */
export function oneLine(label: string): string {
  return label.replace(/(?:\r\n?|\n)[ \t>]*/g, ' ');
}

/** Keys of everything in square brackets that could be a reference to a label. */
export function referencedKeys(text: string): Set<string> {
  const keys = new Set<string>();
  let open = -1;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charAt(at);
    if (sign === '\\') at++;
    else if (sign === '[') open = at + 1;
    else if (sign === ']' && open >= 0) {
      // The limit of CommonMark for a label.
      if (at - open < 1000) keys.add(labelKey(text.slice(open, at)));
      open = -1;
    }
  }
  return keys;
}
