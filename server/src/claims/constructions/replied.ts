/** A length that answers what was asked, or takes up what was said, in the sentence before. */
import type { Item } from '../text/items.ts';
import { changed } from '../text/place.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { equate, LENGTHS } from './equate.ts';
import type { Reading } from './model.ts';

/** "And a fifteen French? Fifteen millimetres": a short answer to a question about one size. */
export function answered(scene: Scene, all: readonly Group[]): Reading[] {
  const previous = scene.before.at(-1) ?? scene.context.at(-1);
  const answer = all[0];
  const resumed = /^(?:that|which) (?:is|makes|comes|means)\b/.test(
    scene.items
      .slice(0, 2)
      .map((item) => item.word)
      .join(' '),
  );
  if ((previous?.close !== '?' && !resumed) || !previous || !answer || answer.mentions.length > 1) return [];
  if (
    answer.from > (introduced(scene.items, answer) ? 6 : 3) ||
    !LENGTHS.has(answer.sizes[0]!.system) ||
    answer.mentions[0]!.length
  )
    return [];
  const asked = groups(previous.items);
  const left = asked[0];
  if (
    asked.length !== 1 ||
    !left ||
    left.mentions.length > 1 ||
    left.sizes[0]!.system === answer.sizes[0]!.system
  )
    return [];
  // "For the 0.035, yes, an 18 G.": what it is for, and no measure of what was asked about.
  if (scene.items[0]?.word === 'for') return [];
  if (scene.option || /^(?:\(|[a-f]|i)$/.test(scene.items[0]?.word ?? '')) return [];
  if (scene.items.slice(0, answer.from).some(({ word }) => TASK.test(word))) return [];
  if (previous.items.length > 14 || CHOICE.test(previous.items.map((item) => item.word).join(' '))) return [];
  // The question's items are not this sentence's: the claim stands on the answer alone.
  const shift = previous.items.length;
  const joined = changed(scene, { items: [...previous.items, ...scene.items] });
  return equate(joined, left, { ...answer, from: answer.from + shift, to: answer.to + shift }).map(
    (reading) => ({ ...reading, at: answer.from, from: answer.from, to: answer.to }),
  );
}
/** "Bex: Narrower, about 1.5 mm.": a speaker and a comparing word in front. */
const introduced = (items: readonly Item[], answer: Group): boolean =>
  items
    .slice(0, answer.from)
    .every(
      (item, i) =>
        item.kind === 'punctuation' ||
        item.magnitude?.degree === 'comparative' ||
        (i === 0 && item.capital) ||
        /^(?:about|roughly|around|nearly|only|just|that|is|it's|a)$/.test(item.word),
    );

const CHOICE = /\b(?:how (?:long|deep|far)|length|depth|which|who|when|colou?rs?)\b/;
/** "Convert 7 mm to French.": another task. */
const TASK = /^(?:convert|turn|change|express|give|write|put|find|work)$/;
