/** Another size in place of one, wherever it is named; refused whole when one place cannot be rewritten surely. */

import type { Edit } from '../checks/model.ts';
import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import { existence, fullLabel, label, parseValue, writeValue } from '../sizes/index.ts';
import type { Size } from '../sizes/model.ts';
import { type Phrase, phrase, quote } from '../texts/index.ts';
import { mentionAt } from './places.ts';
import { mentionsOf } from './references.ts';
import { RENAME } from './texts/help.ts';

export interface Refusal {
  readonly refused: Phrase;
}

export interface Renamed {
  readonly edits: readonly Edit[];
}

/** What can be renamed at the offset, and the name to begin with. */
export function renameTarget(
  analysis: Analysis,
  offset: number,
): { span: Span; size: Size; name: string } | Refusal {
  const mention = mentionAt(analysis, offset);
  const size = mention?.sizes[0];
  if (mention === undefined) return { refused: phrase(RENAME.nothing) };
  if (mention.kind === 'ambiguous') return { refused: phrase(RENAME.unclear, { text: quote(mention.text) }) };
  if (mention.kind === 'range' || size === undefined) return { refused: phrase(RENAME.range) };
  return { span: mention.source, size, name: label(size) };
}

/** Reads the new name as a value of the same system: "3-0", "USP 3-0", "16 G", "16". */
export function newSize(size: Size, name: string): Size | Refusal {
  const bare = name
    .trim()
    .replace(/^(?:USP|metric|Hegar)\s+/i, '')
    .replace(/\s*(?:gauge|ga|G|French|Fr|Ch|F|mm ID|mm|in)\.?$/i, '');
  const read = parseValue(size.system, bare);
  if (read === undefined)
    return { refused: phrase(RENAME.unlike, { name: quote(name.trim()), size: fullLabel(size) }) };
  const known = existence(read);
  return known.exists === 'no' ? { refused: phrase(RENAME.missing, { because: known.because }) } : read;
}

/** Edits of one note. Each place keeps its notation; only the number changes. */
export function renameIn(analysis: Analysis, from: Size, to: Size): Renamed | Refusal {
  const edits: Edit[] = [];
  for (const mention of mentionsOf(analysis, from)) {
    const edit = rewritten(analysis, mention, from, to);
    if (edit !== undefined) edits.push(...articleBefore(analysis.note.text, edit));
    if (edit === undefined) return { refused: phrase(RENAME.byHand, { text: quote(mention.text) }) };
    edits.push(edit);
  }
  return { edits };
}

/** "an 18 G" becomes "a 16 G": the article in front goes with the number as spoken. */
function articleBefore(text: string, { span, text: number }: Edit): Edit[] {
  const article = /(?:^|[^\p{L}])([Aa]n?)[ \n]$/u.exec(
    text.slice(Math.max(0, span.start - 4), span.start),
  )?.[1];
  if (article === undefined || !/^[0-9]/.test(number)) return [];
  const right = `${article[0]}${SPOKEN_WITH_VOWEL.test(number) ? 'n' : ''}`;
  const start = span.start - 1 - article.length;
  return right === article ? [] : [{ span: { start, end: start + article.length }, text: right }];
}

/** Eight, eleven, eighteen, eighty. */
const SPOKEN_WITH_VOWEL = /^(?:8|11(?!\d)|18(?!\d))/;

/** The number as written, found once in the mention's source; a form in words or in zeros is left to the author. */
function rewritten(analysis: Analysis, mention: Mention, from: Size, to: Size): Edit | undefined {
  const source = analysis.note.text.slice(mention.source.start, mention.source.end);
  const places = numberPlaces(source, writtenForms(from));
  const place = places[0];
  if (place === undefined || places.length > 1) return undefined;
  const start = mention.source.start + place.at;
  return { span: { start, end: start + place.form.length }, text: likewise(place.form, to) };
}

/** "2-0" may stand as "2/0"; a decimal may have a comma. */
function writtenForms(size: Size): string[] {
  const value = writeValue(size);
  return [...new Set([value, value.replace('-0', '/0'), value.replace('.', ',')])];
}

function likewise(form: string, to: Size): string {
  const value = writeValue(to);
  if (form.includes('/0')) return value.replace('-0', '/0');
  return form.includes(',') ? value.replace('.', ',') : value;
}

function numberPlaces(text: string, forms: readonly string[]): { at: number; form: string }[] {
  return forms.flatMap((form) => {
    const found: { at: number; form: string }[] = [];
    for (let at = text.indexOf(form); at >= 0; at = text.indexOf(form, at + 1)) {
      if (standsAlone(text, at, at + form.length)) found.push({ at, form });
    }
    return found;
  });
}

const standsAlone = (text: string, start: number, end: number): boolean =>
  !/[0-9.,/-]$/.test(text.slice(0, start)) && !/^(?:[0-9]|[.,/-][0-9])/.test(text.slice(end, end + 2));
