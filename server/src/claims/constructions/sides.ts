/** The two sides of a direction, and the claim they make. */
import type { System } from '../../sizes/model.ts';
import type { Axis, DirectionClaim } from '../model.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Reading } from './model.ts';

/** The number side of a direction: which system's number goes which way. */
export interface NumberSide {
  readonly at: number;
  readonly to: number;
  readonly system: System | 'usp-zeros' | 'usp-whole';
  readonly sign: 1 | -1;
}
export interface SizeSide {
  readonly at: number;
  readonly to: number;
  readonly axis: Axis;
  readonly sign: 1 | -1;
}

/** `from` is where the items of the sides begin in the sentence. */
export function directionClaim(scene: Scene, from: number, number: NumberSide, size: SizeSide): Reading {
  const at = from + size.at;
  const made: DirectionClaim = {
    kind: 'direction',
    construction: 'direction',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[at]!),
    system: number.system === 'usp-zeros' || number.system === 'usp-whole' ? 'usp' : number.system,
    number: number.sign === 1 ? 'up' : 'down',
    axis: size.axis,
    size: size.sign === 1 ? 'up' : 'down',
    ...(number.system === 'usp-zeros' ? { zeros: true } : {}),
    ...(number.system === 'usp-whole' ? { whole: true } : {}),
  };
  return {
    claim: made,
    at,
    from: from + Math.min(number.at, size.at),
    to: from + Math.max(number.to, size.to),
  };
}
