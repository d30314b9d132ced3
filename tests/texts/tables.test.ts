/** Every text a reader is shown stands in a table, in English and in German, with the same slots. */
import { describe, expect, it } from 'vitest';
import type { Text } from '../../server/src/texts/index.ts';
import { parseSource, sourceFiles } from '../house/source.ts';

const TABLE =
  /\/texts(?:\/(?!words\/|[\w-]+\.ts$).*|\.ts$)|\/(?:sizes|mentions|claims|checks|course|editor)\/texts\//;
const tables = sourceFiles('server/src').filter((path) => TABLE.test(path));

/** `file > TABLE.id` with its text; tables may nest. */
async function texts(): Promise<[string, Text][]> {
  const found: [string, Text][] = [];
  const visit = (name: string, value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('en' in value) found.push([name, value as Text]);
    else for (const [key, inner] of Object.entries(value)) visit(`${name}.${key}`, inner);
  };
  for (const path of tables) visit(path, { ...(await import(/* @vite-ignore */ `../../${path}`)) });
  return found;
}

const slots = (template: string): string[] =>
  [...template.matchAll(/\{\^?(\w+)\}/g)].map((match) => match[1]!).sort();

describe('tables of texts', async () => {
  const all = await texts();

  it('are found', () => {
    expect(tables.length).toBeGreaterThan(15);
    expect(all.length).toBeGreaterThan(150);
  });

  it.each(all)('%s', (_, { en, de, ...others }) => {
    expect(Object.keys(others)).toEqual([]);
    expect(slots(de)).toEqual(slots(en));
    expect(de === '').toBe(en === '');
    // What has a blank at its end is put before something.
    expect(/\s$/.test(de)).toBe(/\s$/.test(en));
  });

  it('say each thing in words of the language', () => {
    const wordless = /^(?:[^\p{L}]|\{\^?\w+\}|mm|in|ID|USP|\bread\b)*$/u;
    const same = all.filter(([, { en, de }]) => en === de && !wordless.test(en)).map(([name]) => name);
    expect(same).toEqual([]);
  });
});

describe('no text is made outside the tables', () => {
  /** The check's own title and page stand in English in its file; an assistant is answered in English. */
  const ENGLISH_ONLY = ['server/src/editor/tools.ts'];
  const rooms = [...sourceFiles('server/src/checks'), ...sourceFiles('server/src/editor')].filter(
    (path) => !path.includes('/texts/') && !ENGLISH_ONLY.includes(path),
  );
  /** Two words of small letters in a row. */
  const SENTENCE = /\p{Ll}{2,} \p{Ll}{2,}|^\p{Lu}?\p{Ll}{2,} $/u;

  const kept = (path: string): ReadonlySet<string> => {
    const source = parseSource(path);
    return new Set(source.strings.filter((text) => SENTENCE.test(text)));
  };

  it('sees one', () => {
    const made = parseSource(
      'made-up.ts',
      ['const a = `Says $', "{b} is thicker`; const c = 'two words';"].join(''),
    );
    expect(made.strings.filter((text) => SENTENCE.test(text))).toEqual(['Says ', ' is thicker', 'two words']);
  });

  it.each(rooms)('%s', async (path) => {
    const { CHECKS, STYLE_KEYS } = await import('../../server/src/checks/index.ts');
    const { isKnown } = await import('../../server/src/texts/index.ts');
    const allowed = new Set([
      ...CHECKS.flatMap(({ title, docs }) => [title, docs]),
      ...STYLE_KEYS.map(({ about }) => about as string),
    ]);
    const marks = /^(?:wrong on purpose|sizes table|sizes chart)\b|<!--/;
    const outside = [...kept(path)].filter(
      (text) => !allowed.has(text) && !isKnown(text) && !marks.test(text),
    );
    expect(outside).toEqual([]);
  });
});
