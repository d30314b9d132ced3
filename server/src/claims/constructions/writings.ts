/**
 * Two writings of a thread said to be one that are two, in whatever words: "a 2 is 2-0 with the ending left off", "one says 3
 * and one 3-0, the packets hold the same thickness". The pair must be one that is confused (the same figure with and without
 * its zero, a row of zeros miscounted), and a word of sameness or of writing must tie them; nothing may turn the sentence.
 */

import type { Mention } from '../../mentions/model.ts';
import type { ComparisonClaim, Operand } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { type OldWriting, oldWriting } from './old-writings.ts';
import { ruleClaim } from './rule-claim.ts';

export const writings: Construction = {
  id: 'writings',
  needs: () => [{ holds: ['thread'] }, { sizes: 2, holds: ['french'], like: APART_WORD }],
  read(scene) {
    if (scene.sentence.close === '?' || scene.items.length > 45) return [];
    const found = twoWritings(scene);
    const old = found.length > 0 ? undefined : oldWriting(scene);
    return old ? [oldReading(scene, old)] : found;
  },
};

function twoWritings(scene: Scene): Reading[] {
  const { items } = scene;
  const all = writtenIn(items);
  if (all.length < 2) return [];
  if (all[0]!.sizes[0]!.system === 'french') return apart(scene);
  if (items.some((item, i) => turns(item) && !wayOf(items, i))) return [];
  const [a, b, ...more] = [...new Map(all.map((one) => [one.sizes[0]!.value, one])).values()];
  if (!a || !b || more.length > 0 || !confused(a, b) || twice(all)) return [];
  const cue = sameness(items) ?? tied(items, a, b);
  return cue === undefined ? [] : [reading(scene, a, b, cue)];
}

/** "From 2-0 to 0, for 1-0 and 0 are one": one size in two writings, which may be what is said to be the same. */
const twice = (all: readonly Group[]): boolean =>
  all.some(({ mentions: [one], sizes }) =>
    all.some(
      ({ mentions: [other], sizes: same }) =>
        one && other && sizes[0]!.value === same[0]!.value && one.text !== other.text,
    ),
  );

/** The writings of a sentence, all of threads or all of one unit; none when another size is named. */
function writtenIn(items: readonly Item[]): Group[] {
  const found = items.flatMap((item, at): Group[] => {
    const { mention } = item;
    if (mention && mention.kind !== 'ambiguous')
      return [{ from: at, to: at, mentions: [mention], sizes: mention.sizes }];
    const said = SAYS.test(items[at - 1]?.word ?? '') || (items[at - 1]?.word ?? ',') === ',';
    const figure =
      FIGURE.test(item.word) && (mention !== undefined || (said && AFTER.test(items[at + 1]?.word ?? '.')));
    return figure
      ? [{ from: at, to: at, mentions: [], sizes: [{ system: 'usp', value: Number(item.word) }] }]
      : [];
  });
  const system = found.find(({ mentions }) => mentions.length > 0)?.sizes[0]?.system;
  const plain = found.every(
    ({ sizes, mentions }) =>
      sizes.length === 1 && sizes[0]!.system === system && !mentions.some(({ bound }) => bound),
  );
  return plain && (system === 'usp' || system === 'french') ? found : [];
}
const FIGURE = /^(?:[1-9]|10)$/;
const AFTER =
  /^(?:[.,;:!?)"”'’–—-]|is|are|and|or|means?|reads?|stands|would|can|may|the|in|on|with|instead|for|silk|nylon|suture|thread|tie|polyglactin)$/;
const SAYS =
  /^(?:["“'‘*_]|writes?|written|writing|prints?|printed|says?|size|number|no|plain|bare|an?|the|or|and|as|is|means?|marked|labelled|labeled|says|reads?|shows?|whether|either)$/;

function reading(scene: Scene, a: Group, b: Group, cue: number): Reading {
  const [first, last] = a.from < b.from ? [a, b] : [b, a];
  const side = (group: Group): Operand =>
    group.mentions.length > 0
      ? operand(scene, group)
      : { sizes: group.sizes, mentions: [], span: spanOf(scene, scene.items[group.from]!) };
  const claim: ComparisonClaim = {
    kind: 'comparison',
    construction: 'writings',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[first.from]!, scene.items[last.to]!),
    left: side(first),
    right: side(last),
    axis: 'outer',
    relation: 'same',
  };
  return {
    claim,
    at: cue,
    from: Math.min(cue, first.from),
    to: Math.max(cue, last.to),
    own: true,
    unconditional: true,
  };
}

function oldReading(scene: Scene, { a, b, cue, before }: OldWriting): Reading {
  const claim: ComparisonClaim = {
    kind: 'comparison',
    construction: 'writings',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[b.from]!, scene.items[b.to]!),
    left: operand(scene, a),
    right: operand(scene, b),
    axis: 'outer',
    relation: 'same',
  };
  const from = before ? b.from : a.from;
  return { claim, at: Math.max(0, cue), from, to: b.to, own: true, unconditional: true };
}

/** What sets the two apart after all, doubts it, or tells of a slip. */
const TURNS =
  /^(?:different|differ|differs|than|confus.*|mix|mixed|mixing|mistak.*|misread.*|errors?|careful|danger.*|instead|versus|vs|rather|whereas|while|ask|asks|asked|asking|check|checks|meant|wanted|intended|supposed|wrong.*|unlike|between|apart|got|brought|received|handed|came|unless|until|next|below|above|before|beside|distinguish.*|unclear|ambiguous|swap.*|replace.*|trap|risk|opposite|far)$/;
const turns = ({ word, magnitude }: Item): boolean =>
  (NEGATIONS.has(word) && !/^(?:no|without)$/.test(word)) ||
  magnitude?.degree === 'comparative' ||
  TURNS.test(word);

/** "two ways of asking for the same thread". */
const wayOf = (items: readonly Item[], i: number): boolean => joined(items, i - 2, i) === 'ways of';

/** The same figure with and without its zero; 0 and 2-0; a row of zeros and another count. */
function confused(a: Group, b: Group): boolean {
  const [x, y] = [a.sizes[0]!.value, b.sizes[0]!.value];
  const [high, low] = [Math.max(x, y), Math.min(x, y)];
  const rows = [a, b].some(({ mentions }) => /^0{2,}$/.test(mentions[0]?.text ?? ''));
  return (high >= 1 && low === 1 - high) || (high === 0 && low === -1) || rows;
}

const THING =
  '(?:thread|threads|size|sizes|suture|sutures|thing|spool|reel|stuff|strand|stitch|material|item|diameter|thickness|calib(?:re|er)|width|product|packet|string|silk|nylon|one|strength|gauge|order|number|line|cord|roll|box)';
const SAME = new RegExp(
  `(?<!\\b(?:in|on|at|for|with|by|into) the )\\b(?:same ${THING}\\b|(?:is|are|be|mean|means) (?:all |just |really |exactly |quite )?(?:the same|identical|interchangeable|equivalent|synonyms)\\b(?! (?:for|in|of|number))|(?:is|are) one(?= [.,;:!]|$)|one (?:and the same|thread|size|suture|reel|spool|box)\\b(?! (?:up|down|above|below|step|apart|away|on|from|off|larger|smaller|in|for|at))|identical ${THING}\\b|interchangeabl[ey]\\b|synonyms?\\b|(?:two|three|different) (?:spellings|writings|notations|forms|names|ways (?:of (?:writing|printing|asking for|ordering|saying|spelling|naming)|to (?:write|say|spell|order|name)))\\b|no (?:difference|odds)\\b(?! (?:to|in|for|when|at))|${THING} is the same\\b|amounts? to the same\\b|same as\\b)`,
);

/** A word of sameness, wherever it stands. */
function sameness(items: readonly Item[]): number | undefined {
  const match = SAME.exec(joined(items));
  if (!match) return undefined;
  const last = match[0].split(' ').at(-1)!;
  const before = joined(items).slice(0, match.index).split(' ').length - 1;
  const at = items.findIndex(({ word }, i) => i >= before && word.split(' ').includes(last));
  return at < 0 ? undefined : at;
}

const BETWEEN =
  /\b(?:writ(?:e|es|ten|ing)|spel(?:l|ls|led|t|ling)|prints?|printed|reads?|calls?|called|means?|stands? for|short for|shorthand|abbreviat\w+|says|known as|i\.e|in other words|that is|which is|way (?:of|to)|ending|left off|dropped|hand over|(?:pass|open|give|fetch|take|use|load)\b|enter(?:ed)? as|chart(?:ed)? as|label(?:led)?|(?:order|sell|stock|know|list|file)(?:ed|s)? (?:it )?as|sold as|known as)\b/;
const BEFORE = /\b(?:spoken|said|written|printed|read|shown|typed|called|handwritten)\b/;
const LEFT =
  /\b(?:ending|dash|hyphen|zero|nought|tail|oh|slash) (?:is |was |simply |just )?(?:left off|left out|dropped|missing|omitted|understood|implied|cut off|taken off)\b/;

/** Words of writing between the two, or an ending left off behind them. */
function tied(items: readonly Item[], a: Group, b: Group): number | undefined {
  const gap = items.slice(a.to + 1, b.from);
  const between = textOf(gap);
  if (b.from - a.to > 16 || gap.some(({ word }) => /^(?:or|only|[.;])$/.test(word))) return undefined;
  const led =
    BEFORE.test(joined(items, a.from - 4, a.from)) &&
    /\b(?:and|or|but) (?:written|printed|spoken|read|typed)\b/.test(between);
  const left = LEFT.test(joined(items, b.to + 1, b.to + 8)) && /\b(?:is|are|means|as|=)\b/.test(between);
  const says = /\b(?:says|prints|reads|writes|shows|asks? for|calls? for)\b/.test(
    joined(items, a.from - 4, a.from),
  );
  // "4-0 means the nylon, 4 means the tray": each has a meaning of its own.
  if (!says && !led && /\b(?:means?|stands?|is|says|reads) .*,/.test(between)) return undefined;
  if (!led && !left && !BETWEEN.test(between)) return undefined;
  // "Read 2 as 2-0" and "when he says 2, hand over the 2-0" need one who says it; "a 2 is written beside the 2-0" has none.
  if (/\b(?:hand|pass|open|give|fetch|take|use|load)\b/.test(between) && !says) return undefined;
  if (/\b(?:beside|near|under|and|to|behind)\b(?: \S+)?$/.test(between) && !led) return undefined;
  const word = gap.findLastIndex(({ kind }) => kind === 'word');
  return word < 0 ? undefined : a.to + 1 + word;
}

/** "FG 14, Fr 14, Ch 14: three different sizes", "a 14 Ch is really a 16 Fr": one scale under its several names. */
function apart(scene: Scene): Reading[] {
  const { items } = scene;
  const all = groups(items).flatMap(({ mentions }) => mentions);
  const names = new Set(all.map(({ text }) => text.toLowerCase().replace(/[^a-zè]/g, '')));
  if (names.size < 2 || names.has('')) return [];
  if (all.some(({ sizes }) => sizes.length !== 1 || sizes[0]!.system !== 'french')) return [];
  const values = new Set(all.map(({ sizes }) => sizes[0]!.value));
  const words = joined(items);
  const said = values.size === 1 ? APART.test(words) : all.length === 2 && equated(items, all);
  if (!said || TAKEN_BACK.test(words)) return [];
  const at = items.findIndex(({ mention }) => mention === all.at(-1));
  const claim = ruleClaim(scene, 'writings', 'french', 'french-names-differ', at);
  return [{ claim, at, from: at, to: at, own: true }];
}
const TAKEN_BACK =
  /\b(?:not (?!the same)|\w+n't (?!the same)|ways|names|labels|spellings|writings|packets|makers|never|if|nobody|myth|mislabel\w*|wrong\w*|mistakes?)\b/;

/** Two sizes with nothing between them but "is", and nothing behind. */
function equated(items: readonly Item[], [a, b]: readonly Mention[]): boolean {
  const [left, right] = [a, b].map((one) => items.findIndex(({ mention }) => mention === one));
  const gap = items.slice(left! + 1, right!).filter(({ deviceNoun, word }) => !deviceNoun && word !== 'box');
  const end = items.slice(right! + 1).find(({ deviceNoun }) => !deviceNoun);
  if (ONE_OF_THEM.test(items[left! - 1]?.word ?? '')) return false;
  return IS.test(textOf(gap)) && (end?.kind ?? 'punctuation') === 'punctuation' && end?.word !== ':';
}
/** "This 14 Ch is really a 16 Fr": one that bears a wrong label. */
const ONE_OF_THEM = /^(?:the|this|that|these|those|my|our|your|his|her|their)$/;
const IS =
  /^(?:(?:is|are|equals|means|=)(?: (?:really|actually|in fact|always|simply|just|in truth))*|is the same as|corresponds to)(?: an?| the)?$/;
const SIZES = 'sizes|widths|diameters|calibres';
const APART = new RegExp(
  `\\b(?:(?:two|three|four) (?:different |distinct |separate )?(?:${SIZES})|different (?:sizes|widths|diameters|tubes|catheters)|(?:are|is) (?:not the same|different)|not the same (?:size|width|thing|catheter|tube|scale)|(?:are|is) (?:(?:really|quite|in fact|entirely|two|completely) )*(?:separate|distinct|different|two|three) (?:scales|systems|units|measures))\\b`,
);
/** One of these is in all of them. */
const APART_WORD = new RegExp(
  `${SIZES}|different|same|scales|systems|units|measures|^(?:is|are|equals|means|=|corresponds)$`,
);
