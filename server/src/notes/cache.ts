/** A cache bounded by the length of its keys; what was used longest ago goes first. */
export class BoundedCache<Value> {
  private readonly entries = new Map<string, Value>();
  private size = 0;

  /** `limit`: total length of the keys kept, in UTF-16 code units. */
  constructor(private readonly limit: number) {}

  /** The value kept under `key`, made now when there is none. A key over half the limit is not kept. */
  get(key: string, make: () => Value): Value {
    const kept = this.entries.get(key);
    if (kept !== undefined) {
      this.entries.delete(key);
      this.entries.set(key, kept);
      return kept;
    }
    const value = make();
    if (key.length <= this.limit / 2) this.keep(key, value);
    return value;
  }

  private keep(key: string, value: Value): void {
    this.entries.set(key, value);
    this.size += key.length;
    for (const oldest of this.entries.keys()) {
      if (this.size <= this.limit) return;
      this.entries.delete(oldest);
      this.size -= oldest.length;
    }
  }
}
