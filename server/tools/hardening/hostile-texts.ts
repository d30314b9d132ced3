/** Texts of any length that make slow readers slow: what opens and never closes, what nests, what nearly matches, what is wide. */

/** `salt` differs on each call, so that nothing read before is used again. */
export type Text = (length: number, salt: string) => string;

const repeat =
  (unit: string): Text =>
  (length, salt) =>
    unit.repeat(Math.ceil(length / unit.length)) + salt;

/** Each time with another number, so that no part is read once for all. */
const numbered =
  (unit: string): Text =>
  (length, salt) =>
    Array.from({ length: Math.ceil(length / (unit.length + 4)) }, (_, i) =>
      unit.replace('#', `${i}${salt}`),
    ).join('');

/** Few rows of many columns. */
const wide =
  (header: string, cells: string): Text =>
  (length, salt) => {
    const columns = Math.ceil(length / (header.length + cells.length + 4));
    const marks = '|-'.repeat(columns * (header.match(/\|/g)?.length ?? 1));
    return `${header.repeat(columns)}|\n${marks}|\n${cells.repeat(columns)}|${salt}\n`;
  };

/** Many rows of few columns. */
const long =
  (header: string, cells: string): Text =>
  (length, salt) => {
    const marks = '|-'.repeat(header.match(/\|/g)?.length ?? 1);
    return `${header}${salt}|\n${marks}|\n${`${cells}|\n`.repeat(Math.ceil(length / (cells.length + 2)))}`;
  };

export const WIDE_TABLE = wide('|18 G', '|green');

const PROSE = 'Wash your hands, greet the patient and say what you are about to do. '.repeat(30);

/** Few texts of full size, which take seconds to minutes, with how many sizes and findings each has. */
export const FULL_SIZE = {
  'one line of 5 MB': {
    text: () => 'The 18 G needle is thinner than the 16 G needle. '.repeat(102_100),
    mentions: 204_200,
    findings: 0,
  },
  'a table of 10,000 columns': { text: () => WIDE_TABLE(150_000, ''), mentions: 10_000, findings: 0 },
  'a note of 50 MB': {
    text: () => `${PROSE}\n\nA 16 G cannula is thinner than a 20 G cannula.\n\n`.repeat(24_000),
    mentions: 48_000,
    findings: 24_000,
  },
} as const;

export const TEXTS: Readonly<Record<string, Text>> = {
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
  marksInALine: repeat('<!-- wrong on purpose: x --> '), marksOnLines: repeat('<!-- wrong on purpose: x -->\n'),
  arrows: repeat('18 G → '), equals: repeat('18 Fr = 6 mm = '), slashed: repeat('18 G / '), colons: repeat('18 G: green; '),
  contradictions: numbered('A 4-0 suture is thicker than a 2-0 suture, says #. '),
  paragraphs: numbered('An 18 G cannula is green, says #.\n\n'), notes: numbered('18 G[^#]\n\n[^#]: 3-0 silk\n\n'),
  numberedItems: numbered('1. A 14 Fr catheter is 9 mm across, says #\n'),
  questions: numbered('Which is thicker, #?\n\n- a. 18 G\n- b. 16 G\n\nAnswer: a\n\n'),
  keys: numbered('1. 18 G is wider than 20 G, says #. T\n'), table: WIDE_TABLE, rows: long('|gauge|colour', '|18 G|green'),
  colouredRow: wide('|gauge|colour', '|18 G|green'), measuredRow: wide('|gauge|mm', '|18 G|1.2 mm'),
  materialRow: wide('|Material|Fate', '|silk|absorbable'), keyedRow: wide('|True|False', '|18 G is wider than 20 G|x'),
  answeredRow: wide('|Statement|Answer', '|18 G is wider than 20 G|false'), measures: long('|gauge|mm|French', '|18 G|1.2|6 Fr'),
}; // biome-ignore format: a table
