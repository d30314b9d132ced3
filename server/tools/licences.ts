/**
 * The notices that the licences of bundled packages ask for: name, version, licence and its text, one package after the
 * other. A package under a licence that is not listed here stops the build, so that nobody ships it unread.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Licences that let a bundle ship under MIT with no more than a notice. */
const PERMITTED: ReadonlySet<string> = new Set([
  'MIT',
  'ISC',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'BlueOak-1.0.0',
]);

export interface Notice {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

/** Folder of the package a bundled file belongs to: after the last `node_modules/`, scope included. */
export function packageFolder(input: string): string | undefined {
  return /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0];
}

function noticeOf(folder: string): Notice {
  const { name, version, license, licenses, author } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  );
  const file = readdirSync(folder).find((entry) => /^(?:licen[cs]e|copying)/i.test(entry));
  const holder = `Copyright ${author?.name ?? author ?? `the authors of ${name}`}`;
  const text = file === undefined ? holder : readFileSync(join(folder, file), 'utf8').trim();
  // Old packages list their licences as objects.
  return { name, version, licence: license ?? licenses?.[0]?.type ?? 'none named', text };
}

/** Notices of every package among the bundled files, by name. Throws for a licence that is not permitted. */
export function noticesOf(root: string, inputs: Iterable<string>): Notice[] {
  const folders = new Set([...inputs].map(packageFolder).filter((folder) => folder !== undefined));
  const notices = [...folders]
    .map((folder) => join(root, folder))
    .filter((folder) => existsSync(join(folder, 'package.json')))
    .map(noticeOf);
  const refused = notices.filter(({ licence }) => !PERMITTED.has(licence));
  if (refused.length > 0)
    throw new Error(
      `licence not permitted: ${refused.map(({ name, licence }) => `${name} (${licence})`).join(', ')}`,
    );
  return notices.sort((a, b) => (a.name < b.name ? -1 : 1));
}

const LINE = '-'.repeat(80);

/** Writes the notices as one text file. */
export function writeNotices(file: string, notices: readonly Notice[]): void {
  const parts = notices.map(
    ({ name, version, licence, text }) => `${LINE}\n${name} ${version}, ${licence}\n${LINE}\n\n${text}\n`,
  );
  writeFileSync(file, `Packages bundled with Sizewright, and their licences.\n\n${parts.join('\n')}`);
}
