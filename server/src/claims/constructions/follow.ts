/**
 * Claims that lean on the sentence before: "Pull the 16 and drop in a 22. It runs faster.",
 * "The second kind is the fatter of the two."
 */
import { finds } from '../../notes/patterns.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { NEGATIONS } from '../words/changes.ts';
import { byZero, callsByZero } from './by-zero.ts';
import { exchangeIn } from './exchange.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

const ORDINALS: ReadonlyMap<string, number> = new Map([
  ['first', 0],
  ['former', 0],
  ['second', -1],
  ['latter', -1],
  ['last', -1],
]);
const PRONOUNS = new Set(['it', 'that', 'this', 'they']);

const THAN = cue(['than']);

export const follow: Construction = {
  id: 'follow',
  needs: () => [{ holds: ['compared'] }, { holds: ['superlative'] }],
  leaning: true,
  read(scene) {
    if (holds(scene.items, THAN)) return [];
    if (callsByZero(scene.items)) return byZero(scene);
    if (groups(scene.items).length > 0) return ownOrdinal(scene);
    const previous = scene.before.at(-1) ?? scene.context.at(-1);
    if (!previous) return [];
    const word = measuredWords(scene.items).find(
      (m) => m.degree !== 'plain' && m.axis !== 'other' && m.axis !== 'number' && !m.idiom,
    );
    if (!word) return [];
    const named = ordinal(scene, word, previous);
    return named ?? (previous.close === '?' ? [] : pronoun(scene, word, previous));
  },
};

/** "Of the pair, 18 G and 22 G, the first is the stouter", "…, the former being finer": both named in the same sentence. */
function ownOrdinal(scene: Scene): Reading[] {
  const { items } = scene;
  const at = items.findIndex((item) => ORDINALS.has(item.word) && item.word !== 'last');
  const all = distinct(groups(items).flatMap(singles));
  const [a, b] = all;
  if (at < 1 || items[at - 1]!.word !== 'the' || all.length !== 2 || !a || !b || b.to > at) return [];
  const word = measuredWords(items).find((m) => m.at > at && m.at - at <= 8);
  const said = items.slice(at + 1, word?.at ?? at);
  if (word?.degree !== 'comparative' || !decidable(word.axis) || word.idiom || !sameSystem(a, b)) return [];
  if (!said.every((item) => OWN.test(item.word))) return [];
  const [left, right] = ORDINALS.get(items[at]!.word) === 0 ? [a, b] : [b, a];
  return [{ ...comparison(scene, 'ordinal', left, right, word), from: at }];
}
const OWN =
  /^(?:is|are|was|being|one|because|since|as|it|the|much|far|clearly|always|of|course|a|bit|runs|flows|,|with|that|which|has|plainly|visibly|noticeably|obviously|easily|markedly|distinctly|definitely|rather|gives|leaves|makes)$/;

function ordinal(scene: Scene, word: Measured, previous: Sentence): Reading[] | undefined {
  // "the first figure" is one of a size, no size.
  const at = scene.items.findIndex(
    (item, i) =>
      ORDINALS.has(item.word) &&
      scene.items[i + 1]?.axisNoun?.axis !== 'number' &&
      !ANOTHER.test(scene.items[i - 1]?.word ?? ''),
  );
  if (at < 0 || at > word.at || word.at - at > 8) return undefined;
  // "The bigger the first figure": of a writing, and neither of the two.
  if (PART_OF_WRITING.test(scene.items[at + 1]?.word ?? '')) return [];
  const pairOf = twoGroups(scene, previous);
  if (!pairOf) return [];
  const [a, b] = pairOf;
  const [left, right] = ORDINALS.get(scene.items[at]!.word) === 0 ? [a, b] : [b, a];
  return [comparison(scene, 'ordinal', left, right, word)];
}

/** "A second line, wider, was wanted": one more, and neither of the two. */
const ANOTHER = /^(?:an?|every|each|no)$/;

const PART_OF_WRITING = /^(?:figures?|digits?|numbers?|numerals?|zeros?|noughts?|letters?|words?)$/;

const singles = (group: Group): Group[] =>
  group.mentions.length === 2
    ? group.mentions.map((mention) => ({ ...group, mentions: [mention], sizes: mention.sizes }))
    : [group];

/** Two groups of one system in the sentence before, or one in each of the two sentences before. */
function twoGroups(scene: Scene, previous: Sentence): [Group, Group] | undefined {
  const here = distinct(groups(previous.items).flatMap(singles));
  if (here.length === 2 && sameSystem(here[0]!, here[1]!)) return [here[0]!, here[1]!];
  const earlier = scene.before.at(-2);
  const one = earlier ? distinct(groups(earlier.items)) : [];
  const [a, b] = [one[0], here[0]];
  return one.length === 1 && here.length === 1 && a && b && sameSystem(a, b) && !sameSizes(a, b)
    ? [a, b]
    : undefined;
}

/** "The new cannula is bigger." */
const replacement = (items: readonly Item[]) =>
  items.some(
    (item, i) => (item.word === 'new' || item.word === 'replacement') && items[i + 1]?.deviceNoun === true,
  );

/** "Flow is better with that one." */
const withThatOne = (items: readonly Item[], word: Measured): boolean =>
  /^(?:with|through) (?:that|this|the new) one\b|^(?:with|through) it [.!]/.test(
    items
      .slice(word.to + 1, word.to + 5)
      .map((item) => item.word)
      .join(' '),
  );

/** "Same length, more flow.": said of what was just done, without a verb. */
const bareFlow = (items: readonly Item[]): boolean =>
  finds(BARE_FLOW, textOf(items.filter(({ kind }) => kind !== 'punctuation')));
const BARE_FLOW =
  /^(?:(?:same|equal|at the same|like) length )?(?:and |but )?(?:much |far |even |a lot )?(?:more|better|faster|higher|greater|quicker|less|slower|lower|poorer|worse) (?:flow|flow rates?|throughput)(?: (?:at|for|with|and)? ?(?:the |an? )?(?:same|equal|like) length)?$/;
const DENIES = cue(NEGATIONS);

function pronoun(scene: Scene, word: Measured, previous: Sentence): Reading[] {
  if (word.degree !== 'comparative') return [];
  const before = scene.items.slice(0, word.at);
  const opens =
    word.at <= 5 &&
    (before.some((item) => PRONOUNS.has(item.word)) || replacement(before) || withThatOne(scene.items, word));
  const says = opens || (bareFlow(scene.items) && !holds(previous.items, DENIES));
  if (!says || scene.items.length > 12) return [];
  const exchange = exchangeIn(previous.items);
  if (!exchange || sameSizes(exchange.given, exchange.chosen)) return [];
  return [comparison(scene, 'follow', exchange.chosen, exchange.given, word)];
}
