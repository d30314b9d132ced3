/** Gauges that are no needle's: a dial's, a yarn's, a roof's. What a sentence says of them is not ours to judge. */
import { tradeIn } from '../../mentions/words/other-trades.ts';
import type { Note } from '../../notes/model.ts';
import type { Claim, Operand } from '../model.ts';
import type { Scene } from './scene.ts';

/** Words that show that a note is about the clinic at all. */
const CLINIC =
  /\b(?:needles?|cannul\w+|catheters?|syringes?|inject\w*|intraven\w+|ivs?|lumens?|bores?|hubs?|veins?|venous|veni\w+|phlebotom\w*|transfus\w*|infus\w*|biops\w*|spinal|epidural|butterfl(?:y|ies)|sutures?|threads?|drains?|blood|drips?|wards?|nurs\w+|clinic\w*|patients?|surg\w+)\b/i;

const clinical = new WeakMap<Note, boolean>();

function isClinical(note: Note): boolean {
  const known = clinical.get(note);
  if (known !== undefined) return known;
  const found = note.passages.some((passage) => CLINIC.test(passage.text));
  clinical.set(note, found);
  return found;
}

/** A rule of gauge that names no size, or a comparison of numbers without a unit, in a passage of another trade or a note that never speaks of the clinic. */
export function ofOtherGauge(scene: Scene, claim: Claim): boolean {
  if (claim.kind === 'comparison') return [claim.left, claim.right].every(bareGauge) && ofTools(scene);
  if (claim.kind !== 'direction' || claim.system !== 'needle-gauge') return false;
  if (ofTools(scene)) return true;
  if (!isClinical(scene.note) && !MEASURED.test(scene.passage.text)) return true;
  const needle = NEEDLE.test(scene.passage.text);
  return [scene.passage.text, ...scene.headings].some((text) => {
    const trade = tradeIn(text);
    return trade === 'needled' || (trade === 'needleless' && !needle);
  });
}

/** A number without a unit that was taken for a gauge. */
const bareGauge = ({ sizes, mentions }: Operand): boolean =>
  sizes[0]?.system === 'needle-gauge' && mentions[0]?.notation === 'bare';

/** "A number 30 file is 0.30 mm. There a higher number is thicker.": said of what the sentence before is about. */
function ofTools({ items, before }: Scene): boolean {
  if (items.some(({ word, system }) => system === 'needle-gauge' || NEEDLE.test(word))) return false;
  return [items, ...before.slice(-2).map((sentence) => sentence.items)].some((all) =>
    all.some(({ word }) => TOOLS.test(word)),
  );
}
const TOOLS =
  /^(?:files?|reamers?|burs?|drills?|gutta-percha|hegars?|dilators?|blades?|gloves?|screws?|filters?|pores?|sieves?|mesh(?:es)?|strainers?)$/;

/** Words of width and flow, or of the number as such: a dial is never read so. */
const MEASURED =
  /\b(?:gauge (?:numbers?|figures?)|French|diameters?|holes?|flows?|thick\w*|thin\w*|wid(?:e|er|est|th)|narrow\w*|fine\w*)\b/i;

const NEEDLE = /\b(?:needles?|cannul\w+|catheters?|syringes?)\b/i;
