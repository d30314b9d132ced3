/** Materials and their properties in a row or under a header. */
import { sourceSpan } from '../../notes/index.ts';
import type { PropertyClaim } from '../model.ts';
import { readItems } from '../text/items.ts';
import { materialsIn } from '../text/materials.ts';
import { strandsAt } from '../text/qualities.ts';
import type { Read } from '../text/scenes.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { fateIn } from '../words/fates.ts';
import { PROPERTY_WORDS } from '../words/properties.ts';
import { type Grid, type Row, rowSpan, soleMaterial } from './grid.ts';

const YES = /^(?:yes|y|✓|✔|true)$/;
const NO = /^(?:no|n|✗|✘|false|—|-)$/;
/** A material in the first cell, its properties in the others. */
export function properties(grid: Grid, row: Row): PropertyClaim[] {
  const subject = soleMaterial(row);
  if (!subject) return [];
  return row.slice(1).flatMap((read, i) => {
    if (
      !read ||
      read.passage.text.length === 0 ||
      materialsIn(read.items).length > 0 ||
      STRUCK_HEADER.test(grid.header[i + 1]!)
    )
      return [];
    return propertyCell(grid.header[i + 1]!, read).map((property) => ({
      kind: 'property' as const,
      construction: 'table-row',
      span: rowSpan(row),
      focus: sourceSpan(read.passage, { start: 0, end: read.passage.text.length }),
      subject,
      of: 'material' as const,
      property,
      has: true,
    }));
  });
}

/** A material in a column that is headed by a property and nothing else. */
export function headedMaterials(grid: Grid, row: Row): PropertyClaim[] {
  return row.flatMap((read, column) => {
    const header = readItems(grid.header[column]!, []);
    const asked = header.flatMap((item) => PROPERTY_WORDS.get(item.word) ?? []);
    const plain = header.every(
      (item) => PROPERTY_WORDS.has(item.word) || /^(?:sutures?|threads?|materials?)$/.test(item.word),
    );
    const named = read ? materialsIn(read.items) : [];
    if (!read || asked.length !== 1 || !plain || named.length !== 1) return [];
    const words = read.items.filter((item) => item.kind === 'word').length;
    if (words > named[0]!.to - named[0]!.at + 1) return [];
    return [
      {
        kind: 'property',
        construction: 'table-row',
        span: rowSpan(row),
        focus: sourceSpan(read.passage, { start: 0, end: read.passage.text.length }),
        subject: named[0]!.id,
        of: 'material',
        property: `${asked[0]!.property}:${asked[0]!.value}`,
        has: true,
      } satisfies PropertyClaim,
    ];
  });
}

function propertyCell(header: string, read: Read): string[] {
  const fate = fateIn(read.items.map((item) => item.word).join(' ')) ?? shortFate(read);
  if (fate) return [typeof fate === 'string' ? fate : fate.property];
  const text = read.passage.text.trim().toLowerCase();
  const strands = strandsIn(header, text);
  if (strands) return [strands];
  const gone = goneOrNot(header, text);
  if (gone) return [gone];
  const asked = [...readItems(header, [])].flatMap((item) => PROPERTY_WORDS.get(item.word) ?? []);
  if (asked.length === 1 && (YES.test(text) || NO.test(text))) {
    const row = asked[0]!;
    if (row.property !== 'absorbable') return YES.test(text) ? [`${row.property}:${row.value}`] : [];
    return [`absorbable:${YES.test(text) === (row.value === 'yes') ? 'yes' : 'no'}`];
  }
  const words = leading(read);
  const built = read.items.flatMap((_, i) => strandsAt(read.items, i) ?? []);
  if (built.length === 1 && words.length <= 4) return [`${built[0]!.property}:${built[0]!.value}`];
  if (words.length > 3 || words.some((item) => ['not', 'or', 'and'].includes(item.word))) return [];
  return words.flatMap((item) => {
    const row = PROPERTY_WORDS.get(item.word);
    return row ? [`${row.property}:${row.value}`] : [];
  });
}

/** "non-absorbable, so remove it": the words up to the first mark, where they say a property and nothing else. */
function leading(read: Read): readonly Read['items'][number][] {
  const words = read.items.filter((item) => item.kind === 'word');
  const mark = read.items.findIndex((item) => /^[,;:(–—]$/.test(item.word));
  const first = read.items.slice(0, Math.max(mark, 0));
  const said = first.length > 0 && first.length <= 2 && first.every((item) => PROPERTY_WORDS.has(item.word));
  return said && words.length > 3 && !read.items.some((item) => TURNS.test(item.word)) ? first : words;
}
const TURNS = /^(?:but|unless|except|not|never|although|though|or|until)$/;

/** "single strand", "one" under "Filaments". */
function strandsIn(header: string, text: string): string | undefined {
  const counted = /^(?:number of )?(?:strands?|filaments?)\W*$/.test(header.trim());
  const match =
    /^(?:a |of )?(single|one|1|many|several|multiple|lots of)(?: (?:strands?|filaments?|fibres?|fibers?|threads?))?$/.exec(
      text,
    );
  if (!match || (!counted && !/(?:strand|filament)s?$/.test(text))) return undefined;
  return /^(?:single|one|1)$/.test(match[1]!) ? 'structure:monofilament' : 'structure:multifilament';
}

/** "Goes away? | yes, in about six weeks": yes or no to that, or how long it takes. */
function goneOrNot(header: string, text: string): string | undefined {
  const asked = readItems(header, []).flatMap((item) => PROPERTY_WORDS.get(item.word) ?? []);
  const stays = asked.length === 1 && asked[0]!.property === 'absorbable' && asked[0]!.value === 'no';
  const goes = GONE.test(header) || (asked.length === 1 && asked[0]!.property === 'absorbable' && !stays);
  if (!goes && !stays) return undefined;
  if (goes && SOON.test(text)) return 'absorbable:yes';
  const said = /^(yes|no)\s?[,;:(–—-]\s?(.*)$/.exec(text);
  if (!said || /\b(?:but|except|not|never|until|unless|partly|depends|or)\b/.test(said[2]!)) return undefined;
  return `absorbable:${(said[1] === 'yes') === goes ? 'yes' : 'no'}`;
}

/** "Gone after | 8 weeks": a thread that is gone within half a year absorbs. */
const GONE =
  /\b(?:gone|absorbed|dissolved|dissolves?|disappears?|absorbs?|goes? away|goes)\b(?: (?:after|by|in|within|at))?\W*$/;
const SOON =
  /^(?:about |around |roughly |within |in |after )?\d{1,2}(?: ?[-–—] ?\d{1,2}| to \d{1,2})? ?(?:days?|weeks?|wk)$/;

/** "never, it absorbs": a verb alone is enough in a cell. */
function shortFate(read: Read): string | undefined {
  const words = read.items.filter((item) => item.kind === 'word').map((item) => item.word);
  // "not needed, dissolves"
  const needless = /^(?:not (?:needed|necessary|required|removed)|none|no need|nil|leave|left)\b/.test(
    words.join(' '),
  );
  if (words.length > 4 || (words.includes('not') && !needless)) return undefined;
  return words.some((word) => /^(?:absorbs|dissolves|resorbs)$/.test(word)) ? 'absorbable:yes' : undefined;
}
