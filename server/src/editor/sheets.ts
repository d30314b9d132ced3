/** Tables and charts for a note, with the comments that keep them up to date. */

import { closingMark, sheetBody } from '../checks/index.ts';
import { readRequest, type SheetForm } from '../sizes/index.ts';
import { type Locale, tell } from '../texts/index.ts';

export interface SheetText {
  readonly text: string;
}

/** The whole stretch to insert, or why there is none. */
export function sheetStretch(
  form: SheetForm,
  wanted: string,
  newline: string,
  locale?: Locale,
): SheetText | { problem: string } {
  const request = readRequest(wanted);
  if ('problem' in request) return { problem: tell(request.problem, locale) };
  const opening = `<!-- sizes ${form}: ${wanted.trim().replace(/\s+/g, ' ')} -->`;
  return { text: `${opening}${sheetBody(form, request, newline)}${closingMark}${newline}` };
}
