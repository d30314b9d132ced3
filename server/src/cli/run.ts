/** Reads notes one after the other and hands each result on. */
import { analyse, DEFAULT_SETTINGS } from '../course/index.ts';
import { type Found, findNotes } from './files/find.ts';
import { readText } from './files/read.ts';
import { count, noTotals, type Totals } from './report/model.ts';
import type { Outputs } from './report/outputs.ts';
import { type NoteResult, placed } from './result.ts';
import { complain } from './terminal.ts';
import { UsageError } from './usage-error.ts';

export interface Outcome {
  readonly totals: Totals;
  /** True when something named could not be read. */
  readonly unreadable: boolean;
}

export function readNoteResult(path: string): NoteResult {
  return placed(path, analyse(readText(path), DEFAULT_SETTINGS, path));
}

/** Checks every note `args` name. A note that cannot be read is complained about; the others are read all the same. */
export function runOver(
  args: readonly string[],
  outputs: Outputs,
  seen?: (result: NoteResult) => void,
): Outcome {
  const found: Found = findNotes(args);
  let unreadable = found.problems.length > 0;
  for (const problem of found.problems) complain(problem.message);
  const totals = noTotals();
  for (const path of found.paths) {
    try {
      const result = readNoteResult(path);
      count(totals, result);
      seen?.(result);
      outputs.note(result);
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      unreadable = true;
      complain(error.message);
    }
  }
  outputs.end(totals);
  return { totals, unreadable };
}
