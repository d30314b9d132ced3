/**
 * A length in inches and in millimetres, said to be one, though nothing near says of what: "3¼ in comes to about 83 mm",
 * "25 mm (1 in)". The two stand side by side, with words of conversion and nothing else between them; a length with a
 * device beside it is a size and is left to `equivalence`.
 */
import type { Mention } from '../../mentions/model.ts';
import { INCHES, readNumber } from '../../mentions/words/numbers.ts';
import { sourceSpan } from '../../notes/index.ts';
import { matchesOf } from '../../notes/matches.ts';
import type { Operand } from '../model.ts';
import { type Scene, sentenceSpan } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

export const inchLengths: Construction = {
  id: 'inch-lengths',
  leaning: true,
  needs: () => [{ like: UNIT_WORD, also: METRIC_WORD }],
  read(scene) {
    const { passage, sentence } = scene;
    if (sentence.close === '?') return [];
    const text = passage.text.slice(sentence.start, sentence.end);
    return [INCH_FIRST, METRIC_FIRST].flatMap((pattern) =>
      matchesOf(text, pattern).flatMap((match) => {
        const read = reading(scene, match, pattern === INCH_FIRST);
        return read ? [read] : [];
      }),
    );
  },
};

/** "in" stands in nearly every sentence; with a figure before it, it may be the unit. */
const UNIT_WORD = /^(?:in|(?:[0-9./½¼¾⅛⅜⅝⅞]{1,6}-)?(?:inch|inches)|["″”]|[0-9½¼¾⅛⅜⅝⅞/.]{1,6}["″”])$/;
const METRIC_WORD =
  /^(?:[0-9]{1,3}(?:[.,][0-9]{1,2})?\s?)?(?:mm|cm|millimet(?:re|er)s?|centimet(?:re|er)s?)$/;

const ABOUT =
  '(?:about|around|roughly|approximately|some|nearly|almost|exactly|just|just under|just over|a little (?:over|under)|close to|near enough|more or less|~|≈)';
/** After a bare "in", which is a preposition nearly everywhere, only what converts. */
const CONVERTS =
  '(?:=|≈|equals|is equal to|(?:comes?|came) (?:out )?(?:to|at|as)|works? out (?:at|as|to)|makes|amounts? to|converts? (?:in)?to|translates? (?:in)?to|corresponds? to|is the same (?:length )?as|, (?:that is|i\\.e\\.|or),?)';
const TIES = `(?:\\s*(?:long )?(?:(?:is|are)(?: (?:therefore|thus|really|of course|indeed))?|${CONVERTS})\\s*(?:in (?:metric|mm|inches|millimetres|centimetres) )?(?:${ABOUT} )?)`;
const STRICT = `(?:\\s*${CONVERTS}\\s*(?:${ABOUT} )?)`;
const OPENED = `(?:\\s*\\(\\s*(?:=|≈|~|i\\.e\\.,? |${ABOUT} )?\\s*)`;
const METRIC =
  '(?<metric>[0-9]{1,3}(?:[.,][0-9]{1,2})?)\\s?(?<unit>mm|cm|millimet(?:re|er)s?|centimet(?:re|er)s?)(?![\\w²³])';
const FRACTION = '[½¼¾⅛⅜⅝⅞/.]';
/** A word for inches, a fraction before "in", or a figure with a mark. */
const INCH = `(?<inch>${INCHES})(?:[\\s-]?(?:inch|inches)(?!\\w)|\\s?["″](?!\\w)|(?<=${FRACTION}[0-9]{0,3})\\s?in(?![\\w-]))`;
const BARE_INCH = '(?<bare>[0-9]{1,2})\\s?in(?![\\w-])';
/** No part of a longer number, a range or a product. */
const START =
  '(?<![\\w.,/½¼¾⅛⅜⅝⅞–×-]|[–×-] |[0-9½¼¾] (?:to|or|and) |\\b(?:by|x|no\\.?|number|room|bay|step|figure|fig\\.?) )';
const END =
  '(?!\\s*(?:[-–x×/]|to|or|by|and)\\s*[0-9½¼¾])(?!\\s(?:longer|shorter|more|less|wider|thicker|narrower|thinner|deeper|apart|away|from|wide|thick|across|deep|in (?:diameter|width)|too|per|every|each|of|square|further|on|above|below|is|are)\\b)';

const INCH_FIRST = new RegExp(
  `${START}(?:${INCH}(?:${TIES}|${OPENED})|${BARE_INCH}(?:${STRICT}|${OPENED}(?=[^()]{0,24}(?:mm|cm|met(?:re|er)s?)\\s*\\))))${METRIC}${END}`,
  'giu',
);
const METRIC_FIRST = new RegExp(
  `${START}${METRIC}(?:(?:${TIES}|${OPENED})${INCH}|(?:${TIES}|${OPENED})${BARE_INCH}(?=\\s*(?:[.;,:)]|$)))${END}`,
  'giu',
);

function reading(scene: Scene, match: RegExpMatchArray, inchFirst: boolean): Reading | undefined {
  const { groups: { inch, bare, metric, unit } = {} } = match;
  const written = inch ?? bare ?? '';
  const inches = readNumber(written);
  const metres = readNumber(metric ?? '');
  if (!inches || !metres || inches.value < SHORTEST || metres.value === 0) return undefined;
  const start = scene.sentence.start + match.index!;
  const end = start + match[0].length;
  // What one inch is, and a size in inches, are read elsewhere.
  if (UNIT_ITSELF.test(match[0])) return undefined;
  if (scene.items.some(({ mention, start: at }) => at >= start && at < end && isInch(mention)))
    return undefined;
  const [first, last] = inchFirst ? [written, metric!] : [metric!, written];
  const one = side(
    scene,
    start,
    first,
    inchFirst ? '' : unit!,
    inchFirst ? inches : scaled(metres, unit!),
    inchFirst,
  );
  const at = start + match[0].lastIndexOf(last);
  const other = side(
    scene,
    at,
    last,
    inchFirst ? unit! : '',
    inchFirst ? scaled(metres, unit!) : inches,
    !inchFirst,
  );
  const item = scene.items.findIndex((each) => each.end > at);
  const from = scene.items.findIndex((each) => each.end > start);
  if (item < 0 || from < 0) return undefined;
  return {
    claim: {
      kind: 'equivalence',
      construction: 'inch-lengths',
      span: sentenceSpan(scene),
      focus: other.span,
      left: one,
      right: other,
      approximate: HEDGED.test(match[0]),
      axis: 'length',
    },
    at: item,
    from,
    to: item,
  };
}
const HEDGED = new RegExp(`\\b${ABOUT.replace('|~|≈', '')}\\b|[~≈]`);

const UNIT_ITSELF = /^1[\s-]?inch\s*(?:is|=|equals|makes|comes? to)/i;

/** Inches: what is shorter is a width, with tables of its own. */
const SHORTEST = 0.25;
const isInch = (mention: Mention | undefined): boolean =>
  mention?.sizes[0]?.system === 'inch' || mention?.sizes[0]?.system === 'wire-inch';

interface Figure {
  readonly value: number;
  readonly decimals: number;
}
/** In mm; the decimals stay as written, and the text tells of the unit. */
const scaled = ({ value, decimals }: Figure, unit: string): Figure => ({
  value: /^c/i.test(unit) ? value * 10 : value,
  decimals,
});

function side(
  scene: Scene,
  start: number,
  written: string,
  unit: string,
  { value, decimals }: Figure,
  inch: boolean,
): Operand {
  const span = { start, end: start + written.length };
  const source = sourceSpan(scene.passage, span);
  const sizes = [{ system: inch ? ('inch' as const) : ('millimetre' as const), value }];
  const mention: Mention = {
    passage: -1,
    span,
    source,
    text: inch ? written : `${written} ${unit}`,
    kind: 'size',
    sizes,
    readings: [],
    notation: 'figure',
    decimals,
    evidence: [],
  };
  return { sizes, mentions: [mention], span: source };
}
