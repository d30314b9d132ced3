/**
 * Rows read as the sentence that their headers make of them: "| Tracheal tube | outer diameter |" under "Size tells you" says that
 * the number of the tube is its outer diameter. Only headers whose sense is one verb are put into words.
 */
import type { Note } from '../../notes/model.ts';
import type { FactReading } from '../facts.ts';
import type { Claim } from '../model.ts';
import { mark, readingsIn } from '../quiz/desk.ts';
import { stanceOf } from '../stance/index.ts';
import { type Item, readItems } from '../text/items.ts';
import { materialsIn } from '../text/materials.ts';
import type { FirstScenes } from '../text/scene.ts';
import type { Read } from '../text/scenes.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { TURNS } from './usual.ts';

/** What a header says of the thing of a row, and the kinds of claims that this can be. */
interface Telling {
  readonly head: RegExp;
  readonly thing: (items: readonly Item[]) => boolean;
  readonly words: (thing: readonly Item[], cell: readonly Item[]) => readonly Item[];
  readonly kinds: ReadonlySet<Claim['kind']>;
}

const words = (text: string): Item[] => text.split(' ').map(mark);
const DEVICE =
  /^(?:tubes?|catheters?|foley|drains?|sheaths?|needles?|cannulas?|cannulae|gauge|french|charri[eè]re|ett|metric)$/;

const TELLINGS: readonly Telling[] = [
  {
    head: /\b(?:size|number|figure|mark(?:ing)?|label)s?\b.{0,16}\b(?:tells?|means?|is|gives?|measures?|counts?|refers?|stands?|describes?|shows?|says?)\b|\b(?:named|numbered|sized|labelled|measured|goes) (?:by|after|for)\b|^\W*(?:what|which)\b.{0,16}\b(?:number|size|figure)\b/,
    thing: (items) => items.some(({ word, system }) => DEVICE.test(word) || system !== undefined),
    words: (thing, cell) => [...thing, ...words('number is the'), ...cell],
    kinds: new Set(['formula']),
  },
  {
    head: /\bhalf\b.{0,24}\b(?:strength|gone|lost|left|strong)\b|\bstrength\b.{0,16}\bhalf\b/,
    thing: (items) => materialsIn(items).length === 1,
    words: (thing, cell) => [...thing, ...words('loses half its strength at'), ...cell],
    kinds: new Set(['property']),
  },
  {
    head: /^\W*(?:(?:typical|usual|main|common|best|good) )?(?:uses?|used|indications?|patients?|meant|chosen|right|good|best|ideal|who)?(?: (?:for|in|on|with))?\W*$/,
    thing: (items) => items.filter(({ kind }) => kind === 'size').length === 1,
    words: (thing, cell) => [...thing, mark(':'), ...cell],
    kinds: new Set(['category']),
  },
];

/** Rows that run in an order are not told one by one. */
const ORDERED = /\b(?:first|last|\w{3,}est)\b/;
const LONGEST = 12;
const MANY_ROWS = 30;
const MANY_COLUMNS = 6;

export function readTold(note: Note, reads: readonly Read[], first: FirstScenes): FactReading[] {
  return note.tables.flatMap(({ rows }) => {
    const heads = (rows[0] ?? []).map((index) => reads[index]?.passage.text.toLowerCase() ?? '');
    if (heads.length < 2 || heads.length > MANY_COLUMNS || rows.length > MANY_ROWS) return [];
    if (heads.some((head) => STRUCK_HEADER.test(head) || ORDERED.test(head))) return [];
    const told = heads.flatMap((head, column) => {
      const telling = head.trim() === '' ? undefined : TELLINGS.find((one) => one.head.test(head));
      return telling ? [{ telling, column }] : [];
    });
    const [only, ...more] = told;
    if (!only || more.length > 0) return [];
    return rows.slice(1).flatMap((row) =>
      tellOf(
        row.map((index) => reads[index]),
        heads,
        only.column,
        only.telling,
        first,
      ),
    );
  });
}

function tellOf(
  row: readonly (Read | undefined)[],
  heads: readonly string[],
  column: number,
  telling: Telling,
  first: FirstScenes,
): FactReading[] {
  const cell = row[column];
  const at = row.findIndex(
    (read, c) => c !== column && read !== undefined && telling.thing(named(read, heads[c]!)),
  );
  const thing = row[at];
  const scene = cell && first.get(cell.passage);
  if (TURNS.test(cell?.passage.text.toLowerCase() ?? '')) return [];
  if (
    !thing ||
    !scene ||
    cell.items.length === 0 ||
    cell.items.length > LONGEST ||
    thing.items.length > LONGEST
  )
    return [];
  const items = [...telling.words(named(thing, heads[at]!), cell.items)];
  const { scene: whole, readings } = readingsIn(scene, items);
  const found = readings.filter(({ claim }) => telling.kinds.has(claim.kind));
  const [reading] = found;
  const rules = new Set(found.map(({ claim }) => (claim.kind === 'formula' ? claim.formula : claim.kind)));
  return reading && rules.size === 1
    ? [{ claim: { ...reading.claim, construction: 'table-row' } as Claim, stance: stanceOf(whole, reading) }]
    : [];
}

/** The cell, and behind it the thing that its header names: "14 G" under "Cannula". */
const named = ({ items }: Read, head: string): readonly Item[] => {
  const thing = readItems(head, []).filter(({ word }) => DEVICE.test(word));
  return thing.length === 1 && !items.some(({ word }) => DEVICE.test(word)) ? [...items, ...thing] : items;
};
