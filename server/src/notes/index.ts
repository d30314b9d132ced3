/** A note as passages of clean prose. Nothing here knows what a size is. */

export { filledLines } from './lines.ts';
export { matchesOf } from './matches.ts';
export * from './model.ts';
export { type Format, type ReadOptions, readNote } from './read.ts';
export { mayHoldSizes } from './scan.ts';
export { isUnbroken, sourceSpan } from './source-map.ts';
