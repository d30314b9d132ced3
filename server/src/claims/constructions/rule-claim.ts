/** The claim that a rule of `words/formulas.ts` holds: one maker for the constructions that read such rules. */
import type { FormulaClaim } from '../model.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';

/** `from` to `to` are the items a finding points at. */
export const ruleClaim = (
  scene: Scene,
  construction: string,
  system: FormulaClaim['system'],
  formula: string,
  from: number,
  to = from,
): FormulaClaim => ({
  kind: 'formula',
  construction,
  span: sentenceSpan(scene),
  focus: spanOf(scene, scene.items[from]!, scene.items[to]!),
  system,
  formula,
});
