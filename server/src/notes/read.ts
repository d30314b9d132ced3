/** Reads a note of any format. */
import type { Note } from './model.ts';
import { readCaptions } from './read-captions.ts';
import { readMarkdown } from './read-markdown.ts';
import { readMdx } from './read-mdx.ts';
import { readText } from './read-text.ts';

/** Quarto and R Markdown are Markdown; `mdx` is Markdown with JSX; `vtt` and `srt` are captions. */
export type Format = 'markdown' | 'mdx' | 'vtt' | 'srt' | 'text';

export interface ReadOptions {
  /** Markdown unless said. */
  readonly format?: Format;
}

/** Reads a note. Never throws; offsets are those of `text` as given, byte order mark included. */
export function readNote(text: string, options: ReadOptions = {}): Note {
  const { format = 'markdown' } = options;
  if (format === 'text') return readText(text);
  if (format === 'vtt' || format === 'srt') return readCaptions(text, format);
  return format === 'mdx' ? readMdx(text) : readMarkdown(text);
}
