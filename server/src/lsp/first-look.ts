/**
 * A long note that was just opened. Its reader sees the top of it, so what is contradicted there is told first; then the
 * note is read whole, and the client is told to ask again.
 */
import type { Finding } from '../checks/model.ts';
import { analyse, type Settings } from '../course/index.ts';

/** A shorter note is read whole at once, characters. */
const LONG = 12_000;

/** What is looked at first, characters: about a screen. */
const LOOK = 2_000;

/**
 * The top of a long note, cut where a section begins, or else between two paragraphs. Undefined for a note that is short, or
 * that has no such place.
 */
export function topOf(text: string): string | undefined {
  if (text.length < LONG) return undefined;
  const top = text.slice(0, LOOK);
  const cut = top.lastIndexOf('\n#') + 1;
  const end = cut > LOOK / 2 ? cut : Math.max(top.lastIndexOf('\n\n'), top.lastIndexOf('\n\r\n')) + 1;
  return end > 0 ? top.slice(0, end) : undefined;
}

/**
 * What is contradicted at the top of a long note; undefined when there is none to tell. Questions wait for the whole
 * note, which may settle them.
 */
export function firstLook(text: string, settings: Settings, path: string): readonly Finding[] | undefined {
  const top = topOf(text);
  const found =
    top === undefined
      ? []
      : analyse(top, settings, path).findings.filter(({ kind }) => kind === 'contradiction');
  return found.length > 0 ? found : undefined;
}
