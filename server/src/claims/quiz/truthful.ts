/** Statements that say "True or false?" themselves, with the verdict on the next line or in the next paragraph. */

import type { Note } from '../../notes/model.ts';
import type { Read } from '../text/scenes.ts';
import { asksTruth } from '../text/truth-keys.ts';
import type { Desk } from './desk.ts';
import { SEVERAL_VERDICTS } from './entries.ts';
import { linesOf } from './lines.ts';
import type { Pair } from './pairs.ts';
import { markerNumber } from './piece.ts';
import { questionIn, replyIn } from './turns.ts';

const LONGEST = 300;
const VERDICT =
  /^[\s>*_("“'-]*(?:[A-Z][a-z]{1,12}[:*_\s]{1,4}\s)?[*_"“]*(?:(?:a(?:ns(?:wer)?)?\s?\d{0,2}\s*[.:)–—-]?|[a-z]?\d{1,2}\s*[.:)–—-]|answer is|it is|that is)\s*)?(?:true|false|t|f|right|wrong|correct|incorrect|yes|no)\b(?!\s*(?:or|\/))/i;
const ASKS = /\b(?:true|right|fact|t)\s?(?:or|\/)\s?(?:false|wrong|fiction|myth|f)\b/i;

export function truthful({ note, reads }: Desk, read: Read): Pair[] {
  const { passage } = read;
  if (!asksTruth(passage) || passage.kind === 'heading' || passage.text.length > LONGEST) return [];
  const lines = linesOf(read);
  const next = reads[passage.index + 1];
  return lines.flatMap((line, i) => {
    if (!ASKS.test(passage.text.slice(line.start, line.end))) return [];
    const own = lines[i + 1];
    const at = own ? read : next && !next.passage.cell && next.passage.kind !== 'heading' ? next : undefined;
    const below = own ?? (at && linesOf(at)[0]);
    const said = below ? at!.passage.text.slice(below.start, below.end) : '';
    if (!at || !below || !VERDICT.test(said) || SEVERAL_VERDICTS.test(said)) return [];
    if (at.passage.list && at.passage.list.list === passage.list?.list && !sameNumber(note, read, at))
      return [];
    if (bothOffered(at, reads[at.passage.index + 1])) return [];
    return [{ question: questionIn(read, line), reply: replyIn(at, below).piece, marked: true }];
  });
}

/** "- true | feedback: No." and "- false | feedback: Correct.": the two to choose from, whichever is meant. */
function bothOffered({ passage: a }: Read, next: Read | undefined): boolean {
  const b = next?.passage;
  const opens = (text: string) => /^\W*(true|false)\b/i.exec(text)?.[1]?.toLowerCase();
  return (
    a.list !== undefined &&
    a.list.list === b?.list?.list &&
    opens(a.text) !== undefined &&
    opens(b!.text) !== undefined &&
    opens(a.text) !== opens(b!.text)
  );
}

/** "4. True / False …" and below it "4. True": the number of the question written again. */
function sameNumber(note: Note, asked: Read, below: Read): boolean {
  const own = markerNumber(note, asked);
  return own !== undefined && own === markerNumber(note, below);
}
