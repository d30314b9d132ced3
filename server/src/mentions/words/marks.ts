/** Marks for the parts of a model answer, set behind what earns them: "It is metric 2 (1) and the 4-0 metric 1.5 (1)". */
import { matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';

/** The most that one part of an answer earns. */
const MOST = 5;
const ALONE = /[([](\d)[)\]]/g;
const SPOKEN_OF = /\b(?:model answer|marks?|mark(?:ing)? scheme|award|accept)\b/i;
/** How much of a text is looked at on either side. */
const REACH = 600;

/**
 * Is the figure at a span of a text a mark? It stands alone in brackets behind something, and the text gives the same figure so
 * elsewhere, or what heads it speaks of marks. The headings are asked for only where the figure stands so.
 */
export function isMark(text: string, { start, end }: Span, headings?: () => readonly string[]): boolean {
  if (!/[([]/.test(text.charAt(start - 1)) || !/[)\]]/.test(text.charAt(end))) return false;
  const figure = text.slice(start, end);
  if (!/^\d$/.test(figure) || Number(figure) > MOST || text.slice(0, start - 1).trim() === '') return false;
  const near = text.slice(Math.max(0, start - REACH), end + REACH);
  const same = matchesOf(near, ALONE).filter((match) => match[1] === figure).length;
  return same > 1 || [near, ...(headings?.() ?? [])].some((one) => SPOKEN_OF.test(one));
}
