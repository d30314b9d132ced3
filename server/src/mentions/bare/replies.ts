/** Answers: "A3 24.", "7: 3", "c) 20", "Ans: 10.": the question asked says what is answered in. */
import { filledLines, matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import { labelsOf, type Scene, type Surroundings, sentenceIndex } from '../scene.ts';
import type { Place } from '../sense/place.ts';
import { systemOf } from '../sense/systems.ts';
import { type Board, holds, mentionsIn, systemsOf } from './board.ts';
import type { Rung } from './question.ts';
import { suits } from './suits.ts';
import type { Bare } from './tokens.ts';

/** "9 Fr in millimeters? a. 3": the question names the unit of its options. */
export const asked: Rung = ({ place, bare, board, frame }) => {
  if (
    AMONG_OTHERS.has(frame) &&
    !(bare.run.values.length > 1 && place.text.includes('?') && OFFERED.test(place.before))
  )
    return [];
  const { text, list } = place.scene.passage;
  const over = board.around.scenes[list?.leadIn ?? list?.parent ?? -1]?.passage.text.slice(-160) ?? '';
  const before = `${over} ${text.slice(Math.max(0, bare.span.start - 160), bare.span.start)}`;
  const first = matchesOf(before, FIRST_OPTION).at(-1)?.index ?? before.length;
  const question = before.slice(0, first).trimEnd().split('\n').at(-1)!.slice(-100);
  return ASKED.filter(([, pattern]) => pattern.test(question))
    .map(([system]) => system)
    .slice(0, 1);
};

/** "6 Fr in millimetres: 2, 6 or 18?": the answers offered, with no letters. */
const OFFERED = /\bin (?:millimet(?:re|er)s|mm|French)\??[:?]\s(?:[0-9.,\s]|or\s)*$/i;
const AMONG_OTHERS: ReadonlySet<string> = new Set(['run', 'colon', 'loose', 'handed']);

/** Where the options begin: after a question mark or colon, or at "a)". */
const FIRST_OPTION = /(?<=[?:]\s{1,2}\(?)[A1i](?:[).:]|\s)|(?<=\s\(?)a[).:]\s/gi;

const ASKED: readonly (readonly [System, RegExp])[] = [
  ['millimetre', /\b(?:in|is|how many) (?:millimet(?:er|re)s|mm)\b/i],
  ['ep-metric', /\bmetric\b/i],
  ['french', /\b(?:[Ii]n|[Ww]hich|[Ww]hat) French\b/],
  ['needle-gauge', /\b(?:in|which|what) gauge\b|\bthe gauge (?:with|of|for) (?:the|an?)\b/i],
];

/** A line that asks, by its place in the note. */
interface Asked extends Span {
  readonly scene: Scene;
}

/** "4", "b1", "vi": how a question or its answer is counted. */
const COUNTED =
  /^\W{0,4}(?:(?:q(?:uestion)?|a(?:ns(?:wer)?)?|gap|no\.?|item|card|part)\s?)?\(?([a-z]?[0-9]{1,2}|[a-h]|[ivx]{1,4})(?=[).:\]\s=→–—-])/i;
/** The count of an answer, and nothing after it. */
const COUNT_ALONE =
  /^\W{0,4}(?:(?:key|answers?)\W{1,3})?(?:(?:q(?:uestion)?|ans(?:wer)?|gap|no\.?|item|card)\s?)?\(?([a-z]?[0-9]{1,2}|[a-h]|[ivx]{1,4})[).:\]]{0,2}\W{0,4}(?:(?:is|was)\s)?(?:the\s|an?\s)?\W{0,3}$/i;
/** "Ans:", "**A**": the answer to the question just asked. */
const ANSWERED = /^\W{0,4}(?:A|ans(?:wer)?|back|reply)\b\W{0,4}(?:(?:is|was)\s)?(?:the\s|an?\s)?\W{0,3}$/i;
/** A line that asks for something. */
const ASKS =
  /\?|_{2,}|…|\.{3}|\b(?:which|what|how (?:many|much|wide|thick)|name|give|state|gauge of|size of)\b/i;

/** The shortest line that can be a question. */
const SHORTEST = 12;
/** The longest that is looked at. */
const LONGEST = 240;

const indexes = new WeakMap<Surroundings, ReadonlyMap<string, readonly Asked[]>>();

/** Every counted question of the note. */
function questionsOf(around: Surroundings): ReadonlyMap<string, readonly Asked[]> {
  const known = indexes.get(around);
  if (known) return known;
  const found = new Map<string, Asked[]>();
  for (const scene of around.scenes)
    for (const line of scene.passage.cell ? [] : filledLines(scene.passage.text)) {
      const text = scene.passage.text.slice(line.start, Math.min(line.end, line.start + LONGEST));
      if (text.length < SHORTEST || !ASKS.test(text)) continue;
      for (const label of labelsAt(around, scene, line.start, text)) {
        const all = found.get(label);
        if (all) all.push({ scene, ...line });
        else found.set(label, [{ scene, ...line }]);
      }
    }
  indexes.set(around, found);
  return found;
}

function labelsAt(around: Surroundings, scene: Scene, start: number, text: string): readonly string[] {
  const written = COUNTED.exec(text)?.[1]?.toLowerCase();
  const marker = start === 0 ? markerOf(around, scene) : undefined;
  return [written, marker].filter((label) => label !== undefined);
}

/** The number that an ordered list writes before the item. */
function markerOf({ note }: Surroundings, { passage }: Scene): string | undefined {
  if (!passage.list?.ordered) return undefined;
  const start = passage.map.sources[0] ?? 0;
  return /(\d{1,3})[.)]\s*\**$/.exec(note.text.slice(Math.max(0, start - 14), start))?.[1];
}

/** An answer to a counted question, or to the one just asked: what the question names with this value, or asks for. */
export const reply: Rung = ({ place, bare, board }) => {
  const asked = questionFor(place, bare);
  return asked ? systemAsked(asked, bare, board) : [];
};

/** What ends an answer. */
const ENDS = /^["”’*_]{0,2}(?:$|[.,;:)|\n]|\s[([—–|-])/;

/** The answer to "how many …?" about something else, or one of the answers offered. */
export function answersElse(place: Place, bare: Bare, frame?: string): boolean {
  const asked = questionFor(place, bare);
  const line = asked
    ? asked.scene.passage.text.slice(asked.start, asked.end)
    : frame === 'option'
      ? offeredUnder(place, bare)
      : '';
  return asksElse(line);
}

/** A question about something that is no size. */
export const asksElse = (line: string): boolean =>
  !SIZE_ASKED.test(line) && (HOW_MANY.test(line) || ELSE_ASKED.test(line));
const SIZE_ASKED =
  /\b(?:which|what)\s(?:[a-z-]+\s){0,2}(?:sizes?|gauges?|French|needles?|cannulas?|catheters?|sutures?|tubes?|drains?|sheaths?)\b/i;
const HOW_MANY =
  /\b(?:what|which) (?:time|day|date|age|year|week|month|page|price|dose|volume|room|bed|angle|speed|rate|score|grade|percentage|number of)\b|(?:^|\bQ\W+|[.:?]\s)\W*when\s(?:is|are|do|does|did|should|must|can|was|were|may|to|will)\b|\bhow (?:old|long|often|far|deep)\b|\bhow many (?!(?:\w+ )?(?:mm|millimet|French|Fr\b|Ch\b|thousandths|inches))/i;
/** "Number of lumens in …?", "what is the usual volume of the balloon?", "Days before it comes out?" */
const ELSE_ASKED =
  /(?:^|\b[Qq](?:uestion)?\W{1,5}|[.?:]\s|\b(?:what|which)(?:['’]s|\sis|\sare|\swas)\s)(?:the\s)?(?:(?:usual|typical|normal|recommended|maximum|minimum|max|min|total|balloon|correct|ideal|average)\s){0,2}(?:number of (?!noughts|zero|French)|volume|days|weeks|hours|minutes|attempts|angle|depth|(?:[a-z]+(?:['’]s)?\s)?exponent|dose|rate|pressure|age)\b[^?]*\?\W*$/i;

/** The question over lettered answers: before the first of them, or in the passage before. */
function offeredUnder({ around, scene }: Place, { span }: Bare): string {
  const { text, list, index } = scene.passage;
  const own = text.slice(Math.max(0, span.start - LONGEST), span.start);
  const asked = own.lastIndexOf('?');
  if (asked >= 0) return lastLine(own.slice(0, asked + 1));
  const over = around.scenes[list?.leadIn ?? list?.parent ?? index - 1]?.passage.text ?? '';
  return QUESTION_ENDS.test(over) ? lastLine(over) : '';
}
const lastLine = (text: string): string => text.trimEnd().slice(-LONGEST).split('\n').at(-1)!;

/** The stretch of the line from the last stop to the number. */
function leadOf({ scene }: Place, { span }: Bare): string {
  const { text } = scene.passage;
  const near = text.slice(Math.max(0, span.start - 24), span.start);
  return near
    .split(
      /\n|[;|‖/]\s?|(?<![0-9A-Za-z(][0-9A-Za-z]?)[.,]\s|(?<=[a-z)0-9]{2})[.,]\s|\?\s(?=A(?:ns(?:wer)?)?:)/,
    )
    .at(-1)!;
}

/** The question that a number is the answer to, where it is the end of one. */
function questionFor(place: Place, bare: Bare): Asked | undefined {
  const { around, scene } = place;
  if (!ENDS.test(scene.passage.text.slice(bare.span.end, bare.span.end + 4))) return undefined;
  const lead = leadOf(place, bare);
  const label = COUNT_ALONE.exec(lead)?.[1]?.toLowerCase() ?? unlabelled(place, bare, lead);
  if (label !== undefined) {
    const all = questionsOf(around);
    const before = (one: string) =>
      all
        .get(one)
        ?.findLast(
          (q) =>
            q.scene.passage.index < scene.passage.index || (q.scene === scene && q.end < bare.span.start),
        );
    const counted = before(label) ?? (/^a[0-9]/.test(label) ? before(label.slice(1)) : undefined);
    if (counted || label !== 'a') return counted;
  }
  return ANSWERED.test(lead) || BARE_COLON.test(lead) || said(place, lead)
    ? justAsked(place, bare)
    : undefined;
}

/** A line that begins with its colon, as definitions are written. */
const BARE_COLON = /^:\s{1,3}$/;

/** "Ana says: 5.", "**K:** 4.": somebody answers the question that ends right before. */
function said({ around, scene, span }: Place, lead: string): boolean {
  if (/^\s?[:)]/.test(scene.passage.text.slice(span.end, span.end + 2))) return false;
  if (SPEAKS.test(lead)) {
    const sentence = scene.sentences[sentenceIndex(scene, span.start) - 1];
    return (
      sentence !== undefined && QUESTION_ENDS.test(scene.passage.text.slice(sentence.start, sentence.end))
    );
  }
  const last = around.scenes[scene.passage.index - 1]?.passage.text;
  return SPEAKER.test(lead) && last !== undefined && QUESTION_ENDS.test(last.slice(-12));
}
const SPEAKS =
  /(?:^\W{0,4}|[?"”*]\s)[A-Z][A-Za-z]{0,14}(?:\s[a-z]{1,12})?\s(?:say|said|answer|writ|wrot|put|offer|guess|tri|shout|repl|gave|giv|call)[a-z]{0,3}[:,]?\s["“]?(?:an?\s|the\s|about\s)?$/;
const SPEAKER = /^\W{0,4}[A-Z][A-Za-z]{0,11}:\W{0,3}(?:[Aa]n?\s|[Tt]he\s)?$/;
const QUESTION_ENDS = /\?["”’)*_\s]*$/;

/** The item of a counted list, the line above a bare colon, or the row of a table whose first cell counts it. */
function unlabelled({ around, scene }: Place, { span }: Bare, lead: string): string | undefined {
  if (scene.passage.cell) {
    const labels = labelsOf(around, scene.passage);
    const [row, head] = [labels.row?.passage.text ?? '', labels.header?.passage.text ?? ''];
    return span.start === 0 && row.length < 6 && ANSWERS.test(head)
      ? COUNT_ALONE.exec(row)?.[1]?.toLowerCase()
      : undefined;
  }
  const above = BARE_COLON.test(lead) ? LABEL_ABOVE.exec(scene.passage.text.slice(0, span.start)) : null;
  if (above) return above[1]!.toLowerCase();
  return span.start < 6 && /^\W*(?:the\s|an?\s)?$/i.test(lead) ? markerOf(around, scene) : undefined;
}

const LABEL_ABOVE = /(?:^|\n|\W)(?:q(?:uestion)?\s?)?([a-z]?[0-9]{1,2}|[a-h])\W{0,2}\n:\s{1,3}$/i;
const ANSWERS = /\b(?:answers?|key|reply|accept\w*|gaps?|response)\b/i;

/** The question before it in the passage, else the last line of the passage before. */
function justAsked({ around, scene }: Place, { span }: Bare): Asked | undefined {
  const own = lastAsking(scene, span.start);
  const last = around.scenes[scene.passage.index - 1];
  return own ?? (last && lastAsking(last, last.passage.text.length));
}

function lastAsking(scene: Scene, before: number): Asked | undefined {
  const sentence = scene.sentences.findLast(
    ({ start, end }) =>
      start < before && end <= before + 1 && /\?|_{2}/.test(scene.passage.text.slice(start, end)),
  );
  return sentence && { scene, start: Math.max(sentence.start, sentence.end - LONGEST), end: sentence.end };
}

/** The unit behind a gap; a size of the question with this very value; else the unit it asks for, else the one kind of thing it names. */
function systemAsked({ scene, start, end }: Asked, bare: Bare, board: Board): readonly System[] {
  const text = scene.passage.text.slice(start, Math.min(end, start + LONGEST));
  const unit = unitAsked(text);
  if (unit && text.includes('__')) return [unit];
  const own = mentionsIn(board.settled[scene.passage.index]!, { start, end });
  const same = systemsOf(own.filter((one) => holds(one, bare.value)));
  if (same.length > 0) return same.length === 1 ? same : [];
  if (unit) return [unit];
  if (own.some((one) => one.sizes[0]?.system === 'millimetre' && one.sizes[0].value === bare.value))
    return ['millimetre'];
  const things = new Set(
    scene.devices
      .filter((hit) => hit.start >= start && hit.end <= end && hit.means !== 'catheter')
      .flatMap((hit) => systemOf(hit.means) ?? []),
  );
  const [only] = things;
  return things.size === 1 && only && suits(only, bare) && /\bsizes?\b|\bwhat\b|\bwhich\b/i.test(text)
    ? [only]
    : [];
}

/** The system that a question asks for: "which French is 5 mm?" */
export const unitAsked = (question: string): System | undefined =>
  FOR_UNIT.find(([, pattern]) => pattern.test(question))?.[0];

const FOR_UNIT: readonly (readonly [System, RegExp])[] = [
  [
    'french',
    /\b(?:[Ii]n|[Ww]hich|[Ww]hat|[Hh]ow many)\s(?:French|Fr|Ch)\b|[_…?=]\s?\??\s?(?:Fr|French|Ch)\b/,
  ],
  [
    'millimetre',
    /\b(?:in|how many)\s(?:millimet(?:er|re)s?|mm)\b|[_…?=]\s?\??\s?(?:mm|millimet(?:er|re)s?)\b/i,
  ],
  [
    'needle-gauge',
    /\b(?:in|which|what)\s(?:size\s)?gau?ge\b|\bgau?ge\s(?:of|is|has|for|does)\b|[_…?]\s?(?:G|gauge)\b/i,
  ],
  ['ep-metric', /\bmetric\b/i],
];
