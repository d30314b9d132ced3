/** Which of two spans of time is the longer: only where they do not overlap. */
import { describe, expect, it } from 'vitest';
import { LASTING, longer } from '../../server/src/sizes/index.ts';

describe('the longer of two spans', () => {
  it.each([
    [[10, 20], [1, 9], true],
    [[10, 20], [1, 10], true],
    [[1, 9], [10, 20], false],
    [[1, 10], [10, 20], false],
    [[5, 12], [10, 20], undefined],
    [[10, 20], [5, 12], undefined],
    [[10, 20], [10, 20], undefined],
    [[10, 30], [12, 20], undefined],
    [[10, 10], [10, 10], undefined],
    [[10, 10], [5, 10], undefined],
  ] as const)('%j beside %j: %j', (a, b, answer) => {
    expect(longer(a, b)).toBe(answer);
  });

  // The sources of the spans stand beside them in the table.
  it('tells threads apart that stay for good from those that go', () => {
    expect(longer(LASTING.silk!.holds, LASTING.polydioxanone!.holds)).toBe(true);
    expect(longer(LASTING['plain-gut']!.holds, LASTING['polyglactin-910']!.holds)).toBe(false);
    expect(longer(LASTING.silk!.holds, LASTING.nylon!.holds)).toBeUndefined();
  });
});
