/** The server for Node: over stdio for any editor (`--stdio`), over IPC for an editor that forks it (`--node-ipc`). */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { VERSION } from '../cli/version.ts';
import { serve } from '../lsp/index.ts';
import { disk } from './disk.ts';

const transports = ['--stdio', '--node-ipc', '--socket', '--pipe'];
if (!process.argv.some((argument) => transports.some((each) => argument.startsWith(each))))
  process.argv.push('--stdio');
serve(createConnection(ProposedFeatures.all), { version: VERSION, disk });
