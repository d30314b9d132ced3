/** Questions about rules: which way a scale runs, what turns one scale into another, what a number measures. */
import { matchesOf } from '../../../notes/index.ts';
import type { DirectionClaim, FormulaClaim } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { decidable, measuredWords } from '../../text/magnitudes.ts';
import { DOWN, UP } from '../../words/changes.ts';
import { negated } from '../choice.ts';
import { sizesOf, spanOf } from '../desk.ts';
import type { Told } from './index.ts';

const rule = (told: Told, system: FormulaClaim['system'], formula: string): FormulaClaim => ({
  kind: 'formula',
  construction: 'answer-key',
  span: spanOf(told.question),
  focus: told.focus,
  system,
  formula,
});

const FRENCH = /\b(?:french|fr|charri[eè]re|ch)\b/g;
const MILLIMETRES = /\b(?:mm|millimet(?:re|er)s?|metric)\b/g;
const TIMES = /\b(?:times|multipl\w+|triple|treble|x|by three)\b|[×*]/;
const OVER = /\b(?:divid\w+|over|(?:a|one) third)\b|[÷/]/;
const THREE = /\b(?:three|3|triple|treble|third|thirds)\b/;
const OTHER_FACTOR = /\b(?:two|four|five|ten|half|2|4|5|10|pi|double|twice)\b|π/;

/** "How do you get millimetres out of French?" "Times three." */
export function operated(told: Told): FormulaClaim[] | undefined {
  const { question, head } = told;
  const way = wayAsked(textOf(question.items));
  const said = textOf(head.items);
  const [times, over] = [TIMES.test(said.replace('by three', '')), OVER.test(said)];
  if (!way || times === over || !THREE.test(said) || OTHER_FACTOR.test(said) || negated(question))
    return undefined;
  if (sizesOf(question).length > 0 || /\b(?:fraction|how many|how much|part)\b/.test(textOf(question.items)))
    return undefined;
  const formula =
    way === 'to-mm'
      ? times
        ? 'mm-is-french-times-3'
        : 'mm-is-french-over-3'
      : times
        ? 'french-is-mm-times-3'
        : 'french-is-mm-over-3';
  return [rule(told, 'french', formula)];
}

/** "One French is what fraction of a millimetre?" "A half.", "How many French in a millimetre?" "Ten." */
export function stepOf(told: Told): FormulaClaim[] | undefined {
  const text = textOf(told.question.items.filter(({ kind }) => kind !== 'punctuation'));
  const [part, count] = [PART.test(text), COUNT.test(text)];
  if (part === count || negated(told.question)) return undefined;
  const said = textOf(told.head.items);
  const right = part ? /\b(?:third|1 \/ 3|0\.33\d*)\b/.test(said) : /\b(?:three|3)\b/.test(said);
  const wrong = part ? OTHER_PART.test(said) : OTHER_COUNT.test(said);
  return right === wrong ? [] : [rule(told, 'french', right ? 'french-step' : 'french-step-other')];
}
const PART =
  /\b(?:one|a|1|single|each|every) (?:french|fr|charri[eè]re)\b.*\b(?:fraction|part|share|how much|what)\b.*\bmillimet|\bhow much of a millimet\S* is (?:a|one) french\b/;
const COUNT =
  /\bhow many (?:french|fr|charri[eè]res?)\b.*\b(?:in|to|make|per|fit)\b.*\b(?:a|one|1|the|each) (?:mm|millimet\S*)/;
const OTHER_PART = /\b(?:half|quarter|tenth|fifth|whole|one|hundredth|full)\b/;
const OTHER_COUNT = /\b(?:one|two|four|five|six|ten|1|2|4|5|6|10)\b/;

const TOWARDS = /\b(?:to|into|gives?|for|wants?|need|needs|seek)\b|→/;
const OUT_OF = /\b(?:from|out of|given|of a)\b/;

/** Which of the two scales is sought: one named first with "to", or last with "from". */
function wayAsked(text: string): 'to-mm' | 'to-french' | undefined {
  const [french, mm] = [matchesOf(text, FRENCH), matchesOf(text, MILLIMETRES)];
  if (french.length !== 1 || mm.length !== 1) return undefined;
  const [a, b] = [french[0]!.index, mm[0]!.index];
  const between = text.slice(Math.min(a, b), Math.max(a, b));
  const [towards, out] = [TOWARDS.test(between), OUT_OF.test(between)];
  if (towards === out) return undefined;
  const frenchFirst = a < b;
  return towards === frenchFirst ? 'to-mm' : 'to-french';
}

const INNER = /\b(?:inner|inside|internal|internally|bore|lumen)\b/;
/** How much a thing lets through, and no side of it. */
const CLASSES = /\b(?:small|large|wide|narrow|fine|big)[ -]bore\b/g;
const OUTER = /\b(?:outer|outside|external|externally|od)\b/;

/** "The number on a tracheal tube: inside or outside?" "Outside." */
export function measuredBy(told: Told): FormulaClaim[] | undefined {
  const { question, head, options } = told;
  const asked = textOf(question.items).replace(CLASSES, ' ');
  const answer = textOf(head.items).replace(CLASSES, ' ');
  // "Which of these is named for its inside?" "The 16 Fr catheter.": the choice is what is measured.
  const turned = options.length > 1 && INNER.test(asked) !== OUTER.test(asked) && !SIDES.test(answer);
  if (/\b(?:double|single|triple|twin|two|three)[ -]lumen\b/.test(asked + answer)) return undefined;
  const [text, said] = turned ? [`${answer} number`, asked] : [asked, answer];
  // "Compared with a 30 G, a 25 G has:" "A larger lumen": of two needles, not of the number.
  if (COMPARED.test(answer)) return undefined;
  const inner = INNER.test(said);
  if (inner === OUTER.test(said) || negated(question) || !MEASURED.test(text) || UNLIKE.test(text))
    return undefined;
  const thing = turned ? head : question;
  const tube = TRACHEAL.test(text) || systemNamed(thing.items, 'tube-id');
  const french =
    /\b(?:french|fr|charri[eè]re|foley|drain|urinary|urethral|nasogastric)\b/.test(text) ||
    systemNamed(thing.items, 'french');
  const gauge =
    !tube &&
    !french &&
    (/\bgauges?\b/.test(text) || systemNamed(thing.items, 'needle-gauge')) &&
    NEEDLE.test(text);
  if (gauge && inner && head.items.length <= FEW) return [rule(told, 'needle-gauge', 'gauge-is-inner')];
  if (tube === french || /\bsheath|introducer|guid/.test(text)) return undefined;
  if (tube) return [rule(told, 'tube-id', inner ? 'tube-is-inner' : 'tube-is-outer')];
  return inner ? [rule(told, 'french', 'french-is-inner')] : [];
}
const MEASURED =
  /\b(?:numbers?|marked|sizes?|sized|measures?|measured|figure|refers?|means?|tells?|stands?|diameter|describes?|gives?|gauge|french|that|label\w*|printed)\b/;
const UNLIKE =
  /\b(?:double|lumens?|edge|curve|cutting|larger|smaller|wider|than|why|how much|how many|how wide)\b/;
const COMPARED =
  /\b(?:larger|smaller|wider|narrower|bigger|thicker|thinner|greater|finer|more|less|same|shorter|longer|higher|lower)\b/;
const FEW = 4;
const NEEDLE = /\b(?:needles?|cannula[es]?|gauges?|hypodermic)\b/;
const TRACHEAL =
  /\b(?:tracheal|endotracheal|ett|airway|intubat\w*|warmblood|horse|tracheostomy)\b.*\btubes?\b|\btubes?\b.*\b(?:tracheal|trachea|endotracheal|warmblood|intubat\w*)\b|\bett\b/;
const SIDES = /\b(?:inner|inside|internal|outer|outside|external)\b/;
const systemNamed = (items: readonly Item[], system: string): boolean =>
  items.some(({ mention }) => mention?.sizes[0]?.system === system);

/** "Gauge number up: what does the bore do?" "Grows." */
export function directed(told: Told): DirectionClaim[] | undefined {
  const { question, head, focus } = told;
  const text = textOf(question.items);
  const number = numberGoes(question.items);
  const scale = scaleOf(question.items);
  if (!number || !scale || negated(question) || AGAINST.test(text)) return undefined;
  if (sizesOf(question).length > 0) return undefined;
  const said = thingGoes(head.items, question.items);
  if (!said) return undefined;
  return [
    {
      kind: 'direction',
      construction: 'answer-key',
      span: spanOf(question),
      focus,
      system: scale.system,
      number,
      axis: said.axis,
      size: said.way,
      ...(scale.zeros ? { zeros: true } : {}),
    },
  ];
}
const AGAINST = /\b(?:why|unless|length|longer|but not|which (?:scale|system|of)|other)\b/;

function scaleOf(items: readonly Item[]): { system: DirectionClaim['system']; zeros?: boolean } | undefined {
  const named = new Set(items.flatMap(({ system }) => system ?? []));
  if (named.size !== 1) return undefined;
  const [system] = [...named];
  if (system === 'usp-zeros') return { system: 'usp', zeros: true };
  return system === 'needle-gauge' || system === 'french' || system === 'ep-metric' ? { system } : undefined;
}

/** Which way the number goes, said once: by a verb, by "up", or by "a higher number". */
function numberGoes(items: readonly Item[]): 'up' | 'down' | undefined {
  const signs = new Set<'up' | 'down'>();
  for (const { axis, sign, degree, at } of measuredWords(items))
    if (degree === 'comparative' && (axis === 'number' || items[at + 1]?.system))
      signs.add(sign === 1 ? 'up' : 'down');
  items.forEach((item, i) => {
    const near = items
      .slice(Math.max(0, i - 4), i)
      .some((one) => one.system ?? one.axisNoun?.axis === 'number');
    if (near && !item.magnitude && UP.has(item.word)) signs.add('up');
    if (near && !item.magnitude && DOWN.has(item.word)) signs.add('down');
    if (/^(?:more|fewer|extra)$/.test(item.word) && items[i + 1]?.system === 'usp-zeros')
      signs.add(item.word === 'fewer' ? 'down' : 'up');
  });
  return signs.size === 1 ? [...signs][0] : undefined;
}

/** What the reply says becomes of the thing; a bare "up" is said of the one quantity that was asked about. */
function thingGoes(
  said: readonly Item[],
  asked: readonly Item[],
): { axis: DirectionClaim['axis']; way: 'up' | 'down' } | undefined {
  const words = measuredWords(said).filter(({ degree }) => degree !== 'superlative');
  const nouns = new Set(
    asked.flatMap(({ axisNoun }) =>
      axisNoun && axisNoun.axis !== 'number' && axisNoun.sign === 1 ? axisNoun.axis : [],
    ),
  );
  const [noun = 'outer'] = [...nouns];
  if (nouns.size > 1) return undefined;
  const [word, ...more] = words;
  if (word && more.length === 0 && decidable(word.axis))
    return { axis: word.axis, way: word.sign === 1 ? 'up' : 'down' };
  if (words.length > 0) return undefined;
  const [up, down] = [said.some((item) => UP.has(item.word)), said.some((item) => DOWN.has(item.word))];
  return up === down ? undefined : { axis: noun, way: up ? 'up' : 'down' };
}
