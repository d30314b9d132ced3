/** Candidates whose unit is a word of the languages the note is written in. */
import type { Candidate } from './scan.ts';
import { type Language, WORD_LANGUAGES } from './words/units.ts';

/** All of them when no language is named: "20 Pouce" is no length in a course that is said to be in English. */
export function native(
  candidates: readonly Candidate[],
  text: string,
  languages: readonly Language[] | undefined,
): readonly Candidate[] {
  if (languages === undefined || languages.length === 0) return candidates;
  return candidates.filter(({ match }) => !isForeign(text.slice(match.start, match.end), languages));
}

function isForeign(written: string, languages: readonly Language[]): boolean {
  const words = written.toLowerCase().match(/[a-zà-ÿ]+/g) ?? [];
  return words.some((word) => {
    const known = WORD_LANGUAGES.get(word);
    return known !== undefined && !languages.some((language) => known.has(language));
  });
}
