/** For people: grouped by note, path:line:column first, what it says, what holds, the source, a summary. */
import { CAUTION } from '../caution.ts';
import { safeLine, safePath } from '../escape.ts';
import type { NoteResult, PlacedFinding } from '../result.ts';
import { type Paint, paint } from './colour.ts';
import { excerpt } from './excerpt.ts';
import { isOpen, type Report, type ReportKind, type Totals } from './model.ts';

const TONE = { error: 'error', warning: 'warning', info: 'info', hint: 'faint' } as const;

const row = (name: string, text: string): string => `    ${name.padEnd(8)}${text}`;

function fixRow(finding: PlacedFinding): string[] {
  const safe = finding.fixes.find((fix) => fix.safety === 'safe');
  if (safe) return [row('fix', safeLine(safe.title))];
  const choices = finding.fixes.map((fix) => safeLine(fix.title));
  return choices.length > 0 ? [row('choose', choices.join(' | '))] : [];
}

function finding(path: string, one: PlacedFinding, p: Paint): string {
  const { line, column } = one.place;
  const quoted = excerpt(one);
  const where = p.strong(`${safePath(path)}:${line}:${column}:`);
  return [
    `${where} ${p[TONE[one.severity]](`${one.severity}:`)} ${safeLine(one.says)}`,
    `    ${quoted.text}`,
    `    ${p[TONE[one.severity]](quoted.marks)}`,
    row('holds', safeLine(one.holds)),
    row('source', `${safeLine(one.source)} ${p.faint(`(${one.check})`)}`),
    ...fixRow(one),
  ].join('\n');
}

const many = (n: number, one: string, more = `${one}s`): string => `${n} ${n === 1 ? one : more}`;

/** One line on what was found. */
export function summary(t: Totals): string {
  const parts = [
    many(t.contradiction, 'contradiction'),
    many(t.ambiguity, 'unclear size'),
    many(t.style, 'point of style or consistency', 'points of style or consistency'),
  ].filter((part) => !part.startsWith('0 '));
  const found = parts.length > 0 ? parts.join(', ') : 'nothing to report';
  const aside = [
    t.deliberate > 0 ? `${t.deliberate} marked as deliberate` : '',
    t.accepted > 0 ? `${t.accepted} accepted earlier` : '',
  ].filter(Boolean);
  return `${many(t.notes, 'note')} read: ${found}${aside.length > 0 ? ` (${aside.join(', ')})` : ''}.`;
}

export const textReport: ReportKind = ({ colour }): Report => {
  const p = paint(colour);
  return {
    note({ path, findings }: NoteResult): string {
      const open = findings.filter(isOpen);
      return open.map((one) => `${finding(path, one, p)}\n\n`).join('');
    },
    end: (totals) => `${p.strong(summary(totals))}\n${p.faint(CAUTION)}\n`,
  };
};
