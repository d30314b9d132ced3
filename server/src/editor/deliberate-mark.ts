/** The comment that leaves an error in on purpose. */

/** The mark as written. A reason cannot end the comment early. */
export const markOf = (reason: string): string =>
  ` <!-- wrong on purpose: ${reason.replace(/\s+/g, ' ').replace(/--+>?/g, '–').trim()} -->`;
