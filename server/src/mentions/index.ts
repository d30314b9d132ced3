export { findMentions } from './find.ts';
export type { Context, Evidence, Mention, Reading } from './model.ts';
