/** Patterns from lists of words, so that a table reads as a table. */

/** Any of the words, whole, any case. Words may hold small patterns such as "cent(?:er|re)s?". */
export const wholeWords = (words: readonly string[]): RegExp =>
  new RegExp(`\\b(?:${words.join('|')})\\b`, 'i');

/** The text goes on with one of the words. */
export const startsWith = (words: readonly string[]): RegExp =>
  new RegExp(`^[\\s-]*(?:${words.join('|')})(?![A-Za-zÀ-ÿ])`, 'i');

/** The text ends with one of the words and a space. */
export const endsWith = (words: readonly string[]): RegExp =>
  new RegExp(`\\b(?:${words.join('|')})\\s*$`, 'i');
