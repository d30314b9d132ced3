/** Questions and the replies that the layout of a note gives them: the next speaker, the back of a card, a column, a key. */

import { matchesOf, sourceSpan } from '../../notes/index.ts';
import type { Note, Span } from '../../notes/model.ts';
import { finds, firstMatch } from '../../notes/patterns.ts';
import { saysAnew } from '../corrections/amended.ts';
import { ofErrata } from '../corrections/errata.ts';
import { challenges, rejects } from '../stance/index.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import type { Read } from '../text/scenes.ts';
import type { Sentence } from '../text/sentences.ts';
import { REPORTED_SPEAKERS } from '../words/frames.ts';
import { type Desk, spanOf } from './desk.ts';
import { severalEntries } from './entries.ts';
import { fills, fillsWhole, tells } from './fillers.ts';
import { gapped } from './gapped.ts';
import { ANSWER_LABEL, PROMPT } from './labels.ts';
import { askedOn, linesOf } from './lines.ts';
import { labelNumber, type Piece, piece } from './piece.ts';
import { LONGEST_LINE, questionIn, type Reply, replyIn, SPEAKER } from './turns.ts';

export interface Pair {
  readonly question: Piece;
  readonly reply: Piece;
  /** Said to be the answer by a word, a column or a key, not only by its place. */
  readonly marked: boolean;
  /** "Correct.": the next speaker says so too, and the finding belongs to both. */
  readonly confirmed?: Span;
}

/** Where a finding about the reply stands, in the source. */
export const replySpan = ({ reply, confirmed }: Pair): Span => {
  const own = spanOf(reply);
  return confirmed ? { start: own.start, end: Math.max(own.end, confirmed.end) } : own;
};

/** Every pair of the note but those of tables and answer sections. `offered`: passages that belong to questions with choices. */
export function pairs(desk: Desk, offered: ReadonlySet<number>): Pair[] {
  return desk.reads.flatMap((read) => {
    if (read.passage.cell || read.passage.kind === 'alt') return [];
    const found = [...prompted(desk, read, offered), ...tailed(read), ...spoken(desk, read, offered)];
    if (found.length < 2) return found;
    return [...new Map(found.reverse().map((pair) => [placeOfReply(pair), pair])).values()].reverse();
  });
}

export const placeOfReply = ({ reply }: Pair): string => `${reply.read.passage.index} ${reply.span.start}`;

/** A word that can only announce an answer; others do below a line that asks. */
const LABELLED =
  /^\W{0,3}(?:the\s+)?(?:(?:right|correct|model|best|expected)\s+)?(?:answer|ans)\s*[.:–—-]\W{0,3}\S/i;
const keyedBelow = (asked: string, below: string): boolean =>
  finds(LABELLED, below) ||
  (finds(ANSWER_LABEL, below) &&
    /^\W{0,3}[a-z ]{2,24}\s*[:=→]/i.test(below) &&
    /\?|\b\w+(?:er|est)\b/.test(asked));
const DEFINES = /^\s*:\s+\S/;

/** "Q: 20 G cannula, hub colour" with "A: pink" on the line or in the passage after it; a term with its definition. */
function prompted(desk: Desk, read: Read, offered: ReadonlySet<number>): Pair[] {
  const lines = linesOf(read);
  return lines.flatMap((line, i) => {
    const text = read.passage.text.slice(line.start, line.end);
    if (askedOn(read, line).length > 1) return [];
    const below = lines[i + 1];
    const next = desk.reads[read.passage.index + 1];
    if (below && DEFINES.test(read.passage.text.slice(below.start, below.end)))
      return [
        {
          question: questionIn(read, line),
          reply: piece(read, read.passage.text.indexOf(':', below.start) + 1, below.end),
          marked: true,
        },
      ];
    const at = below ? read : next;
    const answer = below ?? (next && prose(next) ? linesOf(next)[0] : undefined);
    if (!at || !answer || (!below && firstOfSeveral(desk, at))) return [];
    const labelled =
      !offered.has(read.passage.index) && keyedBelow(text, at.passage.text.slice(answer.start, answer.end));
    if ((!PROMPT.test(text) && !labelled) || severalEntries(at)) return [];
    const reply = replyIn(at, answer);
    return reply.marked ? [{ question: questionIn(read, line), reply: reply.piece, marked: true }] : [];
  });
}

/** "A) …", and below it "B) …": choices in paragraphs of their own. */
const firstOfSeveral = ({ reads }: Desk, { passage }: Read): boolean =>
  /^\(?[Aa][.):]\s/.test(passage.text) &&
  /^\(?[Bb][.):]\s/.test(reads[passage.index + 1]?.passage.text ?? '');

const prose = ({ passage }: Read) => passage.kind === 'paragraph' || passage.kind === 'caption';

const TAIL =
  /(?:[\s(]|^)(?:→|⇒|➜|►|▸|▶|=>|->)\s*(?=[^→⇒➜►▸▶]*$)(?!.*[=-]>)|[.;,—–(:-]\s*(?:(?:right|correct|best|model)\s+)?(?:answer|ans|key)\s*(?::|=|→|—|–|\bis\b|(?=\s\d))\s*|[.?;,—–("”]\s*(?:(?:right|correct|best|model|sample|ideal|expected|accepted)\s+)?(?:solution|reply|response|expected|verdict|model|looking for|gap|correct (?:option|choice|one|word))\s*[:=]\s*|[.;—–]\s*(?:(?:card )?back|reverse|overleaf)\s*[:=→]\s*|(?<=\?\s?)(?:\.{4,}|…{2,})\s*(?:a(?:ns(?:wer)?)?\s?\d{0,2}\s*[.:)]\s*)?(?=[^.…\s])/i;

/** A mark or a word that every such tail has. */
const MAY_TAIL = /[:=→⇒➜►▸▶>—–…]|\.{4}|(?:ans(?:wer)?|key)\s/i;
const tailOf = (text: string): RegExpExecArray | null =>
  MAY_TAIL.test(text) ? firstMatch(TAIL, text) : null;

/** "Given answer: …. Model answer: …": what stands before the key is somebody's reply. */
const GIVEN =
  /^\W{0,3}(?:(?:answer|reply|response) given|(?:given|wrong|your|(?:student|candidate|trainee|learner)(?:['’]?s)?['’]?) (?:answer|reply|response))\s*:/i;

/** "4 mm → 1.3 Fr  ✗ wrong way": marked, and not right. */
const CROSSED_OUT = /^[^✓✔✅]*[✗✘✖❌][^✓✔✅]*$/u;

/** "Slide 9: “6 Fr = 6 mm” → 2 mm.": the words of a page, and what they ought to be. */
const mended = (text: string, arrow: number, behind: number): boolean =>
  (/^[^"“]{1,24}["“][^"”]+["”]\s*$/.test(text.slice(0, arrow)) && ofErrata(text, [])) ||
  saysAnew(lastOf(text.slice(0, arrow)), firstOf(text.slice(behind)));
/** "taper for skin -> cutting for skin": the words on both sides of the arrow. */
const lastOf = (text: string): string[] =>
  wordsOf(text.slice(Math.max(text.lastIndexOf(';'), text.lastIndexOf(':')) + 1));
const firstOf = (text: string): string[] => wordsOf(text.split(/[;,.](?=\s|$)/, 1)[0]!);
const wordsOf = (text: string): string[] => text.toLowerCase().trim().split(/\s+/);

/** "2. 16 → 12. The tube was changed for a thinner one. …": a change and what is told of it, no question and its answer. */
const told = (text: string, from: number, cut: number, to: number): boolean =>
  cut - from < 20 &&
  /^\W*(?:\d{1,2}[.)]\s+)?\d[\d.-]*\s?(?:G|Fr|Ch|mm)?\s*$/.test(text.slice(from, cut)) &&
  /[.;]\s+[A-Z]/.test(text.slice(cut, to));

/** "Wider wire: 0.018 or 0.035 in [the 0.018]": what asks, and in brackets behind it what answers. */
function bracketTail(text: string): RegExpExecArray | null {
  const tail = BRACKET_TAIL.exec(text);
  return tail &&
    CHOOSES.test(text.slice(0, tail.index)) &&
    !EARNS.test(tail[0]) &&
    !/\d[^,]*,\s*\d/.test(text.slice(tail.index))
    ? tail
    : null;
}
const BRACKET_TAIL = /\s[[(](?=[^[\]()]{1,40}[\])]\W*$)/;
const CHOOSES = /[?=]\s*$|^\W*(?:q ?\d{1,2}\W*)?[a-z]+(?:er|est)(?: [a-z]+){0,2}: [^?]{3,60}(?:\bor\b|\/|,)/i;
/** "(1 mark)", "(see page 4)", "(3 choices)": no answer. */
const EARNS =
  /\b(?:marks?|points?|pts?|page|see|hint|choices?|options?|slide|card|minutes?|each|p\.|or)\b|\//i;

/** "Q. 14 Fr to mm. A. 4.7.", "Q 14 Fr in mm / A 4.7 mm": both on one line. */
const answerA = (text: string): RegExpExecArray | null =>
  /^\W{0,3}Q(?:[.:)]|\s)/.test(text) ? ANSWER_A.exec(text) : null;
const ANSWER_A = /\s*(?:(?<=[.?!;)]\s)A[.:)]|[/|—–]\s*A[.:)]?)\s+(?=\S)/;

/** "Widest (14 G, 16 G, 20 G) → 14 G", "Smallest bore: 14 G / 16 G / 20 G, answer: 20 G": all on one line. */
function tailed(read: Read): Pair[] {
  return linesOf(read).flatMap((line) => {
    if (line.end - line.start > LONGEST_LINE) return [];
    const text = read.passage.text.slice(line.start, line.end);
    const tail = tailOf(text) ?? bracketTail(text) ?? answerA(text);
    if (
      !tail ||
      tail.index === 0 ||
      finds(GIVEN, text) ||
      CROSSED_OUT.test(text) ||
      mended(text, tail.index, tail.index + tail[0].length)
    )
      return [];
    const cut = line.start + tail.index;
    const start = cut + tail[0].length;
    const end = line.start + text.trimEnd().replace(/[).\s]+$/, '').length;
    if (start >= end || told(read.passage.text, line.start, cut, end)) return [];
    return [
      {
        question: questionIn(read, { start: calledAt(read, line.start, cut), end: cut }),
        reply: piece(read, start, end),
        marked: true,
      },
    ];
  });
}

/** "Wires: 0.014, 0.018 inch. Thinnest please. Key: …": a short call for one of those named before it asks by itself. */
function calledAt(read: Read, from: number, cut: number): number {
  const last = read.sentences.findLast(({ start, end }) => start >= from && end <= cut + 1);
  const short = last && last.start > from && last.items.length <= SHORT;
  const calls =
    short &&
    last.items.some(
      ({ magnitude }) => magnitude?.degree === 'superlative' || magnitude?.degree === 'comparative',
    );
  return calls && !last.items.some(({ kind }) => kind === 'size') ? last.start : from;
}

/** A sentence that asks, or a line with a gap, and what is said next. */
function spoken(desk: Desk, read: Read, offered: ReadonlySet<number>): Pair[] {
  const lines = linesOf(read);
  const gaps = lines.flatMap((line, i) =>
    askedOn(read, line).length > 1 ? [] : gapped(desk, read, line, lines[i + 1]),
  );
  if (!MAY_ASK.test(read.passage.text)) return gaps;
  const spoken = read.passage.text.includes(':');
  const asked = read.sentences.flatMap((sentence, i) =>
    sentence.close === '?' || requests(sentence) || (spoken && settledInTurn(desk, read, i))
      ? answered(desk, read, sentence, i, offered)
      : [],
  );
  return [...gaps, ...asked];
}
/** What a question, a request or somebody's turn holds. Most texts hold none of it, and need not be read for it. */
const MAY_ASK = /[?:]|work|calculate|convert|name|give|tell|say|state|quote|find|please/i;

/** "Host: hub of a 22 G cannula." "Jo: green." "Host: correct.": what one says, another answers and the first confirms was a question. */
function settledInTurn({ reads }: Desk, read: Read, i: number): boolean {
  const asked = turnAt(reads, read, i, 0);
  const [said, after] = asked ? [1, 2].map((step) => turnAt(reads, read, i, step)) : [];
  if (!asked || !said || !after || asked.name !== after.name || asked.name === said.name) return false;
  const { items } = asked.sentence;
  return items.length <= LONGEST_REQUEST && said.sentence.items.length <= SHORT && confirmed(after.sentence);
}

/** The sentence so many turns on, and who says it. */
function turnAt(reads: readonly Read[], read: Read, i: number, step: number) {
  const own = read.sentences[i + step];
  const alone = i === read.sentences.length - 1 ? reads[read.passage.index + step] : undefined;
  const at = own ? read : alone;
  const sentence = own ?? alone?.sentences[0];
  const name =
    at && sentence && at.passage.kind !== 'heading' && !at.passage.cell
      ? SPEAKER.exec(at.passage.text.slice(sentence.start, sentence.start + 40))?.[1]
      : undefined;
  return sentence && name ? { sentence, name: name.toLowerCase() } : undefined;
}

/** "Name a monofilament.", "Work out the diameter of a 21 Fr drain.": asked without a question mark. */
const requests = ({ items, close }: Sentence): boolean => {
  const spoken = items.findIndex(({ word }) => word === ':');
  const opening = items
    .slice(spoken > 0 && spoken <= 2 ? spoken + 1 : 0, OPENING)
    .filter(({ kind }) => kind !== 'punctuation');
  return (
    close === '.' &&
    ((items.length <= LONGEST_REQUEST && finds(REQUEST, textOf(opening.slice(0, 2)))) || calls(items))
  );
};
/** "Thinnest please.": one of those just named is called for. */
const calls = (items: readonly Item[]): boolean =>
  items.length <= SHORT &&
  items.some(({ word }) => word === 'please') &&
  items.some(({ magnitude }) => magnitude?.degree === 'superlative' || magnitude?.degree === 'comparative');
const REQUEST =
  /^(?:work out|calculate|convert|(?:name|give|tell|say|state|quote) (?:me|an?|one|the|us)|find the)\b/;
const LONGEST_REQUEST = 18;
const OPENING = 6;

/** "Convert 7 mm to French.": the next item of a list sets a task of its own. */
const tasks = ({ items }: Sentence): boolean => items.slice(0, 4).some(({ word }) => finds(TASK, word));
const TASK =
  /^(?:convert|calculate|turn|change|translate|name|give|state|find|put|sort|order|rank|arrange|list|write|draw|circle|tick|which|what|how|complete|fill|match|explain|describe|choose|pick)$/;

/** "Q1. …?" and below it "Q2. …": the next question, and no answer. */
function countsOn(asked: Read, next: Read): boolean {
  const [a, b] = [asked, next].map(({ passage }) => labelNumber(passage.text.slice(0, 14)));
  return a !== undefined && b === a + 1 && /^\W*(?:q(?:uestion)?\s*|[a-z])?\d/i.test(next.passage.text);
}

/** "It's the ten-oh.", "The 16 G.": an answer and no sentence about it. */
function bare({ items }: Piece): boolean {
  const words = items.filter(({ kind }) => kind !== 'punctuation');
  const rest = words.slice(words.findIndex(({ word }) => !/^(?:it|it's|is|that|that's|the|an?)$/.test(word)));
  return rest.length <= 2 && !rest.some(({ word }) => /^(?:is|was|isn't)$/.test(word));
}

/** What is said next, past what only tells the learner what to do. */
function nextSaid({ reads }: Desk, read: Read, i: number): { at: Read; from: number } | undefined {
  const own = read.sentences.findIndex((sentence, j) => j > i && !fills(sentence));
  if (own >= 0) return { at: read, from: own };
  const { index } = read.passage;
  const next = reads[index + 1];
  const at = next && fillsWhole(next) ? reads[index + 2] : next;
  if (!at || !follows(read, at)) return undefined;
  const from = at.sentences.findIndex((sentence) => !fills(sentence));
  return from >= 0 ? { at, from } : undefined;
}

function answered(desk: Desk, read: Read, asked: Sentence, i: number, offered: ReadonlySet<number>): Pair[] {
  const { at, from } = nextSaid(desk, read, i) ?? { at: undefined, from: 0 };
  const first = at?.sentences[from];
  if (!at || !first || severalEntries(at)) return [];
  const short = first.items.length <= 2 && at.sentences[from + 1] !== undefined;
  const last = short ? at.sentences[from + 1]! : first;
  if ((at !== read && (tasks(last) || countsOn(read, at))) || tells(first)) return [];
  const reply = replyIn(at, { start: first.start, end: last.end });
  const past = from !== (at === read ? i + 1 : 0) || at.passage.index > read.passage.index + 1;
  if ((past || calls(asked.items)) && !reply.marked && !bare(reply.piece)) return [];
  const rest = at.sentences[from + (short ? 2 : 1)];
  const after = rest ?? desk.reads[at.passage.index + 1]?.sentences[0];
  const choice = !reply.marked || FIRST_CHOICE.test(at.passage.text.slice(first.start, last.end));
  // "Bea: no … Mo: nylon braided or mono … Mo: ?": several turns without a stop ask no one thing.
  if (SEVERAL_TURNS.test(read.passage.text.slice(asked.start, asked.end))) return [];
  if (/\b(?:column|heading|header)s?\b/.test(joined(asked.items))) return [];
  if (choice && (offered.has(read.passage.index) || offered.has(at.passage.index))) return [];
  if (
    last.close === '?' ||
    (at !== read && asksNext(read, at)) ||
    doubted(after) ||
    (after !== undefined && challenges(reply.piece.items, after)) ||
    ((learner(reply.speaker) || initialOf(desk, reply.speaker)) && !confirmed(after))
  )
    return [];
  return [
    {
      question: questionIn(read, { start: asked.start, end: asked.end }),
      reply: reply.piece,
      marked: reply.marked || reply.speaker !== undefined,
      ...(after && seconded(reply, after)
        ? { confirmed: placeIn(rest ? at : desk.reads[at.passage.index + 1]!, after) }
        : {}),
    },
  ];
}

/** "3. Your butterfly has an orange hub.", "4. True or false: a 16 Ch is wider.": the next of the numbered questions, whatever it says. */
const asksNext = (read: Read, at: Read): boolean =>
  at.passage.list?.ordered === true && at.passage.list.list === read.passage.list?.list;

const SEVERAL_TURNS = /\n[ \t]*\p{Lu}[\p{L}.]{0,14}:[^\n]*\n[ \t]*\p{Lu}[\p{L}.]{0,14}:/u;

/** "A. 6 mm" where choices are offered is the first of them, no answer. */
const FIRST_CHOICE = /^\W*a[.)]\s/i;

/** A paragraph after a paragraph or a heading, or the next item of a talk set as a list. */
function follows({ passage: a }: Read, { passage: b }: Read): boolean {
  if (!(b.kind === 'paragraph' || b.kind === 'caption') || a.kind === 'cell') return false;
  return b.list === undefined || b.list.list === a.list?.list || b.list.parent === a.index;
}

const DOUBT =
  /\b(?:look again|try again|no points?|(?:next|other) team|think again|not quite|other way|sure|hmm+|careful|close|nearly|almost|wait|hang on|really|caught|have another|actually|not|most people|everybody|everyone|what (?:they|people|many|most))\b/;

export const doubted = (after: Sentence | undefined): boolean =>
  after !== undefined &&
  (rejects(after) ||
    // "That would be lighter.": the answer is weighed, and not taken.
    (after.items.length <= 9 && /\b(?:that|it|this) (?:would|'d) be\b/.test(joined(after.items, 0, 6))) ||
    (after.items.length <= 12 && finds(DOUBT, joined(after.items))));

/** Another speaker says that it is right, and no more. */
const seconded = (reply: Reply, after: Sentence): boolean =>
  reply.speaker !== undefined &&
  after.items[1]?.word === ':' &&
  after.items.length <= SHORT &&
  confirmed(after);
const SHORT = 7;
const placeIn = ({ passage }: Read, { start, end }: Sentence): Span => sourceSpan(passage, { start, end });

const learner = (speaker = ''): boolean =>
  speaker
    .toLowerCase()
    .split(/\s+/)
    .some((word) => REPORTED_SPEAKERS.has(word));

/** "Examiner (E), candidate (C)": the letter under which the learner speaks. */
const initialOf = ({ note }: Desk, speaker = ''): boolean =>
  /^\p{Lu}{1,2}$/u.test(speaker) && initialsOf(note).has(speaker);
/** Asked once a reply, so kept. */
const initialsOf = remembered(
  ({ text }: Note): ReadonlySet<string> =>
    new Set(matchesOf(text.slice(0, 1000), LEARNS).map((match) => match[1]!)),
);
const LEARNS =
  /\b(?:candidates?|students?|learners?|trainees?|residents?|registrars?|pupils?|interns?|novices?)\s?(?:\(|=\s?|:\s?)(\p{Lu}{1,2})(?!\p{L})/giu;

const CONFIRMED =
  /\b(?:right|correct|yes|exactly|good|well done|spot on|that's it|that is it|perfect|indeed|excellent|bravo|precisely|agreed|lovely)\b/;

const confirmed = (after: Sentence | undefined): boolean =>
  after !== undefined &&
  after.items.length <= 12 &&
  finds(CONFIRMED, after.items.map((item) => item.word).join(' '));
