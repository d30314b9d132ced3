/** Answers set in a row and kept apart by one mark: "pink / 6 mm / the 14", "the grey; twenty; and yellow", "cream – grey – white". */
import { matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';

/** Marks that keep answers apart, the strongest first. */
const CUTS = [
  /\s*[;|·]\s*(?:and\s+)?/g,
  /\s+\/\s+/g,
  /\s*,\s+(?:and\s+)?|\s+and\s+/g,
  /\s+[–—-]\s+/g,
  /\s*(?:→|>)\s*/g,
] as const;

/** Cut at the mark that cuts it at all. */
export function partsIn(text: string, { start, end }: Span): Span[] {
  const row = text.slice(start, end).replace(/[.)*_\s]+$/, '');
  for (const cut of CUTS) {
    const found = matchesOf(row, cut);
    if (found.length === 0) continue;
    const starts = [0, ...found.map((match) => match.index + match[0].length)];
    const ends = [...found.map((match) => match.index), row.length];
    return starts.map((at, i) => ({ start: start + at, end: start + ends[i]! }));
  }
  return [{ start, end: start + row.length }];
}
