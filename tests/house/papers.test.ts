/** README, DEVELOPERS and the changelog keep their promises: generated parts are fresh, links lead somewhere, examples hold. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { analyse, readSettings } from '../../server/src/course/index.ts';
import { renewed, SECTIONS } from '../../server/tools/readme.ts';
import { ROOT, read } from './source.ts';

const PAPERS = ['README.md', 'DEVELOPERS.md', 'CHANGELOG.md'];

const contradictions = (text: string): string[] =>
  analyse(text)
    .findings.filter(({ kind }) => kind === 'contradiction')
    .map(({ says }) => says);

describe('the papers', () => {
  it('generate what can drift (npx tsx server/tools/readme.ts)', () => {
    expect(SECTIONS.checks!()).toContain('`size-direction`');
    expect(SECTIONS.settings!()).toContain('`leaveOut`');
    expect(renewed(read('README.md'))).toBe(read('README.md'));
  });

  it('show settings that are read without complaint', () => {
    const shown = /```json\n(\{\n {2}"leaveOut"[\s\S]*?)\n```/.exec(read('README.md'))?.[1];
    expect(readSettings(shown ?? '').problems).toEqual([]);
    expect(readSettings('{ "leafOut": [] }').problems).toHaveLength(1);
  });

  it.each(PAPERS)('%s links only to files that are there', (paper) => {
    const targets = [...read(paper).matchAll(/\]\(([^)#:\s]+)\)/g)].map((match) => match[1]!);
    expect(targets.filter((target) => !existsSync(join(ROOT, target)))).toEqual([]);
  });

  it.each(PAPERS)('%s names only scripts that package.json has', (paper) => {
    const scripts = [...read(paper).matchAll(/\bnpm run ([a-z][a-z:-]*)/g)].map((match) => match[1]!);
    expect(scripts.filter((script) => !(script in manifest.scripts))).toEqual([]);
  });

  it.each(PAPERS)('%s names only files that are there', (paper) => {
    const named = [...read(paper).matchAll(/\b(?:server|tests|grammars|client)\/[\w./-]*\w/g)].map(
      (match) => match[0],
    );
    expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });

  it('show a warning as the command line prints it', () => {
    const shown = /```text\n(tests\/course\/[\s\S]*?)\n```/.exec(read('README.md'))?.[1];
    expect(shown).toBeDefined();
    expect(read('tests/house/course.golden.txt')).toContain(shown);
  });

  it('say the cautions', () => {
    expect(read('README.md')).toContain(
      'A teaching aid, not advice on a patient. Read the device label; follow local codes',
    );
  });
});

describe('what is left unread on purpose', () => {
  const table =
    /<!-- refused constructions[^>]*-->([\s\S]*?)<!-- end of refused/.exec(read('DEVELOPERS.md'))?.[1] ?? '';
  const examples = [...table.matchAll(/^\| (?!Example)([^|]+?) \|/gm)].map((match) => match[1]!);

  it('has its examples', () => {
    expect(examples.length).toBeGreaterThanOrEqual(15);
    expect(contradictions('A 22 G needle is thicker than an 18 G needle.')).toHaveLength(1);
  });

  it.each(examples)('%s', (example) => {
    expect(contradictions(example)).toEqual([]);
  });
});
