/** The claim that a needle point is for a tissue: one maker for the constructions that read it, and which tissue is meant. */
import type { PropertyClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import type { PointAt } from '../text/points.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { TISSUES, TOUGH } from '../words/tissues.ts';
import type { Reading } from './model.ts';

/** "tough skin" is harder to pierce than skin. */
export function tissueAt(items: readonly Item[], at: number): string {
  const tissue = TISSUES.get(items[at]!.word)!;
  const tough = items.some((item) => TOUGH.test(item.word));
  return tissue === 'skin' && tough ? 'tough skin' : tissue;
}

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
