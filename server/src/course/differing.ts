/**
 * Where notes of one course give one device different sizes. Nothing is called wrong: both places are shown, so that
 * the course can settle on one.
 */
import type { NamedSize } from '../claims/named.ts';
import { label } from '../sizes/index.ts';

export const DIFFERS = 'course-differs';

export interface NamedIn<Where> {
  readonly note: string;
  readonly where: Where;
  readonly named: Pick<NamedSize, 'name' | 'size'>;
}

export interface Differing<Where> {
  readonly at: NamedIn<Where>;
  readonly others: readonly NamedIn<Where>[];
  readonly says: string;
  readonly holds: string;
}

/**
 * Pairs of notes that give one name sizes of one system with nothing in common. Any order of input gives the
 * same answer: by note, then by name.
 */
export function differing<Where>(all: readonly NamedIn<Where>[]): Differing<Where>[] {
  const byName = new Map<string, NamedIn<Where>[]>();
  for (const one of all) {
    const key = `${one.named.size.system} ${one.named.name}`;
    byName.set(key, [...(byName.get(key) ?? []), one]);
  }
  return [...byName.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, uses]) => ofName(uses))
    .sort((a, b) => (a.at.note < b.at.note ? -1 : a.at.note > b.at.note ? 1 : 0));
}

function ofName<Where>(uses: readonly NamedIn<Where>[]): Differing<Where>[] {
  const notes = new Map<string, Set<number>>();
  for (const { note, named } of uses) notes.set(note, (notes.get(note) ?? new Set()).add(named.size.value));
  return uses.flatMap((at) => {
    const own = notes.get(at.note)!;
    const others = uses.filter((other) => other.note !== at.note && disjoint(own, notes.get(other.note)!));
    return others.length === 0 ? [] : [{ at, others, ...wordsOf(at, others) }];
  });
}

const disjoint = (a: ReadonlySet<number>, b: ReadonlySet<number>) => [...a].every((value) => !b.has(value));

function wordsOf<Where>(
  at: NamedIn<Where>,
  others: readonly NamedIn<Where>[],
): { says: string; holds: string } {
  const elsewhere = [...new Set(others.map((other) => `${label(other.named.size)} in ${other.note}`))]
    .slice(0, 3)
    .join(', ');
  return {
    says: `Gives “${at.named.name}” as ${label(at.named.size)}; elsewhere it is ${elsewhere}.`,
    holds: 'Neither is called wrong: see which one the course means.',
  };
}
