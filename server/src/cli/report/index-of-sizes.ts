/**
 * An index of the sizes of a course, in Markdown: each system, each size from thin to thick as its numbers run, where
 * it stands, what it is written on, and in how many ways it is written, so that an author sees what is not consistent.
 */
import { SYSTEM_NAMES } from '../../sizes/index.ts';
import type { System } from '../../sizes/model.ts';
import type { NoteResult, PlacedMention } from '../result.ts';
import type { ReportKind } from './model.ts';
import { inOrder, SYSTEMS } from './order-of-sizes.ts';
import { literal } from './summary.ts';

/** Places listed for a size at most; the rest is counted. */
const LISTED = 6;

interface Entry {
  readonly system: string;
  readonly value: string;
  count: number;
  readonly places: string[];
  readonly writings: Map<string, number>;
  readonly devices: Set<string>;
}

/** A writing without its number: what differs is the unit and the space before it. */
const writing = ({ text }: PlacedMention): string => text.replace(/\s+/g, ' ').trim();

function note(entries: Map<string, Entry>, { path, mentions }: NoteResult): void {
  for (const mention of mentions) {
    const { system, value, place, device } = mention;
    const key = `${system} ${value}`;
    const entry: Entry = entries.get(key) ?? {
      system,
      value,
      count: 0,
      places: [],
      writings: new Map(),
      devices: new Set(),
    };
    entries.set(key, entry);
    entry.count++;
    if (entry.places.length < LISTED) entry.places.push(`${path}:${place.line}`);
    const written = writing(mention);
    entry.writings.set(written, (entry.writings.get(written) ?? 0) + 1);
    if (device) entry.devices.add(device);
  }
}

function row(entry: Entry): string {
  const writings = [...entry.writings]
    .sort((a, b) => b[1] - a[1])
    .map(([text, n]) => `${literal(text)} ×${n}`);
  const rest = entry.count - entry.places.length;
  const places = entry.places.map(literal).join(', ') + (rest > 0 ? ` and ${rest} more` : '');
  return `| ${literal(entry.value)} | ${entry.count} | ${writings.join(', ')} | ${[...entry.devices].sort().join(', ')} | ${places} |`;
}

function section(system: string, entries: readonly Entry[]): string {
  const name = system === 'ambiguous' ? 'Unclear' : (SYSTEM_NAMES[system as System] ?? system);
  return [
    `## ${name[0]?.toUpperCase()}${name.slice(1)}`,
    '',
    '| size | times | written | on | where |',
    '| --- | ---: | --- | --- | --- |',
    ...inOrder(entries).map(row),
    '',
  ].join('\n');
}

export const listIndex: ReportKind = () => {
  const entries = new Map<string, Entry>();
  return {
    note: (result) => {
      note(entries, result);
      return '';
    },
    end: ({ mentions, notes }) => {
      const sections = SYSTEMS.flatMap((system) => {
        const own = [...entries.values()].filter((entry) => entry.system === system);
        return own.length > 0 ? [section(system, own)] : [];
      });
      return `# Sizes of the course\n\n${mentions} size mentions in ${notes} notes.\n\n${sections.join('\n')}`;
    },
  };
};
