/**
 * Scores the reader over a folder of labelled notes: how many of the labelled contradictions and questions it finds,
 * how often it is wrong, and how many size mentions it sees. Reads that folder and nothing else.
 *
 * The folder holds notes (*.md), `labels.jsonl` (a line each: file, line, endLine?, kind, expect "contradiction",
 * "ambiguous" or "none") and, if there is one, `mentions.jsonl` (a line each: file, line, system, value; a range is "14..16").
 *
 * Usage: npm run score -- FOLDER [--misses]
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FindingKind } from '../src/checks/model.ts';
import { Lines } from '../src/cli/lines.ts';
import { analyse } from '../src/course/analyse.ts';

export interface Label {
  readonly file: string;
  readonly line: number;
  readonly endLine?: number;
  readonly kind: string;
  readonly expect: 'contradiction' | 'ambiguous' | 'none';
}

export interface LabelledMention {
  readonly file: string;
  readonly line: number;
  readonly system: string;
  readonly value: string;
}

/** A finding or a mention, with the lines it covers. */
interface Found {
  readonly file: string;
  readonly from: number;
  readonly to: number;
  readonly kind: FindingKind;
  readonly check: string;
}

/** Right ones out of all, 1 when there are none. */
export interface Ratio {
  readonly right: number;
  readonly all: number;
}

export interface Score {
  readonly contradictionRecall: Ratio;
  readonly contradictionPrecision: Ratio;
  readonly ambiguityRecall: Ratio;
  readonly ambiguityPrecision: Ratio;
  readonly mentionRecall: Ratio;
  readonly mentionPrecision: Ratio;
  /** Recall of contradictions by the kind of statement. */
  readonly byKind: ReadonlyMap<string, Ratio>;
  /** "file:line" of what was missed and of what was flagged without reason. */
  readonly missed: readonly string[];
  readonly wrong: readonly string[];
  /** "file:line:system:size" of sizes that were not seen, and of those seen where none is labelled. */
  readonly unseen: readonly string[];
  readonly extra: readonly string[];
}

/** Statements of a folder that are not yet read right, a line each: what is kept in its `open.txt`. */
export const openLines = ({ missed, wrong }: Score): string[] => [
  ...missed.map((place) => `missed ${place}`),
  ...wrong.map((place) => `wrong ${place}`),
];

/** The same for its sizes, kept in `sizes.txt`. */
export const sizeLines = ({ unseen, extra }: Score): string[] => [
  ...unseen.map((size) => `unseen ${size}`),
  ...extra.map((size) => `extra ${size}`),
];

const rows = <T>(path: string): T[] =>
  existsSync(path)
    ? readFileSync(path, 'utf8')
        .split('\n')
        .filter((line) => line.trim() !== '')
        .map((line) => JSON.parse(line) as T)
    : [];

/** Score of a labelled folder. Throws when the folder cannot be read or a label is not JSON. */
export function scoreFolder(folder: string): Score {
  const files = readdirSync(folder).filter((name) => name.endsWith('.md'));
  const notes = files.map((file) => readNote(file, readFileSync(join(folder, file), 'utf8')));
  return compare(
    notes.flatMap((note) => note.findings),
    notes.flatMap((note) => note.mentions),
    rows<Label>(join(folder, 'labels.jsonl')),
    rows<LabelledMention>(join(folder, 'mentions.jsonl')),
  );
}

function readNote(file: string, text: string): { findings: Found[]; mentions: LabelledMention[] } {
  const lines = new Lines(text);
  const analysis = analyse(text);
  const findings = analysis.findings.flatMap(({ kind, check, span, deliberate }): Found[] => {
    const { line, endLine } = lines.place(span);
    return deliberate ? [] : [{ file, from: line, to: endLine, kind, check }];
  });
  const mentions = analysis.mentions
    .filter(({ kind }) => kind !== 'ambiguous')
    .flatMap(({ source, sizes }) =>
      sizes.map((size) => ({
        file,
        line: lines.place(source).line,
        system: size.system,
        value: written(size.system, size.value),
      })),
    );
  return { findings, mentions };
}

/** USP values as the labels write them: "2-0" for two zeros. */
const written = (system: string, value: number): string =>
  system === 'usp' && value < 0 ? `${1 - value}-0` : String(value);

function compare(
  found: readonly Found[],
  mentions: readonly LabelledMention[],
  labels: readonly Label[],
  labelled: readonly LabelledMention[],
): Score {
  const of = (expect: Label['expect']) => labels.filter((label) => label.expect === expect);
  const by = (kind: FindingKind) => found.filter((finding) => finding.kind === kind);
  const [contradictions, ambiguous] = [of('contradiction'), of('ambiguous')];
  const [flagged, asked] = [by('contradiction'), by('ambiguity')];
  const wrong = flagged.filter((finding) => !meets(contradictions, finding));
  const idle = asked.filter((finding) => !meets([...ambiguous, ...contradictions], finding));
  const missed = contradictions.filter((label) => !flagged.some((finding) => touches(finding, label)));
  const open = ambiguous.filter((label) => !asked.some((finding) => touches(finding, label)));
  return {
    contradictionRecall: without(missed, contradictions),
    contradictionPrecision: without(wrong, flagged),
    ambiguityRecall: without(open, ambiguous),
    ambiguityPrecision: without(idle, asked),
    ...mentionScore(mentions, labelled),
    byKind: kinds(contradictions, missed),
    missed: missed.map(({ file, line, kind }) => `${file}:${line} ${kind}`),
    wrong: wrong.map(({ file, from, check }) => `${file}:${from} ${check}`),
  };
}

const touches = (finding: Found, label: Label): boolean =>
  finding.file === label.file && finding.from <= (label.endLine ?? label.line) && finding.to >= label.line;
const meets = (labels: readonly Label[], finding: Found) => labels.some((label) => touches(finding, label));
const without = (bad: readonly unknown[], all: readonly unknown[]): Ratio => ({
  right: all.length - bad.length,
  all: all.length,
});

function kinds(all: readonly Label[], missed: readonly Label[]): Map<string, Ratio> {
  const names = [...new Set(all.map((label) => label.kind))].sort();
  return new Map(
    names.map((name) => [
      name,
      without(
        missed.filter((label) => label.kind === name),
        all.filter((label) => label.kind === name),
      ),
    ]),
  );
}

/** Names of systems in labels that differ from ours. */
const SAME_SYSTEM: Readonly<Record<string, string>> = {
  'metric-suture': 'ep-metric',
  gauge: 'needle-gauge',
  'wire-gauge': 'needle-gauge',
  mm: 'millimetre',
  'wire-inch': 'inch',
  'ett-id': 'tube-id',
};

/** One key a size, ranges taken apart: two mentions of one line may hold the same size twice. */
function keysOf({ file, line, system, value }: LabelledMention): string[] {
  return value.split('..').map((end) => {
    const plain = end.trim().toLowerCase();
    const shown = plain === '1-0' ? '0' : Number.isNaN(Number(plain)) ? plain : String(Number(plain));
    return `${file}:${line}:${SAME_SYSTEM[system] ?? system}:${shown}`;
  });
}

const counted = (keys: readonly string[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
};

/** Keys that one count has more often than the other. */
const beyond = (counts: ReadonlyMap<string, number>, others: ReadonlyMap<string, number>): string[] =>
  [...counts].filter(([key, n]) => n > (others.get(key) ?? 0)).map(([key]) => key);

function mentionScore(
  mentions: readonly LabelledMention[],
  labelled: readonly LabelledMention[],
): Pick<Score, 'mentionRecall' | 'mentionPrecision' | 'unseen' | 'extra'> {
  // On a line with an open question either answer is fine.
  const open = new Set(labelled.flatMap((m) => (m.system === 'ambiguous' ? [`${m.file}:${m.line}`] : [])));
  const wanted = counted(labelled.filter((m) => m.system !== 'ambiguous').flatMap(keysOf));
  const seen = counted(
    mentions.filter((m) => wanted.size > 0 && !open.has(`${m.file}:${m.line}`)).flatMap(keysOf),
  );
  const everywhere = counted(mentions.flatMap(keysOf));
  const sum = (counts: Map<string, number>) => [...counts.values()].reduce((total, n) => total + n, 0);
  const hits = (from: Map<string, number>) =>
    [...wanted].reduce((total, [key, n]) => total + Math.min(n, from.get(key) ?? 0), 0);
  return {
    mentionRecall: { right: hits(everywhere), all: sum(wanted) },
    mentionPrecision: { right: hits(seen), all: sum(seen) },
    unseen: beyond(wanted, everywhere),
    extra: beyond(seen, wanted),
  };
}

const show = ({ right, all }: Ratio): string =>
  `${all === 0 ? '1.000' : (right / all).toFixed(3)}  ${right}/${all}`;

/** The score as lines of text. */
export function report(score: Score, misses: boolean): string {
  const { byKind, missed, wrong, unseen, extra, ...ratios } = score;
  const lines = Object.entries(ratios).map(([name, ratio]) => `${name.padEnd(24)}${show(ratio)}`);
  const spread = [...byKind].map(([name, { right, all }]) => `${name} ${right}/${all}`).join(', ');
  const listed = [
    ...missed.map((one) => `missed  ${one}`),
    ...wrong.map((one) => `wrong   ${one}`),
    ...unseen.map((one) => `unseen  ${one}`),
    ...extra.map((one) => `extra   ${one}`),
  ];
  return [...lines, `by kind: ${spread}`, ...(misses ? listed : [])].join('\n');
}

function main(args: readonly string[]): number {
  const folder = args.find((arg) => !arg.startsWith('--'));
  if (!folder || !existsSync(join(folder, 'labels.jsonl'))) {
    console.error('usage: npm run score -- FOLDER [--misses]   (FOLDER holds notes and labels.jsonl)');
    return 2;
  }
  console.log(report(scoreFolder(folder), args.includes('--misses')));
  return 0;
}

if (basename(process.argv[1] ?? '') === basename(fileURLToPath(import.meta.url)))
  process.exitCode = main(process.argv.slice(2));
