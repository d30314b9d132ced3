/** Reads a note of any format. */
import { readMarkdown } from './markdown-prose.ts';
import type { Note } from './model.ts';

export type Format = 'markdown' | 'vtt' | 'srt' | 'text';

export interface ReadOptions {
  readonly format?: Format;
}

/** Reads a note. Never throws; offsets are those of `text` as given, byte order mark included. */
export function readNote(text: string, _options: ReadOptions = {}): Note {
  return readMarkdown(text);
}
