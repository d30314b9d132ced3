/**
 * Against the outside: every example of the CommonMark specification, version 0.31.2
 * (https://spec.commonmark.org/0.31.2/, npm `commonmark-spec`).
 */
import { tests as published } from 'commonmark-spec';
import { describe, expect, it } from 'vitest';
import { readNote } from '../../server/src/notes/index.ts';
import { readWhole } from '../../server/src/notes/read-markdown.ts';
import { expectSound } from './maps.ts';

const examples = published.map((example) => ({
  ...example,
  markdown: example.markdown.replaceAll('→', '\t'),
  html: example.html.replaceAll('→', '\t'),
}));

const named = (example: { number: number; section: string }) => `${example.number} (${example.section})`;

/** Neighbours in one note, so that definitions, lists and headings meet others. */
const joined = examples.slice(2).map((example, index) => ({
  name: `${example.number - 2} to ${example.number}`,
  markdown: [examples[index]!, examples[index + 1]!, example].map((part) => part.markdown).join('\n'),
}));

/** Prose of the HTML the specification expects; only its own tags, so no raw HTML. */
function proseOfHtml(html: string): string {
  return html
    .replace(/<pre>[\s\S]*?<\/pre>/g, '')
    .replace(/<code>[\s\S]*?<\/code>/g, '\uFFFC')
    .replace(/<img [^>]*\/>/g, '\uFFFC')
    .replace(/<[^>]*>/g, '')
    .replace(
      /&(lt|gt|quot|amp);/g,
      (_, name: 'lt' | 'gt' | 'quot' | 'amp') => ({ lt: '<', gt: '>', quot: '"', amp: '&' })[name],
    )
    .replace(/\s+/g, '');
}

function proseOfNote(markdown: string): string {
  const main = readNote(markdown).passages.filter((passage) => passage.kind !== 'alt');
  return main
    .map((passage) => passage.text)
    .join('')
    .replace(/\s+/g, '');
}

/** Raw HTML is shown as it is, and the bare addresses of GFM become placeholders: not to be compared. */
const OTHERWISE = new Set(['HTML blocks', 'Raw HTML', 'Autolinks']);
/** Failed links and definitions that leave raw HTML. */
const RAW_HTML = new Set([201, 491, 494]);

describe('CommonMark examples', () => {
  it.each(examples.map((example) => [named(example), example] as const))(
    '%s maps each character',
    (_, example) => {
      expectSound(readNote(example.markdown));
    },
  );

  it('are all there', () => {
    expect(examples.length).toBeGreaterThan(640);
  });

  const comparable = examples.filter(
    (example) =>
      !OTHERWISE.has(example.section) &&
      !RAW_HTML.has(example.number) &&
      !/<[a-z]+ |<!--/.test(example.markdown) &&
      !/^---|https?:/.test(example.markdown),
  );
  it.each(comparable.map((example) => [named(example), example] as const))(
    '%s reads as published',
    (_, example) => {
      expect(proseOfNote(example.markdown)).toBe(proseOfHtml(example.html));
    },
  );

  it.each(examples.map((example) => [named(example), example] as const))(
    '%s reads the same in stretches',
    (_, { markdown }) => {
      expect(readNote(markdown)).toEqual(readWhole(markdown));
    },
  );

  it.each(joined)('$name read the same in stretches when joined', ({ markdown }) => {
    const note = readNote(markdown);
    expectSound(note);
    expect(note).toEqual(readWhole(markdown));
  });
});
