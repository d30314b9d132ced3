/**
 * Sizes said not to exist: "there is no such thing as a 19 G needle", "the scale ends at 7-0", "6-0 is the finest there is",
 * "USP has no size between 2-0 and 4-0", "needle gauges go up in twos". Said of threads as such, of hypodermic needles, of cannulas for veins and of guidewires;
 * what a shelf, a ward, a maker, a material or another device has is left alone.
 */
import type { ExistenceClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import { type Group, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { ENDING, SAYS_NO, WAYS, type Way } from '../words/absent.ts';
import {
  missed,
  narrowed,
  ofCannulas,
  ofNeedles,
  ofThreads,
  ofWires,
  saysOfScale,
  saysOfThreads,
  shelved,
} from './absent-where.ts';
import type { Construction, Reading } from './model.ts';

export const absence: Construction = {
  id: 'absence',
  needs: () => [
    { sizes: 1, like: SAYS_NO },
    { words: ENDING, also: /^(?:usp|scale|sizes|series|numbering|numbers|list)$/ },
    { holds: ['measured'], words: ['nothing', 'nobody', 'no'] },
    {
      words: ['needle', 'needles', 'gauge', 'gauges'],
      like: /^(?:twos|2s|even|uneven|odd|odd-numbered)$/,
      also: SAYS_NO,
    },
  ],
  leaning: true,
  read(scene) {
    if (scene.sentence.close === '?' || narrowed(scene)) return [];
    const { text, starts } = writtenOut(scene.items);
    return WAYS.flatMap((way) => {
      const found = way.like.exec(text);
      const words = found && wordsAt(starts, found.index, found.index + found[0].length);
      const claim = words && claimOf(scene, way, words);
      return claim ? [claim] : [];
    }).slice(0, 1);
  },
};

/** The words of a sentence with each size as "#", and where each item starts. */
const writtenOut = remembered((items: readonly Item[]) => {
  const starts: number[] = [];
  let text = '';
  for (const { kind, word } of items) {
    starts.push(text.length);
    text += `${kind === 'size' ? '#' : word} `;
  }
  return { text: text.trimEnd(), starts };
});

interface Words {
  readonly from: number;
  readonly to: number;
}

function wordsAt(starts: readonly number[], start: number, end: number): Words {
  const from = starts.findIndex((at) => at >= start);
  return { from, to: starts.findLastIndex((at) => at < end) };
}

function claimOf(scene: Scene, way: Way, { from, to }: Words): Reading | undefined {
  const said = scene.items.slice(from, to + 1);
  const own = sizesIn(said) ?? (way.absent === 'beyond' ? numberIn(scene, said) : undefined);
  const group = own ?? (way.absent === 'beyond' ? spokenOf(scene, from) : undefined);
  if (way.absent === 'uneven') return ofNeedles(scene, said) ? reading(scene, from, to, 'uneven') : undefined;
  if (!group || !oneScale(group, way.absent === 'between')) return undefined;
  const needles = group.sizes[0]!.system === 'needle-gauge';
  if (!speaksOf(scene, own ? said : [...said, ...namedWith(scene, group)], group)) return undefined;
  if (way.shelf && (shelved(scene) || (!placeless(said) && missed(scene)))) return undefined;
  const open = way.vague || (missable(way, said) && !alone(scene, from, to));
  if (open && !saysOfScale(scene, needles)) return undefined;
  const absent = way.absent === 'beyond' ? sideOf(said, group, needles) : way.absent;
  if (!absent || (absent === 'between' && group.sizes.length !== 2)) return undefined;
  return reading(scene, from, to, absent, group);
}

/** The sentence before that names the size says what has it: "Needles stop at 27 G. Nothing finer is made." */
const namedWith = ({ before }: Scene, { mentions }: Group): readonly Item[] =>
  before
    .at(-1)
    ?.items.filter(
      (item, _, all) => all.some(({ mention }) => mention && mention === mentions[0]) && item.kind === 'word',
    ) ?? [];

/** Of things that are told of as a whole. */
function speaksOf(scene: Scene, said: readonly Item[], group: Group): boolean {
  const system = group.sizes[0]!.system;
  if (system === 'usp') return ofThreads(scene, group);
  return system === 'wire-inch' ? ofWires(scene, said) : ofNeedles(scene, said) || ofCannulas(scene, said);
}

/** "There is no 19 G", "you will not find a 7-0 suture": it may be one that is missing here. */
const missable = ({ absent, shelf }: Way, said: readonly Item[]): boolean =>
  shelf === true && absent === 'itself' && !placeless(said);

/** Says itself that it holds wherever one is. */
const placeless = (said: readonly Item[]): boolean =>
  /\b(?:at all|anywhere|existence|world|market|made|scale|usp|sizes|series|numbering)\b/.test(joined(said));

/** All that is said, of a thing that is named. */
const alone = ({ items, before, after }: Scene, from: number, to: number): boolean =>
  before.length === 0 &&
  after.length === 0 &&
  from === 0 &&
  items[to]!.kind !== 'size' &&
  items.slice(to + 1).every(({ kind }) => kind === 'punctuation');

function sizesIn(items: readonly Item[]): Group | undefined {
  const mentions = items.flatMap(({ mention }) => (mention ? [mention] : []));
  return mentions.length > 0
    ? { from: -1, to: -1, mentions, sizes: mentions.flatMap(({ sizes }) => sizes) }
    : undefined;
}

/** "The scale stops at 4", said of sutures. */
function numberIn(scene: Scene, items: readonly Item[]): Group | undefined {
  const number = items.find(({ word }, i) => /^[0-4]$/.test(word) && LEADS.test(items[i - 1]?.word ?? ''));
  const sizes = number && [{ system: 'usp' as const, value: Number(number.word) }];
  return sizes && saysOfThreads(scene) && !items.some(({ word }) => /^(?:gauges?|needles?)$/.test(word))
    ? { from: -1, to: -1, mentions: [], sizes }
    : undefined;
}
const LEADS = /^(?:at|with|as|to|than|size|number)$/;

/** "7-0. Nothing thinner is sold", "5-0 is the last, nobody makes a finer thread": the one size before. */
function spokenOf({ items, before }: Scene, from: number): Group | undefined {
  const here = sizesIn(items.slice(0, from));
  const group = here ?? sizesIn(before.at(-1)?.items ?? []) ?? sizesIn(before.at(-2)?.items ?? []);
  return group?.mentions.length === 1 ? group : undefined;
}

/** Written for certain, of one scale, each a size of its own. */
const oneScale = ({ mentions, sizes }: Group, between: boolean): boolean =>
  mentions.every(
    ({ kind, sizes: own }) =>
      kind !== 'ambiguous' && (own.length === 1 || (between && mentions.length === 1 && own.length === 2)),
  ) &&
  /^(?:usp|needle-gauge|wire-inch)$/.test(sizes[0]?.system ?? '') &&
  sizes.every(({ system }) => system === sizes[0]!.system);

/** On which side nothing is left: by the words of the text, or by the end of the scale at which the size stands. */
function sideOf(said: readonly Item[], { sizes }: Group, needles: boolean): 'finer' | 'thicker' | undefined {
  const [only, ...more] = sizes;
  if (!only || more.length > 0) return undefined;
  const word = said
    .map(({ word }) => (FINE.test(word) ? 'finer' : THICK.test(word) ? 'thicker' : ''))
    .join('');
  if (only.system === 'wire-inch') return word === 'finer' ? word : undefined;
  const side = word || (needles ? BY_GAUGE : BY_RANK)(only.value);
  // Charts go on with wider needles than the standard has.
  return side === 'finer' || (side === 'thicker' && !needles) ? side : undefined;
}
const FINE = /^(?:fine|thin|small|narrow)(?:r|est|st|ner|nest|er)?$/;
const THICK = /^(?:(?:thick|coarse|large|stout|wide)(?:r|er|st|est)?|big|bigger|biggest|heav(?:y|ier|iest))$/;
const BY_GAUGE = (gauge: number) => (gauge >= 25 ? 'finer' : '');
const BY_RANK = (rank: number) => (rank <= -3 ? 'finer' : rank >= 1 ? 'thicker' : '');

function reading(
  scene: Scene,
  from: number,
  to: number,
  absent: NonNullable<ExistenceClaim['absent']>,
  group?: Group,
): Reading {
  const { items } = scene;
  const turns = group?.mentions.length ? SIZED : group?.sizes.length ? NUMBERED : UNEVEN;
  const at = items.findIndex((item, i) => i >= from && i <= to && turns(item));
  const focus = spanOf(scene, items[at < 0 ? to : at]!);
  return {
    claim: {
      kind: 'existence',
      construction: 'absence',
      span: sentenceSpan(scene),
      focus,
      size: group?.mentions.length
        ? operand(scene, group)
        : { sizes: group?.sizes ?? [], mentions: [], span: focus },
      absent,
    },
    at: to,
    from,
    to,
    own: true,
  };
}
const SIZED = ({ kind }: Item): boolean => kind === 'size';
const NUMBERED = ({ word }: Item): boolean => /^[0-4]$/.test(word);
const UNEVEN = ({ word }: Item): boolean => /^(?:twos|2s|even|two|2|odd|uneven|odd-numbered)$/.test(word);
