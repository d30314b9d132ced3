/** What surrounds prose: headings, lists, tables, quotes, marks, comments, and what is no prose. */
import { describe, expect, it } from 'vitest';
import { isUnbroken, type Note, type Passage, readNote, sourceSpan } from '../../server/src/notes/index.ts';
import { expectSound } from './maps.ts';

function read(text: string): Note {
  const note = readNote(text);
  expectSound(note);
  return note;
}

const texts = (note: Note) => note.passages.map((passage) => passage.text);

/** Source of the first place where the prose says `words`. */
function sourceOf(note: Note, words: string): string {
  const passage = note.passages.find((each) => each.text.includes(words))!;
  const start = passage.text.indexOf(words);
  const span = sourceSpan(passage, { start, end: start + words.length });
  return note.text.slice(span.start, span.end);
}

describe('a size is found in the source', () => {
  it.each([
    ['**18** G', '18 G', '18** G'],
    ['18&nbsp;G', '18\u00A0G', '18&nbsp;G'],
    ['&ge;18 G', '≥18 G', '&ge;18 G'],
    ['3\\-0 silk', '3-0', '3\\-0'],
    ['> an 18\n> G needle', '18\nG', '18\n> G'],
    ['- an 18  \n  G needle', '18\nG', '18  \n  G'],
    ['1. an 18\r\n   G needle', '18\nG', '18\r\n   G'],
    ['an 18\rG needle', '18\nG', '18\rG'],
    ['\uFEFFan 18 G needle', '18 G', '18 G'],
    ['😀 an 18 G needle', '18 G', '18 G'],
    ['\0 an 18 G needle', '18 G', '18 G'],
    ['*18 ~~20~~* G', '18 20 G', '18 ~~20~~* G'],
    ['[18 G](x "20 G") needle', '18 G needle', '18 G](x "20 G") needle'],
    ['18[^1] G\n\n[^1]: x', '18 G', '18[^1] G'],
    ['a&#8211;b', 'a–b', 'a&#8211;b'],
    ['18 G&deg; b', '18 G°', '18 G&deg;'],
  ])('%j', (text, words, source) => {
    expect(sourceOf(read(text), words)).toBe(source);
  });

  it('and so is the place after its last character', () => {
    const [passage] = read('18 G&deg;').passages;
    expect(sourceSpan(passage!, { start: 5, end: 5 })).toEqual({ start: 9, end: 9 });
    expect(sourceSpan(passage!, { start: 4, end: 9 })).toEqual({ start: 4, end: 9 });
  });

  it('and it is known whether markup lies inside', () => {
    const [passage] = read('**18** G and 20&nbsp;G').passages;
    expect(isUnbroken(passage!, { start: 0, end: 2 })).toBe(true);
    expect(isUnbroken(passage!, { start: 0, end: 4 })).toBe(false);
    expect(isUnbroken(passage!, { start: 9, end: 13 })).toBe(true);
  });

  it.each([
    ['a <s>20</s> 18 G', ['\uFFFC20']],
    ['a <DEL class="x">20</DEL> <ins>18</ins> G', ['\uFFFC20']],
    ['**a <s>20** 18</s> G', ['\uFFFC20 18']],
    ['a <s>20 G', []],
    ['a <small>20</small> G', []],
  ])('and what HTML strikes is struck: %j', (text, struck) => {
    const [{ text: words, marks }] = read(text).passages as [Passage];
    const found = marks.filter(({ kind }) => kind === 'strike');
    expect(found.map(({ start, end }) => words.slice(start, end))).toEqual(struck);
  });

  it('even in a table with escaped pipes', () => {
    const note = read('| a \\| 18 G | `b \\| c` |\n|---|---|\n| &lt; 20 G | 3-0 |\n');
    expect(texts(note)).toEqual(['a | 18 G', '\uFFFC', '< 20 G', '3-0']);
    expect(sourceOf(note, '| 18')).toBe('\\| 18');
  });
});

describe('not prose', () => {
  it.each([
    ['```\n18 G\n```\n\n    18 G\n\n~~~~ r\n18 G\n~~~~'],
    ['<div>\n18 G\n</div>\n\n<!-- 18 G -->\n\n<script>\n\n18 G\n\n</script>'],
    ['$$\n18 G\n$$'],
    ['[a]: /18-G "18 G"'],
    ['---\ntitle: 18 G\n---'],
    ['+++\ntitle = "18 G"\n+++'],
  ])('%j says nothing', (text) => {
    expect(texts(read(text))).toEqual([]);
  });

  it('inline code, HTML, math and bare addresses are one placeholder each', () => {
    expect(texts(read('a $$18 G$$ b'))).toEqual(['a \uFFFC b']);
    const text = 'a `18 G` <b title="18 G">b</b> $18$ <http://x.y/18> https://x.y/3-0 c';
    expect(texts(read(text))).toEqual(['a \uFFFC \uFFFCb\uFFFC \uFFFC \uFFFC \uFFFC c']);
  });

  // The rule of Pandoc's manual, extension `tex_math_dollars`.
  it.each(['costs $5 for 18 G and $7 for 20 G', 'from $ 3 to $ 4'])('%j is about money', (text) => {
    expect(texts(read(text))).toEqual([text]);
  });

  it('comments are listed wherever they stand', () => {
    const note = read('a <!-- one --> b\n\n<!-- two\n3 -->\n\n> <!-- four -->\n\n<!-- open  \n');
    expect(note.comments.map((comment) => comment.text)).toEqual([' one ', ' two\n3 ', ' four ', ' open']);
    for (const { span, text } of note.comments.slice(0, 3)) {
      expect(note.text.slice(span.start, span.end)).toBe(`<!--${text}-->`);
    }
  });

  it('front matter has a place', () => {
    expect(read('\uFEFF---\na: 1\n\nb: 2\n---\n\n18 G').frontMatter).toEqual({ start: 1, end: 19 });
  });
});

describe('passages', () => {
  it('know their kind, level, quotes and marks', () => {
    const { passages } = read(
      'Set\n===\n\n#### Deep\n\n> > **a *b*** ~~c~~ [d](e)\n\n![alt **18 G**](x)\n\na[^1]\n\n[^1]: foot\n',
    );
    expect(passages.map(({ kind }) => kind)).toEqual([
      'heading', 'heading', 'paragraph', 'paragraph', 'alt', 'paragraph', 'footnote',
    ]); // biome-ignore format: a list
    expect(passages.map(({ level }) => level)).toEqual([
      1,
      4,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(passages[2]).toMatchObject({
      text: 'a b c d',
      quote: 2,
      marks: [
        { kind: 'strong', start: 0, end: 3 },
        { kind: 'emphasis', start: 2, end: 3 },
        { kind: 'strike', start: 4, end: 5 },
        { kind: 'link', start: 6, end: 7 },
      ],
    });
    expect(passages[4]).toMatchObject({ text: 'alt 18 G', marks: [{ kind: 'strong', start: 4, end: 8 }] });
  });

  it('know the headings above them', () => {
    const { passages } = read('# A\n\na\n\n### B\n\nb\n\n## C\n\nc\n\n> # Q\n>\n> q\n\nd\n\n# E\n');
    const paths = Object.fromEntries(
      passages.map(({ text, path }) => [text, path.map((at) => passages[at]!.text)]),
    );
    expect(paths).toEqual({
      A: [],
      a: ['A'],
      B: ['A'],
      b: ['A', 'B'],
      C: ['A'],
      c: ['A', 'C'],
      Q: [],
      q: ['Q'],
      d: ['A', 'C'],
      E: [],
    });
  });

  it('know their place in lists', () => {
    const { passages } = read('Lead:\n\n- [x] a\n- [ ] b\n\n  more\n  1. c\n  2. d\n\nAfter\n\n***\n\n* e\n');
    const places = passages.map(({ text, list }) => [text, list]);
    const outer = { list: 0, ordered: false, depth: 0, leadIn: 0 };
    const inner = { list: 1, ordered: true, depth: 1, leadIn: 3, parent: 2 };
    expect(places).toEqual([
      ['Lead:', undefined],
      ['a', { ...outer, index: 0, checked: true }],
      ['b', { ...outer, index: 1, checked: false }],
      ['more', { ...outer, index: 1, checked: false }],
      ['c', { ...inner, index: 0 }],
      ['d', { ...inner, index: 1 }],
      ['After', undefined],
      ['e', { list: 2, ordered: false, depth: 0, index: 0 }],
    ]);
  });
});

// GitHub Flavored Markdown Spec 0.29-gfm, section 4.10: rows may be short or long; what is too much is not shown.
describe('tables', () => {
  it('have rows, columns and a lead-in', () => {
    const note = read(
      'Sizes:\n\n| a | b |\n|:-:|---|\n| 1 | 2 | 3 |\n| 4 |\n|   | **5** |\nnot | a row\n\nend',
    );
    const [table] = note.tables;
    const said = table!.rows.map((row) => row.map((at) => (at < 0 ? null : note.passages[at]!.text)));
    expect(said).toEqual([
      ['a', 'b'],
      ['1', '2'],
      ['4', null],
      ['', '5'],
      ['not', 'a row'],
    ]);
    expect(table!.leadIn).toBe(0);
    expect(note.text.slice(table!.span.start, table!.span.end)).toMatch(/^\| a[\s\S]*a row$/);
  });

  it('stand in quotes and lists too', () => {
    const note = read('> |a|\n> |-|\n> |18 G|\n\n- b\n\n  |c|\n  |-|\n  |3-0|\n');
    expect(note.tables.map(({ rows, leadIn }) => ({ rows, leadIn }))).toEqual([
      { rows: [[0], [1]], leadIn: undefined },
      { rows: [[3], [4]], leadIn: 2 },
    ]);
    expect(note.passages[1]!.quote).toBe(1);
    expect(note.passages[4]!.list).toMatchObject({ list: 0, index: 0 });
  });

  it('without a delimiter row are paragraphs', () => {
    expect(read('| a | b |\n| 1 | 2 |').tables).toEqual([]);
  });
});

// GitHub Flavored Markdown Spec 0.29-gfm, sections 5.3, 6.5 and 6.9.
describe('other parts of GFM', () => {
  it.each([
    ['- [x] done', ['done']],
    ['[x] no task', ['[x] no task']],
    ['~~Hi~~ Hello, ~there~ world!', ['Hi Hello, there world!']],
    ['This ~~has a\n\nnew paragraph~~.', ['This ~~has a', 'new paragraph~~.']],
    ['see www.example.org/18-G.', ['see \uFFFC.']],
    ['mail a@example.org now', ['mail \uFFFC now']],
  ])('%j', (text, expected) => {
    expect(texts(read(text))).toEqual(expected);
  });
});

// No hand writes so: a parser needs time with the square of the length, or of the depth, of such text.
describe('text that is hard to parse', () => {
  const prose = 'an 18 G needle ';

  it('is prose as it stands when it is crowded with signs', () => {
    const crowded = `${'*a '.repeat(900)}\n${prose.repeat(20)}`;
    const [passage] = read(crowded).passages;
    expect(passage!.text).toBe(crowded);
    expect(passage!.marks).toEqual([]);
  });

  it('is left out when what is no prose may hide in it', () => {
    const note = read(`${'`a '.repeat(900)}\n${prose.repeat(20)}\n\nafter`);
    expect(texts(note)).toEqual(['', 'after']);
  });

  it('is parsed while it is long or full of signs, and not both', () => {
    expect(texts(read(`${prose.repeat(200)}*so*`))[0]).toMatch(/so$/);
    expect(texts(read(`${prose.repeat(200)}*so*`))[0]).not.toContain('*');
    expect(read('*a* '.repeat(200)).passages[0]!.marks.length).toBe(200);
  });

  it('is not read when it nests without end', () => {
    expect(texts(read(`${'> '.repeat(64)}${prose}`))).toHaveLength(1);
    expect(texts(read(`${'> '.repeat(65)}${prose}`))).toEqual([]);
  });
});
