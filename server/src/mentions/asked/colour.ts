/** "Get me a green one": two colour codes share the word, and nothing says which thing is meant. */
import { matchesOf } from '../../notes/index.ts';
import { phrase } from '../../texts/index.ts';
import type { Reading } from '../model.ts';
import { reading } from '../reading.ts';
import { headingsOf, type Scene, type Surroundings, sentenceAround } from '../scene.ts';
import { factsOf } from '../sense/note-facts.ts';
import { READING } from '../texts/readings.ts';
import type { Question } from './model.ts';

/** Gauge of a colour on an IV cannula (ISO 10555-5) and on a hypodermic needle hub (ISO 6009). */
const CODES: Readonly<Record<string, readonly [cannula: number, needle: number]>> = {
  orange: [14, 25],
  grey: [16, 27],
  gray: [16, 27],
  white: [17, 16],
  green: [18, 21],
  pink: [20, 18],
  blue: [22, 23],
  yellow: [24, 20],
};
const COLOUR = `(?:${Object.keys(CODES).join('|')})`;
const COLOURED = new RegExp(COLOUR, 'i');
const ASKED =
  '(?:fetch|grab|pass|hand(?:s|ed)?(?: out| over with)?|get|give|bring|pull|open|leave|send|use[ds]?|want(?:s|ed)?|need(?:s|ed)?|order(?:ed)?|restock(?:ed)?|hold(?:s)? up|pick out|(?:ask(?:s|ed)?|call(?:s|ed)?|rang|phoned?)(?: \\w+){0,3} for|says?(?: only)?|for|drawer\\b[^.]{0,40}:)';
const QUANTITY = '(?:an?|the|two|three|four|another|some|a couple of|[0-9])';

/** A colour that stands for a thing: "a green", "the blue ones", "two blues and a green", "green, one each". */
const PATTERN = new RegExp(
  `\\b${ASKED}(?: (?:me|us|you|up|out|over|in))?\\s["“]?(?:${QUANTITY} (${COLOUR})(?:s|(?: ones?))?|(${COLOUR}),? (?:one|two) each|(${COLOUR})s,? x ?[0-9]{1,3})(?=["”]|[.,;:!?)]|$|\\s(?:from|in|for|and|or|to|please|instead|next|on|at|then|when|restocked)\\b)`,
  'gi',
);
/** Things that settle the code, or that are coloured in their own right. */
const NAMED =
  /\b(?:vaccin\w+|inject\w+|jabs?|needles?|cannula[es]?|ivs?|catheters?|hubs?|funnels?|foley|pens?|gowns?|gloves?|folders?|forms?|stickers?|labels?|tubes?|bottles?|bags?|badges?|lights?|cars?|team|group|zone|tags?|caps?|g|gauge)\b|[0-9]\s?G\b/i;

/** The words themselves are what is talked about: "why do we never say …". */
const SPOKEN_OF =
  /\b(?:why|not|never|avoid|don't|do not|(?:can|could|may|might) mean|means? (?:any|either|one of)|either|depends|ambiguous\w*|according to)\b/i;

export function colourQuestion(around: Surroundings, scene: Scene): Question | undefined {
  if (!factsOf(around).gauge) return undefined;
  const { text } = scene.passage;
  if (!COLOURED.test(text)) return undefined;
  for (const match of matchesOf(text, PATTERN)) {
    const colour = (match[1] ?? match[2] ?? match[3])!.toLowerCase();
    const at = match.index + match[0].toLowerCase().lastIndexOf(colour);
    const span = { start: at, end: at + colour.length };
    const sentence = sentenceAround(scene, span);
    const rest =
      text.slice(sentence.start, match.index) + text.slice(match.index + match[0].length, sentence.end);
    if (NAMED.test(rest) || SPOKEN_OF.test(rest) || oneCode(around, scene)) continue;
    return { span, readings: readingsOf(colour), rule: 'colour-without-thing' };
  }
  return undefined;
}

/** The heading deals in one kind of thing, and the passage in no other. */
function oneCode(around: Surroundings, scene: Scene): boolean {
  const [heading] = headingsOf(around, scene.passage);
  if (!heading || heading.kinds.has('needle') === heading.kinds.has('cannula')) return false;
  return !scene.kinds.has(heading.kinds.has('needle') ? 'cannula' : 'needle');
}

function readingsOf(colour: string): readonly Reading[] {
  const [cannula, needle] = CODES[colour]!;
  return [
    reading(phrase(READING.colouredCannula, { colour, value: cannula }), `${colour} ${cannula} G cannula`),
    reading(phrase(READING.colouredNeedle, { colour, value: needle }), `${colour} ${needle} G needle`),
  ];
}
