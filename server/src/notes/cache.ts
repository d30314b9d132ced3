/**
 * A cache bounded by what its values weigh. It keeps a few generations: what is used moves to the youngest in time, and
 * the oldest go when all together weigh too much. So memory, once full, rises and falls by a small part of the whole.
 */
interface Generation<Value> {
  readonly values: Map<string, Value>;
  weight: number;
}

/** Share of the limit that one generation takes. */
const SHARE = 1 / 4;

/** Generations from which a value is given without moving it: moving on every use would cost more than it gives. */
const FRESH = 2;

export class BoundedCache<Value> {
  /** The youngest first; never empty. */
  private readonly generations: Generation<Value>[] = [{ values: new Map(), weight: 0 }];

  /** `limit`: the most that all values weigh together; one that weighs more is kept until the next one comes. */
  constructor(
    private readonly limit: number,
    private readonly weigh: (key: string, value: Value) => number,
  ) {}

  /**
   * The value kept under `key`; made now, from a copy of the key, when there is none. The copy matters when the
   * key was cut from a long text, which would otherwise be kept with it.
   */
  get(key: string, make: (key: string) => Value): Value {
    const age = this.generations.findIndex(({ values }) => values.has(key));
    const kept = this.generations[age]?.values.get(key);
    if (kept !== undefined && age < FRESH) return kept;
    const own = ` ${key}`.slice(1);
    const value = kept ?? make(own);
    this.keep(own, value);
    return value;
  }

  private keep(key: string, value: Value): void {
    const weight = this.weigh(key, value);
    const youngest = this.youngest(weight);
    youngest.values.set(key, value);
    youngest.weight += weight;
    const all = this.generations;
    let total = all.reduce((sum, each) => sum + each.weight, 0);
    while (total > this.limit && all.length > 1) total -= all.pop()!.weight;
  }

  /** A generation with room for `weight`, or an empty one. */
  private youngest(weight: number): Generation<Value> {
    const first = this.generations[0]!;
    if (first.weight === 0 || first.weight + weight <= this.limit * SHARE) return first;
    this.generations.unshift({ values: new Map(), weight: 0 });
    return this.generations[0]!;
  }
}
