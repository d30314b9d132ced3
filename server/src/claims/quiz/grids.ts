/** Keys set as tables: question numbers beside their answers, or in a row above them. */
import type { Read } from '../text/scenes.ts';
import { labelNumber, type Piece, piece } from './piece.ts';

type Grid = readonly (readonly (Read | undefined)[])[];
const NUMBER_CELL =
  /^(?:(?:q(?:uestion)?|item|no\.?|#)\s*)?\(?([1-9]\d?\.\d{1,2}|\d{1,2}|[a-z][1-9]\d?|i{1,3}|iv|vi{0,3}|ix|x)[.)]?\)?$/i;
/** A letter alone, or a letter with the choice or a reason after it. */
const ANSWER_CELL = /^\(?(true|false|[A-FTa-ft])\)?(?:\.?$|[.,:;)—–(-]\s*\S|\s+[(—–-]|\s*[,;])/i;
const ANSWER_HEADER =
  /\b(?:answers?|key|correct|right|solutions?|letter|response|choice|verdict|keyed|reply|marked)\b/i;

/** A table of question numbers and answers: beside each other, or one row above the other. */
export function readGrid(rows: Grid, add: (number: number, answer: string, at: Piece) => void): void {
  const below = answerRows(rows);
  const isKey = once((column) => keyColumn(rows, column));
  rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      const written = cell?.passage.text.trim() ?? '';
      const header = rows[0]?.[c + 1]?.passage.text ?? '';
      const number = NUMBER_CELL.exec(written) ?? lettered(written, rows[0]?.[c]?.passage.text ?? '', header);
      if (!number) return;
      const beside = r > 0 && (ANSWER_HEADER.test(header) || isKey(c)) ? row[c + 1] : undefined;
      const across = NUMBER_CELL.test(row[c + 1]?.passage.text.trim() ?? '') || c > 0;
      const answer = beside ?? (across ? below[r]?.[c] : undefined);
      const text = answer?.passage.text.trim() ?? '';
      const letter =
        ANSWER_CELL.exec(text)?.[1] ?? (beside ? /^\(?([A-Fa-f])\)?\s/.exec(text)?.[1] : undefined);
      if (answer && text !== '' && (letter || beside))
        for (const label of labelsOf(number[1]!))
          add(label, letter ?? text, piece(answer, 0, answer.passage.text.length));
    });
  });
}

/** "A1" is the first of series A, or the answer to the first question. */
function labelsOf(written: string): number[] {
  const label = labelNumber(`${written.toUpperCase()}. `) ?? labelNumber(`${written}. `);
  const answer = /^a\d/i.test(written) ? [Number(written.slice(1))] : [];
  return [label ?? Number(written), ...answer];
}

/** Questions may be counted by letters, under a header that says so. */
const lettered = (written: string, above: string, beside: string): RegExpExecArray | null =>
  /^\W*(?:questions?|q|no\.?|item|#)\W*$/i.test(above) && ANSWER_HEADER.test(beside)
    ? /^\(?([A-Ha-h])[.)]?$/.exec(written)
    : null;

/** For each row the answers under it: the row that calls itself the key, else the first of letters. */
function answerRows(rows: Grid): readonly (Grid[number] | undefined)[] {
  const text = (read: Read | undefined) => read?.passage.text.trim() ?? '';
  const found: (Grid[number] | undefined)[] = [];
  let named: Grid[number] | undefined;
  let lettered: Grid[number] | undefined;
  for (let r = rows.length - 1; r >= 0; r--) {
    found[r] = named ?? lettered;
    const row = rows[r]!;
    if (ANSWER_HEADER.test(text(row[0]))) named = row;
    if (row.slice(1).every((cell) => text(cell) === '' || ANSWER_CELL.test(text(cell)))) lettered = row;
  }
  return found;
}

/** Asks for a column only once. */
function once(ask: (column: number) => boolean): (column: number) => boolean {
  const known = new Map<number, boolean>();
  return (column) => {
    const answer = known.get(column) ?? ask(column);
    known.set(column, answer);
    return answer;
  };
}

/** A column of numbers beside a column of letters is a key whatever its header says. */
function keyColumn(rows: Grid, c: number): boolean {
  const text = (row: Grid[number], column: number) => row[column]?.passage.text.trim() ?? '';
  const body = rows.slice(1).filter((row) => text(row, c) !== '');
  const lettered = body.filter(
    (row) => NUMBER_CELL.test(text(row, c)) && /^\(?(?:[A-FTa-ft]|true|false)\)?\.?$/i.test(text(row, c + 1)),
  );
  return lettered.length >= 2 && lettered.length === body.length;
}
