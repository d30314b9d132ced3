/** Making phrases and telling them in a language. */
import { german } from './german.ts';
import type { Listed, Locale, Part, Phrase, Quoted, Slots, Text } from './model.ts';

type Filling<T extends Text> = [Slots<T['en']>] extends [never]
  ? [parts?: undefined]
  : [parts: Readonly<Record<Slots<T['en']>, Part>>];

/** A template with its slots filled; the compiler holds the names of the slots. */
export const phrase = <T extends Text>(text: T, ...[parts]: Filling<T>): Phrase => ({
  text,
  parts: parts ?? NO_PARTS,
});
const NO_PARTS = {};

/** Text of a note: never translated, whatever it says. */
export const quote = (quoted: string): Quoted => ({ quoted });

export const list = (listed: readonly Part[], by: Text): Listed => ({ listed, by });

/** The part in words of a language. */
export function tell(part: Part, locale: Locale = 'en'): string {
  if (typeof part === 'string') return locale === 'de' ? german(part) : part;
  if (typeof part === 'number') return locale === 'de' ? String(part).replace('.', ',') : String(part);
  if ('quoted' in part) return part.quoted;
  if ('listed' in part) return part.listed.map((each) => tell(each, locale)).join(part.by[locale]);
  return filled(part, locale);
}

/** A template without slots, or with them filled, in words of a language. */
export const say = <T extends Text>(locale: Locale | undefined, text: T, ...filling: Filling<T>): string =>
  tell(phrase(text, ...filling), locale);

/** Templates cut at their slots, once each: text and names of slots in turn. There are as many as stand in the tables. */
const cut = new Map<string, readonly string[]>();

function piecesOf(template: string): readonly string[] {
  const known = cut.get(template);
  if (known !== undefined) return known;
  const pieces = template.split(/\{(\^?\w+)\}/);
  cut.set(template, pieces);
  return pieces;
}

function filled({ text, parts }: Phrase, locale: Locale): string {
  const pieces = piecesOf(text[locale]);
  let told = pieces[0]!;
  for (let i = 1; i < pieces.length; i += 2) told += slot(pieces[i]!, parts, locale) + pieces[i + 1]!;
  return told;
}

function slot(name: string, parts: Phrase['parts'], locale: Locale): string {
  if (!name.startsWith('^')) return tell(parts[name] ?? '', locale);
  return upper(tell(parts[name.slice(1)] ?? '', locale));
}

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
