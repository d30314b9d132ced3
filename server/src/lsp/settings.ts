/** Settings of the editor. Whatever a client sends is read with care: a wrong value is the default. */
import type { Level } from '../course/index.ts';

export interface EditorSettings {
  /** False: no findings at all. */
  readonly findings: boolean;
  /** False: sizes that can be read in two ways are not reported. */
  readonly unclear: boolean;
  /** Level by check id. */
  readonly severity: Readonly<Record<string, Level>>;
  readonly picture: boolean;
  readonly hints: boolean;
  readonly colouring: boolean;
  readonly outline: boolean;
}

export const DEFAULTS: EditorSettings = {
  findings: true,
  unclear: true,
  severity: {},
  picture: true,
  hints: false,
  colouring: true,
  outline: true,
};

const LEVELS: readonly unknown[] = ['error', 'warning', 'info', 'hint', 'off'];

/** Reads the section `sizewright` as a client keeps it. */
export function readSettings(section: unknown): EditorSettings {
  const at = (...path: string[]): unknown => path.reduce(child, section);
  const flag = (value: unknown, otherwise: boolean): boolean =>
    typeof value === 'boolean' ? value : otherwise;
  return {
    findings: flag(at('findings', 'enabled'), DEFAULTS.findings),
    unclear: flag(at('findings', 'unclear'), DEFAULTS.unclear),
    severity: levels(at('findings', 'severity')),
    picture: flag(at('hover', 'picture'), DEFAULTS.picture),
    hints: flag(at('hints', 'millimetres'), DEFAULTS.hints),
    colouring: flag(at('colouring', 'enabled'), DEFAULTS.colouring),
    outline: flag(at('outline', 'sizes'), DEFAULTS.outline),
  };
}

const child = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[key] : undefined;

function levels(value: unknown): Record<string, Level> {
  if (typeof value !== 'object' || value === null) return {};
  return Object.fromEntries(
    Object.entries(value).filter((pair): pair is [string, Level] => LEVELS.includes(pair[1])),
  );
}
