/** What the protocol has no word for, and what a client is told to draw. */
import { afterEach, expect, test } from 'vitest';
import { type Client, startClient } from './client.ts';

let client: Client;
afterEach(() => {
  expect(client.errors).toEqual([]);
  client.close();
});

test('a sheet comes with its comments and the newline of the note', async () => {
  client = await startClient();
  const ask = (wanted: string) =>
    client.request<{ text: string }>('sizewright/sheet', { form: 'table', wanted, newline: '\r\n' });
  const { text } = await ask('french 12');
  expect(text.startsWith('<!-- sizes table: french 12 -->\r\n\r\n| French |')).toBe(true);
  expect(text.endsWith('<!-- end of sizes -->\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toContain('\n');
  expect(await ask('shoes')).toEqual({ problem: expect.stringContaining('shoes') });
});

test('the chart has every size once, from thin to thick, with its places', async () => {
  client = await startClient();
  const uri = client.open('A 14 Fr catheter, a 2-0 silk suture, a 14 Fr catheter.\n');
  const rows = await client.request<{ label: string; places: unknown[] }[]>('sizewright/chart', { uri });
  expect(rows.map((row) => [row.label, row.places.length])).toEqual([
    ['USP 2-0', 1],
    ['14 Fr', 2],
  ]);
});

test('the summary counts sizes and findings', async () => {
  client = await startClient();
  const uri = client.open('A 16 G cannula is thinner than a 20 G cannula.\n');
  expect(await client.request('sizewright/summary', { uri })).toEqual({ sizes: 2, findings: 1 });
});

test('tools for an assistant answer in plain text with the caution', async () => {
  client = await startClient();
  const tool = (name: string, text: string) =>
    client.request<string | null>('sizewright/tool', { name, text });
  const wrong = 'Intro.\n\nA 16 G cannula is thinner than a 20 G cannula.\n';
  expect(await tool('checkSizes', wrong)).toMatch(/^line 3 \[size-comparison\]: .*Teaching aid/s);
  expect(await tool('checkSizes', 'Wash.')).toMatch(/^No contradiction/);
  expect(await tool('listSizes', wrong)).toContain('line 3: "16 G" = 16 G');
  expect(await tool('convertSize', '14 Fr catheter')).toContain('4.67 mm');
  expect(await tool('convertSize', 'shoes')).toContain('is not one clear size');
  expect(await tool('listSizes', 'x'.repeat(200_001))).toContain('too long');
  expect(await tool('removeNotes', 'x')).toBeNull();
  expect(await tool('toString', 'x')).toBeNull();
});

test('sizes are coloured where they stand, unclear and contradicted ones apart', async () => {
  client = await startClient();
  const uri = client.open('18 G needle.\nPass me a 2 silk suture.\n');
  const { data } = await client.request<{ data: number[] }>('textDocument/semanticTokens/full', {
    textDocument: { uri },
  });
  expect(data).toEqual([0, 0, 4, 0, 0, 1, 10, 1, 1, 0]);
});

test('colours come for a stretch of the note, and as what changed since the last answer', async () => {
  client = await startClient();
  const uri = client.open('18 G needle.\nPass me a 14 Fr tube.\n');
  const ask = <R>(kind: string, more = {}) =>
    client.request<R>(`textDocument/semanticTokens/${kind}`, { textDocument: { uri }, ...more });
  const range = { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } };
  expect(await ask('range', { range })).toEqual({ data: [1, 10, 5, 0, 0] });
  const first = await ask<{ resultId: string; data: number[] }>('full');
  expect(first.data).toEqual([0, 0, 4, 0, 0, 1, 10, 5, 0, 0]);
  await client.connection.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [
      { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, text: 'An ' },
    ],
  });
  const second = await ask<{ resultId: string; edits: unknown[] }>('full/delta', {
    previousResultId: first.resultId,
  });
  expect(second.edits).toEqual([{ start: 1, deleteCount: 1, data: [3] }]);
  expect(second.resultId).not.toBe(first.resultId);
  const whole = await ask<{ data: number[] }>('full/delta', { previousResultId: first.resultId });
  expect(whole.data).toEqual([0, 3, 4, 0, 0, 1, 10, 5, 0, 0]);
});

test('a finding leads to the page of its check where the client shows pages', async () => {
  client = await startClient({ options: { showsPages: true } });
  const uri = client.open('A 16 G cannula is thinner than a 20 G cannula.\n');
  const report = await client.request<{ items: { codeDescription?: { href: string } }[] }>(
    'textDocument/diagnostic',
    { textDocument: { uri } },
  );
  expect(report.items[0]?.codeDescription?.href).toBe('sizewright-check:/size-comparison.md');
  const page = await client.request<string>('sizewright/check', { id: 'size-comparison' });
  expect(page).toMatch(/^# .+\n\n.+`size-comparison`.+Teaching aid/s);
  expect(await client.request('sizewright/check', { id: 'nonsense' })).toBeNull();
});

test('where the finding stands beside the hover, its sentences are not said twice', async () => {
  const hoverOn = async (text: string, word: string, options: Record<string, unknown>) => {
    client = await startClient({ options });
    const position = { line: 0, character: text.indexOf(word) + 1 };
    const asked = { textDocument: { uri: client.open(text) }, position };
    const hover = await client.request<{ contents: { value: string } } | null>('textDocument/hover', asked);
    return hover?.contents.value;
  };
  const compared = 'A 16 G cannula is thinner than a 20 G cannula.\n';
  const alone = await hoverOn(compared, 'thinner', {});
  client.close();
  expect(alone).toContain('**Does not hold.** Says 16 G is thinner than 20 G');
  expect(alone!.match(/a larger gauge number is thinner/g)).toHaveLength(1);
  expect(await hoverOn(compared, 'thinner', { showsFindings: true })).toBeUndefined();
  client.close();
  const beside = await hoverOn('A 14 Fr catheter is 14 mm wide.\n', '14 mm', { showsFindings: true });
  expect(beside).toContain('**Does not hold.**');
  expect(beside).toContain('- 14 Fr: 4.67 mm by 1 Fr = 1/3 mm');
  expect(beside).not.toContain('Says 14 Fr');
});

test('the author is asked for a reason where the client can ask', async () => {
  client = await startClient({ options: { asksReasons: true } });
  const uri = client.open('A 16 G cannula is thinner than a 20 G cannula.\n');
  const position = { line: 0, character: 20 };
  const actions = await client.request<
    { title: string; command?: { command: string; arguments: unknown[] } }[]
  >('textDocument/codeAction', {
    textDocument: { uri },
    range: { start: position, end: position },
    context: { diagnostics: [] },
  });
  const leave = actions.find(({ title }) => title.startsWith('Leave'));
  expect(leave?.command).toMatchObject({
    command: 'sizewright.markDeliberate',
    arguments: [uri, 1, { line: 0, character: 46 }],
  });
});
