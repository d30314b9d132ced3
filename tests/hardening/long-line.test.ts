/** One line with thousands of findings: what is made of them grows with the line, not with its square. */
import { describe, expect, it } from 'vitest';
import { mend } from '../../server/src/cli/fix/edits.ts';
import { CHECK_REPORTS } from '../../server/src/cli/report/kinds.ts';
import { placed } from '../../server/src/cli/result.ts';
import { analyseWhole } from '../../server/src/course/index.ts';
import { actionsIn } from '../../server/src/editor/index.ts';

const WRONG = 'A 4-0 suture is thicker than a 2-0 suture.';
const COUNT = 1500;
const text = `${WRONG} `.repeat(COUNT);
const analysis = analyseWhole(text);
const result = placed('a.md', analysis, 'findings')!;

describe('a line with thousands of findings', () => {
  it('is quoted in parts, each with its finding', () => {
    expect(result.findings).toHaveLength(COUNT);
    for (const { excerpt, excerptAt = 0, place } of result.findings) {
      expect(excerpt.length).toBeLessThanOrEqual(1000);
      expect(excerpt.slice(place.column - 1 - excerptAt, place.endColumn - 1 - excerptAt)).toBe(
        text.slice(place.start, place.end),
      );
    }
  });

  it.each(['text', 'jsonl', 'sarif', 'junit', 'page', 'parts'] as const)(
    'makes a %s report of usual length',
    (name) => {
      const report = CHECK_REPORTS[name]({ colour: false }).note(result);
      expect(report.length / COUNT).toBeGreaterThan(100);
      expect(report.length / COUNT).toBeLessThan(6000);
    },
  );

  it('marks the word in the page and in the text', () => {
    const last = { ...result, findings: result.findings.slice(-1) };
    expect(CHECK_REPORTS.page({ colour: false }).note(last)).toContain('<mark>thicker</mark>');
    const [, line = '', marks = ''] = CHECK_REPORTS.text({ colour: false }).note(last).split('\n');
    expect(line.slice(marks.indexOf('^'), marks.lastIndexOf('^') + 1)).toBe('thicker');
  });

  it('is mended as a whole', () => {
    expect(mend(text, analysis.findings).text).toBe(text.replaceAll('thicker', 'thinner'));
  });

  it('offers the end of the line for each mark of intent', () => {
    const ends = actionsIn(analysis, { start: 0, end: text.length }).flatMap(
      ({ reasonAt }) => reasonAt ?? [],
    );
    expect(new Set(ends)).toEqual(new Set([text.trimEnd().length]));
    expect(ends).toHaveLength(COUNT);
  });

  it('never cuts a character in half', () => {
    const emoji = `${'Smile 😀😀😀. '.repeat(99)}${WRONG} ${'Smile 😀😀😀. '.repeat(99)}`;
    for (const shift of ['', 'x ', 'xx ', 'xxx ', 'xxxx ', 'xxxxx ']) {
      const [one] = placed('a.md', analyseWhole(shift + emoji), 'findings')!.findings;
      expect(one!.excerpt).not.toMatch(/^[\udc00-\udfff]|[\ud800-\udbff]$/);
      expect(one!.excerpt).toContain(WRONG);
    }
  });
});
