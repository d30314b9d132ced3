/**
 * A long note while it is being typed. Reading it whole takes longer than a keystroke may, so until the typing pauses the
 * findings known so far move with the text; those the edit touched are dropped, and none is invented. Then the note is
 * read, and the client is told to ask again.
 */
import type { Finding } from '../checks/model.ts';
import type { Span } from '../notes/model.ts';

export interface Known {
  readonly text: string;
  readonly findings: readonly Finding[];
}

/** What differs between two texts: [start, end) of the old one became [start, newEnd) of the new one. */
interface Change {
  readonly start: number;
  readonly end: number;
  readonly newEnd: number;
}

/** The findings of an older text, at their places in a newer one. */
export function moved({ text, findings }: Known, newer: string): Finding[] {
  const change = difference(text, newer);
  return findings.flatMap((finding) => {
    const span = shifted(finding.span, change);
    if (span === undefined) return [];
    const related = finding.related.flatMap((each) => {
      const place = each.note === undefined ? shifted(each.span, change) : each.span;
      return place === undefined ? [] : [{ ...each, span: place }];
    });
    return [{ ...finding, span, related, fixes: [] }];
  });
}

/** A span outside the change keeps its text; one that touches it is gone. */
function shifted(span: Span, { start, end, newEnd }: Change): Span | undefined {
  if (span.end < start) return span;
  if (span.start <= end) return undefined;
  const by = newEnd - end;
  return { start: span.start + by, end: span.end + by };
}

function difference(older: string, newer: string): Change {
  const shorter = Math.min(older.length, newer.length);
  let start = 0;
  while (start < shorter && older.charCodeAt(start) === newer.charCodeAt(start)) start++;
  let back = 0;
  while (
    back < shorter - start &&
    older.charCodeAt(older.length - 1 - back) === newer.charCodeAt(newer.length - 1 - back)
  )
    back++;
  return { start, end: older.length - back, newEnd: newer.length - back };
}
