/**
 * Materials listed under a property: "absorbable sutures: polyglactin 910, polydioxanone", "braids such as silk and polyester",
 * "nonabsorbable sutures include …"; and a material alone in a list under such a heading, or in answer to such a question.
 */
import { cue, holds } from '../text/cues.ts';
import { type Item, readItems } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { materialsIn, type NamedMaterial } from '../text/materials.ts';
import type { Scene } from '../text/scene.ts';
import { becomes } from '../words/becoming.ts';
import { fateIn } from '../words/fates.ts';
import { PROPERTY_WORDS, type PropertyRow } from '../words/properties.ts';
import { materialClaim } from './material-claim.ts';
import type { Construction, Reading } from './model.ts';

const JOINS = new Set(', and or & plain the'.split(' '));

export const members: Construction = {
  id: 'members',
  needs: () => [{ holds: ['material'] }],
  read(scene) {
    const named = materialsIn(scene.items);
    if (named.length === 0 || ticked(scene)) return [];
    const classed = holds(scene.items, CLASSED);
    const said = classed ? underProperty(scene, named) : [];
    if (said.length > 0) return said;
    const filed = classed ? [...sorted(scene, named), ...shelved(scene, named)] : [];
    const told = [...underFate(scene, named), ...filed];
    if (told.length > 0) return told;
    const free = classed ? among(scene, named) : [];
    return free.length > 0 ? free : alone(scene, named);
  },
};

/** A property is named: with none, only what becomes of threads, or what stands over them, tells their class. */
const CLASSED = cue(PROPERTY_WORDS.keys());

const underProperty = (scene: Scene, named: readonly NamedMaterial[]): Reading[] =>
  scene.items.flatMap((item, at) => {
    const row = PROPERTY_WORDS.get(item.word);
    return row ? listed(scene.items, at, named).map((m) => reading(scene, m, row)) : [];
  });

/** "Among monofilaments we stock nylon and silk", "in the absorbable drawer you will find …", "two of our threads are natural: …". */
function among(scene: Scene, named: readonly NamedMaterial[]): Reading[] {
  const { items } = scene;
  const [first] = named;
  const at = items.findIndex((item) => PROPERTY_WORDS.has(item.word));
  const rows = items.filter(
    (item, i) => PROPERTY_WORDS.has(item.word) && !(i > at && remarked(items, at, i)),
  );
  if (!first || named.length < 2 || at < 0 || rows.length > 1 || first.at < at || first.at - at > 11)
    return [];
  const gap = items.slice(at + 1, first.at);
  if (
    items.some((item) => EXCEPTS.test(item.word) || LOOSELY.test(item.word)) ||
    scene.sentence.close === '?' ||
    ofTwoKinds(items, at)
  )
    return [];
  if (gap.some((item) => PARTS.test(item.word)) || !gap.some((item) => FINDS.test(item.word))) return [];
  const run: NamedMaterial[] = [];
  for (const m of named) {
    const between = run.length === 0 ? [] : items.slice(run.at(-1)!.to + 1, m.at);
    if (!between.every((item) => LISTED.has(item.word) || item.kind === 'size')) break;
    run.push(m);
  }
  const row = PROPERTY_WORDS.get(items[at]!.word)!;
  return run.length < 2 ? [] : run.map((m) => ({ ...reading(scene, m, row), own: true }));
}
/** Between a class and its members: another thing begins, or the class is only a place. */
const PARTS =
  /^(?:and|but|or|while|whereas|with|over|than|for|by|from|instead|beside|behind|next|mesh|layer|layers|is|was|used|both|if|when|because|since)$/;
const FINDS =
  /^(?:stock|keep|kept|have|find|finds|see|include|includes|including|are|:|contains?|holds?|belong|sits?|lives?|live|use|count|know|got|meet|come|lie|lies|you'll)$/;

/** "Stitches that dissolve by themselves: polyglactin, nylon": a class told by what becomes of it. */
function underFate(scene: Scene, named: readonly NamedMaterial[]): Reading[] {
  const { items } = scene;
  const colon = items.findIndex(
    (item, i) => item.word === ':' || (named[0]?.at === i + 1 && ARE.test(item.word)),
  );
  if (colon < 2 || colon > 14 || named.some((m) => m.at < colon) || named.length < 2) return [];
  const lead = items.slice(0, colon);
  if (lead.some((item) => EXCEPTS.test(item.word) && !/^(?:no|not|never)$/.test(item.word))) return [];
  if (
    !lead.some((item) =>
      /^(?:sutures?|threads?|stitch|stitches|materials?|ones|those|these)$/.test(item.word),
    )
  )
    return [];
  const fate = fateOf(lead);
  if (!fate || !items.slice(colon + 1).every((item) => listable(item, named, items))) return [];
  return named.map((m) => ({ ...reading(scene, m, fate), own: true }));
}

/** What becomes of the threads that some words speak of, when they say it once. */
function fateOf(items: readonly Item[]): PropertyRow | undefined {
  const told = fateIn(textOf(items));
  if (told) return { word: '', property: 'absorbable', value: told.property.endsWith('yes') ? 'yes' : 'no' };
  const becoming = items.flatMap((_, at) => becomes(items, at) ?? []);
  const [first] = becoming;
  return first && becoming.every(({ stays }) => stays === first.stays)
    ? { word: '', property: 'absorbable', value: first.stays ? 'no' : 'yes' }
    : undefined;
}

const ARE = /^(?:are|include|includes|count|belong)$/;

const listable = (item: Item, named: readonly NamedMaterial[], items: readonly Item[]): boolean => {
  const at = items.indexOf(item);
  return JOINS.has(item.word) || item.word === '.' || named.some((m) => m.at <= at && at <= m.to);
};

const FILES =
  /^(?:move|moves|put|puts|list|lists|listed|file|filed|place|placed|count|counts|counted|class|classed|group|grouped|sort|sorted|goes|go|belongs|belong|sits|stands)$/;
const SHELF =
  /^(?:to|into|in|under|among|with|on|the|our|a|an|column|columns|list|group|groups|heading|row|pile|side|drawer|shelf|class|of|for|headed|as|one|other)$/;

/** "Move polyglactin to the column of monofilaments", "nylon goes under braided". */
function sorted(scene: Scene, named: readonly NamedMaterial[]): Reading[] {
  const { items } = scene;
  const [only] = named;
  if (!only || named.length > 1 || items.some((item) => EXCEPTS.test(item.word) || item.word === 'if'))
    return [];
  const at = items.findIndex((item, i) => i > only.to && PROPERTY_WORDS.has(item.word));
  const next = items[at + 1];
  const between = items.slice(only.to + 1, Math.max(at, 0));
  if (at < 0 || (next && next.kind !== 'punctuation' && !SHELVED.test(next.word))) return [];
  const verb =
    FILES.test(items[only.at - 1]?.word ?? '') && only.at === 1
      ? between
      : FILES.test(between[0]?.word ?? '')
        ? between.slice(1)
        : undefined;
  if (!verb || verb.length === 0 || !verb.every((item) => SHELF.test(item.word))) return [];
  return [reading(scene, only, PROPERTY_WORDS.get(items[at]!.word)!)];
}
const SHELVED =
  /^(?:column|list|group|heading|row|pile|side|class|sutures?|threads?|ones|materials?|drawer|shelf)$/;

/** "On the absorbable shelf go polyglactin and all the nylon", "the absorbable drawer holds silk and polydioxanone". */
function shelved(scene: Scene, named: readonly NamedMaterial[]): Reading[] {
  const { items } = scene;
  if (items.some((item) => EXCEPTS.test(item.word) || LOOSELY.test(item.word))) return [];
  const at = items.findIndex(
    (item, i) => PROPERTY_WORDS.has(item.word) && KEPT_ON.test(items[i + 1]?.word ?? ''),
  );
  const first = named[0]!;
  if (at < 0 || at > 4 || first.at < at || !HOLDS.test(items[at + 2]?.word ?? '')) return [];
  const row = PROPERTY_WORDS.get(items[at]!.word)!;
  const run: NamedMaterial[] = [];
  for (const m of named) {
    const gap = items.slice((run.at(-1)?.to ?? at + 2) + 1, m.at);
    if (!outsideCommas(gap).every((item) => LISTED.has(item.word) || item.kind === 'size')) break;
    run.push(m);
  }
  return run.map((m) => ({ ...reading(scene, m, row), own: true }));
}
const KEPT_ON = /^(?:shelf|drawer|column|list|side|group|heading|pile|rack|box|tray|row)$/;
const HOLDS =
  /^(?:go|goes|belong|belongs|sit|sits|live|lives|are|is|come|comes|stand|stands|holds?|has|contains?)$/;
const LISTED = new Set([...JOINS, 'all', 'our', 'some', 'both', ':']);
/** Put there for another reason than what they are. */
const LOOSELY =
  /^(?:also|too|though|although|because|since|temporarily|wrongly|mistakenly|misfiled|if|room|space|until)$/;

/** ", from the big donation in November," between two names of a list. */
function outsideCommas(gap: readonly Item[]): readonly Item[] {
  const [first, last] = [gap.findIndex(isComma), gap.findLastIndex(isComma)];
  return last > first + 1 && last - first <= 9 ? [...gap.slice(0, first), ...gap.slice(last)] : gap;
}
const isComma = (item: Item) => item.word === ',';

/** "Monofilament: silk ✗, nylon ✓": each name has its own answer. */
const ticked = ({ passage, sentence: { start, end } }: Scene): boolean =>
  /[✓✔✗✘❌✅]/u.test(passage.text.slice(start, Math.min(end + 3, start + 400)));

const NOUNS = new Set(
  'suture sutures thread threads stitch stitches material materials strands ones we stock use keep have in on our the this tray shelf drawer'.split(
    ' ',
  ),
);
const LINKS = new Set(
  ': include includes including count belong are is such as like e.g for example , — – namely ( .'.split(' '),
);
const OPENERS = new Set(': include includes including count are such like e.g example namely ('.split(' '));

/** "Unlike absorbable sutures: …": the list is of the others. */
const EXCEPTS = /^(?:every|not|no|never|unlike|except|avoid|without|instead|than|beyond|against)$/;

/** How far another word of the same property is looked for, items. */
const AROUND = 24;

/** The materials of the list that a property word opens, each joined to the one before. */
function listed(items: readonly Item[], at: number, named: readonly NamedMaterial[]): NamedMaterial[] {
  const first = named.find((m) => m.at > at);
  if (!first || first.at - at > 7) return [];
  const between = items.slice(at + 1, first.at);
  if (!between.every((item) => NOUNS.has(item.word) || LINKS.has(item.word))) return [];
  if (!between.some((item) => OPENERS.has(item.word))) return [];
  if (items.slice(Math.max(0, at - 3), at).some((item) => EXCEPTS.test(item.word))) return [];
  if (ofTwoKinds(items, at)) return [];
  if (
    items
      .slice(Math.max(0, at - AROUND), first.at + AROUND)
      .some(
        (item) =>
          PROPERTY_WORDS.has(item.word) &&
          PROPERTY_WORDS.get(item.word)!.property === PROPERTY_WORDS.get(items[at]!.word)!.property &&
          item !== items[at] &&
          !remarked(items, at, items.indexOf(item)),
      )
  )
    return [];
  // The property itself is read beside the first name when only a noun stands between.
  const near =
    first.at <= at + 3 &&
    between.every((item) => NOUNS.has(item.word) || ['such', 'as', 'like'].includes(item.word));
  const run = [first];
  for (const m of named.slice(named.indexOf(first) + 1)) {
    const gap = items.slice(run.at(-1)!.to + 1, m.at);
    if (gap.length === 0 || !gap.every((item) => JOINS.has(item.word) || item.kind === 'size')) break;
    run.push(m);
  }
  // "All but silk are absorbable: …": what was named before has been set apart.
  const apart = new Set(named.filter((m) => m.to < at).map((m) => m.id));
  return (near ? run.slice(1) : run).filter((m) => !apart.has(m.id));
}

/** "braided ones: silk and polyester, which has the softest braid": said again of the last, in a clause of its own. */
function remarked(items: readonly Item[], at: number, other: number): boolean {
  const comma = items.slice(0, other).findLastIndex(isComma);
  const clause = items.slice(comma + 1, other + 4);
  return (
    comma > at &&
    /^(?:which|whose)$/.test(clause[0]?.word ?? '') &&
    PROPERTY_WORDS.get(items[other]!.word)!.value === PROPERTY_WORDS.get(items[at]!.word)!.value &&
    !clause.some(
      ({ word }) => EXCEPTS.test(word) || /^(?:or|if|but|less|least|hardly|barely|isn't|doesn't)$/.test(word),
    )
  );
}

/** "something slow or something permanent: polydioxanone or polypropylene" */
const ofTwoKinds = (items: readonly Item[], at: number): boolean =>
  items[at + 1]?.word === ':' && items.slice(Math.max(0, at - 4), at).some(({ word }) => word === 'or');

/** A passage that is nothing but names: its heading or the question before says what they are. */
function alone(scene: Scene, named: readonly NamedMaterial[]): Reading[] {
  const words = scene.items.filter((item) => item.kind === 'word');
  const own = named.reduce((n, m) => n + m.to - m.at + 1, 0);
  if (words.length > own + 1) return [];
  const row = choices(scene) ? undefined : (askedBefore(scene) ?? headed(scene));
  return row ? named.map((m) => reading(scene, m, row)) : [];
}

/** "silk / polyester / nylon. Nylon.": names set out to choose from. */
const choices = ({ items, after }: Scene): boolean =>
  items.some((item) => item.word === '/' || item.word === 'or' || item.word === '|') ||
  (after[0] !== undefined && materialsIn(after[0].items).length > 0);

/** "Which of these is a braid?" just before. */
function askedBefore(scene: Scene): PropertyRow | undefined {
  const question = scene.before.at(-1);
  if (question?.close !== '?' || !/^(?:which|name|what)$/.test(question.items[0]?.word ?? ''))
    return undefined;
  const denies = question.items.some((item) =>
    /^(?:not|isn't|never|least|except|no|for|than|instead|replaces?|swap|exchange|from)$/.test(item.word),
  );
  // "Which of these dissolves, silk or nylon? Silk.": what becomes of a thread carries its own negation.
  const asked = soleProperty(question.items);
  return denies ? undefined : (asked ?? fateOf(question.items));
}

const HEADING = new Set(
  'suture sutures thread threads stitches material materials surgical the are include examples of common which'.split(
    ' ',
  ),
);

/** A heading or lead-in that is a property and the noun it goes with, nothing else. */
function headed(scene: Scene): PropertyRow | undefined {
  if (!scene.passage.list || scene.before.length > 0) return undefined;
  const lead = scene.lead ? scene.lead.items : readItems(scene.headings.at(-1) ?? '', []);
  const words = lead.filter((item) => item.kind === 'word');
  const row = soleProperty(lead);
  return row && words.every((item) => HEADING.has(item.word) || PROPERTY_WORDS.has(item.word))
    ? row
    : undefined;
}

function soleProperty(items: readonly Item[]): PropertyRow | undefined {
  const rows = items.flatMap((item) => PROPERTY_WORDS.get(item.word) ?? []);
  return rows.length === 1 ? rows[0] : undefined;
}

function reading(scene: Scene, m: NamedMaterial, row: PropertyRow): Reading {
  const claim = materialClaim(scene, 'members', m.id, `${row.property}:${row.value}`, m.at, m.to);
  return { claim, at: m.at, from: m.at, to: m.to };
}
