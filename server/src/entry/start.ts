/**
 * Starts a program from the code that the engine made of it in an earlier run: reading and compiling a bundle takes
 * longer than most runs. This small file stands before each program for Node; the program itself lies beside it and
 * runs as well without the kept code, which is missing, unreadable or of another engine the first time. It is run as a
 * script, not required, since the server's is for web workers too and has the ending of a module.
 */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { Script } from 'node:vm';
import { isMainThread } from 'node:worker_threads';
import { KeptCode, placeFor } from './kept-code.ts';

/** Set by the build: the program's file, beside this one, and a stamp of its content. */
declare const PROGRAM: string;
declare const STAMP: string;

/** What a program may give to be kept with more than one run makes of it. */
interface Program {
  /** Work that uses most of the program, in small steps. */
  readonly practice?: () => Promise<Iterable<unknown>>;
}

/** The engine of Node 20. Later ones compile in more steps and keep their own measure. */
const TRIED = /^11\./;

const FLAGS: readonly string[] = [
  // Most patterns meet either one text or thousands: compiling each for a trial first costs more than it saves.
  '--no-regexp-tier-up',
  // A reader of sentences is many functions, each run now and then. The engine compiles the warm ones for speed so early
  // that it is busier with that than with notes: wait six times as long.
  ...(TRIED.test(process.versions.v8) ? ['--interrupt-budget=800000'] : []),
];

/** A program that runs this long is no hurry any more, ms. */
const SETTLED = 5000;

// The engine is told how to work before it has any; threads follow the first one.
if (isMainThread) for (const flag of FLAGS) setFlagsFromString(flag);

const file = join(__dirname, PROGRAM);
const place = placeFor(`${PROGRAM}-${STAMP}`);

startWith(place === undefined ? undefined : new KeptCode(place));

function startWith(kept: KeptCode | undefined): void {
  // The build writes programs in ASCII, of which Latin-1 is the quickest reading.
  const script = new Script(
    `(function (exports, require, module, __filename, __dirname) {${readFileSync(file, 'latin1')}\n})`,
    { filename: file, ...(kept?.code && { cachedData: kept.code }) },
  );
  const program = { exports: {} as Program };
  script.runInThisContext()(program.exports, require, program, file, dirname(file));
  if (kept === undefined || (kept.code && script.cachedDataRejected === false)) return;
  if (isMainThread) keepLater(() => program.exports, script, kept);
}

/** Once the program is settled or done, whichever comes first; one that is broken off keeps nothing. */
function keepLater(program: () => Program, script: Script, kept: KeptCode): void {
  let begun = false;
  const begin = async (): Promise<void> => {
    if (begun) return;
    begun = true;
    clearTimeout(timer);
    await inTurns((await program().practice?.()) ?? []);
    kept.write(() => script.createCachedData());
  };
  const timer = setTimeout(begin, SETTLED).unref();
  process.once('beforeExit', begin);
}

/** One step at a time, so that whatever comes in meanwhile is not kept waiting. */
async function inTurns(steps: Iterable<unknown>): Promise<void> {
  for (const _ of steps) await new Promise((done) => setImmediate(done));
}
