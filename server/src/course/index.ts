/**
 * A course: one note analysed with its settings, and many notes together. What lives here knows notes only
 * as texts with a path; reading files, reports and editors are elsewhere.
 */
export { type Analysis, analyse, analyseWhole, type Format, formatOf } from './analyse.ts';
export { Course } from './course.ts';
export { hash } from './hash.ts';
export { identities } from './identity.ts';
export { DEFAULT_SETTINGS, type Level, type Settings } from './settings.ts';
