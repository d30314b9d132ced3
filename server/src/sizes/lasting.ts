/** How long a thread holds and how long it stays, in days: the span over all texts read, which differ. */
import type { SourceKey } from './model.ts';

export interface Lasting {
  /** Days for which the thread is said to hold; the upper end is missing where it holds for good. */
  readonly holds: readonly [number, number];
  /** Days until it is gone; missing where it stays. */
  readonly gone?: readonly [number, number];
  readonly sources: readonly SourceKey[];
}

const FOR_GOOD: readonly [number, number] = [180, Number.POSITIVE_INFINITY];
const stays = (...sources: SourceKey[]): Lasting => ({ holds: FOR_GOOD, sources });

export const LASTING: Readonly<Record<string, Lasting>> = {
  'fast-gut': { holds: [5, 7], gone: [14, 28], sources: ['alicards'] },
  'plain-gut': { holds: [7, 10], gone: [30, 90], sources: ['mrotte', 'wikichart', 'alicards'] },
  'chromic-gut': { holds: [10, 21], gone: [70, 120], sources: ['mrotte', 'wikichart', 'alicards'] },
  'polyglactin-910-rapid': { holds: [7, 12], gone: [35, 50], sources: ['alicards'] },
  'poliglecaprone-25': { holds: [10, 21], gone: [90, 120], sources: ['mrotte', 'oneskill', 'jportho'] },
  'polyglactin-910': { holds: [21, 28], gone: [56, 90], sources: ['mrotte', 'oneskill', 'alicards'] },
  'polyglycolic-acid': { holds: [21, 28], gone: [60, 120], sources: ['wikichart', 'pgavet', 'oneskill'] },
  polydioxanone: {
    holds: [28, 56],
    gone: [180, 240],
    sources: ['mrotte', 'wikichart', 'oneskill', 'jportho'],
  },
  silk: stays('mrotte', 'abdkey'),
  nylon: stays('medscapeN', 'abdkey'),
  polypropylene: stays('mrotte', 'abdkey'),
  polyester: stays('medscapeN', 'abdkey'),
  'stainless-steel': stays('USP32-nonabs'),
};

/** Is one span as a whole at least as long as the other? Undefined where they overlap. */
export function longer(a: readonly [number, number], b: readonly [number, number]): boolean | undefined {
  if (a[0] >= b[1] && a[1] > b[1]) return true;
  return b[0] >= a[1] && b[1] > a[1] ? false : undefined;
}
