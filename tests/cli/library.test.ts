/** The built library, as somebody else's project meets it. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { VFile } from 'vfile';
import { expect, test } from 'vitest';
import type * as Library from '../../server/src/entry/index.ts';
import type * as Remark from '../../server/src/entry/remark.ts';
import { CHECK, CLI, RIGHT, WRONG } from './support.ts';

const built = (name: string): string => join(dirname(CLI), name);
const library = (await import(pathToFileURL(built('index.js')).href)) as typeof Library;
const { default: remarkSizes } = (await import(pathToFileURL(built('remark.js')).href)) as typeof Remark;

test('check, list and convert', () => {
  expect(library.check(RIGHT)).toEqual([]);
  expect(library.check(`# T\n\n${WRONG}`)[0]).toMatchObject({
    check: CHECK,
    place: { line: 3, column: 18, start: 22, end: 29 },
  });
  expect(library.list('Use 18 G.')).toMatchObject([{ text: '18 G', system: 'needle-gauge', value: '18' }]);
  // 1 Fr is 1/3 mm by definition (UCUM, unit [Ch]).
  expect(library.convert('18 Fr')).toContainEqual(
    expect.objectContaining({ from: '18 Fr', to: 'millimetre', text: '6 mm' }),
  );
  expect(library.convert('banana')).toEqual([]);
});

test('settings are those of a settings file; wrong ones are refused in words', () => {
  expect(library.check(WRONG, { settings: { checks: { [CHECK]: 'off' } } })).toEqual([]);
  expect(() => library.check('', { settings: { check: {} } })).toThrow(
    /no key "check"; did you mean "checks"/,
  );
});

test('neither library nor types need Node or another file', () => {
  expect(readFileSync(built('index.js'), 'utf8')).not.toMatch(
    /\brequire\(|from\s*"node:|\bprocess\.|\bdocument\./,
  );
  expect(readFileSync(built('index.d.ts'), 'utf8')).not.toMatch(/\bimport\b/);
  expect(readFileSync(built('remark.d.ts'), 'utf8').match(/from '(.+?)'/g)).toEqual(["from './index.js'"]);
});

test('the remark plugin reports messages with place, rule and what is expected', async () => {
  const file = new VFile({
    value: `# T\n\n${WRONG}\n\n${WRONG} <!-- wrong on purpose: a quiz -->\n`,
    path: 'week/a.md',
  });
  const processor = unified().use(remarkParse).use(remarkGfm).use(remarkSizes);
  await processor.run(processor.parse(file), file);
  expect(file.messages).toHaveLength(1);
  expect(file.messages[0]).toMatchObject({
    ruleId: CHECK,
    source: 'sizewright',
    fatal: false,
    line: 3,
    column: 18,
    expected: ['thinner'],
  });
  expect(String(file.messages[0])).toMatch(/^week\/a\.md:3:18-3:25: Says 22 G is thicker than 18 G\./);
});
