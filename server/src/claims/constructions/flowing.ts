/**
 * Two sizes set against each other by what runs through them, however it is said: "you get more through a 30 G than a 27 G",
 * "of the 18 and the 22, the 22 has the bag in sooner", "swap to the 26 G, which lets blood through faster". Everyday words are
 * passed over; where two sizes could own the word, nothing is read.
 */

import { clauseOf, flowSaid, PLACES, someIn } from '../text/flowing.ts';
import { sentencesBefore, single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { remembered } from '../text/remember.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem, together } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { FLOW_DEGREES, FLUID, SHARES } from '../words/flowing.ts';
import { exchangeIn } from './exchange.ts';
import type { Construction, Reading } from './model.ts';
import { both } from './of-two.ts';
import { ruleClaim } from './rule-claim.ts';
import { comparison, withEach, wordless } from './than.ts';
import { otherwiseMeant } from './than-otherwise.ts';

/** "The 14 Fr drain clogs sooner than the 16 Fr": what is sooner is no flow. */
const CLOGS =
  /\b(?:clogs?|blocks?|plugs?|silts?)(?: up)? (?:much |far |even )?(?:sooner|faster|earlier|quicker|slower|first)\b/;

export const flowing: Construction = {
  id: 'flowing',
  needs: () => [{ sizes: 1, like: FLOW_DEGREES }],
  read(scene) {
    const { items } = scene;
    const said = flowSaid(items);
    // "Flow drops by half between 16 and 18 G."
    if (
      said.length > 2 ||
      CLOGS.test(joined(items, 0, items.length)) ||
      /\b(?:drops|falls|halves|rises|doubles|changes)\b.* between(?: an?| the)?$/.test(
        joined(items, 0, groups(items)[0]?.from ?? 0),
      )
    )
      return [];
    const own = groups(items).flatMap(single);
    const [first] = own;
    if (!first || own.some((g) => g.sizes.length > 1 || !sameSystem(g, first) || together(items, g)))
      return [];
    if (!RUN.has(first.sizes[0]!.system)) return [];
    if (said.length === 0) return [...best(scene, own), ...wished(scene, own)];
    // "Faster through a 16 G, faster through a 22 G": of either, against something else.
    if (said.length === 2 && said[0]!.sign === said[1]!.sign && !items.some((item) => item.word === 'than'))
      return [];
    return said.flatMap((word) => against(scene, own, word));
  },
};

/** "Give volume down the one that flows best, the 18": of the sizes named before it in the sentence. */
function best(scene: Scene, own: readonly Group[]): Reading[] {
  const { items } = scene;
  const [word, ...more] = measuredWords(items).filter((m) => m.degree === 'superlative' && m.axis === 'flow');
  if (!word || more.length > 0 || items.some((item) => item.word === 'than' || NEGATIONS.has(item.word)))
    return [];
  const after = own.filter((g) => g.from > word.to);
  const [owner] = after;
  const clause = clauseOf(items, word.at, COMMA);
  if (own.some((g) => g.from >= clause.from && g.to < word.at)) return [];
  if (!owner || after.length > 1 || owner.from - word.to > 6) return [];
  const ends = items.slice(owner.to + 1, owner.to + 3).find((item) => !item.deviceNoun);
  if (!APPOSED.test(joined(items, word.to + 1, owner.from)) || ends?.kind === 'word') return [];
  const others = values(
    own.filter((g) => g.to < word.at),
    owner,
  );
  if (others.length === 0) return [];
  return [withEach(wordless(comparison(scene, 'flowing', owner, both(others), word)))];
}
const APPOSED =
  /^(?:(?:one|lumen|cannula|line|flow)? ?(?:[,:;–—(]|is|being|namely|which is|that is) ?)+(?:an?|the|our)?$/;

/** "Choose the 18 G over the 22 G when fluid has to go in fast": what is chosen for speed is to be the faster. */
function wished(scene: Scene, own: readonly Group[]): Reading[] {
  const { items } = scene;
  const exchange = exchangeIn(items);
  if (
    !exchange ||
    exchange.negates ||
    distinct(own).length !== 2 ||
    sameSizes(exchange.given, exchange.chosen)
  )
    return [];
  if (
    items.some(
      ({ word }) => word === 'than' || NEGATIONS.has(word) || CHANGES.test(word) || WAIVED.test(word),
    )
  )
    return [];
  const plain = measuredWords(items).filter((m) => m.axis === 'flow' && m.degree === 'plain' && !m.excess);
  const [word] = plain;
  if (!word || plain.length > 1) return [];
  const clause = clauseOf(items, word.at, COMMA);
  const aim = /\b(?:when|whenever|if|where|for|to|needs?|wants?|must|wanted|needed)\b/.test(
    joined(items, clause.from, word.at),
  );
  if (!aim || !someIn(items, clause, FLUID)) return [];
  return [
    {
      ...wordless(comparison(scene, 'flowing', exchange.chosen, exchange.given, word)),
      unconditional: true,
      own: true,
    },
  ];
}
const WAIVED = /^(?:although|though|despite|even|slow|slowly|because|since)$/;

/** Systems of things that something runs through. */
const RUN: ReadonlySet<string> = new Set(['needle-gauge', 'french', 'tube-id']);

const REACH_THAN = 16;
const ENDS = /^(?:[.;:!?—–]|but|because|since|while|whereas|so|although|though)$/;

function against(scene: Scene, own: readonly Group[], word: Measured): Reading[] {
  if (otherwiseMeant(scene.items, word)) return [];
  const than = thanAfter(scene.items, word);
  if (than < 0) {
    const kind = kindBefore(scene, own, word);
    if (kind) return kind;
  }
  if (than > 0) return kindAfter(scene, own, word, than) ?? byThan(scene, own, word, than);
  if (leftOpen(scene.items) || scene.items.some((item) => item.word === 'than')) return [];
  const again = sameAgain(scene, own, word);
  if (again) return [again];
  return byClause(scene, own, word);
}

/** The "than" of the word: no other comparing word, and no end of the clause, lies between. */
function thanAfter(items: readonly Item[], word: Measured): number {
  if (PLACES.test(items[word.at]!.word)) return word.at;
  const ratio = SHARES.has(items[word.at]!.word);
  for (let i = word.to + 1; i < items.length && i <= word.to + REACH_THAN; i++) {
    const item = items[i]!;
    if (ratio && item.word === 'that' && items[i + 1]?.word === 'of') return i + 1;
    if (item.word === 'than' || (ratio && item.word === 'as' && i > word.to + 1)) return i;
    if (ENDS.test(item.word)) return -1;
    if (item.magnitude?.degree === 'comparative' && (i > word.to + 1 || item.magnitude.axis !== 'other'))
      return -1;
    if (/^(?:compared|against|versus)$/.test(item.word)) return item.word === 'compared' ? i + 1 : i;
  }
  return -1;
}

const values = (found: readonly Group[], but: Group): Group[] =>
  distinct(found).filter((g) => !sameSizes(g, but));

/** "A runs faster than B": of all sizes before, the one that is not B. */
function byThan(scene: Scene, own: readonly Group[], word: Measured, than: number): Reading[] {
  const { items } = scene;
  const clause = clauseOf(items, word.at, ENDS);
  const right = own.find((g) => g.from > than && g.from - than <= 9 && !endsBetween(items, than, g.from));
  if (!right) return [];
  const between = own.filter((g) => g.from > word.to && g.to < than);
  const before = own.filter((g) => g.from >= clause.from && g.to < word.at);
  const left =
    only(values(between, right)) ??
    (between.length > 0
      ? undefined
      : (only(values(before, right)) ?? outside(scene, own, clause.from, right)));
  if (!left || before.length + between.length > 3) return [];
  return [comparison(scene, 'flowing', left, right, word)];
}

/** "A 14 G runs slower than any of the smaller cannulae": set against all that are narrower, or wider. */
function kindAfter(scene: Scene, own: readonly Group[], word: Measured, than: number): Reading[] | undefined {
  const { items } = scene;
  const after = joined(items, than + 1, than + 8);
  const kind = KIND.exec(after);
  if (!kind || own.some((g) => g.from > than && g.from < than + 8)) return undefined;
  const width = NARROW.test(kind[1]!) ? -1 : 1;
  const size = only(distinct(own));
  if (!size || leftOpen(items)) return [];
  return [lawOfWidth(scene, size, word, width === word.sign ? 'wider-is-slower' : 'wider-is-faster')];
}
/** "Anything smaller than a 20 G will run blood slower." */
function kindBefore(scene: Scene, own: readonly Group[], word: Measured): Reading[] | undefined {
  const { items } = scene;
  const size = only(own);
  const kind = size && SUCH.exec(joined(items, Math.max(0, size.from - 7), size.from));
  if (!size || !kind || size.to > word.at || clauseOf(items, word.at, COMMA).from > size.from)
    return undefined;
  if (leftOpen(items)) return [];
  const width = NARROW.test(kind[1]!) ? -1 : 1;
  return [lawOfWidth(scene, size, word, width === word.sign ? 'wider-is-faster' : 'wider-is-slower')];
}
const NARROW = /^(?:small|narrow|thin|fine|slim|skinn|slend)/;
const SUCH =
  /\b(?:anything|something|everything|cannula\w*|needles?|catheters?|tubes?|ones?|sizes?) ((?:small|narrow|thin|fin|slim|skinn|slend|wid|larg|bigg|fatt|thick)\w*er) than(?: an?| the| our)?$/;

const lawOfWidth = (scene: Scene, { from }: Group, { at, to }: Measured, formula: string): Reading => ({
  claim: ruleClaim(scene, 'flowing', 'needle-gauge', formula, at),
  at,
  from: Math.min(from, at),
  to: Math.max(from, to),
});

const KIND =
  /^(?:through |with |in |down |via )?(?:an?|any|all|every|each|the|some|our)?(?: of)?(?: the| our| these)? ?(?:other )?((?:small|narrow|thin|fine|slim|skinn|slend|wid|larg|bigg?|fatt?|thick)\w*)(?:-bore)? (?:ones?|cannula\w*|needles?|catheters?|sizes?|tubes?|lines?|drains?|lumens?|gauges?|bores?)\b/;

const endsBetween = (items: readonly Item[], from: number, to: number): boolean => {
  for (let i = from + 1; i < to; i++) if (ENDS.test(items[i]!.word) || items[i]!.word === ',') return true;
  return false;
};

const only = (found: readonly Group[]): Group | undefined => (found.length === 1 ? found[0] : undefined);

/** The size spoken of before the clause: in this sentence, else in the one before. */
function outside(scene: Scene, own: readonly Group[], from: number, right: Group): Group | undefined {
  const { items } = scene;
  const clause = clauseOf(items, Math.min(from, items.length - 1), ENDS);
  const pronoun = items.slice(clause.from, clause.to + 1).some(({ word }) => PRONOUN.test(word));
  // "A 25 G is kinder but aspirates less easily than …": the verb goes on with the subject.
  const goesOn = clause.from > 0 && GOES_ON.test(items[clause.from]!.word);
  if (!pronoun && !goesOn) return undefined;
  const here = own.filter((g) => g.to < from);
  if (here.length > 0) return only(values(here, right));
  const previous = sentencesBefore(scene)[0];
  const spoken = previous ? groups(previous.items).flatMap(single) : [];
  const found = spoken.every((g) => sameSystem(g, right) && g.sizes.length === 1)
    ? values(spoken, right)
    : [];
  return only(found);
}
const GOES_ON =
  /^(?:is|are|has|gives?|lets?|runs?|flows?|drains?|empties|delivers?|carries|passes|aspirates?|fills?|takes?|needs?|draws?|drips?|infuses?|injects?|flushes)$/;
const PRONOUN = /^(?:it|its|it's|that|this|which|one|they|latter|former)$/;

/** What changes the flow of one and the same size. */
const CHANGES =
  /^(?:unless|squeez\w*|pressuris\w*|pressur(?:e|ised|ized)|rais(?:e|ed|ing)|height|clamp\w*|kink\w*|warm\w*|cold|viscous|length|long|short|shorter|both|pump|blocked|without|may|might|could|either|neither|whether)$/;

/** Does the sentence deny something, or change more than the size? "Twice as long" is a time. */
const leftOpen = remembered((items: readonly Item[]): boolean =>
  items.some(({ word }, i) => NEGATIONS.has(word) || (CHANGES.test(word) && items[i - 1]?.word !== 'as')),
);

/** "The feed that crawls through an 8 Fr will run faster down a 12 Fr": one fluid, first through the one and then the other. */
function sameAgain(scene: Scene, own: readonly Group[], word: Measured): Reading | undefined {
  const { items } = scene;
  const [first, second, ...more] = own;
  if (!first || !second || more.length > 0 || sameSizes(first, second)) return undefined;
  if (first.to > word.at || second.from < word.to) return undefined;
  const fluid = /\b(?:that|which|what|whatever) (?:\S+ ){1,5}?(?:an?|the|our|your) $/.test(
    `${joined(items, 0, first.from)} `,
  );
  const parted = items
    .slice(first.to + 1, second.from)
    .some(({ word: own }) => /^(?:[,;:.()]|and|or|but|while|if|when|as|once)$/.test(own));
  const through = /^(?:still |yet )?(?:through|down|along|via|with|in|up)(?: (?:an?|the|our|your))?$/;
  if (!fluid || parted || !through.test(joined(items, word.to + 1, second.from))) return undefined;
  return wordless(comparison(scene, 'flowing', second, first, word));
}

/** No "than": the word belongs to the one size of its clause, and is set against the only other. */
function byClause(scene: Scene, own: readonly Group[], word: Measured): Reading[] {
  const { items } = scene;
  if (measuredWords(items).filter((m) => m.degree === 'comparative').length > 2) return [];
  const all = distinct(own);
  if (all.length > 2) return [];
  const owner = ownerOf(scene, own, word);
  if (!owner) return [];
  const other = only(values(own, owner)) ?? (all.length === 1 ? spokenBefore(scene, owner) : undefined);
  if (!other) return [];
  return [{ ...wordless(comparison(scene, 'flowing', owner, other, word)), unconditional: true }];
}

const COMMA = /^(?:[.,;:!?()—–]|but|because|since|while|whereas|so|although|though|and|as)$/;

/** The size in the clause of the word; a clause without one takes up the size chosen or put in just before. */
function ownerOf(scene: Scene, own: readonly Group[], word: Measured): Group | undefined {
  const { items } = scene;
  const clause = clauseOf(items, word.at, COMMA);
  const text = joined(items, clause.from, clause.to + 1);
  const here = own.filter((g) => g.from >= clause.from && g.to <= clause.to);
  const exchange = exchangeIn(items);
  const exchanged =
    exchange && !exchange.negates ? own.find((g) => sameSizes(g, exchange.chosen)) : undefined;
  if (/^(?:because|since|as|for)$/.test(items[clause.from - 1]?.word ?? '')) return undefined;
  if (here.length > 0) {
    const one = only(distinct(here));
    return one ? (TURNED.test(text) ? undefined : one) : exchanged;
  }
  if (exchanged && exchanged.to < clause.from) return exchanged;
  const before = clauseOf(items, Math.max(0, clause.from - 2), COMMA);
  const last = own.filter((g) => g.from >= before.from && g.to < clause.from);
  return last.length === 1 && TAKEN.test(joined(items, before.from, clause.from)) ? last[0] : undefined;
}
const TURNED = /\b(?:instead|rather|not|unlike|over|from|against|for an?|beats?)\b/;
/** Words with which a size is put to use, so that what follows is said of it. */
const TAKEN =
  /\b(?:once|when|after|with|through|using|now|then|take|takes|use|put|puts|pick|choose|change|swap|switch|go|placed|sited|via|on|in)\b/;

/** The one other size of the sentence before: "slowly through a 24 G. Swap to the 26 G, which …". */
function spokenBefore(scene: Scene, owner: Group): Group | undefined {
  const previous = scene.before.at(-1);
  if (!previous || previous.close === '?') return undefined;
  const spoken = distinct(groups(previous.items).flatMap(single));
  const one = spoken.length > 2 ? undefined : only(values(spoken, owner));
  return one && one.sizes.length === 1 && sameSystem(one, owner) ? one : undefined;
}
