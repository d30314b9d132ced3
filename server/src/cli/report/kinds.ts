/** The reports there are, by the name users write. */
import { annotationsReport } from './annotations.ts';
import { listByNote, listBySize, listBySystem } from './grouped.ts';
import { listIndex } from './index-of-sizes.ts';
import { jsonlReport } from './jsonl.ts';
import { junitReport } from './junit.ts';
import { listJsonl, listSarif, listText } from './listing.ts';
import type { ReportKind } from './model.ts';
import type { CHECK_REPORT_NAMES, LIST_REPORT_NAMES } from './names.ts';
import { pageReport } from './page.ts';
import { partsReport } from './parts.ts';
import { sarifReport } from './sarif.ts';
import { summaryReport } from './summary.ts';
import { textReport } from './text.ts';

export const CHECK_REPORTS: Readonly<Record<(typeof CHECK_REPORT_NAMES)[number], ReportKind>> = {
  text: textReport,
  jsonl: jsonlReport,
  sarif: sarifReport,
  junit: junitReport,
  annotations: annotationsReport,
  summary: summaryReport,
  page: pageReport,
  parts: partsReport,
};

export const LIST_REPORTS: Readonly<Record<(typeof LIST_REPORT_NAMES)[number], ReportKind>> = {
  text: listText,
  jsonl: listJsonl,
  sarif: listSarif,
  index: listIndex,
  'by-note': listByNote,
  'by-size': listBySize,
  'by-system': listBySystem,
};
