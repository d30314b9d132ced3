/**
 * Words for readers, in more than one language. Lives here: templates and how they are filled, the German of the words
 * that stand in tables of other rooms. Not here: the templates themselves, which stand in the room that says them.
 */
export { GERMAN, german, isKnown } from './german.ts';
export { localeOf } from './locale.ts';
export type * from './model.ts';
export { list, phrase, quote, say, tell } from './phrase.ts';
