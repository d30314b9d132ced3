/** The claim that a size is of a class of `words/categories.ts` or `words/usual.ts`: one maker for the constructions that read such classes. */
import type { CategoryClaim } from '../model.ts';
import { type Group, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';

/** A finding points at the size, or at other items where that stands elsewhere; `each`: said of each size by itself. */
export const classClaim = (
  scene: Scene,
  construction: string,
  group: Group,
  category: string,
  each: boolean,
  { from, to }: Pick<Group, 'from' | 'to'> = group,
): CategoryClaim => ({
  kind: 'category',
  construction,
  span: sentenceSpan(scene),
  focus: spanOf(scene, scene.items[from]!, scene.items[to]!),
  size: operand(scene, group),
  category,
  member: true,
  ...(each ? { each } : {}),
});
