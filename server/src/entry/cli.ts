#!/usr/bin/env node
/** The command line; the same file serves as each of its threads. */
import { isMainThread } from 'node:worker_threads';

if (isMainThread)
  import('../cli/main.ts').then(async ({ main }) => {
    process.exitCode = await main(process.argv.slice(2));
  });
else import('../cli/engine/thread.ts');
