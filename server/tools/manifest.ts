/**
 * Writes into package.json and its words what comes from the checks: the levels an author can set, one a check.
 *
 * Usage: tsx server/tools/manifest.ts
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { aboutCheck, CHECKS } from '../src/checks/index.ts';
import type { Locale } from '../src/texts/index.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const PATH = join(ROOT, 'package.json');
const SETTING = 'sizewright.findings.severity';
const LEVELS = ['error', 'warning', 'info', 'hint', 'off'];

/** Under which a check's title stands among the manifest's words. */
function wordOf(id: string): string {
  return `check.${id.replaceAll('-', '_')}`;
}

function writeTitles(name: string, locale: Locale): void {
  const words: Record<string, string> = JSON.parse(readFileSync(join(ROOT, name), 'utf8'));
  const others = Object.entries(words).filter(([key]) => !key.startsWith('check.'));
  const titles = CHECKS.map((check) => [wordOf(check.id), aboutCheck(check, locale).title]);
  writeFileSync(join(ROOT, name), `${JSON.stringify(Object.fromEntries([...others, ...titles]), null, 2)}\n`);
}

const manifest = JSON.parse(readFileSync(PATH, 'utf8'));
const group = manifest.contributes.configuration.find(
  (each: { properties: object }) => SETTING in each.properties,
);
const setting = group.properties[SETTING];
setting.properties = Object.fromEntries(
  CHECKS.map(({ id }) => [id, { type: 'string', enum: LEVELS, description: `%${wordOf(id)}%` }]),
);
setting.additionalProperties = false;
writeFileSync(PATH, `${JSON.stringify(manifest, null, 2)}\n`);
writeTitles('package.nls.json', 'en');
writeTitles('package.nls.de.json', 'de');
