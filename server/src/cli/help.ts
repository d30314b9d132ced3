/** Examples that --help and the manual page teach with, by command. */

type Example = readonly [written: string, what: string];

export const EXAMPLES: Readonly<Record<string, readonly Example[]>> = {
  check: [
    ['sizewright check', 'every note below this folder'],
    ['sizewright check week-1 week-2/quiz.md', 'a folder and a note'],
    ["sizewright check 'lectures/**/*.md'", 'a pattern; quote it, so that the shell leaves it alone'],
    ['sizewright check - --name a.md < draft.md', 'standard input, taken to be a.md'],
    ['sizewright check --since main', 'only what is new since the branch "main"'],
    ['sizewright check -r text -r sarif=sizes.sarif', 'several reports, each to its file'],
    ['git diff --name-only -z | sizewright check --paths-from -', 'the notes another program names'],
  ],
  list: [
    ['sizewright list notes/', 'every size, with its place'],
    [
      'sizewright list -r index > sizes.md',
      'an index of the sizes: how often, how and where each is written',
    ],
    ['sizewright list -r by-size', 'the notes of each size; by-note and by-system group otherwise'],
    ['sizewright list -r jsonl | grep needle-gauge', 'for another program'],
  ],
  fix: [
    ['sizewright fix --preview | less', 'what would change'],
    ['sizewright fix week-1', 'make the changes'],
  ],
  accept: [
    ['sizewright accept', 'take up the checks in an old course: report only what is new from now on'],
    ['sizewright accept --prune', 'drop entries whose findings are gone'],
  ],
  coverage: [['sizewright coverage lectures/', 'what the lectures teach and leave out']],
  merge: [
    ['sizewright check --shard 1/2 -r parts=1.parts', 'on one machine, and 2/2 on another'],
    ['sizewright merge 1.parts 2.parts -r junit=sizes.xml', 'then one report of both'],
  ],
  convert: [
    ['sizewright convert "18 G"', 'a gauge in millimetres and inches'],
    ['sizewright convert 3-0 --material chromic-gut', 'a suture size of one material'],
  ],
  explain: [
    ['sizewright explain', 'every check in a line'],
    ['sizewright explain size-direction', 'what one check reports and leaves alone'],
    ['sizewright explain notes/needles.md:12', 'how a line was read and judged, step by step'],
  ],
};

export const EXIT_STATUS =
  'Exit status: 0 nothing at or above the threshold, 1 findings, 2 wrong use or a note that could not be read.';

/** Columns up to which what an example does stands beside it. */
const BESIDE = 44;

export function exampleLines(command: string): string[] {
  return (EXAMPLES[command] ?? []).flatMap(([written, what]) =>
    written.length < BESIDE
      ? [`  ${written.padEnd(BESIDE)}${what}`]
      : [`  ${written}`, `  ${' '.repeat(BESIDE)}${what}`],
  );
}

/** What --help shows after the options; empty when there is nothing to teach. */
export function helpAfter(command: string): string {
  const lines = exampleLines(command);
  if (lines.length === 0) return '';
  return ['', 'Examples:', ...lines, ...(command === 'check' ? ['', EXIT_STATUS] : [])].join('\n');
}
