/** Reads a note of any format. */

import type { Note } from './model.ts';
import { readMarkdown } from './read-markdown.ts';

export type Format = 'markdown' | 'vtt' | 'srt' | 'text';

export interface ReadOptions {
  readonly format?: Format;
  /** Leave out stretches that can hold neither a size nor a rule about sizes. Off unless asked for. */
  readonly scan?: boolean;
}

/** Reads a note. Never throws; offsets are those of `text` as given, byte order mark included. */
export function readNote(text: string, options: ReadOptions = {}): Note {
  return readMarkdown(text, options.scan ?? false);
}
