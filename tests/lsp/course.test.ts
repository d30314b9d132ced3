/** Notes that are not open: the whole course, its settings files, sizes in every note. */
import { afterEach, expect, test } from 'vitest';
import type {
  Location,
  PublishDiagnosticsParams,
  WorkspaceDiagnosticReport,
  WorkspaceEdit,
  WorkspaceSymbol,
} from 'vscode-languageserver-protocol';
import type { NoteSource } from '../../server/src/lsp/index.ts';
import { type Client, PULL, startClient } from './client.ts';

const ROOT = 'file:///course';
const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n';

/** A disk in memory that counts what is read. */
class Disk implements NoteSource {
  readonly files: Map<string, string>;
  readonly reads: string[] = [];
  constructor(files: Readonly<Record<string, string>>) {
    this.files = new Map(Object.entries(files).map(([name, text]) => [`${ROOT}/${name}`, text]));
  }
  async list(): Promise<string[]> {
    return [...this.files.keys()].filter((uri) => uri.endsWith('.md'));
  }
  async read(uri: string): Promise<string | null> {
    this.reads.push(uri);
    return this.files.get(uri) ?? null;
  }
}

let client: Client;
afterEach(() => {
  expect(client.errors).toEqual([]);
  client.close();
});

const workspace = (previousResultIds: { uri: string; value: string }[] = []) =>
  client.request<WorkspaceDiagnosticReport>('workspace/diagnostic', { previousResultIds });

const previous = (report: WorkspaceDiagnosticReport) =>
  report.items.map(({ uri, resultId }) => ({ uri, value: resultId ?? '' }));

const watched = (uri: string, type: 1 | 2 | 3) =>
  client.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri, type }] });

test('the whole course is reported, each saved note read once', async () => {
  const disk = new Disk({ 'a.md': WRONG, 'b.md': 'Wash your hands.\n', 'c/d.md': WRONG });
  client = await startClient({ disk, root: ROOT });
  const report = await workspace();
  expect(report.items.map(({ uri }) => uri)).toEqual([`${ROOT}/a.md`, `${ROOT}/c/d.md`]);
  const reads = disk.reads.length;
  await client.request('workspace/symbol', { query: '' });
  expect(disk.reads.length).toBe(reads);
});

test('an answer with nothing new waits until a note changes', async () => {
  const disk = new Disk({ 'a.md': WRONG });
  client = await startClient({ disk, root: ROOT });
  const first = await workspace();
  let answered = false;
  const second = workspace(previous(first)).then((report) => {
    answered = true;
    return report;
  });
  await new Promise((resolve) => setTimeout(resolve, 450));
  expect(answered).toBe(false);
  disk.files.set(`${ROOT}/a.md`, 'A 16 G cannula is thicker than a 20 G cannula.\n');
  await watched(`${ROOT}/a.md`, 2);
  expect((await second).items).toMatchObject([{ uri: `${ROOT}/a.md`, kind: 'full', items: [] }]);
});

test('a note that is deleted takes its findings with it', async () => {
  const disk = new Disk({ 'a.md': WRONG, 'b.md': WRONG });
  client = await startClient({ disk, root: ROOT });
  const first = await workspace();
  disk.files.delete(`${ROOT}/b.md`);
  await watched(`${ROOT}/b.md`, 3);
  expect((await workspace(previous(first))).items).toMatchObject([{ uri: `${ROOT}/b.md`, items: [] }]);
});

test('a waiting request can be given up', async () => {
  client = await startClient({ disk: new Disk({ 'a.md': 'Wash.\n' }), root: ROOT });
  const { CancellationTokenSource } = await import('vscode-languageserver-protocol');
  const source = new CancellationTokenSource();
  const waiting = client.connection.sendRequest(
    'workspace/diagnostic',
    { previousResultIds: [] },
    source.token,
  );
  setTimeout(() => source.cancel(), 50);
  await expect(waiting).rejects.toMatchObject({ code: -32800 });
});

test('the nearest settings file of the course decides', async () => {
  const files = {
    'sizewright.course.json': '{ "checks": { "size-comparison": "off" } }',
    'a.md': WRONG,
    'strict/sizewright.course.json': '{ "checks": { "size-comparison": "error" } }',
    'strict/b.md': WRONG,
    'drafts/c.md': WRONG,
  };
  client = await startClient({ disk: new Disk(files), root: ROOT });
  const report = await workspace();
  expect(report.items).toMatchObject([{ uri: `${ROOT}/strict/b.md`, items: [{ severity: 1 }] }]);
});

test('notes the course leaves out are left out', async () => {
  const files = {
    'sizewright.course.json': '{ "leaveOut": ["drafts/**"] }',
    'a.md': WRONG,
    'drafts/c.md': WRONG,
  };
  client = await startClient({ disk: new Disk(files), root: ROOT });
  expect((await workspace()).items.map(({ uri }) => uri)).toEqual([`${ROOT}/a.md`]);
});

test('a wrong settings file is reported in its own place, and mended', async () => {
  const disk = new Disk({ 'sizewright.course.json': '{ "check": {} }', 'a.md': WRONG });
  client = await startClient({ disk, root: ROOT });
  const pushed: PublishDiagnosticsParams[] = [];
  client.connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    pushed.push(params);
  });
  await workspace();
  expect(pushed.at(-1)).toMatchObject({
    uri: `${ROOT}/sizewright.course.json`,
    diagnostics: [{ severity: 1, range: { start: { line: 0, character: 2 } } }],
  });
  expect(pushed.at(-1)?.diagnostics[0]?.message).toContain('checks');
  disk.files.set(`${ROOT}/sizewright.course.json`, '{}');
  await watched(`${ROOT}/sizewright.course.json`, 2);
  await workspace();
  await expect.poll(() => pushed.at(-1)?.diagnostics).toEqual([]);
});

test('notes that give one device different sizes show each other', async () => {
  const files = {
    'a.md': 'The triple-lumen line is 7 Fr.\n',
    'week 2/b.md': 'The triple-lumen line is 9 Fr.\n',
    'c.md': 'Wash.\n',
  };
  client = await startClient({ disk: new Disk(files), root: ROOT });
  const { items } = (await workspace()) as unknown as {
    items: { uri: string; items: { code: string; message: string; relatedInformation: unknown[] }[] }[];
  };
  expect(items.map(({ uri }) => uri)).toEqual([`${ROOT}/a.md`, `${ROOT}/week 2/b.md`]);
  expect(items[0]!.items[0]).toMatchObject({
    code: 'course-differs',
    relatedInformation: [{ location: { uri: `${ROOT}/week 2/b.md`, range: { start: { line: 0 } } } }],
  });
  expect(items[0]!.items[0]!.message).toContain('9 Fr in week 2/b.md');
  const uri = client.open('The triple-lumen line is 9 Fr.\n', 'a.md');
  const open = await client.request<{ items: unknown[] }>('textDocument/diagnostic', {
    textDocument: { uri },
  });
  expect(open.items).toEqual([]);
});

test('what was typed into a note that is closed is set against the others no more', async () => {
  client = await startClient();
  const [a, b] = ['7 Fr', '9 Fr'].map((size, i) =>
    client.open(`The triple-lumen line is ${size}.\n`, `${i}.md`),
  );
  const findings = async (uri: string) =>
    (await client.request<{ items: unknown[] }>('textDocument/diagnostic', { textDocument: { uri } })).items;
  await findings(b!);
  expect(await findings(a!)).toMatchObject([{ code: 'course-differs' }]);
  void client.connection.sendNotification('textDocument/didClose', { textDocument: { uri: b } });
  expect(await findings(a!)).toEqual([]);
});

test('a size is found in every note, in any notation', async () => {
  const files = { 'a.md': 'Take an 18 G cannula.\n', 'b.md': 'An 18-gauge cannula and a 20 G cannula.\n' };
  client = await startClient({ disk: new Disk(files), root: ROOT });
  const symbols = await client.request<WorkspaceSymbol[]>('workspace/symbol', { query: '18g' });
  expect(symbols.map(({ location }) => location.uri)).toEqual([`${ROOT}/a.md`, `${ROOT}/b.md`]);
  const uri = client.open(files['a.md'], 'a.md');
  const places = await client.request<Location[]>('textDocument/references', {
    textDocument: { uri },
    position: { line: 0, character: 9 },
    context: { includeDeclaration: true },
  });
  expect(places.map((place) => place.uri)).toEqual([`${ROOT}/a.md`, `${ROOT}/b.md`]);
});

test('sizes of the other notes are offered after those of the note', async () => {
  client = await startClient({ disk: new Disk({ 'b.md': 'A 5-0 nylon, a 5-0 nylon.\n' }), root: ROOT });
  await client.request('workspace/symbol', { query: '' });
  const uri = client.open('A 2-0 silk and a \n', 'a.md');
  const items = await client.request<{ label: string }[]>('textDocument/completion', {
    textDocument: { uri },
    position: { line: 0, character: 17 },
  });
  expect(items.map(({ label }) => label)).toEqual(['2-0', '5-0']);
});

test('a rename reaches the saved notes', async () => {
  const files = { 'a.md': 'Take an 18 G cannula.\n', 'b.md': 'The 18 G cannula is green.\n' };
  client = await startClient({ disk: new Disk(files), root: ROOT, capabilities: PULL });
  const uri = client.open(files['a.md'], 'a.md');
  const edit = await client.request<WorkspaceEdit>('textDocument/rename', {
    textDocument: { uri },
    position: { line: 0, character: 9 },
    newName: '20 G',
  });
  expect(edit.documentChanges).toMatchObject([
    { textDocument: { uri: `${ROOT}/a.md`, version: 1 } },
    { textDocument: { uri: `${ROOT}/b.md`, version: null }, edits: [{ newText: '20' }] },
  ]);
});

test('edits of other notes are shown before they are made', async () => {
  const files = { 'a.md': 'Take an 18 G cannula.\n', 'b.md': 'The 18 G cannula is green.\n' };
  const workspaceEdit = { documentChanges: true, changeAnnotationSupport: {} };
  client = await startClient({
    disk: new Disk(files),
    root: ROOT,
    capabilities: { ...PULL, workspace: { workspaceEdit } },
  });
  const edit = await client.request<WorkspaceEdit>('textDocument/rename', {
    textDocument: { uri: client.open(files['a.md'], 'a.md') },
    position: { line: 0, character: 9 },
    newName: '20 G',
  });
  expect(edit.changeAnnotations).toMatchObject({ elsewhere: { needsConfirmation: true } });
  expect(edit.documentChanges).toMatchObject([
    { edits: [{ newText: 'a' }, { newText: '20' }] },
    { edits: [{ newText: '20', annotationId: 'elsewhere' }] },
  ]);
});

test('the open text of a note counts before the saved one', async () => {
  client = await startClient({ disk: new Disk({ 'a.md': WRONG }), root: ROOT });
  client.open('Wash your hands.\n', 'a.md');
  const { CancellationTokenSource } = await import('vscode-languageserver-protocol');
  const source = new CancellationTokenSource();
  const waiting = client.connection.sendRequest(
    'workspace/diagnostic',
    { previousResultIds: [] },
    source.token,
  );
  setTimeout(() => source.cancel(), 100);
  await expect(waiting).rejects.toMatchObject({ code: -32800 });
});
