/** French in whole millimetres: what no rounding gives. */
import type { Note } from '../../notes/model.ts';
import type { EquivalenceClaim, Operand } from '../model.ts';

/** "16 Fr is 6 mm": said flatly of the whole thing, and more than any rounding gives. Who leaves out the rest says less. */
export function misrounded(claim: EquivalenceClaim, named: Operand, measured: Operand, note: Note): boolean {
  const [french, mm] = [named.sizes[0]!, measured.sizes[0]!];
  const written = measured.mentions[0];
  return (
    named.sizes.length === 1 &&
    french.system === 'french' &&
    mm.system === 'millimetre' &&
    claim.axis === 'outer' &&
    !claim.approximate &&
    !claim.said &&
    FLATLY.has(claim.construction) &&
    written?.decimals === 0 &&
    !/\bcm\b|centim/i.test(written.text) &&
    mm.value - french.value / 3 > NEAREST &&
    !OTHERWISE.test(note.text.slice(claim.span.start, claim.span.end))
  );
}

const FLATLY: ReadonlySet<string> = new Set(['equivalence', 'answer-key']);
/** The nearest whole number is half a millimetre away at most, mm. */
const NEAREST = 0.6;
/** Rounded, or another part is measured than the shaft. */
const OTHERWISE =
  /\b(?:round(?:s|ed|ing)?|nearest|whole|some|hubs?|balloons?|tips?|funnels?|dilators?|tapers?|widest|at (?:the|its|most))\b/i;
