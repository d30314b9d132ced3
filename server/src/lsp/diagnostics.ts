/** Findings as the protocol's diagnostics. */

import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Finding, Severity } from '../checks/model.ts';
import { type Analysis, DIFFERS, hash } from '../course/index.ts';
import { german } from '../texts/index.ts';
import { rangeOf } from './positions.ts';
import type { Glimpse, Read, Session } from './session.ts';
import type { EditorSettings } from './settings.ts';

export const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  info: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

/** Shown as the origin of every diagnostic. */
export const ORIGIN = 'sizewright';

/** Findings a reader is to see: none that a deliberate mark covers, none the settings turn off. */
export function shown(analysis: Pick<Analysis, 'findings'>, settings: EditorSettings): Finding[] {
  if (!settings.findings) return [];
  return analysis.findings.filter(
    (finding) => finding.deliberate === undefined && (settings.unclear || finding.kind !== 'ambiguity'),
  );
}

/** Address of the page about a check, for a client that can show it. */
export type PageOf = (check: string) => string | undefined;

/** Diagnostics with the id by which a client knows whether it has them. */
export interface Report {
  readonly items: Diagnostic[];
  readonly resultId: string;
}

/** Diagnostics of a note as it is now, with those that come of the other notes of the course. */
export function fullReport(session: Session, uri: string, read: Read): Report {
  session.across.take(uri, session.nameOf(uri), read);
  const level = read.decided.severity[DIFFERS];
  const across = read.settings.findings ? session.across.of(uri, level, session.pageOf, session.locale) : [];
  return report(read, session.pageOf, across);
}

/** Diagnostics of a note; the same ones have the same id, so that a client that has them is told so. */
export function report(
  { document, analysis, settings }: Glimpse,
  pageOf: PageOf,
  more: readonly Diagnostic[] = [],
): Report {
  const own = shown(analysis, settings).map((finding) => diagnosticOf(document, finding, pageOf));
  const items = [...own, ...more];
  return { items, resultId: hash(JSON.stringify(items)) };
}

export function diagnosticOf(document: TextDocument, finding: Finding, pageOf: PageOf): Diagnostic {
  const page = pageOf(finding.check);
  return {
    range: rangeOf(document, finding.span),
    severity: SEVERITIES[finding.severity],
    code: finding.check,
    ...(page === undefined ? {} : { codeDescription: { href: page } }),
    source: ORIGIN,
    message: messageOf(finding),
    ...(finding.unnecessary === true ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...related(document, finding),
  };
}

/** Sources that are no standard and tell a reader nothing. */
const NAMELESS: readonly string[] = ['', 'this checker', german('this checker')];

/** "Says X. Holds Y. (Source)" in plain text: clients show no markup here. */
function messageOf(finding: Finding): string {
  const source = NAMELESS.includes(finding.source) ? '' : ` (${finding.source})`;
  return [finding.says, `${finding.holds}${source}`].filter((part) => part.trim() !== '').join('\n');
}

function related(document: TextDocument, finding: Finding): Pick<Diagnostic, 'relatedInformation'> {
  const places = finding.related
    .filter((each) => each.note === undefined)
    .map((each) => ({
      location: { uri: document.uri, range: rangeOf(document, each.span) },
      message: each.message,
    }));
  return places.length === 0 ? {} : { relatedInformation: places };
}
