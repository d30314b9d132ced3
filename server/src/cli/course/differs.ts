/** Notes of a run set against each other: devices that go by one name and have different sizes. */
import { DIFFERS, differing, hash, type Level, type NamedIn } from '../../course/index.ts';
import type { Plan } from '../engine/plan.ts';
import type { Handled } from '../engine/run.ts';
import type { NoteResult, PlacedFinding, PlacedName } from '../result.ts';

type Where = Pick<PlacedName, 'place' | 'excerpt' | 'excerptAt'>;

/** Other places shown beside a finding. */
const SHOWN = 10;

/** Collects the names of the notes as they pass; answers at the end. */
export class Differs {
  readonly #named: NamedIn<Where>[] = [];
  readonly #levels = new Map<string, Level>();

  add({ path, named = [] }: NoteResult): void {
    for (const { name, size, level, ...where } of named) {
      this.#named.push({ note: path, named: { name, size }, where });
      if (level !== undefined) this.#levels.set(path, level);
    }
  }

  /** One result a note that differs from another, by path. */
  results(): NoteResult[] {
    const byNote = new Map<string, PlacedFinding[]>();
    for (const { at, others, says, holds } of differing(this.#named)) {
      const level = this.#levels.get(at.note) ?? 'info';
      if (level === 'off') continue;
      const finding: PlacedFinding = {
        check: DIFFERS,
        kind: 'style',
        severity: level,
        says,
        holds,
        source: 'the notes of this course',
        sources: [],
        fixes: [],
        related: others.slice(0, SHOWN).map(({ note, where }) => ({
          note,
          place: where.place,
          message: `here ${at.named.name} has another size`,
        })),
        derivation: [],
        identity: hash(`${DIFFERS} ${at.named.name} ${at.named.size.value}`),
        sizes: [at, ...others].slice(0, 5).map(({ named }) => ({ size: named.size, lens: {} })),
        ...at.where,
      };
      const findings = byNote.get(at.note);
      if (findings) findings.push(finding);
      else byNote.set(at.note, [finding]);
    }
    return [...byNote].map(([path, findings]) => ({ path, findings, mentions: [], late: true }));
  }
}

type LevelOf = (path: string) => Level | undefined;

/** The notes of a run, with the level of the check where each lies. */
export async function* withLevels(notes: AsyncIterable<Handled>, levelOf: LevelOf): AsyncGenerator<Handled> {
  for await (const one of notes) {
    const { path, result } = one;
    const named = result?.named?.map((name) => ({ ...name, level: levelOf(path) }));
    yield result && named ? { ...one, result: { ...result, named } } : one;
  }
}

/** The same, and then what comes of setting the notes against each other. */
export async function* withDiffering(
  notes: AsyncIterable<Handled>,
  levelOf: LevelOf,
): AsyncGenerator<Handled> {
  const differs = new Differs();
  for await (const one of withLevels(notes, levelOf)) {
    if (one.result) differs.add(one.result);
    yield one;
  }
  for (const result of differs.results()) yield { path: result.path, result };
}

/** The level of the check for each note of a plan. */
export function levelsOf(plan: Plan): LevelOf {
  const jobs = new Map(plan.jobs.map((job) => [job.name ?? job.path, job]));
  return (path) => plan.settings[jobs.get(path)?.settings ?? 0]?.severity[DIFFERS];
}
