/** What only shows when the notes of the course are set against each other: one device, different sizes. */

import {
  type Diagnostic,
  type DiagnosticRelatedInformation,
  DiagnosticSeverity,
} from 'vscode-languageserver';
import type { Severity } from '../checks/model.ts';
import { namedSizes } from '../claims/index.ts';
import { type Analysis, DIFFERS, type Differing, differing, type NamedIn } from '../course/index.ts';
import { DIFFERING } from '../course/texts/differing.ts';
import { type Locale, quote, say } from '../texts/index.ts';
import { ORIGIN, type PageOf, SEVERITIES } from './diagnostics.ts';
import { rangeOf } from './positions.ts';
import type { Read } from './session.ts';

type Where = DiagnosticRelatedInformation['location'];

interface Names {
  readonly analysis: Analysis;
  readonly named: readonly NamedIn<Where>[];
}

/** Other places shown beside a finding. */
const SHOWN = 10;

export class Across {
  private readonly notes = new Map<string, Names>();

  /** Takes a note as it is now; true when what it names changed. */
  take(uri: string, name: string, { analysis, document }: Read): boolean {
    const known = this.notes.get(uri);
    if (known?.analysis === analysis) return false;
    const named = namedSizes(analysis.note, analysis.mentions).map((one) => ({
      note: name,
      named: { name: one.name, size: one.size },
      where: { uri, range: rangeOf(document, one.source) },
    }));
    this.notes.set(uri, { analysis, named });
    return known === undefined ? named.length > 0 : JSON.stringify(known.named) !== JSON.stringify(named);
  }

  /** Forgets a note: what was typed into it counts no more. */
  forget(uri: string): void {
    this.notes.delete(uri);
  }

  /** Forgets every note that is not among these. */
  keep(uris: ReadonlySet<string>): void {
    for (const uri of this.notes.keys()) if (!uris.has(uri)) this.notes.delete(uri);
  }

  /** Diagnostics of one note. */
  of(uri: string, level: Severity | 'off' | undefined, pageOf: PageOf, locale?: Locale): Diagnostic[] {
    if (level === 'off' || (this.notes.get(uri)?.named.length ?? 0) === 0) return [];
    const all = [...this.notes.values()].flatMap(({ named }) => named);
    return differing(all, locale)
      .filter(({ at }) => at.where.uri === uri)
      .map((one) => diagnosticOf(one, level ?? 'info', pageOf(DIFFERS), locale));
  }
}

function diagnosticOf(
  { at, others, says, holds }: Differing<Where>,
  level: Severity,
  page: string | undefined,
  locale?: Locale,
): Diagnostic {
  return {
    range: at.where.range,
    severity: SEVERITIES[level] ?? DiagnosticSeverity.Information,
    code: DIFFERS,
    ...(page === undefined ? {} : { codeDescription: { href: page } }),
    source: ORIGIN,
    message: `${says}\n${holds}`,
    relatedInformation: others.slice(0, SHOWN).map(({ where }) => ({
      location: where,
      message: say(locale, DIFFERING.here, { name: quote(at.named.name) }),
    })),
  };
}
