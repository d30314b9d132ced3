/** The manifest, the settings and the translations say the same. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { entriesOf, faults, LARGEST } from '../../client/tools/contents.ts';
import { aboutCheck, CHECKS } from '../../server/src/checks/index.ts';
import { DEFAULTS, readSettings } from '../../server/src/lsp/settings.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8');
const manifest = JSON.parse(read('package.json'));
const english = JSON.parse(read('package.nls.json')) as Record<string, string>;
const german = JSON.parse(read('package.nls.de.json')) as Record<string, string>;

interface Setting {
  readonly default: unknown;
}
const settings = Object.assign(
  {},
  ...manifest.contributes.configuration.map((group: { properties: object }) => group.properties),
) as Record<string, Setting>;

test('the defaults of the manifest are those of the server, but for the outline', () => {
  const section: Record<string, Record<string, unknown>> = {};
  for (const [name, { default: value }] of Object.entries(settings)) {
    const [, group, key] = name.split('.');
    section[group!] = { ...section[group!], [key!]: value };
  }
  // The editor has an outline of its own, so ours is off there and on for other clients.
  expect(readSettings(section)).toEqual({ ...DEFAULTS, outline: false });
});

test('the severity setting names every check', () => {
  const { properties } = settings['sizewright.findings.severity'] as unknown as { properties: object };
  expect(Object.keys(properties)).toEqual(CHECKS.map((check) => check.id));
});

test('each is described by its title, in both languages', () => {
  const { properties } = settings['sizewright.findings.severity'] as unknown as {
    properties: Record<string, { description: string }>;
  };
  for (const check of CHECKS) {
    const word = properties[check.id]!.description.slice(1, -1);
    expect([english[word], german[word]]).toEqual([check.title, aboutCheck(check, 'de').title]);
  }
});

describe('words', () => {
  const used = new Set([...read('package.json').matchAll(/"%([\w.]+)%"/g)].map((match) => match[1]!));

  test('every word the manifest uses is there, and no other', () => {
    expect(Object.keys(english).sort()).toEqual([...used].sort());
  });

  test('German has them all', () => {
    expect(Object.keys(german).sort()).toEqual(Object.keys(english).sort());
    expect(Object.values(german).every((text) => text.trim() !== '')).toBe(true);
  });

  test('German has every message of the client, with the same places', () => {
    const sources = readdirSync(join(ROOT, 'client/src')).map((file) => read(`client/src/${file}`));
    const messages = sources.flatMap((source) =>
      [...source.matchAll(/l10n\.t\(\s*'((?:[^'\\]|\\.)*)'/g)].map((match) => match[1]!),
    );
    const translated = JSON.parse(read('client/l10n/bundle.l10n.de.json')) as Record<string, string>;
    expect(Object.keys(translated).sort()).toEqual([...new Set(messages)].sort());
    for (const [message, text] of Object.entries(translated)) {
      expect(text.match(/\{\d\}/g) ?? []).toEqual(message.match(/\{\d\}/g) ?? []);
    }
  });
});

test('every command has a title and a handler', () => {
  const sources = readdirSync(join(ROOT, 'client/src'))
    .map((file) => read(`client/src/${file}`))
    .join('\n');
  for (const { command } of manifest.contributes.commands) expect(sources).toContain(`'${command}'`);
});

test('every file the manifest names is there', () => {
  const named = [...read('package.json').matchAll(/"(\.?\/?client\/[\w./-]+\.\w+)"/g)].map(
    (match) => match[1]!,
  );
  for (const words of [english, german]) {
    const pages = Object.values(words).filter((word) => word.startsWith('client/'));
    expect(pages).toHaveLength(4);
    named.push(...pages);
  }
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
});

describe('the contents of a .vsix', () => {
  const right = [
    'package.json',
    'dist/extension.cjs',
    'dist/extension.browser.js',
    'dist/server-node.cjs',
    'dist/server.js',
    'client/media/icon.png',
  ].map((name) => `extension/${name}`);

  test('all right', () => expect(faults(right, 5)).toEqual([]));
  test('too large', () => expect(faults(right, LARGEST + 1)).toEqual([expect.stringContaining('too large')]));
  test.each(['server/src/a.ts', 'node_modules/a/index.js', 'tests/x.md', 'dist/a.js.map'])(
    '%s does not belong',
    (name) => {
      expect(faults([...right, `extension/${name}`], 5)).toEqual([`should not be inside: extension/${name}`]);
    },
  );
  test('something is missing', () =>
    expect(faults(right.slice(1), 5)).toEqual(['missing: extension/package.json']));
  test('what is no archive is refused', () =>
    expect(() => entriesOf(new Uint8Array(30))).toThrow('not a zip'));
});
