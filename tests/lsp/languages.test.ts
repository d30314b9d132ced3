/** What an author reads in the editor is in the language of the client, and in the markup that it shows. */

import { afterEach, describe, expect, test } from 'vitest';
import type { CodeAction, CompletionItem, Diagnostic, Hover } from 'vscode-languageserver-protocol';
import { type Client, PULL, startClient } from './client.ts';

let client: Client;
afterEach(() => {
  expect(client.errors).toEqual([]);
  client.close();
});

const NOTE = 'A 22 G needle is thicker than an 18 G needle. Pass me a 2 silk, then <b>0.9 mm</b>.\n';
const at = (uri: string, word: string) => ({
  textDocument: { uri },
  position: { line: 0, character: NOTE.indexOf(word) + 1 },
});
const everywhere = { start: { line: 0, character: 0 }, end: { line: 0, character: NOTE.length } };

const messages = async (uri: string): Promise<string[]> => {
  const { items } = await client.request<{ items: Diagnostic[] }>('textDocument/diagnostic', {
    textDocument: { uri },
  });
  return items.map(({ message }) => String(message));
};
const hover = async (uri: string, word: string): Promise<{ kind: string; value: string }> =>
  (await client.request<Hover>('textDocument/hover', at(uri, word))).contents as never;

describe('a German client', () => {
  test('reads findings, fixes, hovers and completions in German', async () => {
    client = await startClient({ locale: 'de-CH' });
    const uri = client.open(NOTE);
    const [comparison, unclear] = await messages(uri);
    expect(comparison).toBe(
      'Hier steht: 22 G ist dicker als 18 G.\n22 G (0,7 mm) ist dünner als 18 G (1,2 bis 1,3 mm): eine größere Gauge-Zahl heißt dünner. (ISO 9626; GB/T 18457-2015)',
    );
    expect(unclear).toMatch(/^„2 silk“|^„2“/);
    expect(unclear).toContain('Schreiben Sie aus, was gemeint ist.');
    const actions = await client.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri },
      range: everywhere,
      context: { diagnostics: [] },
    });
    const titles = actions.map(({ title }) => title);
    expect(titles).toContain('„thinner“ statt „thicker“ schreiben');
    expect(titles).toContain('Diesen Fehler absichtlich stehen lassen …');
    const { value } = await hover(uri, '22 G');
    expect(value).toContain('Kanüle · außen 0,');
    expect(value).toContain('eine größere Gauge\\-Zahl heißt dünner');
    expect(value).toContain('Lehrmittel, kein Rat zu einem Patienten');
  });

  test('is refused a rename in German', async () => {
    client = await startClient({ locale: 'de' });
    const uri = client.open(NOTE);
    const rename = client.request('textDocument/rename', { ...at(uri, '22 G'), newName: 'shoe' });
    await expect(rename).rejects.toThrow('„shoe“ ist keine Größe wie 22 G.');
  });

  test('asks for tables, charts, tooltips and pages in German; a table stays as notes are written', async () => {
    client = await startClient({ locale: 'de' });
    const uri = client.open(NOTE);
    const sheet = (wanted: string) => client.request('sizewright/sheet', { form: 'table', wanted });
    expect(await sheet('shoes')).toEqual({ problem: expect.stringContaining('ist keine Tabelle') });
    expect(await sheet('gauge 18')).toEqual({ text: expect.stringContaining('| Needle, outside |') });
    const [row] = await client.request<{ system: string; device: string }[]>('sizewright/chart', { uri });
    expect(row).toMatchObject({ system: 'Gauge der Kanüle', device: 'Kanüle', measure: '0,698–0,73 mm' });
    const tips = await client.request<{ tip: string }[]>('sizewright/tips', { uri });
    expect(tips[0]!.tip).toMatch(/^22 G: 0,698–0,73 mm \(/);
    expect(await client.request('sizewright/check', { id: 'hub-colour' })).toMatch(
      /^# Die Farbe gehört zu einer anderen Größe\n\nFür Kanülen gilt ISO 6009/,
    );
  });

  test('completes a number with German details', async () => {
    client = await startClient({ locale: 'de' });
    const uri = client.open('Use a 18');
    const items = await client.request<CompletionItem[]>('textDocument/completion', {
      textDocument: { uri },
      position: { line: 0, character: 8 },
    });
    expect(items.map(({ label, detail }) => [label, detail])).toContainEqual([
      '18 G',
      expect.stringMatching(/^Gauge der Kanüle, \d,\d+/),
    ]);
  });
});

test('a wrong settings file is named in the language of the client', async () => {
  const said = async (locale: string): Promise<string[]> => {
    const text = '{ "checks": { "size-directon": "off" }, "outermost": 1 }';
    const disk = {
      list: async () => [],
      read: async (uri: string) => (uri.endsWith('/sizewright.course.json') ? text : null),
    };
    client = await startClient({ locale, disk, root: 'file:///course' });
    const told = new Promise<Diagnostic[]>((resolve) => {
      client.connection.onNotification('textDocument/publishDiagnostics', ({ uri, diagnostics }) => {
        if (String(uri).endsWith('.json')) resolve(diagnostics);
      });
    });
    await messages(client.open(NOTE));
    return (await told).map(({ message }) => String(message));
  };
  const [wrongCheck, wrongFlag] = await said('de');
  client.close();
  expect(wrongCheck).toMatch(
    /^Die Prüfung „size-directon“ gibt es nicht; meinten Sie „size-direction“\? \(erlaubt: /,
  );
  expect(wrongFlag).toBe('"outermost": hier muss true oder false stehen');
  expect((await said('en'))[1]).toBe('"outermost" must be true or false');
});

test.each([undefined, 'en-GB', 'fr'])('a client in %s reads English', async (locale) => {
  client = await startClient(locale === undefined ? {} : { locale });
  const uri = client.open(NOTE);
  expect((await messages(uri))[0]).toMatch(/^Says 22 G is thicker than 18 G\.\n/);
});

describe('markup of a hover', () => {
  const withFormats = (...contentFormat: ('markdown' | 'plaintext')[]) => ({
    capabilities: { ...PULL, textDocument: { ...PULL.textDocument, hover: { contentFormat } } },
  });

  test.each([
    [['markdown', 'plaintext'], 'markdown'],
    [['plaintext', 'markdown'], 'plaintext'],
    [['plaintext'], 'plaintext'],
    [[], 'markdown'],
  ] as const)('%s: %s', async (formats, kind) => {
    client = await startClient(withFormats(...formats));
    const uri = client.open(NOTE);
    expect((await hover(uri, '22 G')).kind).toBe(kind);
  });

  test('without it the same is said in plain lines', async () => {
    client = await startClient(withFormats('plaintext'));
    const uri = client.open(NOTE);
    const { value } = await hover(uri, '22 G');
    expect(value).toMatch(/^22 G · needle · 0\.698–0\.73 mm outside · /);
    expect(value).toMatch(/^mm: 0\.698–0\.73 mm, ISO 9626/m);
    expect(value).toMatch(/^- Needle gauge: a larger gauge number is thinner$/m);
    expect(value).toMatch(/^Does not hold\. Says 22 G is thicker than 18 G\.$/m);
    expect(value).not.toMatch(/\*|\\|!\[|data:|^\|/m);
    expect((await hover(uri, '2 silk')).value).toMatch(/^2 silk can be read|^2 can be read/);
  });
});
