/**
 * Which choice a remark below or behind the choices points at, however it says so: "4-C", "Q3: c", "the mark goes to A", "tick
 * the first box". Asked when no line that announces an answer was found.
 */
import type { Read } from '../text/scenes.ts';
import type { Quiz } from './collect.ts';
import { bodiesIn } from './entries.ts';
import type { Keyed } from './key.ts';
import { placeSaid } from './loose/said.ts';
import { type Piece, piece, placeOf, wholePiece, written } from './piece.ts';

/** Longest remark, in characters. */
const LONGEST = 120;

/** "Q3: c", "4-C", "Item 9 = (b)". */
const COUNTED =
  /^\W*(?:(?:q(?:uestion)?|item|no\.?|number|a(?:nswer)?)\s*)?(\d{1,2})\s*[-–—:.)=→]+\s*\(?([A-Fa-f]|i{1,3}|iv)\)?(?=\W|$)/i;

/** A letter behind a word for what is right. A small letter must be set off; a capital at the head of words is an article. */
const CREDITED =
  /\b(?:marks?|marking|points?|credit|tick(?:ed)?|answers?|right|correct(?:ly)?|key|keyed|solution|best|circled?|ringed?|ring|accept(?:ed)?|choose|wanted|looking for|goes to|it's|it is)\b[^?!\n]{0,30}?[\s(“"'*:](?:option |letter |choice |box |answer )?([A-F]|[a-f](?=["”')]|\s*$|\.\s*$))(?=["”')*]*(?:[.,;:=–—-]|\s*$|\s+(?:is|as|because|since|=|[–—-])))/i;

/** "i A, ii B": the letters belong to questions that are counted. */
const LABELLED = /\b(?:i{1,3}|iv|vi{0,3}|ix|x)\s?[-–—:.)=]?\s?\(?(?:[A-F](?=[\s,;.)]|$)|[a-f]\))/;

/** Somebody's wrong choice, a condition, several. */
const OTHERWISE =
  /\b(?:not|never|wrong|false|except|unless|many|most|some|students?|candidates?|common|often|mistake|distractors?|if|or|and|tempting|trap|lose|loses|no marks?|nor)\b|[?]|n['’]t\b/i;
const PLACED =
  /\b(?:tick|ring|circle|answer|right|correct|solution|choose|box|option|choice)\b[^.?!]{0,24}\b(?:first|second|third|fourth|last|middle|former|latter|\d|one|two|three)\b/i;

/** In the passages right below the last choice, or in the sentences behind it. */
export function pointed(reads: readonly Read[], quiz: Quiz): Keyed | undefined {
  const last = quiz.options.at(-1)!;
  const tail = behind(last);
  const below = reads[quiz.last + 1];
  const after = reads[quiz.last + 2];
  const near = [tail, below && whole(below), below && short(below) ? after && whole(after) : undefined];
  for (const remark of near) {
    const hit = remark && choiceIn(remark, quiz);
    if (hit) return hit;
  }
  return undefined;
}

const short = ({ passage }: Read): boolean => passage.text.length <= LONGEST;
const whole = (read: Read): Piece | undefined =>
  read.passage.kind === 'heading' || read.passage.cell || !short(read) ? undefined : wholePiece(read);

/** The sentences behind the last choice on its lines. */
function behind({ read, span }: Piece): Piece | undefined {
  const text = read.passage.text.slice(span.start);
  const stop = /[.;]\s+(?=\S)|\n/.exec(text);
  const from = stop ? span.start + stop.index + stop[0].length : -1;
  const end = read.passage.text.length;
  return from > 0 && end - from <= LONGEST && end > from ? piece(read, from, end) : undefined;
}

/** A letter stands in front of the choice. */
const lettered = ({ read, span }: Piece): boolean =>
  /^[A-F]\s/.test(read.passage.text.slice(span.start, span.start + 2)) ||
  /(?:^|[\s(*_])[A-Fa-fivIV]{1,3}[).:,*_]*\s*$/.test(
    read.passage.text.slice(Math.max(0, span.start - 8), span.start),
  );

function choiceIn(remark: Piece, quiz: Quiz): Keyed | undefined {
  const { read, span } = remark;
  const text = written(remark);
  if (bodiesIn(text, { start: 0, end: text.length }).length > 1) return undefined;
  const counted = COUNTED.exec(text);
  const credited = counted || LABELLED.test(text) ? null : CREDITED.exec(text);
  const letter = counted ? (Number(counted[1]) === quiz.number ? counted[2] : undefined) : credited?.[1];
  if (OTHERWISE.test(text) || (letter && !quiz.options.every(lettered))) return undefined;
  const place = letter
    ? placeOf(letter)
    : !counted && PLACED.test(text)
      ? placeSaid(remark, quiz.options.length)
      : -1;
  const chosen = quiz.options[place];
  if (!chosen) return undefined;
  const match = counted ?? credited;
  const at = match ? span.start + match.index + match[0].lastIndexOf(letter!) : span.start;
  return { quiz, chosen, at: letter ? piece(read, at, at + letter.length) : remark };
}
