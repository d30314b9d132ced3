/**
 * Every table of sizes as it is written, stored: its columns, its values, its sources. The values themselves are held to
 * the published tables; here nothing of how they are shown changes unseen. `UPDATE=1` writes the file anew.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  label,
  type Request,
  readRequest,
  SUBJECT_WORDS,
  sheetChart,
  sheetDrawings,
  sheetTable,
  sheetText,
  wholeSystem,
} from '../../server/src/sizes/index.ts';
import { lensOfSubject } from '../../server/src/sizes/sheet/request.ts';
import { tell } from '../../server/src/texts/index.ts';

const STORED = join(import.meta.dirname, 'sheets.golden.md');

function requested(text: string): Request {
  const request = readRequest(text);
  if ('problem' in request) throw new Error(tell(request.problem));
  return request;
}

const written = (word: string): string => `# ${word}\n\n${sheetTable(requested(word))}\n`;

/** Whole series, and sizes of which some have no value. */
const ALL = [
  ...SUBJECT_WORDS,
  'usp 11 6-0 10-0',
  'metric 0.1 8',
  'gauge 13 36',
  'wire 0.01 0.07',
  'hegar 26',
];

if (process.env.UPDATE) writeFileSync(STORED, ALL.map(written).join('\n'));

describe('tables', () => {
  it.each(ALL)('%s is written as it was', (word) => {
    const stored = readFileSync(STORED, 'utf8').split(/\n(?=# )/);
    expect(stored.map((sheet) => sheet.trimEnd())).toContain(written(word).trimEnd());
  });

  it('is what is made when a table is asked for, and a chart when a chart is', () => {
    const request = requested('french 6 8');
    expect(sheetText('table', request)).toBe(sheetTable(request));
    expect(sheetText('chart', request)).toBe(sheetChart(request));
  });
});

describe('charts', () => {
  it('draws the thing that the subject is about, and names its sources below', () => {
    const [cannula, needle] = ['cannula 20', 'needle 20'].map((text) => sheetChart(requested(text)));
    expect(cannula).not.toBe(needle);
    expect(cannula!.split('\n').at(-1)).toBe(sheetTable(requested('cannula 20')).split('\n').at(-1));
    expect(sheetDrawings(requested('usp 11'))).toBeUndefined();
  });

  it('writes one element a line', () => {
    const svg = sheetChart(requested('french 6 8')).split('</svg>')[0]!;
    expect(svg).not.toContain('><');
  });
});

describe('what is asked for', () => {
  const sizes = (text: string): string[] => requested(text).sizes.map(label);

  it.each([
    ['french 12, 14 Fr', ['12 Fr', '14 Fr']],
    ['  FRENCH;12;14ch ', ['12 Fr', '14 Fr']],
    ['gauge 18g 20 ga. 22 Gauge', ['18 G', '20 G', '22 G']],
    ['usp 3/0 00 #1', ['3-0', '2-0', '1']],
    ['wire 0.035in .018', ['0.035 in', '0.018 in']],
    ['french f 12', ['12 Fr']],
    ['french 12F. 14french', ['12 Fr', '14 Fr']],
  ])('%s', (text, wanted) => {
    expect(sizes(text)).toEqual(wanted);
  });

  it('takes as many sizes as are allowed, and no more', () => {
    expect(sizes(`french ${'12 '.repeat(60)}`)).toHaveLength(60);
    expect(readRequest(`french ${'12 '.repeat(61)}`)).toHaveProperty('problem');
  });

  it.each([
    ['shoes 12', ['“shoes” names no table or chart']],
    ['toString', ['toString', 'usp, metric, gauge, needle, cannula, french, wire, hegar']],
    ['gauge blue', ['blue']],
    ['usp 2-0 3-0x0', ['3-0x0']],
    ['french gx', ['gx']],
    ['french xg 12', ['xg']],
  ])('%s: what is wrong is named', (text, words) => {
    const request = readRequest(text);
    if (!('problem' in request)) throw new Error('read');
    const said = tell(request.problem);
    for (const word of words) expect(said).toContain(word);
  });

  it.each([
    ['usp', '8-0', '2', 10],
    ['cannula', '26 G', '14 G', 8],
    ['wire', '0.014 in', '0.038 in', 6],
  ] as const)('the whole series %s runs from %s to %s', (subject, first, last, many) => {
    const all = wholeSystem(subject).map(label);
    expect([all[0], all.at(-1)]).toEqual([first, last]);
    expect(all).toHaveLength(many);
    expect(new Set(all).size).toBe(all.length);
  });

  it('knows the thing that a subject is about', () => {
    expect(lensOfSubject('needle')).toEqual({ device: 'needle' });
    expect(lensOfSubject('cannula')).toEqual({ device: 'cannula' });
    expect(lensOfSubject('gauge')).toEqual({});
  });
});
