/** What is given up and what is chosen: "from 16 Fr to 14 Fr", "a 16 rather than a 14", "prefer a 25 G to a 22 G". */
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { remembered } from '../text/remember.ts';
import { type Group, groups } from '../text/scene.ts';
import { EXCHANGE } from '../words/changes.ts';

/** The size given up and the size chosen. */
export interface Exchange {
  readonly given: Group;
  readonly chosen: Group;
  /** "not the 14 G but the 18 G": the negation belongs to the exchange. */
  readonly negates?: true;
}

const TAKE = new Set(
  'choose chose pick picked prefer preferred take took use used favour favor favoured grab reach want order'.split(
    ' ',
  ),
);

/** "↑ (thicker) or ↓ (thinner): 4-0 → 3-0 ↑": the words only tell what the arrows stand for. */
const legend = (items: readonly Item[]): boolean =>
  items.some(
    ({ word }, i) =>
      /^[↑↓]$/.test(word) && items[i + 1]?.word === '(' && items[i + 2]?.magnitude !== undefined,
  );

/** Finds what is given up and what is chosen. */
export const exchangeIn = remembered((items: readonly Item[]): Exchange | undefined =>
  legend(items) ? undefined : findExchange(items, groups(items)),
);

function findExchange(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  return (
    ranged(items, all) ??
    preferred(items, all) ??
    fromTo(items, all) ??
    swapped(items, all) ??
    instead(items, all) ??
    inAndOut(items, all) ??
    forIt(items, all) ??
    contrasted(items, all) ??
    failed(items, all) ??
    lacking(items, all)
  );
}

/** "we prefer a 25 G to a 22 G". */
function preferred(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  for (let i = 0; i + 1 < all.length; i++) {
    const [a, b] = [all[i]!, all[i + 1]!];
    const before = items.slice(Math.max(0, a.from - 3), a.from);
    const between = items.slice(a.to + 1, b.from).map((item) => item.word);
    if (
      before.some((item) => /^prefer(?:s|red)?$/.test(item.word)) &&
      between[0] === 'to' &&
      between.length <= 2
    )
      return { given: b, chosen: a };
    const text = between.join(' ');
    if (between.length > 10) continue;
    if (finds(IS_PREFERRED, text)) return { given: b, chosen: a };
    if (finds(GIVEN_UP_FOR, text)) return { given: a, chosen: b };
  }
  return undefined;
}
/** "The 16 G is to be preferred to the pink 20 G." */
const IS_PREFERRED =
  /^(?:\S+ )?(?:is|are|was|were) (?:\S+ )?(?:to be )?(?:prefer(?:red|able) to|(?:chosen|taken|picked|given preference|preferred) over)(?: (?:an?|the|our))?(?: \S+)?$/;
/** "A 2-0 is given up in favour of the heavier 3-0." */
const GIVEN_UP_FOR =
  /^(?:\S+ )?(?:is|are|was|were) (?:\S+ )?(?:given up|abandoned|set aside|discarded|put aside|left) (?:in favou?r of|for)(?: (?:an?|the|our))?(?: \S+)?$/;

const verbNear = (items: readonly Item[], at: number, reach: number) =>
  items.slice(Math.max(0, at - reach), at).some((item) => EXCHANGE.has(item.word));

/** "drop from 23 to 21 G" read as one range mention, or as a group of two. */
function ranged(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  for (const group of all) {
    const two = twoEnds(items, group);
    if (two) return two;
    const mention = group.mentions[0]!;
    if (group.mentions.length !== 1 || mention.kind !== 'range' || !/\bto\b/.test(mention.text)) continue;
    if (!verbNear(items, group.from, 8)) continue;
    const [first, second] = mention.sizes;
    if (!first || !second) continue;
    const half = (size: typeof first): Group => ({ ...group, sizes: [size] });
    return { given: half(first), chosen: half(second) };
  }
  return undefined;
}

/** "going from 14 G to 18 G": two mentions of one group, with "from" before and "to" between. */
function twoEnds(items: readonly Item[], group: Group): Exchange | undefined {
  if (group.mentions.length !== 2 || group.sizes.length !== 2 || items[group.from + 1]?.word !== 'to')
    return undefined;
  if (items[group.from - 1]?.word !== 'from' || !verbNear(items, group.from, 8)) return undefined;
  const half = (i: number): Group => ({ ...group, mentions: [group.mentions[i]!], sizes: [group.sizes[i]!] });
  return { given: half(0), chosen: half(1) };
}

const stops = (word: string): boolean => word === '.' || word === ';';

function fromTo(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  for (let i = 0; i + 1 < all.length; i++) {
    const a = all[i]!;
    const b = all[i + 1]!;
    const between = items.slice(a.to + 1, b.from).map((item) => item.word);
    const before = items.slice(Math.max(0, a.from - 3), a.from).map((item) => item.word);
    if (
      between.length > 6 ||
      between.some(stops) ||
      !(
        between.includes('to') ||
        between.includes('→') ||
        between.includes('towards') ||
        between.includes('toward')
      )
    )
      continue;
    if (before.includes('from') && verbNear(items, a.from, 9)) return { given: a, chosen: b };
    if (between.includes('→') || verbNear(items, a.from, 4)) return { given: a, chosen: b };
  }
  return undefined;
}

const SWAP = new Set(
  'swap swaps swapped swapping trade trades traded trading exchange exchanged replace replaces replaced change changed switch switched swapping trading exchanging replacing changing switching'.split(
    ' ',
  ),
);

function swapped(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  for (let i = 0; i + 1 < all.length; i++) {
    const a = all[i]!;
    const b = all[i + 1]!;
    const between = items.slice(a.to + 1, b.from).map((item) => item.word);
    const before = items.slice(Math.max(0, a.from - 5), a.from);
    const swaps = before.some((item) => SWAP.has(item.word)) || between.some((one) => SWAP.has(one));
    if (between.length > 6 || !swaps) continue;
    if (between.some((word) => ['for', 'with', 'by'].includes(word))) return { given: a, chosen: b };
  }
  return undefined;
}

function instead(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  for (let i = 0; i + 1 < all.length; i++) {
    const a = all[i]!;
    const b = all[i + 1]!;
    const between = items.slice(a.to + 1, b.from).map((item) => item.word);
    const text = between.join(' ');
    if (between.length > 7) continue;
    if (/\b(?:rather than|instead of|in place of|in preference to)\b/.test(text))
      return { given: b, chosen: a };
    const chooses = items.slice(Math.max(0, a.from - 5), a.from).some((item) => TAKE.has(item.word));
    if (chooses && /^(?:\S+ )?(?:over|not|and not|ahead of)\b/.test(text)) return { given: b, chosen: a };
  }
  return undefined;
}

const OUT = new Set(['pull', 'pulled', 'remove', 'removed', 'out', 'discard', 'bin', 'lose', 'ditch']);
const IN = new Set(['in', 'insert', 'drop', 'place', 'put', 'slide', 'open', 'fit']);

/** "pull the 16 and drop in a 22", "out comes the 035 and in goes the 018". */
function inAndOut(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  for (let i = 0; i + 1 < all.length; i++) {
    const a = all[i]!;
    const b = all[i + 1]!;
    const before = items.slice(Math.max(0, a.from - 4), a.from).map((item) => item.word);
    const between = items.slice(a.to + 1, b.from).map((item) => item.word);
    if (between.length > 8) continue;
    const away = before.some((word) => OUT.has(word)) || /^(?:back|away|out)$/.test(between[0] ?? '');
    if (away && between.some((word) => IN.has(word))) return { given: a, chosen: b };
  }
  return undefined;
}

/** "If the washout is slow through a 22 Fr, change it for an 18 Fr". */
function forIt(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  const [a, b] = all;
  if (all.length !== 2 || !a || !b || a.sizes.length + b.sizes.length > 2) return undefined;
  const text = items
    .slice(Math.max(a.to + 1, b.from - 5), b.from)
    .map((item) => item.word)
    .join(' ');
  return finds(FOR_IT, text) ? { given: a, chosen: b } : undefined;
}
const FOR_IT =
  /\b(?:swap|change|replace|exchange|trade|switch) (?:it|that|this|them) (?:for|with|by|to) (?:an?|the)?\s*$/;

const FAILS =
  /^(?:failed|fails|blocked|blocks|leaked|leaks|clotted|tissued|kinked|snapped|snaps|broke|breaks|tore|tears|jammed|stuck|slipped)$/;
const PLACES =
  /^(?:passed|pass|put|placed|inserted|used|tried|took|opened|went|chose|picked|moved|fetched|needed|take|use|try)$/;

/** "The 18 Fr blocked, so we passed a 22 Fr." */
function failed(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  const [a, b] = all;
  if (all.length !== 2 || !a || !b || b.from - a.to > 12) return undefined;
  const between = items.slice(a.to + 1, b.from).map((item) => item.word);
  const after = items.slice(b.to + 1, b.to + 3).map((item) => item.word);
  const away = between.slice(0, 3).some((word) => FAILS.test(word));
  const put = between.some((word) => PLACES.test(word)) || after[0] === 'went';
  return away && put && between.includes('so') ? { given: a, chosen: b } : undefined;
}

const LACKS =
  /(?:^|[ ,])(?:(?:if|when|where|should) (?:there (?:is|are) no|you (?:have no|run out of|have run out of|cannot find an?|cannot get an?)|we (?:have no|run out of|are out of)|you are out of|out of)|no more|no|out of|short of|(?:there is |it )?(?:too much |a )?leaks? (?:round|around|past|by)|will not pass|won't pass)(?: (?:an?|the))?$/;
const LACKED =
  /^(?:\w+ )?(?:fails|blocks|leaks|bypasses|clots|jams|kinks|snaps|breaks|tears|cuts (?:through|out)|is (?:missing|gone|finished|out|not there|out of stock|not to hand|used up)|has run out|runs out|cannot be (?:had|found)|will not (?:pass|go|do))\b/;

/** "If there is no 2-0, take 3-0", "no 16 Fr left: use a 14 Fr", "use the 10 Fr if the 12 Fr blocks", "21 G first, then 25 G". */
function lacking(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  const [a, b] = all;
  if (all.length !== 2 || !a || !b || b.from - a.to > 12) return undefined;
  const before = words(items, Math.max(0, a.from - 7), a.from);
  const between = words(items, a.to + 1, b.from);
  if (/^(?:\w+ )?first , (?:and )?(?:then|next)\b/.test(between)) return { given: a, chosen: b };
  const taken =
    /(?:^| )(?:take|use|try|open|pass|reach for|go for|put in|pick|choose|ask for|(?:change|switch|swap|move|go|go up|go down) to|the)(?: (?:in|up))?(?: (?:an?|the|our))?$/;
  const away =
    finds(LACKS, before) ||
    (finds(/(?:^| )(?:if|when|where)(?: (?:\S+ ){1,5}and)?(?: (?:an?|the|your|our))?$/, before) &&
      LACKED.test(between));
  const proposed = /^(?:\w+ )?(?:is|would|will|should)\b/.test(words(items, b.to + 1, b.to + 3));
  if (away && /[,:;—]|then/.test(between) && (taken.test(between) || proposed))
    return { given: a, chosen: b };
  const late = finds(/(?:^| )(?:if|when|where)(?: (?:an?|the|your|our))?$/, between);
  return late && taken.test(before) && LACKED.test(words(items, b.to + 1, b.to + 6))
    ? { given: b, chosen: a }
    : undefined;
}
const words = (items: readonly Item[], from: number, to: number): string =>
  items
    .slice(from, to)
    .map((item) => item.word)
    .join(' ');

/** "not the 14 G but the 18 G", "it was the 18 G, not the 16 G, that ran faster". */
function contrasted(items: readonly Item[], all: readonly Group[]): Exchange | undefined {
  for (let i = 0; i + 1 < all.length; i++) {
    const [a, b] = [all[i]!, all[i + 1]!];
    if (a.sizes.length + b.sizes.length > 2) continue;
    const before = items.slice(Math.max(0, a.from - 3), a.from).map((item) => item.word);
    const between = items
      .slice(a.to + 1, b.from)
      .map((item) => item.word)
      .join(' ');
    if (/\bnot(?: (?:a|an|the))?$/.test(before.join(' ')) && /^(?:\S+ )?,? ?but (?:a|an|the)?/.test(between))
      return { given: a, chosen: b, negates: true };
    if (
      /^, (?:and )?not (?:a|an|the)$/.test(between) &&
      /\b(?:is|was|it's|takes?|use|choose|pick)(?: (?:a|an|the))?$/.test(before.join(' '))
    )
      return { given: b, chosen: a, negates: true };
  }
  return undefined;
}

/** Every exchange has one of these words, or one that looks like this. */
export const EXCHANGE_WORDS: ReadonlySet<string> = new Set([
  ...EXCHANGE,
  ...TAKE,
  ...SWAP,
  ...OUT,
  '→',
  'back',
  'away',
  'no',
  'out',
  'short',
  'first',
  'if',
  'when',
  'where',
]);
export const EXCHANGES = new RegExp(
  `^prefer(?:s|red)?$|\\b(?:rather|instead|place|preference|swap|change|replace|exchange|trade|switch|not)$|${FAILS.source}`,
);
