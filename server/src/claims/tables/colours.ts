/** Hub colours in a row: "| 18 G | green |". */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import type { Device } from '../../sizes/model.ts';
import type { ColourClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { remembered } from '../text/remember.ts';
import type { Read } from '../text/scenes.ts';
import { codeOf } from '../words/codes.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

/** A colour cell beside the row's one gauge or French. */
/** The colour of a box or a lid is no code. */
const PACKING =
  /\b(?:box|boxes|packets?|packs?|trays?|lids?|drawers?|stickers?|labels?|bags?|bins?|baskets?|folders?|tubs?|crates?|shelf|shelves|cupboards?|lumens?|clips?|hangers?)\b/;

/** Words that a header of hub colours is made of; any other word says whose colour it is: a triage tag's, a wristband's. */
const CODE_WORDS = new Set(
  `colour colours color colors coloured code codes coding hub hubs cannula cannulas cannulae catheter catheters needle needles iv peripheral venous device funnel wing wings port valve connector cap ring
  standard iso foley suction urinary hypodermic injection plastic hubcolour the of its and on at in by usual shade butterfly winged set sets spinal gauge size name what is it mark marking markers end
  drawing tip tube line lines inflation vein flashback chamber should be which says said expected seen stated given printed taught our old new real right answer true actual front back side card cards term definition`.split(
    /\s+/,
  ),
);
const ofElse = (header: string): boolean =>
  (header.toLowerCase().match(/\p{L}{3,}/gu) ?? []).some((word) => !CODE_WORDS.has(word));

/** Where colours sort blood tubes, patients or children, they are no hub's. */
const OTHER_CODES =
  /\b(?:tube tops?|additives?|triage|zones?|bands?|wristbands?|urine|skin|ecg|masks?|patients?|kg|weights?|broselow)\b/;

/** "Q2" at the head of a column: what somebody answered. */
const ANSWERED = /^\W*q(?:uestion)?\W?\d/;

export function colours(grid: Grid, row: Row): ColourClaim[] {
  const coded = row.flatMap((read, column) => {
    const mention = sole(read);
    return mention && isCoded(mention) ? [{ column, mention }] : [];
  });
  const coloured = row.flatMap((read, column) => {
    const words = read?.items.filter((item) => item.colour) ?? [];
    return words.length >= 1 && read && onlyColour(read.items)
      ? [{ read, column, word: words.at(-1)!, first: words[0]! }]
      : [];
  });
  return coloured.flatMap(({ read, column, word }) => {
    const subject = coded.find((cell) => cell.column !== column);
    const header = grid.header[column]!;
    if (!subject || PACKING.test(header) || ANSWERED.test(header) || ofElse(header)) return [];
    if (grid.header.some((head) => OTHER_CODES.test(head))) return [];
    const device = deviceFor(grid, header, row, subject.mention);
    if (device === 'both') return [];
    return [colourClaim(subject.mention, read, word, device, rowSpan(row))];
  });
}

const isCoded = (mention: Mention) =>
  mention.sizes.length === 1 && ['needle-gauge', 'french'].includes(systemOf(mention));

/** A cell with a colour and shade words, nothing else of weight. */
const onlyColour = (items: readonly Item[]) =>
  items.filter((item) => item.colour).length === 1 &&
  items.filter((item) => item.kind === 'word').length <= 3 &&
  !items.some((item) => item.mention);

/** Which code a colour column follows: its own header, the row, the header of the size, the words above. */
function deviceFor(grid: Grid, header: string, row: Row, mention: Mention): Device | 'both' | undefined {
  return (
    codeOf(wordsOf(header)) ?? codeOfRow(row) ?? codeOfHeader(grid) ?? mention.device ?? codeOfWords(grid)
  );
}

const wordsOf = (text: string) => text.split(/[^a-z0-9-]+/).map((word) => ({ word }));
// Asked once a cell, so kept.
const codeOfRow = remembered((row: Row) => codeOf(row.flatMap((read) => read?.items ?? [])));
const codeOfHeader = remembered((grid: Grid) => codeOf(wordsOf(grid.header.join(' '))));
const codeOfWords = remembered((grid: Grid) => codeOf(wordsOf(grid.around)));

function colourClaim(
  mention: Mention,
  read: Read,
  word: Item,
  device: Device | undefined,
  span: Span,
): ColourClaim {
  return {
    kind: 'colour',
    construction: 'table-row',
    span,
    focus: sourceSpan(read.passage, { start: word.start, end: word.end }),
    size: operandOf(mention),
    colour: word.colour!,
    same: true,
    ...(device ? { device } : {}),
  };
}
