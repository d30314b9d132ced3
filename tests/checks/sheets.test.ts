/** Kept tables and charts: where they stand in a note, what each form holds, and what is said of one that is not as it should be. */
import { describe, expect, it } from 'vitest';
import { closingMark, sheetBody, sheetsOf } from '../../server/src/checks/index.ts';
import { analyseWhole } from '../../server/src/course/index.ts';
import { type Request, readRequest } from '../../server/src/sizes/index.ts';

const request = readRequest('french 12 14') as Request;
const kept = (form: 'table' | 'chart', body: string): string =>
  `<!-- sizes ${form}: french 12 14 -->${body}${closingMark}\n`;
const sheets = (text: string) => sheetsOf(analyseWhole(text).note);
const findings = (text: string) => analyseWhole(text).findings;

describe('where they stand', () => {
  it('reads form, wish and body, whatever the case and the blanks', () => {
    expect(sheets('<!--  Sizes CHART :  french 12  -->\n\nx\n\n<!-- End of sizes -->\n')).toMatchObject([
      { form: 'chart', wanted: 'french 12', body: { start: 35, end: 40 } },
    ]);
    expect(sheets('<!-- sizes table:french 12-->\n<!--end of sizes-->\n')).toMatchObject([
      { form: 'table', wanted: 'french 12', body: { start: 29, end: 30 } },
    ]);
  });

  it.each([
    '<!-- sizes table french 12 -->',
    '<!-- my sizes table: french 12 -->',
    '<!-- sizes list: french 12 -->',
    '<!-- end of sizes -->',
  ])('nothing is kept by %s', (comment) => {
    expect(sheets(`${comment}\n`)).toEqual([]);
    expect(findings(`${comment}\n`)).toEqual([]);
  });

  it('ends at the closing comment and at no other', () => {
    const [open, closed] = sheets(
      `<!-- sizes table: usp -->\n\n<!-- sizes chart: usp -->\n\n${closingMark}\n\n${closingMark}\n`,
    );
    expect(open).not.toHaveProperty('body');
    expect(closed).toHaveProperty('body');
    expect(sheets('<!-- sizes table: usp -->\n\n<!-- the end of sizes -->\n')[0]).not.toHaveProperty('body');
    expect(sheets('<!-- sizes table: usp -->\n\n<!-- end of sizes? -->\n')[0]).not.toHaveProperty('body');
  });
});

describe.each(['table', 'chart'] as const)('a %s', (form) => {
  const right = kept(form, sheetBody(form, request, '\n'));

  it('says nothing while it is as it should be', () => {
    expect(findings(right)).toEqual([]);
    expect(findings(right.replaceAll('\n', '\r\n'))).toEqual([]);
  });

  it('that was changed by hand is written anew', () => {
    const wrong = right.replace('14 Fr', '15 Fr');
    const [found, ...more] = findings(wrong).filter(({ check }) => check === 'size-sheet');
    expect(more).toEqual([]);
    expect(found).toMatchObject({
      kind: 'style',
      severity: 'warning',
      span: sheets(wrong)[0]!.comment.span,
      says: `This ${form} differs from the values it is made of.`,
      source: 'this checker',
      fixes: [{ title: `Bring the ${form} up to date`, safety: 'safe' }],
    });
    const [edit] = found!.fixes[0]!.edits;
    expect(wrong.slice(0, edit!.span.start) + edit!.text + wrong.slice(edit!.span.end)).toBe(right);
  });

  it('is missed and renewed in these words', () => {
    const common = {
      check: 'size-sheet',
      kind: 'style',
      severity: 'warning',
      source: 'this checker',
      sources: [],
      related: [],
      derivation: [],
    };
    const comment = `<!-- sizes ${form}: french 12 14 -->`;
    const text = sheetBody(form, request, '\n');
    const at = comment.length;
    expect(findings(comment)).toEqual([
      {
        ...common,
        span: { start: 0, end: at },
        says: `The ${form} is missing.`,
        holds: 'It ends with <!-- end of sizes -->.',
        fixes: [
          {
            title: `Write the ${form} here`,
            safety: 'choice',
            edits: [{ span: { start: at, end: at }, text: `${text}${closingMark}` }],
          },
        ],
      },
    ]);
    expect(findings(`${comment}\n\n${closingMark}`)).toEqual([
      {
        ...common,
        span: { start: 0, end: at },
        says: `This ${form} differs from the values it is made of.`,
        holds: 'It is written by the checker; change the comment, not the rows.',
        fixes: [
          {
            title: `Bring the ${form} up to date`,
            safety: 'safe',
            edits: [{ span: { start: at, end: at + 2 }, text }],
          },
        ],
      },
    ]);
  });

  it('that is missing is written where its comment ends, with the line endings of the note', () => {
    for (const newline of ['\n', '\r\n']) {
      const comment = `<!-- sizes ${form}: french 12 14 -->`;
      const [found] = findings(comment + newline);
      const [edit] = found!.fixes[0]!.edits;
      expect(edit!.span).toEqual({ start: comment.length, end: comment.length });
      expect(comment + edit!.text + newline).toBe(right.replaceAll('\n', newline));
    }
  });

  it('that nobody can make says why, and has no fix', () => {
    const [found, ...more] = findings(`<!-- sizes ${form}: shoes -->\n\n${closingMark}\n`);
    expect(more).toEqual([]);
    expect(found).toMatchObject({ check: 'size-sheet', fixes: [] });
    expect(found!.holds).toContain('“shoes” names no table or chart');
  });
});

describe('a table that a formatter went over', () => {
  const right = kept('table', sheetBody('table', request, '\n'));
  const differs = (text: string): boolean => findings(text).some(({ check }) => check === 'size-sheet');

  it.each([
    ['aligned columns', (text: string) => text.replaceAll('---', '--------').replaceAll(' |', ' \t  |')],
    ['an indent', (text: string) => text.replaceAll('\n|', '\n  |')],
    ['more blank lines', (text: string) => text.replaceAll('\n\n', '\n\n\n \n')],
    ['line endings of old machines', (text: string) => text.replaceAll('\n', '\r')],
  ])('may have %s', (_, change) => {
    expect(change(right)).not.toBe(right);
    expect(differs(change(right))).toBe(false);
  });

  it.each([
    ['a blank within a number', (text: string) => text.replace('14 Fr', '1 4 Fr')],
    ['two rows run into one', (text: string) => text.replace('|\n| 14', '|| 14')],
    ['the line below the head taken away', (text: string) => text.replaceAll('---', '')],
    ['a dash for three', (text: string) => text.replaceAll('---', '-')],
  ])('may not have %s', (_, change) => {
    expect(change(right)).not.toBe(right);
    expect(differs(change(right))).toBe(true);
  });
});
