/**
 * What a cell says of its row in other ways: a gauge with its colour in one cell beside the name of the thing, a word of
 * comparison under "compared with the last", another way to write a thread.
 */
import type { Mention } from '../../mentions/model.ts';
import type { Claim, ColourClaim, ComparisonClaim, EquivalenceClaim } from '../model.ts';
import { readItems } from '../text/items.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { remembered } from '../text/remember.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { NEGATIONS } from '../words/changes.ts';
import { codeOf } from '../words/codes.ts';
import { colourClaim } from './colours.ts';
import { claim, relationOf } from './compared.ts';
import { type Grid, isData, MEASURES, operandOf, type Row, rowSpan, sole, systemOf } from './grid.ts';
import { equivalence } from './values.ts';

export function looseRows(grid: Grid): Claim[] {
  if (isData(grid)) return [];
  return grid.rows.flatMap((row, r) => [
    ...beside(grid, row),
    ...sameAs(grid, row),
    ...besideLast(grid, row, grid.rows[r - 1], grid.rows[r + 1]),
    ...headedThan(grid, row),
    ...nextOne(grid, row),
    ...opposed(grid, row),
    ...mostOf(grid, row),
    ...parted(grid, row),
    ...inOtherUnit(row, grid.rows[r - 1]),
  ]);
}

/** Colours of what a thing is kept in, or of what is put on it. */
const ELSEWHERE =
  /^(?:box|boxes|packets?|packs?|trays?|lids?|drawers?|stickers?|labels?|bags?|bins?|tape|taps?|stopcocks?|clamps?|or|not|never|than)$/;
const FEW = 7;

/** "| IV cannula | 18 G, pink |": the row says whose gauge and colour they are. */
function beside(grid: Grid, row: Row): ColourClaim[] {
  return row.flatMap((read, column) => {
    const words = read?.items ?? [];
    const coloured = words.filter((item) => item.colour);
    const mention = sole(read);
    if (!read || !mention || coloured.length !== 1 || words.length > FEW || mention.sizes.length !== 1)
      return [];
    if (systemOf(mention) !== 'needle-gauge' || STRUCK_HEADER.test(grid.header[column]!)) return [];
    if (words.some((item) => ELSEWHERE.test(item.word)) || codeOf(words)) return [];
    const device = codeOf(row.flatMap((cell) => (cell === read ? [] : (cell?.items ?? []))));
    if (!device || device === 'both') return [];
    return [colourClaim(mention, read, coloured[0]!, device, rowSpan(row))];
  });
}

const SAME =
  /^\W*(?:(?:is |the )?same (?:as|size as|thing as|thread as)|equals?|equal to|also (?:written|called|known as)|means|other (?:name|way|writing)|stands for|read (?:it )?as|=)\W*$/;

/** "| 00 | 2-0 |" under "Same as": two ways to write one thread. */
function sameAs(grid: Grid, row: Row): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const [left, right] = [sole(row[column - 1]), sole(read)];
    if (!read || !left || !right || !SAME.test(grid.header[column]!)) return [];
    if (systemOf(left) !== 'usp' || systemOf(right) !== 'usp' || left.sizes.length + right.sizes.length > 2)
      return [];
    return [claim(row, read, left, right, 'outer', 'same')];
  });
}

const LAST =
  /\b(?:compared|relative|against|next|beside|vs|versus|than)\b.*\b(?:last|previous|above|before|one up)\b|^\W*(?:than|from) (?:the )?(?:last|previous|row above|one above|one before)\W*$/;
const NEXT = /\b(?:compared|relative|against|than)\b.*\b(?:next|below|following|after)\b/;

/** "| 12 Fr | slimmer |" under "Compared with the last". */
function besideLast(
  grid: Grid,
  row: Row,
  before: Row | undefined,
  after: Row | undefined,
): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const header = grid.header[column]!;
    const other = LAST.test(header) ? before : NEXT.test(header) ? after : undefined;
    const word = other && (wordOf(read, 'comparative', FEW_WORDS) ?? moreOf(read, header));
    const [own, mention] = [sizeIn(row), other && sizeIn(other)];
    if (!read || !own || !mention || !word || systemOf(own) !== systemOf(mention)) return [];
    return [claim(row, read, own, mention, word.axis, relationOf(word))];
  });
}

/** "less" under "Flow against the row above": the header says of what. */
function moreOf(read: Row[number], header: string): Pick<Measured, 'axis' | 'sign'> | undefined {
  const said = /^\W*(?:much |slightly |a (?:little|bit) )?(more|less|higher|lower|up|down)\W*$/i.exec(
    read?.passage.text ?? '',
  )?.[1];
  const nouns = readItems(header, []).flatMap(({ axisNoun }) => axisNoun ?? []);
  const [noun] = nouns;
  if (!said || !noun || nouns.length > 1 || !decidable(noun.axis)) return undefined;
  const more = /^(?:more|higher|up)$/i.test(said) ? 1 : -1;
  return { axis: noun.axis, sign: (more * noun.sign) as 1 | -1 };
}

/** The one word of such a degree in a cell that says little else. */
function wordOf(read: Row[number], degree: Measured['degree'], most: number): Measured | undefined {
  if (!read || read.items.length > most) return undefined;
  const [word, ...more] = measuredWords(read.items);
  if (!word || more.length > 0 || word.degree !== degree || !decidable(word.axis) || word.idiom)
    return undefined;
  return read.items.some((item) => item.kind === 'size' || NEGATIONS.has(item.word)) ? undefined : word;
}
const FEW_WORDS = 5;

/** "| 3-0 | thicker |" under "Finer or thicker than 4-0". */
function headedThan(grid: Grid, row: Row): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const head = grid.heads[column];
    const other = sole(head);
    const word = other && (wordOf(read, 'comparative', FEW_WORDS) ?? askedIn(head, read));
    if (!read || !word || !head?.items.some((item) => THAN.test(item.word))) return [];
    const own = row
      .flatMap((cell, c) => (c === column ? [] : (sole(cell) ?? [])))
      .find((one) => systemOf(one) === systemOf(other));
    return !own || own.sizes[0]!.value === other.sizes[0]!.value
      ? []
      : [claim(row, read, own, other, word.axis, relationOf(word))];
  });
}
/** "no" under "Thinner than 3-0?": on the other side. */
function askedIn(head: Row[number], read: Row[number]): Pick<Measured, 'axis' | 'sign'> | undefined {
  const said = /^\W*(yes|no|✓|✔|✗|✘)\W*$/i.exec(read?.passage.text ?? '')?.[1]?.toLowerCase();
  const words = measuredWords(head?.items ?? []).filter((m) => m.degree === 'comparative' && !m.idiom);
  const [word, ...more] = words;
  if (!said || !word || more.length > 0 || !decidable(word.axis)) return undefined;
  if (head!.items.some((item) => NEGATIONS.has(item.word))) return undefined;
  const sign = /^(?:yes|✓|✔)$/.test(said) ? word.sign : -word.sign;
  return { axis: word.axis, sign: sign as 1 | -1 };
}
const THAN = /^(?:than|to|with|against)$/;

const NEXT_ONE =
  /^\W*(?:the )?(?:next|one)(?: (?:one|size|step))?(?: (?:up|down|(?:size )?(?:above|below)))?\b|^\W*(?:the )?\w+er (?:neighbour|one|size|alternative)\W*$/;

/** "| Foley | 14 Fr | 16 Fr |" under "Next one up", "Next thinner". */
function nextOne(grid: Grid, row: Row): ComparisonClaim[] {
  return row.flatMap((read, column) => {
    const header = grid.header[column]!;
    const other = sole(read);
    if (!read || !other || !NEXT_ONE.test(header)) return [];
    const own = row
      .slice(0, column)
      .flatMap((cell) => sole(cell) ?? [])
      .find((one) => systemOf(one) === systemOf(other));
    const said = measuredWords(readItems(header, [])).filter((m) => decidable(m.axis) && !m.idiom);
    const [word, ...more] = said;
    const sign = word?.sign ?? (NUMBERED.has(systemOf(other)) ? stepIn(header) : undefined);
    if (!own || !sign || more.length > 0) return [];
    return [claim(row, read, other, own, word?.axis ?? 'outer', relationOf({ sign }))];
  });
}
/** "Next one up", "one below". */
function stepIn(header: string): 1 | -1 | undefined {
  if (/\b(?:up|above)\b/.test(header)) return 1;
  return /\b(?:down|below)\b/.test(header) ? -1 : undefined;
}
/** Scales on which up is a larger number and a larger size. */
const NUMBERED: ReadonlySet<string> = new Set(['french', 'millimetre', 'tube-id', 'inch']);

/** "| Smaller | Larger |", "| Thin suture | Thick suture |": the two sizes of each row. */
function opposed(grid: Grid, row: Row): ComparisonClaim[] {
  if (grid.header.length !== 2 || grid.header.some((header) => STRUCK_HEADER.test(header))) return [];
  const [a, b] = grid.heads.map((head) => {
    const words = measuredWords(head?.items ?? []);
    return words.length === 1 && head!.items.length <= 4 && decidable(words[0]!.axis) && !words[0]!.idiom
      ? words[0]
      : undefined;
  });
  const [left, right] = [sole(row[0]), sole(row[1])];
  if (!a || !b || a.sign === b.sign || a.axis !== b.axis || a.degree !== b.degree || !left || !right)
    return [];
  if (systemOf(left) !== systemOf(right) || left.sizes.length + right.sizes.length > 2) return [];
  return [claim(row, row[1]!, left, right, a.axis, relationOf(a))];
}

/** "| Guidewire | 0.035 inch |", and below it "| Guidewire in mm | 3.5 mm |". */
function inOtherUnit(row: Row, before: Row | undefined): EquivalenceClaim[] {
  const [label, value] = row;
  const unit = IN_UNIT.exec(label?.passage.text.toLowerCase() ?? '');
  if (!before || row.length !== 2 || !label || !unit) return [];
  const above = new Set(before[0]?.items.map(({ word }) => word));
  const own = label.items.filter(({ start, word }) => start < unit.index && !SAME_THING.test(word));
  const [left, right] = [sole(before[1]), sole(value)];
  if (
    !left ||
    !right ||
    left.sizes.length + right.sizes.length > 2 ||
    !own.every(({ word }) => above.has(word))
  )
    return [];
  const systems = [left, right].map(systemOf);
  return systems[0] === systems[1] || !systems.some((system) => MEASURES.has(system))
    ? []
    : [equivalence(operandOf(left), operandOf(right), 'outer', rowSpan(row))];
}
const IN_UNIT = /(?:\b(?:in|as)|[,(]) (?:mm|millimet(?:re|er)s?|inch(?:es)?|metric)\W*$/;
const SAME_THING = /^(?:the|same|that|this|it|its|and|again|,|outside|outer|width|diameter)$/;

const OF_ALL =
  /\b(?:of (?:the|these|all|them|our|those)(?: \w+)?|here|in (?:the|this) (?:table|list)|on (?:the|this) list)\b/;

/** "| 18 Fr | narrowest of the three |": against the sizes of the other rows. */
function mostOf(grid: Grid, row: Row): ComparisonClaim[] {
  const own = sizeIn(row);
  const others = grid.rows.flatMap((other) => (other === row ? [] : [sizeIn(other)]));
  if (!own || others.length < 1 || others.length > 12) return [];
  if (others.some((one) => !one || systemOf(one) !== systemOf(own))) return [];
  return row.flatMap((read, column) => {
    const word = wordOf(read, 'superlative', FEW);
    if (!read || !word) return [];
    const text = read.passage.text.toLowerCase();
    const count = COUNTS.findIndex((one) => text.includes(`the ${one}`));
    if (
      STRUCK_HEADER.test(grid.header[column]!) ||
      !OF_ALL.test(text) ||
      (count >= 0 && count !== others.length + 1)
    )
      return [];
    return others.flatMap((other) =>
      other!.sizes[0]!.value === own.sizes[0]!.value
        ? []
        : [claim(row, read, own, other!, word.axis, relationOf(word))],
    );
  });
}
const COUNTS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

/** "pink, thinner than an 18 G": a part of a cell that compares the row's size. */
function parted(grid: Grid, row: Row): ComparisonClaim[] {
  const own = row.slice(0, 3).flatMap((cell) => sole(cell) ?? [])[0];
  return row.flatMap((read, column) => {
    const other = sole(read);
    const than = read?.items.findIndex((item) => item.word === 'than') ?? -1;
    const words = measuredWords(read?.items ?? []).filter((m) => m.degree === 'comparative');
    const [word] = words;
    if (!read || !own || !other || own === other || words.length !== 1 || !word || than !== word.to + 1)
      return [];
    if (word.at < 2 || !/^[,;:—–(]$/.test(read.items[word.at - 1]!.word) || systemOf(own) !== systemOf(other))
      return [];
    if (
      !decidable(word.axis) ||
      word.idiom ||
      STRUCK_HEADER.test(grid.header[column]!) ||
      read.items.length > 14
    )
      return [];
    if (read.items.some((item) => NEGATIONS.has(item.word) || item.word === '?')) return [];
    return [claim(row, read, own, other, word.axis, relationOf(word))];
  });
}

/** The one size of a row. Asked once a cell, so kept. */
const sizeIn = remembered((row: Row): Mention | undefined => {
  const every = row.flatMap((read) => read?.items.flatMap((item) => item.mention ?? []) ?? []);
  const all = every.filter((mention) => !MEASURES.has(systemOf(mention)));
  const [only] = all;
  return all.length === 1 && only?.kind === 'size' && !only.bound && only.sizes.length === 1
    ? only
    : undefined;
});
