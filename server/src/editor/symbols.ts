/** Sizes under their headings, for the outline and for the search over all notes. */

import type { Analysis } from '../course/index.ts';
import type { Mention } from '../mentions/model.ts';
import type { Span } from '../notes/model.ts';
import { fullLabel, SYSTEM_NAMES } from '../sizes/index.ts';
import { type Locale, list, quote, say, tell } from '../texts/index.ts';
import { NAME } from './texts/help.ts';
import { DEVICE_WORDS } from './texts/words.ts';

export interface SizeSymbol {
  readonly name: string;
  readonly detail: string;
  readonly span: Span;
}

export interface HeadingSymbol {
  readonly name: string;
  readonly span: Span;
  readonly sizes: readonly SizeSymbol[];
}

/** "18 G", "USP 2-0 to USP 4-0", "2 (unclear)". */
export const nameOf = (mention: Mention, locale?: Locale): string =>
  mention.kind === 'ambiguous'
    ? say(locale, NAME.unclear, { text: quote(mention.text) })
    : tell(list(mention.sizes.map(fullLabel), NAME.to), locale);

export function sizeSymbol(mention: Mention, locale?: Locale): SizeSymbol {
  const system = mention.sizes[0] && SYSTEM_NAMES[mention.sizes[0].system];
  const device = mention.device && DEVICE_WORDS[mention.device];
  const detail = tell(device ?? system ?? '', locale);
  return { name: nameOf(mention, locale), detail, span: mention.source };
}

/** Headings that have sizes below them, in text order; sizes before the first heading stand under "". */
export function outline(analysis: Analysis, locale?: Locale): HeadingSymbol[] {
  const groups = new Map<number, Mention[]>();
  for (const mention of analysis.mentions) {
    const heading = headingOf(analysis, mention);
    const group = groups.get(heading);
    if (group === undefined) groups.set(heading, [mention]);
    else group.push(mention);
  }
  return [...groups].map(([heading, mentions]) => headingSymbol(analysis, heading, mentions, locale));
}

function headingOf(analysis: Analysis, mention: Mention): number {
  const passage = analysis.note.passages[mention.passage];
  if (passage === undefined) return -1;
  return passage.kind === 'heading' ? passage.index : (passage.path.at(-1) ?? -1);
}

function headingSymbol(
  analysis: Analysis,
  heading: number,
  mentions: readonly Mention[],
  locale?: Locale,
): HeadingSymbol {
  const sizes = mentions.map((mention) => sizeSymbol(mention, locale));
  const starts = [...sizes.map((size) => size.span.start), headingStart(analysis, heading)];
  const span = {
    start: starts.reduce((least, start) => Math.min(least, start), Number.POSITIVE_INFINITY),
    end: sizes.reduce((most, size) => Math.max(most, size.span.end), 0),
  };
  return { name: analysis.note.passages[heading]?.text.trim() ?? '', span, sizes };
}

const headingStart = (analysis: Analysis, heading: number): number =>
  analysis.note.passages[heading]?.map.sources[0] ?? Number.POSITIVE_INFINITY;
