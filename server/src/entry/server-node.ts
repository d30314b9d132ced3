/** The server for Node: over stdio for any editor (`--stdio`), over IPC for an editor that forks it (`--node-ipc`). */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { VERSION } from '../cli/version.ts';
import { serve } from '../lsp/index.ts';
import { disk } from './disk.ts';
import { serveStdio } from './stdio.ts';

export const practice = async () => (await import('./practice.ts')).practice();

const host = { version: VERSION, disk };
const others = ['--node-ipc', '--socket', '--pipe'];
if (process.argv.some((argument) => others.some((each) => argument.startsWith(each))))
  serve(createConnection(ProposedFeatures.all), host);
else serveStdio(host);
