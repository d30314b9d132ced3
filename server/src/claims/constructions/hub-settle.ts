/** What the note around a colour says about the code it is of, where its sentence names no device. */
import { matchesOf } from '../../notes/index.ts';
import type { Note } from '../../notes/model.ts';
import { COLOURS, type ColourCode, colourOf } from '../../sizes/index.ts';
import type { ColourClaim } from '../model.ts';
import { lineAt } from '../text/lines.ts';
import { remembered } from '../text/remember.ts';

/** The claim with the codes that may be meant, as its lines and headings tell. */
export function settleCode(claim: ColourClaim, note: Note): ColourClaim {
  if (inSomebody(claim, note)) {
    const { device: _further, ...bare } = claim;
    return { ...bare, code: 'any' };
  }
  if (claim.code !== undefined) return claim;
  if (carriedOver(claim, note) || ofCatheter(claim, note)) return { ...claim, code: 'none' };
  return claim.device === undefined && underNeedles(claim, note) ? { ...claim, code: 'any' } : claim;
}

/** Does a stretch of the note speak of something? Looked for once a note: a line may hold very many colours. */
function speaking(pattern: RegExp): (note: Note, from: number, to: number) => boolean {
  const places = remembered(({ text }: Note) => matchesOf(text, pattern));
  return (note, from, to) => {
    const found = places(note);
    const first = found[firstFrom(found, from)];
    return first !== undefined && first.index + first[0].length <= to;
  };
}

/** How many of the matches begin before an offset. */
function firstFrom(found: readonly RegExpExecArray[], from: number): number {
  let [low, high] = [0, found.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (found[middle]!.index < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

const ofNeedles = speaking(/\bneedles?\b/gi);
const ofCannulas = speaking(/\b(?:cannula\w*|iv|drips?|lines?)\b/gi);
const ofCatheters = speaking(
  /\b(?:french|fr|ch|foleys?|suction|funnels?|catheters?|tubes?|drains?|urine)\b/gi,
);
/** As few words between as may be: the match must end before the colour. */
const somebodyHas = speaking(
  /\b(?:wom[ae]n|m[ae]n|patients?|mothers?|child|children|everyone|everybody)\b[^.;:\n]{0,60}?\b(?:has|have|had|gets?|needs?) (?:an?|one|two) /gi,
);
const headings = remembered(({ text }: Note) => matchesOf(text, /\n#[^\n]*/g));

/** A line without a thing of its own below a heading of needles: the cannulas that a paragraph above spoke of are left behind. */
function underNeedles({ focus }: ColourClaim, note: Note): boolean {
  const above = headings(note);
  const heading = above[firstFrom(above, focus.start) - 1];
  if (!heading) return false;
  const [from, to] = [heading.index, heading.index + heading[0].length];
  if (!ofNeedles(note, from, to) || ofCannulas(note, from, to)) return false;
  return !ofCannulas(note, lineAt(note, focus.start).start, focus.end);
}
/** "Every woman has a 16 G, grey": what somebody has in is a cannula, though needles were spoken of further up. */
function inSomebody({ focus }: ColourClaim, note: Note): boolean {
  const from = lineAt(note, focus.start).start;
  return somebodyHas(note, from, focus.end) && !ofNeedles(note, from, focus.end);
}

/**
 * "Suction is French, so the 14 is wider. … green 18, pink 20.": a bare number made a catheter's by an earlier sentence of its
 * line, whose colour is that of a gauge.
 */
function carriedOver({ size: { sizes, mentions }, span, colour }: ColourClaim, note: Note): boolean {
  const [size] = sizes;
  if (size?.system !== 'french' || mentions[0]?.notation !== 'bare') return false;
  const line = lineAt(note, span.start).start;
  if (!ofCatheters(note, line, span.start) || ofCatheters(note, span.start, span.end)) return false;
  return (Object.keys(COLOURS) as ColourCode[]).some(
    (code) => code.startsWith('ISO') && colourOf(code, size.value)?.families.includes(colour),
  );
}

/** "cannula 14 orange, catheter 14 green", "Catheter green 14": a bare number behind another thing is no gauge. */
function ofCatheter({ size: { sizes, mentions } }: ColourClaim, { text }: Note): boolean {
  const [mention] = mentions;
  if (sizes[0]?.system !== 'needle-gauge' || mention?.notation !== 'bare') return false;
  const { start } = mention.source;
  return OF_CATHETER.test(text.slice(Math.max(0, start - 20), start));
}
const OF_CATHETER = /\b(?:catheter|foley|urinary|suction|drain)s?:?\s(?:[a-z]{3,6}\s)?$/i;
