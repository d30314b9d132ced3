/** The command line; the same file serves as each of its threads. */
import { isMainThread } from 'node:worker_threads';

export const practice = async () => (await import('./practice.ts')).practice();

if (isMainThread)
  import('../cli/main.ts').then(async ({ main }) => {
    process.exitCode = await main(process.argv.slice(2));
  });
else import('../cli/engine/thread.ts');
