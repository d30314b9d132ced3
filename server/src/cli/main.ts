/** Reads the command line and runs a command. Each command's code is loaded only when asked for. */
import { Argument, Command, CommanderError, Option } from 'commander';
import type { CheckOptions } from './commands/check.ts';
import { Stop } from './stop.ts';
import { complain, say } from './terminal.ts';
import { reason, UsageError } from './usage-error.ts';
import { VERSION } from './version.ts';

const more = (value: string, list: string[] = []): string[] => [...list, value];

const reportOption = (kinds: string): Option =>
  new Option('-r, --report <NAME[=FILE]>', `${kinds}; repeat it to write several, each to its file`)
    .argParser(more)
    .default([], 'text');

const pathsArgument = (): Argument =>
  new Argument('[PATHS...]', 'files, folders or globs; - is standard input').default(['.']);

type Run = (run: () => Promise<number> | number) => Promise<void>;

function addCheck(program: Command, run: Run): void {
  program
    .command('check')
    .description('report sizes that contradict the rules, unclear sizes and departures from the house style')
    .addArgument(pathsArgument())
    .addOption(reportOption('text, jsonl or sarif'))
    .addOption(
      new Option('-t, --threshold <LEVEL>', 'lowest severity that makes the exit status 1')
        .choices(['hint', 'info', 'warning', 'error', 'never'])
        .default('warning'),
    )
    .action((paths: string[], options: CheckOptions) =>
      run(async () => (await import('./commands/check.ts')).check(paths, options)),
    );
}

function addList(program: Command, run: Run): void {
  program
    .command('list')
    .description('list every size mention')
    .addArgument(pathsArgument())
    .addOption(reportOption('text, jsonl or sarif'))
    .action((paths: string[], options: { report: string[] }) =>
      run(async () => (await import('./commands/list.ts')).list(paths, options)),
    );
}

function addSmall(program: Command, run: Run): void {
  program
    .command('convert')
    .description('say a size in the other systems')
    .argument('<SIZE>', 'such as "18 G", "14 Fr", "USP 2-0" or "4.7 mm"')
    .option('--device <DEVICE>', 'what it is written on: needle, cannula, suture, sheath …')
    .option('--material <MATERIAL>', 'generic name of a suture material')
    .action((size: string, options: object) =>
      run(async () => (await import('./commands/convert.ts')).convert(size, options)),
    );
  program
    .command('explain')
    .description('say what a check is about, or how a line was read and judged')
    .argument('<ID|FILE:LINE>')
    .action((subject: string) => run(async () => (await import('./commands/explain.ts')).explain(subject)));
}

function commandLine(run: Run): Command {
  const program = new Command('sizewright');
  program
    .description(
      'Checks the sizes of sutures, needles, cannulas, catheters and wires in clinical teaching notes.',
    )
    .version(VERSION)
    .exitOverride()
    .configureOutput({ writeOut: say, outputError: (text) => complain(text.trim().replace(/^error: /, '')) })
    .showSuggestionAfterError();
  addCheck(program, run);
  addList(program, run);
  addSmall(program, run);
  for (const command of program.commands) command.copyInheritedSettings(program);
  return program;
}

/** Exit status for what went wrong; says it in one line. */
function statusOf(error: unknown): number {
  if (error instanceof Stop) return error.status;
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
  if (error instanceof UsageError) {
    complain(error.message);
    return 2;
  }
  complain(
    `this should not happen: ${reason(error)}${process.env.SIZEWRIGHT_TRACE ? `\n${(error as Error).stack}` : ''}`,
  );
  return 2;
}

/** Runs the command line `args` (without interpreter and script) and returns the exit status. */
export async function main(args: readonly string[]): Promise<number> {
  let status = 0;
  const program = commandLine(async (run) => {
    status = await run();
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return status;
  } catch (error) {
    return statusOf(error);
  }
}
