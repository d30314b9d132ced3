/**
 * A sentence says the same when a harmless phrase is put into it: each twin of the bank is read again with some of them,
 * in turn. The true one stays silent; most of the false ones are still found. Rules behind the sentences: see the bank.
 */
import { describe, expect, test, vi } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';
import { readBank } from './bank.ts';

vi.setConfig({ testTimeout: 480_000 });

type Insert = (text: string) => string;

const lowered = (text: string): string =>
  /^(?:An?|The) /.test(text) ? text[0]!.toLowerCase() + text.slice(1) : text;
const before =
  (words: string): Insert =>
  (text) =>
    words + lowered(text);
const behind =
  (words: string): Insert =>
  (text) =>
    text.replace(/\.$/, words);
const behindIs =
  (words: string): Insert =>
  (text) =>
    text.replace(/^(\D*\d\S*(?: \w+){1,4}) (is|are) /, `$1 $2 ${words} `);
/** Behind the size and device with which a sentence begins. */
const behindThing =
  (words: string): Insert =>
  (text) =>
    text.replace(
      /^((?:An?|The) \d\S*(?: (?:G|Fr|Ch))?(?: (?:needle|cannula|catheter|tube|drain|suture|silk|nylon))?)(?= (?:is|has|measures|means) )/,
      `$1${words}`,
    );

/** Each with the least share of false twins that is still found. */
const INSERTS: readonly (readonly [words: string, insert: Insert, least: number])[] = [
  ['As you know,', before('As you know, '), 0.95],
  ['Remember that', before('Remember that '), 0.95],
  ["Don't forget that", before("Don't forget that "), 0.93],
  ['For the record,', before('For the record, '), 0.95],
  ['While you wait,', before('While you wait, '), 0.93],
  ['I tell my students that', before('I tell my students that '), 0.93],
  ['as you know', behind(', as you know.'), 0.97],
  ['so check the box', behind(', so check the box before you open it.'), 0.94],
  ['and everyone should know it', behind(', and everyone should know it.'), 0.95],
  ['the rest is in the folder', behind('; the rest is in the folder.'), 0.95],
  ['of course', behindIs('of course'), 0.95],
  ['really', behindIs('really'), 0.95],
  ['therefore', behindIs('therefore'), 0.95],
  ['by the way', behindThing(', by the way,'), 0.95],
  ['which hangs by the door', behindThing(', which hangs by the door,'), 0.93],
  ['that we keep on the trolley', behindThing(' that we keep on the trolley'), 0.94],
];

/** Each sentence is read with so many of them. */
const EACH = 4;
const LONGEST = 160;

/** Sentences that state something; an instruction or a question stands no "Remember that" in front. */
const STATES = /^(?:(?:An?|The) |\d)[^?!:;"“”|⏎]*\.$/;

const twins = readBank().filter(
  ({ right, wrong }) => wrong.length <= LONGEST && STATES.test(right) && STATES.test(wrong),
);
const contradicted = (text: string): boolean =>
  analyse(text).findings.some(({ kind }) => kind === 'contradiction');

interface Tally {
  tried: number;
  found: number;
  readonly alarms: string[];
}

let known: Map<string, Tally> | undefined;
const all = (): Map<string, Tally> => {
  known ??= tally();
  return known;
};

function tally(): Map<string, Tally> {
  const tallies = new Map<string, Tally>(
    INSERTS.map(([words]) => [words, { tried: 0, found: 0, alarms: [] }]),
  );
  twins.forEach(({ right, wrong }, i) => {
    for (let k = 0; k < EACH; k++) {
      const [words, insert] = INSERTS[(i + k * (INSERTS.length / EACH)) % INSERTS.length]!;
      const own = tallies.get(words)!;
      if (insert(wrong) !== wrong) {
        own.tried++;
        if (contradicted(insert(wrong))) own.found++;
      }
      if (insert(right) !== right && contradicted(insert(right))) own.alarms.push(insert(right));
    }
  });
  return tallies;
}

describe('harmless phrases', () => {
  test('enough sentences are read', () => {
    expect(twins.length).toBeGreaterThan(1000);
  });

  test.each(INSERTS)('“%s” makes no true sentence wrong', (words) => {
    expect(all().get(words)!.alarms).toEqual([]);
  });

  test.each(INSERTS)('“%s” leaves most false sentences found', (words, _, least) => {
    const { tried, found } = all().get(words)!;
    expect(tried).toBeGreaterThan(20);
    expect(found / tried).toBeGreaterThanOrEqual(least);
  });
});
