/**
 * How one quantity goes with another, whatever the size: "the narrower the cannula, the slower the infusion", "wider tubes
 * drain faster", "thinner thread, less strength". Read only where nothing else (length, fluid, number) is spoken of.
 */
import type { DirectionClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction } from './model.ts';

export const coupled: Construction = {
  id: 'coupled',
  needs: () => [{ holds: ['compared'] }],
  leaning: true,
  read(scene) {
    const { items } = scene;
    if (items.length > 26 || items.some((item) => item.kind === 'size' || OTHER.test(item.word))) return [];
    const words = measuredWords(items);
    const [cause, effect, ...more] = words;
    if (
      !cause ||
      !effect ||
      more.length > 0 ||
      cause.degree !== 'comparative' ||
      effect.degree !== 'comparative'
    )
      return [];
    const sized = SIZE.has(cause.axis) && EFFECT.has(effect.axis);
    if (
      !sized ||
      cause.idiom ||
      effect.idiom ||
      !about(items, cause) ||
      !joined(items, cause, effect) ||
      !ends(items, effect)
    )
      return [];
    const claim: DirectionClaim = {
      kind: 'direction',
      construction: 'coupled',
      span: sentenceSpan(scene),
      focus: spanOf(scene, items[effect.at]!),
      system: 'millimetre',
      number: cause.sign === 1 ? 'up' : 'down',
      axis: effect.axis,
      size: effect.sign === 1 ? 'up' : 'down',
    };
    return [{ claim, at: effect.at, from: cause.at, to: effect.to }];
  },
};

const SIZE = new Set(['outer', 'bore']);
const EFFECT = new Set(['flow', 'strength', 'hole']);
/** Anything else that flow and strength depend on, or that the numbers of a scale stand for. */
const OTHER =
  /^(?:long|longer|length|short|shorter|thick-walled|walls?|viscosity|viscous|pressure|cold|warm|gauge|gauges|french|zeros?|zeroes|noughts?|numbers?|than|if|unless|not|never|no|vein|veins|vessels?|knots?|blood|clots?|although|though|materials?|silk|nylon|braid(?:ed)?)$/;

/** What follows the effect is what flows, holds or is left: "slower the drip", not "slower the student". */
function ends(items: readonly Item[], effect: Measured): boolean {
  const rest = items.slice(effect.to + 1);
  const stop = rest.findIndex((item) => item.kind === 'punctuation');
  return (stop < 0 ? rest : rest.slice(0, stop)).every(
    (item) => item.axisNoun !== undefined || item.deviceNoun || TAIL.test(item.word),
  );
}
const TAIL =
  /^(?:through|can|could|push|put|pour|give|minute|in|per|hour|the|it|its|a|an|is|are|of|runs?|flows?|drains?|drips?|empties|fills|infuses|infusion|drip|litre|bag|fluid|transfusion|bolus|behind|leaves|left|you|get|gets|will|be|one)$/;

/** What is wide or narrow is a thing with a size or its bore. */
const about = (items: readonly Item[], cause: Measured): boolean =>
  cause.to > cause.at ||
  items
    .slice(cause.at + 1, cause.at + 4)
    .some((item) => item.deviceNoun === true || item.axisNoun !== undefined);

const LINKS =
  /^(?:,|=|→|:|–|—|the|a|an|and|means|mean|gives|give|so|is|are|has|have|drains?|runs?|flows?|drips?|empties|empty|leaves?|makes?|needles?|cannulas?|cannulae|cannula|catheters?|tubes?|tubing|lumens?|lumen|bores?|drains|threads?|sutures?|strands?|it|its|you|get|will|carries|with|goes|always|holds?)$/;

/** "the wider …, the faster …", or one clause: nothing but its noun and verb between. */
function joined(items: readonly Item[], cause: Measured, effect: Measured): boolean {
  const between = items.slice(cause.to + 1, effect.at);
  const start = items
    .slice(0, cause.at)
    .every((item) => /^(?:the|a|an|so|remember|:|,|and|\W)$/.test(item.word));
  return start && between.length <= 8 && between.every((item) => LINKS.test(item.word));
}
