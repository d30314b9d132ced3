/**
 * A remark plugin: findings become messages of the virtual file, so that any unified pipeline or static-site build
 * shows them beside its own.
 */
import { check, type Finding, type Options } from './index.ts';

/** What the plugin needs of a virtual file. */
export interface File {
  readonly value?: unknown;
  readonly path?: string;
  toString(): string;
  message(reason: string, options: object): object;
}

/** Of the options of `check`, the settings; the path is the file's own. */
export type RemarkOptions = Pick<Options, 'settings'>;

/** Virtual files know warnings (`false`) and information (`null`); a finding never stops a build by itself. */
const FATAL = { error: false, warning: false, info: null, hint: null } as const;

const point = (line: number, column: number, offset: number) => ({ line, column, offset });

function report(file: File, { check, place, says, holds, source, severity, fixes }: Finding): void {
  const message = file.message(`${says} ${holds}`, {
    ruleId: check,
    source: 'sizewright',
    place: {
      start: point(place.line, place.column, place.start),
      end: point(place.endLine, place.endColumn, place.end),
    },
  });
  const edits = fixes.filter(({ edits }) => edits.length === 1).map(({ edits }) => edits[0]!);
  Object.assign(message, {
    fatal: FATAL[severity],
    note: `Source: ${source}`,
    ...(edits.length > 0 && { expected: edits.map(({ text }) => text) }),
  });
}

/** Use it after remark-parse: `unified().use(remarkParse).use(remarkSizes)`. Throws `SettingsError`. */
export default function remarkSizes(options: RemarkOptions = {}): (tree: object, file: File) => void {
  return (_tree, file) => {
    const path = file.path === undefined ? {} : { path: file.path };
    for (const finding of check(String(file), { ...options, ...path }))
      if (finding.deliberate === undefined) report(file, finding);
  };
}
