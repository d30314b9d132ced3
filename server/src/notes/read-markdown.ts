/** A Markdown note read stretch by stretch; an edit re-reads only the stretch it touches. */
import { joinStretches, type PlacedStretch } from './assemble.ts';
import { candidates, frontMatterEnd } from './boundaries.ts';
import { BoundedCache } from './cache.ts';
import { labelKey, referencedKeys } from './labels.ts';
import type { Note } from './model.ts';
import { readPlain } from './read-plain.ts';
import { readStretch, type Stretch } from './stretch.ts';
import { stretchWeight } from './weight.ts';

/** Room for the notes of a large course that are open at once, bytes. */
const CACHE_LIMIT = 24_000_000;

/** Stretches by their text; those read with labels from elsewhere, or as front matter, by both. */
const plain = new BoundedCache<Stretch>(CACHE_LIMIT, stretchWeight);
const labelled = new BoundedCache<Stretch>(CACHE_LIMIT / 4, stretchWeight);

interface Piece {
  readonly start: number;
  readonly text: string;
  readonly first: boolean;
}

function readPiece(piece: Piece, labels: readonly string[] = []): Stretch {
  if (!piece.first && labels.length === 0)
    return plain.get(piece.text, (text) => readPlain(text) ?? readStretch(text, false, []));
  const key = `${piece.first ? '^' : ''}${labels.join('\n')}\0${piece.text}`;
  const read = (own: string) => readStretch(own.slice(own.length - piece.text.length), piece.first, labels);
  return labelled.get(key, read);
}

/** Code, math and HTML may hold blank lines; without these signs there is none. */
const MAY_STAY_OPEN = /```|~~~|\$\$|</;

/** Cuts the text at every candidate at which nothing is open. */
function cut(text: string, from: number): Piece[] {
  const starts = [...candidates(text, from), text.length];
  const pieces: Piece[] = [];
  for (let at = 0; at + 1 < starts.length; ) {
    const start = starts[at]!;
    const piece = (to: number): Piece => ({ start, text: text.slice(start, starts[to]), first: false });
    // Doubling keeps the work linear however long a block stays open.
    let step = 1;
    let next = at + 1;
    while (next + 1 < starts.length && isOpen(piece(next))) {
      next = Math.min(at + 2 * step, starts.length - 1);
      step *= 2;
    }
    pieces.push(piece(next));
    at = next;
  }
  return pieces;
}

function isOpen(piece: Piece): boolean {
  return MAY_STAY_OPEN.test(piece.text) && !readPiece(piece).closed;
}

/** Labels each piece defines, by key. Only text with "]:" can define one. */
function definedLabels(piece: Piece): Map<string, string> {
  if (!piece.text.includes(']:')) return new Map();
  return new Map(readPiece(piece).labels.map((label) => [labelKey(label), label]));
}

/** For each piece the labels defined elsewhere that it may refer to, in a fixed order. */
function foreignLabels(pieces: readonly Piece[]): (readonly string[])[] {
  const own = pieces.map(definedLabels);
  const all = new Map(own.flatMap((labels) => [...labels]));
  if (all.size === 0) return pieces.map(() => []);
  return pieces.map((piece, index) => {
    const keys = [...referencedKeys(piece.text)];
    return keys
      .filter((key) => all.has(key) && !own[index]!.has(key))
      .sort()
      .map((key) => all.get(key)!);
  });
}

/** The front matter, when there is any. Remark must find it too, given it alone. */
function frontMatterOf(text: string, base: number): Piece[] {
  const end = base + frontMatterEnd(text.slice(base));
  const piece: Piece = { start: base, text: text.slice(base, end), first: true };
  return end > base && readPiece(piece).frontMatter ? [piece] : [];
}

/** Where the text proper starts: after a byte order mark. */
function baseOf(text: string): number {
  return text.startsWith('\uFEFF') ? 1 : 0;
}

/** Reads Markdown. */
export function readMarkdown(text: string): Note {
  const front = frontMatterOf(text, baseOf(text));
  const pieces = [...front, ...cut(text, baseOf(text) + (front[0]?.text.length ?? 0))];
  const labels = foreignLabels(pieces);
  const placed = pieces.map(
    (piece, index): PlacedStretch => ({ start: piece.start, stretch: readPiece(piece, labels[index]) }),
  );
  return joinStretches(text, placed);
}

/** Reads Markdown in one go, nothing kept; the measure for reading it in stretches. */
export function readWhole(text: string): Note {
  const front = frontMatterOf(text, baseOf(text));
  const start = baseOf(text) + (front[0]?.text.length ?? 0);
  const placed = front.map((piece) => ({ start: piece.start, stretch: readPiece(piece) }));
  return joinStretches(text, [...placed, { start, stretch: readStretch(text.slice(start), false, []) }]);
}
