/** What the note around a colour says about the code it is of, where its sentence names no device. */
import type { Note } from '../../notes/model.ts';
import { COLOURS, type ColourCode, colourOf } from '../../sizes/index.ts';
import type { ColourClaim } from '../model.ts';

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

/** A line without a thing of its own below a heading of needles: the cannulas that a paragraph above spoke of are left behind. */
function underNeedles({ focus }: ColourClaim, { text }: Note): boolean {
  const from = text.lastIndexOf('\n#', focus.start);
  const heading = from < 0 ? '' : text.slice(from + 1, text.indexOf('\n', from + 1));
  if (!NEEDLES.test(heading) || CANNULAS.test(heading)) return false;
  return !CANNULAS.test(text.slice(text.lastIndexOf('\n', focus.start) + 1, focus.end));
}
/** "Every woman has a 16 G, grey": what somebody has in is a cannula, though needles were spoken of further up. */
function inSomebody({ focus }: ColourClaim, { text }: Note): boolean {
  const line = text.slice(text.lastIndexOf('\n', focus.start) + 1, focus.end);
  return !NEEDLES.test(line) && SOMEBODY_HAS.test(line);
}
const SOMEBODY_HAS =
  /\b(?:wom[ae]n|m[ae]n|patients?|mothers?|child|children|everyone|everybody)\b[^.;:\n]{0,60}\b(?:has|have|had|gets?|needs?) (?:an?|one|two) /i;
const NEEDLES = /\bneedles?\b/i;
const CANNULAS = /\b(?:cannula\w*|iv|drips?|lines?)\b/i;

/**
 * "Suction is French, so the 14 is wider. … green 18, pink 20.": a bare number made a catheter's by an earlier sentence of its
 * line, whose colour is that of a gauge.
 */
function carriedOver({ size: { sizes, mentions }, span, colour }: ColourClaim, { text }: Note): boolean {
  const [size] = sizes;
  if (size?.system !== 'french' || mentions[0]?.notation !== 'bare') return false;
  const line = text.slice(text.lastIndexOf('\n', span.start) + 1, span.start);
  if (!CATHETERS.test(line) || CATHETERS.test(text.slice(span.start, span.end))) return false;
  return (Object.keys(COLOURS) as ColourCode[]).some(
    (code) => code.startsWith('ISO') && colourOf(code, size.value)?.families.includes(colour),
  );
}
const CATHETERS = /\b(?:french|fr|ch|foleys?|suction|funnels?|catheters?|tubes?|drains?|urine)\b/i;

/** "cannula 14 orange, catheter 14 green", "Foley 16, orange": a bare number behind another thing is no gauge. */
function ofCatheter({ size: { sizes, mentions } }: ColourClaim, { text }: Note): boolean {
  const [mention] = mentions;
  if (sizes[0]?.system !== 'needle-gauge' || mention?.notation !== 'bare') return false;
  const { start } = mention.source;
  return /\b(?:catheter|foley|urinary|suction|drain)\s$/i.test(text.slice(Math.max(0, start - 12), start));
}
