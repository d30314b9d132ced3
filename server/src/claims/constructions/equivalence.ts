/** "16 Fr is 5.3 mm", "27 G (0.4 mm)", "nine French, three millimetres across", "= 0.89 mm". */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { withCrosses } from './crossed.ts';
import { EQUAL, HOLES, idle, LENGTH_AFTER, MEASURE_AFTER, NEVER, phrase } from './equal-words.ts';
import { dimensionOf, equate, LENGTHS, longEnough, SHORTEST } from './equate.ts';
import type { Construction, Reading } from './model.ts';
import { answered } from './replied.ts';
import {
  beyond,
  concluded,
  crossedLength,
  heldAgainst,
  lumenOfIt,
  ofAnother,
  opensTerm,
  paired,
  saidOfAnother,
  second,
} from './set-apart.ts';
import { inSum } from './sums.ts';
import {
  aside,
  endorsed,
  introducedBy,
  made,
  metered,
  printed,
  read,
  reckoned,
  resumed,
  soldAs,
  thought,
} from './told.ts';

export const equivalence: Construction = {
  id: 'equivalence',
  needs: () => [
    { holds: ['mixed'] },
    { holds: ['length', 'answers'] },
    { holds: ['length'], words: ['that', 'which'] },
  ],
  read(scene) {
    const all = groups(scene.items);
    const found = readPairs(scene);
    return found.length > 0 ? found : [...sameThing(scene, all), ...answered(scene, all)];
  },
};

/** Each size and the next, where words tie the two. */
export const readPairs = remembered((scene: Scene): Reading[] => {
  const all = withCrosses(scene.items, groups(scene.items));
  return all.slice(0, -1).flatMap((left, i) => readPair(scene, left, all[i + 1]!));
});

/**
 * "USP 2-0 and metric 3 are the same size", "a 9 Fr and a 3 mm catheter are the same thing", "18 G and 18 Fr are as wide as
 * each other", "laid beside a 15 G needle the 15 Fr tube is the same thickness".
 */
function sameThing(scene: Scene, all: readonly Group[]): Reading[] {
  const [left, right] = all;
  if (all.length !== 2 || !left || !right || left.mentions.length > 1 || right.mentions.length > 1) return [];
  const [a, b] = [left.sizes[0]!.system, right.sizes[0]!.system];
  if (a === b || !(LENGTHS.has(a) || LENGTHS.has(b) || crossed(a, b)) || isLength(left, right)) return [];
  const between = scene.items.slice(left.to + 1, right.from).map((item) => item.word);
  const after = scene.items.slice(right.to + 1, right.to + 10).map((item) => item.word);
  const same = after.findIndex(
    (word, i) =>
      /^(?:same|identical|equal|alike)$/.test(word) || (word === 'each' && after[i + 1] === 'other'),
  );
  const together =
    between.length <= 5 && (between.includes('and') || between.includes(',') || laid(scene, left));
  const equated =
    same >= 0 &&
    (after.slice(0, same).some((word) => /^(?:is|are|stand|mean|name|describe|denote|say)$/.test(word)) ||
      COME_OUT.test(after.slice(0, same).join(' '))) &&
    !after.some((word) => /^(?:not|nowhere|never|hardly|isn't|aren't|don't|neither)$/.test(word));
  const rest = after.slice(same + 1);
  if (
    !together ||
    !equated ||
    (after[same] === 'each' &&
      !/^as (?:wide|thick|big|large|broad) as$/.test(after.slice(Math.max(0, same - 3), same).join(' '))) ||
    rest.slice(0, 2).includes('as') ||
    rest.some((word) => /^(?:length|colour|color|price|way|box|shelf|drawer)$/.test(word))
  )
    return [];
  return equate(scene, left, right);
}

/** "come out the same size", "work out the same width". */
const COME_OUT = /\b(?:come|comes|work|works|end|ends|turn|turns) (?:out|up)(?: (?:at|as|to be|being))? the$/;

/** "Laid beside a 15 G needle": one is held against the other. */
const laid = ({ items }: Scene, left: Group): boolean =>
  /(?:^|, )(?:laid|held|put|placed|set|side by side|next|measured)? ?(?:beside|against|next to|alongside|with)(?: an?| the| our)?$/.test(
    joined(items, 0, left.from),
  );

function readPair(scene: Scene, left: Group, right: Group): Reading[] {
  const { items } = scene;
  const [a, b] = [left.sizes[0]!, right.sizes[0]!];
  if (
    a.system === b.system ||
    !(LENGTHS.has(a.system) || LENGTHS.has(b.system) || crossed(a.system, b.system))
  )
    return [];
  if (left.mentions.length > 1 || (right.mentions.length > 1 && !spanned(items, right))) return [];
  const between = items.slice(left.to + 1, right.from);
  if (
    between.length > 11 ||
    countedAnew(scene, left, right) ||
    paired(items, left, right) ||
    !(
      ties(items, between, left, right) ||
      gapped(items, left, right, between) ||
      bareGap(items, left, right, between) ||
      made(items, left, between) ||
      thought(items, left, between) ||
      metered(items, left, between) ||
      read(items, left, right, between) ||
      aside(items, right, between) ||
      introducedBy(items, right, between) ||
      resumed(items, right, between) ||
      reckoned(right, between) ||
      soldAs(left, right, between) ||
      printed(items, left, between) ||
      renamed(between) ||
      endorsed(between)
    ) ||
    opensTerm(scene, right) ||
    meantFor(scene, left, right) ||
    ofWire(scene, left, right) ||
    ofFile(scene, left) ||
    (passed(items, left) && !bothLengths(left, right) && !between.some((item) => item.word === 'talking')) ||
    second(items, left) ||
    beyond(items, left, between) ||
    ofAnother(left, between) ||
    inSum(items, left.from) ||
    inSum(items, right.from)
  )
    return [];
  const outer = MEASURE_AFTER.has(items[right.to + 1]?.word ?? '');
  if ((isLength(left, right) && !outer) || (lengthAfter(items, right) && !bothLengths(left, right)))
    return [];
  if (unlikely(items, left, right) || tooWide(items, left, right) || otherMeasure(items, left, right))
    return [];
  if (
    concluded(items, left, right, between) ||
    heldAgainst(items, left, right, between) ||
    between.some(({ word }) => /^(?:though|although|whereas)$/.test(word)) ||
    clauseOfItsOwn(items, right, between) ||
    saidOfAnother(items, left, between)
  )
    return [];
  if (oneOf(items, left) || attributive(items, right) || lumenOfIt(items, left, right)) return [];
  if (crossedLength(items, left) || crossedLength(items, right)) return [];
  return equate(scene, left, right);
}

/** "the 14 G was a needle, the 12 Fr a line": the verb is said once, and the second size has a thing of its own. */
const clauseOfItsOwn = (items: readonly Item[], right: Group, between: readonly Item[]): boolean =>
  between.at(-1)?.word === 'the' &&
  between.at(-2)?.word === ',' &&
  between.some((item) => item.deviceNoun) &&
  /^an?$/.test(items[right.to + 1]?.word ?? '');

/** "1 → 12 Fr", and on the next line "2 → 7 mm": the answer to another question. */
export function countedAnew({ passage, items }: Scene, left: Group, right: Group): boolean {
  const [start, end] = [items[left.to]!.end, items[right.from]!.start];
  return (
    end - start < 60 &&
    /\n\W{0,4}(?:\d{1,2}|[A-Za-z]\d?)\W{0,3}\s?(?:[.):=→–—]|->)/.test(passage.text.slice(start, end))
  );
}

/** "between 0.35 and 0.4 mm": two values that are the ends of one range. */
const spanned = (items: readonly Item[], g: Group) =>
  g.mentions.length === 2 && g.sizes.length === 2 && items[g.from - 1]?.word === 'between';

/** "the smaller of 14 G and 12 Fr is …": the last of several is not the subject. */
const oneOf = (items: readonly Item[], left: Group) =>
  /^(?:and|or)$/.test(items[left.from - 1]?.word ?? '') &&
  items[left.from - 2]?.kind === 'size' &&
  items
    .slice(Math.max(0, left.from - 5), left.from - 2)
    .some((item) => /^(?:of|between|among)$/.test(item.word));

/** "makes a 9 mm hole": the length belongs to the noun after it. */
const attributive = (items: readonly Item[], right: Group): boolean => {
  const next = items[right.to + 1];
  return (
    LENGTHS.has(right.sizes[0]!.system) &&
    /^(?:an?|the|gives?|makes?)$/.test(items[right.from - 1]?.word ?? '') &&
    next?.kind === 'word' &&
    HOLES.test(next.word)
  );
};

const bothLengths = (left: Group, right: Group) =>
  LENGTHS.has(left.sizes[0]!.system) && LENGTHS.has(right.sizes[0]!.system);

/** "12 Fr is 4 mm, and 15 Fr 5 mm": the verb is left out the second time. */
const gapped = (items: readonly Item[], left: Group, right: Group, between: readonly Item[]) =>
  // "0.018 is 0.46 mm, 0.035 is 0.89 mm": the first has its verb, and so has the second.
  !EQUAL.has(items[left.from - 1]?.word ?? '') &&
  !EQUAL.has(items[right.to + 1]?.word ?? '') &&
  // "16 G 1.6 mm, 18 G 1.2 mm": a measure right after a size is that size's, not the next one's.
  items[left.from - (/^(?:an?|about)$/.test(items[left.from - 1]?.word ?? '') ? 2 : 1)]?.kind !== 'size' &&
  between.length <= 3 &&
  between.every((item) => ['at', ',', 'to', 'about', 'roughly', 'around'].includes(item.word)) &&
  between.length > 0 &&
  items.slice(Math.max(0, left.from - 8), left.from).some((item) => item.kind === 'size') &&
  items.slice(0, left.from).some((item) => EQUAL.has(item.word)) &&
  items.slice(Math.max(0, left.from - 3), left.from).some((item) => item.word === ',' || item.word === 'and');

/** "Metric 2 is another way of saying 3-0." */
const renamed = (between: readonly Item[]): boolean =>
  /^(?:(?:silk|nylon|poly\S+|gut|catgut|threads?|sutures?) )?(?:is|are) (?:just |only |simply )?another (?:way (?:of (?:saying|writing)|to (?:say|write))|name for|word for)(?: an?| the| size)?$/.test(
    textOf(between),
  );

/** "8 Fr is 2.7 mm across and a 12 Fr 4 mm." */
const bareGap = (items: readonly Item[], left: Group, right: Group, between: readonly Item[]) =>
  between.length === 0 &&
  /^(?:an?|the)$/.test(items[left.from - 1]?.word ?? '') &&
  items[left.from - 2]?.word === 'and' &&
  /^(?:[.,;!)]|across|wide|thick)$/.test(items[right.to + 1]?.word ?? '.') &&
  items[left.from - 4]?.kind === 'size' &&
  MEASURE_AFTER.has(items[left.from - 3]?.word ?? '') &&
  items.slice(0, left.from).some((item) => EQUAL.has(item.word));

/** "The needle for the 0.018 wire is 21 G": the wire only says which needle is meant. */
const meantFor = ({ items }: Scene, left: Group, right: Group): boolean =>
  left.sizes[0]!.system === 'wire-inch' &&
  right.sizes[0]!.system === 'needle-gauge' &&
  /\b(?:needle|cannula|introducer) (?:for|to take|that takes|with|behind|before|of) (?:an?|the|our)$/.test(
    joined(items, left.from - 6, left.from),
  );

/** "1.0 mm (18 ga) figure of eight": a gauge among wires for bone is counted on a wire's scale. */
const ofWire = ({ items }: Scene, left: Group, right: Group): boolean =>
  [left, right].some((g) => g.sizes[0]!.system === 'needle-gauge' && g.mentions[0]!.device === undefined) &&
  items.some((item) => /^(?:k-wires?|cerclage|kirschner|tension)$/.test(item.word)) &&
  !items.some((item) => /^(?:needles?|cannulae?|cannulas)$/.test(item.word));

/** "A file 25 is 0.25 mm": the number of a file for root canals. */
const ofFile = ({ items }: Scene, left: Group): boolean =>
  /^(?:files?|reamers?)$/.test(items[left.from - 1]?.word ?? '');

const passed = (items: readonly Item[], left: Group) =>
  items.slice(Math.max(0, left.from - 2), left.from).some((item) => PASSED.has(item.word));

/** "2 mm wider than a 14 Fr", "the difference is 2 mm", "15 mm round": not how thick it is. */
const otherMeasure = (items: readonly Item[], left: Group, right: Group) =>
  items[right.to + 1]?.magnitude?.degree === 'comparative' ||
  /^(?:round|more|less)$/.test(items[right.to + 1]?.word ?? '') ||
  A_PART.test(joined(items, left.to + 1, right.from)) ||
  items
    .slice(Math.max(0, left.from - 6), right.to + 5)
    .some(
      (item) =>
        OTHER_MEASURES.has(item.word) ||
        (WAY_ROUND.test(item.word) && dimensionOf(items, left, right) !== 'around'),
    );
/** "for the 6.0 tube half the bore is 3 mm". */
const A_PART = /\b(?:half|a third|two thirds|a quarter) (?:of )?(?:the|its|that|this)\b/;
const OTHER_MEASURES = new Set('difference differ differs differing gap step steps'.split(' '));
const WAY_ROUND = /^(?:circumferences?|girth|perimeter)$/;

/** Centimetres beside a size are a length along it unless the text says it is measured across. */
function unlikely(items: readonly Item[], left: Group, right: Group): boolean {
  const measured = [left, right].find((g) => /\bcm\b|cent/i.test(g.mentions[0]!.text));
  return (
    measured !== undefined && !bothLengths(left, right) && !items.some((item) => MEASURE_AFTER.has(item.word))
  );
}

/** "a 24 G is 19 mm": wider than any needle, so a length, unless the text says it is measured across. */
const WIDEST = 6;
function tooWide(items: readonly Item[], left: Group, right: Group): boolean {
  const sizes = [...left.sizes, ...right.sizes];
  const gauge = sizes.some(({ system }) => system === 'needle-gauge');
  const wide = sizes.some(({ system, value }) => system === 'millimetre' && value >= WIDEST);
  // A bare number beside it is no gauge at all.
  const bare = [left, right].some((g) => g.mentions[0]!.notation === 'bare');
  return (
    gauge && wide && (bare || !items.some((item) => MEASURE_AFTER.has(item.word) || DIAMETERS.has(item.word)))
  );
}

/** USP and metric numbers, or gauge and French, may also be set equal. */
function crossed(a: string, b: string): boolean {
  const sutures = new Set(['usp', 'ep-metric']);
  return (
    (sutures.has(a) && sutures.has(b)) ||
    (new Set([a, b]).has('french') && (new Set([a, b]).has('needle-gauge') || new Set([a, b]).has('hegar')))
  );
}

/** Nothing but a noun phrase before the equating word, and nothing but idle words after it. */
function ties(items: readonly Item[], between: readonly Item[], left: Group, right: Group): boolean {
  const words = between.map((item, i) => (goesBy(between, i) ? 'is' : item.word));
  if (words.some((word) => NEVER.has(word))) return false;
  if (words.includes('to') && !words.some((w) => TO_VERBS.has(w))) return false;
  // "lies by the 14 G": where it is.
  if (/^(?:lies?|sits?) by(?: |$)/.test(words.join(' '))) return false;
  const owned = LENGTHS.has(right.sizes[0]!.system) ? [...words, ...after3(items, right)] : words;
  const verb = words.findIndex(
    (word, i) => (EQUAL.has(word) && word !== 'that' && word !== 'which') || possesses(owned, i),
  );
  const after = between.slice(
    words[verb]?.startsWith('stand') && words[verb + 1] === 'for' ? verb + 2 : verb + 1,
  );
  if (words.includes('what') && !after3(items, right).some((word) => WHAT_IT.test(word))) return false;
  const before = verb < 0 ? [] : between.slice(0, verb);
  if (
    !after.every((item, i) => idle(item) || kind(item, after[i + 1]) || closed(item, after[i + 1])) ||
    (verb >= 0 && !before.every((item) => idle(item) || phrase(item)))
  )
    return false;
  if (verb >= 0)
    return (
      !before.some((item) => PREPOSITIONS.has(item.word)) || MEASURED.has(words[verb]!) || before.length <= 5
    );
  // "- 18 G – 1.2 mm": in a list a dash sets the value beside its size.
  if (words.length === 1 && DASHES.has(words[0]!) && left.from <= 1) return true;
  const bracket = words[0] === '(' || (words.length <= 4 && words.includes('('));
  if (bracket || words.includes(':')) return true;
  if (
    left.sizes[0]!.system === 'wire-inch' &&
    !(items[right.to + 1]?.word === ',' && items[right.to + 2]?.kind === 'size') &&
    // "0.035 in, 12 Fr pigtail": what follows a comma in French is another thing.
    words.every((word) => (word === ',' && right.sizes[0]!.system !== 'french') || word === 'or')
  )
    return true;
  // "metric 3, at least 0.03 mm": the number is a least diameter.
  if (left.sizes[0]!.system === 'ep-metric' && right.mentions[0]?.bound === 'at-least')
    return words.length <= 3;
  // "8 to 14 Fr, roughly 2.7 to 4.7 mm.": a range for a range.
  if (words[0] === ',' && rangeForRange(items, left, right))
    return words.slice(1).every((word) => ABOUT.test(word));
  const apposition = words.includes(',') || words.includes('—') || words.includes('or');
  return apposition && items.slice(right.to + 1, right.to + 4).some((item) => MEASURE_AFTER.has(item.word));
}

const rangeForRange = (items: readonly Item[], left: Group, right: Group): boolean =>
  left.sizes.length === 2 &&
  right.sizes.length === 2 &&
  left.sizes[0]!.system === 'french' &&
  right.sizes[0]!.system === 'millimetre' &&
  /^[.;,)]?$/.test(items[right.to + 1]?.word ?? '');
const ABOUT = /^(?:about|roughly|around|approximately|near|enough|nearly|some|that|is|or|so|i\.e)$/;

/** "USP 3-0 goes by metric 2". */
const goesBy = (between: readonly Item[], i: number): boolean =>
  /^goes?$/.test(between[i]!.word) && /^(?:by|as|under)$/.test(between[i + 1]?.word ?? '');

/** "1.2 mm is what a 22 G measures", not "8 mm is what a 12 Fr needs". */
const WHAT_IT = /^(?:measures?|is|comes|works|has|reads)$/;

const after3 = (items: readonly Item[], right: Group) =>
  items.slice(right.to + 1, right.to + 4).map((item) => item.word);

/** "has an outside diameter of". */
const possesses = (words: readonly string[], i: number) =>
  (words[i] === 'has' || words[i] === 'have' || words[i] === 'with') &&
  words.slice(i + 1).some((word) => DIAMETERS.has(word));
const DIAMETERS = new Set([
  'diameter',
  'radius',
  'circumference',
  'girth',
  'od',
  'width',
  'bore',
  'lumen',
  'o.d',
  'i.d',
  'id',
  'thickness',
  'outside',
]);

const DASHES = new Set(['–', '—', '-', '…']);

/** "is narrower, about 2 mm": a comparing word that its comma closes. */
const closed = (item: Item, next: Item | undefined) =>
  item.magnitude?.degree === 'comparative' && next?.word === ',';

/** "3.5 Fr tomcat catheter": a word that says which kind of device. */
const kind = (item: Item, next: Item | undefined) =>
  phrase(item) && /^\p{L}{3,}$/u.test(item.word) && !PREPOSITIONS.has(item.word) && next?.deviceNoun === true;
const TO_VERBS = new Set([
  'close',
  'comes',
  'corresponds',
  'converts',
  'translates',
  'equal',
  'works',
  'come',
  'equivalent',
  'out',
  'runs',
  'amounts',
  'boils',
  'gets',
  'adds',
]);
const PREPOSITIONS = new Set(['through', 'into', 'over', 'down', 'past', 'via']);
const MEASURED = new Set(['measures', 'measure', 'measured', 'equals', '=']);
/** "the wire through the 18 G introducer is 0.035 in": the size is not what the sentence is about. */
const PASSED = new Set([
  'fits',
  'fit',
  'takes',
  'accepts',
  'passes',
  'through',
  'into',
  'over',
  'down',
  'past',
  'via',
  'inside',
  'onto',
  'with',
]);

function isLength(left: Group, right: Group): boolean {
  const french = left.sizes[0]!.system === 'french' || right.sizes[0]!.system === 'french';
  const lengths = [...left.mentions, ...right.mentions].filter(
    (mention) => mention.length && longEnough(mention.sizes[0]!, french ? FRENCH_SHORTEST : SHORTEST),
  );
  const bothLengths = LENGTHS.has(left.sizes[0]!.system) && LENGTHS.has(right.sizes[0]!.system);
  return lengths.length > 0 && !bothLengths;
}

/** What is sized in French is centimetres long; a few millimetres beside it are its width. */
const FRENCH_SHORTEST = 21;

const lengthAfter = (items: readonly Item[], right: Group) =>
  items.slice(right.to + 1, right.to + 3).some((item) => LENGTH_AFTER.has(item.word));
