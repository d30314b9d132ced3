/** A diameter given for a size is written on the same thing: "an 035 is 0.035 inch, that is 0.89 mm". */
import type { Mention } from './model.ts';
import { type Scene, sentenceIndex } from './scene.ts';

const REACH = 48;

const isLength = (mention: Mention): boolean => {
  const system = mention.sizes[0]?.system;
  return system === 'millimetre' || system === 'inch';
};

/** Gives each diameter the device and material of the size close before it in its sentence. */
export function shareThings(scene: Scene, mentions: readonly Mention[]): Mention[] {
  let owner: Mention | undefined;
  return mentions.map((mention) => {
    if (!isLength(mention)) {
      owner = mention.kind === 'ambiguous' ? undefined : mention;
      return mention;
    }
    return owner?.device && !mention.length && near(scene, owner, mention)
      ? { ...mention, device: owner.device, ...(owner.material ? { material: owner.material } : {}) }
      : mention;
  });
}

function near(scene: Scene, owner: Mention, mention: Mention): boolean {
  const between = scene.passage.text.slice(owner.span.end, mention.span.start);
  if (between.length > REACH || /[;]/.test(between)) return false;
  return sentenceIndex(scene, owner.span.start) === sentenceIndex(scene, mention.span.start);
}
