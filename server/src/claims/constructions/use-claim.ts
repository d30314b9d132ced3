/** The claim that a needle point is for a tissue: one maker for the constructions that read it. */
import type { PropertyClaim } from '../model.ts';
import type { PointAt } from '../text/points.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Reading } from './model.ts';

/** `at` is the item a finding points at. */
export function useReading(scene: Scene, point: PointAt, at: number, tissue: string): Reading {
  const claim: PropertyClaim = {
    kind: 'property',
    construction: 'point-uses',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[at]!),
    subject: point.id,
    of: 'point',
    property: `use:${tissue}`,
    has: true,
  };
  return { claim, at, from: Math.min(point.at, at), to: Math.max(point.to, at) };
}
