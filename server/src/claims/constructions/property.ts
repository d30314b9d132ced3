/** "silk is a monofilament", "braided polydioxanone", "nonabsorbable sutures: silk, nylon". */

import type { PropertyClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { materialsIn } from '../text/materials.ts';
import { qualityAt, STRANDS } from '../text/qualities.ts';
import type { Scene } from '../text/scene.ts';
import { FATE_WORDS, fateIn } from '../words/fates.ts';
import { PROPERTY_WORDS, type PropertyRow } from '../words/properties.ts';
import { materialClaim } from './material-claim.ts';
import type { Construction, Reading } from './model.ts';
import { toldOf } from './told-of.ts';

const CONTRAST = new Set([
  'but',
  'while',
  'whereas',
  'unlike',
  'than',
  ';',
  'over',
  'instead',
  'versus',
  'vs',
  'not',
  'against',
  '.',
  'or',
]);

export const property: Construction = {
  id: 'property',
  needs: () => [{ words: PROPERTY_WORDS.keys(), like: STRANDS }, { like: FATE_WORDS }],
  leaning: true,
  read(scene) {
    const materials = materialsIn(scene.items);
    const fate = fated(scene, materials);
    if (materials.length === 0) return fate.length > 0 ? fate : toldOf(scene);
    const said = scene.items.flatMap((_, at) => {
      const row = qualityAt(scene.items, at);
      if (!row || oneOfTwo(scene.items, at)) return [];
      return subjects(scene.items, at, materials).map((m) => reading(scene, at, m, row));
    });
    const all = joined(scene.items);
    const bars = (one: Reading): boolean =>
      one.claim.kind === 'property' && (BARS[one.claim.property]?.test(all) ?? false);
    const read = [...said, ...fate.filter((one) => !said.some((other) => sayTheSame(one, other)))];
    return [...read, ...toldOf(scene).filter((one) => !read.some((other) => ofOneKind(one, other)))].filter(
      (one) => !bars(one),
    );
  },
};

/** What makes another statement of it: the finest braids are single strands; so slow as to count for nothing; not to be waited for. */
const BARS: Readonly<Record<string, RegExp>> = {
  'structure:monofilament': /\b(?:eyes?|ophthalm\w+|cornea\w*|finest|microsurg\w+)\b/,
  'absorbable:yes':
    /\b(?:so|too) slowly (?:that|to|as)\b|\b(?:don't|not|never|use|point|stop) (?:in )?(?:wait|waiting|expect|expecting|hope|hoping)\b|\bdissol\w+ in no(?:thing)?\b|\bgone (?:(?:from|off) (?:the |our )?(?:shel\w+|drawers?|trolleys?|stock|list|market|shop|store|catalogue)|, (?:cut|taken|pulled|snipped))\b|\bnot (?:so that|because) (?:it|they)\b/,
};

/** "Silk is (absorbable / nonabsorbable)": one of two to choose from. */
const oneOfTwo = (items: readonly Item[], at: number): boolean => {
  const [before, after] = [items[at - 1]?.word, items[at + 1]?.word];
  return (before === '(' && after === '/') || (before === '/' && after === ')');
};

/** "is absorbable, so nobody has to take it out": said twice, found once. */
const sayTheSame = ({ claim: a }: Reading, { claim: b }: Reading): boolean =>
  a.kind === 'property' && b.kind === 'property' && a.subject === b.subject && a.property === b.property;

/** Two properties of one kind: the tighter reading stands. */
const ofOneKind = ({ claim: a }: Reading, { claim: b }: Reading): boolean =>
  a.kind === 'property' && b.kind === 'property' && a.property.split(':')[0] === b.property.split(':')[0];

interface Named {
  readonly at: number;
  readonly to: number;
  readonly id: string;
}

/** Materials the property is said of: an adjective before one, or a verb or apposition after it. */
function subjects(items: readonly Item[], at: number, materials: readonly Named[]): Named[] {
  const attributive = materials.find(
    (m) =>
      m.at > at &&
      m.at <= at + 5 &&
      quiet(items, at, m.at, ADJECTIVE_GAP) &&
      !compares(items, at, m, materials),
  );
  if (attributive) return [attributive];
  // "Of silk and nylon the only monofilament is …": said of the one that follows.
  if (/^(?:only|sole)$/.test(items[at - 1]?.word ?? '')) return [];
  const before = materials.filter((m) => m.to < at && !leftOut(items, m));
  const again = cataphor(items, at, materials) ?? pronounPredicate(items, at, materials);
  if (again) return [again];
  const nearest = before.at(-1);
  if (!nearest || materials.some((m) => m.at > nearest.to && m.at < at)) return [];
  const between = withoutAside(items.slice(nearest.to + 1, at));
  if (likens(between)) return [];
  // "Polyglactin, though it handles like silk, is absorbed": what another is likened to.
  if (before.length > 1 && items[nearest.at - 1]?.word === 'like') return [];
  // "…, such as polyglactin, and nonabsorbable ones": another class begins.
  if (between.length === 2 && between[0]!.word === ',' && between[1]!.word === 'and') return [];
  if (opensOwn(items, at)) return [];
  if (between.length > 9 || between.some((item, i) => CONTRAST.has(item.word) && !denies(between, i)))
    return [];
  return between.some((item) => BE.has(item.word)) &&
    between.every(
      (item) =>
        PREDICATE_GAP.has(item.word) ||
        PROPERTY_WORDS.has(item.word) ||
        item.kind === 'size' ||
        item.word === 'not',
    )
    ? [nearest]
    : [];
}

/** "The braid is silk, the monofilament is nylon", "5-0 gut is metric 1.5, the synthetic 5-0 is metric 1": a subject of its own. */
function opensOwn(items: readonly Item[], at: number): boolean {
  if (!/^(?:,|;|and|but|while|whereas)$/.test(items[at - 2]?.word ?? '')) return false;
  const next = items[at + 1];
  if (/^(?:is|are)$/.test(next?.word ?? '')) return items[at - 1]!.word === 'the';
  const named = next?.kind === 'size' || /^ones?$/.test(next?.word ?? '');
  return named && /^(?:the|an?)$/.test(items[at - 1]!.word) && !/^[,.;)]?$/.test(items[at + 2]?.word ?? '');
}

/** "is as thick as a 3-0 synthetic": the word tells what it is measured against. */
const likens = (between: readonly Item[]): boolean =>
  between.some(
    ({ word }, i) => word === 'as' && between.slice(i + 2, i + 4).some((later) => later.word === 'as'),
  );

/** "Silk, when you look at it closely, is …": how it is looked at, between two commas, changes nothing. */
function withoutAside(between: readonly Item[]): readonly Item[] {
  if (between[0]?.word !== ',' || !ASIDE.test(`${between[1]?.word} ${between[2]?.word}`)) return between;
  const close = between.findIndex((item, i) => i > 2 && item.word === ',');
  const aside = between.slice(1, close);
  return close < 0 || close > 11 || aside.some((item) => CONTRAST.has(item.word))
    ? between
    : between.slice(close + 1);
}
const ASIDE =
  /^(?:when|as) (?:you|we)$|^(?:under|seen|viewed|held|looked) (?:an?|the|your|under|at|up|to|through|from|in)$|^(?:as|like) (?:you|everyone|everybody)$/;

/** "Unlike silk", "all but silk", "every suture except gut": what is said is said of the others. */
const leftOut = (items: readonly Item[], { at }: Named): boolean =>
  /^(?:unlike|not|over|than|versus|against|except|excepting|excluding|but|save|besides)$/.test(
    items[at - 1]?.word ?? '',
  ) ||
  /^(?:other than|apart from|except for|save for|but for|aside from)$/.test(
    `${items[at - 2]?.word} ${items[at - 1]?.word}`,
  );

/** "Because it is monofilament, polypropylene …": the pronoun before stands for the one material after the comma. */
function cataphor(items: readonly Item[], at: number, materials: readonly Named[]): Named | undefined {
  const opens =
    /^(?:because|since|as|being)$/.test(items[0]?.word ?? '') &&
    items.slice(1, at).some((item) => item.word === 'it' || item.word === 'is');
  const comma = items.findIndex((item, i) => i > at && item.word === ',');
  const only = materials.length === 1 ? materials[0] : undefined;
  return opens && comma > 0 && only && only.at > comma && only.at - comma <= 3 ? only : undefined;
}

/** "Silk slides so well because it is one smooth monofilament." */
function pronounPredicate(
  items: readonly Item[],
  at: number,
  materials: readonly Named[],
): Named | undefined {
  if (new Set(materials.map((m) => m.id)).size !== 1 || materials[0]!.to > at) return undefined;
  const pronoun = items
    .slice(0, at)
    .findLastIndex(
      (item) => item.word === 'it' || item.word === 'they' || item.word === "it's" || item.word === "they're",
    );
  if (pronoun <= materials[0]!.to || at - pronoun > 6) return undefined;
  const between = items.slice(pronoun + 1, at);
  const is = items[pronoun]!.word.includes("'") || between.some((item) => BE.has(item.word));
  return is && between.every((item) => PREDICATE_GAP.has(item.word) || PROPERTY_WORDS.has(item.word))
    ? materials[0]
    : undefined;
}

/** "is not an absorbable": the negation is the predicate's own. */
const denies = (between: readonly Item[], i: number) =>
  between[i]!.word === 'not' &&
  BE.has(between[i - 1]?.word ?? '') &&
  between.slice(i + 1).every((item) => /^(?:an?|the|really|at|all)$/.test(item.word));

const quiet = (items: readonly Item[], from: number, to: number, allowed: ReadonlySet<string>) =>
  items
    .slice(from + 1, to)
    .every((item) => allowed.has(item.word) || PROPERTY_WORDS.has(item.word) || item.kind === 'size');

/** "Polypropylene is a braid like silk": with a material before it, "like" compares and gives no example. */
const compares = (items: readonly Item[], at: number, m: Named, materials: readonly Named[]) =>
  items.slice(at + 1, m.at).some((item) => item.word === 'like') && materials.some((other) => other.to < at);

const BE = new Set([
  'is',
  'are',
  'being',
  ',',
  '(',
  ':',
  '—',
  '–',
  "'s",
  'as',
  'gets',
  'stays',
  'remains',
  'counts',
  'comes',
  'belongs',
  'belong',
]);
const ADJECTIVE_GAP = new Set([
  '(',
  'surgical',
  'coated',
  'dyed',
  'undyed',
  'suture',
  'sutures',
  'thread',
  'plain',
  'threads',
  'such',
  'as',
  'like',
  'materials',
  'material',
  'strands',
  'stitches',
]);
const PREDICATE_GAP = new Set(
  `made spun from manufactured fibre fiber fibres fibers substance is are being , ( : — – as a an the by way suture sutures material thread strand one of our its also counts fully completely truly
  classed it gets stays remains usually always which that and slowly quickly rapidly soft strong smooth most coated long-lasting common both only what we call
  solid thick just simply tiny fine finer thin bundle many several long continuous of single in both it's they're one's body skin inert soon comes tissue source from to among belongs belong under over weeks within months days`.split(
    /\s+/,
  ),
);

function reading(scene: Scene, at: number, m: Named, row: PropertyRow): Reading {
  const made = materialClaim(scene, 'property', m.id, `${row.property}:${row.value}`, at);
  const form = row.property === 'structure' ? formOf(scene.items, m, at) : undefined;
  const claim = form ? { ...made, form } : made;
  return {
    claim: at < m.at ? { ...claim, presupposed: true } : claim,
    at,
    from: Math.min(m.at, at),
    to: Math.max(m.to, at),
  };
}

/** "nylon monofilament": which kind of it is named, by another word than the one at `at`. */
function formOf(items: readonly Item[], m: Named, at: number): PropertyClaim['form'] {
  const near = [m.at - 1, m.at, m.to + 1].find(
    (i) => i !== at && items[i] && PROPERTY_WORDS.get(items[i]!.word)?.property === 'structure',
  );
  return near === undefined
    ? undefined
    : (PROPERTY_WORDS.get(items[near]!.word)!.value as PropertyClaim['form']);
}

/** "Polyester is gone in a fortnight", "it dissolves by itself": said of the one material the sentence can mean. */
function fated(scene: Scene, materials: readonly Named[]): Reading[] {
  const ids = new Set(materials.map((m) => m.id));
  const text = scene.items.map((item) => (item.kind === 'size' ? '#' : item.word)).join(' ');
  const fate = FATE_WORDS.test(text) ? fateIn(text) : undefined;
  if (!fate || conditional(scene.items, itemAt(scene.items, fate.at))) return [];
  const at = itemAt(scene.items, fate.at);
  if (another(scene.items, at, materials)) return [];
  if (scene.items.slice(0, at).some((item) => item.word === 'neither' || item.word === 'nor')) return [];
  const close = materials.findLast(
    (m) => m.to < at && at - m.to <= 3 && !LIKENED.test(scene.items[m.at - 1]?.word ?? ''),
  );
  // Silk is classed nonabsorbable and yet goes over the years.
  if (ids.has('silk') && scene.items.slice(at, at + 7).some((item) => /^years?$/.test(item.word))) return [];
  const subject = ids.size === 1 ? materials[0] : ids.size === 0 ? pronounSubject(scene) : close;
  // "not everything that begins so is absorbed, polyester is not".
  if (
    scene.items.some(
      ({ word }, i) =>
        word === 'not' && /^(?:everything|all|every|each)$/.test(scene.items[i + 1]?.word ?? ''),
    )
  )
    return [];
  if (!subject || (materials.length > 0 && subject.at > at + 4 && !named(scene.items, at, subject.at)))
    return [];
  const [property, value] = fate.property.split(':') as ['absorbable', string];
  const row: PropertyRow = { word: '', property, value };
  const made = reading(scene, at, materials.length > 0 ? subject : { ...subject, at, to: at }, row);
  // The words of a fate carry their own negation: stance looks no further back than their start.
  return [{ ...made, from: at, own: true }];
}

/** "there is nothing to remove: it's nylon": the thread is told behind it. */
const named = (items: readonly Item[], at: number, subject: number): boolean =>
  subject - at <= 12 &&
  /[:;,–—] (?:it's|it is|this is|that's|that is|they're|they are|these are)(?: an?| only| just)?$/.test(
    joined(items, at, subject),
  );

/** "the swelling goes away on its own": the verb has a subject of its own, and it is no thread. */
function another(items: readonly Item[], at: number, materials: readonly Named[]): boolean {
  const before = items[at - 1];
  if (!BARE_VERB.test(items[at]!.word) || !before || before.kind !== 'word') return false;
  const named = materials.find((m) => m.to === at - 1);
  return named ? beside(items, named.at) : !THREAD_BEFORE.test(before.word);
}
/** "the swelling under the nylon": the thread only tells where. */
const beside = (items: readonly Item[], at: number): boolean =>
  [items[at - 1], items[at - 2]].some((item) =>
    /^(?:under|beneath|beside|around|over|near|behind|above|below)$/.test(item?.word ?? ''),
  );
const BARE_VERB = /^(?:melts?|dissolves?|drops?|falls?|goes?|go|disappears?|stays?|remains?|lasts?|must)$/;
const THREAD_BEFORE =
  /^(?:stitch|stitches|sutures?|threads?|will|it|they|which|that|and|but|to|just|simply|slowly|then|soon|also|eventually|always|usually|all|both|one|ones|or|still|never|not|would|does|do|skin|this|these|so|since|because|as|only)$/;

/** "handles almost like silk but is absorbed": what another is likened to. */
const LIKENED = /^(?:like|unlike|as|than|to|with|from|not|over|against|versus|vs|beside)$/;

/** "if", "when" in the clause of the fate, or after it. */
function conditional(items: readonly Item[], at: number): boolean {
  const start = items
    .slice(0, at)
    .findLastIndex((item) => item.word === ',' || item.word === ';' || item.word === 'because');
  return items
    .slice(start + 1)
    .some((item) => ['if', 'unless', 'when', 'once', 'should'].includes(item.word));
}

function itemAt(items: readonly Item[], offset: number): number {
  let length = 0;
  for (let i = 0; i < items.length; i++) {
    const word = items[i]!.kind === 'size' ? '#' : items[i]!.word;
    if (length + word.length > offset) return i;
    length += word.length + 1;
  }
  return items.length - 1;
}

const RESUMES = new Set('it they this that stitches suture sutures thread threads'.split(' '));

/** "It stays in until removed." after a sentence about one material. */
function pronounSubject(scene: Scene): Named | undefined {
  const opens = scene.items.slice(0, 4).some((item) => RESUMES.has(item.word));
  const before = scene.before.at(-1);
  const named = opens && before ? materialsIn(before.items) : [];
  return new Set(named.map((m) => m.id)).size === 1 ? named[0] : undefined;
}
