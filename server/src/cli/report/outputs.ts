/** Several reports at once, each to standard output or to its file. */
import { openForReplacing, type Replacing } from '../files/replace.ts';
import type { NoteResult } from '../result.ts';
import { say } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';
import { wantsColour } from './colour.ts';
import type { Report, ReportKind, Totals } from './model.ts';

interface Output {
  readonly report: Report;
  readonly file?: Replacing;
}

/** `sarif` goes to standard output, `sarif=out.sarif` to a file. */
export class Outputs {
  readonly #outputs: Output[] = [];

  /** Throws `UsageError` on an unknown report, on two reports to standard output, on a file that cannot be written. */
  constructor(wanted: readonly string[], kinds: Readonly<Record<string, ReportKind>>) {
    const plain = wanted.filter((one) => !one.includes('='));
    if (plain.length > 1)
      throw new UsageError(
        `only one report fits on standard output, not ${plain.join(' and ')}; write NAME=FILE`,
      );
    try {
      for (const one of wanted) this.#outputs.push(open(one, kinds));
      for (const output of this.#outputs) write(output, output.report.begin?.() ?? '');
    } catch (error) {
      this.abandon();
      throw error;
    }
  }

  note(result: NoteResult): void {
    for (const output of this.#outputs) write(output, output.report.note(result));
  }

  /** Files take their place only now: a run that breaks off leaves the former report as it was. */
  end(totals: Totals): void {
    for (const output of this.#outputs) {
      write(output, output.report.end?.(totals) ?? '');
      output.file?.commit();
    }
  }

  /** Leaves no half-written file behind. */
  abandon(): void {
    for (const { file } of this.#outputs) file?.abandon();
  }
}

function open(wanted: string, kinds: Readonly<Record<string, ReportKind>>): Output {
  const [name = '', ...rest] = wanted.split('=');
  const kind = Object.hasOwn(kinds, name) ? kinds[name] : undefined;
  if (!kind) throw new UsageError(`no report "${name}"; there are ${Object.keys(kinds).join(', ')}`);
  if (rest.length === 0) return { report: kind({ colour: wantsColour(process.env) }) };
  const path = rest.join('=');
  if (path === '') throw new UsageError(`--report ${wanted}: the file name is missing`);
  return { report: kind({ colour: false }), file: openForReplacing(path) };
}

function write({ file }: Output, text: string): void {
  if (text === '') return;
  if (file) file.write(text);
  else say(text);
}
