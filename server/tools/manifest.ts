/**
 * Writes into package.json what comes from the checks: the levels an author can set, one a check.
 *
 * Usage: tsx server/tools/manifest.ts
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CHECKS } from '../src/checks/index.ts';

const PATH = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'package.json');
const SETTING = 'sizewright.findings.severity';
const LEVELS = ['error', 'warning', 'info', 'hint', 'off'];

const manifest = JSON.parse(readFileSync(PATH, 'utf8'));
const group = manifest.contributes.configuration.find(
  (each: { properties: object }) => SETTING in each.properties,
);
const setting = group.properties[SETTING];
setting.properties = Object.fromEntries(
  CHECKS.map(({ id, title }) => [id, { type: 'string', enum: LEVELS, description: title }]),
);
setting.additionalProperties = false;
writeFileSync(PATH, `${JSON.stringify(manifest, null, 2)}\n`);
