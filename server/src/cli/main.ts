/** Reads the command line and runs a command. Each command's code is loaded only when asked for. */
import { Argument, Command, CommanderError, Option } from 'commander';
import { SUBJECT_WORDS } from '../sizes/sheet/request.ts';
import type { AcceptOptions } from './commands/accept.ts';
import type { CheckOptions, ReadingOptions } from './commands/check.ts';
import type { CoverageForm } from './commands/coverage.ts';
import type { ListOptions } from './commands/list.ts';
import { abandonAll } from './files/replace.ts';
import { helpAfter } from './help.ts';
import { CHECK_REPORT_NAMES, LIST_REPORT_NAMES } from './report/names.ts';
import { Stop } from './stop.ts';
import { complain, say } from './terminal.ts';
import { reason, UsageError } from './usage-error.ts';
import { VERSION } from './version.ts';

const more = (value: string, list: string[] = []): string[] => [...list, value];

const reportOption = (kinds: readonly string[]): Option =>
  new Option(
    '-r, --report <NAME[=FILE]>',
    `${kinds.join(', ')}; repeat it to write several, each to its file`,
  )
    .argParser(more)
    .default([], 'text');

const thresholdOption = (): Option =>
  new Option('-t, --threshold <LEVEL>', 'lowest severity that makes the exit status 1')
    .choices(['hint', 'info', 'warning', 'error', 'never'])
    .default('warning');

const pathsArgument = (): Argument =>
  new Argument('[PATHS...]', 'files, folders or globs; - is standard input').default(['.']);

/** Options of every command that reads many notes. */
function readsNotes(command: Command): Command {
  return command
    .addArgument(pathsArgument())
    .option(
      '--paths-from <FILE>',
      'take the paths from a file or, with -, from standard input: one a line or ended by NUL',
    )
    .option(
      '--name <PATH>',
      'what standard input is taken to be: decides its settings and its name in reports',
    )
    .option('--shard <I/N>', 'only part I of N, to spread a run over machines')
    .option('--threads <N>', 'threads to use; as many as there are cores without it')
    .option('--cache <FOLDER>', 'keep results by content in FOLDER; safe to delete');
}

type Run = (run: () => Promise<number> | number) => Promise<void>;

/** As the command line gives them. */
type GivenCheckOptions = Omit<CheckOptions, 'accepted'> & { accepted: string | boolean; watch?: boolean };

function addCheck(program: Command, run: Run): void {
  readsNotes(program.command('check'))
    .description('report sizes that contradict the rules, unclear sizes, and points of style or consistency')
    .addOption(reportOption(CHECK_REPORT_NAMES))
    .addOption(thresholdOption())
    .option('--since <REVISION>', 'only findings that are new since a git revision')
    .option(
      '--accepted <FILE>',
      'record of findings accepted earlier (without it: the nearest sizewright.accepted.json)',
    )
    .option('--no-accepted', 'report accepted findings as well')
    .option('--watch', 'keep running and check a note again when it changes')
    .action((paths: string[], options: GivenCheckOptions) =>
      run(async () => {
        const given = { ...options, accepted: options.accepted === true ? undefined : options.accepted };
        if (options.watch) return (await import('./commands/watch.ts')).watchNotes(paths, given);
        return (await import('./commands/check.ts')).check(paths, given);
      }),
    );
}

function addOthers(program: Command, run: Run): void {
  readsNotes(program.command('list'))
    .description('list every size mention')
    .addOption(reportOption(LIST_REPORT_NAMES))
    .action((paths: string[], options: ListOptions) =>
      run(async () => (await import('./commands/list.ts')).list(paths, options)),
    );
  program
    .command('fix')
    .description('mend, in the files, what has only one right answer')
    .addArgument(pathsArgument())
    .option('--preview', 'show the changes as a unified diff and write nothing')
    .action((paths: string[], options: { preview?: boolean }) =>
      run(async () => (await import('./commands/fix.ts')).fix(paths, options)),
    );
  readsNotes(program.command('accept'))
    .description('record the findings there are now, so that only new ones are reported')
    .option(
      '--accepted <FILE>',
      'the record; without it the nearest sizewright.accepted.json, or a new one here',
    )
    .option('--prune', 'only remove entries whose findings are gone')
    .action((paths: string[], options: AcceptOptions) =>
      run(async () => (await import('./commands/accept.ts')).accept(paths, options)),
    );
}

function addCoverage(program: Command, run: Run): void {
  readsNotes(program.command('coverage'))
    .description('say which rules and paradoxes of sizes the notes teach, and which they never mention')
    .addOption(new Option('-r, --report <NAME>', 'text or jsonl').choices(['text', 'jsonl']).default('text'))
    .action((paths: string[], options: ReadingOptions & { report: CoverageForm }) =>
      run(async () => (await import('./commands/coverage.ts')).coverage(paths, options)),
    );
}

function addMerge(program: Command, run: Run): void {
  program
    .command('merge')
    .description('make one report of the parts of a run spread with --shard and -r parts=FILE')
    .argument('<PARTS...>')
    .addOption(reportOption(CHECK_REPORT_NAMES))
    .addOption(thresholdOption())
    .action((files: string[], options: CheckOptions) =>
      run(async () => (await import('./commands/merge.ts')).merge(files, options)),
    );
}

function addSmall(program: Command, run: Run): void {
  program
    .command('convert')
    .description('say a size in the other systems')
    .argument('<SIZE>', 'such as "18 G", "14 Fr", "USP 2-0" or "4.7 mm"')
    .option('--device <DEVICE>', 'what it is written on: needle, cannula, suture, sheath and so on')
    .option('--material <MATERIAL>', 'generic name of a suture material')
    .action((size: string, options: object) =>
      run(async () => (await import('./commands/convert.ts')).convert(size, options)),
    );
  program
    .command('explain')
    .description('say what a check is about, or how a line was read and judged')
    .argument('[ID|FILE:LINE]', 'without it: every check in a line')
    .action((subject: string | undefined) =>
      run(async () => (await import('./commands/explain.ts')).explain(subject)),
    );
}

function addEditing(program: Command, run: Run): void {
  for (const form of ['table', 'chart'] as const)
    program
      .command(form)
      .description(`print a ${form} of sizes as Markdown that a note can keep up to date`)
      .argument('<SUBJECT>', `${SUBJECT_WORDS.join(', ')}`)
      .argument('[SIZES...]', 'such as 14 16 18; the usual series without them')
      .action((subject: string, sizes: string[]) =>
        run(async () => (await import('./commands/sheet.ts')).sheet(form, [subject, ...sizes])),
      );
  program
    .command('serve')
    .description('serve an editor by the Language Server Protocol')
    .option('--stdio', 'over standard input and output; also without this option')
    .action(() => run(async () => (await import('./commands/serve.ts')).serve()));
}

function addHelpers(program: Command, run: Run): void {
  program
    .command('completions')
    .description('print completions for a shell, to be read at its start')
    .addArgument(new Argument('<SHELL>').choices(['bash', 'zsh', 'fish']))
    .action((shell: string) =>
      run(async () => {
        say((await import('./completions.ts')).completions(shell, program));
        return 0;
      }),
    );
  program
    .command('manual')
    .description('print the manual page, for man(1)')
    .action(() =>
      run(async () => {
        say((await import('./manual.ts')).manual(program, VERSION));
        return 0;
      }),
    );
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
  addOthers(program, run);
  addCoverage(program, run);
  addMerge(program, run);
  addSmall(program, run);
  addHelpers(program, run);
  addEditing(program, run);
  for (const command of program.commands) {
    command.copyInheritedSettings(program);
    const help = helpAfter(command.name());
    if (help) command.addHelpText('after', help);
  }
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

/** An interrupted run leaves no half-written file, and ends with the status that shells expect. */
function mindSignals(): void {
  for (const [signal, number] of [
    ['SIGINT', 2],
    ['SIGTERM', 15],
    ['SIGHUP', 1],
  ] as const)
    process.once(signal, () => {
      abandonAll();
      process.exit(128 + number);
    });
}

/** Runs the command line `args` (without interpreter and script) and returns the exit status. */
export async function main(args: readonly string[]): Promise<number> {
  let status = 0;
  mindSignals();
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
