/** The reports there are, by the name users write. */
import { jsonlReport } from './jsonl.ts';
import { listJsonl, listSarif, listText } from './listing.ts';
import type { ReportKind } from './model.ts';
import { sarifReport } from './sarif.ts';
import { textReport } from './text.ts';

export const CHECK_REPORTS: Readonly<Record<string, ReportKind>> = {
  text: textReport,
  jsonl: jsonlReport,
  sarif: sarifReport,
};

export const LIST_REPORTS: Readonly<Record<string, ReportKind>> = {
  text: listText,
  jsonl: listJsonl,
  sarif: listSarif,
};
