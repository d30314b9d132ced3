/** `serve`: a language server for any editor, in this process. */
import { realpathSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Starts the server; the process lives until the editor hangs up. The bundle beside this one reads the transport. */
export function serve(): number {
  const here = realpathSync(process.argv[1] ?? '.');
  createRequire(here)(join(dirname(here), 'server-node.cjs'));
  return 0;
}
