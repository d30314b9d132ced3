/**
 * Writes server/src/sizes/VALUES.md: every value that ships, with its source and how sure it is.
 *
 * Usage: tsx server/tools/values-page.ts
 */
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  AWG_SOURCES,
  COLOURS,
  FLOW,
  FLOW_SOURCES,
  fullLabel,
  GUIDEWIRES,
  MATERIALS,
  POINTS,
  parseValue,
  SOURCES,
} from '../src/sizes/index.ts';
import type { Confidence, SourceKey } from '../src/sizes/model.ts';
import { BWG, BWG_SOURCES } from '../src/sizes/tables/bwg.ts';
import { EP_METRIC } from '../src/sizes/tables/ep-metric.ts';
import { IV_CANNULA } from '../src/sizes/tables/iv-cannula.ts';
import {
  NEEDLE_GAUGE,
  NEEDLE_METRIC_SOURCES,
  NEEDLE_NOMINAL_SOURCES,
} from '../src/sizes/tables/needle-gauge.ts';
import { OVERSIZE_MONOFILAMENT, OVERSIZE_SOURCES } from '../src/sizes/tables/oversize-monofilament.ts';
import type { UspRow } from '../src/sizes/tables/rows.ts';
import { SWG, SWG_SOURCES } from '../src/sizes/tables/swg.ts';
import { USP_COLLAGEN } from '../src/sizes/tables/usp-collagen.ts';
import { USP_SYNTHETIC } from '../src/sizes/tables/usp-synthetic.ts';
import { SECOND_TABLES } from './second-tables.ts';

export const VALUES_PAGE = join(dirname(fileURLToPath(import.meta.url)), '..', 'src', 'sizes', 'VALUES.md');

const SURE: Readonly<Record<Confidence, string>> = {
  confirmed: 'confirmed',
  'single-source': 'one source',
  memory: 'from memory',
  'common-practice': 'common practice, no source',
};

type Cell = string | number | undefined;
const cell = (value: Cell): string => String(value ?? '').replaceAll('|', '\\|');
const line = (cells: readonly Cell[]): string => `| ${cells.map(cell).join(' | ')} |`;

function table(
  title: string,
  head: readonly string[],
  rows: readonly (readonly Cell[])[],
  note = '',
): string {
  const body = [line(head), `|${' --- |'.repeat(head.length)}`, ...rows.map(line)].join('\n');
  return `## ${title}\n\n${note ? `${note}\n\n` : ''}${body}\n`;
}

const keys = (sources: readonly SourceKey[]): string => sources.join(', ') || 'none';
const usp = (rank: number): string => fullLabel({ system: 'usp', value: rank });

const uspTable = (title: string, rows: readonly UspRow[]): string =>
  table(
    title,
    ['size', 'metric', 'least mm', 'greatest mm', 'sure', 'sources', 'note'],
    rows.map((r) => [usp(r.rank), r.metric, r.min, r.max, SURE[r.confidence], keys(r.sources), r.note]),
  );

const sutures = (): string[] => [
  uspTable('USP: synthetic absorbable and all nonabsorbable sutures', USP_SYNTHETIC),
  uspTable('USP: gut', USP_COLLAGEN),
  table(
    'Second column of some absorbable monofilaments',
    ['size', 'least mm', 'greatest mm', 'sure', 'sources'],
    OVERSIZE_MONOFILAMENT.map((r) => [
      usp(r.rank),
      r.min,
      r.max,
      SURE['single-source'],
      keys(OVERSIZE_SOURCES),
    ]),
  ),
  table(
    'European Pharmacopoeia metric numbers',
    ['metric', 'least mm', 'greatest mm', 'sure', 'sources'],
    EP_METRIC.map((r) => [r.metric, r.min, r.max, SURE[r.confidence], keys(r.sources)]),
  ),
];

const needles = (): string[] => [
  table(
    'Hypodermic needles: designated metric size and limits (ISO 9626)',
    ['G', 'metric mm', 'sure', 'sources', 'outer mm', 'least inner mm: regular, thin, widest wall', 'sure'],
    NEEDLE_GAUGE.filter((r) => r.metric).map(({ gauge, metric, limits }) => [
      gauge,
      metric?.value,
      metric && SURE[metric.confidence],
      keys(NEEDLE_METRIC_SOURCES),
      limits && `${limits.min}–${limits.max}`,
      limits &&
        [limits.innerNormal, limits.innerThin, limits.innerWidest].filter((v) => v !== undefined).join(', '),
      limits && SURE[limits.confidence],
    ]),
  ),
  table(
    'Hypodermic needles: nominal chart, regular wall',
    ['G', 'outer in', 'sure', 'inner in', 'sure', 'sources'],
    NEEDLE_GAUGE.flatMap(({ gauge, nominal: n }) =>
      n
        ? [
            [
              gauge,
              n.outerInch,
              SURE[n.outerConfidence],
              n.innerInch,
              SURE[n.innerConfidence],
              keys(NEEDLE_NOMINAL_SOURCES),
            ],
          ]
        : [],
    ),
  ),
  table(
    'Over-needle IV catheters (ISO 10555-5)',
    ['G', 'listed outer mm', 'sure', 'source', 'range mm', 'sure'],
    IV_CANNULA.map((r) => [
      r.gauge,
      r.listed.join(', '),
      SURE['single-source'],
      'JPneedle',
      `${r.min}–${r.max}`,
      SURE.memory,
    ]),
  ),
  table(
    'Flow through IV catheters as printed, ml/min: only the order is used',
    ['G', 'printed', 'sure', 'sources'],
    FLOW.map((r) => [r.gauge, r.mlPerMinute.join(', '), SURE['single-source'], keys(FLOW_SOURCES)]),
  ),
];

const scales = (): string[] => [
  table(
    'Scales by rule',
    ['scale', 'rule', 'sure', 'sources'],
    [
      ['French', 'outer diameter = Fr / 3 mm', SURE.confirmed, 'UCUM, GNU, ISO20696, DICOM3510'],
      ['French of a sheath', 'what it accepts = Fr / 3 mm', SURE.confirmed, 'thoracic, learnir, irblog'],
      ['American wire gauge', '0.005 in × 92^((36 − n) / 39)', SURE.confirmed, keys(AWG_SOURCES)],
      ['Tracheal tube', 'size = inner diameter in mm', SURE.confirmed, 'ett, gupta'],
      ['Hegar', 'number = diameter in mm', SURE.confirmed, 'hegar'],
      ['inch', '25.4 mm', SURE.confirmed, 'UCUM, GNU'],
    ],
  ),
  ...(
    [
      ['Standard wire gauge (British)', SWG, SWG_SOURCES],
      ['Birmingham wire gauge', BWG, BWG_SOURCES],
    ] as const
  ).map(([title, rows, sources]) =>
    table(
      title,
      ['number', 'in', 'sure', 'sources'],
      rows.map((r) => [r.gauge, r.inch, SURE.confirmed, keys(sources)]),
    ),
  ),
  table(
    'Guidewires',
    ['in', 'sure', 'sources'],
    GUIDEWIRES.map((r) => [r.inch, SURE[r.confidence], keys(r.sources)]),
  ),
];

const colours = (): string[] =>
  Object.entries(COLOURS).map(([code, rows]) =>
    table(
      `Colours: ${code}`,
      [code.startsWith('ISO') ? 'G' : 'Fr', 'colour', 'sure', 'sources'],
      rows.map((r) => [r.size, r.colours.join(' or '), SURE[r.confidence], keys(r.sources)]),
    ),
  );

const things = (): string[] => [
  table(
    'Suture materials',
    ['material', 'absorbable', 'structure', 'origin', 'sure', 'sources', 'note'],
    MATERIALS.map((m) => [
      m.name,
      m.absorbable ? 'yes' : 'no',
      m.structure.join(' or '),
      m.origin,
      SURE[m.confidence],
      keys(m.sources),
      m.note,
    ]),
  ),
  table(
    'Needle points',
    ['point', 'section', 'edge', 'use', 'sure', 'sources'],
    POINTS.map((p) => [p.name, p.section, p.edge, p.use, SURE[p.confidence], keys(p.sources)]),
  ),
];

function secondReadings(): string {
  const rows = SECOND_TABLES.flatMap(({ source, readings }) =>
    readings
      .filter((r) => r.differs)
      .map((r) => {
        const printed = r.min === r.max ? `${r.min}` : `${r.min}–${r.max}`;
        return [fullLabel(parseValue(r.system, r.written)!), printed, r.differs, source];
      }),
  );
  const all = SECOND_TABLES.map((t) => `- ${t.title} (${t.source}): ${t.readings.length} values`).join('\n');
  const note = `Compared with what ships, value by value:\n\n${all}\n\nThey agree save for these:`;
  return table('Second readings', ['size', 'printed mm', 'difference', 'source'], rows, note);
}

function sourceList(): string {
  const rows = Object.entries(SOURCES).map(([key, source]) => [key, source.cite, source.read ?? 'whole']);
  return table('Sources', ['key', 'work', 'read'], rows);
}

/** The whole page. */
export function valuesPage(): string {
  const head =
    '# Values\n\n' +
    'Generated by `server/tools/values-page.ts`; do not edit. Every value that ships, with its source (keys below) and how ' +
    'sure it is. "Confirmed": read in the standard or in two independent sources. "From memory": no text read shows it; ' +
    'check it against the paper standard.\n\n' +
    'A teaching aid. Read the label of the device; follow local codes and licensed practice.\n';
  return [
    head,
    ...sutures(),
    ...needles(),
    ...scales(),
    ...colours(),
    ...things(),
    secondReadings(),
    sourceList(),
  ].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(VALUES_PAGE, valuesPage());
