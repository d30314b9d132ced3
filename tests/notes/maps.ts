/** What must hold of every passage's map: each character of prose is that character in the source. */
import { decodeString } from 'micromark-util-decode-string';
import { expect } from 'vitest';
import type { Note, Passage } from '../../server/src/notes/index.ts';

const LINE_BREAK = /^[ \t]*\\?(?:\r\n?|\n)[ \t>]*$/;

/** What a reader sees of source that is prose as it stands. */
const shown = (source: string) => source.replaceAll('\0', '\uFFFD').replaceAll('\r', '\n');

/** Whether a piece of text may stand for that source. */
function stands(text: string, source: string): boolean {
  if (text === '\n' && LINE_BREAK.test(source)) return true;
  if (text === '\uFFFC') return source.length > 1;
  if (source.startsWith('\\')) return source === `\\${text}`;
  return /^&[^;]+;$/.test(source) && decodeString(source) === text;
}

/** Source as it is read: an expression of MDX with nothing in it is blank. */
export type Written = (source: string) => string;

function brokenPieces(note: Note, { text, map }: Passage, written: Written): string[] {
  const broken: string[] = [];
  let done = 0;
  let sourceDone = 0;
  for (let piece = 0; piece < map.texts.length; piece++) {
    const start = map.texts[piece]!;
    const from = map.sources[piece]!;
    const said = text.slice(start, start + map.lengths[piece]!);
    const source = note.text.slice(from, from + map.sourceLengths[piece]!);
    const exact = map.lengths[piece] === map.sourceLengths[piece];
    const fits = exact ? said === shown(written(source)) : stands(said, source);
    if (start !== done || from < sourceDone || !fits)
      broken.push(`${JSON.stringify(said)} from ${JSON.stringify(source)}`);
    done = start + map.lengths[piece]!;
    sourceDone = from + map.sourceLengths[piece]!;
  }
  if (done !== text.length || sourceDone > note.text.length) broken.push('the pieces do not cover the text');
  return broken;
}

/** Checks every map, and that numbers in the note point where they should. `written`: source as the format writes it over. */
export function expectSound(note: Note, written: Written = (source) => source): void {
  for (const passage of note.passages) expect(brokenPieces(note, passage, written)).toEqual([]);
  const count = note.passages.length;
  note.passages.forEach((passage, index) => {
    expect(passage.index).toBe(index);
    const { leadIn = 0, parent = 0 } = passage.list ?? {};
    for (const other of [...passage.path, leadIn, parent]) expect(other >= 0 && other < count).toBe(true);
  });
  note.tables.forEach((table, index) => {
    expect(table.index).toBe(index);
    table.rows.forEach((row, rowIndex) => {
      row.forEach((cell, column) => {
        if (cell >= 0) expect(note.passages[cell]?.cell).toEqual({ table: index, row: rowIndex, column });
      });
    });
  });
}
