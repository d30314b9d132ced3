/** Settings, ignore files, links and names of a course that somebody means ill with. */

import { existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Folders } from '../../server/src/cli/course/folders.ts';
import { findNotes } from '../../server/src/cli/files/find.ts';
import { analyseWhole, mergeSettings, readSettings, SETTINGS_FILE } from '../../server/src/course/index.ts';
import { isTame, literalSigns, refusal } from '../../server/src/course/settings/patterns.ts';
import { CourseFiles } from '../../server/src/lsp/course-files.ts';
import { readSettings as readEditorSettings } from '../../server/src/lsp/settings.ts';
import { tell } from '../../server/src/texts/index.ts';
import { folderOf, sizewright } from '../cli/support.ts';
import { parseSource, sourceFiles } from '../house/source.ts';

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n';

const settings = (content: object): string => JSON.stringify(content);

function noteNames(cwd: string): string[] {
  const { paths } = findNotes([cwd], new Folders());
  return paths.map((path) => path.slice(cwd.length + 1)).sort();
}

describe('patterns', () => {
  it('that could keep a matcher busy for hours are refused, in words', () => {
    const bad = ['*a*a*a*a*b', '**/a/**/a/**/a/**/b', '{a,aa}{a,aa}{a,aa}b', 'a'.repeat(201)];
    for (const pattern of bad) {
      expect(refusal(pattern)).toBeDefined();
      for (const key of ['notes', 'leaveOut', 'ignoreFiles']) {
        const { file, problems } = readSettings(settings({ [key]: [pattern] }));
        expect(file).toBeUndefined();
        expect(problems.map(({ message }) => message)).toEqual([`"${key}": ${tell(refusal(pattern)!)}`]);
      }
    }
    expect(refusal('**/drafts/**')).toBeUndefined();
    expect(refusal('lectures/**/{week,part}-*.md')).toBeUndefined();
  });

  it('are no regular expressions', () => {
    expect(literalSigns('(a+)+|b')).toBe('\\(a\\+\\)\\+\\|b');
    expect(literalSigns('\\(a\\)')).toBe('\\(a\\)');
    const cwd = folderOf({
      [SETTINGS_FILE]: settings({ leaveOut: ['(a+)+b.md', 'old (2)/**', '+(x|xx)y.md'] }),
      [`${'a'.repeat(120)}.md`]: '',
      '(a+)+b.md': '',
      'old (2)/a.md': '',
      [`${'x'.repeat(120)}.md`]: '',
    });
    // The one that the settings name is left out, the others are found, and at once.
    expect(noteNames(cwd)).toEqual([`${'a'.repeat(120)}.md`, `${'x'.repeat(120)}.md`]);
  });

  it('in an ignore file that would take long are passed over', () => {
    const wild = [`${'**/a/'.repeat(8)}b`, `${'*a'.repeat(30)}*b`, '*'.repeat(2000)];
    expect(wild.map(isTame)).toEqual([false, false, false]);
    expect(['*.tmp', '/build/', '**/drafts/**', '!keep.md', '# all'].map(isTame)).toEqual(
      Array(5).fill(true),
    );
    const deep = `${'a/'.repeat(300)}x.md`;
    const cwd = folderOf({ '.gitignore': `${wild.join('\n')}\nlater.md\n`, 'later.md': '', [deep]: '' });
    expect(noteNames(cwd)).toEqual([deep]);
  });

  it('choose among the notes of their folder and reach no other', () => {
    const cwd = folderOf({
      'inner/a.md': '',
      'secret.md': '',
      [`inner/${SETTINGS_FILE}`]: settings({
        notes: ['../**', '/**', '**/../../*.md', '*.md'],
        ignoreFiles: ['../secret.md'],
      }),
    });
    expect(noteNames(join(cwd, 'inner'))).toEqual(['a.md']);
  });
});

describe('links', () => {
  it('that lead out of the repository are passed over, also when fixing', () => {
    const outside = folderOf({
      'own.md': 'A 4-0 suture is thicker than a 2-0 suture.\n',
      'deep/b.md': WRONG,
    });
    const cwd = folderOf({ 'course/a.md': WRONG, 'shared/c.md': WRONG });
    mkdirSync(join(cwd, '.git'));
    symlinkSync(join(outside, 'own.md'), join(cwd, 'course', 'own.md'));
    symlinkSync(join(outside, 'deep'), join(cwd, 'course', 'deep'));
    symlinkSync(join('..', 'shared'), join(cwd, 'course', 'within'));
    const before = readFileSync(join(outside, 'own.md'), 'utf8');
    const { stdout } = sizewright(['check', '-r', 'jsonl', 'course'], { cwd });
    expect(
      stdout
        .split('\n')
        .filter(Boolean)
        .map((line) => JSON.parse(line).file),
    ).toEqual(['course/a.md', 'course/within/c.md']);
    expect(sizewright(['fix', '.'], { cwd }).status).toBe(0);
    expect(readFileSync(join(outside, 'own.md'), 'utf8')).toBe(before);
  });

  it('without a repository the folder named is the bound', () => {
    const outside = folderOf({ 'own.md': WRONG });
    const cwd = folderOf({ 'a.md': WRONG });
    symlinkSync(join(outside, 'own.md'), join(cwd, 'own.md'));
    expect(noteNames(cwd)).toEqual(['a.md']);
    // Who names a link means it.
    expect(findNotes([join(cwd, 'own.md')]).paths).toEqual([join(cwd, 'own.md')]);
  });
});

describe('names of prototypes', () => {
  const HOSTILE =
    '{"names":{"materials":{"__proto__":"silk","constructor":"nylon","toString":"silk"},"devices":{"__proto__":"needle","valueOf":"cannula"}},"checks":{}}';
  const untouched = (): void => {
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect({}.constructor).toBe(Object);
  };

  it('as keys of settings change no object but their own', () => {
    for (const text of [
      HOSTILE,
      '{"__proto__":{"polluted":1}}',
      '{"checks":{"__proto__":{"polluted":1}}}',
      '{"constructor":{"prototype":{"polluted":1}}}',
      '{"style":{"__proto__":{"polluted":1}},"assume":{"constructor":{"polluted":1}}}',
    ]) {
      const { file } = readSettings(text);
      const merged = mergeSettings(file ? [file, file] : []);
      const note =
        'Toolong __proto__ 3-0 constructor 18 G valueOf toString hasOwnProperty 14 Fr.\n\nA constructor of 2-0 is thicker than a toString of 4-0.\n';
      expect(() => analyseWhole(note, merged)).not.toThrow();
      untouched();
    }
  });

  it('as settings of an editor neither', () => {
    for (const text of [
      '{"__proto__":{"findings":{"enabled":false}}}',
      '{"findings":{"severity":{"__proto__":"off","constructor":"off"}}}',
      '{"constructor":7}',
    ]) {
      const read = readEditorSettings(JSON.parse(text));
      expect(read.findings).toBe(true);
      untouched();
    }
  });

  it('as names of notes, in the cache and in the record of accepted findings', () => {
    const names = ['__proto__', 'constructor', 'toString.md', '__proto__.md'];
    const cwd = folderOf(
      Object.fromEntries(names.map((name) => [name.endsWith('.md') ? name : `${name}/a.md`, WRONG])),
    );
    expect(sizewright(['accept', '.'], { cwd }).stdout).toContain('4 findings recorded');
    for (let round = 0; round < 2; round++)
      expect(sizewright(['check', '--cache', '.kept', '.'], { cwd }).status).toBe(0);
    writeFileSync(join(cwd, 'toString.md'), 'A 14 G cannula is thinner than a 20 G cannula.\n');
    expect(sizewright(['check', '--cache', '.kept', '.'], { cwd }).status).toBe(1);
  });
});

it('an address that is not well formed is no reason to fail', async () => {
  const files = new CourseFiles(
    (uri) => Promise.resolve(uri.endsWith(SETTINGS_FILE) ? settings({ leaveOut: ['drafts/**'] }) : null),
    () => undefined,
  );
  files.begin(['file:///course']);
  expect(await files.keeps('file:///course/100%.md')).toBe(true);
  expect(await files.keeps('file:///course/drafts/%ff.md')).toBe(false);
});

describe('no code of a workspace is run', () => {
  const shipped = ['server/src', 'client/src', 'client/webview'].flatMap(sourceFiles);
  const STARTER = 'server/src/entry/start.ts';

  it('one place starts a program, and that is git, without a shell', () => {
    const starting = shipped.filter((path) =>
      parseSource(path).imports.some(({ specifier }) => /child_process/.test(specifier)),
    );
    expect(starting).toEqual(['server/src/cli/course/revision.ts']);
    const source = readFileSync(starting[0]!, 'utf8');
    expect(source.match(/spawnSync\(\s*'git',\s*\[/g)).toHaveLength(1);
    expect(source.match(/\b(?:spawn|exec|fork)\w*\(/g)).toHaveLength(1);
    expect(source).not.toMatch(/shell: true|exec\(/);
  });

  it('nothing is evaluated, and nothing loaded by a name that is not written down', () => {
    for (const path of shipped) {
      const source = readFileSync(path, 'utf8');
      const allowed = path === STARTER ? 'vm' : undefined;
      expect([path, /\beval\(|new Function\(|\bvm\b/.exec(source)?.[0]]).toEqual([path, allowed]);
      expect([path, /\bimport\((?!['"])/.exec(source)?.[0]]).toEqual([path, undefined]);
    }
  });

  it('a starter runs the program that was built beside it, and no other', () => {
    const source = readFileSync(STARTER, 'utf8');
    expect(source).toContain('const file = join(__dirname, PROGRAM);');
    expect(source.match(/\bnew Script\(/g)).toHaveLength(1);
    expect(source.match(/readFileSync\((\w+)/g)).toEqual(['readFileSync(file']);
    expect(source).not.toMatch(/process\.(?:argv|env|cwd)|runInNewContext|\brequire\(/);
  });

  it('a course with files named as configuration of tools runs none of them', () => {
    const trap = "require('fs').writeFileSync('ran', '')";
    const cwd = folderOf({
      'a.md': WRONG,
      'sizewright.config.js': trap, '.sizewrightrc.js': trap, 'sizewright.course.js': trap,
      'node_modules/sizewright/index.js': trap, 'package.json': settings({ main: 'trap.js', sizewright: { plugins: ['./trap.js'] } }), 'trap.js': trap,
    }); // biome-ignore format: a table
    expect(sizewright(['check', '.'], { cwd }).status).toBe(1);
    expect(existsSync(join(cwd, 'ran'))).toBe(false);
  });
});
