/**
 * Sizes: the systems, their values and where each value comes from. Knows nothing of text beyond one written value,
 * of notes or of editors. Imports nothing above itself.
 */
export { base64 } from './base64.ts';
export * from './colours.ts';
export * from './compare.ts';
export * from './convert.ts';
export * from './devices.ts';
export * from './diameter.ts';
export * from './existence.ts';
export * from './format.ts';
export * from './interval.ts';
export { LASTING, type Lasting, longer } from './lasting.ts';
export * from './made.ts';
export * from './materials.ts';
export * from './model.ts';
export * from './neighbours.ts';
export { type Drawn, drawSizes, escapeXml, type Picture } from './picture.ts';
export * from './points.ts';
export * from './sheet/index.ts';
export * from './sources.ts';
export { PARTLY_SERIES, type PartlySeries } from './tables/between.ts';
export { FLOW, FLOW_SOURCES } from './tables/flow.ts';
export { GUIDEWIRES } from './tables/guidewires.ts';
export * from './wire.ts';
