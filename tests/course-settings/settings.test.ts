import { readFileSync } from 'node:fs';
import Ajv from 'ajv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inForce,
  isTame,
  KEYS,
  mergeSettings,
  readSettings,
  type SettingsFile,
  settingsDocs,
  settingsSchema,
} from '../../server/src/course/index.ts';
import { distance, nearest } from '../../server/src/course/settings/near.ts';
import { SCHEMA_FILE, schemaText } from '../../server/tools/course-schema.ts';

const messages = (text: string) => readSettings(text).problems.map(({ message }) => message);

describe('reading settings', () => {
  test('every key with its example is accepted, and by the schema as well', () => {
    const whole = Object.fromEntries(KEYS.map(({ name, example }) => [name, example]));
    expect(readSettings(JSON.stringify(whole))).toEqual({ file: whole, problems: [] });
    const valid = new Ajv({ strict: false }).compile(settingsSchema());
    expect(valid(whole), JSON.stringify(valid.errors)).toBe(true);
  });

  test('a byte-order mark and a schema address are no problem', () => {
    expect(readSettings('\ufeff{ "$schema": "x" }').problems).toEqual([]);
  });

  test.each([
    ['', 'the file is empty; write at least {}'],
    ['[]', 'the settings must be an object { … }'],
    ['{ "outermost": 1 }', '"outermost" must be true or false'],
    ['{ "notes": "a" }', '"notes" must be a list of texts [ "…" ]'],
    ['{ "notes": [""] }', '"notes": each entry must be a text in double quotes'],
    [
      '{ "names": { "devices": { "drip": "canula" } } }',
      '"drip": no value "canula"; did you mean "cannula"?',
    ],
    ['{ "languages": [] }', '"languages" must be a list of at least one (allowed: en, es, de, fr)'],
    ['{ "languages": "en" }', '"languages" must be a list of at least one (allowed: en, es, de, fr)'],
    ['{ "languages": ["en", "dr"] }', '"languages": no value "dr"; did you mean "de"?'],
    ['{ "outermost": true, "outermost": false }', '"outermost" is set twice'],
    ['{ "outermost": true // yes\n}', 'JSON has no comments'],
    ['{ "outermost" true }', 'a colon is expected here'],
    ['{ "a": ', 'a value is expected here'],
    ['{ "a": "\\x" }', 'not JSON (InvalidEscapeCharacter)'],
    [`{ "notes": ["${'a'.repeat(201)}"] }`, '"notes": the pattern is longer than 200 characters'],
    ['{ "notes": ["*a*b*c*"] }', '"notes": the pattern has more than 3 stars'],
    ['{ "leaveOut": ["**/a/**/b/**/c/**"] }', '"leaveOut": the pattern has more than 3 double stars'],
    ['{ "notes": ["{a,b}/{c,d}/{e,f}"] }', '"notes": the pattern has more than 2 choices in braces'],
    ['{ "__proto__": {} }', 'no key "__proto__"'],
  ])('%j is refused in words', (text, message) => {
    expect(messages(text).join('\n')).toContain(message);
  });

  test('patterns at the limits are accepted', () => {
    const notes = ['a'.repeat(200), '*a*b*c', '**/a/**/b/**', '{a,b}/{c,d}'];
    expect(readSettings(JSON.stringify({ notes })).problems).toEqual([]);
  });

  test('whatever the text, it is read or its problems are named, inside the text', () => {
    const piece = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ':',
      ',',
      '"notes"',
      '"checks"',
      '"style"',
      '"off"',
      '1',
      'true',
      '//',
      '\n',
      '"',
      '\ud800',
      'x',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 14 }), (parts) => {
        const text = parts.join('');
        const { file, problems } = readSettings(text);
        expect(file === undefined).toBe(problems.length > 0);
        for (const { span } of problems) expect(span.end).toBeLessThanOrEqual(text.length + 1);
      }),
      { numRuns: 800 },
    );
  });

  test('reading and the schema agree on what is allowed', () => {
    const valid = new Ajv({ strict: false }).compile(settingsSchema());
    const value = fc.oneof(
      fc.boolean(),
      fc.constantFrom('needle', 'synthetic', 'off', '2-0', 'x', ''),
      fc.integer({ max: 3, min: 0 }),
      fc.array(fc.constantFrom('a', '', 1), { maxLength: 2 }),
    );
    const deep = fc.oneof(
      value,
      fc.dictionary(fc.constantFrom('device', 'suture', 'usp', 'materials', 'size-order', 'x'), value, {
        maxKeys: 2,
      }),
    );
    fc.assert(
      fc.property(
        fc.dictionary(fc.constantFrom(...KEYS.map(({ name }) => name), 'x'), deep, { maxKeys: 3 }),
        (content) => {
          expect(readSettings(JSON.stringify(content)).problems.length === 0, JSON.stringify(content)).toBe(
            valid(content),
          );
        },
      ),
      { numRuns: 1500 },
    );
  });
});

describe('several files', () => {
  test('the nearest decides key by key; names are asked in lower case', () => {
    const outer: SettingsFile = {
      checks: { a: 'error', b: 'off' },
      assume: { suture: 'collagen' },
      names: { devices: { Drip: 'cannula' }, materials: { Zipline: 'polypropylene' } },
      style: { usp: '2-0' },
    };
    const inner: SettingsFile = {
      checks: { b: 'hint' },
      assume: { device: 'needle' },
      style: { gauge: '18 G' },
    };
    expect(mergeSettings([outer, inner])).toEqual({
      severity: { a: 'error', b: 'hint' },
      style: { usp: '2-0', gauge: '18 G' },
      context: {
        suture: 'collagen',
        device: 'needle',
        devices: { drip: 'cannula' },
        materials: { zipline: 'polypropylene' },
      },
    });
  });
});

describe('files in force', () => {
  const at = (outermost?: boolean) => ({ file: outermost === undefined ? {} : { outermost } });
  test('are all of them, or those from the innermost that says it is the outermost', () => {
    const files = [at(), at(true), at(false), at(true), at()];
    expect(inForce(files)).toEqual(files.slice(3));
    expect(inForce([at(), at(false)])).toHaveLength(2);
    expect(inForce([])).toEqual([]);
  });
});

describe('lines of ignore files', () => {
  test.each([
    ['build/', true],
    ['*a*b*c', true],
    ['*a*b*c*', false],
    ['**/a/**', true],
    ['**/a/**/b/**', false],
    ['a'.repeat(1000), true],
    ['a'.repeat(1001), false],
  ])('%s', (line, tame) => {
    expect(isTame(line)).toBe(tame);
  });
});

describe('what is generated', () => {
  test('the schema the extension contributes is up to date (npx tsx server/tools/course-schema.ts)', () => {
    expect(readFileSync(SCHEMA_FILE, 'utf8')).toBe(schemaText());
  });

  test('the documentation names every key', () => {
    for (const { name } of KEYS) expect(settingsDocs()).toContain(`| \`${name}\` |`);
  });
});

describe('slips', () => {
  test('nearest word', () => {
    expect(distance('kitten', 'sitting')).toBe(3);
    expect(nearest('cannulla', ['needle', 'cannula'])).toBe('cannula');
    expect(nearest('banana', ['needle', 'sheath'])).toBeUndefined();
    expect(nearest('n'.repeat(61), ['n'.repeat(60)])).toBeUndefined();
    expect(nearest('n'.repeat(60), ['n'.repeat(59)])).toBeDefined();
  });
});
