/**
 * The server as one program for both its homes: a process of Node and a web worker. Only the half that is at home is run,
 * since each half needs what the other home does not have.
 */

/** There in a worker only. */
declare const importScripts: unknown;
/** What a starter takes from the program it runs; the build puts the name of Node there. */
declare const PROGRAM_EXPORTS: { practice?: unknown };

if (typeof importScripts === 'function') void import('./server-worker.ts');
else
  void import('./server-node.ts').then(({ practice }) => {
    PROGRAM_EXPORTS.practice = practice;
  });
