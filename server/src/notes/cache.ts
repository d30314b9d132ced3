/**
 * A cache bounded by the length of its keys. It keeps two generations: what is used moves to the young one, and
 * when that is full it becomes the old one and the old one goes.
 */
export class BoundedCache<Value> {
  private young = new Map<string, Value>();
  private old = new Map<string, Value>();
  private size = 0;

  /** `limit`: total length of the keys kept, in UTF-16 code units. */
  constructor(private readonly limit: number) {}

  /**
   * The value kept under `key`; made now, from a copy of the key, when there is none. The copy matters when the
   * key was cut from a long text, which would otherwise be kept with it.
   */
  get(key: string, make: (key: string) => Value): Value {
    const kept = this.young.get(key);
    if (kept !== undefined) return kept;
    const own = ` ${key}`.slice(1);
    const value = this.old.get(key) ?? make(own);
    this.keep(own, value);
    return value;
  }

  private keep(key: string, value: Value): void {
    if (this.size + key.length > this.limit / 2) {
      this.old = this.young;
      this.young = new Map();
      this.size = 0;
    }
    this.young.set(key, value);
    this.size += key.length;
  }
}
