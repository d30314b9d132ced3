/** "16 Fr is 5.3 mm", "27 G (0.4 mm)", "nine French, three millimetres across", "= 0.89 mm". */
import type { Item } from '../text/items.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { dimensionOf, equate, LENGTHS, longEnough, SHORTEST } from './equate.ts';
import type { Construction, Reading } from './model.ts';
import { beyond, crossedLength, second } from './set-apart.ts';
import { inSum } from './sums.ts';

const EQUAL = new Set(
  `= ≈ ~ → ➜ => ⇒ is are was equals equal measures measure measured means mean comes come works work makes make gives i.e. i.e namely which that stands stand
  being be reads becomes carries bears fall falls lie lies sit sits run runs range ranges read called call corresponds converts translates`.split(
    /\s+/,
  ),
);
const IDLE = new Set(
  `a an the of about around roughly approximately approx nearly almost just under over hair shade touch some or in at on to out by exactly
  outer outside external diameter od o.d width across wide thick thickness size calibre caliber needle cannula catheter tube sheath
  wire guidewire suture thread strand drain line foley one feeding dialysis our its it they so only little bit more less than not quite itself hub
  nominal inner internal inside bore lumen id i.d radius circumference girth full whole good clean single diameter's roughly measuring micrometer caliper calipers units metric millimetres mm
  actually still really then for french gauge number size's silk nylon gut polypropylene converted stated labelled label tray old hypodermic iv tall fr g
  corresponding range band interval limits spec pharmacopeia pharmacopoeia runs sits lies starts printed stated total overall works put comes you get
  in'mm outwardly full exact fully whole plain single own smooth strong
  close iso sold designated labelled labeled listed known would as
  good fully full-blown bare likewise marked should anywhere somewhere between will must can from then you
  say's chest pleural dialysis feeding introducer spinal suction three-way has have least packet packets box boxes
  usp ep same what says talking looking speaking
  and = ≈ ( , : — – - ~ + as near enough well say shaft barrel`.split(/\s+/),
);
const MEASURE_AFTER = new Set(
  'across wide thick outer outside od o.d diameter round inner inside bore id i.d'.split(' '),
);
const LENGTH_AFTER = new Set(
  'long length deep apart above below from of away high tall proximal distal margin margins bite bites'.split(
    ' ',
  ),
);

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
export function readPairs(scene: Scene): Reading[] {
  const all = groups(scene.items);
  return all.slice(0, -1).flatMap((left, i) => readPair(scene, left, all[i + 1]!));
}

/** "USP 2-0 and metric 3 are the same size", "a 9 Fr and a 3 mm catheter are the same thing". */
function sameThing(scene: Scene, all: readonly Group[]): Reading[] {
  const [left, right] = all;
  if (all.length !== 2 || !left || !right || left.mentions.length > 1 || right.mentions.length > 1) return [];
  const [a, b] = [left.sizes[0]!.system, right.sizes[0]!.system];
  if (a === b || !(LENGTHS.has(a) || LENGTHS.has(b) || crossed(a, b)) || isLength(left, right)) return [];
  const between = scene.items.slice(left.to + 1, right.from).map((item) => item.word);
  const after = scene.items.slice(right.to + 1, right.to + 9).map((item) => item.word);
  const same = after.findIndex((word) => word === 'same' || word === 'identical' || word === 'equal');
  const joined = between.length <= 5 && (between.includes('and') || between.includes(','));
  const equated =
    same >= 0 &&
    after.slice(0, same).some((word) => word === 'is' || word === 'are') &&
    !after.includes('not');
  const rest = after.slice(same + 1);
  if (
    !joined ||
    !equated ||
    rest.includes('as') ||
    rest.some((word) => /^(?:length|colour|color|price|way|box|shelf|drawer)$/.test(word))
  )
    return [];
  return equate(scene, left, right);
}

/** A term at the head of a line, its definition on the next: what stands before it belongs to another term. */
function opensTerm({ passage, items }: Scene, right: Group): boolean {
  const { start } = items[right.from]!;
  const before = passage.text.slice(Math.max(0, start - 4), start);
  return /\n\s*$/.test(before) && /^[^\n]{0,60}\n\s{0,4}:\s/.test(passage.text.slice(start, start + 80));
}

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
    !(
      ties(items, between, left, right) ||
      gapped(items, left, right, between) ||
      made(items, left, between) ||
      thought(items, left, between) ||
      metered(items, left, between) ||
      introducedBy(items, right, between)
    ) ||
    opensTerm(scene, right) ||
    (passed(items, left) && !bothLengths(left, right) && !between.some((item) => item.word === 'talking')) ||
    second(items, left) ||
    beyond(items, left, between) ||
    inSum(items, left.from) ||
    inSum(items, right.from)
  )
    return [];
  const outer = MEASURE_AFTER.has(items[right.to + 1]?.word ?? '');
  if ((isLength(left, right) && !outer) || (lengthAfter(items, right) && !bothLengths(left, right)))
    return [];
  if (unlikely(items, left, right) || tooWide(items, left, right) || otherMeasure(items, left, right))
    return [];
  if (oneOf(items, left) || attributive(items, right)) return [];
  if (crossedLength(items, left) || crossedLength(items, right)) return [];
  return equate(scene, left, right);
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
    /^(?:an?|the)$/.test(items[right.from - 1]?.word ?? '') &&
    next?.kind === 'word' &&
    HOLES.test(next.word)
  );
};
const HOLES =
  /^(?:holes?|openings?|tracts?|tracks?|strictures?|wounds?|incisions?|cuts?|veins?|vessels?|arter(?:y|ies)|ducts?|urethras?|defects?|ports?|gaps?|tunnels?|punctures?|stab|slits?|stones?|meatus)$/;

const bothLengths = (left: Group, right: Group) =>
  LENGTHS.has(left.sizes[0]!.system) && LENGTHS.has(right.sizes[0]!.system);

/** "12 Fr is 4 mm, and 15 Fr 5 mm": the verb is left out the second time. */
const gapped = (items: readonly Item[], left: Group, right: Group, between: readonly Item[]) =>
  // "0.018 is 0.46 mm, 0.035 is 0.89 mm": the first has its verb, and so has the second.
  !EQUAL.has(items[left.from - 1]?.word ?? '') &&
  !EQUAL.has(items[right.to + 1]?.word ?? '') &&
  // "16 G 1.6 mm, 18 G 1.2 mm": a measure right after a size is that size's, not the next one's.
  items[left.from - 1]?.kind !== 'size' &&
  between.length <= 3 &&
  between.every((item) => ['at', ',', 'to', 'about', 'roughly', 'around'].includes(item.word)) &&
  between.length > 0 &&
  items.slice(Math.max(0, left.from - 8), left.from).some((item) => item.kind === 'size') &&
  items.slice(0, left.from).some((item) => EQUAL.has(item.word)) &&
  items.slice(Math.max(0, left.from - 3), left.from).some((item) => item.word === ',' || item.word === 'and');

/** "it makes a 16 Fr about 5.3 mm": the verb stands before both. */
const made = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  between.length > 0 &&
  between.length <= 2 &&
  between.every((item) => ['about', 'roughly', 'around', 'some', 'nearly'].includes(item.word)) &&
  items
    .slice(Math.max(0, left.from - 3), left.from)
    .some((item) => /^(?:makes?|gives?|puts?|has|have)$/.test(item.word));

/** "think of a 30 Fr as 10 mm". */
const thought = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  between.some((item) => item.word === 'as') &&
  between.every((item) => idle(item) || phrase(item)) &&
  items
    .slice(Math.max(0, left.from - 4), left.from)
    .some((item) => /^(?:think|picture|remember|know|read)$/.test(item.word));

/** "32 French is the big one, eleven millimetres across": what it is, and then its width. */
const introducedBy = (items: readonly Item[], right: Group, between: readonly Item[]) =>
  between.length >= 4 &&
  between.length <= 8 &&
  between.at(-1)!.word === ',' &&
  (between.at(-2)!.deviceNoun === true || between.at(-2)!.word === 'size') &&
  /^(?:is|was)$/.test(between[0]!.word) &&
  /^(?:the|our|an?|my)$/.test(between[1]!.word) &&
  between.slice(2, -1).every((item) => item.kind === 'word' && !NEVER.has(item.word)) &&
  MEASURE_AFTER.has(items[right.to + 1]?.word ?? '');

/** "Put a caliper on an 18 Fr and it should read 6 mm." */
const metered = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  items.slice(0, left.from).some((item) => TOOLS.test(item.word)) &&
  !items.slice(0, left.from).some((item) => HOLES.test(item.word)) &&
  READS.test(between.map((item) => item.word).join(' '));
const TOOLS = /^(?:cal+ipers?|micrometers?|micrometres?|rulers?|gauges?|measure|measured|measuring)$/;
const READS =
  /^(?:\S+ ){0,2}?(?:,|and|,? ?then)? ?(?:you|we|it|they) (?:should |will |would |'ll |can )?(?:reads?|finds?|gets?|sees?|measures?|shows?)(?: (?:about|roughly|only|just|nearly|around))?$/;

const passed = (items: readonly Item[], left: Group) =>
  items.slice(Math.max(0, left.from - 2), left.from).some((item) => PASSED.has(item.word));

/** "2 mm wider than a 14 Fr", "the difference is 2 mm", "15 mm round": not how thick it is. */
const otherMeasure = (items: readonly Item[], left: Group, right: Group) =>
  items[right.to + 1]?.magnitude?.degree === 'comparative' ||
  /^(?:round|more|less)$/.test(items[right.to + 1]?.word ?? '') ||
  items
    .slice(Math.max(0, left.from - 6), right.to + 5)
    .some(
      (item) =>
        OTHER_MEASURES.has(item.word) ||
        (WAY_ROUND.test(item.word) && dimensionOf(items, left, right) !== 'around'),
    );
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
  return gauge && wide && !items.some((item) => MEASURE_AFTER.has(item.word) || DIAMETERS.has(item.word));
}

/** USP and metric numbers, or gauge and French, may also be set equal. */
function crossed(a: string, b: string): boolean {
  const sutures = new Set(['usp', 'ep-metric']);
  return (
    (sutures.has(a) && sutures.has(b)) ||
    (new Set([a, b]).has('french') && new Set([a, b]).has('needle-gauge'))
  );
}

/** Nothing but a noun phrase before the equating word, and nothing but idle words after it. */
function ties(items: readonly Item[], between: readonly Item[], left: Group, right: Group): boolean {
  const words = between.map((item) => item.word);
  if (words.some((word) => NEVER.has(word))) return false;
  if (words.includes('to') && !words.some((w) => TO_VERBS.has(w))) return false;
  const verb = words.findIndex(
    (word, i) =>
      (EQUAL.has(word) && word !== 'that' && word !== 'which') ||
      possesses(LENGTHS.has(right.sizes[0]!.system) ? [...words, ...after3(items, right)] : words, i),
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
  if (left.sizes[0]!.system === 'wire-inch' && words.every((word) => word === ',' || word === 'or'))
    return true;
  // "metric 3, at least 0.03 mm": the number is a least diameter.
  if (left.sizes[0]!.system === 'ep-metric' && right.mentions[0]?.bound === 'at-least')
    return words.length <= 3;
  const apposition = words.includes(',') || words.includes('—') || words.includes('or');
  return apposition && items.slice(right.to + 1, right.to + 4).some((item) => MEASURE_AFTER.has(item.word));
}

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

const idle = (item: Item) =>
  IDLE.has(item.word) || EQUAL.has(item.word) || item.deviceNoun === true || item.colour !== undefined;
const phrase = (item: Item) => item.kind === 'word' && !item.magnitude && !NEVER.has(item.word);
/** "3.5 Fr tomcat catheter": a word that says which kind of device. */
const kind = (item: Item, next: Item | undefined) =>
  phrase(item) && /^\p{L}{3,}$/u.test(item.word) && !PREPOSITIONS.has(item.word) && next?.deviceNoun === true;
const NEVER = new Set([
  'and',
  'than',
  'but',
  'not',
  'while',
  'whereas',
  'if',
  'when',
  ';',
  'unlike',
  'without',
  'needs',
  'takes',
  'goes',
  'accepts',
  'fits',
]);
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

/** "And a fifteen French? Fifteen millimetres": a short answer to a question about one size. */
function answered(scene: Scene, all: readonly Group[]): Reading[] {
  const previous = scene.before.at(-1) ?? scene.context.at(-1);
  const answer = all[0];
  const resumed = /^(?:that|which) (?:is|makes|comes|means)\b/.test(
    scene.items
      .slice(0, 2)
      .map((item) => item.word)
      .join(' '),
  );
  if ((previous?.close !== '?' && !resumed) || !previous || !answer || answer.mentions.length > 1) return [];
  if (
    answer.from > (introduced(scene.items, answer) ? 6 : 3) ||
    !LENGTHS.has(answer.sizes[0]!.system) ||
    answer.mentions[0]!.length
  )
    return [];
  const asked = groups(previous.items);
  const left = asked[0];
  if (
    asked.length !== 1 ||
    !left ||
    left.mentions.length > 1 ||
    left.sizes[0]!.system === answer.sizes[0]!.system
  )
    return [];
  if (scene.option || /^(?:\(|[a-f]|i)$/.test(scene.items[0]?.word ?? '')) return [];
  if (previous.items.length > 14 || CHOICE.test(previous.items.map((item) => item.word).join(' '))) return [];
  // The question's items are not this sentence's: the claim stands on the answer alone.
  const shift = previous.items.length;
  const joined = { ...scene, items: [...previous.items, ...scene.items] };
  return equate(joined, left, { ...answer, from: answer.from + shift, to: answer.to + shift }).map(
    (reading) => ({ ...reading, at: answer.from, from: answer.from, to: answer.to }),
  );
}
/** "Bex: Narrower, about 1.5 mm.": a speaker and a comparing word in front. */
const introduced = (items: readonly Item[], answer: Group): boolean =>
  items
    .slice(0, answer.from)
    .every(
      (item, i) =>
        item.kind === 'punctuation' ||
        item.magnitude?.degree === 'comparative' ||
        (i === 0 && item.capital) ||
        /^(?:about|roughly|around|nearly|only|just|that|is|it's|a)$/.test(item.word),
    );

const CHOICE = /\b(?:how (?:long|deep|far)|length|depth|which|who|when)\b/;
