/**
 * Materials listed under a property: "absorbable sutures: polyglactin 910, polydioxanone", "braids such as silk and polyester",
 * "nonabsorbable sutures include …"; and a material alone in a list under such a heading, or in answer to such a question.
 */
import type { PropertyClaim } from '../model.ts';
import { type Item, readItems } from '../text/items.ts';
import { materialsIn, type NamedMaterial } from '../text/materials.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { PROPERTY_WORDS, type PropertyRow } from '../words/properties.ts';
import type { Construction, Reading } from './model.ts';

export const members: Construction = {
  id: 'members',
  needs: () => [{ holds: ['material'] }],
  read(scene) {
    const named = materialsIn(scene.items);
    if (named.length === 0 || ticked(scene)) return [];
    const said = scene.items.flatMap((item, at) => {
      const row = PROPERTY_WORDS.get(item.word);
      return row ? listed(scene.items, at, named).map((m) => reading(scene, m, row)) : [];
    });
    return said.length > 0 ? said : alone(scene, named);
  },
};

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
const JOINS = new Set(', and or & plain the'.split(' '));

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
  if (
    items
      .slice(Math.max(0, at - AROUND), first.at + AROUND)
      .some(
        (item) =>
          PROPERTY_WORDS.has(item.word) &&
          PROPERTY_WORDS.get(item.word)!.property === PROPERTY_WORDS.get(items[at]!.word)!.property &&
          item !== items[at],
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
  const denies = question.items.some((item) => /^(?:not|isn't|never|least|except|no)$/.test(item.word));
  return denies ? undefined : soleProperty(question.items);
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
  const claim: PropertyClaim = {
    kind: 'property',
    construction: 'members',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[m.at]!, scene.items[m.to]!),
    subject: m.id,
    of: 'material',
    property: `${row.property}:${row.value}`,
    has: true,
  };
  return { claim, at: m.at, from: m.at, to: m.to };
}
