/** Workflow commands: a runner shows each finding beside its line in the change under review. */
import type { Severity } from '../../checks/model.ts';
import { safe } from '../escape.ts';
import type { PlacedFinding } from '../result.ts';
import { isOpen, type ReportKind } from './model.ts';

const COMMAND: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  info: 'notice',
  hint: 'notice',
};

const data = (text: string): string =>
  safe(text).replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A');
const property = (text: string): string => data(text).replace(/:/g, '%3A').replace(/,/g, '%2C');

function command(path: string, { severity, place, check, says, holds, source }: PlacedFinding): string {
  const { line, endLine, column, endColumn } = place;
  // Columns count only inside one line.
  const columns = line === endLine ? `,col=${column},endColumn=${endColumn}` : '';
  const where = `file=${property(path)},line=${line},endLine=${endLine}${columns},title=${property(check)}`;
  return `::${COMMAND[severity]} ${where}::${data(`${says} ${holds} (${source})`)}\n`;
}

export const annotationsReport: ReportKind = () => ({
  note: ({ path, findings }) =>
    findings
      .filter(isOpen)
      .map((one) => command(path, one))
      .join(''),
});
