/** "7-0 sits between 5-0 and 6-0": a size placed between two others of its system. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { rangeClaim } from './range-claim.ts';

const PLACES = new Set([
  'sits',
  'lies',
  'falls',
  'comes',
  'is',
  'slots',
  'ranks',
  'belongs',
  'goes',
  'fits',
  'stands',
  'lands',
  'exactly',
  'right',
  'halfway',
  'midway',
  'half-way',
  'mid-way',
  'half',
  'way',
  'in',
  'neatly',
  'just',
  'somewhere',
  'tracheal',
  'endotracheal',
]);

export const between: Construction = {
  id: 'between',
  needs: () => [{ sizes: 3, words: ['between'] }],
  read(scene) {
    const at = scene.items.findIndex((item) => item.word === 'between');
    if (at < 0) return [];
    const all = groups(scene.items);
    const subject = all.filter((g) => g.to < at).at(-1);
    const bounds = boundsAfter(all, at);
    if (bounds && opensLine(scene, at, bounds[0])) return [];
    const inverted = subject ? undefined : invertedIn(scene, all, at);
    if (inverted && bounds) return [reading(scene, inverted, bounds, at)];
    if (subject?.sizes.length !== 1 || !bounds) return [];
    if (subject.sizes[0]!.system !== bounds[0].sizes[0]!.system) return [];
    const said = sinceIt(scene.items.slice(subject.to + 1, at));
    const verbs = said.slice(resumedAt(said));
    if (
      verbs.length === 0 ||
      verbs.length > 4 ||
      !verbs.every((item) => PLACES.has(item.word) || item.deviceNoun)
    )
      return [];
    return [reading(scene, subject, bounds, at)];
  },
};

/** "MIDDLE 2-0 3-0 in between", and on the next line "BOTTOM 4-0 5-0": the sizes of another line. */
const opensLine = ({ items, passage }: Scene, at: number, { from }: Group): boolean =>
  from > at + 1 && passage.text.slice(items[at]!.end, items[from - 1]!.start).includes('\n');

/** "Between 3-0 and 5-0 comes 4-0": the size placed stands behind, and ends its clause. */
function invertedIn({ items }: Scene, all: readonly Group[], at: number): Group | undefined {
  const after = all.filter((g) => g.from > at);
  const subject = after.at(-1);
  const last = after.at(-2);
  if ((at > 3 && items[at - 1]!.word !== ',') || !subject || !last || subject.sizes.length !== 1)
    return undefined;
  const values = after.slice(0, -1).reduce((n, g) => n + g.sizes.length, 0);
  const end = items.slice(subject.to + 1).find((item) => !item.deviceNoun);
  const system = after.every((g) => g.sizes[0]!.system === subject.sizes[0]!.system);
  return values === 2 &&
    system &&
    INVERTED.test(joined(items, last.to + 1, subject.from)) &&
    end?.kind !== 'word'
    ? subject
    : undefined;
}
const INVERTED =
  /^(?:in (?:size|thickness|width|order|diameter|bore) )?(?:, )?(?:there )?(?:comes|lies|sits|is|stands|falls|ranks|hangs|goes)(?: only)?(?: (?:an?|the|our))?$/;

/** "A 19 G needle has a cream hub and sits between …": where a second verb of the same subject begins. */
function resumedAt(said: readonly Item[]): number {
  const link = said.findLastIndex(({ word }) => word === 'and' || word === 'which');
  const first = said.find((item) => !item.deviceNoun)?.word ?? '';
  const rest = said.slice(0, link);
  return link > 1 &&
    link <= 10 &&
    (/^(?:is|has|comes|looks|feels|goes)$/.test(first) || first === ',') &&
    rest.every((item, i) => !NEGATIONS.has(item.word) && (item.word !== ',' || i === 0))
    ? link + 1
    : 0;
}

/** "1-0 is a size of its own, and it lies half-way": the pronoun stands for the only size before. */
function sinceIt(items: readonly Item[]): readonly Item[] {
  const it = items.findLastIndex((item) => /^(?:it|which)$/.test(item.word));
  return it > 0 && it <= 10 && !items.slice(0, it).some((item) => item.word === '.')
    ? items.slice(it + 1)
    : items;
}

/** The two ends: a list of two, a range, or two groups joined by "and". */
function boundsAfter(all: readonly Group[], at: number): readonly [Group, Group] | undefined {
  const first = all.find((g) => g.from > at && g.from <= at + 3);
  if (!first) return undefined;
  const one = (i: number): Group => ({ ...first, sizes: [first.sizes[i]!] });
  if (first.sizes.length === 2) return [one(0), one(1)];
  const second = all.find((g) => g.from > first.to && g.from <= first.to + 4);
  return first.sizes.length === 1 && second?.sizes.length === 1 ? [first, second] : undefined;
}

const HEARD = /^(?:read|heard|told|says?|think|thinks|believe|claims?|may|might)$/;

/** "1-0 lies between 0 and 2-0": one of the ends under another name is said to be a size of its own. */
const renamed = (subject: Group, ends: readonly Group[]): boolean =>
  ends.some(
    (end) =>
      end.sizes[0]!.value === subject.sizes[0]!.value && subject.mentions[0]!.text !== end.mentions[0]?.text,
  );

function reading(scene: Scene, subject: Group, ends: readonly [Group, Group], at: number): Reading {
  const strict =
    /^(?:half-?way|mid-?way|way)$/.test(scene.items[at - 1]?.word ?? '') ||
    (renamed(subject, ends) && !scene.items.slice(0, at).some(({ word }) => HEARD.test(word)));
  return {
    claim: rangeClaim(scene, 'between', subject, ends, strict),
    at,
    from: subject.from,
    to: at,
  };
}
