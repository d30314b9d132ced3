/** "A is thinner than B", "faster through A than through B", "compared with B, A is wide". */
import type { Relation } from '../model.ts';
import { sentencesBefore, single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { compares, type Measured, measuredWords } from '../text/magnitudes.ts';
import {
  distinct,
  type Group,
  groups,
  operand,
  type Scene,
  sameSizes,
  sameSystem,
  sentenceSpan,
  spanOf,
  together,
} from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import type { Construction, Reading } from './model.ts';
import { asNumbers, bounded, excepted, GENERAL, imagined, otherwiseMeant } from './than-otherwise.ts';

const THAN = new Set(['than']);
const REACH_BACK = 10;
const REACH_ON = 6;
const REACH_ON_TO_BRACKET = 11;
const ONE_MEANT =
  /^(?:the|my|our|your|his|her) (?:old |last |other |first |usual |previous )?(?:one|size)\b[^,;:]* \((?: (?:an?|the))?$/;

export const than: Construction = {
  id: 'than',
  needs: () => [
    { holds: ['compared'], words: THAN },
    { sizes: 2, words: THAN },
  ],
  read(scene) {
    const all = groups(scene.items);
    const measured = measuredWords(scene.items);
    return scene.items.flatMap((item, at) => (THAN.has(item.word) ? readThan(scene, at, all, measured) : []));
  },
};

/** "The flow through a 14 G is greater than through a 20 G": the noun in front says what is measured. */
function bySubject(scene: Scene, word: Measured | undefined): Measured | undefined {
  const item = word && scene.items[word.at]!;
  if (!word || !item || word.attributive || item.magnitude?.settled || !GENERAL.has(item.word)) return word;
  const start = clauseStart(scene.items, word.at);
  const noun = scene.items.slice(start, Math.min(start + 4, word.at)).find((item) => item.axisNoun)?.axisNoun;
  // "Resistance to gas is greater in an 8.0": the noun heads its clause, and the verb stands before the word.
  const sized =
    scene.items.slice(start, word.at).some((item) => item.kind === 'size') ||
    /^(?:is|are|was|were)$/.test(scene.items[word.at - 1]?.word ?? '');
  if (!noun || noun.axis === 'number' || !sized) return word;
  const grows =
    scene.items[word.at]!.word === 'lower' ? -1 : scene.items[word.at]!.word === 'higher' ? 1 : word.sign;
  return { ...word, axis: noun.axis, sign: (grows * noun.sign) as 1 | -1, idiom: false };
}

/** "A 16 Fr is less than an 18 Fr": where the numbers rise with the size, nothing else can be meant. */
function byNumber(items: readonly Item[], at: number, all: readonly Group[]): Measured | undefined {
  const sign = items[at - 1]?.word === 'less' ? -1 : items[at - 1]?.word === 'more' ? 1 : undefined;
  const left = all.find((g) => g.to === at - 3);
  if (!sign || !left || !/^(?:is|was)$/.test(items[at - 2]?.word ?? '')) return undefined;
  const right = all.find((g) => g.from > at);
  return left.sizes[0]!.system === 'french' && right && items[right.to + 1]?.word !== 'in'
    ? compares(at - 1, 'outer', sign)
    : undefined;
}

function readThan(scene: Scene, at: number, all: readonly Group[], measured: readonly Measured[]): Reading[] {
  const word = bySubject(scene, nearestBefore(measured, at)) ?? byNumber(scene.items, at, all);
  const right = rightOf(scene.items, at, all) ?? earlierItem(scene, at) ?? collective(scene, at, all);
  if (!word || !right || word.axis === 'other' || word.idiom) return [];
  if (otherwiseMeant(scene.items, word) || figureLeft(scene.items, word)) return [];
  const left = leftOf(scene, word, at, right, all);
  if (left && together(scene.items, left) !== together(scene.items, right)) return [];
  if (
    left &&
    (bounded(scene.items, left, right) ||
      asNumbers(scene.items, word, left, right) ||
      excepted(scene.items, left))
  )
    return [];
  // "None of our 16s, 18s and 22s is quicker than the 22": the set holds it.
  if (
    left &&
    left.sizes.length > 2 &&
    right.sizes.every((size) =>
      left.sizes.some((own) => own.system === size.system && own.value === size.value),
    )
  )
    return [];
  if (left && imagined(scene.items, left, word, right)) return [];
  if (!left || (sameSizes(left, right) && left.mentions[0]!.text === right.mentions[0]!.text)) return [];
  const answered =
    scene.after[0] !== undefined &&
    groups(scene.after[0].items).some((g) => g.mentions[0] === left.mentions[0]);
  return [{ ...comparison(scene, 'than', left, right, word), ...(answered ? { answered } : {}) }];
}

/** "1 is heavier than 0, 2 heavier than 1": said of a figure right before the word, which is read as no size. */
const figureLeft = (items: readonly Item[], { at }: Measured): boolean =>
  items[at - 1]?.kind === 'word' && /^\d{1,2}$/.test(items[at - 1]!.word);

function nearestBefore(measured: readonly Measured[], at: number): Measured | undefined {
  const word = measured
    .filter((m) => m.at < at && m.at >= at - REACH_BACK && m.degree === 'comparative')
    .at(-1);
  return word;
}

function rightOf(items: readonly Item[], at: number, all: readonly Group[]): Group | undefined {
  const group = all.find((g) => g.from > at && g.from <= at + REACH_ON_TO_BRACKET);
  const far = group && group.from > at + REACH_ON;
  // "than the one we used last week (a 32 Fr)": what is meant is told in brackets.
  if (!group || (far && !ONE_MEANT.test(joined(items, at + 1, group.from)))) return undefined;
  const between = items.slice(at + 1, group.from);
  // "than the routine catheter (14 Fr)": the size in brackets is that of the noun before it.
  const opened = /^(?:an?|the)$/.test(between.at(-1)?.word ?? '') ? between.slice(0, -1) : between;
  const bracket = opened.at(-1)?.word === '(' && opened.length > 1 ? opened.slice(0, -1) : between;
  return bracket.some((item) => BREAKS.has(item.word)) ? undefined : group;
}

/** "a narrower tube than the newborn one": in a list, the size of the item before. */
function earlierItem(scene: Scene, at: number): Group | undefined {
  if (!scene.passage.list || scene.passage.list.index === 0) return undefined;
  const words = scene.items.slice(at + 1, at + 5).map((item) => item.word);
  const refers =
    words[0] === 'the' &&
    (words.includes('one') ||
      words.includes('last') ||
      words.includes('above') ||
      words.includes('previous'));
  const previous = scene.context.at(-1);
  const found = refers && previous ? groups(previous.items) : [];
  return found.length === 1 ? found[0] : undefined;
}

/** "16 Fr is narrower than either": the two or more named before. */
function collective(scene: Scene, at: number, all: readonly Group[]): Group | undefined {
  const text = scene.items
    .slice(at + 1, at + 4)
    .map((item) => item.word)
    .join(' ');
  const count = MEANT.find(([words]) => words.test(text))?.[1];
  const own = all.filter((g) => g.to < at);
  const left = own.at(-1);
  if (count === undefined || own.length !== 1 || !left) return undefined;
  const previous = sentencesBefore(scene)[0];
  const found = previous ? spokenOf(previous, left) : [];
  const values = found.reduce((sum, g) => sum + g.sizes.length, 0);
  if (count === 1 ? found.length !== 1 : values < 2 || (count > 1 && found.length !== count))
    return undefined;
  return {
    from: at + 1,
    to: at + 1,
    mentions: found.flatMap((g) => g.mentions),
    sizes: found.flatMap((g) => g.sizes),
  };
}

/** "than either", "than any of these", "than that": how many they stand for; 0 for several. */
const MEANT: readonly (readonly [RegExp, number])[] = [
  [/^(?:either|both)\b/, 2],
  [/^(?:(?:any|all) of (?:them|these|those)|the others|all the others|these|those)\b(?! of\b)/, 0],
  [/^(?:that|this|it)(?: [.,;:)!]|$| (?:and|but|so|one|size)\b)/, 1],
];

/** The sizes of a sentence that another may be set against: of its system, and not its own. */
const spokenOf = (sentence: Sentence, left: Group): Group[] =>
  distinct(groups(sentence.items).flatMap(single)).filter((g) => sameSystem(g, left) && !sameSizes(g, left));

const BREAKS = new Set([
  ';',
  ':',
  '.',
  ',',
  '(',
  ')',
  'but',
  'because',
  'which',
  'so',
  'if',
  'when',
  'its',
  'usual',
]);
const CLAUSE = new Set([
  ';',
  ':',
  '.',
  '!',
  '?',
  'but',
  'while',
  'whereas',
  'because',
  'since',
  'so',
  'though',
  'although',
  '(',
]);
const NOTHING = /^(?:(?:[.,;:]|and|or|but) )?(?:nothing|none)$/;
const PRONOUNS = new Set(
  "its it it's that that's this they they're which these those whose one both either".split(' '),
);

function leftOf(
  scene: Scene,
  word: Measured,
  at: number,
  right: Group,
  all: readonly Group[],
): Group | undefined {
  const inside = all.filter((g) => g.from > word.at && g.to < at);
  // "a thinner one than 3-0": "one" is no size there.
  if (inside.length === 1 && inside[0]!.mentions[0]!.text.toLowerCase() !== 'one') return inside[0];
  // "We stock 0 and 2-0. Nothing thicker than 0 and nothing thinner than …": said of what there is none of.
  const clause = clauseStart(scene.items, word.at);
  if (NOTHING.test(joined(scene.items, word.at - 2, word.at))) return undefined;
  const own = all.filter((g) => g.from >= clause && g.to < word.at);
  const alike = own.filter((g) => g.sizes[0]!.system === right.sizes[0]!.system);
  const labelled =
    own.length === 0 && scene.items[clause - 1]?.word === ':'
      ? all.filter((g) => g.to < clause && !sameSizes(g, right)).at(-1)
      : undefined;
  const again = secondOf(scene.items, word, alike);
  if (again) return again;
  const before = labelled ?? (alike.length === 1 ? alike[0] : own.at(-1));
  if (before) return before;
  const example = exampleAfter(scene, word, right, all);
  if (example) return example;
  const inverted = all.find((g) => g.from > right.to && g.from <= right.to + 4);
  const ahead = foretold(scene.items, right, word, all);
  if (ahead) return ahead;
  const opener = scene.items
    .slice(clause, word.at)
    .every((item) => item.kind !== 'word' || OPENERS.has(item.word));
  if (inverted && opener && linked(scene.items, right.to, inverted.from)) return inverted;
  if (opener && scene.items[clause - 1]?.word === 'so') {
    // "6-0 has six zeros, so much finer than 3-0": the subject is left out.
    const spoken = all.filter((g) => g.to < clause && !sameSizes(g, right));
    return spoken.length === 1 ? spoken[0] : undefined;
  }
  if (opener && clause === 0 && word.at === 0) return fragmentBefore(scene);
  return opener ? undefined : antecedent(scene, clause, word.at, all);
}

/** "Being wider than the 18 G, the 16 G is …", "since it is finer than 4-0, we save the 6-0 for …": the subject comes later. */
function foretold(
  items: readonly Item[],
  right: Group,
  word: Measured,
  all: readonly Group[],
): Group | undefined {
  const opening = items
    .slice(0, word.at)
    .map((item) => item.word)
    .join(' ');
  const being =
    /^(?:(?:being|although|though|while|whilst)(?: (?:much|far))?|(?:being )?(?:only |just )?(?:slightly|a bit|a little|a touch|a shade|marginally))$/.test(
      opening,
    );
  const it =
    /^(?:since|because|as|although|though) it(?: is|'s)(?: (?:much|far|slightly|a bit|a little))?$|^(?:since|because|as) it's$/.test(
      opening,
    );
  const comma = items.findIndex((item, i) => i > right.to && item.word === ',');
  if ((!being && !it) || comma < 0 || comma - right.to > 3) return undefined;
  const later = all.filter((g) => g.from > comma);
  const [only] = later;
  return later.length === 1 && only?.sizes.length === 1 && only.from - comma <= (being ? 3 : 8)
    ? only
    : undefined;
}

/** "A 24 G is thinner than an 18 G and thinner than a 20 G": one thing set against two. */
function secondOf(items: readonly Item[], word: Measured, own: readonly Group[]): Group | undefined {
  const last = own.at(-1);
  const free = own.filter((g) => !items.slice(Math.max(0, g.from - 4), g.from).some(isThan));
  if (!last || own.length < 2 || free.length !== 1 || free[0] === last) return undefined;
  const between = items.slice(last.to + 1, word.at);
  return between.length > 0 && between.every((item) => JOINS.test(item.word) || item.deviceNoun)
    ? free[0]
    : undefined;
}
const isThan = (item: Item) => item.word === 'than';
const JOINS = /^(?:and|but|also|even|much|far|yet|still|,|or|both|slightly|a|bit)$/;

const OPENERS = new Set(['even', 'much', 'slightly', 'and', 'a', 'still', 'far', 'just']);
const LINKS = new Set(['is', 'are', 'comes', 'come', 'sits', ',', 'the', 'a', 'an', 'our', 'only']);
const linked = (items: readonly Item[], from: number, to: number) =>
  items.slice(from + 1, to).every((item) => LINKS.has(item.word));

export function clauseStart(items: readonly Item[], at: number): number {
  for (let i = at - 1; i >= 0; i--)
    if (CLAUSE.has(items[i]!.word) && items[i - 1]?.word !== 'anything') return i + 1;
  return 0;
}

const VAGUE = new Set(['something', 'anything', 'one', 'size', 'some']);
const SAYS = new Set([
  'say',
  'like',
  'e.g',
  'example',
  'as',
  'take',
  'use',
  'try',
  'ask',
  'go',
  'pick',
  'choose',
  'open',
  'grab',
  'get',
  'for',
  'is',
  'with',
]);

/** "something stouter", or "for a thicker suture": a thing wished for, not one named before. */
function wanted({ items }: Scene, word: Measured): boolean {
  const before = items.slice(Math.max(0, word.at - 4), word.at).map((item) => item.word);
  if (before.slice(-2).some((one) => VAGUE.has(one))) return true;
  const thing = items.slice(word.to + 1, word.to + 3).some((item) => item.deviceNoun);
  return (
    thing &&
    before.some((one) => WISHES.has(one)) &&
    !items.slice(0, word.at).some((item) => item.kind === 'size')
  );
}
const WISHES = new Set(['for', 'want', 'need', 'wants', 'needs', 'wanting', 'needing']);

/** "something stouter than a 3-0, say a 4-0", "bigger than a 16 Fr? Ask for a 14 Fr": the example offered. */
function exampleAfter(scene: Scene, word: Measured, right: Group, all: readonly Group[]): Group | undefined {
  if (!wanted(scene, word)) return undefined;
  const here = all.find((g) => g.from > right.to && g.from <= right.to + 5);
  const said = scene.items.slice(right.to + 1, here?.from);
  const apposed =
    /^, (?:an?|the)$/.test(said.map((item) => item.word).join(' ')) &&
    /^[.;,)]$/.test(scene.items[(here?.to ?? 0) + 1]?.word ?? '.');
  if (
    here &&
    (apposed || said.some((item) => SAYS.has(item.word))) &&
    !said.some((item) => item.word === 'than')
  )
    return here;
  const next = scene.sentence.close === '?' ? scene.after[0] : undefined;
  const answer = next ? groups(next.items)[0] : undefined;
  return answer && answer.from <= 5 && next!.items.slice(0, answer.from).some((item) => SAYS.has(item.word))
    ? answer
    : undefined;
}

/** "3-0 silk. Finer than 4-0.": the size stands alone before it. */
function fragmentBefore(scene: Scene): Group | undefined {
  const previous = scene.before.at(-1);
  const [only, ...more] = previous && previous.close !== '?' ? groups(previous.items) : [];
  const bare = previous?.items.every(
    (item) => item.kind !== 'word' || item.deviceNoun || /^(?:an?|the)$/.test(item.word),
  );
  return only && more.length === 0 && bare ? only : undefined;
}

/** The one size a pronoun before the comparing word can mean. */
function antecedent(scene: Scene, clause: number, at: number, all: readonly Group[]): Group | undefined {
  const pronoun = scene.items.slice(clause, at).some((item) => PRONOUNS.has(item.word));
  if (!pronoun) return undefined;
  const earlier = all.filter((g) => g.to < clause);
  // Of two sizes before, "its" is not the one it is measured against.
  const right = all.find((g) => g.from > at);
  const others = earlier.filter((g) => !right || !sameSizes(g, right));
  if (earlier.length > 0) return others.at(-1);
  // "…, which is heavier" belongs to its own sentence.
  if (!scene.items.slice(clause, at).some((_, i) => standsAlone(scene.items, clause + i))) return undefined;
  const [previous, further] = sentencesBefore(scene);
  // "Good. It is thicker than …": a word of praise between.
  const spoken = previous && further && passing(previous.items) ? further : previous;
  const found = spoken ? groups(spoken.items) : [];
  return found.length === 1 ? found[0] : undefined;
}

/** "Good.", "DANA: It'll do.": two words at the most, a speaker's name aside. */
function passing(items: readonly Item[]): boolean {
  const from = items[1]?.word === ':' ? 2 : 0;
  return (
    items.slice(from).filter((item) => item.kind === 'word').length <= 2 &&
    !items.some((item) => item.kind === 'size')
  );
}

/** "this is", "it runs": a pronoun by itself, not "of this weight". */
const standsAlone = (items: readonly Item[], i: number): boolean => {
  const { word } = items[i]!;
  if (!PRONOUNS.has(word) || word === 'which') return false;
  if (word === 'one') return /^(?:the|that|this|which)$/.test(items[i - 1]?.word ?? '');
  return !/^(?:this|that|these|those)$/.test(word) || ALONE.test(items[i + 1]?.word ?? '');
};
const ALONE =
  /^(?:is|are|was|were|one|ones|will|would|has|runs|gives|leaves|makes|flows|holds|looks|will|should|must|in|of)$/;

export function comparison(
  scene: Scene,
  construction: string,
  left: Group,
  right: Group,
  word: Measured,
  relation: Relation = word.sign === 1 ? 'more' : 'less',
): Reading {
  const item = scene.items[word.at]!;
  const span = spanOf(scene, item);
  return {
    claim: {
      kind: 'comparison',
      construction,
      span: sentenceSpan(scene),
      focus: span,
      left: operand(scene, left),
      right: operand(scene, right),
      axis: word.axis,
      relation,
      word: span,
    },
    at: word.at,
    from: Math.min(word.at, left.from),
    to: word.to,
  };
}

/** A comparison that is made with each size of the other side by itself. */
export const withEach = (reading: Reading): Reading =>
  reading.claim.kind === 'comparison' ? { ...reading, claim: { ...reading.claim, each: true } } : reading;

/** A comparison without a word that a fix could swap. */
export function wordless(reading: Reading): Reading {
  const { claim } = reading;
  if (claim.kind !== 'comparison') return reading;
  const { word: _, ...rest } = claim;
  return { ...reading, claim: rest };
}
