/** A question about words that name no size at all. */
import type { Span } from '../../notes/model.ts';
import type { Reading } from '../model.ts';

export interface Question {
  /** Span in the passage's text. */
  readonly span: Span;
  readonly readings: readonly Reading[];
  readonly rule: string;
}
