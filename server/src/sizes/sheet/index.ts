/**
 * Sheets: a table or a chart of sizes as Markdown, always the same text for the same request, so that a copy in a note
 * can be compared with what it should be. Knows nothing of where the copy stands.
 */
export { CAUTION } from './caution.ts';
export { sheetChart, sheetDrawings } from './chart.ts';
export { type Request, readRequest, SUBJECT_WORDS, SUBJECTS, type Subject, wholeSystem } from './request.ts';
export { type SheetForm, sheetText } from './sheet.ts';
export { sheetTable } from './table.ts';
