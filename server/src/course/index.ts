/**
 * A course: one note analysed with its settings, and many notes together. What lives here knows notes only
 * as texts with a path; reading files, reports and editors are elsewhere.
 */

export { ACCEPTED_FILE, Accepted, type AcceptedEntry, readAccepted, writeAccepted } from './accepted.ts';
export { type Analysis, analyse, analyseWhole, type Format, formatOf, mentionsOnly } from './analyse.ts';
export { Course } from './course.ts';
export { extentOf, partKey, type Taught, taughtIn } from './coverage/coverage.ts';
export { TOPICS, type Topic } from './coverage/topics.ts';
export { DIFFERS, type Differing, differing, type NamedIn } from './differing.ts';
export { hash } from './hash.ts';
export { identified, identities } from './identity.ts';
export { KEYS, SETTINGS_FILE } from './settings/keys.ts';
export { inForce, mergeSettings } from './settings/merge.ts';
export { DEFAULT_SETTINGS, type Level, type Settings, type SettingsFile } from './settings/model.ts';
export { isTame, literalSigns } from './settings/patterns.ts';
export { type Problem, type ReadSettings, readSettings } from './settings/read.ts';
export { settingsDocs, settingsSchema } from './settings/schema.ts';
export { maySpeakOfSizes } from './skim.ts';
