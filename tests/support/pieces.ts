/**
 * A long list in one test or in many. Many tell faults apart when small faults are put in one by one: only the
 * tests that come past a fault are run, and the first that notices it ends the run.
 */
const asked = Number(process.env.SIZEWRIGHT_PIECES);
const LENGTH = asked > 0 ? asked : Number.POSITIVE_INFINITY;

export interface Piece<Item> {
  /** Empty for a list that is whole. */
  readonly part: string;
  readonly items: readonly Item[];
}

/** The list as it is, or cut into parts of SIZEWRIGHT_PIECES items. */
export function pieces<Item>(list: readonly Item[], length = LENGTH): Piece<Item>[] {
  if (list.length <= length) return [{ part: '', items: list }];
  return Array.from({ length: Math.ceil(list.length / length) }, (_, i) => ({
    part: `, part ${i + 1}.`,
    items: list.slice(i * length, (i + 1) * length),
  }));
}
