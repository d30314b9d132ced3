/** Tables and charts: what is generated is never itself found wrong, and says what the tables of the standards say. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/src/course/index.ts';
import { sheetStretch } from '../../server/src/editor/sheets.ts';
import { readRequest, SUBJECT_WORDS, sheetText } from '../../server/src/sizes/index.ts';

const stretch = (form: 'table' | 'chart', wanted: string, newline = '\n'): string => {
  const made = sheetStretch(form, wanted, newline);
  if ('problem' in made) throw new Error(made.problem);
  return made.text;
};

describe.each(SUBJECT_WORDS)('%s', (subject) => {
  test.each(['table', 'chart'] as const)('its %s holds no finding, with either newline', (form) => {
    for (const newline of ['\n', '\r\n']) {
      const note = `# Sizes${newline}${newline}${stretch(form, subject, newline)}`;
      expect(analyse(note).findings).toEqual([]);
    }
  });

  test('a changed value is reported, and the fix restores it', () => {
    const right = stretch('table', subject);
    const wrong = right.replace(/(\| [^|]*)\|\n\n\*Source/, '| 77 mm |\n\n*Source');
    expect(wrong).not.toBe(right);
    const found = analyse(wrong).findings.find((finding) => finding.check === 'size-sheet');
    const [edit] = found!.fixes[0]!.edits;
    expect(wrong.slice(0, edit!.span.start) + edit!.text + wrong.slice(edit!.span.end)).toBe(right);
  });
});

test('a table that a formatter aligned is still up to date', () => {
  const aligned = stretch('table', 'french 12 14')
    .replace('| 12 Fr | 4 mm |', '| 12 Fr  | 4 mm        |')
    .replace(/--- /g, '----------- ');
  expect(analyse(aligned).findings).toEqual([]);
});

test('a table with blank lines more or fewer around it is still up to date', () => {
  const right = stretch('table', 'french 12 14');
  for (const note of [right.replaceAll('\n\n', '\n\n\n'), right.replace('-->\n\n', '-->\n')]) {
    expect(note).not.toBe(right);
    expect(analyse(note).findings).toEqual([]);
  }
});

test('what is wrong with a table is said, with nothing beside it', () => {
  const comment = '<!-- sizes table: french 12 -->';
  const [found, ...more] = analyse(`${comment}\n`).findings;
  expect(more).toEqual([]);
  expect({ ...found, fixes: found!.fixes.map(({ title, safety }) => [title, safety]) }).toEqual({
    check: 'size-sheet',
    kind: 'style',
    severity: 'warning',
    span: { start: 0, end: comment.length },
    says: 'The table is missing.',
    holds: 'It ends with <!-- end of sizes -->.',
    source: 'this checker',
    sources: [],
    fixes: [['Write the table here', 'choice']],
    related: [],
    derivation: [],
  });
});

test('no blank line ends the picture early, and its text is escaped', () => {
  const chart = sheetText('chart', readRequest('gauge 14 16 18') as never);
  const picture = chart.slice(0, chart.indexOf('</svg>'));
  expect(picture).not.toMatch(/\n\s*\n/);
  expect(picture.split('\n')[0]).toMatch(/^<svg [^>]*>$/);
});

// Worked conversions: 1 Fr = 1/3 mm (UCUM, unit [Ch]) and 1 in = 25.4 mm exactly (international inch).
test.each([
  ['french 12', '| 12 Fr | 4 mm | 0.157 in |'],
  ['french 14', '| 14 Fr | 4.67 mm | 0.184 in |'],
  ['wire 0.035', '| 0.035 in | 0.889 mm | 2.7 Fr |'],
  ['hegar 8', '| Hegar 8 | 8 mm | 24 Fr |'],
])('%s', (wanted, row) => {
  expect(stretch('table', wanted)).toContain(row);
});

test.each([
  ['shoes', 'names no table or chart'],
  ['', 'names no table or chart'],
  ['gauge blue', 'no size of this kind'],
  [`french ${'12 '.repeat(61)}`, '60 sizes at most'],
])('"%s" is refused', (wanted, why) => {
  expect(sheetStretch('table', wanted, '\n')).toEqual({ problem: expect.stringContaining(why) });
});

// No USP size is thicker than 10 (comparison table of the European Pharmacopoeia).
test('a size that no table has shows no value, names no source and is not drawn', () => {
  const table = stretch('table', 'usp 11');
  expect(table).toContain('| 11 | – | – | – |');
  expect(table).not.toContain('Source:');
  expect(stretch('chart', 'usp 11')).toContain('*No size here has a diameter to draw.*');
  expect(stretch('chart', 'usp 10')).toContain('<svg');
});
