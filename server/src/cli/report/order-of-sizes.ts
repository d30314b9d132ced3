/** The order in which reports list sizes: systems as in the tables, what is unclear last, sizes as their numbers run. */
import { parseValue, SYSTEM_NAMES } from '../../sizes/index.ts';
import type { System } from '../../sizes/model.ts';

export interface Listed {
  readonly system: string;
  readonly value: string;
}

export const SYSTEMS: readonly string[] = [...Object.keys(SYSTEM_NAMES), 'ambiguous'];

/** Position of a value among those of its system; a range goes by its first end. */
const rank = ({ system, value }: Listed): number =>
  parseValue(system as System, value.split('..')[0] ?? '')?.value ?? Number.POSITIVE_INFINITY;

const byValue = (a: Listed, b: Listed): number => {
  const [first, second] = [rank(a), rank(b)];
  return first === second ? (a.value < b.value ? -1 : 1) : first - second;
};

/** The same entries in that order. */
export const inOrder = <Entry extends Listed>(all: readonly Entry[]): Entry[] =>
  [...all].sort((a, b) => SYSTEMS.indexOf(a.system) - SYSTEMS.indexOf(b.system) || byValue(a, b));
