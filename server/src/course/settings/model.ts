/** What a course decides beforehand. Plain data: reading it from a file is `read.ts`. */
import type { HouseStyle } from '../../checks/index.ts';
import type { Severity } from '../../checks/model.ts';
import type { Context } from '../../mentions/model.ts';
import type { Language } from '../../mentions/words/units.ts';
import type { Device } from '../../sizes/model.ts';

export type Level = Severity | 'off';

/** What holds for one note. */
export interface Settings {
  /** Severity by check id; `off` silences the check. */
  readonly severity: Readonly<Record<string, Level>>;
  /** How the course writes its sizes; no style finding without it. */
  readonly style?: HouseStyle;
  /** Decides only what a note itself leaves open. */
  readonly context: Context;
}

export const DEFAULT_SETTINGS: Settings = { severity: {}, context: {} };

/** The content of one settings file; the keys are declared in `keys.ts`. */
export interface SettingsFile {
  readonly notes?: readonly string[];
  readonly leaveOut?: readonly string[];
  readonly ignoreFiles?: readonly string[];
  readonly checks?: Readonly<Record<string, Level>>;
  readonly style?: HouseStyle;
  readonly assume?: { readonly device?: Device; readonly suture?: 'synthetic' | 'collagen' };
  readonly names?: {
    readonly materials?: Readonly<Record<string, string>>;
    readonly devices?: Readonly<Record<string, Device>>;
  };
  readonly languages?: readonly Language[];
  readonly outermost?: boolean;
}
