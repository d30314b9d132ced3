/**
 * SARIF 2.1.0 (OASIS standard), columns in UTF-16 units. Results are written as they come; a closing part
 * follows at the end, so that memory stays bounded on any number of notes.
 */
import { CHECKS } from '../../checks/index.ts';
import type { Severity } from '../../checks/model.ts';
import { safeJson } from '../escape.ts';
import type { Place } from '../lines.ts';
import type { NoteResult, PlacedFinding, PlacedFix } from '../result.ts';
import { VERSION } from '../version.ts';
import type { Report, ReportKind } from './model.ts';

const LEVEL: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  info: 'note',
  hint: 'note',
};

const RULE_INDEX = new Map(CHECKS.map((check, i) => [check.id, i]));

/** Relative paths as relative references; every character a URI may not hold is written in %. */
export function uri(path: string): string {
  const encoded = path.split('/').map(encodeURIComponent).join('/');
  return path.startsWith('/') ? `file://${encoded}` : encoded;
}

const region = (place: Place) => ({
  startLine: place.line,
  startColumn: place.column,
  endLine: place.endLine,
  endColumn: place.endColumn,
});

const artifact = (path: string) => ({ uri: uri(path) });

/** Where text of a note could make a link in a message, its square brackets are escaped, as the standard says (3.11.6). */
export const unlinked = (text: string): string =>
  text.includes('](') ? text.replace(/[\\[\]]/g, '\\$&') : text;

function fix(path: string, { title, edits }: PlacedFix) {
  return {
    description: { text: unlinked(title) },
    artifactChanges: [
      {
        artifactLocation: artifact(path),
        replacements: edits.map((edit) => ({
          deletedRegion: region(edit.place),
          insertedContent: { text: edit.text },
        })),
      },
    ],
  };
}

function suppressions(one: PlacedFinding) {
  if (one.deliberate !== undefined) return [{ kind: 'inSource', justification: one.deliberate }];
  return one.accepted
    ? [{ kind: 'external', justification: 'Accepted when the course took up the checks.' }]
    : undefined;
}

function related(path: string, one: PlacedFinding) {
  if (one.related.length === 0) return undefined;
  return one.related.map(({ note, place, message }, i) => ({
    id: i + 1,
    message: { text: unlinked(message) },
    physicalLocation: { artifactLocation: artifact(note ?? path), ...(place && { region: region(place) }) },
  }));
}

function result(path: string, one: PlacedFinding) {
  return {
    ruleId: one.check,
    ...(RULE_INDEX.has(one.check) && { ruleIndex: RULE_INDEX.get(one.check) }),
    level: LEVEL[one.severity],
    message: { text: unlinked(`${one.says} ${one.holds} (${one.source})`) },
    locations: [
      {
        physicalLocation: {
          artifactLocation: artifact(path),
          region: { ...region(one.place), snippet: { text: one.excerpt } },
        },
      },
    ],
    relatedLocations: related(path, one),
    partialFingerprints: { 'statement/v1': one.identity },
    fixes: one.fixes.length > 0 ? one.fixes.map((each) => fix(path, each)) : undefined,
    suppressions: suppressions(one),
    properties: { kind: one.kind },
  };
}

function rules() {
  return CHECKS.map((check) => ({
    id: check.id,
    shortDescription: { text: check.title },
    fullDescription: { text: check.title },
    help: { text: check.docs, markdown: check.docs },
    defaultConfiguration: { level: LEVEL[check.severity] },
    properties: { kind: check.kind },
  }));
}

export const SCHEMA_ADDRESS = 'https://json.schemastore.org/sarif-2.1.0.json';

/** Everything of the log but its results, cut where the results go. */
export function shell(ruleList: readonly object[]): [string, string] {
  const log = {
    $schema: SCHEMA_ADDRESS,
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Sizewright', semanticVersion: VERSION, rules: ruleList } },
        columnKind: 'utf16CodeUnits',
        results: [],
      },
    ],
  };
  const text = JSON.stringify(log);
  const cut = text.lastIndexOf('[]') + 1;
  return [text.slice(0, cut), text.slice(cut)];
}

/** Joins the results of all notes with commas. */
export function joined(
  each: (note: NoteResult) => readonly object[],
  ruleList: () => readonly object[],
): Report {
  const [head, tail] = shell(ruleList());
  let first = true;
  return {
    begin: () => head,
    note(result) {
      let text = '';
      for (const one of each(result)) {
        text += `${first ? '\n' : ',\n'}${safeJson(one)}`;
        first = false;
      }
      return text;
    },
    end: () => `${tail}\n`,
  };
}

export const sarifReport: ReportKind = () =>
  joined(({ path, findings }) => findings.map((one) => result(path, one)), rules);
