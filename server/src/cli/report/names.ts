/** Names of the reports, apart from their code so that the help needs none of it. */
export const CHECK_REPORT_NAMES = [
  'text',
  'jsonl',
  'sarif',
  'junit',
  'annotations',
  'summary',
  'page',
  'parts',
] as const;
export const LIST_REPORT_NAMES = [
  'text',
  'jsonl',
  'sarif',
  'index',
  'by-note',
  'by-size',
  'by-system',
] as const;
