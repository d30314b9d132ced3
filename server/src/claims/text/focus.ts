/** Sizes spoken of before a sentence, for words that lean on them: "it", "the thinnest of the three", "the left one". */
import type { System } from '../../sizes/model.ts';
import { distinct, type Group, groups, type Scene } from './scene.ts';
import type { Sentence } from './sentences.ts';

/** Sentences before this one, nearest first: its passage, then what leads into it. */
export const sentencesBefore = (scene: Scene): readonly Sentence[] => [
  ...scene.before.toReversed(),
  ...scene.context.toReversed(),
];

/** Each mention of a group by itself, at its own place. */
export const single = (group: Group): Group[] =>
  group.mentions.length === 1 || group.mentions.length !== group.sizes.length
    ? [group]
    : group.mentions.map((mention, i) => {
        const at = group.to - 2 * (group.mentions.length - 1 - i);
        return { from: at, to: at, mentions: [mention], sizes: mention.sizes };
      });

const singlesIn = (sentence: Sentence, system?: System): Group[] =>
  groups(sentence.items)
    .flatMap(single)
    .filter((g) => g.sizes.length === 1 && (!system || g.sizes[0]!.system === system));

/** The one size of the sentence before, or undefined when it names none or several. */
export function lastSpoken(scene: Scene): Group | undefined {
  const previous = sentencesBefore(scene)[0];
  const found = previous ? distinct(groups(previous.items)) : [];
  return found.length === 1 && found[0]!.sizes.length === 1 ? found[0] : undefined;
}

/** How far back a set of sizes may lie. */
const REACH = 6;

/** Distinct sizes of a system in the nearest sentences, as soon as there are exactly `count` of them; never more. */
export function setOfSize(
  scene: Scene,
  system: System,
  count: number,
  own: readonly Group[],
): Group[] | undefined {
  let found = distinct(own);
  for (const sentence of sentencesBefore(scene).slice(0, REACH)) {
    if (found.length >= count) break;
    found = distinct([...found, ...singlesIn(sentence, system)]);
  }
  return found.length === count ? found : undefined;
}
