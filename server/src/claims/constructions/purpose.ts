/**
 * A size taken for a purpose it does not serve: "if you mean to go wider, ask the pharmacy for a 10", "when the 12 Fr keeps
 * blocking you want something roomier, and the 10 Fr is the next one", "something smaller than the 12 Fr, such as a 20 Fr".
 * Whatever means nothing to us may stand between the wish and the choice; one size must be the one taken, and it is set
 * against all others spoken of, so that the verdict is the same whichever of them is given up.
 */

import { finds } from '../../notes/patterns.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { compares, type Measured, measuredWords } from '../text/magnitudes.ts';
import { remembered } from '../text/remember.ts';
import { distinct, type Group, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { LEAVES, OPERATORS, OWN_ACT, TAKES, TOLD, WISHES } from '../words/purposes.ts';
import { exchangeIn } from './exchange.ts';
import { wishedFor } from './loose-subject.ts';
import { sizesIn } from './loosely.ts';
import type { Construction, Reading } from './model.ts';
import { both } from './of-two.ts';
import { comparison, wordless } from './than.ts';

export const purpose: Construction = {
  id: 'purpose',
  needs: () => [
    { sizes: 1, holds: ['compared'] },
    { sizes: 1, holds: ['excess'] },
    { sizes: 1, like: TAKES },
  ],
  read(scene) {
    const { items, sentence, before } = scene;
    if (sentence.close === '?' || items.length > LONGEST) return [];
    const here = wishIn(items);
    const previous = before.at(-1);
    const wish = here ?? (previous && previous.close !== '?' ? wishIn(previous.items) : undefined);
    const own = wish ? sizesIn(items) : [];
    if (own.length === 0 || own.length > 3) return [];
    if (here) return served(scene, own, items, here);
    return wish &&
      previous &&
      own.length === 1 &&
      !items.some(({ magnitude }) => magnitude) &&
      !stopsAfter(previous.items, wish)
      ? served(scene, own, previous.items, wish)
      : [];
  },
};
const LONGEST = 60;

const AXES = new Set(['outer', 'bore', 'hole', 'strength', 'flow']);

/** The one word that says what is wanted, or of what there is too much. */
const wishIn = remembered((items: readonly Item[]): Measured | undefined => {
  const words = measuredWords(items).filter((m) => m.degree === 'comparative' || m.excess);
  const [word] = words;
  const clear = word && words.length === 1 && AXES.has(word.axis) && !word.idiom && !word.system;
  // "Too tight" is said of the way as much as of the tube.
  if (!clear || (word.excess && /^(?:tight|snug)$/.test(items[word.at]!.word))) return undefined;
  return holds(items, OF_NUMBERS) || turned(items, word.at - 4, word.at) ? undefined : word;
});
/** Numbers that are higher, sizes that seem so: another matter. */
const OF_NUMBERS = cue(/^(?:numbers?|figures?|digits?|gauges?|how|why|whether|neither|nor)$/);

const turned = (items: readonly Item[], from: number, to: number): boolean =>
  items
    .slice(Math.max(0, from), Math.max(0, to))
    .some(({ word }) => NEGATIONS.has(word) || OPERATORS.test(word));

const stopsAfter = (items: readonly Item[], { to }: Measured): boolean => turned(items, to + 1, items.length);

/** Where what may be chosen is looked for. */
interface Look {
  readonly items: readonly Item[];
  readonly word: Measured;
  /** Behind the wish and what it is measured by. */
  readonly from: number;
  /** The wish is in the sentence before. */
  readonly elsewhere: boolean;
}

/** The size taken, set against what it is taken instead of. */
function served(scene: Scene, own: readonly Group[], wished: readonly Item[], word: Measured): Reading[] {
  const { items } = scene;
  const elsewhere = wished !== items;
  const standard = standardOf(wished, word, elsewhere ? sizesIn(wished) : own);
  const from = elsewhere ? 0 : Math.max(word.to, standard?.to ?? 0) + 1;
  const look: Look = { items, word, from, elsewhere };
  const free = own.filter((g) => !(standard && sameSizes(g, standard)));
  const [only, ...more] = free.filter((g) => shown(look, g) || (wanted(wished, word) && taken(look, g)));
  if (!only || more.length > 0) return [];
  const others = standard ? [standard] : othersOf(scene, only, own, elsewhere ? 0 : word.at);
  if (others.length === 0 || !others.every((g) => sameSystem(g, only) && !sameSizes(g, only))) return [];
  const sign = (word.excess ? -word.sign : word.sign) as 1 | -1;
  const made = comparison(scene, 'purpose', only, both(others), compares(only.from, word.axis, sign));
  return [{ ...wordless(made), unconditional: true, own: true }];
}

/** "wider than the 18 G", "a size below the 14 Fr". */
const standardOf = (items: readonly Item[], word: Measured, own: readonly Group[]): Group | undefined =>
  own.find((g) => g.from > word.to && THAN.test(joined(items, Math.max(word.to + 1, g.from - 5), g.from)));
const THAN = /(?:^| )than(?: \S+){0,3}$/;

/** The other sizes of the scale: of this sentence, or of the nearest before it that names any. */
function othersOf({ before, context }: Scene, only: Group, own: readonly Group[], at: number): Group[] {
  const other = (g: Group): boolean => sameSystem(g, only) && !sameSizes(g, only);
  const mine = own.filter((g) => g !== only);
  if (mine.length > 0) return mine.some((g) => g.from < Math.max(at, only.from)) ? distinct(mine) : [];
  for (const { items } of [...context.slice(-1), ...before.slice(-2)].reverse()) {
    const found = distinct(sizesIn(items));
    if (found.some(other)) return found.filter(other).length === found.length ? found : [];
  }
  return [];
}

/** Wanted, gone for, called for, or too much of it there. */
function wanted(items: readonly Item[], word: Measured): boolean {
  if (word.excess) return tooMuch(items, word);
  const ahead = items.slice(Math.max(0, word.at - 8), word.at);
  const cut = ahead.findLastIndex((item) => item.kind === 'size' || /^[.;:]$/.test(item.word));
  const after = joined(items, word.to + 1, word.to + 7);
  // "To plug the gap with a fatter tube, …"
  if (/^(?:to|for)$/.test(ahead[cut + 1]?.word ?? '') && items[word.at - 1]?.kind === 'word') return true;
  return (
    wishedFor(items, word) ||
    ahead.slice(cut + 1).some((item) => WISHES.test(item.word)) ||
    finds(CALLED_FOR, after)
  );
}
const CALLED_FOR =
  /\b(?:(?:is|are|was|be|being|seems?) (?:then |now |usually |often )?(?:wanted|needed|required|called for|asked for|preferred|desired|in order|worth(?! (?:knowing|remembering|repeating|noting|learning|saying)\b))|(?:may|can|could|might) be had)\b/;

/** "the 3-0 is still too fine", "the tube proves too wide": said of a size or a thing that has one, not of a vein. */
function tooMuch(items: readonly Item[], { at }: Measured): boolean {
  const ahead = items.slice(Math.max(0, at - 9), at);
  const head = ahead.findLastIndex((item) => !OF_VERB.test(item.word));
  return (
    head >= 0 && head < ahead.length - 1 && (ahead[head]!.kind === 'size' || ahead[head]!.deviceNoun === true)
  );
}
const OF_VERB =
  /^(?:too|is|are|was|be|being|proves?|proved|looks?|looked|feels?|felt|seems?|turns?|turned|runs?|still|far|much|a|bit|little|and|to|out|always|often|quite|it|just)$/;

/** Taken by a verb before it, or offered as what serves: "the 10 Fr is the next one up". */
function taken({ items, word, from, elsewhere }: Look, g: Group): boolean {
  const first = !elsewhere && g.from < word.at;
  if (first && !grounded(items, g, word)) return false;
  // "Swap the 22 for an 18 …": of two before the wish, the one that is taken up.
  const exchange = first ? exchangeIn(items) : undefined;
  if (exchange && !sameSizes(exchange.chosen, g)) return false;
  if (turned(items, g.to + 1, g.to + 5) || ALSO.test(joined(items, g.to + 1, g.to + 6))) return false;
  const start = Math.max(first ? 0 : from, g.from - 8);
  if (turned(items, first ? start : from, g.from)) return false;
  const verb = items.slice(start, g.from).findLastIndex((item) => TAKES.test(item.word)) + start;
  // "…, and we use 12 Fr for the girls": for somebody else.
  if (joined(items, from, verb).includes(', and') && /^(?:for|in|on|with)$/.test(items[g.to + 1]?.word ?? ''))
    return false;
  const plain = verb >= start && leadsTo(items, verb, g);
  if (plain) return !(elsewhere && TOLD.test(items[verb]!.word)) && told(items, verb);
  return (
    OFFERED_AFTER.test(joined(items, g.from - 3, g.from)) && SERVES.test(joined(items, g.to + 1, g.to + 7))
  );
}
/** From the verb to the size: "ask the pharmacy for a", "pull out a"; "change the 14" and "take out the 14" give it up. */
function leadsTo(items: readonly Item[], verb: number, g: Group): boolean {
  const way = items.slice(verb + 1, g.from);
  if (way.some((item) => item.kind !== 'word')) return false;
  const words = textOf(way);
  if (/\b(?:out|down)(?: the| your| our)$/.test(words)) return false;
  return !LEAVES.test(items[verb]!.word) || /\b(?:to|for|with|by|on|up|out an?|in)\b/.test(words);
}

const ALSO = /\b(?:as well|too)\b/;

const OFFERED_AFTER =
  /(?:^|(?:[,:;—–]|then|and|so)(?: and| so| then)?(?: an?| the| our| your)?|^(?:an?|the|our|your))$/;
const SERVES =
  /^(?:(?:needle|cannula|catheter|tube|drain|thread|suture|wire|sheath|one) )?(?:is|would be|will be|should be|will|would|should|does|comes) (?:then |often |probably )?(?:the |what |your |a )?(?:(?:next|right|better) |one (?:to|you|we|up|down)\b|answer|do\b|serve|next|you (?:want|need|take|open|ask)|we (?:want|need|take|open|ask)|to (?:ask|reach|take|use|open))/;

/** What somebody did once may have been a slip; what the author did, or tells to do, is taught. */
function told(items: readonly Item[], verb: number): boolean {
  if (!TOLD.test(items[verb]!.word)) return true;
  // In a talk it may be owned up to: "R: He asked for something finer than the 6-0, so I gave 5-0."
  return items[1]?.word !== ':' && OWN_ACT.test(joined(items, verb - 3, verb));
}

/** "change to a 10 Fr, because you need something wider": the choice first. */
function grounded(items: readonly Item[], g: Group, word: Measured): boolean {
  const between = items.slice(g.to + 1, word.at);
  const ground = between.findIndex((item) => GROUND.test(item.word));
  return (
    word.at - g.to <= 20 &&
    ground >= 0 &&
    !between.some((item) => /^[;:.]$/.test(item.word)) &&
    // "a 5-0, or a 6-0 if you want it finer": the nearest is what serves.
    !between.slice(0, ground).some((item) => item.kind === 'size')
  );
}
const GROUND = /^(?:because|since|as|whenever|when|if|where|should)$/;

/** "something smaller than the 12 Fr pigtail, such as a 20 Fr": shown as one such. */
function shown({ items, word, from, elsewhere }: Look, g: Group): boolean {
  if (elsewhere || g.from < from || g.from - from > 10 || turned(items, from, g.from)) return false;
  if (/^(?:or|and|to|versus|vs|not|\/)$/.test(items[g.to + 1]?.word ?? '')) return false;
  const lead = joined(items, from, g.from);
  return (
    EXAMPLE.test(lead) ||
    (OPENED.test(lead) && EXAMPLE_AFTER.test(joined(items, g.to + 1, g.to + 5))) ||
    (GOES.test(items[word.at - 1]?.word ?? '') && /^[,:(—–](?: an?| the| our)?$/.test(lead))
  );
}
const OPENED = /[,(—–](?: an?| the| our)?$/;
const EXAMPLE =
  /(?:^| )(?:such as|like|say|for (?:example|instance)|e\.g\.?|eg|namely|i\.e\.?|that is(?: to say)?|meaning|perhaps|maybe)(?: [,:])?(?: an?| the| our| your)?$/;
const EXAMPLE_AFTER = /^(?:\S+ )?(?:, )?(?:say|for (?:example|instance|one)|perhaps|maybe)\b/;
const GOES = /^(?:go|goes|going|went|move|change|switch|step|try)$/;
