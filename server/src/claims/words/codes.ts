/** Words that say which colour code is meant: hypodermic needle hubs (ISO 6009) or IV catheters (ISO 10555-5). */
import type { Device } from '../../sizes/model.ts';

const NEEDLE = new Set(
  'needle needles hypodermic hypodermics syringe syringes 6009 injection injections butterfly butterflies winged phlebotomy intramuscular subcutaneous spinal'.split(
    ' ',
  ),
);
const CANNULA = new Set(
  'cannula cannulae cannulas cannulation iv ivs intravenous pivc pivcs 10555-5 10555 over-the-needle over-needle drip infusion'.split(
    ' ',
  ),
);
/** A catheter sized in gauge is an IV catheter. */
const GAUGE_CATHETER = new Set(['catheter', 'catheters']);
const URINARY = new Set(
  'foley urinary urethral bladder valve inflation indwelling funnel funnels'.split(' '),
);
const SUCTION = new Set(['suction', 'connector', 'connectors']);

const FLOWS = /^(?:fast|faster|fastest|quick|quicker|quickest|slow|slower|slowest|contrast|power|rapid)$/;

/** The device a stretch of words speaks of; `both` when it names needle and cannula. */
export function codeOf(items: readonly { readonly word: string }[]): Device | 'both' | undefined {
  let needle = false;
  let cannula = false;
  let urinary = false;
  let suction = false;
  for (const [i, { word }] of items.entries()) {
    // "the faster injection", "contrast injection": what flows, not the needle for it.
    const flow = word.startsWith('injection') && FLOWS.test(items[i - 1]?.word ?? '');
    needle ||= NEEDLE.has(word) && !flow;
    cannula ||= CANNULA.has(word) || GAUGE_CATHETER.has(word);
    urinary ||= URINARY.has(word) || /-funnel(?:l?ed)?$/.test(word);
    suction ||= SUCTION.has(word);
  }
  // Both have one code of the letter size: what is named last does not matter.
  if ((urinary || suction) && !needle) return urinary ? 'urinary-catheter' : 'suction-catheter';
  if (needle && cannula) return 'both';
  if (needle) return 'needle';
  return cannula ? 'cannula' : undefined;
}
