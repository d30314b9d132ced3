/** Where a repository ends. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The nearest folder, this one or one around it, that holds a `.git`. */
export function repositoryOf(folder: string): string | undefined {
  if (existsSync(join(folder, '.git'))) return folder;
  const outer = dirname(folder);
  return outer === folder ? undefined : repositoryOf(outer);
}
