/** What a stretch that is kept takes in memory. */
import type { Passage } from './model.ts';
import type { Stretch } from './stretch.ts';

/** Bytes, measured over kinds of notes with the garbage collected; each passage is kept twice, here and as placed. */
const BYTES = { stretch: 700, unit: 2, passage: 800, piece: 48, note: 150 } as const;

const pieces = (sum: number, { map, marks }: Passage): number => sum + map.texts.length + marks.length;

/** About how many bytes a stretch takes with its text, `text`, and with what placing it in a note adds. */
export function stretchWeight(text: string, { passages, comments, labels }: Stretch): number {
  return (
    BYTES.stretch +
    BYTES.unit * text.length +
    BYTES.passage * passages.length +
    BYTES.piece * passages.reduce(pieces, 0) +
    BYTES.note * (comments.length + labels.length)
  );
}
