/**
 * The language server: the editor layer's answers over the Language Server Protocol. Offsets become positions
 * here and nowhere else. What lives here knows the protocol and no editor, no files (a host hands them in),
 * no Node and no browser: the entries choose the transport.
 */
export type { NoteSource } from './notes.ts';
export { type Host, serve } from './server.ts';
