/** The texts whose readings are stored in the folder `kept`, and what is stored there: a file each, a block a text. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readBank } from './bank.ts';

const folder = (name: string): string => join(import.meta.dirname, name);

/** Sentences that nothing may be said about. */
export const lookAlikes = (): string[] =>
  readFileSync(join(folder('bank'), 'silent.txt'), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && (!line.startsWith('# ') || line.includes('⏎')))
    .map((line) => line.replaceAll('⏎', '\n'));

function notesOf(round: string): string[] {
  const names = readdirSync(join(folder('rounds'), round)).filter((name) => name.endsWith('.md'));
  return names.sort().map((name) => readFileSync(join(folder('rounds'), round, name), 'utf8'));
}

/** All texts, by the name of their file in `kept`: the bank, the look-alikes and the rounds. */
export function keptTexts(): ReadonlyMap<string, readonly string[]> {
  const twins = readBank();
  const files = [...new Set(twins.map(({ file }) => file))];
  const textsOf = (name: string) =>
    twins.filter(({ file }) => file === name).flatMap(({ right, wrong }) => [right, wrong]);
  return new Map([
    ...files.map((file) => [file.replace('.md', ''), textsOf(file)] as const),
    ['silent', lookAlikes()],
    ...readdirSync(folder('rounds')).map((round) => [round, notesOf(round)] as const),
  ]);
}

const pathOf = (name: string): string => join(folder('kept'), `${name}.txt`);

/** The blocks of a file; none of a file that is not there. */
export const storedIn = (name: string): ReadonlySet<string> =>
  new Set(
    existsSync(pathOf(name))
      ? readFileSync(pathOf(name), 'utf8')
          .trimEnd()
          .split(/\n(?=> )/)
      : [],
  );

export const store = (name: string, blocks: readonly string[]): void =>
  writeFileSync(pathOf(name), `${blocks.join('\n')}\n`);
