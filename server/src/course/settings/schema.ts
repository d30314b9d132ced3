/** The JSON Schema and the documentation of the settings file, from the table of keys. */
import { KEYS, type Key, SETTINGS_FILE, type Shape } from './keys.ts';

type Schema = Record<string, unknown>;

function ofShape(shape: Shape): Schema {
  switch (shape.is) {
    case 'flag':
      return { type: 'boolean' };
    case 'patterns':
      return { type: 'array', items: { type: 'string', minLength: 1 } };
    case 'choice':
      return { enum: shape.of };
    case 'choices':
      return { type: 'array', items: { enum: shape.of }, minItems: 1 };
    case 'map':
      return {
        type: 'object',
        ...(shape.keys && { propertyNames: { enum: shape.keys } }),
        additionalProperties: ofShape(shape.of),
      };
    case 'group':
      return { type: 'object', properties: properties(shape.keys), additionalProperties: false };
  }
}

function properties(keys: readonly Key[]): Schema {
  return Object.fromEntries(
    keys.map(({ name, about, shape, example }) => [
      name,
      { description: about, ...ofShape(shape), examples: [example] },
    ]),
  );
}

/** JSON Schema, draft 7 (the draft VS Code completes from). */
export function settingsSchema(): Schema {
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'Sizewright course settings',
    description: `Content of ${SETTINGS_FILE}: holds for its folder and those below; the nearest file decides.`,
    type: 'object',
    properties: { $schema: { type: 'string' }, ...properties(KEYS) },
    additionalProperties: false,
  };
}

function allowed(shape: Shape): string {
  switch (shape.is) {
    case 'flag':
      return '`true` or `false`';
    case 'patterns':
      return 'list of texts';
    case 'choice':
    case 'choices':
      return shape.of.map((value) => `\`${value}\``).join(', ');
    case 'map':
      return `${shape.what} → ${allowed(shape.of)}`;
    case 'group':
      return 'keys below';
  }
}

function rows(keys: readonly Key[], prefix: string): string[] {
  return keys.flatMap(({ name, about, shape, example }) => {
    const below = shape.is === 'group' ? rows(shape.keys, `${prefix}${name}.`) : [];
    const sample = shape.is === 'group' ? '' : `\`${JSON.stringify(example)}\``;
    return [`| \`${prefix}${name}\` | ${about} | ${allowed(shape)} | ${sample} |`, ...below];
  });
}

/** A Markdown table of every key. */
export function settingsDocs(): string {
  return [
    '| key | what it decides | allowed | example |',
    '| --- | --- | --- | --- |',
    ...rows(KEYS, ''),
  ].join('\n');
}
