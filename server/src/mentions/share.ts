/** A diameter given for a size is written on the same thing: "an 035 is 0.035 inch, that is 0.89 mm". */
import type { Mention } from './model.ts';
import { type Scene, sentenceIndex } from './scene.ts';

const REACH = 48;

const isMeasure = (mention: Mention): boolean => {
  const system = mention.sizes[0]?.system;
  return system === 'millimetre' || system === 'inch';
};

/** Gives each diameter the device and material of the size close by in its sentence, the one before first. */
export function shareThings(scene: Scene, mentions: readonly Mention[]): Mention[] {
  return mentions.map((mention, i) => {
    if (!isMeasure(mention) || saidToBeLength(scene, mention)) return mention;
    const owner = [mentions[i - 1], mentions[i - 2], mentions[i + 1]].find(
      (one) => one?.device && !isMeasure(one) && near(scene, one, mention),
    );
    if (!owner || (mention.length && isReach(owner))) return mention;
    const { length: _, ...measure } = mention;
    return { ...measure, device: owner.device!, ...(owner.material ? { material: owner.material } : {}) };
  });
}

/** A needle's size stands beside its length as often as beside its diameter. */
const isReach = (owner: Mention): boolean =>
  owner.sizes[0]?.system === 'needle-gauge' || owner.sizes[0]?.system === 'usp';

const saidToBeLength = (scene: Scene, { evidence, span }: Mention): boolean =>
  evidence[0]?.rule === 'gauge-by-length' ||
  /^[\s-](?:long|length|in length)\b/.test(scene.passage.text.slice(span.end, span.end + 12));

function near(scene: Scene, owner: Mention, mention: Mention): boolean {
  const [first, second] = owner.span.start < mention.span.start ? [owner, mention] : [mention, owner];
  const between = scene.passage.text.slice(first.span.end, second.span.start);
  if (between.length > REACH || between.includes(';')) return false;
  return sentenceIndex(scene, owner.span.start) === sentenceIndex(scene, mention.span.start);
}
