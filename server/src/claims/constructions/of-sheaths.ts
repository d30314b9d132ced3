/** "Be careful with vascular sheaths. The French figure is the inner size": whose it is was said in the sentence before. */
import type { Scene } from '../text/scene.ts';

export const ofSheaths = ({ before, context }: Scene): boolean =>
  [...context.slice(-1), ...before.slice(-1)].some(({ items }) =>
    items.some(({ word }) => /^(?:sheaths?|introducers?)$/.test(word)),
  );
