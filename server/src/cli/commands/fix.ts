/** `fix`: makes the safe fixes in place, or shows them. Reads and writes one note at a time. */
import { analyse } from '../../course/index.ts';
import { makePlan } from '../engine/plan.ts';
import { safe } from '../escape.ts';
import { decode, readBytes } from '../files/read.ts';
import { mend } from '../fix/edits.ts';
import { unified } from '../fix/unified.ts';
import { writeMended } from '../fix/write.ts';
import { complain, say } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';

export interface FixOptions {
  /** Shows the change as a unified diff and writes nothing. */
  readonly preview?: boolean;
}

/** Two colons that start a line left as it is: a command to a runner of continuous integration. */
const COMMAND = /(?<=^ \s{0,80}):(?=:)/gm;

interface Done {
  fixed: number;
  notes: number;
  failed: boolean;
}

/** Exit status: 0 done, 1 a preview shows changes, 2 something could not be read or written. */
export function fix(paths: readonly string[], options: FixOptions): number {
  const plan = makePlan(paths);
  const done: Done = { fixed: 0, notes: 0, failed: plan.unreadable };
  for (const job of plan.jobs) {
    try {
      if (job.path === '-') throw new UsageError('standard input cannot be fixed in place');
      fixNote(job.path, plan.settings[job.settings]!, options, done);
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      complain(error.message);
      done.failed = true;
    }
  }
  if (!options.preview) say(`${done.fixed} fixes made in ${done.notes} of ${plan.jobs.length} notes.\n`);
  return done.failed ? 2 : options.preview && done.fixed > 0 ? 1 : 0;
}

function fixNote(
  path: string,
  settings: Parameters<typeof analyse>[1],
  options: FixOptions,
  done: Done,
): void {
  const bytes = readBytes(path);
  const text = decode(path, bytes);
  const mended = mend(text, analyse(text, settings, path).findings);
  if (mended.count === 0) return;
  if (options.preview) say(safe(unified(path, text, mended.edits)).replace(COMMAND, '\\u003a'));
  else writeMended(path, bytes, mended.text);
  done.fixed += mended.count;
  done.notes++;
}
