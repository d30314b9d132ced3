/** Formats other than Markdown. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Format, type Note, readNote } from '../../server/src/notes/index.ts';
import { expectSound, type Written } from './maps.ts';
import { markdown, runs } from './markdown-pieces.ts';

function read(text: string, format: Format): Note {
  const note = readNote(text, { format });
  expectSound(note);
  return note;
}

const texts = (note: Note) => note.passages.map((passage) => passage.text);

// W3C, "WebVTT: The Web Video Text Tracks Format", sections 4.1 (file structure) and 4.2 (cue text).
describe('WebVTT', () => {
  it.each([
    [
      'WEBVTT\n\n00:01.000 --> 00:02.000\nUse an 18\ngauge\n\n00:02.000 --> 00:03.000\nend',
      ['Use an 18\ngauge', 'end'],
    ],
    ['WEBVTT 18 G\nKind: 3-0\n\n18 G\n00:01.000 --> 00:02.000 size:18% line:3\nx', ['x']],
    [
      'WEBVTT\n\n00:01.000 --> 00:02.000\n<v Ann 18 G><c.a.b>Use</c> <00:01.500>it &amp; &lt;18&nbsp;G&gt;</v>',
      ['Use it & <18\u00A0G>'],
    ],
    ['WEBVTT\n\nSTYLE\n::cue(b) { margin: 18px }\n\nREGION\nid:18\n\n00:01.000 --> 00:02.000\nx', ['x']],
    ['WEBVTT\n\n00:01.000 --> 00:02.000\n<constructor>18</constructor> <b>G', ['18 G']],
    ['\uFEFFWEBVTT\r\n\r\n00:01.000 --> 00:02.000\r\n- a  \r\n- b\r\n', ['- a\n- b']],
  ])('%j', (text, expected) => {
    const note = read(text, 'vtt');
    expect(texts(note)).toEqual(expected);
    expect(note.passages.every((passage) => passage.kind === 'caption')).toBe(true);
  });

  it('has comments, bold and italics', () => {
    const note = read('WEBVTT\n\nNOTE\nkeep 18 G\n\n00:01.000 --> 00:02.000\n<b.x>18</b> <i>G</i>', 'vtt');
    expect(note.comments).toEqual([{ span: { start: 8, end: 22 }, text: '\nkeep 18 G' }]);
    expect(note.passages[0]!.marks).toEqual([
      { kind: 'strong', start: 0, end: 2 },
      { kind: 'emphasis', start: 3, end: 4 },
    ]);
  });
});

// Common practice, no source.
it('SubRip leaves out numbers, times, fonts and positions', () => {
  const text =
    '1\r\n00:00:01,000 --> 00:00:02,000\r\n{\\an8}<font color="a">18</font> G < 20 G\r\nb\r\n\r\n2\r\n00:00:03,000 --> 00:00:04,000\r\nc';
  expect(texts(read(text, 'srt'))).toEqual(['18 G < 20 G\nb', 'c']);
});

it('plain text is paragraphs between blank lines', () => {
  expect(texts(read('\uFEFF# 18 G \n  *b*\n \t\n\n- c\r\n- d', 'text'))).toEqual(['# 18 G\n*b*', '- c\n- d']);
});

// https://mdxjs.com/docs/what-is-mdx/ (MDX 3): ESM, JSX and expressions in Markdown.
describe('MDX', () => {
  it.each([
    ["import A from './18-G.js'\nexport const size = {\n  g: 18\n}\n\n# Head\n", ['Head']],
    ['<Card title="18 G" on={3 > 2}>\n\nText 18 G\n\n</Card>\n', ['Text 18 G']],
    ['Use {size > 18 ? "18 G" : 0} or <Size g={18} x="20 G"/> here', ['Use \uFFFC or \uFFFC here']],
    ['a < 18 G and `{18}` and \\{18\\}', ['a < 18 G and \uFFFC and {18}']],
    ['```js\nimport {18\n```\n\n18 G\n', ['18 G']],
    ['we import sutures', ['we import sutures']],
    ['open { brace 18 G', ['open { brace 18 G']],
    ['open { brace and { another', ['open { brace and { another']],
    ['an `open and an `open `tick', ['an \uFFFCopen `tick']],
    ['``two and ``` three and `` two', ['\uFFFC two']],
    ['an ``open and an ``other', ['an \uFFFCother']],
    ['an ``open\n\nand ```three', ['an ``open', 'and ```three']],
    ['an ``open\n\nan ``open\n\nand ``` three', ['an ``open', 'an ``open', 'and ``` three']],
    ['a <Tag 18 G\n\nb <Tag 20 G', ['a <Tag 18 G', 'b <Tag 20 G']],
    ['a <Tag <b>18 G</b>', ['a <Tag \uFFFC18 G\uFFFC']],
    ['a <Tag x="18 G', ['a <Tag x="18 G']],
    ['a <Tag x="18 G\n\nb <Tag y=\'20 G', ['a <Tag x="18 G', "b <Tag y='20 G"]],
  ])('%j', (text, expected) => {
    expect(texts(read(text, 'mdx'))).toEqual(expected);
  });

  it.each([
    ['Use {} and {size >\n18 ? 1 : 2} here', ['Use    and\nhere']],
    ['Use <Size\n  g={18}\n/> here', ['Use', 'here']],
    ['Use <Size g={18}\n  title="20 G" /> here', ['Use\nhere']],
  ])('over several lines: %j', (text, expected) => {
    expect(texts(readNote(text, { format: 'mdx' }))).toEqual(expected);
  });

  it('has comments', () => {
    const note = read('a {/* b */} c\n\n{/* d */}\n', 'mdx');
    expect(note.comments.map((comment) => comment.text)).toEqual([' b ', ' d ']);
  });
});

const WRITTEN: Readonly<Record<string, Written>> = { mdx: (source) => source.replaceAll('{}', '  ') };

describe('any text in any format', () => {
  it.each(['markdown', 'mdx', 'vtt', 'srt', 'text'] as const)('%s is read without complaint', (format) => {
    const any = fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.string({ maxLength: 200 }));
    const property = fc.property(any, (text) => expectSound(readNote(text, { format }), WRITTEN[format]));
    fc.assert(property, { numRuns: runs(200) });
  });

  it('an empty expression of MDX is two blanks, within a line too', () => {
    const note = readNote('The 18 G{}! It is{} green.', { format: 'mdx' });
    expectSound(note, WRITTEN.mdx);
    expect(note.passages.map(({ text }) => text)).toEqual(['The 18 G  ! It is   green.']);
  });

  it.each(['vtt', 'srt', 'text', 'mdx'] as const)('%s keeps its offsets', (format) => {
    const start = format === 'vtt' || format === 'srt' ? 'x\n\n00:01.000 --> 00:02.000\n' : '';
    const property = fc.property(markdown(), (text) => {
      const note = readNote(start + text, { format });
      expect(note.text).toBe(start + text);
      if (format !== 'mdx') expectSound(note);
    });
    fc.assert(property, { numRuns: runs(200) });
  });
});
