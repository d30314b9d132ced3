/** A unit said once for the figures behind it: "in mm, 12 Fr is 4 and 15 Fr 5", "in metric, 4-0 nylon is 1.5". */
import { matchesOf } from '../../notes/index.ts';
import type { System } from '../../sizes/model.ts';
import type { Mention } from '../model.ts';
import { headingsOf, sentenceIndex } from '../scene.ts';
import type { Place } from '../sense/place.ts';
import { mentionsIn } from './board.ts';
import type { Question, Rung } from './question.ts';

type Unit = 'millimetre' | 'ep-metric';

/** A unit that figures are said to be in, with no figure of its own; another unit said later takes its place. */
const SAID =
  /\b(?:in|to|into|as|are|of)\s(?:the\s)?(mm|millimet(?:re|er)s|metric|French|gauge|Fr|inches|cm|centimet(?:re|er)s|thousandths)(?![\w-]|\s[0-9])|[,(]\s?(mm)(?=\)|:|$|\n)|\b(mm|millimet(?:re|er)s?|metric)\s?:|\b(metric)\s(?:numbers?|figures?|sizes?)\b/gi;

/** How much of what stands over a line is looked at. */
const REACH = 160;

/** What was said before the figure: over the list or the part, in the sentence before, in its own. */
function toldBefore({ around, scene, sentence, before }: Place): string {
  const { list } = scene.passage;
  const over = around.scenes[list?.leadIn ?? list?.parent ?? -1] ?? headingsOf(around, scene.passage)[0];
  const last = scene.sentences[sentenceIndex(scene, sentence.start) - 1];
  const start = last ? Math.max(last.start, last.end - REACH) : sentence.start;
  const near = scene.passage.text.slice(start, sentence.start);
  return `${over?.brief.slice(-REACH).trimEnd() ?? ''}\n${near}${before}`;
}

function unitSaid(place: Place): Unit | undefined {
  const found = matchesOf(toldBefore(place), SAID).at(-1);
  const word = found?.slice(1).find((group) => group !== undefined);
  if (word === undefined) return undefined;
  if (/^metric$/i.test(word)) return 'ep-metric';
  return /^m/i.test(word) ? 'millimetre' : undefined;
}

const VERB =
  "(?:is|are|gives?|makes?|measures?|comes?\\s(?:to|out\\s(?:at|as))|works?\\sout\\s(?:at|as|to)|says?|reads?|becomes?|has|shows?|carries|equals|means|(?:that|it|this)['’]s)";
const SOFTENED =
  '(?:(?:an?|about|roughly|around|only|nearly|just|almost|exactly|some|at|over|under|a\\s(?:bit|little|shade))\\s){0,3}';
const FILLER = '(?!(?:and|or|than|not|to|from|with|through|into|over|under|nor|no|but|like|in)\\s)[a-z-]+\\s';
/** Between a size and its figure: a verb, a sign, a word or nothing. */
const BETWEEN = new RegExp(
  `^,?\\s?(?:(?:next\\sto\\s(?:it|that|them)\\s|${FILLER}){0,4}${VERB}\\s|(?:${FILLER})?(?:[:=→–(-]|->)\\s?|(?:${FILLER})?)${SOFTENED}["“]?$`,
  'i',
);

/** Farthest that a figure stands from its size. */
const FAR = 44;

/** The size that a figure is told of. */
function toldOf({ place: { scene, span }, known, bare }: Question): Mention | undefined {
  const last = mentionsIn(known, { start: Math.max(0, span.start - 2 * FAR), end: span.start }).at(-1);
  if (last?.kind !== 'size' || span.start - last.span.end > FAR) return undefined;
  const between = scene.passage.text.slice(last.span.end, span.start);
  if (between.trim() === '' && bare.decimals === 0) return undefined;
  return BETWEEN.test(between) ? last : undefined;
}

/** Most that a size of a system measures, in millimetres. */
const WIDEST: Readonly<Partial<Record<System, number>>> = {
  'needle-gauge': 6,
  french: 40,
  usp: 2,
  'wire-inch': 3,
};
const METRIC: ReadonlySet<number> = new Set([0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 1, 1.5, 2, 3, 3.5, 4, 5, 6, 7, 8]);

/** "In millimetres those come to about 0.89, 0.46 and 0.36". */
const ALL_IN = new RegExp(
  `\\bin\\s(?:mm|millimet(?:re|er)s)[,:]?\\s(?:(?:[a-z]+\\s){0,3}${VERB}\\s)${SOFTENED}$`,
  'i',
);

/** "The tube is 18 Fr. The hole is small; in millimetres it is 8": what a stop parts from the size may be of something else. */
function inOneBreath({ place: { scene, sentence }, bare, known }: Question): boolean {
  const last = mentionsIn(known, { start: sentence.start, end: bare.run.start }).at(-1);
  return last !== undefined && !/[.;]\s/.test(scene.passage.text.slice(last.span.end, bare.run.start));
}

/** "an 18 Fr is 6 mm, and the 16 Fr beside it about 5.3": the next of its kind is a third of its number too. */
const alike = ({ place, known, bare }: Question, { sizes: [size], span }: Mention): boolean =>
  size?.system === 'french' &&
  Math.abs(size.value / 3 - bare.value) < 0.1 &&
  mentionsIn(known, { start: place.sentence.start, end: span.start }).some(
    (one) => one.sizes[0]?.system === 'millimetre',
  );

/** "32 Fr is 10.7 mm; 10.6 or 10.5 loses a mark": next to nothing from the millimetres before it. */
const nearlyThat = ({ place, known, bare }: Question): boolean =>
  bare.decimals > 0 &&
  !place.scene.kinds.has('tracheal-tube') &&
  mentionsIn(known, { start: place.sentence.start, end: place.span.start }).some(
    ({ sizes: [size] }) =>
      size?.system === 'millimetre' &&
      bare.value !== size.value &&
      Math.abs(bare.value / size.value - 1) < 0.04,
  );

/** "12 mm wide, he said; I measured it, 4". */
const MEASURED_IT =
  /\bmeasured\s(?:it|one|them|mine|ours)(?:\s(?:and|at)|[,:;])\s(?:got\s|it\s(?:is|was)\s|about\s)?$/i;

/** The unit that holds for a figure. */
export const saidOnce: Rung = (question) => {
  const { place, bare } = question;
  const before = place.scene.passage.text.slice(
    place.sentence.start,
    Math.min(bare.run.start, place.span.start),
  );
  if (ALL_IN.test(before) && inOneBreath(question)) return ['millimetre'];
  if (MEASURED_IT.test(place.before) && /[0-9]\s?mm\b|millimet/i.test(place.before)) return ['millimetre'];
  if (nearlyThat(question)) return ['millimetre'];
  const of = toldOf(question);
  const size = of?.sizes[0];
  if (!of || !size) return [];
  if (alike(question, of)) return ['millimetre'];
  const unit = unitSaid(place);
  if (unit === 'ep-metric') return size.system === 'usp' && METRIC.has(bare.value) ? [unit] : [];
  return unit && bare.value <= (WIDEST[size.system] ?? 0) ? [unit] : [];
};
