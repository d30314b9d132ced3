/**
 * Where notes of one course give one device different sizes. Nothing is called wrong: both places are shown, so that
 * the course can settle on one.
 */

import type { NamedSize } from '../claims/named.ts';
import { label } from '../sizes/index.ts';
import { type Locale, list, quote, say } from '../texts/index.ts';
import { DIFFERING } from './texts/differing.ts';

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
export function differing<Where>(all: readonly NamedIn<Where>[], locale?: Locale): Differing<Where>[] {
  const byName = groupedBy(all, ({ named }) => `${named.size.system} ${named.name}`);
  return [...byName.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, uses]) => ofName(uses, locale))
    .sort((a, b) => (a.at.note < b.at.note ? -1 : a.at.note > b.at.note ? 1 : 0));
}

function groupedBy<One>(all: readonly One[], keyOf: (one: One) => string): Map<string, One[]> {
  const groups = new Map<string, One[]>();
  for (const one of all) {
    const group = groups.get(keyOf(one));
    if (group) group.push(one);
    else groups.set(keyOf(one), [one]);
  }
  return groups;
}

/** Notes are grouped by the sizes they give, of which there are few, so that many notes stay cheap. */
function ofName<Where>(uses: readonly NamedIn<Where>[], locale?: Locale): Differing<Where>[] {
  const values = new Map<string, Set<number>>();
  for (const { note, named } of uses) values.set(note, (values.get(note) ?? new Set()).add(named.size.value));
  const signature = ({ note }: NamedIn<Where>) => [...values.get(note)!].sort((a, b) => a - b).join(' ');
  const groups = [...groupedBy(uses, signature).values()];
  const othersOf = new Map(
    groups.map((group) => {
      const own = values.get(group[0]!.note)!;
      return [
        signature(group[0]!),
        groups.filter((other) => disjoint(own, values.get(other[0]!.note)!)).flat(),
      ];
    }),
  );
  return uses.flatMap((at) => {
    const others = othersOf.get(signature(at))!;
    return others.length === 0 ? [] : [{ at, others, ...wordsOf(at, others, locale) }];
  });
}

const disjoint = (a: ReadonlySet<number>, b: ReadonlySet<number>) => [...a].every((value) => !b.has(value));

/** Places looked at for the words of a finding. */
const LISTED = 30;

function wordsOf<Where>(
  at: NamedIn<Where>,
  others: readonly NamedIn<Where>[],
  locale?: Locale,
): { says: string; holds: string } {
  const elsewhere = others
    .slice(0, LISTED)
    .map((other) => say(locale, DIFFERING.place, { size: label(other.named.size), note: quote(other.note) }))
    .filter((words, i, all) => all.indexOf(words) === i)
    .slice(0, 3)
    .map(quote);
  return {
    says: say(locale, DIFFERING.says, {
      name: quote(at.named.name),
      size: label(at.named.size),
      elsewhere: list(elsewhere, DIFFERING.and),
    }),
    holds: say(locale, DIFFERING.holds),
  };
}
