/** The line a finding stands on, cut to fit, with a line of marks below it. */
import { safeLine } from '../escape.ts';
import type { PlacedFinding } from '../result.ts';

const WIDTH = 96;
const BEFORE = 40;

export interface Excerpt {
  readonly text: string;
  readonly marks: string;
}

/** Characters that take two columns: East Asian wide forms and most pictographs. */
const WIDE =
  /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Extended_Pictographic}/u;
const NO_WIDTH = /\p{Mark}|\u200b|\u200d/u;

/** Columns `text` takes on a terminal. */
export function columns(text: string): number {
  let width = 0;
  for (const character of text) width += NO_WIDTH.test(character) ? 0 : WIDE.test(character) ? 2 : 1;
  return width;
}

/** Cut back to a whole character: never between the halves of a pair. */
function whole(text: string, at: number): number {
  const code = text.charCodeAt(at);
  return code >= 0xdc00 && code <= 0xdfff ? at - 1 : at;
}

export function excerpt({ excerpt: line, excerptAt = 0, place }: PlacedFinding): Excerpt {
  const start = place.column - 1 - excerptAt;
  const end = place.endLine === place.line ? place.endColumn - 1 - excerptAt : line.length;
  const from = start > BEFORE * 2 ? whole(line, start - BEFORE) : 0;
  const to = whole(line, Math.min(line.length, Math.max(from + WIDTH, end)));
  // A line that starts with two colons would be a command to a runner of continuous integration.
  const quiet = from === 0 && /^\s*::/.test(line) ? '…' : '';
  const head = quiet + (from > 0 ? '…' : '') + safeLine(line.slice(from, start));
  const marked = safeLine(line.slice(start, Math.min(end, to)));
  const tail = safeLine(line.slice(Math.min(end, to), to)) + (to < line.length ? '…' : '');
  return {
    text: head + marked + tail,
    marks: ' '.repeat(columns(head)) + '^'.repeat(Math.max(1, columns(marked))),
  };
}
