import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import Ajv from 'ajv';
import addFormats from 'ajv-formats';
import { describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { CHECK, folderOf, jsonLines, RIGHT, sizewright, WRONG } from './support.ts';

/** A note with everything a report must bear: markup, odd characters, a deliberate mark, a name with spaces. */
const NOTES = {
  'week 1/a&b <x>.md': `# "Needles" & <wires>\n\n${WRONG}\n\nÉtude 🩺 ${WRONG}\n`,
  'b.md': `${RIGHT}\n`,
  'c.md': `${WRONG} <!-- wrong on purpose: learners correct it -->\n\nGrab a size 7 tube.\u0001\n`,
  'd.md': 'Nothing here.\n',
};

const report = (kind: string, cwd: string, ...args: string[]): string =>
  sizewright(['check', '-r', kind, ...args], { cwd }).stdout;

interface Sarif {
  runs: {
    tool: { driver: { rules: { id: string; help: { text: string }; properties: { kind: string } }[] } };
    results: {
      ruleId: string;
      ruleIndex: number;
      properties: { kind: string };
      partialFingerprints: Record<string, string>;
      suppressions?: { kind: string; justification: string }[];
      locations: {
        physicalLocation: { artifactLocation: { uri: string }; region: Record<string, number> };
      }[];
      fixes?: unknown[];
    }[];
  }[];
}

/** The schema of the OASIS standard, as its authors publish it in a package. */
function sarifSchema(): object {
  const home = createRequire(import.meta.url).resolve('@microsoft/jest-sarif/package.json');
  const folder = join(home, '..', 'lib', 'schemas');
  // Declared in draft 4, of which it uses nothing that draft 7 reads otherwise.
  const {
    id: _id,
    $schema: _draft,
    ...schema
  } = JSON.parse(readFileSync(join(folder, readdirSync(folder)[0]!), 'utf8'));
  return schema;
}

describe('SARIF 2.1.0', () => {
  const ajv = new Ajv({ strict: false, allErrors: true, unicodeRegExp: false });
  addFormats(ajv);
  const valid = ajv.compile(sarifSchema());

  test.each([
    ['check', NOTES],
    ['list', NOTES],
    ['check', { 'd.md': 'Nothing.\n' }],
  ] as const)('%s is valid against the schema of the standard', (command, notes) => {
    const log = JSON.parse(sizewright([command, '-r', 'sarif'], { cwd: folderOf(notes) }).stdout);
    expect(valid(log), JSON.stringify(valid.errors?.slice(0, 3))).toBe(true);
  });

  test('rules have a kind and help; results point at them and say where', () => {
    const [run] = (JSON.parse(report('sarif', folderOf(NOTES))) as Sarif).runs;
    for (const rule of run!.tool.driver.rules) {
      expect(['contradiction', 'ambiguity', 'style']).toContain(rule.properties.kind);
      expect(rule.help.text.length).toBeGreaterThan(20);
    }
    for (const result of run!.results) {
      expect(run!.tool.driver.rules[result.ruleIndex]!.id).toBe(result.ruleId);
      expect(result.properties.kind).toBe(run!.tool.driver.rules[result.ruleIndex]!.properties.kind);
    }
    const wrong = run!.results.filter((one) => one.ruleId === CHECK);
    expect(wrong.map((one) => one.locations[0]!.physicalLocation.artifactLocation.uri)).toEqual([
      'c.md',
      'week%201/a%26b%20%3Cx%3E.md',
      'week%201/a%26b%20%3Cx%3E.md',
    ]);
    expect(wrong[0]!.suppressions).toEqual([{ kind: 'inSource', justification: 'learners correct it' }]);
    expect(wrong[1]!.locations[0]!.physicalLocation.region).toMatchObject({
      startLine: 3,
      startColumn: WRONG.indexOf('thicker') + 1,
    });
    expect(wrong[1]!.fixes).toHaveLength(1);
    expect(wrong[1]!.partialFingerprints).not.toEqual(wrong[2]!.partialFingerprints);
  });
});

describe('other reports', () => {
  test('JUnit XML is valid against its common schema', async () => {
    const contents = report('junit', folderOf(NOTES));
    const schema = readFileSync(join(import.meta.dirname, 'junit.xsd'), 'utf8');
    const result = await validateXML({
      xml: [{ fileName: 'report.xml', contents }],
      schema: [{ fileName: 'junit.xsd', contents: schema }],
    });
    expect(result.errors.map((error) => error.message)).toEqual([]);
    expect(result.valid).toBe(true);
    expect(contents).toMatch(/name="c\.md"[^>]* tests="2" failures="1" errors="0" skipped="1"/);
    expect(contents).toMatch(/name="d\.md"[^>]* tests="1" failures="0"/);
  });

  test('the schema of these tests refuses what is not JUnit XML', async () => {
    const schema = readFileSync(join(import.meta.dirname, 'junit.xsd'), 'utf8');
    const contents = '<testsuites><testsuite name="a"/></testsuites>';
    const result = await validateXML({
      xml: [{ fileName: 'report.xml', contents }],
      schema: [{ fileName: 'junit.xsd', contents: schema }],
    });
    expect(result.valid).toBe(false);
  });

  test('annotations: a workflow command a finding, with its special characters written out', () => {
    const lines = report('annotations', folderOf({ 'a,b: 100%.md': WRONG }))
      .trim()
      .split('\n');
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(
      /^::warning file=a%2Cb%3A 100%25\.md,line=1,endLine=1,col=18,endColumn=25,title=size-comparison::/,
    );
    expect(lines[0]).not.toContain('\n');
  });

  test('summary: counts by check and by note, names made harmless', () => {
    const text = report('summary', folderOf({ ...NOTES, 'a|b_c_.md': WRONG }));
    expect(text).toContain(`| \`${CHECK}\` | These sizes compare the other way | 3 |`);
    expect(text).toContain('| a\\|b\\_c\\_.md | 1 | 1 |');
    expect(text).toContain('week 1/a\\&b \\<x\\>.md | 3 | 2 |');
  });

  test('page: one file, nothing loaded from elsewhere, markup of notes made harmless, pictures inside', () => {
    const text = report(
      'page',
      folderOf({ 'a.md': `<script>alert(1)</script>\n\nIn short, <b>${WRONG}</b>\n` }),
    );
    expect(text).not.toMatch(/<script|<b>|(?:src|href)\s*=|@import|url\(/);
    expect(text).toContain('<mark>thicker</mark>');
    expect(text).toContain('<svg');
    expect(text).toContain("default-src 'none'");
  });

  test('several at once, each to its file; text on standard output', () => {
    const cwd = folderOf(NOTES);
    const { stdout, status } = sizewright(
      ['check', '-r', 'text', '-r', 'sarif=out.sarif', '-r', 'junit=out.xml', '-r', 'page=p=1.html'],
      { cwd },
    );
    expect(status).toBe(1);
    expect(stdout).toContain('4 notes read');
    expect(JSON.parse(readFileSync(join(cwd, 'out.sarif'), 'utf8')).version).toBe('2.1.0');
    expect(readFileSync(join(cwd, 'out.xml'), 'utf8')).toMatch(/<\/testsuites>\n$/);
    expect(readFileSync(join(cwd, 'p=1.html'), 'utf8')).toMatch(/<\/html>\n$/);
    expect(readdirSync(cwd).filter((name) => name.endsWith('.new'))).toEqual([]);
  });

  test('JSON lines: each finding with its edits', () => {
    const [one] = jsonLines<{ fixes: { safety: string; edits: unknown[] }[] }>(
      report('jsonl', folderOf({ 'a.md': WRONG })),
    );
    expect(one!.fixes[0]).toMatchObject({
      safety: 'safe',
      edits: [{ line: 1, column: 18, endLine: 1, endColumn: 25, text: 'thinner' }],
    });
  });
});

describe('a spread run', () => {
  const many = {
    ...Object.fromEntries(Array.from({ length: 23 }, (_, i) => [`n${i}.md`, i % 2 ? WRONG : RIGHT])),
    // Notes that differ from each other, in different parts.
    'a.md': 'The triple-lumen line is 7 Fr.\n',
    'b.md': 'The triple-lumen line is 9 Fr.\n',
    'quiet/c.md': 'The triple-lumen line is 8 Fr.\n',
    'quiet/sizewright.course.json': '{ "checks": { "course-differs": "off" } }',
  };

  test.each(['sarif', 'jsonl', 'summary', 'text', 'page'])(
    'parts merged give the %s report of the whole',
    (kind) => {
      const cwd = folderOf(many);
      for (const i of [1, 2, 3]) sizewright(['check', '--shard', `${i}/3`, '-r', `parts=part${i}`], { cwd });
      const merged = sizewright(['merge', 'part3', 'part1', 'part2', '-r', kind], { cwd });
      const whole = sizewright(['check', '-r', kind], { cwd });
      expect(merged.stdout).toBe(whole.stdout);
      expect(merged.status).toBe(1);
    },
  );

  test('a file that is no part is refused', () => {
    const cwd = folderOf({ 'x.json': '{}\n', 'y.md': 'no' });
    expect(sizewright(['merge', 'x.json'], { cwd }).stderr).toContain('x.json: not written by');
    expect(sizewright(['merge', 'y.md'], { cwd })).toMatchObject({ status: 2 });
  });
});
