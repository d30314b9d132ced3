/** What the findings say that are not about a statement, and the titles of their fixes. */
import type { Texts } from '../../texts/index.ts';

export const UNCLEAR = {
  says: { en: '“{text}” can be read as {readings}.', de: '„{text}“ lässt sich lesen als {readings}.' },
  either: { en: '{first}, or as {last}', de: '{first}, oder als {last}' },
  as: { en: ', as ', de: ', als ' },
  holds: { en: 'Write out the one you mean.', de: 'Schreiben Sie aus, was gemeint ist.' },
  fix: { en: 'Write “{text}” ({meaning})', de: '„{text}“ schreiben ({meaning})' },
  evidence: { en: '{rule}: {saw}', de: '{rule}: {saw}' },
} as const satisfies Texts;

export const LETTER = {
  says: {
    en: '“{text}” is written with the letter O.',
    de: '„{text}“ ist mit dem Buchstaben O geschrieben.',
  },
  holds: { en: 'Write {text} with the figure zero.', de: 'Schreiben Sie {text} mit der Ziffer Null.' },
} as const satisfies Texts;

export const STYLE = {
  says: {
    en: '“{text}” is not how this course writes the size.',
    de: '„{text}“: So schreibt dieser Kurs die Größe nicht.',
  },
  holds: { en: 'Here it is written {text}.', de: 'Hier schreibt man {text}.' },
  write: { en: 'Write {text}', de: '{text} schreiben' },
} as const satisfies Texts;

export const MARK = {
  noReason: { en: 'This mark gives no reason.', de: 'Diese Markierung nennt keinen Grund.' },
  giveReason: {
    en: 'Write why the error is left in: <!-- wrong on purpose: reason -->.',
    de: 'Schreiben Sie, warum der Fehler stehen bleibt: <!-- wrong on purpose: Grund -->.',
  },
  idle: { en: 'This mark covers no finding.', de: 'Diese Markierung deckt keinen Befund.' },
  canGo: { en: 'It can go.', de: 'Sie kann weg.' },
  remove: { en: 'Remove the mark', de: 'Markierung entfernen' },
} as const satisfies Texts;

export const SHEET = {
  table: { en: 'table', de: 'Tabelle' },
  chart: { en: 'chart', de: 'Größentafel' },
  unknown: {
    en: 'This table or chart is not known.',
    de: 'Diese Tabelle oder Größentafel ist nicht bekannt.',
  },
  missing: { en: 'The {form} is missing.', de: 'Die {form} fehlt.' },
  endsWith: { en: 'It ends with {mark}.', de: 'Sie endet mit {mark}.' },
  differs: {
    en: 'This {form} differs from the values it is made of.',
    de: 'Diese {form} weicht von den Werten ab, aus denen sie besteht.',
  },
  kept: {
    en: 'It is written by the checker; change the comment, not the rows.',
    de: 'Der Prüfer schreibt sie; ändern Sie den Kommentar, nicht die Zeilen.',
  },
  write: { en: 'Write the {form} here', de: '{form} hier einfügen' },
  renew: { en: 'Bring the {form} up to date', de: '{form} auf den neuesten Stand bringen' },
} as const satisfies Texts;
