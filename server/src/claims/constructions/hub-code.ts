/** Which colour code a hub colour in the text belongs to: that of needles, of IV cannulas, of urinary or suction catheters. */
import { colourCodeOf, colourOf } from '../../sizes/index.ts';
import type { Device } from '../../sizes/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { lineAt } from '../text/lines.ts';
import { changed } from '../text/place.ts';
import type { Group, Scene } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';

/** A colour word of a sentence, with the word for its shade. */
export interface Colour {
  readonly at: number;
  readonly to: number;
  readonly family: string;
}

/** The device the code belongs to: nearest words of the clause, the sentence, the sentences before, the headings. */
export function deviceOf(whole: Scene, c: Colour, g: Group): Device | undefined {
  const scene = withoutTheOther(whole);
  // "a pink cannula is 20 G": the thing between the two, whatever code was named before.
  if (lettered(scene.items, c)) return undefined;
  const stretch = c.to < g.from ? untilColour(scene.items, c, g) : scene.items.slice(g.to + 1, c.at);
  const french = g.sizes[0]!.system === 'french';
  // The valve and the bladder of a sentence about gauges are no code.
  const codeFor = (items: readonly { readonly word: string }[]) => {
    const code = codeOf(items);
    return french || code === 'needle' || code === 'cannula' || code === 'both' ? code : undefined;
  };
  // "a white-funnelled catheter, 10 Ch": the colour's own word may name its thing; "catheter" by itself names no code.
  const between = stretch.some((item) => item.kind === 'size')
    ? undefined
    : codeFor(french ? scene.items.slice(Math.min(c.at, g.from), Math.max(c.to, g.to) + 1) : stretch);
  if (between && between !== 'both' && !(french && between === 'cannula')) return between;
  const own = codeFor(ownStretch(scene.items, c, g));
  if (own && own !== 'both') return own;
  const led = leadCode(scene.items, Math.min(c.at, g.from));
  if (led) return led;
  const several = scene.items.filter((item) => item.kind === 'size').length > 1;
  const near = several ? undefined : codeFor(scene.items.slice(Math.max(0, g.from - 5), g.to + 6));
  if (near) return near === 'both' ? undefined : near;
  const here =
    several && own !== 'both' && bothNamed(scene.items) ? undefined : codeFor(outside(scene.items, c, g));
  if (here) return here === 'both' ? undefined : here;
  // "pink = 18 G, green = 21 G (needle)": the line speaks of needles itself, whatever came before.
  const mine = codeFor(scene.items);
  if (mine === 'needle') return undefined;
  const vein = intoVein(scene.items) || [scene, ...scene.before].some(({ items }) => intoChest(items));
  const fits = (found: Device | 'both' | undefined) =>
    found === 'both' || (vein && found === 'needle') ? undefined : found;
  for (const sentence of [...scene.before].reverse()) {
    const found = codeFor(sentence.items);
    if (found && anotherEntry(scene, sentence.start)) return undefined;
    if (found && ofNeedles(found, scene.items[c.at]!, g)) return undefined;
    // "On a needle chart … On a cannula chart …": the sentence names another code than the one before it.
    if (found && mine && found !== mine) return undefined;
    if (found === 'needle' && ofCannulas(scene)) return undefined;
    if (found) return fits(found);
  }
  // A lead-in or the passage before settles it only when it speaks of one code; then the nearest heading.
  const around = codeFor(scene.context.flatMap((sentence) => sentence.items));
  if (around && around !== 'both') {
    const above = headingCode(scene);
    return above && above !== around ? undefined : fits(around);
  }
  const heading = tableCode(scene) ?? headingCode(scene);
  if (heading === 'cannula' && ownNeedle(scene.items[c.at]!, g)) return undefined;
  if (heading || scene.headings.some((title) => ANOTHER_SUBJECT.test(title))) return fits(heading);
  const told = g.mentions[0]!.device;
  return told === 'needle' || told === 'winged-set' || vein ? undefined : told;
}

/** "Which colour has a 20 G cannula? Pink. Yellow is the needle. Green, the 18.": after an aside the talk goes back. */
const ofCannulas = ({ passage, sentence }: Scene): boolean =>
  /\bcannula/i.test(passage.text.slice(Math.max(0, sentence.start - 300), sentence.start));

/** "Not the same as cannulas: 21 green, 23 blue": what the code is told apart from names none. */
function withoutTheOther(scene: Scene): Scene {
  const at = scene.items.findIndex(
    (item, i) => codeOf([item]) !== undefined && APART_FROM.test(joined(scene.items, i - 5, i)),
  );
  if (at < 0 || scene.items[at + 1]?.word !== ':') return scene;
  const items = scene.items.map((item, i) => (i === at ? { ...item, word: 'those' } : item));
  return changed(scene, { items });
}
const APART_FROM =
  /\b(?:not (?:the same )?as|unlike|different (?:from|to|than)|not like)(?: (?:on|for|with|the))*$/;

/**
 * "ear vein, 24 or 26": a vein takes a needle or a cannula, whatever was injected into muscle before. "Catheters are
 * different (20 pink)": so do they.
 */
const VEIN = /^(?:veins?|venous|catheters?)$/;
export const intoVein = (items: readonly Item[]): boolean => items.some(({ word }) => VEIN.test(word));

/** "Chest: needle 14 G, orange": what lets the air out is a cannula, although it is called a needle. */
const CHEST = /^(?:chest|decompress\w*|pneumothora(?:x|ces)|thoracostomy|thoracocentesis|pleural?)$/;
const intoChest = (items: readonly Item[]): boolean => items.some(({ word }) => CHEST.test(word));

/** "14 G cannula. Tap with a 21 G green.": no cannula has that gauge, and the needle has that colour. */
const ofNeedles = (found: string, { colour }: Item, { sizes: [size] }: Group): boolean => {
  if (found !== 'cannula' || !size || !colour) return false;
  const own = colourOf(colourCodeOf('needle')!, size.value);
  return !colourOf(colourCodeOf('cannula')!, size.value) && own?.families.includes(colour) === true;
};

/** "Brown is 26 G", where needles were spoken of: right for a needle, whatever the title is about. */
const ownNeedle = ({ colour }: Item, { mentions, sizes: [size] }: Group): boolean =>
  mentions[0]!.device === 'needle' &&
  size !== undefined &&
  colour !== undefined &&
  colourOf(colourCodeOf('needle')!, size.value)?.families.includes(colour) === true;

/** "Mrs E: butterfly 23 G, blue wings.", and on the next line "Mr F: 24 G yellow": a line of a list of people is about its own thing. */
function anotherEntry({ passage, sentence }: Scene, before: number): boolean {
  const { text } = passage;
  const from = lineAt(passage, before).start;
  const here = lineAt(passage, sentence.start).start;
  return (
    from !== here && PERSON.test(text.slice(here, here + 40)) && PERSON.test(text.slice(from, from + 40))
  );
}
const PERSON = /^\W*(?:Mrs?|Ms|Miss|Bed|Room|Bay|Patient|Pt|Case)\.? \w+:/;

/** "A pink is 20 G, B pink is 18 G": drawers or lists with letters, whose things are told elsewhere. */
const lettered = (items: readonly Item[], c: Colour): boolean =>
  /^[a-d]$/.test(items[c.at - 1]?.word ?? '') &&
  items.some((item, i) => /^[b-d]$/.test(item.word) && items[i + 1]?.colour !== undefined);

/** From a colour to its size, or to the next colour: "pink on a needle and pink on a cannula both mean 20 G". */
function untilColour(items: readonly Item[], c: Colour, g: Group): readonly Item[] {
  const stretch = items.slice(c.to + 1, g.from);
  const next = stretch.findIndex((item) => item.colour);
  return next < 0 ? stretch : stretch.slice(0, next);
}

/** "Cannula code: green 18 G, pink 20 G": the word that opens the row of pairs this one stands in. */
function leadCode(items: readonly Item[], at: number): Device | undefined {
  let colon = false;
  for (let i = at - 1; i >= 0; i--) {
    const { word, kind, colour: family } = items[i]!;
    const code = codeOf([items[i]!]);
    if (code) return colon && code !== 'both' ? code : undefined;
    colon ||= word === ':';
    if (kind !== 'size' && !family && !ROW.test(word)) return undefined;
  }
  return undefined;
}
const ROW = /^(?:[,:=()–—-]|and|is|for|means|code|codes|colou?rs?|hubs?|the|an?|deep|pale|light|dark)$/;

/** "blue, not black (that is the needle)": a bracket further off speaks of something else. */
function outside(items: readonly Item[], c: Colour, g: Group): readonly Item[] {
  const open = items.findIndex((item, i) => item.word === '(' && i > Math.max(c.to, g.to) + 1);
  const close = items.findIndex((item, i) => item.word === ')' && i > open);
  return open < 0 || close < 0 || close - open > 8 ? items : [...items.slice(0, open), ...items.slice(close)];
}

/** The sentence gives one size to a needle and another to a cannula. */
const bothNamed = (items: readonly Item[]) => items.filter((item) => item.colour !== undefined).length > 1;

/** From the size or colour before this pair to the one after it. */
function ownStretch(items: readonly Item[], c: Colour, g: Group): readonly Item[] {
  const marks = (item: Item) =>
    item.kind === 'size' || item.colour !== undefined || item.word === ';' || item.word === '.';
  const sized = items.slice(0, g.from).findLastIndex((item) => item.kind === 'size');
  // One colour may serve two sizes: then only the second size's own words count for it.
  const shared = c.to < g.from && sized > c.to;
  const [from, to] = shared ? [g.from, g.to] : [Math.min(c.at, g.from), Math.max(c.to, g.to)];
  const start = items.slice(0, from).findLastIndex(marks) + 1;
  const next = items.slice(to + 1).findIndex(marks);
  // When the colour comes first, what follows the size belongs to the next pair.
  const end =
    c.to < g.from && !shared && next >= 0
      ? Math.min(to + 3, items.length)
      : next < 0
        ? items.length
        : to + 1 + next;
  return items.slice(start, end);
}

/** What the table right above is about, by the paragraph that leads into it. */
function tableCode({ note, passage }: Scene): Device | undefined {
  const table = note.tables[note.passages[passage.index - 1]?.cell?.table ?? -1];
  if (passage.cell || table?.leadIn === undefined) return undefined;
  // A table with a column for each settles for none of them.
  const told = [table.leadIn, ...table.rows[0]!].map(
    (index) => note.passages[index]?.text.slice(0, 400) ?? '',
  );
  const words = told
    .join(' ')
    .toLowerCase()
    .split(/[^a-z0-9-]+/);
  const found = codeOf(words.map((word) => ({ word })));
  return found === 'both' ? undefined : found;
}

/** "Cannulas, catheters and stitches": a title of several subjects settles for none of them whose colours are told. */
const ANOTHER_SUBJECT =
  /\b(?:lines|flow|sutures?|stitch(?:es)?|threads?|drains?|tubes|wires|(?<!iv |venous )catheters)\b/;

function headingCode(scene: Scene): Device | undefined {
  for (const heading of [...scene.headings].reverse()) {
    const found = codeOf(heading.split(/[^a-z0-9-]+/).map((word) => ({ word })));
    if (found && ANOTHER_SUBJECT.test(heading)) return undefined;
    if (found) return found === 'both' ? undefined : found;
  }
  return undefined;
}

/** The one code that a sentence speaks of, or, when it names none, the sentences, the passage and the headings before it. */
export function codeAround(scene: Scene): Device | undefined {
  const here = codeOf(scene.items);
  if (here) return here === 'both' ? undefined : here;
  for (const sentence of [...scene.before].reverse()) {
    const found = codeOf(sentence.items);
    if (found) return found === 'both' ? undefined : found;
  }
  const around = codeOf(scene.context.flatMap((sentence) => sentence.items));
  const above = headingCode(scene);
  if (around === 'both' || (around && above && around !== above)) return undefined;
  return around ?? above;
}
