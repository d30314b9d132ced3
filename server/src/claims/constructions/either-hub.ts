/** One colour said of a needle and a cannula of one size: "needles and cannulae of 18 G are both green". */
import type { ColourClaim } from '../model.ts';
import { joined } from '../text/joined.ts';
import { distinct, type Group, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { codeOf } from '../words/codes.ts';
import type { Colour } from './hub-code.ts';
import type { Reading } from './model.ts';

/** A claim for each of the two; nothing when the sentence speaks of more than one size or colour. */
export function onEither(scene: Scene, colours: readonly Colour[], sizes: readonly Group[]): Reading[] {
  const { items } = scene;
  const colour = colours.at(-1);
  const [size, ...others] = distinct(sizes);
  if (
    !colour ||
    colours.some(({ family }) => family !== colour.family) ||
    !size ||
    others.length > 0 ||
    colour.at < size.to
  )
    return [];
  if (size.sizes[0]!.system !== 'needle-gauge' || codeOf(items.slice(0, colour.at)) !== 'both') return [];
  const before = joined(items, 0, colour.at);
  if (!SHARED.test(before) || items.some(({ word }) => NEGATIONS.has(word) || OPEN.test(word))) return [];
  return (['needle', 'cannula'] as const).map((device) => {
    const claim: ColourClaim = {
      kind: 'colour',
      construction: 'either-hub',
      span: sentenceSpan(scene),
      focus: spanOf(scene, items[colour.at]!, items[colour.to]!),
      size: operand(scene, size),
      colour: colour.family,
      same: true,
      device,
    };
    return { claim, at: colour.to, from: size.from, to: colour.to };
  });
}

const SHARED =
  /\b(?:are both|both are|both of (?:which|them) are|(?:are|is) alike|all|come in|both come in|both have an?)(?: the same)?$/;
const OPEN = /^(?:if|unless|than|but|while|whereas|only)$/;
