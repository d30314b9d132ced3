/** The claim that a size lies in a range: one maker for the constructions that read such places. */
import type { RangeClaim } from '../model.ts';
import { type Group, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';

/** `strict`: the ends themselves are outside. */
export const rangeClaim = (
  scene: Scene,
  construction: string,
  size: Group,
  [low, high]: readonly [Group, Group],
  strict: boolean,
): RangeClaim => ({
  kind: 'range',
  construction,
  span: sentenceSpan(scene),
  focus: spanOf(scene, scene.items[size.from]!, scene.items[size.to]!),
  size: operand(scene, size),
  low: operand(scene, low),
  high: operand(scene, high),
  inside: true,
  ...(strict ? { strict } : {}),
});
