/**
 * Two of one bore and of different lengths: "at the same bore the 100 cm catheter flows faster than the 65 cm one", "a 16 G
 * lumen 20 cm long outruns a 16 G cannula 5 cm long". The longer of the two is the slower; where the bore or the pressure
 * may differ nothing is read.
 */

import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { itemAt, joined } from '../text/joined.ts';
import { distinct, groups, type Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

const CENTIMETRES = /^(?:cm|centimet(?:re|er)s?)$/;

export const lengthwise: Construction = {
  id: 'lengthwise',
  needs: () => [{ like: CENTIMETRES, also: /^(?:than|out(?:runs?|paces?|flows?|strips?))$/ }],
  leaning: true,
  read(scene) {
    const { items } = scene;
    if (scene.sentence.close === '?' || items.length > 45) return [];
    if (items.some(({ word }) => NEGATIONS.has(word) || TURNS.test(word))) return [];
    const text = joined(items);
    const verb = COMPARED.exec(text);
    if (!verb || !oneBore(items, text) || onePressed(text)) return [];
    const at = itemAt(items, verb.index);
    const end = itemAt(items, verb.index + verb[0].length - 1);
    const [left, right, ...more] = lengthsIn(items);
    if (!left || !right || more.length > 0 || !ofTube(items, left.at) || !ofTube(items, right.at)) return [];
    if (left.at > at || right.at < end || left.cm === right.cm) return [];
    const faster = !/\b(?:slower|less|worse)\b/.test(verb[0]);
    const formula = left.cm > right.cm === faster ? 'longer-is-faster' : 'longer-is-slower';
    return [reading(scene, formula, at, end)];
  },
};

/** What may turn it, leave it open or bring in another thing that changes the flow. */
const TURNS =
  /^(?:if|unless|but|although|though|however|until|may|might|could|would|whether|yet|despite|even|too|blood|warm|cold|raised|higher|lower|kinked|wider|narrower|thicker|thinner|fatter|larger|smaller|bigger|bore-wise|both|gravity|pumped|squeezed|pain|hurts?|air|bags?|hung|hangs?|hanging|up|high|height|heights|head|above|below|over|bed|heart|stand|pole|floor|drop|deep|apart|from|away|veins?|elbow|wrist|hands?|arms?|forearm)$/;

const COMPARED =
  /\b(?:(?:flows?|runs?|drips?|drains?|infuses?|delivers?|is|are|goes|pours) (?:\w+ )?(?:faster|quicker|slower|more quickly|more slowly|less quickly)|(?:gives?|delivers?|lets? through|carries|passes) (?:more|less|better|worse) (?:flow|fluid|volume)|out(?:runs?|paces?|flows?|strips?))(?: than)?\b/;

interface Length {
  readonly at: number;
  readonly cm: number;
}

const lengthsIn = (items: readonly Item[]): Length[] =>
  items.flatMap(({ word }, i) => {
    const [, own] = /^(\d{1,3})-?(?:cm|centimet(?:re|er)s?)$/.exec(word) ?? [];
    if (own !== undefined) return [{ at: i, cm: Number(own) }];
    const number = CENTIMETRES.test(word) ? /^\d{1,3}$/.exec(items[i - 1]?.word ?? '') : null;
    return number ? [{ at: i, cm: Number(number[0]) }] : [];
  });

/** "the 100 cm catheter", "a cannula 5 cm long", "the 65 cm one": the length of what it runs through. */
const ofTube = (items: readonly Item[], at: number): boolean =>
  TUBE_LONG.test(joined(items, at + 1, at + 4)) ||
  (items[at + 1]?.word === 'long' && TUBE_BEFORE.test(joined(items, Math.max(0, at - 5), at - 1)));
const TUBES = '(?:cannulas?|catheters?|lines?|tubes?|needles?|lumens?|sheaths?)';
const TUBE_LONG = new RegExp(
  `^(?:(?!above|below|up|long|and|or)[a-z-]+ ){0,2}(?:${TUBES}|ones?|version)(?: |$)`,
);
const TUBE_BEFORE = new RegExp(`\\b${TUBES}(?: (?:of|is|at|,))?$`);

/** The bore is said to be one, or each of the two is named with the same size. */
function oneBore(items: readonly Item[], text: string): boolean {
  const named = groups(items).flatMap(single);
  if (
    distinct(named).length > 1 ||
    !named.every(({ sizes }) => /^(?:needle-gauge|french)$/.test(sizes[0]!.system))
  )
    return false;
  return SAME_BORE.test(text) || named.length === 2;
}
const SAME_BORE =
  /\b(?:(?:same|equal|identical|one|equally wide)(?: \d{1,2})?(?: (?:fr|g|french|ch))? (?:bore|gauge|calibre|caliber|width|diameter|inside)|bore for bore|of (?:the )?same (?:bore|gauge|width|calibre))\b/;

/** Pressure is spoken of, and not as the same for both. */
const onePressed = (text: string): boolean =>
  /\bpress\w*|\bpumps?\b/.test(text) &&
  !/\b(?:same|equal|identical|one|given) (?:\w+ )?(?:pressure|head|bag)\b|\bat (?:equal|one) pressures?\b/.test(
    text,
  );

function reading(scene: Scene, formula: string, at: number, to: number): Reading {
  return {
    claim: ruleClaim(scene, 'lengthwise', 'needle-gauge', formula, at, to),
    at,
    from: at,
    to,
    unconditional: true,
  };
}
