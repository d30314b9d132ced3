/** Sizes of one row against each other: "| 18 Fr | 6 mm |". */
import type { Mention } from '../../mentions/model.ts';
import type { Span } from '../../notes/model.ts';
import type { EquivalenceClaim, Operand } from '../model.ts';
import { materialsIn } from '../text/materials.ts';
import { remembered } from '../text/remember.ts';
import { STRUCK_HEADER } from '../text/struck-column.ts';
import { headed } from './colours.ts';
import { type Grid, MEASURES, operandOf, type Row, rowSpan, sole, soleMaterial, systemOf } from './grid.ts';
import { besideGut, NOT_GUT, strayGut, threadOf } from './threads.ts';

/** A header that says what is measured settles that it is no length. */
const ACROSS = /\b(?:diameter|o\.?d\.?|width|thickness|across|outer|outside)\b/;

/** What goes through or over the thing of the row is not its own width: "| 6 Fr | wire, mm |". */
const OTHER_THING = /\b(?:guide-?wires?|wires?|takes?|accepts?|fits?|balloons?|stents?)\b/;

/** Scales of their own, whose numbers stand beside ours: a dilator's, a glove's. */
const OTHER_SCALE = /\b(?:hegar|gloves?|zeros?|noughts?)\b/;

/** What goes with a thing, or through it, is another. */
const GOES_WITH =
  /\b(?:fits?|goes|passes|takes|accepts|used|pairs?|matches) (?:with|through|over|into|inside|down)\b|^\W*with\W*$/;

/** A tube under its own header is not the catheter or the drain of another column: "| Tube (mm) | Stomach tube (Fr) |". */
const TUBE = /\b(?:ett?|tubes?|trach\w*|endotracheal|airway|scope)\b/;

/** Words that a header of widths is made of; any other word says what else is measured: a bite, a gap, a channel. */
const WIDTH_WORDS = new Set(
  `outer outside external inner inside internal diameter diameters diam dia od id o d ø width widths across thickness thick wide bore lumen size sizes calibre caliber
  mm millimetre millimetres millimeter millimeters in inch inches metric usp ep french fr ch gauge g ga cm charrière charriere iso eur ph decimetric
  nominal about approx approximate approximately roughly equivalent equivalents equals equal conversion converted measure measured measures measurement real true actual exact
  range limit limits min max minimum maximum least most upper lower from to up and or of the a an its their at for by on per as number no value values figure rounded same
  cannula cannulas catheter catheters needle needles tube tubes suture sutures thread threads strand drain drains foley guidewire guidewires wire wires device line sheath hypodermic iv
  synthetic gut collagen chromic plain natural nylon silk polypropylene polyglactin polydioxanone usual typical standard wall thin regular tracheal endotracheal ett et tt trach sound scale system unit units mean average
  this that is are what how says gives works out comes one diameter's not`.split(/\s+/),
);

export const widthWord = (word: string): boolean => WIDTH_WORDS.has(word);

/** A header of millimetres that names something else than a width. */
const measuresElse = (header: string): boolean =>
  (header.toLowerCase().match(/\p{L}{3,}/gu) ?? []).some((word) => !WIDTH_WORDS.has(word));

/** The millimetres of such a row are the wound's or the vessel's. */
const OF_TISSUE = /\b(?:wounds?|lesions?|lacerations?|incisions?|vessels?|veins?)\b/;

/** A guidewire beside a catheter goes through it. */
const WIRE = /\bwires?\b/;

/** Millimetres of the needle beside a thread: "| 3-0 | needle, 22 mm |". */
const NEEDLE = /\bneedles?\b/;
const THREADS = new Set(['usp', 'ep-metric']);

type Role = 'outer' | 'bore' | 'length' | 'colour' | 'none';

const ROLES: readonly (readonly [RegExp, Role])[] = [
  [
    /\b(?:round|circumference|girth|perimeter|radius|wound|depth|insert|distance|height|volume|balloon|dose|mark|tip to|differ\w*|gap|margin)|^\W*(?:(?:wider|thicker|thinner|narrower|more|less) )?by\b|^\W*wall\b|\b(?:wall thickness|palm|sd|sem?)\b/,
    'none',
  ],
  [/\b(?:inner|inside|internal|bore|lumen|i\.?d\.?)\b/, 'bore'],
  [/\b(?:needle length|length|long)\b/, 'length'],
  [/\b(?:colou?rs?|hub|valve colou?r|funnel|code)\b/, 'colour'],
  [
    /\b(?:outer|outside|external|diameter|o\.?d\.?|ø|mm|millimet(?:re|er)s?|inch(?:es)?|thickness|across|width|how (?:wide|thick|broad|big|large)|metric|usp|french|fr|gauge|ch|size|ep|in)\b|″/,
    'outer',
  ],
];

const roleOf = (header: string): Role =>
  STRUCK_HEADER.test(header) ? 'none' : (ROLES.find(([pattern]) => pattern.test(header))?.[1] ?? 'none');

/** "0.89 mm across": the cell says itself what it measures, whatever stands above it. */
const saysWidth = (read: Row[number]): boolean =>
  read !== undefined &&
  read.items.length <= 4 &&
  /\b(?:across|wide|thick|in diameter|outside)\b/.test(read.passage.text);
const roleIn = (header: string, read: Row[number]): Role => {
  const role = roleOf(header);
  // "metric 5": the cell says itself what it is.
  if (!STRUCK_HEADER.test(header) && METRIC.test(read?.passage.text ?? '')) return 'outer';
  return role === 'none' && !STRUCK_HEADER.test(header) && saysWidth(read) && GENERAL.test(header)
    ? 'outer'
    : role;
};
const METRIC = /^\W*(?:metric|ep) \d(?:\.\d{1,2})?\W*$/i;
const GENERAL =
  /^\W*(?:what (?:it|that|this) (?:means|is)|meaning|in words|notes?|remarks?|facts?|comments?|details?|also|extra|info(?:rmation)?|(?:also )?(?:worth knowing|good to know|worth remembering|to remember)|(?:what )?(?:else|more)(?: to know)?|that is|means|says)\W*$/;

/** The row's own size (its first cell with one) against every measure of the row. */
export function equivalences(grid: Grid, row: Row): EquivalenceClaim[] {
  if (grid.header.some((header) => OF_TISSUE.test(header))) return [];
  const cells = row.map((read, column) => cellOf(grid, read, column));
  const twice = twiceMeasured(cells);
  const subject =
    twice ??
    cells.find((cell) => cell.mention && !MEASURES.has(systemOf(cell.mention)) && cell.role !== 'length') ??
    cells.find((cell) => cell.mention && cell.role === 'outer');
  if (!subject?.mention) return [];
  const place = cells.indexOf(subject);
  const material = soleMaterial(row) ?? (named(row) ? undefined : threadOf(grid));
  const stray = !named(row) && strayGut(grid) ? { material: NOT_GUT } : {};
  return cells.flatMap((cell, column) => {
    if (
      !cell.mention ||
      cell === subject ||
      systemOf(cell.mention) === systemOf(subject.mention!) ||
      (cell.mention.length && !ACROSS.test(grid.header[column]!) && !narrow(cell.mention, subject.mention!))
    )
      return [];
    if (cell.role !== 'outer' && cell.role !== 'bore') return [];
    if (row.some((read, other) => other > place && other < column && isThing(read))) return [];
    if (THREADS.has(systemOf(subject.mention!)) && NEEDLE.test(grid.header[column]!)) return [];
    if (systemOf(subject.mention!) === 'french' && WIRE.test(grid.header[column]!)) return [];
    if (MEASURES.has(systemOf(cell.mention)) && !saysWidth(cell.read) && measuresElse(grid.header[column]!))
      return [];
    const own = grid.header[place] ?? '';
    if (
      TUBE.test(grid.header[column]!) &&
      own.trim() !== '' &&
      !TUBE.test(own.replace(/\(.*/, '')) &&
      /^\W*(?:fr|french|ch|g|gauge)\W/.test(`${own} `)
    )
      return [];
    if (
      OTHER_THING.test(grid.header[column] ?? '') &&
      !OTHER_THING.test(own) &&
      systemOf(subject.mention!) !== 'wire-inch'
    )
      return [];
    if (!comparable(systemOf(subject.mention!), systemOf(cell.mention))) return [];
    if (twice && !MEASURES.has(systemOf(cell.mention))) return [];
    const other = besideGut(grid, column, place) ? { material: NOT_GUT } : stray;
    // "Cannula OD, mm" beside "Needle, mm": each is of the thing its header names.
    const device = systemOf(subject.mention!) === 'needle-gauge' ? devicesHeaded(grid)[column] : undefined;
    const left = {
      ...operandOf(subject.mention!, material),
      ...other,
      ...(cell.headed && { material: cell.headed }),
      ...(device && { device }),
    };
    const right = { ...operandOf(cell.mention, cell.headed ?? material), ...other };
    return [equivalence(left, right, cell.role, rowSpan(row))];
  });
}

/** "0.018-inch wire" between a needle and a diameter: the diameter is the wire's. */
function isThing(read: Row[number]): boolean {
  const items = read?.items ?? [];
  return items.some(({ kind }) => kind === 'size') && items.some(({ deviceNoun }) => deviceNoun === true);
}

/** What a cell measures, and the size in it that may be compared. */
function cellOf(grid: Grid, read: Row[number], column: number) {
  const header = grid.header[column]!;
  const another = OTHER_SCALE.test(header) || GOES_WITH.test(header) || saidAgain(grid, column);
  return {
    mention: another ? undefined : sole(read),
    role: roleIn(header, read),
    headed: soleMaterial([grid.heads[column]]),
    read,
  };
}

/** Two columns headed alike, as "mm" behind each of two materials: the second is told of what stands before it. */
const saidAgain = (grid: Grid, column: number): boolean => repeats(grid)[column] === true;
const repeats = remembered(({ header }: Grid) => {
  const seen = new Set<string>();
  return header.map((head) => {
    const again = head.trim() !== '' && seen.has(head);
    seen.add(head);
    return again;
  });
});

/** The thing that each header names, asked once a table. */
const devicesHeaded = remembered(({ header }: Grid) => header.map(headed));

/** Does the row name any material? */
const named = (row: Row): boolean =>
  row.some((read) => read !== undefined && materialsIn(read.items).length > 0);

/** "0.035 in | 0.89 mm | 18 G": a row that opens with one thing in two units; the gauge is that of another. */
function twiceMeasured<Cell extends { readonly mention: Mention | undefined; readonly role: Role }>(
  cells: readonly Cell[],
): Cell | undefined {
  const [a, b] = cells.filter((cell) => cell.mention);
  const measured = (cell: Cell | undefined) =>
    cell?.mention !== undefined && cell.role !== 'length' && MEASURES.has(systemOf(cell.mention));
  return measured(a) && measured(b) && systemOf(a!.mention!) !== systemOf(b!.mention!) ? a : undefined;
}

/** A few millimetres beside a French size are its width, whatever else a length may be. */
const narrow = (measure: Mention, of: Mention): boolean => {
  const { system, value } = measure.sizes[0]!;
  return systemOf(of) === 'french' && (system === 'millimetre' ? value : value * 25.4) < 21;
};

/** A measure says any size; USP and metric numbers say each other. A gauge beside a French is two things, not one. */
const comparable = (a: string, b: string) =>
  MEASURES.has(a) ||
  MEASURES.has(b) ||
  (['usp', 'ep-metric'].includes(a) && ['usp', 'ep-metric'].includes(b));

/** A size of a row and a measure of it. */
export function equivalence(
  left: Operand,
  right: Operand,
  role: 'outer' | 'bore',
  span: Span,
): EquivalenceClaim {
  return {
    kind: 'equivalence',
    construction: 'table-row',
    span,
    focus: right.span,
    left,
    right,
    approximate: right.mentions.some((mention) => mention.approximate === true),
    axis: role,
  };
}
