/**
 * Time against size on hostile input. Two sizes, the shorter of several times each, so that other work on the
 * machine does not count; a round that fails is measured again, for time that grows with the square fails always.
 */
import { describe, expect, it } from 'vitest';
import { incremental } from './pipeline.ts';

/** `salt` differs on each call, so that nothing read before is used again. */
type Text = (length: number, salt: string) => string;

const repeat =
  (unit: string): Text =>
  (length, salt) =>
    unit.repeat(Math.ceil(length / unit.length)) + salt;

const table: Text = (length, salt) => {
  const columns = Math.ceil(length / 15);
  return `${'|18 G'.repeat(columns)}|\n${'|-'.repeat(columns)}|\n${'|green'.repeat(columns)}|${salt}\n`;
};

const rows: Text = (length, salt) => `|gauge|colour${salt}|\n|-|-|\n${'|18 G|green|\n'.repeat(length / 13)}`;

const paragraphs: Text = (length, salt) => `An 18 G cannula is green ${salt}.\n\n`.repeat(length / 30);

const TEXTS: Readonly<Record<string, Text>> = {
  digits: repeat('0123456789'), dashes: repeat('-'), zeros: repeat('3-0-'), slashes: repeat('3/0/'), dots: repeat('0.'),
  sizes: repeat('18 G, '), words: repeat('eighteen gauge '), spoken: repeat('two-oh '), comparing: repeat('thicker than '),
  rule: repeat('the larger the number the smaller the '), sentences: repeat('A 3-0 suture is thicker than 2-0. '),
  parentheses: repeat('(18 G '), brackets: repeat('['), labels: repeat('[18 G] '), links: repeat('[18 G](b '),
  titles: repeat('[a](b (18 G '), images: repeat('![18 G]('), stars: repeat('*18 G** '), mixed: repeat('**a__ _b* '),
  tildes: repeat('~a~~ '), ticks: repeat('`18` `` '), comments: repeat('a <!-- 18 G '), instructions: repeat('a <?'),
  addresses: repeat('http://a.b/18?&a;'), trailing: (length, salt) => `http://a.b${'.'.repeat(length)}c${salt}`,
  math: repeat('$18 $$ '), entities: repeat('&amp;18 G '), escapes: repeat('\\-'), astral: repeat('😀18 G '),
  pipes: repeat('|'), lines: repeat('18 G\n'), hardBreaks: repeat('18 G  \n'), items: repeat('- 18 G green\n'),
  nestedItems: repeat('- '), nestedQuotes: repeat('>'), quotes: repeat('> 18 G\n'), headings: repeat('# 18 G\n'),
  fences: repeat('```\n\n18 G\n\n'), html: repeat('<div>\n\n18 G\n\n'), blank: repeat('\n'), spaces: repeat(' '),
  footnotes: repeat('18 G[^1] '), definitions: repeat('[a]: x\n\n'),
  marksInALine: repeat('<!-- wrong on purpose: x --> '), marksOnLines: repeat('<!-- wrong on purpose: x -->\n'), table, rows, paragraphs,
}; // biome-ignore format: a table

const LENGTH = 2_000;
const FACTOR = 4;
/** 1 is linear; what is above leaves room for a busy machine. */
const EXPONENT = 1.25;
const ROUNDS = 6;
/** Milliseconds below which a time says nothing. */
const NOISE = 15;

let calls = 0;

function timeOf(text: Text, length: number): number {
  const times = [0, 1].map(() => {
    const source = text(length, ` ${calls++}`);
    const start = process.cpuUsage();
    incremental(source);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}

function exponentOf(text: Text): number {
  const [small, large] = [timeOf(text, LENGTH), timeOf(text, LENGTH * FACTOR)];
  return large < NOISE ? 0 : Math.log(large / Math.max(small, 1)) / Math.log(FACTOR);
}

describe('time grows with the length of', () => {
  it.each(Object.entries(TEXTS))('%s', (_, text) => {
    let best = Number.POSITIVE_INFINITY;
    for (let round = 0; round < ROUNDS && best > EXPONENT; round++) best = Math.min(best, exponentOf(text));
    expect(best).toBeLessThanOrEqual(EXPONENT);
  });
});

// Run with SIZEWRIGHT_RUNS above 1: it needs seconds.
it.runIf(Number(process.env.SIZEWRIGHT_RUNS ?? 1) > 1)(
  'one line of 5 MB and a table of 10,000 columns are read',
  () => {
    const line = 'The 18 G needle is thinner than the 16 G needle. '.repeat(100_000);
    expect(incremental(line).mentions.length).toBe(200_000);
    expect(incremental(table(150_000, '')).mentions.length).toBe(10_000);
  },
  600_000,
);
