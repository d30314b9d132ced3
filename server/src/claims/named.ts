/**
 * Sizes that the text gives to a device by a name of its own: "the triple-lumen line is 7 Fr". They let a course be
 * compared with itself. Only plain sentences and table rows count: no choices, no patients, no conditions.
 */
import type { Mention } from '../mentions/model.ts';
import type { Note, Span } from '../notes/model.ts';
import type { Size } from '../sizes/model.ts';
import { stanceOf } from './stance/index.ts';
import type { Item } from './text/items.ts';
import { groups, type Scene } from './text/scene.ts';
import { type Read, readWhole } from './text/scenes.ts';

export interface NamedSize {
  /** Words of the name, lower case, singular: "triple-lumen line". */
  readonly name: string;
  readonly size: Size;
  readonly source: Span;
  readonly text: string;
}

const SYSTEMS = new Set(['french', 'needle-gauge', 'tube-id', 'wire-inch']);
const BE = new Set(['is', 'are', '=', ':', 'measures', 'comes']);
const AFTER_BE = new Set(['a', 'an', 'always', 'our', 'in', 'at', 'as', 'size', 'only', 'now']);
const DETERMINERS = new Set([
  'the',
  'our',
  'a',
  'an',
  'every',
  'each',
  'all',
  'this',
  'that',
  'these',
  'your',
]);
/** Words that leave open which thing is meant, or for whom. */
const VAGUE =
  /^(?:first|second|third|last|next|other|another|same|usual|standard|normal|typical|new|old|small|smaller|smallest|large|larger|largest|big|bigger|thin|thinner|thick|thicker|fine|finer|wide|wider|narrow|long|short|left|right|spare|single|plain|which|what|one|ones|adult|adults|child|children|paediatric|pediatric|baby|infant|neonate|patient|patients|man|woman|men|women|dog|cat|horse|some|most|many|any|no|both|two|three|answer|size|sizes|example|smallest|better|best)$/;
const OPEN = new Set([
  'or',
  'if',
  'for',
  'usually',
  'often',
  'sometimes',
  'may',
  'can',
  'about',
  'than',
  'not',
  'never',
  'when',
  'unless',
  'except',
  'adult',
  'adults',
  'child',
  'children',
  'was',
  'were',
  'old',
  'formerly',
  'say',
  'e.g',
  'example',
  'which',
  'who',
]);

export function namedSizes(note: Note, mentions: readonly Mention[]): NamedSize[] {
  if (!mentions.some((mention) => mention.sizes.length === 1 && SYSTEMS.has(mention.sizes[0]!.system)))
    return [];
  const { reads, scenes } = readWhole(note, mentions);
  const found: NamedSize[] = [];
  for (const passage of new Set(mentions.map((mention) => mention.passage)))
    for (const scene of scenes.in(passage)) found.push(...inSentence(scene));
  return [...found, ...inTables(note, reads)];
}

function inSentence(scene: Scene): NamedSize[] {
  const { items } = scene;
  const all = groups(items);
  const only = all[0];
  if (all.length !== 1 || !only || !settled(only.mentions) || items.some((item) => OPEN.has(item.word)))
    return [];
  const verb = items.findIndex((item, i) => i < only.from && BE.has(item.word));
  if (verb < 1 || !items.slice(verb + 1, only.from).every((item) => AFTER_BE.has(item.word))) return [];
  const name = nameOf(items.slice(0, verb));
  if (!name || stanceOf(scene, { claim: CLAIM, at: only.from, from: verb, to: only.to }) !== 'asserted')
    return [];
  return [named(name, only.mentions[0]!)];
}

/** Stance asks only where a claim stands, not what it claims. */
const CLAIM = {
  kind: 'key',
  construction: 'named',
  problem: '',
  span: { start: 0, end: 0 },
  focus: { start: 0, end: 0 },
} as const;

const settled = (mentions: readonly Mention[]) =>
  mentions.length === 1 &&
  mentions[0]!.kind === 'size' &&
  !mentions[0]!.bound &&
  !mentions[0]!.approximate &&
  SYSTEMS.has(mentions[0]!.sizes[0]!.system);

const named = (name: string, mention: Mention): NamedSize => ({
  name,
  size: mention.sizes[0]!,
  source: mention.source,
  text: mention.text,
});

/** Two to four words that end in a thing; at least one of them says which. */
function nameOf(items: readonly Item[]): string | undefined {
  const words = items.filter((item, i) => !(i === 0 && DETERMINERS.has(item.word)));
  if (
    words.length === 0 ||
    words.length > 4 ||
    words.some((item) => item.kind !== 'word' || item.magnitude || item.colour || VAGUE.test(item.word))
  )
    return undefined;
  const last = words.at(-1)!;
  const head = last.deviceNoun === true || /-lumen$/.test(last.word);
  const specific = words.slice(0, -1).length > 0 || /-lumen$/.test(last.word);
  return head && specific ? words.map((item) => singular(item.word)).join(' ') : undefined;
}

const singular = (word: string): string => (/[^sui]s$/.test(word) ? word.slice(0, -1) : word);

/** A row whose first cell is a name and which holds one such size. */
function inTables(note: Note, reads: readonly Read[]): NamedSize[] {
  return note.tables.flatMap(({ rows }) =>
    rows.slice(1).flatMap((row) => {
      const cells = row.map((index) => reads[index]);
      const mentions = cells.flatMap((cell) => cell?.items.flatMap((item) => item.mention ?? []) ?? []);
      const first = cells[0];
      const ours = mentions.filter((mention) => mention.sizes[0] && SYSTEMS.has(mention.sizes[0].system));
      const name = first && ours.length === 1 && settled(ours) ? nameOf(first.items) : undefined;
      const own = cells.find((cell) => cell?.items.some((item) => item.mention === ours[0]));
      const alone = own?.items.every((item) => item.mention === ours[0] || item.kind === 'punctuation');
      return name && alone ? [named(name, ours[0]!)] : [];
    }),
  );
}
