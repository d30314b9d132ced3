/** A Markdown summary: counts by check and by note, for the page of a run or a comment on a change. */
import { CHECKS } from '../../checks/index.ts';
import { CAUTION } from '../caution.ts';
import { safeLine } from '../escape.ts';
import { isOpen, type ReportKind } from './model.ts';
import { summary as inOneLine } from './text.ts';

/** Notes listed at most; the rest is counted. */
const LISTED = 50;

/** Text that Markdown leaves as it is, also in a table. */
export function literal(text: string): string {
  return safeLine(text).replace(/[\\`*_{}[\]<>()#+!|&~]/g, '\\$&');
}

interface NoteCount {
  readonly path: string;
  readonly count: number;
  readonly first: number;
}

const TITLES = new Map(CHECKS.map(({ id, title }) => [id, title]));

function checkTable(counts: ReadonlyMap<string, number>): string[] {
  const rows = [...counts].sort((a, b) => b[1] - a[1]);
  return [
    '| check | what it reports | findings |',
    '| --- | --- | ---: |',
    ...rows.map(([check, count]) => `| \`${check}\` | ${literal(TITLES.get(check) ?? '')} | ${count} |`),
  ];
}

function noteTable(notes: readonly NoteCount[]): string[] {
  const listed = [...notes].sort((a, b) => b.count - a.count).slice(0, LISTED);
  const rest = notes.length - listed.length;
  return [
    '| note | first line | findings |',
    '| --- | ---: | ---: |',
    ...listed.map(({ path, first, count }) => `| ${literal(path)} | ${first} | ${count} |`),
    ...(rest > 0 ? ['', `and ${rest} more notes`] : []),
  ];
}

export const summaryReport: ReportKind = () => {
  const checks = new Map<string, number>();
  const notes: NoteCount[] = [];
  return {
    note({ path, findings }) {
      const open = findings.filter(isOpen);
      if (open.length > 0) notes.push({ path, count: open.length, first: open[0]!.place.line });
      for (const { check } of open) checks.set(check, (checks.get(check) ?? 0) + 1);
      return '';
    },
    end(totals) {
      const tables = notes.length > 0 ? ['', ...checkTable(checks), '', ...noteTable(notes)] : [];
      return `${['## Sizes in the notes', '', literal(inOneLine(totals)), ...tables, '', `_${CAUTION}_`].join('\n')}\n`;
    },
  };
};
