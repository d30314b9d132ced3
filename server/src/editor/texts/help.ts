/** Titles of actions, details of completions, names in lists, refusals of renames. */
import type { Texts } from '../../texts/index.ts';

export const ACTION = {
  leaveIn: { en: 'Leave this error in on purpose …', de: 'Diesen Fehler absichtlich stehen lassen …' },
  convert: { en: 'Convert to {text}', de: 'In {text} umrechnen' },
  add: { en: 'Add ({text}) after {size}', de: '({text}) hinter {size} einfügen' },
  mendAll: {
    en: 'Mend every size finding that has one safe fix',
    de: 'Alle Größen mit einer sicheren Korrektur berichtigen',
  },
} as const satisfies Texts;

export const COMPLETION = {
  wrong: {
    en: 'Leave an error in; write the reason behind the colon',
    de: 'Einen Fehler stehen lassen; der Grund kommt hinter den Doppelpunkt',
  },
  table: { en: 'A table of sizes kept up to date', de: 'Eine Größentabelle, die aktuell bleibt' },
  chart: {
    en: 'A chart of sizes to scale, kept up to date',
    de: 'Eine maßstäbliche Größentafel, die aktuell bleibt',
  },
  size: { en: '{system}, {measure}', de: '{system}, {measure}' },
} as const satisfies Texts;

export const NAME = {
  unclear: { en: '{text} (unclear)', de: '{text} (unklar)' },
  to: { en: ' to ', de: ' bis ' },
  inside: { en: '{measure} inside', de: 'innen {measure}' },
} as const satisfies Texts;

export const RENAME = {
  nothing: { en: 'No size stands here.', de: 'Hier steht keine Größe.' },
  unclear: {
    en: '"{text}" can be read in more than one way; make it clear first.',
    de: '„{text}“ lässt sich auf mehrere Weisen lesen; schreiben Sie es zuerst eindeutig.',
  },
  range: {
    en: 'A range names two sizes; put the cursor on a single size.',
    de: 'Ein Bereich nennt zwei Größen; setzen Sie den Cursor auf eine einzelne Größe.',
  },
  unlike: { en: '"{name}" is not a size like {size}.', de: '„{name}“ ist keine Größe wie {size}.' },
  missing: { en: '{because}', de: '{^because}' },
  byHand: {
    en: '"{text}" cannot be rewritten surely; change it by hand first.',
    de: '„{text}“ lässt sich nicht sicher umschreiben; ändern Sie es zuerst von Hand.',
  },
  elsewhere: { en: 'In other notes of the course', de: 'In anderen Texten des Kurses' },
} as const satisfies Texts;

export const PAGE = {
  contradiction: {
    en: 'A contradiction: the text says what no standard allows.',
    de: 'Ein Widerspruch: Der Text sagt, was keine Norm zulässt.',
  },
  ambiguity: {
    en: 'An unclear size: a reader could take the text in more than one way.',
    de: 'Eine unklare Größe: Der Text lässt sich auf mehrere Weisen verstehen.',
  },
  style: { en: 'Style and housekeeping.', de: 'Schreibweise und Ordnung.' },
  level: {
    en: 'Its id is `{id}`, its own level `{severity}`. Change the level in the settings of the editor (`sizewright.findings.severity`) or for the whole course in `sizewright.course.json` (`checks`).',
    de: 'Kennung: `{id}`, eigene Stufe: `{severity}`. Ändern Sie die Stufe in den Einstellungen des Editors (`sizewright.findings.severity`) oder für den ganzen Kurs in `sizewright.course.json` (`checks`).',
  },
} as const satisfies Texts;
