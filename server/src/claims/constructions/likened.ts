/**
 * Sizes of two scales said to be one, in any words: "a 14 G cannula and a 14 Fr tube have one width", "3 Fr is about 1 mm,
 * so it comes close to a 14 gauge needle". Only the two may be named; a measure that belongs to one of them is passed over.
 */
import { outerDiameter } from '../../sizes/index.ts';
import type { ComparisonClaim, EquivalenceClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { distinct, type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';

export const likened: Construction = {
  id: 'likened',
  needs: () => [
    { sizes: 2, holds: ['mixed'], words: WORDS },
    { sizes: 2, holds: ['mixed', 'measured'], words: ['the', 'this', 'that'] },
  ],
  read(scene) {
    const { items, sentence } = scene;
    if (sentence.close === '?' || items.length > LONGEST) return [];
    const pair = twoScales(items);
    if (!pair) return [];
    const [left, right] = pair;
    const between = joined(items, left.to + 1, right.from);
    const after = joined(items, right.to + 1, right.to + REACH);
    const said = BETWEEN.exec(between) ?? AFTER.exec(after);
    const range = [Math.max(0, left.from - 8), right.to + REACH] as const;
    return said && !stopped(items, ...range) ? [reading(scene, left, right)] : byNoun(scene, left, right);
  },
};

const WORDS =
  'match matches equals equal equally equivalent close near same one identical alike corresponds correspond interchangeable plug fill'.split(
    ' ',
  );
const LONGEST = 50;
const REACH = 18;

const SCALES: ReadonlySet<string> = new Set(['needle-gauge', 'french', 'usp', 'wire-inch']);

/** The two sizes of two scales; nothing where a third stands beside them. */
function twoScales(items: readonly Item[]): readonly [Group, Group] | undefined {
  const all = distinct(groups(items));
  const own = all.filter((g) => SCALES.has(g.sizes[0]!.system));
  const [left, right, ...more] = own;
  if (!left || !right || more.length > 0 || left.sizes[0]!.system === right.sizes[0]!.system)
    return undefined;
  const plain = own.every(
    ({ sizes, mentions }) => sizes.length === 1 && !mentions[0]!.bound && !mentions[0]!.length,
  );
  const measures = all.filter((g) => !SCALES.has(g.sizes[0]!.system));
  return plain && measures.every((g) => g.sizes.length === 1 && ofOne(g, left, right))
    ? [left, right]
    : undefined;
}

/** "A 3 Fr is about 1 mm": the same thing in millimetres. */
const ofOne = (measure: Group, left: Group, right: Group): boolean =>
  measure.sizes[0]!.system === 'millimetre' &&
  [left, right].some((g) => {
    const truth = outerDiameter(g.sizes[0]!, {});
    const value = measure.sizes[0]!.value;
    return truth !== undefined && value > truth.min * 0.9 && value < truth.max * 1.1;
  });

const WIDTH = 'width|size|thickness|diameter|calib(?:re|er)|outside|hole|measure|girth|thing';
const BETWEEN = new RegExp(
  `\\b(?:match(?:es)?|equals?|(?:comes?|is|are|lies?) (?:\\w+ )?(?:close|near|equal|equivalent) to|corresponds? to|the (?:same|equal) (?:${WIDTH}) as|is the same as)\\b`,
);
const AFTER = new RegExp(
  `\\b(?:(?:the same|one|equal|identical|a single)(?: and the same)? (?:${WIDTH})\\b|measures? (?:exactly )?the same\\b|(?:come|are|turn) (?:out )?(?:exactly |just |of )?(?:alike|identical|equal|interchangeable)(?= [,.;!)]|$| (?:on|in|by|when|under|if)\\b)|equally (?:wide|thick|broad|big|large|thin|fine)\\b|come out the same\\b)`,
);

/** Denied, compared, supposed; or other things that two may share. */
const stopped = (items: readonly Item[], from: number, to: number): boolean =>
  items
    .slice(from, to)
    .some(
      ({ word }, i) =>
        STOPS.test(word) &&
        !(word === 'than' && /^(?:twice|double|half)$/.test(items[from + i + 1]?.word ?? '')),
    );
const STOPS =
  /^(?:not|never|no|nor|nowhere|far|anything|neither|cannot|\w+n't|nothing|than|if|unless|but|although|whereas|while|instead|rather|different|differ|differs|nearly|almost|hardly|confuse\w*|mistak\w*|mix|wrong|think|believe|assume|unlike|nearer|closer|sheath|sheaths|introducer|introducers|dilator|connector|adapter|through|into|inside|length|long|drawer|shelf|box|colour|color|hub|price|or|number|numbers)$/;

function reading(scene: Scene, left: Group, right: Group): Reading {
  const { items } = scene;
  const claim: EquivalenceClaim = {
    kind: 'equivalence',
    construction: 'likened',
    span: sentenceSpan(scene),
    focus: spanOf(scene, items[right.from]!, items[right.to]!),
    left: operand(scene, left),
    right: operand(scene, right),
    approximate: true,
    axis: 'outer',
  };
  return { claim, at: right.from, from: left.from, to: right.to };
}

/** What is sized on each scale, where it is named without its size. */
const NOUNS: readonly (readonly [RegExp, string])[] = [
  [/^(?:needle|cannula|iv|drip)$/, 'needle-gauge'],
  [/^(?:catheter|tube|drain|foley|stent)$/, 'french'],
  [/^(?:thread|suture|stitch)$/, 'usp'],
  [/^(?:wire|guidewire)$/, 'wire-inch'],
];

/** "Of the two, 7 Fr and 16 G, the cannula is the fatter", "…: the cannula is more than twice as wide". */
function byNoun(scene: Scene, left: Group, right: Group): Reading[] {
  const { items } = scene;
  const at = items.findIndex(
    (item, i) => i > right.to && isThing(item) && /^(?:the|this|that)$/.test(items[i - 1]!.word),
  );
  const system = NOUNS.find(([noun]) => noun.test(items[at]?.word ?? ''))?.[1];
  const own = [left, right].filter((g) => g.sizes[0]!.system === system);
  if (own.length !== 1 || !/^(?:is|has|looks|will|being)$/.test(items[at + 1]?.word ?? '')) return [];
  const word = items.findIndex((item, i) => i > at + 1 && item.magnitude !== undefined);
  const { axis, sign, degree } = items[word]?.magnitude ?? {};
  if (word < 0 || word - at > 8 || axis !== 'outer' || sign === undefined) return [];
  const between = joined(items, at + 1, word);
  if (stopped(items, Math.max(0, left.from - 8), right.to) || stopped(items, at, items.length)) return [];
  const compares = degree !== 'plain' || /\b(?:twice|times|half again) as$/.test(between);
  const ends = items.slice(word + 1).every(({ word: rest }) => ENDS.test(rest));
  if (!compares || !ends) return [];
  const other = own[0] === left ? right : left;
  const claim: ComparisonClaim = {
    kind: 'comparison',
    construction: 'likened',
    span: sentenceSpan(scene),
    focus: spanOf(scene, items[word]!),
    left: operand(scene, own[0]!),
    right: operand(scene, other),
    axis: 'outer',
    relation: sign === 1 ? 'more' : 'less',
  };
  return [{ claim, at: word, from: Math.min(left.from, right.from), to: word }];
}
const isThing = ({ word }: Item): boolean => NOUNS.some(([noun]) => noun.test(word));
const ENDS = /^(?:[.!,;)"”]|diameter|one|of|the|two|them|these|thing|outside|by|far|too)$/;
