/** Cells that hold several short facts about the thing of their row: "green, 1.3 mm", "monofilament; thinner than 2-0". */
import type { Note } from '../../notes/model.ts';
import { type FactReading, isSubject, readFact } from '../facts.ts';
import { mark, readingsIn } from '../quiz/desk.ts';
import { stanceOf } from '../stance/index.ts';
import type { Item } from '../text/items.ts';
import { pointsIn } from '../text/points.ts';
import type { FirstScenes, Scene } from '../text/scene.ts';
import type { Read } from '../text/scenes.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { REPORTED_SPEAKERS } from '../words/frames.ts';
import { codeWord } from './colours.ts';
import { widthWord } from './values.ts';
import { generalHeader, wordsIn } from './words.ts';

/** Facts of a cell, and items of the name of the thing; longer ones are prose. */
const MANY = 6;
const LONG_NAME = 5;
const LONGEST = 40;

export function readCells(note: Note, reads: readonly Read[], first: FirstScenes): FactReading[] {
  return note.tables.flatMap(({ rows }) => {
    const heads = (rows[0] ?? []).map((index) => reads[index]?.passage.text ?? '');
    const columns = heads.flatMap((head, column) => (column > 0 && tells(head) ? [column] : []));
    if (wordsIn(heads[0] ?? '').some((word) => REPORTED_SPEAKERS.has(word))) return [];
    const edges = heads.flatMap((head, column) => (column > 0 && EDGE.test(head) ? [column] : []));
    const shapes = heads.flatMap((head, column) => (column > 0 && SHAPE.test(head) ? [column] : []));
    const uses = usesIn(heads);
    if (uses && edges.length + shapes.length === 0)
      return rows
        .slice(1)
        .flatMap((row) => useOf(reads[row[uses.tissue] ?? -1], reads[row[uses.point] ?? -1], first));
    if (columns.length + edges.length + shapes.length === 0) return [];
    return rows.slice(1).flatMap((row) => {
      const subject = reads[row[0] ?? -1];
      if (subject && edges.length > 0 && pointsIn(subject.items).length === 1)
        return edges.flatMap((column) => edgeOf(subject, reads[row[column] ?? -1], first));
      const drawn = subject && shapes.flatMap((column) => edgeIn(subject, reads[row[column] ?? -1], first));
      if (drawn && drawn.length > 0) return drawn;
      if (!subject || subject.items.length > LONG_NAME || !isSubject(subject.items)) return [];
      return columns.flatMap((column) => {
        const cell = reads[row[column] ?? -1];
        const scene = cell && first.get(cell.passage);
        return cell && scene && cell.items.length <= LONGEST ? factsOf(scene, subject, cell) : [];
      });
    });
  });
}

const tells = (head: string): boolean =>
  !STRUCK_HEADER.test(head) && (generalHeader(head) || colourAndWidth(head));

/** "Colour and width": two things known of a size, in one column. */
function colourAndWidth(head: string): boolean {
  const words = wordsIn(head).filter((word) => word !== 'and');
  return (
    words.every((word) => codeWord(word) || widthWord(word)) &&
    words.some((word) => /^colou?rs?$/.test(word)) &&
    words.some((word) => !codeWord(word))
  );
}

function factsOf(scene: Scene, subject: Read, cell: Read): FactReading[] {
  const parts = cut(cell.items);
  return parts.length <= MANY ? parts.flatMap((part) => readFact(scene, subject.items, part)) : [];
}

const EDGE =
  /^\W*(?:the )?(?:third |cutting |extra |sharp )*(?:edge|apex|side|point of the triangle)\b[^.]{0,20}$/i;

/** "| reverse cutting | outer curve |" under "Edge". */
function edgeOf(subject: Read, cell: Read | undefined, first: FirstScenes): FactReading[] {
  const scene = cell && first.get(cell.passage);
  return !cell || !scene || cell.items.length > LONG_NAME
    ? []
    : edgeSaid(scene, [...subject.items, mark(':'), mark('edge'), ...cell.items]);
}

const TISSUE =
  /^\W*(?:tissues?|structures?|organs?|layers?|sites?|where|(?:used?|best|good|meant|chosen|right|ideal) (?:for|in|on)|uses?|for|goes (?:in|into|through)|suits|what (?:is|to) sewn?|indications?)\W*$/i;
const POINT =
  /^\W*(?:suture )?(?:needles?(?: (?:points?|types?|tips?|kinds?))?|points?|tips?|types? of needle|needle point)\W*$/i;

/** The columns of a table that gives each tissue its needle, in either order. */
function usesIn(heads: readonly string[]): { readonly tissue: number; readonly point: number } | undefined {
  const [tissue, point] = [
    heads.findIndex((head) => TISSUE.test(head)),
    heads.findIndex((head) => POINT.test(head)),
  ];
  return tissue < 0 || point < 0 ? undefined : { tissue, point };
}

/** "| bowel | taper |" under "Tissue" and "Needle". */
function useOf(tissue: Read | undefined, point: Read | undefined, first: FirstScenes): FactReading[] {
  const scene = point && first.get(point.passage);
  if (!tissue || !scene || tissue.items.length > LONG_NAME + 4 || point.items.length > LONG_NAME) return [];
  return edgeSaid(scene, [...tissue.items, mark(':'), ...point.items]);
}

const SHAPE =
  /^\W*(?:needle )?(?:cross[- ]sections?|shapes?|designs?|geometry|descriptions?|features?|profiles?|characteristics?|what (?:it|they) (?:does|do|is|are|looks? like)|how it (?:is made|cuts|looks))\W*$/i;
/** "| reverse cutting | triangular, apex on the outer curve |" under "Cross-section": the part that tells of the edge. */
function edgeIn(subject: Read, cell: Read | undefined, first: FirstScenes): FactReading[] {
  const scene = cell && first.get(cell.passage);
  if (!scene || cell.items.length > LONGEST || pointsIn(subject.items).length !== 1) return [];
  const part = cut(cell.items).find((items) => items.some(({ word }) => /^(?:edge|apex)$/.test(word)));
  // "three edges, the third on the outer, convex curve": the parts lean on one another.
  const told = part ?? (cell.items.some(({ word }) => SIDED.test(word)) ? cell.items : undefined);
  return told ? edgeSaid(scene, [...subject.items, mark(':'), ...told]) : [];
}
const SIDED = /^(?:outer|inner|convex|concave|outside|inside)$/;

function edgeSaid(scene: Scene, items: readonly Item[]): FactReading[] {
  const { scene: whole, readings } = readingsIn(scene, [...items]);
  const reading = readings.find(({ claim }) => claim.kind === 'property');
  return reading ? [{ claim: reading.claim, stance: stanceOf(whole, reading) }] : [];
}

const EDGES = /^[;·•|,.]$/;

function cut(items: readonly Item[]): Item[][] {
  const parts: Item[][] = [[]];
  for (const item of items) {
    if (EDGES.test(item.word)) parts.push([]);
    else parts.at(-1)!.push(item);
  }
  return parts.filter((part) => part.length > 0);
}
