/**
 * Rules told loosely, by their numbers and what stands beside them: how the cross-section and, by the law of narrow pipes,
 * the flow go with the diameter; how many French make a millimetre; inches into millimetres; a child's tube by age.
 */
import { wordValue } from '../../mentions/words/numbers.ts';
import type { FormulaClaim } from '../model.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { itemAt, joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

export const laws: Construction = {
  id: 'laws',
  leaning: true,
  needs: () => [
    { like: CUES },
    { sizes: 1, like: MM },
    { holds: ['mixed'] },
    { like: FLOWS, words: ['radius', 'diameter', 'bore', 'width', 'calibre', 'caliber'] },
  ],
  read(scene) {
    const { items } = scene;
    if (scene.sentence.close === '?' || items.length > 60) return [];
    if (holds(items, DENIED)) return [];
    const open = holds(items, LEFT_OPEN);
    const found = open
      ? power(scene)
      : [...growth(scene), ...power(scene), ...unitStep(scene), ...inches(scene), ...byCuff(scene)];
    return found.slice(0, 1);
  },
};

const CUES =
  /^(?:areas?|cross-sections?|cross-sectional|poiseuille(?:'s)?|hagen|law|french|fr|charri[eè]res?|2\.54|(?:un)?cuffed|cuff)$/;

/** Left open, compared, or told of what was measured. */
const OPEN =
  /^(?:if|unless|whether|than|instead|rather|practice|practise|bench|measured|real|nearly|almost|least|most)$/;

const LEFT_OPEN = cue(OPEN);
const DENIED = cue([...NEGATIONS].filter((word) => word !== 'without'));

/** How many times, by a word of its own or with a number before it. */
const FACTORS: ReadonlyMap<string, number> = new Map([
  ...['twice', 'double', 'doubled', 'doubles', 'doubling'].map((word) => [word, 2] as const),
  ...['treble', 'trebles', 'trebled', 'trebling', 'triple', 'triples', 'tripled', 'tripling'].map(
    (word) => [word, 3] as const,
  ),
  ...['half', 'halve', 'halves', 'halved', 'halving'].map((word) => [word, 1 / 2] as const),
  ...([
    ['third', 1 / 3],
    ['quarter', 1 / 4],
    ['quarters', 1 / 4],
    ['quartered', 1 / 4],
    ['quadruples', 4],
    ['quadrupled', 4],
    ['quadruple', 4],
    ['eighth', 1 / 8],
    ['sixteenth', 1 / 16],
    ['ninth', 1 / 9],
  ] as const),
]);

interface Factor {
  readonly at: number;
  readonly value: number;
}

const factorsIn = (items: readonly Item[]): readonly Factor[] =>
  items.flatMap(({ word }, at) => {
    const before = items[at - 1]?.word ?? '';
    const told = word === 'times' || word === 'fold' ? numberOf(before) : (FACTORS.get(word) ?? foldOf(word));
    return told === undefined || !(told > 0) ? [] : [{ at, value: told }];
  });

/** "eightfold", "16-fold". */
const foldOf = (word: string): number | undefined =>
  word.endsWith('fold') ? numberOf(word.slice(0, -4).replace(/-$/, '')) : undefined;

function numberOf(word: string): number | undefined {
  const value = /^\d+(?:\.\d+)?$/.test(word) ? Number(word) : wordValue(word);
  return value === undefined || Number.isNaN(value) ? undefined : value;
}

const WIDTHS =
  /^(?:diameters?|radius|radii|widths?|bores?|calib(?:re|er)s?|wide|thick|lumens?|across|broad)$/;
const AREAS = /^(?:areas?|cross-sections?|cross-sectional)$/;
const FLOWS = /^(?:flows?|flow-rate)$/;
const LAWFUL = /\b(?:law|poiseuille(?:'s)?|hagen|fourth power|equation)\b/;
const SLACK = 0.2;
/** No flow, however disturbed, grows as slowly with the bore as this power of it. */
const SLOWEST = 1.5;

/** "Twice the diameter means twice the cross-section", "halve the radius and, by the law, the flow falls to a quarter". */
function growth(scene: Scene): Reading[] {
  const { items } = scene;
  const [one, other, ...more] = factorsIn(items);
  if (!one || !other || more.length > 0) return [];
  const area = items.some(({ word }) => AREAS.test(word));
  const flow = items.some(({ word }) => FLOWS.test(word));
  const power = area && !flow ? 2 : flow && !area ? 4 : 0;
  if (power === 0 || items.some(({ mention }) => mention) || items.some(({ word }) => word === 'resistance'))
    return [];
  const outcome = power === 2 ? AREAS : FLOWS;
  const [width, result] = [nearer(items, one.at, WIDTHS, outcome), nearer(items, other.at, WIDTHS, outcome)];
  if (width === undefined || result === undefined || width === result) return [];
  const [by, said] = width === 0 ? [one, other] : [other, one];
  const worked = by.value ** power;
  const told = [items, ...scene.before.slice(-2).map((sentence) => sentence.items)];
  const lawful = power === 4 && told.some((words) => LAWFUL.test(joined(words)));
  if (power === 4 && !lawful && !isFlat(by.value, said.value)) return [];
  const holds = Math.abs(said.value / worked - 1) <= SLACK || Math.abs(said.value * worked - 1) <= SLACK;
  const id = `${power === 2 ? 'area-squared' : lawful ? 'flow-to-fourth' : 'flow-by-bore'}${holds ? '' : '-wrong'}`;
  const sum = `${Number(by.value.toPrecision(2))}${power === 2 ? '²' : '⁴'} = ${Number(worked.toPrecision(3))}`;
  return [reading(scene, power === 2 ? 'french' : 'tube-id', id, said.at, sum)];
}

/** "Double the bore and you double the flow": too little by any law. */
function isFlat(by: number, said: number): boolean {
  const grown = Math.log(said) / Math.log(by);
  return grown > 0 && grown < SLOWEST;
}

/** Which of two kinds of noun stands nearer to a factor: the first kind is 0, the second 1. */
function nearer(items: readonly Item[], at: number, first: RegExp, second: RegExp): 0 | 1 | undefined {
  const ahead = items.slice(at + 1, at + 6);
  const behind = items.slice(Math.max(0, at - 6), at).reverse();
  for (const [near, ends] of [
    [ahead, /^[,;:.]$/],
    [behind, /^[;:.]$/],
  ] as const)
    for (const { word } of near) {
      if (first.test(word)) return 0;
      if (second.test(word)) return 1;
      if (ends.test(word)) break;
    }
  return undefined;
}

const NTH = '(second|third|fifth|sixth|first|fourth|4th)';
const POWER = new RegExp(
  `\\b(?:${NTH} power|power (?:of )?(two|three|four|five|2|3|4|5)|(square|squared|cube|cubed)(?= of|\\b))`,
);
const POWERS: ReadonlyMap<string, number> = new Map([
  ['first', 1],
  ['second', 2],
  ['third', 3],
  ['fourth', 4],
  ['4th', 4],
  ['fifth', 5],
  ['sixth', 6],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['2', 2],
  ['3', 3],
  ['4', 4],
  ['5', 5],
  ['square', 2],
  ['squared', 2],
  ['cube', 3],
  ['cubed', 3],
]);

/** "Poiseuille's equation raises the radius to the second power". */
function power(scene: Scene): Reading[] {
  const text = joined(scene.items);
  const clause = text.split(/ (?:, (?:although|though|but|while)|although|though|but|whereas) /)[0]!;
  const match = POWER.exec(clause);
  if (!match || !/\b(?:poiseuille(?:'s)?|hagen)\b/.test(clause)) return [];
  if (!/\b(?:radius|radii|bore|diameter|lumen)\b/.test(clause) || /\barea\b|cross-section/.test(clause))
    return [];
  const exponent = POWERS.get(match[1] ?? match[2] ?? match[3]!);
  if (exponent === undefined) return [];
  return [
    reading(
      scene,
      'tube-id',
      exponent === 4 ? 'flow-to-fourth' : 'flow-to-fourth-wrong',
      itemAt(scene.items, match.index),
    ),
  ];
}

const FRENCH = /^(?:french|fr|charri[eè]res?)$/;
const MM = /^(?:mm|millimet(?:re|er)s?)$/;
/** One of these stands where a scale is told by its steps. */
const STEPS =
  /\b(?:each|every|per|to (?:the|a|one|every|each)|in (?:a|one|every|each)|for (?:a|every|each|one)|up|further|extra|more|another|adds?|added|holds?|contains?|widens?|gains?|wider|thicker|fatter|broader|steps?|climb(?:s|ing)?|increase[sd]?|difference)\b/;

/** "A millimetre holds two French", "going up by three French widens the tube by 3 mm": a third of a millimetre each. */
function unitStep(scene: Scene): Reading[] {
  const { items } = scene;
  const text = joined(items);
  if (
    !STEPS.test(text) ||
    /\b(?:around|round|circumference|girth|outline|perimeter|down from|up from|from (?:an?|the)|size below|suction|sheaths?|introducers?|lets|inner|inside|bore|radius|step of|pi|π)\b/.test(
      text,
    )
  )
    return [];
  const [french, millimetre] = [amounts(items, FRENCH, 'french'), amounts(items, MM, 'millimetre')];
  if (french.length !== 1 || millimetre.length !== 1) return [];
  const [n, m] = [french[0]!, millimetre[0]!];
  if (items.slice(Math.min(n.at, m.at), Math.max(n.at, m.at)).some(({ word }) => /^[;.]$/.test(word)))
    return [];
  if (
    n.value > 6 ||
    m.value > 6 ||
    (!n.unit && !m.unit && !/\b(?:up|widens?|adds?|adding|climb\w*|increase[sd]?)\b/.test(text))
  )
    return [];
  const holds = Math.abs((3 * m.value) / n.value - 1) < 0.11;
  return [reading(scene, 'french', holds ? 'french-step' : 'french-step-other', Math.max(n.at, m.at))];
}

interface Amount {
  readonly at: number;
  readonly value: number;
  /** One of the unit itself: "every French", "a millimetre". */
  readonly unit: boolean;
}

/** Counted units: "three French", "every French", "half a millimetre"; a size so written counts too. */
function amounts(items: readonly Item[], name: RegExp, system: string): readonly Amount[] {
  return items.flatMap((item, at) => {
    const size = item.mention?.sizes[0];
    if (size)
      return size.system === system && item.mention!.sizes.length === 1
        ? [{ at, value: size.value, unit: size.value === 1 }]
        : [];
    if (!name.test(item.word)) return [];
    const text = joined(items, Math.max(0, at - 4), at);
    const part = /\b(half|third|quarter|tenth|fifth)(?: of)?(?: an?)?$/.exec(text)?.[1];
    if (part) return [{ at, value: PARTS.get(part)!, unit: true }];
    const last = items[at - 1]?.word ?? '';
    // "1/3 of a millimetre", "0.33 of a millimetre"
    const share = /(\S+) of (?:an?|one)$/.exec(text)?.[1];
    if (share !== undefined) {
      const [above, below] = share.split('/').map(numberOf);
      const told =
        above === undefined ? undefined : above / (share.includes('/') ? (below ?? Number.NaN) : 1);
      return told !== undefined && told > 0 ? [{ at, value: told, unit: true }] : [];
    }
    if (/^(?:an?|one|every|each|per|single|whole|full|extra)$/.test(last))
      return [{ at, value: 1, unit: true }];
    const value = numberOf(last);
    return value === undefined ? [] : [{ at, value, unit: value === 1 }];
  });
}
const PARTS: ReadonlyMap<string, number> = new Map([
  ['half', 1 / 2],
  ['third', 1 / 3],
  ['quarter', 1 / 4],
  ['tenth', 1 / 10],
  ['fifth', 1 / 5],
]);

/** "In inches, a wire's number is multiplied by 2.54 and you have its millimetres": that gives centimetres. */
function inches(scene: Scene): Reading[] {
  const { items } = scene;
  const at = items.findIndex(({ word }) => word === '2.54');
  const text = joined(items);
  if (at < 0 || !/\b(?:multipl\w+|times|×|x|\*|factor)\b|[×*]/.test(text) || !/\binch(?:es)?\b/.test(text))
    return [];
  if (!/\b(?:mm|millimet(?:re|er)s?)\b/.test(text) || /\b(?:cm|centimet\w+|ten|10)\b/.test(text)) return [];
  return [reading(scene, 'inch', 'inch-is-other', at)];
}

const NUMBERS: ReadonlyMap<string, number> = new Map([
  ['3', 3],
  ['three', 3],
  ['3.0', 3],
  ['3.5', 3.5],
  ['4', 4],
  ['four', 4],
  ['4.0', 4],
  ['4.5', 4.5],
  ['5', 5],
  ['five', 5],
]);

/** "plus four with a cuff and three and a half without": the cuff takes room, so less is added. */
function byCuff(scene: Scene): Reading[] {
  const { items } = scene;
  const text = joined(items);
  if (!/\b(?:age|years|formula|rule)\b/.test(text) || !/\b(?:plus|adds?|adding)\b|\+/.test(text)) return [];
  const marks: { readonly at: number; readonly cuffed: boolean }[] = [];
  const added: { readonly at: number; readonly value: number }[] = [];
  const from = items.findIndex(({ word }) => /^(?:plus|adds?|adding|\+)$/.test(word));
  for (let i = 0; i < items.length; i++) {
    const word = items[i]!.word;
    const words = joined(items, i, i + 3);
    if (word === 'uncuffed' || /^(?:no cuff|without(?: a)? cuff|without(?: [.,;]|$))/.test(words))
      marks.push({ at: i, cuffed: false });
    else if (word === 'cuffed' || /^with (?:a |the )?cuff\b/.test(words)) marks.push({ at: i, cuffed: true });
    const led = /^(?:plus|adds?|adding|\+|and|but|only|or|just)$/.test(items[i - 1]?.word ?? '');
    const value = i > from && led ? NUMBERS.get(items[i]!.mention?.text ?? word) : undefined;
    if (value !== undefined) {
      const half = joined(items, i + 1, i + 4) === 'and a half';
      added.push({ at: i, value: half ? value + 0.5 : value });
    }
  }
  const [a, b] = marks;
  const [x, y] = added;
  if (marks.length !== 2 || added.length !== 2 || !a || !b || !x || !y || a.cuffed === b.cuffed) return [];
  const inTurn = (a.at < x.at && x.at < b.at && b.at < y.at) || (x.at < a.at && a.at < y.at && y.at < b.at);
  if (!inTurn) return [];
  const [cuffed, plain] = a.cuffed ? [x, y] : [y, x];
  if (cuffed.value === plain.value) return [];
  return [
    reading(
      scene,
      'tube-id',
      cuffed.value < plain.value ? 'tube-by-age' : 'tube-by-age-other',
      Math.max(x.at, y.at),
    ),
  ];
}

function reading(
  scene: Scene,
  system: FormulaClaim['system'],
  formula: string,
  at: number,
  sum?: string,
): Reading {
  const claim = { ...ruleClaim(scene, 'laws', system, formula, at), ...(sum ? { sum } : {}) };
  return { claim, at, from: 0, to: at };
}
