/** Is "7.5 mm" a tracheal tube's number, its inner diameter, or what something measures? */
import type { Device } from '../../sizes/model.ts';
import { BREATHED } from '../words/lengths.ts';
import { factsOf } from './note-facts.ts';
import { byNearness, earlier, type Place, wider } from './place.ts';
import { WIDEST_TUBE } from './systems.ts';

/** "7.5 mm on the outside", "9 mm tube = ? Fr": measured, and not the tube's number. */
const MEASURED_AFTER =
  /^\s?(?:(?:from |on |over |round |around |is |was |being )?(?:the |its )?(?:outer|outside|external)|od\b|across|wide|thick|bore|hole|lumen|opening|passage|ring|(?:pins?|wires?|screws?|nails?|plates?|drills?|rods?|burrs?)\b|(?:tube |drain )?(?:=|is|in) (?:\S{1,3} )?(?:Fr|French)\b)/i;
/** "the outside diameter of the 3.5 tube is 3.5 mm", "pins of 2.0 mm". */
const MEASURED_BEFORE =
  /\b(?:outer|outside|external)\s(?:(?:diameter|width|size)\s)?(?:of\s(?:an?|the|this|that|our|your)\s(?:[^.;,]|\.(?=[0-9])){1,24}\s)?(?:(?:of|is|was|measures)\s)?(?:about\s)?$|\b(?:bore|hole|lumen|opening|inside)s?\s(?:of|is|are)\s(?:about\s)?(?:[0-9.]{1,4}(?:,|\sand|\sor)\s){0,6}$|\b(?:pins?|wires?|screws?|nails?|plates?|drills?|rods?|burrs?)\s(?:of|is|are|measures?)\s(?:about\s)?$/i;

/** A tube's "7.5 mm": its inner diameter when tracheal tubes are what is spoken of. */
export function tubeLength(place: Place, values: readonly number[], decimals: number): boolean {
  if (!values.every((value) => value >= 2 && (value * 2) % 1 === 0)) return false;
  if (MEASURED_AFTER.test(place.after) || MEASURED_BEFORE.test(place.before.slice(-90))) return false;
  if (OF_FRENCH.test(place.before.slice(-60)) || ofItself(place, values)) return false;
  if (place.scene.passage.cell && !cellOfTubes(place)) return false;
  const nearest = byNearness(place.devices, place.span, place.scene.passage.text)[0];
  const most = largest(place, nearest?.means);
  if (values.some((value) => value > most)) return false;
  if (most === WIDEST_TUBE && (values.every((value) => value > 10.5) || (!nearest && HAS.test(place.before))))
    return !/^\s?(?:inside|across)\b/.test(place.after);
  if (nearest?.means === 'tracheal-tube')
    return !/\b(?:outer|outside|suction|catheter)\b/i.test(place.after.slice(0, 30).split(/[,;(]/)[0]!);
  if (nearest && !/^tub/.test(nearest.word)) return false;
  if (nearest || /\bmm tubes?\b/.test(place.text)) return tubesNamed(place) || ofNoOther(place, decimals);
  return decimals > 0 && tubesNamed(place);
}

/** Of people, of what somebody was intubated with, and of horses and cattle whose breathing tubes are spoken of. */
function largest(place: Place, nearest: Device | undefined): number {
  const tracheal = nearest ?? earlier(place, place.scene.devices)[0]?.means;
  if (tracheal === 'tracheal-tube' && factsOf(place.around).largeAnimals) return WIDEST_TUBE;
  return nearest === 'tracheal-tube' && /intubated with (?:an? )?$/i.test(place.before) ? 30 : 10.5;
}
const HAS = /\b(?:an?|about|near(?:ly)?|takes?|needs?|around)\s$/i;

/** "A 6 Fr is 2 mm", "18 Fr -> 6 mm": how wide the catheter is, whatever tube it goes through. */
const OF_FRENCH =
  /[0-9]\s?(?:Fr|French|Ch)(?:\s[a-z-]+){0,3}\s?(?:\s(?:is|measures|gives|makes|comes? (?:to|out at)|works out at)|=|->|→)\s(?:about\s|only\s|just\s)?$/;

/** "So a 6.5 is 6.5 mm inside": the tube's number is told, and then what it measures. */
const ofItself = ({ before }: Place, values: readonly number[]): boolean =>
  Number(OF_NUMBER.exec(before.slice(-60))?.[1] ?? 'none') === values[0];
const OF_NUMBER =
  /(?<![0-9.])([0-9]{1,2}(?:\.[05])?)(?:\s[a-z]+){0,4}?\s(?:is|measures|means|has|=|makes)\s(?:(?:an?|about|exactly|just|really|only|always)\s){0,2}$/i;

/** Header or row label names tracheal tubes. */
const cellOfTubes = (place: Place): boolean =>
  [place.scene, ...wider(place).slice(0, 2)].some((scene) => scene.kinds.has('tracheal-tube'));

/** "An 8.0 mm tube": no other tube is told to the tenth, in a note that speaks of tracheal tubes. */
const ofNoOther = (place: Place, decimals: number): boolean =>
  decimals > 0 && /^\s(?:cuffed\s|uncuffed\s)?tubes?\b/.test(place.after) && factsOf(place.around).tracheal;

/** Tracheal tubes in this passage, the three before it, or what stands over it. */
function tubesNamed(place: Place): boolean {
  const { index } = place.scene.passage;
  const before = [1, 2, 3].flatMap((back) => place.around.scenes[index - back] ?? []);
  return (
    [place.scene, ...before, ...wider(place)].some((scene) => scene.kinds.has('tracheal-tube')) ||
    (BREATHED.test(place.scene.brief) && factsOf(place.around).tracheal)
  );
}
