/** A report is a stream of text: something before, something for each note, something at the end. */
import type { NoteResult, PlacedFinding } from '../result.ts';

export interface Totals {
  notes: number;
  contradiction: number;
  ambiguity: number;
  style: number;
  /** Covered by a deliberate mark or accepted earlier: shown where the format has room, never counted. */
  deliberate: number;
  accepted: number;
  mentions: number;
}

export interface Report {
  readonly begin?: () => string;
  readonly note: (result: NoteResult) => string;
  readonly end?: (totals: Totals) => string;
}

export interface ReportOptions {
  /** Escape sequences for colour. */
  readonly colour: boolean;
}

export type ReportKind = (options: ReportOptions) => Report;

export const noTotals = (): Totals => ({
  notes: 0,
  contradiction: 0,
  ambiguity: 0,
  style: 0,
  deliberate: 0,
  accepted: 0,
  mentions: 0,
});

/** Neither deliberate nor accepted: what a run is about. */
export const isOpen = (finding: PlacedFinding): boolean =>
  finding.deliberate === undefined && finding.accepted !== true;

export function count(totals: Totals, { findings, mentions, late }: NoteResult): void {
  if (!late) totals.notes++;
  totals.mentions += mentions.length;
  for (const finding of findings) {
    if (finding.accepted) totals.accepted++;
    else if (finding.deliberate !== undefined) totals.deliberate++;
    else totals[finding.kind]++;
  }
}
