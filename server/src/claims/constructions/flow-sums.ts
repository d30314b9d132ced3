/**
 * Sums of flow: "at 60 ml a minute a litre takes seventeen minutes", and several cannulas set against one: "two 20 G together
 * deliver less than one 14 G". Only what is clearly out is said to be wrong.
 */
import { readNumber } from '../../mentions/words/numbers.ts';
import { matchesOf } from '../../notes/matches.ts';
import { FLOW } from '../../sizes/index.ts';
import type { FormulaClaim } from '../model.ts';
import { cue, holds } from '../text/cues.ts';
import { flowSaid, PLACES, someIn, whole } from '../text/flowing.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { compares } from '../text/magnitudes.ts';
import { isReference } from '../text/references.ts';
import { type Group, groups, type Scene, twoSizes } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { FLOW_DEGREES, FLUID, PUTTING_IN } from '../words/flowing.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';
import { comparison, wordless } from './than.ts';

export const flowSums: Construction = {
  id: 'flow-sums',
  needs: () => [{ like: LASTS }, { sizes: 2, like: FLOW_DEGREES }, { sizes: 2, like: RATE_WORD }],
  leaning: true,
  read(scene) {
    if (scene.sentence.close === '?' || scene.items.length > 60) return [];
    return [...timeOf(scene), ...severalIn(scene), ...figures(scene)];
  },
};

const LASTS = /^(?:min|mins|minutes?|hours?|half-hour|seconds?|secs?)$/;
const TIMED = cue(LASTS);

const TAKES =
  /\b(?:takes?|took|taking|needs?|lasts?|empt\w+|runs?|ran|goes|went|through|so|therefore|hence|which|means|finish\w*|done|given|makes|wait|reckon|expect|allow|gone|over)\b/;

const NUMBER = '(\\d+(?:\\.\\d+)?|[a-z]+(?:-[a-z]+)?)';
const RATE = new RegExp(
  `${NUMBER} (?:ml|mls|millilit(?:re|er)s?|cc) ?(?:/|per|a|an|each|every) ?(min(?:ute)?s?|h(?:ou)?r?s?)\\b`,
  'g',
);
const VOLUME = new RegExp(
  `(?:(half) a lit(?:re|er)|${NUMBER} (lit(?:re|er)s?|l|ml|mls|millilit(?:re|er)s?))(?= |$)(?! ?(?:/|per|an? (?:min|h)|each|every))`,
  'g',
);
const TIME = new RegExp(`${NUMBER}( and a half)? (min(?:ute)?s?|h(?:ou)?rs?)\\b`, 'g');

/** Time as said and as it comes out may differ so much before it is called wrong. */
const SLACK = 1.4;

/** One volume, one rate and one time, in this sentence and the one before. */
function timeOf(scene: Scene): Reading[] {
  if (!holds(scene.items, TIMED)) return [];
  const own = joined(scene.items);
  // "A 16 G gives 220 ml/min, a litre in 2.5 minutes": two figures of a table that need not agree.
  if (!TAKES.test(own)) return [];
  if (scene.items.some(({ word }) => NEGATIONS.has(word) || ODD.test(word))) return [];
  if (groups(scene.items).length === 0 && scene.system === undefined) return [];
  const before = scene.before.at(-1);
  const all = [own, before && before.close !== '?' ? `${joined(before.items)} . ${own}` : ''];
  for (const text of all) {
    const sum = text === '' ? undefined : sumIn(text);
    if (sum === 'several') return [];
    if (!sum) continue;
    const at = scene.items.findLastIndex((item) => LASTS.test(item.word));
    const out = sum.said / sum.right > SLACK || sum.right / sum.said > SLACK;
    const formula = out ? 'time-worked-out-wrong' : 'time-as-worked-out';
    const claim: FormulaClaim = {
      ...ruleClaim(scene, 'flow-sums', 'needle-gauge', formula, at),
      sum: `${sum.volume} ml ÷ ${sum.rate} ml/min = ${Number(sum.right.toPrecision(2))} min`,
    };
    return [{ claim, at, from: at, to: at }];
  }
  return [];
}
const ODD =
  /^(?:units?|mg|mcg|iu|doses?|left|remaining|already|extra|another|instead|if|first|last|each|every\W?|both)$/;

interface FlowSum {
  readonly volume: number;
  readonly rate: number;
  readonly said: number;
  readonly right: number;
}

function sumIn(text: string): FlowSum | 'several' | undefined {
  const rates = matchesOf(text, RATE);
  const rest = text.replace(RATE, ' ; ');
  const [volumes, times] = [matchesOf(rest, VOLUME), matchesOf(rest, TIME)];
  if (rates.length > 1 || volumes.length > 1 || times.length > 1) return 'several';
  const [rate, volume, time] = [rates[0], volumes[0], times[0]];
  if (!rate || !volume || !time) return undefined;
  const perMinute = (amountOf(rate[1]!) ?? 0) / (rate[2]!.startsWith('h') ? 60 : 1);
  const litres = /^l/.test(volume[3] ?? '') ? 1000 : 1;
  const ml = volume[1] ? 500 : (amountOf(volume[2]!) ?? 0) * litres;
  const said = ((amountOf(time[1]!) ?? 0) + (time[2] ? 0.5 : 0)) * (time[3]!.startsWith('h') ? 60 : 1);
  if (perMinute <= 0 || ml <= 0 || said <= 0) return undefined;
  return { volume: ml, rate: Number(perMinute.toPrecision(3)), said, right: ml / perMinute };
}

const amountOf = (text: string): number | undefined =>
  /^\d/.test(text) ? Number(text) : /^an?$/.test(text) ? 1 : readNumber(text)?.value;

/** "ml/min" is one word. */
const RATE_WORD = /^mls?\/(?:min|mins|minute|h|hr|hour|s|sec)$/;
const FIGURE_UNIT = /^(?:ml|mls|mls?\/[a-z]+|min|mins|minutes?|seconds?|secs?|s|hours?)$/;
const TIMES = /^(?:min|mins|minutes?|seconds?|secs?|s|hours?)$/;
/** Two figures of one thing may be so near that a slip of the watch tells them apart. */
const APART = 1.15;

/** "25 seconds through the 14 G and 15 through the 18 G", "the 20 G gives 60 ml a minute and the 16 G 40". */
function figures(scene: Scene): Reading[] {
  const { items } = scene;
  const own = groups(items).flatMap(single);
  const [a, b] = own;
  if (own.length !== 2 || !a || !b || !twoSizes(a, b)) return [];
  if (
    items.some(({ word }) => NEGATIONS.has(word) || UNLIKE.test(word)) ||
    countOf(items, a) + countOf(items, b) > 2
  )
    return [];
  const rated = items.some(({ word }) => RATE_WORD.test(word));
  if (rated ? items.some(({ word }) => CHOSEN.test(word)) : !someIn(items, whole(items), FLUID)) return [];
  if (someIn(items, whole(items), PUTTING_IN) || own.some(({ from }) => items[from - 1]?.word === 'some'))
    return [];
  const all = items.flatMap((item, at) => {
    const value = isReference(items, at) ? undefined : figureAt(item);
    return value === undefined ? [] : [{ at, value, unit: unitAfter(items, at) }];
  });
  const flows = all.filter(({ unit, at }) => unit !== undefined || bareAfter(items, at));
  const unit = flows.find((one) => one.unit)?.unit;
  if (
    !unit ||
    flows.length !== 2 ||
    flows.some((one) => one.unit && TIMES.test(one.unit) !== TIMES.test(unit))
  )
    return [];
  const [x, y] = flows as [(typeof flows)[0], (typeof flows)[0]];
  const ahead = x.at < a.from && y.at > a.to && y.at < b.from;
  const behind = x.at > a.to && x.at < b.from && y.at > b.to;
  if (ahead === behind || Math.max(x.value / y.value, y.value / x.value) < APART) return [];
  const rate = RATED.test(joined(items));
  if (!TIMES.test(unit) && !rate) return [];
  const more = x.value > y.value === !TIMES.test(unit);
  const word = compares(x.at, 'flow', more ? 1 : -1);
  return [
    {
      ...wordless(comparison(scene, 'flow-sums', a, b, word)),
      from: Math.min(a.from, x.at),
      to: Math.max(b.to, y.at),
    },
  ];
}
const UNLIKE =
  /^(?:if|unless|or|pressure|squeezed|long|short|longer|shorter|kinked|blocked|may|might|needle|age|aged|warm|cold|days?|weeks?|change|changed|leave|left|apart|wait)$/;
/** A rate may be one that somebody sets; and a lumen of a long line is no cannula. */
const CHOSEN =
  /^(?:at|set|sets|pumps?|injectors?|injects?|injected|injecting|prescribed|ordered|limit(?:ed)?|max|maximum|least|minimum|lumens?|cvc|central|distal|proximal|medial|picc|midline|sheaths?|introducers?|up|need(?:s|ed)?|want(?:s|ed)?|ask(?:ed)?)$/;
const RATED = /\b(?:ml|mls|millilit(?:re|er)s?) ?(?:\/|per|an?|each|every) ?(?:min|h|sec)/;
const figureAt = ({ kind, word }: Item): number | undefined => {
  if (kind !== 'word') return undefined;
  const value = /^\d+(?:\.\d+)?$/.test(word)
    ? Number(word)
    : word === 'a' || word === 'one'
      ? undefined
      : readNumber(word)?.value;
  return value !== undefined && value > 1 ? value : undefined;
};
const unitAfter = (items: readonly Item[], at: number): string | undefined => {
  const word = items[at + 1]?.word ?? '';
  // A volume is no rate.
  if (/^mls?$/.test(word) && !/^(?:\/|per|an?|each|every) ?(?:min|h|sec)/.test(joined(items, at + 2, at + 4)))
    return undefined;
  return FIGURE_UNIT.test(word) && !/^(?:of|bag|syringe)$/.test(items[at + 2]?.word ?? '') ? word : undefined;
};
/** "and 15 through the 18 G", "the 16 G 40.": the unit is said once. */
const bareAfter = (items: readonly Item[], at: number): boolean =>
  /^(?:[.,;)]|through|with|on|for|and|via|from|down)?$/.test(items[at + 1]?.word ?? '');

const COUNTS: ReadonlyMap<string, number> = new Map([
  ...['two', '2', 'both', 'twin', 'double', 'pair'].map((word) => [word, 2] as const),
  ...['three', '3', 'triple'].map((word) => [word, 3] as const),
]);

/** "a pair of 20 G cannulas", "two 20 G". */
function countOf(items: readonly Item[], { from }: Group): number {
  for (let i = from - 1; i >= Math.max(0, from - 3); i--) {
    const count = COUNTS.get(items[i]!.word);
    if (count) return count;
    if (
      !/^(?:of|the|our|pink|green|blue|grey|gray|orange|yellow|separate|ordinary|good|short|peripheral)$/.test(
        items[i]!.word,
      )
    )
      return 1;
  }
  return 1;
}

/** How clearly the sum of several must lie on one side. */
const CLEAR = 1.1;

/** Several of one gauge together against one of another. */
function severalIn(scene: Scene): Reading[] {
  const { items } = scene;
  const [a, b, ...more] = groups(items).flatMap(single);
  const [word, ...words] = flowSaid(items);
  if (!a || !b || more.length > 0 || !word || words.length > 0) return [];
  if (
    items.some((item) => NEGATIONS.has(item.word) || /^(?:each|either|may|might|unless|if)$/.test(item.word))
  )
    return [];
  const than = PLACES.test(items[word.at]!.word)
    ? word.at
    : items.findIndex((item, i) => i > word.at && item.word === 'than');
  const counts = [countOf(items, a), countOf(items, b)] as const;
  if (than < word.at || than > b.from || a.to > than || (counts[0] === 1) === (counts[1] === 1)) return [];
  const [left, right] = [flowOf(a, counts[0]), flowOf(b, counts[1])];
  if (!left || !right) return [];
  const larger = left.min / right.max > CLEAR ? 1 : right.min / left.max > CLEAR ? -1 : undefined;
  if (!larger) return [];
  const claim: FormulaClaim = {
    ...ruleClaim(
      scene,
      'flow-sums',
      'needle-gauge',
      larger === word.sign ? 'several-as-measured' : 'several-otherwise',
      word.at,
    ),
    sum: `${counts[0]} × ${a.sizes[0]!.value} G ${left.min}–${left.max} ml/min, ${counts[1]} × ${b.sizes[0]!.value} G ${right.min}–${right.max} ml/min`,
  };
  return [{ claim, at: word.at, from: Math.min(a.from, word.at), to: word.to }];
}

function flowOf({ sizes }: Group, count: number): { min: number; max: number } | undefined {
  const [size] = sizes;
  const row = size?.system === 'needle-gauge' ? FLOW.find(({ gauge }) => gauge === size.value) : undefined;
  return row && { min: count * Math.min(...row.mlPerMinute), max: count * Math.max(...row.mlPerMinute) };
}
