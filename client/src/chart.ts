/** The size chart: every size of the note or of the course to scale, in one view. */
import {
  commands,
  type Disposable,
  env,
  l10n,
  Range,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { FromChart, Row, ToChart } from '../webview/messages.ts';

let panel: WebviewPanel | undefined;
/** The note shown; undefined for the whole course. */
let note: string | undefined;

export function offerChart(client: BaseLanguageClient, extension: Uri): Disposable[] {
  const open = (uri: string | undefined): Promise<void> => show(client, extension, uri);
  return [
    commands.registerCommand('sizewright.openChart', () => open(currentNote(client))),
    commands.registerCommand('sizewright.openCourseChart', () => open(undefined)),
    workspace.onDidSaveTextDocument(() => void fill(client)),
  ];
}

function currentNote(client: BaseLanguageClient): string | undefined {
  const document = window.activeTextEditor?.document;
  return document?.languageId === 'markdown' ? client.code2ProtocolConverter.asUri(document.uri) : note;
}

async function show(client: BaseLanguageClient, extension: Uri, uri: string | undefined): Promise<void> {
  note = uri;
  if (panel === undefined) {
    panel = create(client, extension);
  } else panel.reveal();
  await fill(client);
}

function create(client: BaseLanguageClient, extension: Uri): WebviewPanel {
  const roots = [Uri.joinPath(extension, 'dist'), Uri.joinPath(extension, 'client', 'media')];
  const made = window.createWebviewPanel('sizewright.chart', l10n.t('Size chart'), ViewColumn.Beside, {
    enableScripts: true,
    localResourceRoots: roots,
  });
  made.webview.onDidReceiveMessage((message: FromChart) => void receive(client, message));
  made.onDidDispose(() => {
    panel = undefined;
  });
  const script = made.webview.asWebviewUri(Uri.joinPath(extension, 'dist', 'chart.js'));
  const style = made.webview.asWebviewUri(Uri.joinPath(extension, 'client', 'media', 'chart.css'));
  made.webview.html = page(String(script), String(style), made.webview.cspSource);
  return made;
}

/** Nothing is allowed but our own script, our own style and pictures made here. */
function page(script: string, style: string, source: string): string {
  const policy = `default-src 'none'; style-src ${source}; script-src ${source}; img-src data:`;
  return `<!DOCTYPE html>
<html lang="${env.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<link rel="stylesheet" href="${style}">
<title>${l10n.t('Size chart')}</title>
</head>
<body><main></main><script src="${script}"></script></body>
</html>`;
}

async function fill(client: BaseLanguageClient): Promise<void> {
  if (panel === undefined) return;
  const rows = await client.sendRequest<Row[]>('sizewright/chart', note === undefined ? {} : { uri: note });
  const name =
    note === undefined
      ? l10n.t('the whole course')
      : decodeURIComponent(note.slice(note.lastIndexOf('/') + 1));
  const message: ToChart = { rows, title: l10n.t('Sizes in {0}', name), words: words() };
  await panel?.webview.postMessage(message);
}

const words = (): ToChart['words'] => ({
  search: l10n.t('Find a size, a system or a device'),
  together: l10n.t('One scale for every system'),
  zoom: l10n.t('Enlarge'),
  save: l10n.t('Save as SVG'),
  empty: l10n.t(
    'No size with a known diameter stands here yet. Write one, such as 18 G, 14 Fr or 2-0, and save the note.',
  ),
  none: l10n.t('Nothing fits the search.'),
  place: l10n.t('1 place'),
  places: l10n.t('{0} places', '{0}'),
  hint: l10n.t(
    'Drawn to scale; a dashed circle is the lower limit. Press Enter on a size to go to where it stands.',
  ),
  caution: l10n.t(
    'Teaching aid, not advice on a patient. Read the label of the device; follow local codes and licensed practice.',
  ),
});

async function receive(client: BaseLanguageClient, message: FromChart): Promise<void> {
  if (message.kind === 'ready') await fill(client);
  else if (message.kind === 'open') await reveal(client, message);
  else await save(message.svg);
}

async function reveal(
  client: BaseLanguageClient,
  { uri, range }: FromChart & { kind: 'open' },
): Promise<void> {
  const document = await workspace.openTextDocument(client.protocol2CodeConverter.asUri(uri));
  const { start, end } = range;
  const selection = new Range(start.line, start.character, end.line, end.character);
  await window.showTextDocument(document, { selection, viewColumn: ViewColumn.One });
}

async function save(svg: string): Promise<void> {
  const target = await window.showSaveDialog({ filters: { SVG: ['svg'] }, title: l10n.t('Save the chart') });
  if (target !== undefined) await workspace.fs.writeFile(target, new TextEncoder().encode(svg));
}
