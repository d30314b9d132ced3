/**
 * Sizes side by side, to scale, as an SVG picture. It brings its own light card and dark ink, so it reads the same on
 * light, dark and high-contrast backgrounds; what is stressed is also bold, never told by colour alone.
 */
import { type Locale, quote, say, tell } from '../texts/index.ts';
import { innerDiameter, outerDiameter } from './diameter.ts';
import { label } from './format.ts';
import { mmText } from './interval.ts';
import type { Interval, Lens, Size } from './model.ts';
import { PICTURE } from './texts/picture.ts';

export interface Drawn {
  readonly size: Size;
  readonly lens?: Lens;
  /** Stressed: the size asked about, among its neighbours. */
  readonly stressed?: boolean;
  /** Shown instead of the size's label; any text. */
  readonly caption?: string;
}

export interface Picture {
  readonly svg: string;
  /** The same in words, for those who do not see it. */
  readonly alternative: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

interface Column {
  readonly caption: string;
  readonly measure: string;
  readonly stressed: boolean;
  readonly interval: Interval;
  /** Drawn as a hole: the size gives the inside. */
  readonly hollow: boolean;
}

const LARGEST = 72;
const PADDING = 10;
const GAP = 14;
const LINE = 15;
/** Average advance of a sans-serif letter at 12 px; wide enough that captions never touch. */
const LETTER = 7;
/** A thread of less than a pixel could not be seen; it is drawn this wide and said so. */
const THINNEST = 1;

export const INK = '#1a1a1a';
export const CARD = '#ffffff';
export const STRESSED = '#0b5394';
export const OTHER = '#6b6b6b';

/** The picture, or undefined when no size of the list has a diameter. Sizes without one are left out. */
export function drawSizes(items: readonly Drawn[], locale?: Locale): Picture | undefined {
  const columns = items.flatMap((item) => columnOf(item, locale) ?? []);
  if (columns.length === 0) return undefined;
  const widest = Math.max(...columns.map((c) => c.interval.max));
  const scale = LARGEST / widest;
  const widths = columns.map((c) => columnWidth(c, scale));
  const base = PADDING + LARGEST;
  const height = base + 3 * LINE + PADDING * 2;
  const tooThin = columns.some((c) => c.interval.min * scale < THINNEST);
  const width = cardWidth(widths, tooThin);
  const alternative = inWords(columns, locale);
  const body = [...place(columns, widths, scale, base), scaleBar(widest, height - PADDING, tooThin, locale)];
  return { svg: card(width, height, alternative, body), alternative, width, height };
}

function columnOf({ size, lens, stressed = false, caption }: Drawn, locale?: Locale): Column | undefined {
  const outside = outerDiameter(size, lens);
  const interval = outside ?? innerDiameter(size, lens);
  if (!interval || !(interval.max > 0) || !Number.isFinite(interval.max)) return undefined;
  const hollow = outside === undefined;
  const length = mmText(interval);
  const measure = hollow ? say(locale, PICTURE.inside, { length }) : tell(length, locale);
  return { caption: caption ?? tell(label(size), locale), measure, stressed, interval, hollow };
}

const columnWidth = (c: Column, scale: number): number =>
  Math.ceil(Math.max(c.interval.max * scale, c.caption.length * LETTER, c.measure.length * LETTER));

/** Room for the columns and for the line under them. */
function cardWidth(widths: readonly number[], tooThin: boolean): number {
  const row = widths.reduce((a, b) => a + b, 0) + GAP * (widths.length - 1);
  return PADDING * 2 + Math.max(row, tooThin ? LARGEST + 46 * LETTER : LARGEST + 9 * LETTER);
}

function place(columns: readonly Column[], widths: readonly number[], scale: number, base: number): string[] {
  let left = PADDING;
  return columns.map((column, i) => {
    const centre = left + widths[i]! / 2;
    left += widths[i]! + GAP;
    return `<g>${circles(column, centre, base, scale)}${words(column, centre, base)}</g>`;
  });
}

/** Solid up to the least diameter, a dashed ring at the greatest when the two can be told apart. */
function circles({ interval, stressed, hollow }: Column, x: number, base: number, scale: number): string {
  const colour = stressed ? STRESSED : OTHER;
  const radius = Math.max(interval.min * scale, THINNEST) / 2;
  const widest = (interval.max * scale) / 2;
  const paint = hollow ? `fill="none" stroke="${colour}" stroke-width="2"` : `fill="${colour}"`;
  const solid = `<circle cx="${px(x)}" cy="${px(base - radius)}" r="${px(radius)}" ${paint}/>`;
  if (widest - radius < 1) return solid;
  const ring = `fill="none" stroke="${colour}" stroke-dasharray="3 2"`;
  return `<circle cx="${px(x)}" cy="${px(base - widest)}" r="${px(widest)}" ${ring}/>${solid}`;
}

function words({ caption, measure, stressed }: Column, x: number, base: number): string {
  const weight = stressed ? ' font-weight="bold"' : '';
  const line = (text: string, n: number, more: string): string =>
    `<text x="${px(x)}" y="${base + n * LINE + 3}" text-anchor="middle"${more}>${escapeXml(text)}</text>`;
  return line(caption, 1, weight) + line(measure, 2, '');
}

/** Longer than any size: a longer bar would say nothing more, mm. */
const LONGEST_BAR = 100;

/** The longest of 1, 2, 5, 10, 20 … (or 0.5, 0.2, 0.1 …) that is not longer, mm. */
function roundLength(mm: number): number {
  const ten = 10 ** Math.floor(Math.log10(mm));
  const times = mm / ten;
  return Number(((times >= 5 ? 5 : times >= 2 ? 2 : 1) * ten).toPrecision(1));
}

/** A bar of a round length, so that the eye has a measure. */
function scaleBar(widest: number, y: number, tooThin: boolean, locale?: Locale): string {
  const mm = Math.min(roundLength(widest), LONGEST_BAR);
  const end = PADDING + (mm / widest) * LARGEST;
  const text = say(locale, tooThin ? PICTURE.barWider : PICTURE.bar, { mm });
  return (
    `<path d="M${PADDING} ${y - 6}V${y}H${px(end)}V${y - 6}" fill="none" stroke="${INK}"/>` +
    `<text x="${px(end + 6)}" y="${y}">${text}</text>`
  );
}

const card = (width: number, height: number, title: string, body: readonly string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img">` +
  `<title>${escapeXml(title)}</title>` +
  `<rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" rx="6" fill="${CARD}" stroke="${INK}"/>` +
  `<g font-family="sans-serif" font-size="12" fill="${INK}">${body.join('')}</g></svg>`;

const inWords = (columns: readonly Column[], locale?: Locale): string =>
  say(locale, PICTURE.toScale, {
    sizes: quote(columns.map((c) => `${c.caption} ${c.measure}`).join(', ')),
  });

const px = (value: number): string => String(Number(value.toFixed(3)));

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text safe inside XML: markup characters escaped, characters XML cannot hold replaced. */
export const escapeXml = (text: string): string =>
  text
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '\ufffd')
    .replace(/[&<>"']/g, (c) => ENTITIES[c]!);
