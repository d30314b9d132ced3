/**
 * Where a note names a size, which system it belongs to, and the evidence for that reading. Lives here: the run of the
 * notations, the sense of a candidate from its surroundings, words of the trade. Not here: what the sentence says about it.
 */
export { findMentions } from './find.ts';
export type { Context, Evidence, Mention, Reading } from './model.ts';
