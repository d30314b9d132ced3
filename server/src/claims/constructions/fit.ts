/** "A 0.035 in wire goes through a 22 G needle", "a 6 Fr sheath takes an 8 Fr catheter". */
import type { Claim, Operand } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Group, groups, operand, placeOf, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import {
  ALONG,
  FITTING,
  GOING,
  HOLDING,
  HOLES,
  ON_THE_WAY,
  OVER,
  TAKING,
  THROUGH,
} from '../words/passing.ts';
import type { Construction, Reading } from './model.ts';
import { type Pass, passings, stated } from './passes.ts';

export const fit: Construction = {
  id: 'fit',
  needs: () => [
    {
      sizes: 2,
      words: [
        ...THROUGH,
        ...OVER,
        ...TAKING,
        'for',
        'fits',
        'fit',
        'to',
        'with',
        'needs',
        'wants',
        'has',
        'open',
        'pick',
        'choose',
        'uses',
        'requires',
        'calls',
        'use',
      ],
    },
    {
      sizes: 1,
      words: [
        ...THROUGH,
        ...OVER,
        ...TAKING,
        ...HOLDING,
        ...ALONG,
        ...FITTING,
        'for',
        'there',
        'guided',
        'held',
        'led',
        'encased',
      ],
    },
  ],
  read(scene) {
    const told = inOrder(scene);
    const loose = passings(scene).map((pass) => loosely(scene, pass));
    const same = (a: Reading, b: Reading) => sameFit(a.claim, b.claim);
    return [
      ...told.map((one) => loose.find((other) => same(one, other)) ?? one),
      ...loose.filter((one) => !told.some((other) => same(one, other))),
    ].filter(({ claim }) => !passedItself(scene.items, claim) && !scene.items.some(folded));
  },
};

/** "A balloon of 6 mm goes through a 5 Fr sheath, folded": it is thinner on its way. */
const folded = ({ word }: Item): boolean =>
  /^(?:folded|crimped|deflated|collapsed|furled|compressed|squeezed|unexpanded)$/.test(word);

/** "25 seconds through the 14 G and 60 through the 18 G": something else goes through either. */
function passedItself(items: readonly Item[], claim: Claim): boolean {
  if (claim.kind !== 'fit') return false;
  const [at, other] = [placeOf(items, claim.thing), placeOf(items, claim.container)];
  return (
    at > 0 && other > 0 && [at, other].every((one) => INSIDE.test(joined(items, Math.max(0, one - 2), one)))
  );
}
const INSIDE = /(?:^| )(?:through|down|via)(?: (?:an?|the|our|your))?$/;

const sameFit = (a: Claim, b: Claim): boolean =>
  a.kind === 'fit' &&
  b.kind === 'fit' &&
  a.thing.span.start === b.thing.span.start &&
  a.container.span.start === b.container.span.start;

/** What goes where, as one usually says it. */
function inOrder(scene: Scene): Reading[] {
  const all = groups(scene.items).filter(({ sizes }) => sizes.length === 1);
  if (all.length < 2 || scene.items.some((_, i) => leftOpen(scene.items, i))) return [];
  return all.slice(1).flatMap((right, i) => {
    const order =
      introduced(scene.items, all[i]!, right) ??
      widest(scene.items, all[i]!, right) ??
      wants(scene.items, all[i]!, right) ??
      runsThrough(scene.items, all[i]!, right) ??
      roomFor(scene.items, all[i]!, right) ??
      takes(scene.items, all[i]!, right) ??
      goes(scene.items, all[i]!, right) ??
      inverted(scene.items, all[i]!, right) ??
      introducer(scene.items, all[i]!, right) ??
      downIt(scene.items, all[i]!, right) ??
      takesIt(scene.items, all[i]!, right);
    return order && judgeable(scene.items, order.container) ? [reading(scene, order)] : [];
  });
}

const leftOpen = (items: readonly Item[], i: number): boolean =>
  LEFT_OPEN.test(items[i]!.word) &&
  (!GOING.has(items[i + 1]?.word ?? '') || stated(items)) &&
  !easily(items, i) &&
  !inCondition(items, i) &&
  // "…, so you need not change it": said of what follows from it.
  !(
    i > 0 &&
    items
      .slice(0, i)
      .some((item, k) => item.word === 'so' && items[k - 1]?.word === ',' && items[k + 1]?.word !== 'they')
  );

/** "When the 18 G is not to hand, …": denied in a condition that its comma closes, before what goes where. */
function inCondition(items: readonly Item[], i: number): boolean {
  if (!/^(?:when|where|whenever|once|as|since|because|if)$/.test(items[0]?.word ?? '')) return false;
  const comma = items.findIndex((item) => item.word === ',');
  const after = items.slice(comma + 1).filter((item) => item.kind === 'size');
  return i < comma && after.length >= 2 && !items.slice(0, i).some(({ word }) => GOING.has(word));
}

/** A fit denied, wished for or named as the exception says nothing that the tables settle. */
const LEFT_OPEN =
  /^(?:not|no|never|cannot|neither|nor|without|unless|n't|\w+n't|hardly|barely|unable|fails?|refuses?)$/;

/** "without a struggle": how well it goes. */
const easily = (items: readonly Item[], i: number): boolean =>
  /^(?:without|no)$/.test(items[i]!.word) &&
  items
    .slice(i + 1, i + 4)
    .some(({ word }) =>
      /^(?:struggle|fuss|bother|doubt|trouble|difficulty|problems?|effort|force|ado|complaint)$/.test(word),
    );

interface Order {
  /** Item of the verb. */
  readonly at: number;
  readonly thing: Group;
  readonly container: Group;
  /** "too small for". */
  readonly denied?: true;
}

/** "The 7 Fr balloon needs a 7 Fr sheath", "a 5 Fr catheter is a loose fit in a 7 Fr sheath". */
function wants(items: readonly Item[], left: Group, right: Group): Order | undefined {
  if (!HOLES.has(items[right.to + 1]?.word ?? '') || HOLES.has(items[left.to + 1]?.word ?? ''))
    return undefined;
  return WANTS.test(joined(items, left.to + 1, right.from))
    ? { at: left.to + 1, thing: left, container: right }
    : undefined;
}
const WANTS =
  /^(?:[a-z]+ ){0,2}(?:needs?|wants?|requires?|calls for|asks for|is an? (?:[a-z]+ )?fit (?:in|for|inside|with|down))(?: an?| the| your| our)?$/;

/** "The widest wire for a 21 G needle is 0.018 in", "what an 18 G needle lets through: a wire of 0.035 in". */
function widest(items: readonly Item[], left: Group, right: Group): Order | undefined {
  if (left.sizes[0]!.system === right.sizes[0]!.system) return undefined;
  const lead = joined(items, Math.max(0, left.from - 10), left.from);
  const between = textOf(items.slice(left.to + 1, right.from).filter((item) => !item.deviceNoun));
  const most = MOST_FOR.test(lead) && MEASURES.test(between);
  return most || (/^what(?: an?| the| our| your)$/.test(lead) && LETS_THROUGH.test(between))
    ? { at: right.from, thing: right, container: left }
    : undefined;
}
const MOST_FOR =
  /\b(?:widest|thickest|largest|biggest|fattest|stoutest) (?:guide)?(?:wire|stylet|bougie|scope|bronchoscope|fibrescope) (?:[a-z]+ ){0,5}?(?:for|through|into|in|inside|down)(?: an?| the| our| your)?$/;
const MEASURES = /^(?:[a-z]+ )?(?:is|will be|:|=|measures|has|would be|is about)(?: an?| the)?$/;
const LETS_THROUGH =
  /^(?:lets? through|takes?|swallows?|admits?|accepts?|lets? pass)(?: is| :| ,)?(?: (?:an?|the))?(?: (?:guide)?wires?)?(?: of| with)?$/;

/** "With the 18 G needle in the vein, the 0.035 in wire runs straight through": what it runs through stands first. */
function runsThrough(items: readonly Item[], left: Group, right: Group): Order | undefined {
  if (!LENGTHS.has(right.sizes[0]!.system) || left.sizes[0]!.system !== 'needle-gauge') return undefined;
  const between = joined(items, left.to + 1, right.from);
  return /^(?:with|once|after|down|through)(?: an?| the| your| our)?$/.test(
    joined(items, Math.max(0, left.from - 2), left.from),
  ) &&
    /^(?:[a-z]+ ){0,6}, (?:an?|the|your|our)$/.test(between) &&
    RUNS_THROUGH.test(joined(items, right.to + 1, right.to + 9))
    ? { at: right.to + 1, thing: right, container: left }
    : undefined;
}
const LENGTHS: ReadonlySet<string> = new Set(['wire-inch', 'inch', 'millimetre']);
const RUNS_THROUGH =
  /^(?:wire |guidewire )?(?:will |can |should )?(?:runs?|goes|go|slides?|pass(?:es)?|threads?|slips?) (?:straight |right |easily |smoothly )?(?:through|down)(?: it)?(?: [.,;!]|$)/;

/** "For a 25 G take a 20 G introducer", "the 25 G comes with a 20 G introducer". */
function introduced(items: readonly Item[], left: Group, right: Group): Order | undefined {
  if (![left, right].every(({ sizes }) => sizes[0]!.system === 'needle-gauge')) return undefined;
  if (!/^introducers?$/.test(items[right.to + 1]?.word ?? '')) return undefined;
  return WITH_A.test(joined(items, left.to + 1, right.from))
    ? { at: right.from, thing: left, container: right }
    : undefined;
}
const WITH_A =
  /^(?:\w+ )?(?:\w+ )?(?:needle )?(?:,? ?(?:i|we|you) )?(?:comes with|needs|wants|has|take|takes|use|uses|open|pick|choose|goes with|with)(?: an?| the| its| our)?$/;

const SMALL = '(?:small|narrow|tight|thin|slim|fine)';
const BIG = '(?:big|wide|large|thick|fat|stout|broad)';
const LETS = `(?:for|to (?:take|accept|admit|pass|swallow|let through|accommodate|fit))(?: an?| the| your| our)?$`;
const IN = `(?:for|to (?:go|pass|fit|slide|run)(?: through| into| down| inside)|to fit)(?: an?| the| your| our)?$`;
const ROOM: readonly {
  readonly pattern: RegExp;
  readonly inner: 'left' | 'right';
  readonly denied?: true;
}[] = [
  {
    inner: 'right',
    denied: true,
    pattern: new RegExp(
      `^(?:is|are|was) (?:(?:much|far|just|a bit|therefore|thus|indeed) )?too ${SMALL} ${LETS}`,
    ),
  },
  { inner: 'right', pattern: new RegExp(`^(?:is|are|was) (?:just |easily |quite )?${BIG} enough ${LETS}`) },
  {
    inner: 'right',
    pattern: new RegExp(`^(?:has|leaves|gives|offers) (?:just |plenty of |enough |ample )?room ${LETS}`),
  },
  {
    inner: 'left',
    denied: true,
    pattern: new RegExp(
      `^(?:is|are|was) (?:(?:much|far|just|a bit|therefore|thus|indeed) )?too ${BIG} ${IN}`,
    ),
  },
  { inner: 'left', pattern: new RegExp(`^(?:is|are|was) (?:just |easily |quite )?${SMALL} enough ${IN}`) },
];

/** "The 6 Fr sheath is too small for a 7 Fr catheter", "… has room for a 5 Fr", "a 7 Fr is too fat for a 6 Fr sheath". */
function roomFor(items: readonly Item[], left: Group, right: Group): Order | undefined {
  const between = items.slice(left.to + 1, right.from);
  const start = between.findIndex((item) => !item.deviceNoun);
  if (between.length > 12 || start > 2) return undefined;
  const said = textOf(between.slice(Math.max(0, start)));
  const row = ROOM.find(({ pattern }) => pattern.test(said));
  if (!row) return undefined;
  // What is sucked out through a tracheal tube may take half of it: a catheter is too large long before it sticks.
  if (row.denied && row.inner === 'left' && right.sizes[0]?.system === 'tube-id') return undefined;
  const [thing, container] = row.inner === 'left' ? [left, right] : [right, left];
  return { at: left.to + 1 + Math.max(0, start), thing, container, ...(row.denied ? { denied: true } : {}) };
}

const plain = (items: readonly Item[], from: number, to: number): boolean =>
  to - from <= 8 &&
  items
    .slice(from, to)
    .every(
      ({ word, deviceNoun }, i) =>
        ON_THE_WAY.has(word) || deviceNoun === true || THROUGH.has(word) || aside(items, from + i),
    );

/** "A 6 Fr catheter, though, slides down …": a word set off by commas. */
const aside = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === ','
    ? ASIDE.test(items[i + 1]?.word ?? '') || ASIDE.test(items[i - 1]?.word ?? '')
    : ASIDE.test(items[i]!.word) && items[i - 1]?.word === ',' && items[i + 1]?.word === ',';
const ASIDE = /^(?:though|however|too|naturally|admittedly|surprisingly|conversely|meanwhile)$/;

/** "the 5 Fr slides through the 6 Fr sheath", "pass a 0.035 in wire through the 18 G". */
function goes(items: readonly Item[], left: Group, right: Group): Order | undefined {
  const way = items.findIndex(({ word }, i) => i > left.to && (THROUGH.has(word) || OVER.has(word)));
  if (way < 0 || way > right.from || !plain(items, way + 1, right.from)) return undefined;
  const at = verbBetween(items, left.to + 1, way) ?? verbBefore(items, left.from, way, left.to + 1);
  if (at === undefined) return undefined;
  return OVER.has(items[way]!.word)
    ? { at, thing: right, container: left }
    : { at, thing: left, container: right };
}

function verbBetween(items: readonly Item[], from: number, to: number): number | undefined {
  const at = items.findIndex(({ word }, i) => i >= from && GOING.has(word));
  const said = LEFT_OPEN.test(items[at - 1]?.word ?? '') ? at - 1 : at;
  return at >= 0 && at < to && plain(items, from, said) && plain(items, at + 1, to) ? at : undefined;
}

/** The verb of an order stands first: "thread a …". */
function verbBefore(items: readonly Item[], before: number, to: number, after: number): number | undefined {
  const at = items.findLastIndex(({ word }, i) => i < before && GOING.has(word));
  return at >= 0 && plain(items, at + 1, before) && plain(items, after, to) ? at : undefined;
}

/** Only another sort of thing is taken in: "the 24 G takes the 18 G's place". */
function takes(items: readonly Item[], left: Group, right: Group): Order | undefined {
  const at = items.findIndex(({ word }, i) => i > left.to && TAKING.has(word));
  if (at < 0 || at > right.from || !plain(items, left.to + 1, at) || !plain(items, at + 1, right.from))
    return undefined;
  const within = /^(?:inside|within|through|in)$/.test(
    items.slice(right.to + 1).find((item) => !item.deviceNoun)?.word ?? '',
  );
  if (/^(?:lets?|allows)$/.test(items[at]!.word) && !within) return undefined;
  const another =
    within || left.sizes[0]!.system !== right.sizes[0]!.system || left.mentions[0]!.device === 'sheath';
  return another ? { at, thing: right, container: left } : undefined;
}

const NOUN =
  '(?:(?:(?:vascular|introducer|guiding|diagnostic|spinal|tracheal|ordinary|same|working|scope) )*(?:sheath|introducer|needle|cannula|catheter|tube|wire|guidewire|drain|lumen|channel|scope|bronchoscope) )?';
const PASSED =
  '(?:pass|passed|passes|put|slid|slide|slides|fed|feed|feeds|threaded|thread|threads|ran|run|advanced|advance|pushed|push|took|take|use|used|goes|went|will go|can go|can pass|will pass)';

const ARTICLE_BEFORE = '(?:an? |the |our |your )?';
const PASSED_THROUGH = new RegExp(
  `^${NOUN}(?:, )?(?:(?:we|you|i|they|she|he) )?(?:(?:can|will|have|then|also|even) )?${PASSED} ${ARTICLE_BEFORE}$`,
);
const FITS = new RegExp(`^${NOUN}(?:will |just |easily |also )*fits? ${ARTICLE_BEFORE}$`);

/** "Through the 6 Fr sheath we passed a 7 Fr catheter"; "the 8 Fr guiding catheter fits a 7 Fr sheath". */
function inverted(items: readonly Item[], left: Group, right: Group): Order | undefined {
  const between = `${joined(items, left.to + 1, right.from)} `;
  const before = joined(items, Math.max(0, left.from - 3), left.from);
  if (
    /(?:^|[ ,;:])(?:through|down|into)(?: (?:an?|the|our|your|this))?$/.test(before) &&
    PASSED_THROUGH.test(between)
  )
    return { at: right.from - 1, thing: right, container: left };
  return FITS.test(between) && HOLES.has(items[right.to + 1]?.word ?? '')
    ? { at: left.to + 1, thing: left, container: right }
    : undefined;
}

/** "The introducer for a 27 G spinal needle is a 30 G", "a 26 G introducer for the 24 G spinal needle". */
function introducer(items: readonly Item[], left: Group, right: Group): Order | undefined {
  if (left.sizes[0]!.system !== 'needle-gauge' || right.sizes[0]!.system !== 'needle-gauge') return undefined;
  const between = joined(items, left.to + 1, right.from);
  const before = joined(items, Math.max(0, left.from - 5), left.from);
  if (
    /^(?:needle )?introducer (?:needle )?(?:for|to take|with|round|around)(?: (?:an?|the|your|our))?$/.test(
      between,
    )
  )
    return { at: left.to + 1, thing: right, container: left };
  return /introducer (?:needle )?(?:for|of) (?:an?|the|your|our)$/.test(before) &&
    /^(?:(?:spinal|pencil-point) )*(?:needle )?(?:is|will be|should be)(?: usually| often)? (?:an?|the)$/.test(
      between,
    )
    ? { at: right.from - 1, thing: left, container: right }
    : undefined;
}

/** "The working channel is 2.8 mm, so a 10 Fr stent will go down it." */
function downIt(items: readonly Item[], container: Group, thing: Group): Order | undefined {
  const after = joined(items, thing.to + 1, thing.to + 10);
  const gone =
    /^(?:\w+ ){0,2}?(?:will |can |would |should )?(?:just |easily |still |also )*(?:goes|go|passes|pass|slides?|fits?|runs?) (?:down|through|into|inside|in) (?:it|that|this)(?= [.,;!]|$| (?:easily|well|comfortably|with|without))/.test(
      after,
    );
  const link = joined(items, container.to + 1, thing.from);
  return gone &&
    thing.sizes[0]!.system !== container.sizes[0]!.system &&
    /^(?:\w+ ){0,4}[,;:.(—–-] ?(?:so|and|then|hence)?(?: (?:an?|the|our|your))?$/.test(link)
    ? { at: thing.to + 1, thing, container }
    : undefined;
}

const TAKES_IT = new RegExp(
  `^${NOUN}(?:(?:will|can|would|should|does) )?(?:(?:just|easily|still|comfortably|happily|also) )*(?:takes?|accepts?|admits?|swallows?|has room for|is (?:big|wide|large) enough for) (?:it|that|this)(?= [.,;!]|$| (?:easily|well|comfortably|with|without|just))`,
);

/** "The scope is 5.9 mm, so a 5.5 tracheal tube will just take it." */
function takesIt(items: readonly Item[], thing: Group, container: Group): Order | undefined {
  const after = joined(items, container.to + 1, container.to + 9);
  const link = joined(items, thing.to + 1, container.from);
  return TAKES_IT.test(after) &&
    thing.sizes[0]!.system !== container.sizes[0]!.system &&
    /^(?:\w+ ){0,5}[,;:.(—–-]?(?: ?(?:so|and|then|but|hence))?(?: (?:an?|the|our|your))?$/.test(link)
    ? { at: container.to + 1, thing, container }
    : undefined;
}

/** Needles and what is named a sheath, a channel or a lumen; a hole in skin gives way. */
function judgeable(items: readonly Item[], { mentions, sizes, from, to }: Group): boolean {
  const system = sizes[0]!.system;
  if (system === 'needle-gauge' || system === 'tube-id' || mentions[0]!.device === 'sheath') return true;
  if (system === 'french')
    return TUBES.test(items[to + 1]?.word ?? '') && !WOUND.test(items[to + 2]?.word ?? '');
  const near = [...items.slice(to + 1, to + 3), ...items.slice(Math.max(0, from - 3), from)];
  return system === 'millimetre' && near.some(({ word }) => HOLES.has(word));
}

const TUBES = /^(?:drain|catheter|tube|foley)$/;
const WOUND = /^(?:site|tract|track|hole|wound|stoma|scar|exit|entry|balloon|bag|position|'s)$/;

/** What goes through a sheath goes by its own outside, unless it is called a sheath as well. */
function outside(scene: Scene, thing: Group): Operand {
  const { device, ...rest } = operand(scene, thing);
  const named = HOLES.has(scene.items[thing.to + 1]?.word ?? '');
  return device === undefined || (device === 'sheath' && !named) ? rest : { ...rest, device };
}

/** As told in any words; the hole may stand in a sentence before. */
function loosely(scene: Scene, { at, thing, hole, carried, led, denied, advised }: Pass): Reading {
  const ends = [...(led ? [at] : [thing.from, thing.to]), ...(carried ? [at] : [hole.from, hole.to])];
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  return {
    claim: {
      kind: 'fit',
      construction: 'fit',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[from]!, scene.items[to]!),
      thing: led ? operand(scene, thing) : outside(scene, thing),
      container: operand(scene, hole),
    },
    at,
    from,
    to,
    ...(denied ? { denied, own: true } : {}),
    ...(advised ? { unconditional: true } : {}),
  };
}

function reading(scene: Scene, { at, thing, container, denied }: Order): Reading {
  const { items } = scene;
  const [from, to] = [Math.min(thing.from, container.from), Math.max(thing.to, container.to)];
  return {
    claim: {
      kind: 'fit',
      construction: 'fit',
      span: sentenceSpan(scene),
      focus: spanOf(scene, items[from]!, items[to]!),
      thing: outside(scene, thing),
      container: operand(scene, container),
    },
    at,
    from,
    to,
    ...(denied ? { denied, own: true } : {}),
  };
}
