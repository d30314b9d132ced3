/** One note, all the way: prose, mentions, statements, findings. Never throws, on any text. */
import { runChecks } from '../checks/index.ts';
import type { Finding } from '../checks/model.ts';
import { readStatements } from '../claims/index.ts';
import type { Statement } from '../claims/model.ts';
import { findMentions } from '../mentions/index.ts';
import type { Mention } from '../mentions/model.ts';
import { type Format, readNote } from '../notes/index.ts';
import type { Note } from '../notes/model.ts';
import { DEFAULT_SETTINGS, type Settings } from './settings/model.ts';
import { maySpeakOfSizes } from './skim.ts';

export interface Analysis {
  readonly note: Note;
  readonly mentions: readonly Mention[];
  readonly statements: readonly Statement[];
  readonly findings: readonly Finding[];
}

export type { Format };

const FORMATS: ReadonlyMap<string, Format> = new Map([
  ['vtt', 'vtt'],
  ['srt', 'srt'],
  ['txt', 'text'],
  ['mdx', 'mdx'],
]);

/** Format by the ending of a path; Markdown when the ending says nothing else. */
export function formatOf(path: string | undefined): Format {
  const ending = path?.slice(path.lastIndexOf('.') + 1).toLowerCase() ?? '';
  return FORMATS.get(ending) ?? 'markdown';
}

function withLevel(finding: Finding, settings: Settings): Finding | undefined {
  const level = settings.severity[finding.check];
  if (level === 'off') return undefined;
  return level === undefined ? finding : { ...finding, severity: level };
}

/** A note in which nothing can be found: no parser runs. */
function emptyAnalysis(text: string): Analysis {
  const note: Note = { text, passages: [], tables: [], comments: [] };
  return { note, mentions: [], statements: [], findings: [] };
}

/** As `analyse`, without the scan that lets most notes skip the parser. Tests hold the two equal. */
export function analyseWhole(text: string, settings = DEFAULT_SETTINGS, path?: string): Analysis {
  const note = readNote(text, { format: formatOf(path) });
  const mentions = findMentions(note, settings.context);
  const statements = readStatements(note, mentions, settings.context);
  const findings = runChecks({ note, mentions, statements, style: settings.style, ...spoken(settings) })
    .map((finding) => withLevel(finding, settings))
    .filter((finding) => finding !== undefined);
  return { note, mentions, statements, findings };
}

const spoken = ({ context }: Settings) => (context.locale === undefined ? {} : { locale: context.locale });

/**
 * Reads one note. `path` only decides the format by its ending.
 * A text that can hold neither size nor rule skips the parser; that never changes the findings.
 */
export function analyse(text: string, settings = DEFAULT_SETTINGS, path?: string): Analysis {
  return maySpeakOfSizes(text, settings.context) ? analyseWhole(text, settings, path) : emptyAnalysis(text);
}

/** Only the mentions: what a listing needs. */
export function mentionsOnly(text: string, settings = DEFAULT_SETTINGS, path?: string): Analysis {
  if (!maySpeakOfSizes(text, settings.context)) return emptyAnalysis(text);
  const note = readNote(text, { format: formatOf(path) });
  return { note, mentions: findMentions(note, settings.context), statements: [], findings: [] };
}
