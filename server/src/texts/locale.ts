/** Which language a reader is shown. */
import type { Locale } from './model.ts';

/** Of a client's locale ("de", "de-CH", "de_AT", "en-GB"); English where there is no translation. */
export const localeOf = (tag: unknown): Locale =>
  typeof tag === 'string' && /^de(?:[-_]|$)/i.test(tag) ? 'de' : 'en';
