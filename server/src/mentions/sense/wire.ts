/** Is ".035" a guidewire, a p value, a dose? */
import { factsOf } from './note-facts.ts';
import { earlier, type Place, wider } from './place.ts';
import { ofOtherTrade } from './trade.ts';
import { NOTHING, size, type Verdict } from './verdict.ts';

const isWire = (hits: Place['devices']): boolean => hits.some((hit) => hit.means === 'guidewire');
const accepts = (hits: Place['devices']): boolean =>
  hits.some((hit) =>
    ['guidewire', 'sheath', 'catheter', 'central-line', 'guiding-catheter', 'k-wire'].includes(hit.means),
  );

/** Diameters in which guidewires are sold. */
const USUAL = /^0?\.0(?:14|18|21|25|32|35|38)$/;

/** "0.014, 0.018 and 0.035": each of them. */
const allUsual = (match: string): boolean =>
  match
    .split(/[^0-9.]+/)
    .filter(Boolean)
    .every((one) => USUAL.test(one));

/** Right before a small decimal or a code: statistics, doses, lots. */
const STATISTIC =
  /\b(?:[pP]|OR|HR|RR|[Dd]ifference|[Rr]ates?|[Rr]atio|[Dd]ose[ds]?|[Rr]isk|[Ee]rror|[Ll]ots?|[Ee]xt|[Ee]xtension|[Cc]ode|[Vv]alues?|[Dd]ial|[Rr]oom)s?\s(?:(?:of|was|is|were|are|at|about)\s)?$/;

export function wireSense(place: Place, match: string, spokenDigits: boolean): Verdict {
  if (/\b(?:p|alpha|α|r|hr|or)\s?[=<>]\s?$/i.test(place.before)) return NOTHING;
  if (
    /\b(?:brackets?|slots?|arch ?wires?|orthodontic)\b/i.test(place.text) &&
    !/^\swires?\b/.test(place.after)
  )
    return NOTHING;
  if (STATISTIC.test(place.before) || /^\s?(?:s|secs?|mg|ml|per)\b/i.test(place.after)) return NOTHING;
  if (!isWire(place.devices) && ofOtherTrade(place)) return NOTHING;
  const united = /(?:in|inch|inches|["″”]|thousandths.*|thou)\.?$/i.test(match);
  if (united && !/thou$/i.test(match)) return size('wire-inch', 'unit-inch', match);
  if (isWire(place.devices) || (!spokenDigits && accepts(place.devices)))
    return size('wire-inch', 'wire-beside', match);
  const context = [...wider(place).flatMap((scene) => scene.devices), ...earlier(place, place.scene.devices)];
  const usual = !spokenDigits && allUsual(match) && ofWires(place);
  return isWire(context) || usual ? size('wire-inch', 'wire-in-context', match) : NOTHING;
}

/** Wires are named in the note; in a note of needles or catheters "an .035" is one too. */
function ofWires(place: Place): boolean {
  const { wires, gauge, french } = factsOf(place.around);
  return wires || ((gauge || french) && /\ban?\s$/i.test(place.before));
}
