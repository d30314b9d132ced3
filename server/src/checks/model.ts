/** What a check reports. Plain data in offsets of the note; no editor or protocol types. */
import type { Span } from '../notes/model.ts';
import type { Confidence, SourceKey } from '../sizes/model.ts';

export type FindingKind = 'contradiction' | 'ambiguity' | 'style';
export type Severity = 'error' | 'warning' | 'info' | 'hint';

export interface Edit {
  readonly span: Span;
  readonly text: string;
}

export interface Fix {
  readonly title: string;
  /** `safe`: one edit makes the statement true and changes nothing else. `choice`: the author must choose. */
  readonly safety: 'safe' | 'choice';
  readonly edits: readonly Edit[];
}

/** One step of a derivation: what was read, a value used, or the result. */
export interface Step {
  readonly label: 'read' | 'value' | 'rule' | 'result';
  readonly text: string;
  readonly sources?: readonly SourceKey[];
  readonly confidence?: Confidence;
}

export interface Related {
  readonly span: Span;
  /** Path of another note; this note when absent. */
  readonly note?: string;
  readonly message: string;
}

export interface Finding {
  /** Stable id of the check. */
  readonly check: string;
  readonly kind: FindingKind;
  readonly severity: Severity;
  readonly span: Span;
  /** What the text says: one short sentence. */
  readonly says: string;
  /** What holds: one short sentence. */
  readonly holds: string;
  /** Name of the standard or source behind it, as shown. */
  readonly source: string;
  readonly sources: readonly SourceKey[];
  readonly fixes: readonly Fix[];
  readonly related: readonly Related[];
  readonly derivation: readonly Step[];
  /** Set when a deliberate mark covers the finding: the reason written there. */
  readonly deliberate?: string;
  /** Shown as no longer needed (a stale mark). */
  readonly unnecessary?: boolean;
}
