/** What is wrong in a settings file. */
import type { Texts } from '../../texts/index.ts';

export const WRONG = {
  empty: {
    en: 'the file is empty; write at least {braces}',
    de: 'die Datei ist leer; schreiben Sie mindestens {braces}',
  },
  notJson: { en: 'not JSON ({name})', de: 'kein JSON ({name})' },
  object: { en: '{where} must be an object {object}', de: '{where}: hier muss ein Objekt {object} stehen' },
  twice: { en: '"{key}" is set twice', de: '„{key}“ ist doppelt gesetzt' },
  list: {
    en: '{where} must be a list of texts [ "…" ]',
    de: '{where}: hier muss eine Liste von Texten [ "…" ] stehen',
  },
  someOf: {
    en: '{where} must be a list of at least one ({allowed})',
    de: '{where}: hier muss eine Liste mit mindestens einem Eintrag stehen ({allowed})',
  },
  flag: { en: '{where} must be true or false', de: '{where}: hier muss true oder false stehen' },
  at: { en: '{where}: {problem}', de: '{where}: {problem}' },
  settings: { en: 'the settings', de: 'die Einstellungen' },
  entry: {
    en: 'each entry must be a text in double quotes',
    de: 'jeder Eintrag muss ein Text in doppelten Anführungszeichen sein',
  },
  unknown: {
    en: 'no {what} "{word}"{guess} ({allowed})',
    de: '{what} „{word}“ gibt es nicht{guess} ({allowed})',
  },
  guess: { en: '; did you mean "{guess}"?', de: '; meinten Sie „{guess}“?' },
  allowed: { en: 'allowed: {allowed}', de: 'erlaubt: {allowed}' },
} as const satisfies Texts;

/** Kinds of names: of keys, values, checks and what the course names. */
export const NAMED = {
  key: { en: 'key', de: 'Den Schlüssel' },
  value: { en: 'value', de: 'Den Wert' },
  check: { en: 'check', de: 'Die Prüfung' },
  name: { en: 'name', de: 'Den Namen' },
} as const satisfies Texts;

/** By the parser's name for the error. */
export const SYNTAX = {
  InvalidSymbol: { en: 'this is no JSON value', de: 'das ist kein JSON-Wert' },
  InvalidNumberFormat: { en: 'this is no JSON number', de: 'das ist keine JSON-Zahl' },
  PropertyNameExpected: {
    en: 'a key in double quotes is expected here',
    de: 'hier wird ein Schlüssel in doppelten Anführungszeichen erwartet',
  },
  ValueExpected: { en: 'a value is expected here', de: 'hier wird ein Wert erwartet' },
  ColonExpected: { en: 'a colon is expected here', de: 'hier wird ein Doppelpunkt erwartet' },
  CommaExpected: { en: 'a comma is expected here', de: 'hier wird ein Komma erwartet' },
  CloseBraceExpected: { en: 'a closing brace } is missing', de: 'eine schließende Klammer } fehlt' },
  CloseBracketExpected: { en: 'a closing bracket ] is missing', de: 'eine schließende Klammer ] fehlt' },
  EndOfFileExpected: { en: 'nothing may follow here', de: 'hier darf nichts mehr folgen' },
  InvalidCommentToken: { en: 'JSON has no comments', de: 'JSON kennt keine Kommentare' },
  UnexpectedEndOfString: {
    en: 'the closing quote is missing',
    de: 'das schließende Anführungszeichen fehlt',
  },
} as const satisfies Texts;

/** Why a pattern is refused. */
export const PATTERN = {
  long: {
    en: 'the pattern is longer than {most} characters',
    de: 'das Muster ist länger als {most} Zeichen',
  },
  stars: { en: 'the pattern has more than {most} stars', de: 'das Muster hat mehr als {most} Sterne' },
  doubleStars: {
    en: 'the pattern has more than {most} double stars',
    de: 'das Muster hat mehr als {most} Doppelsterne',
  },
  braces: {
    en: 'the pattern has more than {most} choices in braces',
    de: 'das Muster hat mehr als {most} Auswahlen in Klammern',
  },
} as const satisfies Texts;
