/**
 * The results themselves, one note a line, to be merged: each part of a spread run writes this report, and
 * `sizewright merge` makes any other report of all of them.
 */
import type { NoteResult } from '../result.ts';
import { VERSION } from '../version.ts';
import type { ReportKind } from './model.ts';

interface Head {
  readonly sizewright: string;
}

const NOTHING: NoteResult = { path: '', findings: [], mentions: [] };

function short(result: NoteResult): object {
  const { path, findings, named } = result;
  return findings.length > 0 || named ? { path, findings, named } : { path };
}

/** Notes in which nothing was found are written as their path alone. */
export const partsReport: ReportKind = () => ({
  begin: () => `${JSON.stringify({ sizewright: VERSION } satisfies Head)}\n`,
  // What comes of setting the notes against each other is found anew when the parts are merged.
  note: (result) => (result.late ? '' : `${JSON.stringify(short(result))}\n`),
});

/** The results in a part; a sentence when the text is none of this version. */
export function readParts(text: string): NoteResult[] | string {
  const [first = '', ...lines] = text.split('\n').filter(Boolean);
  try {
    if ((JSON.parse(first) as Head).sizewright !== VERSION)
      return `not written by "-r parts" of version ${VERSION}`;
    return lines.map((line) => ({ ...NOTHING, ...(JSON.parse(line) as Partial<NoteResult>) }));
  } catch {
    return 'not a report of the kind "parts"';
  }
}
