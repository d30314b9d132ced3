/**
 * Sizes joined by signs and a named quantity: "in bore, 14 G > 16 G > 18 G", "18 G > 20 G in diameter". Without one, where the
 * note says what its sign means ('">" = wider than'), or where number and width grow together, as in "14 Fr < 12 Fr".
 */
import type { Note } from '../../notes/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import { type Group, groups, type Scene, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ofEitherScale, orderReading } from './order.ts';

export const chain: Construction = {
  id: 'chain',
  needs: () => [{ sizes: 2, words: ['<', '>'] }],
  read(scene) {
    const { items } = scene;
    const noun = items.findIndex((item) => item.axisNoun && item.kind === 'word');
    const axis = items[noun]?.axisNoun;
    if (items.filter((item) => item.axisNoun).length > 1 || axis?.axis === 'number') return [];
    const run = runIn(groups(items), items);
    if (!run || ofEitherScale(scene, run.groups)) return [];
    if (!axis) return unnamed(scene, run);
    const falls = (run.sign === '>') === (axis.sign === 1);
    return [
      orderReading(scene, run.groups, { at: noun, to: noun, axis: axis.axis, runs: falls ? 'down' : 'up' }),
    ];
  },
};

type Run = NonNullable<ReturnType<typeof runIn>>;

/** Nothing says what is measured: the note's own list of signs does, or no reading of the sign would hold. */
function unnamed(scene: Scene, run: Run): Reading[] {
  const legend = legendOf(scene.note);
  const first = run.groups[0]!;
  // ">" is an arrow to many; "<" is hardly ever one.
  const alone = (run.sign === '<' || compares(scene)) && MONOTONE.has(first.sizes[0]!.system);
  if (!legend && !alone) return [];
  const at = scene.items.findIndex((item, i) => i > first.to && item.word === run.sign);
  const falls = (run.sign === '>') === ((legend ?? 1) === 1);
  return [orderReading(scene, run.groups, { at, to: at, axis: 'outer', runs: falls ? 'down' : 'up' })];
}
const MONOTONE: ReadonlySet<string> = new Set(['french', 'tube-id']);

/** "Comparison list:", above what has signs in it: ">" is no arrow there. */
const compares = ({ lead, headings, items }: Scene): boolean =>
  items.every((item) => item.kind === 'size' || item.deviceNoun || /^[<>.;,]$/.test(item.word)) &&
  (COMPARES.test(lead ? joined(lead.items) : '') || COMPARES.test(headings.at(-1) ?? ''));
const COMPARES =
  /\b(?:comparisons?|comparing|compare[ds]?|which is (?:the )?(?:wider|thicker|bigger|larger)|(?:wider|thicker|bigger|larger) than|size signs|with signs)\b/;

/** '">" = wider than', "> means thicker": what the note says the sign stands for; 1 when ">" is the big end. */
const legendOf = remembered((note: Note): 1 | -1 | undefined => {
  const { sign, word } = (LEGEND.exec(note.text) ?? NAMED_FIRST.exec(note.text))?.groups ?? {};
  if (!sign || !word) return undefined;
  const big = !/^(?:thinner|finer|narrower|smaller)$/.test(word.toLowerCase());
  return (sign === '>') === big ? 1 : -1;
});
/** "Thicker than (>)". */
const NAMED_FIRST =
  /\b(?<word>wider|thicker|bigger|larger|broader|fatter|thinner|finer|narrower|smaller)(?: than)? ?\(["'“‘`]?(?<sign>[<>])["'”’`]?\)/i;
const LEGEND =
  /(?:^|[\s"'“‘`(])(?<sign>[<>])["'”’`)]?\s?(?:=|:|means|is|for|stands for|reads)\s?["'“‘`]?(?:is )?(?<word>wider|thicker|bigger|larger|broader|fatter|thinner|finer|narrower|smaller)\b/i;

/** The first sizes that have a sign between each two, one and the same; things may be named beside them. */
function runIn(all: readonly Group[], items: readonly Item[]) {
  const signs = all.slice(1).map((group, i) => signIn(items.slice(all[i]!.to + 1, group.from)));
  const start = signs.findIndex((sign) => sign !== undefined);
  const sign = signs[start];
  if (!sign) return undefined;
  const after = signs.findIndex((one, i) => i > start && one !== sign);
  const end = after < 0 ? signs.length : after;
  // "a > b < c" is no row.
  if (signs.slice(end).some((one) => one !== undefined)) return undefined;
  const run = all.slice(start, end + 1);
  return run.every((g) => g.sizes.length === 1 && sameSystem(g, run[0]!)) ? { groups: run, sign } : undefined;
}

function signIn(between: readonly Item[]): '<' | '>' | undefined {
  const [only, ...more] = between.filter((item) => !item.deviceNoun);
  return more.length === 0 && (only?.word === '<' || only?.word === '>') ? only.word : undefined;
}
