/** Hub colours in a row: "| 18 G | green |". */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import { type ColourCode, colourFits } from '../../sizes/index.ts';
import type { Device } from '../../sizes/model.ts';
import type { ColourClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { remembered } from '../text/remember.ts';
import type { Read } from '../text/scenes.ts';
import { codeOf } from '../words/codes.ts';
import { type Grid, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';

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
export const codeWord = (word: string): boolean => CODE_WORDS.has(word);
/** "Candidate should say": the right answer, whoever gives it. */
const SHOULD_SAY =
  /\b(?:should|must|has to|have to|ought to|needs? to|expected to|wanted to) (?:say|answer|name|reply|tell|give|call out)\b/;
const ofElse = (header: string): boolean =>
  !SHOULD_SAY.test(header) &&
  (header.toLowerCase().match(/\p{L}{3,}/gu) ?? []).some((word) => !CODE_WORDS.has(word));

/** Where colours sort blood tubes, patients or children, they are no hub's. */
const OTHER_CODES =
  /\b(?:tube tops?|additives?|triage|zones?|bands?|wristbands?|urine|skin|ecg|masks?|kg|weights?|broselow)\b/;

const ofOthers = remembered((grid: Grid) => grid.header.some((head) => OTHER_CODES.test(head)));

/** "yellow hub" under "Remark": the cell says itself whose colour it is. */
const HUB = /^(?:hubs?|hubbed|wings?|funnels?|valve)$/;
const REMARKS =
  /^\W*(?:also\b.*|remarks?|notes?|comments?|details?|facts?|extra|info|worth knowing|good to know)\W*$/i;

/** "Q2" at the head of a column: what somebody answered. */
const ANSWERED = /^\W*q(?:uestion)?\W?\d/;

/** A colour cell beside the row's one gauge or French. */
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
  // A row of many colours has none that is told of each size.
  const each = coloured.length === 1 && coded.length < MOST_HEADED ? ofEach(grid, coded) : [];
  return coloured.flatMap(({ read, column, word }) => {
    const subject = coded.find((cell) => cell.column !== column);
    const header = grid.header[column]!;
    if (!subject || PACKING.test(header) || ANSWERED.test(header)) return [];
    if (
      ofElse(header) &&
      !ofDevice(grid, row, header) &&
      !(REMARKS.test(header) && read.items.some((item) => HUB.test(item.word)))
    )
      return [];
    if (ofOthers(grid)) return [];
    if (each.length > 1)
      return each.map((cell) => colourClaim(cell.mention, read, word, cell.device, rowSpan(row)));
    const device =
      codeOf(wordsOf(header)) ??
      headed(grid.header[subject.column]) ??
      named(row[subject.column]) ??
      followed(grid, column, subject.column) ??
      deviceFor(grid, row, subject.mention);
    if (device === 'both') return [];
    return [colourClaim(subject.mention, read, word, device, rowSpan(row))];
  });
}

/** "Colour or metric", "Needle hub (our list)": colours of the device that the row or the header names. */
const ofDevice = (grid: Grid, row: Row, header: string): boolean =>
  /\bhubs?\b/.test(header)
    ? (codeOfHeader(grid) ?? 'both') !== 'both'
    : /\bcolou?rs?\b/.test(header) && (codeOfRow(row) ?? 'both') !== 'both';

/** There are not more things with a code of their own. */
const MOST_HEADED = 6;

/** "| Colour | Needle | Cannula |": a size of each under its own head. */
function ofEach(grid: Grid, coded: readonly { column: number; mention: Mention }[]) {
  const own = coded.flatMap(({ column, mention }) => {
    const head = grid.header[column] ?? '';
    const device = THROUGH.test(head) ? undefined : headed(head);
    return device && systemOf(mention) === 'needle-gauge' ? [{ mention, device }] : [];
  });
  return own.length === coded.length && new Set(own.map(({ device }) => device)).size === own.length
    ? own
    : [];
}

/** "Catheter through it": what goes with the other, and has no colour in this row. */
const THROUGH = /\b(?:through|inside|into|over|fits?|passes|takes|accepts|goes)\b/i;

/** "Needle" above the sizes says whose they are, whatever else the row speaks of. */
export const headed = (header: string | undefined): Device | undefined => {
  const code = codeOf(wordsOf(header ?? ''));
  return code === 'both' ? undefined : code;
};

/** "21 G needle": the cell of the size says whose it is. */
const named = (read: Read | undefined): Device | undefined => {
  const code = codeOf(read?.items ?? []);
  return code === 'both' ? undefined : code;
};

const isCoded = (mention: Mention) =>
  mention.sizes.length === 1 && ['needle-gauge', 'french'].includes(systemOf(mention));

/** A cell with a colour and shade words, nothing else of weight. */
const onlyColour = (items: readonly Item[]) =>
  items.filter((item) => item.colour).length === 1 &&
  items.filter((item) => item.kind === 'word').length <= 3 &&
  !items.some((item) => item.mention || OTHER_THING.test(item.word));
/** "red tap": the colour of what is put on it. */
const OTHER_THING = /^(?:taps?|stopcocks?|stickers?|labels?|lids?|clamps?|clips?|tapes?)$/;

/** Which code a colour follows: the row's, that of the header of the size, of the words above. */
function deviceFor(grid: Grid, row: Row, mention: Mention): Device | 'both' | undefined {
  return (
    codeOfRow(row) ??
    codeOfHeader(grid) ??
    // A gauge with nothing beside it is taken for a needle's: what the table stands under says more.
    (mention.device === 'needle' ? (codeOfWords(grid) ?? mention.device) : mention.device) ??
    codeOfWords(grid)
  );
}

/** The code of gauges that most rows of a column follow, where the other hardly fits any: a calf's drip may stand among needles. */
const ENOUGH = 3;

function followed(grid: Grid, column: number, sized: number): Device | undefined {
  const [needles, cannulas] = votes(grid)[column] ?? [0, 0];
  if (sized < 0 || Math.max(needles, cannulas) < ENOUGH || Math.min(needles, cannulas) > 1) return undefined;
  return needles > cannulas ? 'needle' : 'cannula';
}

/** The first gauge that stands alone in a cell. Asked once a cell, so kept. */
const gaugeIn = remembered((row: Row) =>
  row.map(sole).find((one) => one !== undefined && systemOf(one) === 'needle-gauge'),
);

/** How many rows of each column give a gauge the colour of its needle, and of its cannula. */
const votes = remembered((grid: Grid): readonly (readonly [number, number])[] =>
  grid.header.map((_, column) => {
    const pairs = grid.rows.flatMap((row) => {
      const words = row[column]?.items.filter((item) => item.colour) ?? [];
      const mention = gaugeIn(row);
      return words.length === 1 && mention && mention.sizes.length === 1
        ? [{ gauge: mention.sizes[0]!.value, colour: words[0]!.colour! }]
        : [];
    });
    const fitting = (code: ColourCode) =>
      pairs.filter(({ gauge, colour }) => colourFits(code, gauge, colour) === true).length;
    return [fitting('ISO 6009'), fitting('ISO 10555-5')] as const;
  }),
);

const wordsOf = (text: string) => text.split(/[^a-z0-9-]+/).map((word) => ({ word }));
// What is asked once a cell is kept. "Calf drip" says what it is for, not which hub it has.
const codeOfRow = remembered((row: Row) =>
  codeOf(row.flatMap((read) => read?.items ?? []).filter(({ word }) => !/^(?:drip|infusion)$/.test(word))),
);
const codeOfHeader = remembered((grid: Grid) => codeOf(wordsOf(grid.header.join(' '))));
const codeOfWords = remembered((grid: Grid) => codeOf(wordsOf(grid.around)));

/** The size of a cell has the colour that a word of the row names. */
export function colourClaim(
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
