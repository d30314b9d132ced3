/** For programs: one JSON object a finding, one a line. */
import { safeJson } from '../escape.ts';
import type { PlacedFinding } from '../result.ts';
import type { Report, ReportKind } from './model.ts';

function record(file: string, one: PlacedFinding): string {
  const { line, column, endLine, endColumn } = one.place;
  const { check, kind, severity, says, holds, source, identity, deliberate, accepted, fixes } = one;
  return safeJson({
    file,
    line,
    endLine,
    column,
    endColumn,
    check,
    kind,
    severity,
    says,
    holds,
    source,
    identity,
    deliberate,
    accepted,
    fixes: fixes.map((fix) => ({
      title: fix.title,
      safety: fix.safety,
      edits: fix.edits.map(({ place, text }) => ({
        line: place.line,
        column: place.column,
        endLine: place.endLine,
        endColumn: place.endColumn,
        text,
      })),
    })),
  });
}

export const jsonlReport: ReportKind = (): Report => ({
  note: ({ path, findings }) => findings.map((one) => `${record(path, one)}\n`).join(''),
});
