/** `coverage`: which rules and paradoxes of sizes the course teaches. A report an author asks for, no judgement. */
import { extentOf, partKey, TOPICS, type Topic } from '../../course/index.ts';
import { run } from '../engine/run.ts';
import { safeLine } from '../escape.ts';
import { paint, wantsColour } from '../report/colour.ts';
import type { PlacedTopic } from '../result.ts';
import { complain, say } from '../terminal.ts';
import { planFor, type ReadingOptions, threadsOf } from './check.ts';

const FORMS = ['text', 'jsonl'] as const;
export type CoverageForm = (typeof FORMS)[number];

/** First place of each part in the course, and in how many notes it is said. */
interface Said {
  readonly where: string;
  notes: number;
}

const MARKS = { taught: 'taught ', partly: 'partly ', missing: 'missing' } as const;

function note(said: Map<string, Said>, path: string, topics: readonly PlacedTopic[]): void {
  for (const one of topics) {
    const known = said.get(partKey(one));
    if (known) known.notes++;
    else said.set(partKey(one), { where: `${path}:${one.place.line}:${one.place.column}`, notes: 1 });
  }
}

const partsOf = ({ id, parts }: Topic, said: ReadonlyMap<string, Said>): Said[] =>
  parts.map((_, part) => said.get(partKey({ topic: id, part }))).filter((one) => one !== undefined);

function textRow(topic: Topic, said: ReadonlyMap<string, Said>): string {
  const places = partsOf(topic, said).map(
    ({ where, notes }) => `${safeLine(where)}${notes > 1 ? ` and ${notes - 1} more` : ''}`,
  );
  const extent = MARKS[extentOf(topic, new Set(said.keys()))];
  return [
    `  ${extent}  ${topic.title}`,
    `           ${places.length > 0 ? places.join('; ') : topic.about}`,
  ].join('\n');
}

function asText(said: ReadonlyMap<string, Said>): string {
  const { strong } = paint(wantsColour(process.env));
  const taught = TOPICS.filter((topic) => extentOf(topic, new Set(said.keys())) === 'taught').length;
  const part = (kind: Topic['kind']) =>
    TOPICS.filter((topic) => topic.kind === kind).map((topic) => textRow(topic, said));
  return [
    strong('Rules'),
    ...part('rule'),
    '',
    strong('Paradoxes'),
    ...part('paradox'),
    '',
    strong(`${taught} of ${TOPICS.length} topics are taught. What a course leaves out is its own choice.`),
    '',
  ].join('\n');
}

function asJsonLines(said: ReadonlyMap<string, Said>): string {
  return TOPICS.map((topic) => {
    const { id, kind, title } = topic;
    const extent = extentOf(topic, new Set(said.keys()));
    return `${JSON.stringify({ topic: id, kind, title, extent, places: partsOf(topic, said).map(({ where }) => where) })}\n`;
  }).join('');
}

/** Exit status: 0, or 2 when something could not be read. */
export async function coverage(
  paths: readonly string[],
  options: ReadingOptions & { readonly report: CoverageForm },
): Promise<number> {
  const plan = planFor(paths, options);
  const said = new Map<string, Said>();
  let unreadable = plan.unreadable;
  for await (const { path, result, problem } of run(plan, {
    ...options,
    threads: threadsOf(options.threads),
    wanted: 'topics',
  })) {
    if (problem !== undefined) complain(problem);
    unreadable ||= problem !== undefined;
    note(said, path, result?.topics ?? []);
  }
  say(options.report === 'jsonl' ? asJsonLines(said) : asText(said));
  return unreadable ? 2 : 0;
}
