/** `check`: findings of the notes. */
import type { Severity } from '../../checks/model.ts';
import { CHECK_REPORTS } from '../report/kinds.ts';
import { isOpen } from '../report/model.ts';
import { Outputs } from '../report/outputs.ts';
import { runOver } from '../run.ts';

const ORDER: readonly Severity[] = ['hint', 'info', 'warning', 'error'];

export const THRESHOLDS = [...ORDER, 'never'] as const;

export interface CheckOptions {
  readonly report: readonly string[];
  readonly threshold: (typeof THRESHOLDS)[number];
}

/** Exit status: 0 nothing found, 1 findings at or above the threshold, 2 something could not be read. */
export function check(paths: readonly string[], options: CheckOptions): number {
  const outputs = new Outputs(options.report.length > 0 ? options.report : ['text'], CHECK_REPORTS);
  const bar = options.threshold === 'never' ? ORDER.length : ORDER.indexOf(options.threshold);
  let over = false;
  try {
    const { unreadable } = runOver(paths, outputs, ({ findings }) => {
      over ||= findings.some((one) => isOpen(one) && ORDER.indexOf(one.severity) >= bar);
    });
    return unreadable ? 2 : over ? 1 : 0;
  } finally {
    outputs.abandon();
  }
}
