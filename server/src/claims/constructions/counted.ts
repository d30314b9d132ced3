/** Steps between threads, counted: "three sizes finer than 2-0 is 5-0", "a 5-0 is two steps below a 3-0", "from 2-0 to 5-0 is three steps". */
import { wordValue } from '../../mentions/words/numbers.ts';
import { phrase } from '../../texts/index.ts';
import type { FormulaClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { RULE } from '../texts/rules.ts';
import type { Construction, Reading } from './model.ts';

const STEP = /^(?:steps?|sizes?|notch(?:es)?|grades?|rungs?)$/;

export const counted: Construction = {
  id: 'counted',
  needs: () => [{ sizes: 2, like: STEP }],
  read(scene) {
    const { items } = scene;
    const ends = threads(groups(items));
    // What a shelf holds may leave sizes out.
    if (!ends || items.some((item) => SHELF.test(item.word))) return [];
    return items.flatMap((item, step) => {
      const count = STEP.test(item.word) ? countBefore(items, step) : undefined;
      const way = count === undefined ? undefined : wayOf(items, step, ends);
      return count === undefined || !way ? [] : [reading(scene, step, count, way)];
    });
  },
};

const SHELF =
  /^(?:stock|stocks|stocked|available|keep|keep|have|carry|hold|holds|sold|made|about|roughly|almost|nearly|least|most|over|under|half|several|few|some|or|skip|skipping|jump|\?)$/;

/** The thickest threads share rows of the table: their steps are not counted alike. */
const COUNTED_TO = 2;

/** Two different mentions of single threads, and no more. */
function threads(all: readonly Group[]): readonly [Group, Group] | undefined {
  const [a, b] = all.length === 1 ? halves(all[0]!) : all;
  const single = (g: Group | undefined) =>
    g?.sizes.length === 1 &&
    g.sizes[0]!.system === 'usp' &&
    g.sizes[0]!.value <= COUNTED_TO &&
    Number.isInteger(g.sizes[0]!.value);
  return all.length <= 2 && a && b && single(a) && single(b) ? [a, b] : undefined;
}

/** "2-0 to 5-0", read as one range. */
const halves = (g: Group): Group[] =>
  g.sizes.length === 2 ? g.sizes.map((size) => ({ ...g, mentions: [g.mentions[0]!], sizes: [size] })) : [];

function countBefore(items: readonly Item[], step: number): number | undefined {
  const before = items[step - 1]?.word ?? '';
  if (before === 'a' || before === 'single') return 1;
  const value = /^[0-9]{1,2}$/.test(before) ? Number(before) : wordValue(before);
  return value !== undefined && value >= 1 && value <= 12 && items[step - 1]?.kind === 'word'
    ? value
    : undefined;
}

/** From which thread to which, and whether the steps go up, when it is said. */
interface Way {
  readonly from: Group;
  readonly to: Group;
  /** What lies between the two is counted, not the steps. */
  readonly inner?: true;
  readonly sign?: 1 | -1;
}

function wayOf(items: readonly Item[], step: number, [a, b]: readonly [Group, Group]): Way | undefined {
  const word = measuredWords(items).find(
    (m) => m.at > step && m.at <= step + 2 && m.degree === 'comparative',
  );
  const sign = word && !word.idiom && (word.axis === 'outer' || word.axis === 'bore') ? word.sign : undefined;
  const anchor = items[(word?.to ?? step) + 1]?.word ?? '';
  const anchored =
    sign === undefined ? /^(?:above|below|from|beyond)$/.test(anchor) : /^(?:than|from|after)$/.test(anchor);
  const last = (word?.to ?? step) + 1;
  if (anchored && (sign !== undefined || step > a.to)) {
    const signed = sign === undefined ? {} : { sign };
    const near = (g: Group) => g.from > last && g.from - last <= 4;
    if (near(a) && b.from > a.to && says(items, a, b)) return { from: a, to: b, ...signed };
    return near(b) && a.to < step && is(items, a, step) ? { from: b, to: a, ...signed } : undefined;
  }
  if (sign !== undefined || a.to > step) return undefined;
  return fromTo(items, step, a, b) ?? betweenThem(items, step, a, b);
}

const TIE =
  /^(?:(?:silk|nylon|suture|thread|one|polypropylene|size) )?(?:is|=|:|gives|means|makes|(?:, )?that is|(?:, )?so|, i\.e|comes to)(?: (?:a|an|the|size|to|:|,))?$/;
const says = (items: readonly Item[], a: Group, b: Group) => TIE.test(textOf(items.slice(a.to + 1, b.from)));

/** "A 5-0 suture is two sizes", "000, which is four steps". */
const is = (items: readonly Item[], a: Group, step: number) =>
  /^(?:\S+ )?(?:, )?(?:which |that |it )?(?:is|lies|sits|stands|=)(?: just| exactly)?$/.test(
    textOf(items.slice(a.to + 1, step - 1)),
  );

/** "From 2-0 to 5-0 silk is three steps"; "is a step to a finer thread" counts nothing. */
function fromTo(items: readonly Item[], step: number, a: Group, b: Group): Way | undefined {
  const from = items[a.from - 1]?.word === 'from';
  const verb = /^(?:\S+ )?(?:is|=|makes|takes|:)(?: a)?$/.test(textOf(items.slice(b.to + 1, step - 1)));
  return from && verb && b.to < step && items[step - 1]!.word !== 'a' ? { from: a, to: b } : undefined;
}

/** "Between 2-0 and 6-0 silk there are three sizes." */
function betweenThem(items: readonly Item[], step: number, a: Group, b: Group): Way | undefined {
  const between = items[a.from - 1]?.word === 'between' && b.to < step;
  const verb = /^(?:\S+ )?(?:there )?(?:are|lie|come|is|lies)$/.test(textOf(items.slice(b.to + 1, step - 1)));
  return between && verb && items[step]?.word.startsWith('size')
    ? { from: a, to: b, inner: true }
    : undefined;
}

function reading(scene: Scene, step: number, count: number, { from, to, sign, inner }: Way): Reading {
  const gap = to.sizes[0]!.value - from.sizes[0]!.value;
  const apart = inner ? Math.sign(gap) * (Math.abs(gap) - 1) : gap;
  // Steps said the wrong way are read as a comparison.
  const turned = sign !== undefined && apart * sign < 0;
  const right = turned || Math.abs(apart) === count;
  const claim: FormulaClaim = {
    kind: 'formula',
    construction: 'counted',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[step - 1]!, scene.items[step]!),
    system: 'usp',
    formula: right ? 'steps-as-counted' : 'steps-miscounted',
    sum: phrase(RULE.apart, { steps: Math.abs(apart) }),
  };
  return {
    claim,
    at: step - 1,
    from: Math.min(from.from, to.from, step - 1),
    to: Math.max(from.to, to.to, step),
  };
}
