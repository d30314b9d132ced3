/**
 * MDX is Markdown with JavaScript in it. The JavaScript is written over, character by character, and the rest
 * is read as Markdown, so that every offset stays true.
 */
import { linesOf } from './lines.ts';
import { type MdxPart, mdxParts } from './mdx-parts.ts';
import type { Comment, Note } from './model.ts';
import { readMarkdown } from './read-markdown.ts';

const blank = (text: string): string => text.replace(/[^\r\n]/g, ' ');
const letters = (text: string): string => text.replace(/[^\r\n]/g, 'x');

/** An expression becomes an HTML tag of its length, which is read as one placeholder. */
function overExpression(source: string): string {
  return source.length < 3 || /[\r\n]/.test(source) ? blank(source) : `<${letters(source.slice(2))}>`;
}

/** A tag stays as it is where it is HTML; from its first JavaScript value on it becomes letters; over lines it is blank. */
function overTag(source: string): string {
  if (/[\r\n]/.test(source)) return blank(source);
  const brace = source.indexOf('{');
  return brace < 0 ? source : `${source.slice(0, brace)}${letters(source.slice(brace, -1))}>`;
}

function over(part: MdxPart, source: string): string {
  if (part.kind === 'module') return blank(source);
  return part.kind === 'tag' ? overTag(source) : overExpression(source);
}

/** The text with its JavaScript written over; a line that holds nothing else becomes blank. */
function writeOver(text: string, parts: readonly MdxPart[]): string {
  let masked = '';
  let rest = '';
  let done = 0;
  for (const part of parts) {
    const source = text.slice(part.start, part.end);
    const between = text.slice(done, part.start);
    masked += between + over(part, source);
    rest += between + blank(source);
    done = part.end;
  }
  masked += text.slice(done);
  rest += text.slice(done);
  return linesOf(masked, 0)
    .map(({ start, end, next }) => {
      const only = rest.slice(start, end).trim() === '';
      return (only ? rest : masked).slice(start, next);
    })
    .join('');
}

function commentOf(text: string, part: MdxPart): Comment[] {
  const inside = /^\{\s*\/\*([\s\S]*)\*\/\s*\}$/.exec(text.slice(part.start, part.end));
  return inside ? [{ span: { start: part.start, end: part.end }, text: inside[1]! }] : [];
}

/** Reads MDX. */
export function readMdx(text: string): Note {
  const parts = mdxParts(text);
  const note = readMarkdown(writeOver(text, parts));
  const own = parts.filter((part) => part.kind === 'expression').flatMap((part) => commentOf(text, part));
  const comments = [...note.comments, ...own].sort((a, b) => a.span.start - b.span.start);
  return { ...note, text, comments };
}
