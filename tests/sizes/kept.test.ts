/** Answers that are kept: asked for once, each under its own size and thing, and not without end. */
import { describe, expect, it } from 'vitest';
import { kept, keptOfTwo } from '../../server/src/sizes/kept.ts';
import type { Size } from '../../server/src/sizes/model.ts';

const french = (value: number): Size => ({ system: 'french', value });

/** Counts how often each answer is worked out. */
function counting() {
  let times = 0;
  const ask = kept((size, lens) => {
    times++;
    return `${size.system} ${size.value} ${lens.device} ${lens.material}`;
  });
  return { ask, times: () => times };
}

describe('answers about a size', () => {
  it('are worked out once, and apart for each system, value, device and material', () => {
    const { ask, times } = counting();
    const asked = [
      ask(french(6)),
      ask(french(7)),
      ask({ system: 'hegar', value: 6 }),
      ask(french(6), { device: 'sheath' }),
      ask(french(6), { material: 'silk' }),
      ask(french(6), { device: 'sheath', material: 'silk' }),
    ];
    expect(new Set(asked).size).toBe(6);
    expect([ask(french(6)), ask(french(6), { material: 'silk' })]).toEqual([asked[0], asked[4]]);
    expect(times()).toBe(6);
  });

  it('keeps an answer that is nothing', () => {
    let times = 0;
    const ask = kept(() => {
      times++;
      return undefined;
    });
    ask(french(6));
    ask(french(6));
    expect(times).toBe(1);
  });

  it('forgets all at once when there are 4000, so that memory stays where it is', () => {
    const { ask, times } = counting();
    for (let n = 1; n <= 4000; n++) ask(french(n));
    ask(french(1));
    expect(times()).toBe(4000);
    ask(french(4001));
    ask(french(1));
    expect(times()).toBe(4002);
  });
});

it('answers about two sizes tell the first from the second', () => {
  const ask = keptOfTwo((a, b, lensA, lensB) => [a.value, b.value, lensA.device, lensB.device].join());
  const asked = [
    ask(french(6), french(7)),
    ask(french(7), french(6)),
    ask(french(6), french(7), { device: 'sheath' }),
    ask(french(6), french(7), {}, { device: 'sheath' }),
  ];
  expect(asked).toEqual(['6,7,,', '7,6,,', '6,7,sheath,', '6,7,,sheath']);
});
