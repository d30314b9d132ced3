/**
 * The command line: reads files, runs the analysis, writes reports. Only this folder and `lsp` know lines and
 * columns; only this folder touches the file system. It judges nothing itself.
 */
export { main } from './main.ts';
