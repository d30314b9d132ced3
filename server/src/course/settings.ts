/** What a course decides beforehand. Plain data: reading it from a file is `settings-file.ts`. */
import type { HouseStyle } from '../checks/index.ts';
import type { Severity } from '../checks/model.ts';
import type { Context } from '../mentions/model.ts';

export type Level = Severity | 'off';

export interface Settings {
  /** Severity by check id; `off` silences the check. */
  readonly severity: Readonly<Record<string, Level>>;
  /** How the course writes its sizes; no style finding without it. */
  readonly style?: HouseStyle;
  /** Decides only what a note itself leaves open. */
  readonly context: Context;
}

export const DEFAULT_SETTINGS: Settings = { severity: {}, context: {} };
