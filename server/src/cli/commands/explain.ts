/** `explain ID`: what a check is about. `explain FILE:LINE`: how a line was read and judged. */
import { existsSync } from 'node:fs';
import { CHECKS } from '../../checks/index.ts';
import type { Step } from '../../checks/model.ts';
import type { Statement } from '../../claims/model.ts';
import { analyse, type Settings } from '../../course/index.ts';
import type { Mention } from '../../mentions/model.ts';
import type { Span } from '../../notes/model.ts';
import { fullLabel, SOURCES } from '../../sizes/index.ts';
import { CAUTION } from '../caution.ts';
import { Folders } from '../course/folders.ts';
import { safeLine } from '../escape.ts';
import { readText } from '../files/read.ts';
import { Lines } from '../lines.ts';
import { paint, wantsColour } from '../report/colour.ts';
import { say } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';

const PLACE = /^(.+?):([0-9]{1,9})(?::[0-9]{1,9})?:?$/s;

function allChecks(): string {
  const { strong, faint } = paint(wantsColour(process.env));
  const width = Math.max(...CHECKS.map(({ id }) => id.length));
  const rows = CHECKS.map(
    ({ id, title, kind, severity }) =>
      `${strong(id.padEnd(width))}  ${title} ${faint(`(${kind}, ${severity})`)}\n`,
  );
  return `${rows.join('')}\nMore on one: sizewright explain ${CHECKS[0]?.id}. How a line was read: sizewright explain FILE:LINE.\n`;
}

/** Without a subject: every check. Throws `UsageError` when `subject` is neither a check nor a place. */
export function explain(subject: string | undefined): number {
  if (subject === undefined) {
    say(allChecks());
    return 0;
  }
  const check = CHECKS.find(({ id }) => id === subject);
  const place = PLACE.exec(subject);
  if (check) say(`${check.id}: ${check.title}\n${check.kind}, ${check.severity}\n\n${check.docs.trim()}\n`);
  else if (place && existsSync(place[1]!)) say(explainLine(place[1]!, Number(place[2])));
  else throw new UsageError(unknown(subject, place !== null));
  return 0;
}

function unknown(subject: string, isPlace: boolean): string {
  if (isPlace) return `${safeLine(subject)}: no such file`;
  return `no check "${safeLine(subject)}"; there are ${CHECKS.map(({ id }) => id).join(', ')}; or write FILE:LINE`;
}

const overlaps = (a: Span, b: Span): boolean => a.start <= b.end && b.start <= a.end;

/** As `check` would read the note. Throws `UsageError` when a settings file is wrong. */
function settingsOf(path: string): Settings {
  const folders = new Folders();
  const settings = folders.settingsFor(path);
  const [problem] = folders.problems;
  if (problem) throw problem;
  return settings;
}

function explainLine(path: string, line: number): string {
  const text = readText(path);
  const lines = new Lines(text);
  if (line < 1 || line > lines.count)
    throw new UsageError(`${path}: there is no line ${line}; the last is ${lines.count}`);
  const { mentions, statements } = analyse(text, settingsOf(path), path);
  const span = lines.span(line);
  const sizes = mentions.filter((one) => overlaps(one.source, span)).map(mentionRows);
  const claims = statements.filter(({ claim }) => overlaps(claim.span, span)).map(statementRows);
  const { strong, faint } = paint(wantsColour(process.env));
  return [
    strong(`${safeLine(path)}:${line}: ${safeLine(lines.line(line))}`),
    sizes.length > 0 ? ['', 'Sizes', ...sizes] : ['', 'No size is read on this line.'],
    claims.length > 0
      ? ['', 'Statements', ...claims]
      : ['', 'No statement about sizes is read on this line.'],
    '',
    faint(CAUTION),
    '',
  ]
    .flat()
    .join('\n');
}

/** Ids of rules, devices and materials read like words: "unit-word" is "unit word". */
const inWords = (id: string): string => id.replaceAll('-', ' ');

function mentionRows(mention: Mention): string {
  const sizes = mention.sizes.map(fullLabel).join(' to ') || 'unclear';
  const about = [mention.device, mention.material]
    .filter(Boolean)
    .map((id) => inWords(id!))
    .join(', ');
  const evidence = mention.evidence.map(({ rule, saw }) => `    because ${inWords(rule)}: ${safeLine(saw)}`);
  const readings = mention.readings.map(({ words }) => `    or ${words}`);
  return [
    `  ${safeLine(mention.text)}  ${sizes}${about ? ` (${about})` : ''}`,
    ...evidence,
    ...readings,
  ].join('\n');
}

const VERDICT = {
  contradicted: 'contradicted',
  agrees: 'agrees with the rules',
  'cannot-tell': 'not judged',
} as const;

function statementRows({ says, holds, stance, verdict, source, derivation, claim }: Statement): string {
  return [
    `  ${safeLine(says)}`,
    `    ${stance}, ${VERDICT[verdict]} · ${source} · read as ${claim.construction}`,
    ...derivation.map(stepRow),
    `    holds   ${safeLine(holds)}`,
  ].join('\n');
}

function stepRow({ label, text, sources, confidence }: Step): string {
  const cites = (sources ?? []).map((key) => SOURCES[key]?.cite ?? key);
  const doubt = confidence === 'memory' ? ' (from memory)' : '';
  return `    ${label.padEnd(8)}${safeLine(text)}${doubt}${cites.map((cite) => `\n            ${cite}`).join('')}`;
}
