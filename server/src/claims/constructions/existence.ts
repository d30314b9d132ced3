/** A size that its system does not have: every mention of one is a claim that it exists. */
import { existence as exists, MM_PER_INCH } from '../../sizes/index.ts';
import { joined } from '../text/joined.ts';
import { groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

export const existence: Construction = {
  id: 'existence',
  needs: () => [{ sizes: 1 }],
  read(scene) {
    if (ofWireScale(scene) || lookedForInVain(scene) || workedOut(scene)) return [];
    return groups(scene.items).flatMap((group) =>
      group.mentions.flatMap((mention) => {
        const lens = {
          ...(mention.device ? { device: mention.device } : {}),
          ...(mention.material ? { material: mention.material } : {}),
        };
        const missing = mention.sizes.some((size) => exists(size, lens).exists === 'no');
        const at = scene.items.findIndex((item) => item.mention === mention);
        return missing && at >= 0
          ? [reading(scene, at, { ...group, mentions: [mention], sizes: mention.sizes })]
          : [];
      }),
    );
  },
};

/** Scales of wire go on where needles end, and electric wire is thicker than guidewires: such a text names its own numbers. */
const ofWireScale = ({ passage }: Scene): boolean =>
  /\b(?:Birmingham|Stubs|BWG|AWG|American Wire|wire gauges?)\b/.test(passage.text.slice(0, 4000));

/** "Go looking for a 21.5 G and you'll be a while", "an answer to nobody's question". */
const lookedForInVain = ({ items }: Scene): boolean =>
  /\b(?:nobody's|go looking|be a (?:long )?while|laugh(?:ed|s)? (?:at|out))\b/.test(joined(items));

/** "Do say the nought, though: 0.35 inch is nearly 9 mm, which is a broom handle.": who works out what it would be knows. */
const workedOut = ({ items }: Scene): boolean =>
  items.some(({ mention }, i) => {
    const inch = mention?.sizes[0];
    if (inch?.system !== 'inch' && inch?.system !== 'wire-inch') return false;
    const mm = items.slice(i + 1, i + REACH).find((item) => item.mention)?.mention?.sizes[0];
    return mm?.system === 'millimetre' && Math.abs(mm.value / (inch.value * MM_PER_INCH) - 1) < NEARLY;
  });
/** Items from one measure to the other; by how much a rounded one may be off. */
const REACH = 7;
const NEARLY = 0.06;

function reading(scene: Scene, at: number, group: ReturnType<typeof groups>[number]): Reading {
  return {
    claim: {
      kind: 'existence',
      construction: 'existence',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[at]!),
      size: operand(scene, group),
    },
    at,
    from: at,
    to: at,
  };
}
