/** Chance that a seed repeats (mulberry32, public domain): the same seed, the same run. */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** At least 0 and below 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A whole number from 0, below `bound`. */
  below(bound: number): number {
    return Math.floor(this.next() * bound);
  }

  pick<T>(list: readonly T[]): T {
    return list[this.below(list.length)]!;
  }
}
