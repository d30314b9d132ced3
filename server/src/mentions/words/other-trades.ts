/**
 * Other trades that count in gauge: jewellery, yarn, strings, sheet metal, electric wire, dials. Their gauges run by tables of
 * their own, so a passage that speaks of one of them names no needle.
 */
import { finds } from '../../notes/patterns.ts';
import { wholeWords } from './pattern.ts';

/** Trades that know needles of their own: a needle beside the word settles nothing. */
const WITH_NEEDLES = wholeWords([
  'knit(?:s|ted|ting|ters?)?',
  'crochet\\w*',
  'yarns?',
  'swatch(?:es)?',
  '(?:root canal|endodontic|rotary) files?',
  'stitches per inch',
  'sts per inch',
  'stockinette',
  '(?:gauge|gage) needles? (?:climbs?|swings?|rises?|falls?|drops?|jumps?|points?|reads?)',
  'needles? (?:of|on|in) the (?:gauge|dial|meter|speedometer)',
]);

/** Trades without needles. */
const WITHOUT_NEEDLES = wholeWords([
  'jewell?e?ry',
  'jewell?ers?',
  'piercings?',
  'pierced ears?',
  'ear ?rings?',
  'captive rings?',
  'tragus',
  'ear ?lobes?',
  'rac(?:quets?|kets?)',
  'tennis',
  'gauge of (?:the )?strings?',
  'thick(?:er|ness)? (?:of the )?strings?',
  'thinner strings?',
  'nose rings?',
  'guitars?',
  'violins?',
  'roof(?:s|ing)',
  'sheet metal',
  'galvani[sz]ed',
  'kitchen',
  'kilns?',
  'solder\\w*',
  'copper',
  'amperes?',
  'volts?',
  'voltage',
  'household wiring',
  'electrical wir\\w+',
  'loudspeakers?',
  'speaker (?:cables?|wires?)',
  'fuel',
  'shot ?guns?',
  'shotshells?',
  'fire ?arms?',
  'muskets?',
  'lead balls?',
  'railways?',
  'rail transport',
  'tramways?',
  'locomotives?',
  'track gauges?',
  'amps?',
  'ampacity',
  'ohms?',
  'stereos?',
  'speakers? (?:runs?|wires?|cables?)',
  '(?:bigger|better|your|loud) ?speakers?',
  'amplifiers?',
  'circuit breakers?',
  '(?:lamp|extension) cords?',
  'music wires?',
  'piano wires?',
  'stranded wires?',
  'gauge (?:steel|metal)',
  'carports?',
  'dashboards?',
  '(?:thicker|thinner|heavier) (?:metal|steel|sheets?)',
  'steel sheets?',
  'ducts? (?:work|board)',
  'speedometers?',
  'alternators?',
  '(?:ground|battery|jumper) cables?',
  'antennas?',
  'multimeters?',
  'feeler gauges?',
  'ring gauges?',
  'barbells?',
  '(?:lip|belly|navel|septum) rings?',
  'tickers?',
]);

/** Which such trade a text speaks of: one that knows needles, one that does not, or none. */
export function tradeIn(text: string): 'needled' | 'needleless' | undefined {
  if (finds(WITH_NEEDLES, text) && !CLINIC.test(text)) return 'needled';
  return finds(WITHOUT_NEEDLES, text) ? 'needleless' : undefined;
}

/** Words of the clinic that no other trade needs: one of them about, and a note is no note of piercings or wiring. */
const CLINIC_ONLY = wholeWords([
  'cannula\\w*',
  'inject\\w*',
  'sutur\\w*',
  'veins?',
  'venous',
  'patients?',
  'spinal',
  'syringes?',
  'catheters?',
  'surg(?:ery|ical|eons?)',
]);
export const speaksOfClinic = (text: string): boolean => CLINIC_ONLY.test(text);

/** A clinic may speak of knitting: with one of these words about, its needles are its own. */
const CLINIC = wholeWords([
  '[0-9]{2} ?g(?:auge)?',
  'cannula\\w*',
  'inject\\w*',
  'sutures?',
  'veins?',
  'patients?',
  'blood',
  'spinal',
  'syringes?',
  'catheters?',
]);
