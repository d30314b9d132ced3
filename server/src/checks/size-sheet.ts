/** Tables and charts kept by comments: `<!-- sizes table: gauge 14 16 18 -->` … `<!-- end of sizes -->`. */

import type { Comment, Note, Span } from '../notes/model.ts';
import { type Request, readRequest, type SheetForm, sheetText } from '../sizes/index.ts';
import { type Locale, type Part, phrase, quote, say, tell } from '../texts/index.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding, Fix } from './model.ts';
import { SHEET } from './texts/findings.ts';

const ID = 'size-sheet';
const OPENING = /^\s*sizes (table|chart)\s*:([\s\S]*)$/i;
const CLOSING = /^\s*end of sizes\s*$/i;

export const sizeSheet: CheckDefinition = {
  id: ID,
  kind: 'style',
  severity: 'warning',
  title: 'This table or chart is not up to date',
  docs: 'A table or chart between `<!-- sizes table: gauge 14 16 18 -->` (or `sizes chart:`) and `<!-- end of sizes -->` is kept by the checker: it is reported when it no longer says what the standards give, or was changed by hand. The fix writes it anew.',
  run: ({ note, locale }) => sheetsOf(note).flatMap((sheet) => findingsOf(note, sheet, locale)),
};

/** A kept stretch: its opening comment and what stands below, up to the closing one. */
export interface KeptSheet {
  readonly comment: Comment;
  readonly form: SheetForm;
  readonly wanted: string;
  /** Between the comments; undefined when the closing one is missing. */
  readonly body?: Span;
}

/** Kept stretches in text order; a second opening before the closing leaves the first one open. */
export function sheetsOf(note: Note): KeptSheet[] {
  const found: KeptSheet[] = [];
  note.comments.forEach((comment, index) => {
    const opening = OPENING.exec(comment.text);
    if (opening === null) return;
    const next = note.comments.slice(index + 1, index + 2)[0];
    const body =
      next !== undefined && CLOSING.test(next.text)
        ? { start: comment.span.end, end: next.span.start }
        : undefined;
    const form = opening[1]!.toLowerCase() === 'chart' ? 'chart' : 'table';
    found.push({ comment, form, wanted: opening[2]!.trim(), ...(body === undefined ? {} : { body }) });
  });
  return found;
}

/** What stands between the comments when all is right: the sheet with a blank line on either side. */
export function sheetBody(form: SheetForm, request: Request, newline: string): string {
  return `\n\n${sheetText(form, request)}\n\n`.replaceAll('\n', newline);
}

export const closingMark = '<!-- end of sizes -->';

function findingsOf(note: Note, sheet: KeptSheet, locale?: Locale): Finding[] {
  const request = readRequest(sheet.wanted);
  const form = phrase(SHEET[sheet.form]);
  const finding = finder(sheet, locale);
  if ('problem' in request) return [finding(phrase(SHEET.unknown), request.problem)];
  const newline = note.text.includes('\r\n') ? '\r\n' : '\n';
  const body = sheetBody(sheet.form, request, newline);
  if (sheet.body === undefined) {
    const at = { start: sheet.comment.span.end, end: sheet.comment.span.end };
    const edits = [{ span: at, text: `${body}${closingMark}` }];
    const fix: Fix = { title: say(locale, SHEET.write, { form }), safety: 'choice', edits };
    return [
      finding(phrase(SHEET.missing, { form }), phrase(SHEET.endsWith, { mark: quote(closingMark) }), fix),
    ];
  }
  if (same(note.text.slice(sheet.body.start, sheet.body.end), body)) return [];
  const fix: Fix = {
    title: say(locale, SHEET.renew, { form }),
    safety: 'safe',
    edits: [{ span: sheet.body, text: body }],
  };
  return [finding(phrase(SHEET.differs, { form }), phrase(SHEET.kept), fix)];
}

/** Formatters align the columns of tables; that changes no value. */
const same = (a: string, b: string): boolean => plain(a) === plain(b);
const plain = (text: string): string =>
  text
    .split(/\r\n?|\n/)
    .map((line) =>
      line
        .replace(/-{3,}/g, '---')
        .replace(/[ \t]+/g, ' ')
        .trim(),
    )
    .filter((line) => line !== '')
    .join('\n');

const finder =
  (sheet: KeptSheet, locale?: Locale) =>
  (says: Part, holds: Part, ...fixes: readonly Fix[]): Finding => ({
    check: ID,
    kind: 'style',
    severity: 'warning',
    span: sheet.comment.span,
    says: tell(says, locale),
    holds: tell(holds, locale),
    source: tell('this checker', locale),
    sources: [],
    fixes,
    related: [],
    derivation: [],
  });
