/**
 * Lets only the faults of a sample be tried: those that share a place with one that was drawn are put in with it, and
 * answered here without running a test. A plug-in, loaded by processes that read JavaScript alone.
 */
import { readFileSync } from 'node:fs';

const keyOf = ({ fileName, mutatorName, location: { start, end }, replacement }) =>
  JSON.stringify([
    mutatorName, start.line + 1, start.column, end.line + 1, end.column, replacement,
  ]) + fileName.replaceAll('\\', '/'); // biome-ignore format: a key

class Drawn {
  /** Keys of the faults drawn, each with the end of its file's path. */
  #drawn = [];

  async init() {
    this.#drawn = JSON.parse(readFileSync(process.env.MUTATION_DRAWN, 'utf8')).map(([file, ...place]) => [
      JSON.stringify(place),
      `/${file}`,
    ]);
  }

  async check(mutants) {
    const answers = mutants.map((mutant) => {
      const key = keyOf(mutant);
      const asked = this.#drawn.some(([place, file]) => key.startsWith(place) && key.endsWith(file));
      return [mutant.id, asked ? { status: 'passed' } : { status: 'compileError', reason: 'not drawn' }];
    });
    return Object.fromEntries(answers);
  }
}

/** Says what became of each fault as soon as it is known, so that a run that is stopped was not for nothing. */
class Telling {
  onMutantTested({ status, fileName, mutatorName, replacement, location: { start } }) {
    if (status === 'CompileError' || status === 'Killed')
      process.stdout.write(status === 'Killed' ? '.' : '');
    else
      process.stdout.write(
        `\n${status} ${fileName}:${start.line}:${start.column} ${mutatorName} → ${replacement}\n`,
      );
  }
}

export const strykerPlugins = [
  { kind: 'Checker', name: 'drawn', injectableClass: Drawn },
  { kind: 'Reporter', name: 'drawn', injectableClass: Telling },
];
