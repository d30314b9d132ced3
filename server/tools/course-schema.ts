/**
 * Writes the JSON Schema of the course settings, which the extension contributes, from the table of keys.
 *
 * Usage: tsx server/tools/course-schema.ts
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { settingsSchema } from '../src/course/index.ts';

export const SCHEMA_FILE = join(
  dirname(fileURLToPath(import.meta.url)),
  '../../client/schema/sizewright.course.schema.json',
);

export const schemaText = (): string => `${JSON.stringify(settingsSchema(), null, 2)}\n`;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(dirname(SCHEMA_FILE), { recursive: true });
  writeFileSync(SCHEMA_FILE, schemaText());
}
