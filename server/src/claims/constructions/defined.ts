/** A class by the text's own words: "'small' means 8 to 12 Fr; a 16 Fr is therefore small", "we call 24 to 28 Fr large". */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { type Group, groups, operand, type Scene, sameSystem, sentenceSpan, spanOf } from '../text/scene.ts';
import { UNSETTLED } from '../words/windows.ts';
import type { Construction, Reading } from './model.ts';

const HOLDS = ['therefore', 'thus', 'so', 'hence', 'then'];

export const defined: Construction = {
  id: 'defined',
  needs: () => [{ sizes: 1, words: HOLDS, also: /\b(?:is|counts)\b/ }],
  read(scene) {
    const { items } = scene;
    if (!ranges(items) && !ranges(scene.before.at(-1)?.items ?? [])) return [];
    const member = memberIn(items);
    if (!member || scene.sentence.close === '?') return [];
    const here = definitionIn(items.slice(0, member.clause));
    const before = scene.before.at(-1);
    const found = here ?? (before && before.close !== '?' ? definitionIn(before.items) : undefined);
    if (!found || found.term !== member.term || !sameSystem(found.range, member.group)) return [];
    return [reading(scene, member, found.range)];
  },
};

const ranges = (items: readonly Item[]) => items.some((item) => item.mention?.kind === 'range');
const plain = (words: string) =>
  words
    .replace(/["“”'‘’*_]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

interface Member {
  readonly group: Group;
  readonly term: string;
  readonly clause: number;
  readonly at: number;
}

const TERM = '([a-z]+(?:-[a-z]+)?)';
const IS = new RegExp(
  `^(?:(?:needle|cannula|catheter|drain|tube|in bed [0-9]+|in bay [0-9]+) )?(?:(?:therefore|thus|hence) )?(?:is|counts as) (?:therefore |thus |hence |then |also |a )?${TERM}(?= [.,;!]|$| and| on)`,
);

/** "a 16 Fr is therefore small", "so a 22 Fr is medium": a single size, a word for its class, and a consequence drawn. */
function memberIn(items: readonly Item[]): Member | undefined {
  const group = groups(items).findLast(
    (g) => g.sizes.length === 1 && g.mentions.length === 1 && !g.mentions[0]!.bound,
  );
  if (!group) return undefined;
  const match = IS.exec(plain(textOf(items.slice(group.to + 1, group.to + 10))));
  if (!match) return undefined;
  const clause = items.slice(0, group.from).findLastIndex((item) => /^[;,]$/.test(item.word));
  const near = items.slice(Math.max(0, clause), group.to + 8);
  return near.some((item) => HOLDS.includes(item.word))
    ? { group, term: match[1]!, clause: Math.max(0, clause), at: group.to + 1 }
    : undefined;
}

/** "From 8 to 12 Fr we call small." */
const CALLED = new RegExp(`^(?:is what )?(?:we|i|they) call ${TERM}(?= [.,;]|$)`);
const MEANS = new RegExp(
  `(?:^|[ ,;:])${TERM}(?: (?:here|for us|on this (?:ward|unit|station)))? (?:means|is|=|runs|covers|stands for)(?: (?:anything|everything))?(?: (?:from|if it's|if it is))?$`,
);

/** The class word and its range: "small means 8 to 12 Fr", "we call 24 to 28 Fr large". */
function definitionIn(items: readonly Item[]): { readonly term: string; readonly range: Group } | undefined {
  const all = groups(items);
  const [range] = all;
  if (!range || all.length !== 1 || range.mentions.length !== 1 || range.mentions[0]!.kind !== 'range')
    return undefined;
  if (items.some((item) => UNSETTLED.test(item.word))) return undefined;
  const before = plain(textOf(items.slice(0, range.from)));
  const after = plain(textOf(items.slice(range.to + 1, range.to + 5)));
  const called = /\b(?:call|calls|name)$/.test(before)
    ? new RegExp(`^${TERM}(?= [.,;]|$)`).exec(after)
    : CALLED.exec(after);
  const term = called?.[1] ?? MEANS.exec(before)?.[1];
  return term ? { term, range } : undefined;
}

function reading(scene: Scene, { group, at }: Member, range: Group): Reading {
  const end = (i: number) => operand(scene, { ...range, sizes: [range.sizes[i]!] });
  return {
    claim: {
      kind: 'range',
      construction: 'defined',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[group.from]!, scene.items[group.to]!),
      size: operand(scene, group),
      low: end(0),
      high: end(1),
      inside: true,
    },
    at,
    from: group.from,
    to: at,
  };
}
