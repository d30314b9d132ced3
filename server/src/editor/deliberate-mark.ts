/** The comment that leaves an error in on purpose. */

/** The mark as written. A reason cannot end the comment early. */
export function markOf(reason: string): string {
  const plain = reason.replace(/\s+/g, ' ').replace(/--+>?/g, '–').trim();
  return plain === '' ? ' <!-- wrong on purpose: -->' : ` <!-- wrong on purpose: ${plain} -->`;
}
