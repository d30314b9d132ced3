/** Notes of a run set against each other: devices that go by one name and have different sizes. */
import { DIFFERS, differing, hash, type NamedIn, type Settings } from '../../course/index.ts';
import type { NoteResult, PlacedFinding, PlacedName } from '../result.ts';

type Where = Pick<PlacedName, 'place' | 'excerpt'>;

/** Collects the names of the notes as they pass; answers at the end. */
export class Differs {
  readonly #named: NamedIn<Where>[] = [];
  readonly #settingsOf: (path: string) => Settings | undefined;

  constructor(settingsOf: (path: string) => Settings | undefined) {
    this.#settingsOf = settingsOf;
  }

  add({ path, named = [] }: NoteResult): void {
    for (const { name, size, place, excerpt } of named)
      this.#named.push({ note: path, named: { name, size }, where: { place, excerpt } });
  }

  /** One result a note that differs from another, by path. */
  results(): NoteResult[] {
    const byNote = new Map<string, PlacedFinding[]>();
    for (const { at, others, says, holds } of differing(this.#named)) {
      const level = this.#settingsOf(at.note)?.severity[DIFFERS] ?? 'info';
      if (level === 'off') continue;
      const finding: PlacedFinding = {
        check: DIFFERS,
        kind: 'style',
        severity: level,
        place: at.where.place,
        says,
        holds,
        source: 'the notes of this course',
        sources: [],
        fixes: [],
        related: others.map(({ note, where }) => ({
          note,
          place: where.place,
          message: `here ${at.named.name} has another size`,
        })),
        derivation: [],
        identity: hash(`${DIFFERS} ${at.named.name} ${at.named.size.value}`),
        sizes: [at, ...others].slice(0, 5).map(({ named }) => ({ size: named.size, lens: {} })),
        excerpt: at.where.excerpt,
      };
      byNote.set(at.note, [...(byNote.get(at.note) ?? []), finding]);
    }
    return [...byNote].map(([path, findings]) => ({ path, findings, mentions: [] }));
  }
}
