/** The claim that a material has a property, or lasts so long: one maker for the constructions that read it. */
import type { PropertyClaim } from '../model.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';

/** `from` to `to` are the items a finding points at. */
export const materialClaim = (
  scene: Scene,
  construction: string,
  subject: string,
  property: string,
  from: number,
  to = from,
): PropertyClaim => ({
  kind: 'property',
  construction,
  span: sentenceSpan(scene),
  focus: spanOf(scene, scene.items[from]!, scene.items[to]!),
  subject,
  of: 'material',
  property,
  has: true,
});
