/**
 * A long note that was just opened. Its reader sees the top of it, so what is contradicted there is told first; then the
 * note is read whole, and the client is told to ask again.
 */
import type { Finding } from '../checks/model.ts';
import { analyse, type Settings } from '../course/index.ts';

/** A shorter note is read whole at once, characters. */
const LONG = 12_000;

/** What is looked at first, characters: a few paragraphs, and where these are right about a screen. */
const LOOKS = [700, 2_000] as const;

/**
 * The top of a long note, of at most so many characters, cut where a section begins, or else between two paragraphs. Undefined
 * for a note that is short, or that has no such place.
 */
export function topOf(text: string, look: number): string | undefined {
  if (text.length < LONG) return undefined;
  const top = text.slice(0, look);
  const cut = top.lastIndexOf('\n#') + 1;
  const end = cut > look / 2 ? cut : Math.max(top.lastIndexOf('\n\n'), top.lastIndexOf('\n\r\n')) + 1;
  return end > 0 ? top.slice(0, end) : undefined;
}

/**
 * What is contradicted at the top of a long note; undefined when there is none to tell. Questions wait for the whole
 * note, which may settle them.
 */
export function firstLook(text: string, settings: Settings, path: string): readonly Finding[] | undefined {
  for (const look of LOOKS) {
    const top = topOf(text, look);
    const found = top === undefined ? [] : analyse(top, settings, path).findings.filter(isContradiction);
    if (found.length > 0) return found;
  }
  return undefined;
}

const isContradiction = ({ kind }: Finding): boolean => kind === 'contradiction';
