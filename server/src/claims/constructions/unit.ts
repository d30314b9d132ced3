/** What one step of a scale is: "one French is a third of a millimetre", "three French make a millimetre", "an inch is 25.4 mm". */
import { firstMatch } from '../../notes/patterns.ts';
import type { FormulaClaim } from '../model.ts';
import { itemAt, joined } from '../text/joined.ts';
import type { Construction } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

const NUMBER =
  '(?:a third|one third|one-third|1/3|a tenth|one tenth|(?:a|one) (?:hundredth|thousandth)|(?:a|one) quarter|(?:a|one) fifth|(?:a|one) half|half|[0-9]+(?:\\.[0-9]+)?|an?|one|two|three|four|five|six|ten)';
const IS = '(?:is|are|equals|equal|makes?|=|means|measures|comes? to|represents|corresponds to)';
const MM = '(?:mm|millimet(?:re|er)s?)';
const FR = '(?:french|fr|charri[eè]re)';
const ABOUT = '(?: about| roughly| exactly| just| around)?';

interface Shape {
  readonly pattern: RegExp;
  /** Value said, in the unit of `truth`. */
  readonly value: (match: RegExpExecArray) => number | undefined;
  readonly truth: number;
  readonly right: string;
  readonly wrong: string;
  readonly system: FormulaClaim['system'];
}

const WORDS: ReadonlyMap<string, number> = new Map([
  ['a third', 1 / 3],
  ['one third', 1 / 3],
  ['1/3', 1 / 3],
  ['a tenth', 0.1],
  ['one tenth', 0.1],
  ['a quarter', 0.25],
  ['one quarter', 0.25],
  ['a fifth', 0.2],
  ['one fifth', 0.2],
  ['half', 0.5],
  ['one half', 0.5],
  ['a half', 0.5],
  ['a', 1],
  ['an', 1],
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['six', 6],
  ['ten', 10],
  ['a thousandth', 0.001],
  ['one thousandth', 0.001],
  ['a hundredth', 0.01],
  ['one hundredth', 0.01],
]);
const numberOf = (text: string | undefined): number | undefined => {
  if (text === undefined) return undefined;
  const value = WORDS.get(text) ?? Number(text);
  return Number.isNaN(value) ? undefined : value;
};
const ratio = (a: string | undefined, b: string | undefined): number | undefined => {
  const [x, y] = [numberOf(a), numberOf(b)];
  return x === undefined || y === undefined || y === 0 ? undefined : x / y;
};

const FRENCH = { truth: 1 / 3, right: 'french-step', wrong: 'french-step-other', system: 'french' } as const;
/** Not "an inch and a half". */
const WHOLE = '(?! (?:and|plus|less|minus) (?:an?|one|half|three|[0-9]))';
const INCH = { truth: 25.4, right: 'inch-is-25.4', wrong: 'inch-is-other', system: 'inch' } as const;

const THOU = { truth: 0.0254, right: 'thou-of-inch', wrong: 'thou-of-other', system: 'wire-inch' } as const;

/** No part of a word or of a longer number: "twenty-one French". */
const START = '(?<![\\w.-])';

/** One unit on the left, so that a size such as "12 Fr is 4 mm" is left to equivalence. */
const SHAPES: readonly Shape[] = [
  {
    ...FRENCH,
    pattern: new RegExp(
      `${START}(?:(?:one|each|every|a single|1|the) ${FR}(?: (?:unit|size|step|gauge))?|an? ${FR} (?:unit|step)) ${IS}${ABOUT} (${NUMBER})(?: (?:of )?an?)? ${MM}\\b(?! (?:round|around|in (?:girth|circumference)|of (?:girth|circumference)))`,
    ),
    value: (match) => numberOf(match[1]),
  },
  {
    ...FRENCH,
    pattern: new RegExp(
      `${START}(?:(${NUMBER}) )${MM} ${IS}${ABOUT} (${NUMBER}) ${FR}(?: (?:units?|sizes?|steps?))?(?![a-z])`,
    ),
    value: (match) =>
      match[1] === 'a' || match[1] === 'one' || match[2] === 'one' || match[1] === '1' || match[2] === '1'
        ? ratio(match[1], match[2])
        : undefined,
  },
  {
    ...FRENCH,
    pattern: new RegExp(
      `${START}(${NUMBER}) ${FR}(?: (?:units?|sizes?|steps?))? ${IS}${ABOUT} (?:an?|one|1|to (?:an?|one)) ${MM}\\b`,
    ),
    value: (match) => ratio('one', match[1]),
  },
  {
    ...FRENCH,
    pattern: new RegExp(
      `${START}(?:an?|one|1) ${FR} (?:is|equals|means) (?:the same as|as much as|simply|just|nothing but) (an?|one|1) ${MM}\\b`,
    ),
    value: (match) => numberOf(match[1]),
  },
  {
    // "four French to a millimetre", "there are ten French in a millimetre"
    ...FRENCH,
    pattern: new RegExp(
      `${START}(${NUMBER}) ${FR}(?: (?:units?|sizes?|steps?))? (?:to|in|per) (?:an?|the|one|each|every|1) ${MM}\\b`,
    ),
    value: (match) => ratio('one', match[1]),
  },
  {
    ...FRENCH,
    pattern: new RegExp(`${START}(${NUMBER}) ${FR} (?:to|in|per) (?:an?|the|one|each|every) inch\\b`),
    value: (match) => {
      const count = ratio('one', match[1]);
      return count === undefined ? undefined : 25.4 * count;
    },
  },
  {
    // "every two French you go up, the tube gets a millimetre thicker", "going up three French adds three millimetres"
    ...FRENCH,
    pattern: new RegExp(
      `\\b(?:every|each|(?:go|going|goes|went|step|stepping) up|add|adding) (?:by )?(${NUMBER}) ${FR}\\b[^;.]{0,45}? (${NUMBER})(?: (?:of an?|full|whole))? ${MM} (?:wider|thicker|fatter|larger|bigger|more|(?:to|on) the|in (?:diameter|width)|of (?:diameter|width))`,
    ),
    value: (match) => ratio(match[2], match[1]),
  },
  {
    // "0.33 mm per French", "half a millimetre for every French"; "7 mm to French" is a sum to be done
    ...FRENCH,
    pattern: new RegExp(
      `\\b(${NUMBER})(?: (?:of )?an?)? ${MM} (?:(?:per|for) (?:an?|the|one|each|every|1)? ?|to (?:an?|the|one|each|every|1) )${FR}(?: (?:unit|size|step))?(?![a-z])`,
    ),
    value: (match) => numberOf(match[1]),
  },
  {
    // "French goes up in steps of half a millimetre"
    ...FRENCH,
    pattern: new RegExp(
      `\\b${FR}(?: (?:scale|size|sizes|number|numbers|gauge))? (?:goes?|climbs?|rises?|runs?|moves?|steps?|counts?|is graded|is counted)(?: up| on)? (?:in|by)(?: (?:steps|jumps|units) of)? (${NUMBER})(?: (?:of )?an?)?[ -]${MM}\\b`,
    ),
    value: (match) => numberOf(match[1]),
  },
  {
    ...FRENCH,
    truth: Math.PI / 3,
    right: 'french-around',
    wrong: 'french-around-other',
    pattern: new RegExp(
      `${START}(?:one|1) ${FR}(?: \\w+)? has a circumference of${ABOUT} (${NUMBER})(?: (?:of )?an?)? ${MM}\\b`,
    ),
    value: (match) => numberOf(match[1]?.replace('-', ' ')),
  },
  {
    ...INCH,
    pattern: new RegExp(
      `(?<!(?:half|quarter|of|quarters|eighths) )\\b(?:an|one|1) inch ${IS}${ABOUT} (${NUMBER}) ${MM}\\b`,
    ),
    value: (match) => numberOf(match[1]),
  },
  {
    ...INCH,
    pattern: new RegExp(
      `${START}(${NUMBER}) ${MM} (?:make|makes|is|are|equal|=)${ABOUT} (?:an|one|1) inch\\b${WHOLE}`,
    ),
    value: (match) => numberOf(match[1]),
  },
  {
    // "there are 2.54 millimetres in an inch", "25.4 mm to the inch"
    ...INCH,
    pattern: new RegExp(
      `${START}(${NUMBER}) ${MM} (?:to|in|per|for) (?:an|the|one|each|every|1) inch\\b${WHOLE}`,
    ),
    value: (match) => numberOf(match[1]),
  },
  {
    ...THOU,
    pattern: new RegExp(`\\b(?:a|one|each|1) thou ${IS}${ABOUT} (${NUMBER}) of an? ${MM}\\b`),
    value: (match) => numberOf(match[1]),
  },
  {
    ...THOU,
    pattern: new RegExp(`\\b(?:a|one|each|1) thou ${IS}${ABOUT} (${NUMBER}) of an inch\\b`),
    value: (match) => (numberOf(match[1]) ?? 0) * 25.4,
  },
  {
    ...INCH,
    pattern:
      /\binch(?:es)? (?:in)?to (?:mm|millimet(?:re|er)s?),? (?:(?:you|we|just|simply) )*(multiply|divide) (?:it |them )?by (25\.4|2\.54|25)\b/,
    value: (match) => (match[1] === 'divide' ? 1 / Number(match[2]) : Number(match[2])),
  },
  {
    // "multiply the inches by 2.54 and you have millimetres"
    ...INCH,
    pattern:
      /\b(multiply|divide) (?:the |your )?inch(?:es)? by (25\.4|2\.54|25) (?:to (?:get|have)|for|into|and (?:you|we) (?:have|get)) (?:the )?(?:mm|millimet(?:re|er)s?)\b/,
    value: (match) => (match[1] === 'divide' ? 1 / Number(match[2]) : Number(match[2])),
  },
];

/** Every shape names one of them; a short look spares the long patterns. */
const UNITS = /\b(?:fr|charri|inch|thou\b)/;

/** And what it is said to be. */
const MEASURES = /\b(?:mm|millimet)|inch/;

export const unit: Construction = {
  id: 'unit',
  needs: () => [{ like: UNITS, also: MEASURES }],
  leaning: true,
  read(scene) {
    if (!scene.items.some((item) => item.kind === 'size' || item.system || /^(?:inch|thou$)/.test(item.word)))
      return [];
    const text = joined(scene.items);
    if (text.length > 400 || !UNITS.test(text)) return [];
    return SHAPES.flatMap((shape) => {
      const match = firstMatch(shape.pattern, text);
      const value = match ? shape.value(match) : undefined;
      if (!match || value === undefined) return [];
      const at = itemAt(scene.items, match.index);
      const last = itemAt(scene.items, match.index + match[0].length - 1);
      // "about 0.3", "25 mm" and "0.33" round; more than a tenth off is another rule.
      const right = Math.abs(value - shape.truth) / shape.truth < 0.11;
      const claim = ruleClaim(scene, 'unit', shape.system, right ? shape.right : shape.wrong, at, last);
      return [{ claim, at: last, from: at, to: last }];
    }).slice(0, 1);
  },
};
