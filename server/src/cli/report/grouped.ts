/**
 * Reports of `list` that put together what belongs together: the sizes of each note, the notes of each size, the sizes
 * of each system. For reading on a terminal; `index-of-sizes.ts` makes a document.
 */
import { SYSTEM_NAMES } from '../../sizes/index.ts';
import type { System } from '../../sizes/model.ts';
import { safeLine, safePath } from '../escape.ts';
import type { PlacedMention } from '../result.ts';
import { paint } from './colour.ts';
import { nameOf } from './listing.ts';
import type { ReportKind } from './model.ts';
import { inOrder } from './order-of-sizes.ts';

/** How often something is named, and on which lines or in which notes. */
interface Named {
  readonly system: string;
  readonly value: string;
  times: number;
  readonly where: Map<string, number[]>;
}

/** Sizes by their system and value. */
class Gathered {
  readonly #all = new Map<string, Named>();

  add(path: string, { system, value, place }: PlacedMention): void {
    const key = `${system} ${value}`;
    const named = this.#all.get(key) ?? { system, value, times: 0, where: new Map<string, number[]>() };
    this.#all.set(key, named);
    named.times++;
    const lines = named.where.get(path);
    if (!lines) named.where.set(path, [place.line]);
    else if (lines.at(-1) !== place.line) lines.push(place.line);
  }

  /** Systems in the order of the tables, sizes as their numbers run. */
  get inOrder(): Named[] {
    return inOrder([...this.#all.values()]);
  }
}

const size = ({ system, value }: Named): string => safeLine(`${nameOf(system)} ${value}`);
const lines = (all: readonly number[]): string => `${all.length > 1 ? 'lines' : 'line'} ${all.join(', ')}`;
const times = (n: number): string => `${n} ${n > 1 ? 'times' : 'time'}`;

/** The sizes of each note. */
export const listByNote: ReportKind = ({ colour }) => {
  const p = paint(colour);
  return {
    note: ({ path, mentions }) => {
      if (mentions.length === 0) return '';
      const own = new Gathered();
      for (const mention of mentions) own.add(path, mention);
      const rows = own.inOrder.map((one) => `  ${size(one)}  ${p.faint(lines(one.where.get(path) ?? []))}\n`);
      return `${p.strong(safePath(path))}\n${rows.join('')}`;
    },
    end: ({ mentions, notes }) => `${p.strong(`${mentions} size mentions in ${notes} notes.`)}\n`,
  };
};

/** Gathers the whole course and tells of it at the end. */
function atTheEnd(tell: (all: readonly Named[], p: ReturnType<typeof paint>) => string): ReportKind {
  return ({ colour }) => {
    const p = paint(colour);
    const all = new Gathered();
    return {
      note: ({ path, mentions }) => {
        for (const mention of mentions) all.add(path, mention);
        return '';
      },
      end: ({ mentions, notes }) =>
        `${tell(all.inOrder, p)}${p.strong(`${mentions} size mentions in ${notes} notes.`)}\n`,
    };
  };
}

/** The notes of each size. */
export const listBySize: ReportKind = atTheEnd((all, p) =>
  all
    .map((one) => {
      const rows = [...one.where].map(([path, own]) => `  ${safePath(path)}  ${p.faint(lines(own))}\n`);
      return `${p.strong(size(one))}  ${times(one.times)}\n${rows.join('')}`;
    })
    .join(''),
);

/** The sizes of each system. */
export const listBySystem: ReportKind = atTheEnd((all, p) =>
  [...new Set(all.map(({ system }) => system))]
    .map((system) => {
      const own = all.filter((one) => one.system === system);
      const rows = own.map(
        ({ value, times: n, where }) =>
          `  ${safeLine(value)}  ${p.faint(`${times(n)}, ${notes(where.size)}`)}\n`,
      );
      return `${p.strong(SYSTEM_NAMES[system as System] ?? nameOf(system))}\n${rows.join('')}`;
    })
    .join(''),
);

const notes = (n: number): string => `${n} ${n > 1 ? 'notes' : 'note'}`;
