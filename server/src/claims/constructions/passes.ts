/**
 * One thing through another, told in any words: "send the 0.035 in wire along it", "the 8.5 Fr sheath in the neck admits
 * a 10 Fr catheter". What stands between the two is skipped unless it takes something back or brings in another thing; the
 * hole may be named in the sentence before.
 */
import { outerDiameter } from '../../sizes/index.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import {
  ALONG,
  FITTING,
  GOING,
  HOLDING,
  HOLES,
  ON_THE_WAY,
  OVER,
  PASSERS,
  TAKING,
  THROUGH,
} from '../words/passing.ts';
import { fluid, putsIn, stops } from './passing-stops.ts';

/** Which of two goes through which. */
export interface Pass {
  /** Item of the word that says so. */
  readonly at: number;
  readonly thing: Group;
  readonly hole: Group;
  /** The hole is named in a sentence before. */
  readonly carried: boolean;
  /** So is what goes through it. */
  readonly led?: true;
  /** Said not to go. */
  readonly denied: boolean;
  /** A condition before it says when, not whether. */
  readonly advised: boolean;
}
interface Roles extends Pick<Pass, 'thing' | 'hole' | 'carried' | 'led'> {
  /** The sentence before, where one of the two is named there. */
  readonly around?: readonly Item[];
}

const LONGEST = 60;

/** What a sentence tells of passing, at most once between two semicolons; nothing where two could be meant. */
export function passings(scene: Scene): Pass[] {
  const { items, sentence } = scene;
  if (sentence.close === '?' || items.length > LONGEST) return [];
  const found = items.flatMap((_, at) => passingAt(scene, at) ?? []);
  const part = ({ at }: Pass) => items.findIndex((item, i) => i > at && item.word === ';');
  const sure = found.filter((one) => found.every((other) => part(other) !== part(one) || alike(other, one)));
  return sure.filter((one, i) => sure.findIndex((other) => alike(other, one)) === i);
}

const alike = (a: Pass, b: Pass): boolean =>
  a.thing === b.thing && a.hole === b.hole && a.denied === b.denied;

function passingAt(scene: Scene, at: number): Pass | undefined {
  const { items } = scene;
  const roles = rolesAt(scene, at);
  if (!roles || !passable(items, roles)) return undefined;
  const { led, carried } = roles;
  const places = [at, ...(led ? [] : [roles.thing.from]), ...(carried ? [] : [roles.hole.from])];
  const from = clauseFrom(items, Math.min(...places));
  const to = clauseTo(items, Math.max(...places));
  const no = items.findIndex((item, i) => i >= from && i <= to && NOT.test(item.word));
  const denied = no >= 0 && deniesGoing(items, no, at);
  const given = conditionBefore(items, from, led ? at : Math.min(roles.thing.from, at));
  for (let i = from; i <= to; i++) {
    if ((denied && i === no) || i <= given) continue;
    if (stops(items, i) || strange(items, i, roles)) return undefined;
  }
  if ((denied && !plainly(items, roles, no)) || ONLY_IF.test(joined(items, at + 1, to + 4))) return undefined;
  if (WOUND.test(behind(items, roles.hole)) || (!led && WOUND.test(behind(items, roles.thing))))
    return undefined;
  if (fluid(items, !led && roles.thing.to < at ? roles.thing.to : from, at)) return undefined;
  return {
    at,
    thing: roles.thing,
    hole: roles.hole,
    carried,
    ...(led ? { led } : {}),
    denied,
    advised: given >= 0 || items.slice(0, from).some(({ word }) => WHEN.test(word)),
  };
}

const ONLY_IF = /\bonly (?:if|when|once|after|with)\b/;
const WHEN = /^(?:if|when|where|once|should)$/;

/** "If you only have a 22 G in the pack, a wire …": the end of the condition that opens a stretch, which tells what is there. */
function conditionBefore(items: readonly Item[], from: number, to: number): number {
  const opens = items.findIndex((item, i) => i >= from && i < to && WHEN.test(item.word));
  if (opens < 0) return -1;
  const comma = items.findIndex((item, i) => i > opens && i < to && item.word === ',');
  return comma > 0 && !items.slice(opens, comma).some(({ word }) => GOING.has(word) && word !== 'come')
    ? comma
    : -1;
}

function rolesAt(scene: Scene, at: number): Roles | undefined {
  const { items } = scene;
  const { word } = items[at]!;
  if (putsIn(items, at)) return undefined;
  if (THROUGH.has(word) || guidedBy(items, at) || (ALONG.has(word) && goesBefore(items, at)))
    return told(items, at, through(scene, at)) ?? ledThrough(scene, at);
  if (OVER.has(word)) return over(items, at) ?? ledOver(scene, at);
  if (GOING.has(word) && !THROUGH.has(items[at + 1]?.word ?? '')) {
    const past = inPlace(scene, at);
    if (past) return past;
  }
  if (word === 'there' && goesBefore(items, at)) return through(scene, at - 1);
  if (TAKING.has(word) || roomFor(items, at)) return takes(scene, at);
  return HOLDING.has(word) || FITTING.has(word) ? fits(items, at) : undefined;
}

/** "a K-wire of 2.0 mm, guided by a 1.6 mm sleeve". */
const guidedBy = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'by' && /^(?:guided|led|held|encased)$/.test(items[at - 1]?.word ?? '');

/** Of two that could each be the hole, one goes only where a word of going says so. */
function told(items: readonly Item[], at: number, roles: Roles | undefined): Roles | undefined {
  if (!roles) return undefined;
  const { thing, hole } = roles;
  if (passer(items, thing) || !sameSystem(thing, hole)) return roles;
  const [from, to] = [clauseFrom(items, Math.min(at, thing.from)), clauseTo(items, Math.max(at, thing.to))];
  return items.slice(from, to).some(({ word }) => GOING.has(word) || SENT.test(word)) ? roles : undefined;
}

/** A word of going a little before: "in" and "up" by themselves say where. */
const goesBefore = (items: readonly Item[], at: number): boolean =>
  items.slice(Math.max(0, at - 7), at).some(({ word }) => GOING.has(word) || SENT.test(word));
const SENT =
  /^(?:sends?|sent|guides?|guided|manoeuvred?|maneuvers?|glides?|gliding|sits?|lies|takes?|pops?)$/;

/** "… through the 21 G needle", "Inside the 22 G sits …", "… goes down it": what follows is the hole. */
function through(scene: Scene, at: number): Roles | undefined {
  const { items } = scene;
  if (/^(?:diameters?|width|size|bore|and|out|from|to)$/.test(items[at + 1]?.word ?? '')) return undefined;
  const all = alone(items);
  const before = all.findLast((g) => g.to < at);
  const named = objectAfter(items, at, all);
  if (named) {
    const thing = before ?? (at <= 2 ? all.find((g) => g.from > named.to) : undefined);
    return thing && { thing, hole: named, carried: false };
  }
  if (!before) return runsIn(scene, at, all[0]);
  const inIt = /^(?:it|there)(?: [.,;!)]|$)/.test(joined(items, at + 1, at + 3));
  if ((items[at]!.word === 'in' && !inIt) || !BACK.test(joined(items, at + 1, at + 5))) return undefined;
  const hole = spokenOf(scene, before, at);
  return hole && { thing: before, ...hole };
}

/** "Thickest guidewire I can run in it: 0.045 in": the hole before, what goes through it last. */
function runsIn(scene: Scene, at: number, thing: Group | undefined): Roles | undefined {
  const { items } = scene;
  if (!thing || thing.from < at || !IN_IT.test(joined(items, at + 1, thing.from))) return undefined;
  const hole = items.slice(0, at).some(({ word }) => PASSERS.has(word))
    ? spokenOf(scene, thing, at)
    : undefined;
  return hole && { thing, ...hole };
}
const IN_IT =
  /^(?:it|this|that|there|the (?:lumen|bore|sleeve|channel|sheath|needle)) (?:may be |can be |will be )?(?::|is|has|measures|at most|was)(?: (?:an?|the|at most|up to))*$/;

/** "the 5 Fr sheath slides over the 0.035 in wire": the other way round. */
function over(items: readonly Item[], at: number): Roles | undefined {
  const all = alone(items);
  const thing = objectAfter(items, at, all);
  const hole = all.findLast((g) => g.to < at) ?? (at <= 1 && thing ? slidOver(items, thing, all) : undefined);
  if (!thing || !hole) return undefined;
  const { system } = thing.sizes[0]!;
  const inTube = hole.sizes[0]!.system === 'tube-id' && system !== 'tube-id' && passer(items, thing);
  return WIRES.has(system) || inTube ? { thing, hole, carried: false } : undefined;
}

/** "Over the bougie of 15 Fr I slide tracheal tube 4.5": the tube comes last. */
const slidOver = (items: readonly Item[], { to }: Group, all: readonly Group[]): Group | undefined =>
  all.find(
    (g) => g.from > to && items.slice(to, g.from).some(({ word }) => GOING.has(word) || SENT.test(word)),
  );

/** "It goes down a 5.5 tracheal tube": what goes is named in the sentence before. */
function ledThrough(scene: Scene, at: number): Roles | undefined {
  const { items } = scene;
  const all = alone(items);
  const hole = objectAfter(items, at, all);
  return hole && all[0] === hole && IT_GOES.test(joined(items, Math.max(0, at - 6), at))
    ? ledBy(scene, hole)
    : undefined;
}
const IT_GOES =
  /(?:^|[ ,;])(?:it|this|this one|the (?:scope|bronchoscope|fibrescope|fiberscope|bougie|wire|guidewire))(?: (?:will|can|would|should|also|then|just|still|easily|even|always))* (?:goes|go|pass|passes|slides?|slips?|fits?|runs?)(?: (?:easily|straight|right|well|nicely|without \S+))?$/;

/** "With a 5.0 tracheal tube in place it passes." */
function inPlace(scene: Scene, at: number): Roles | undefined {
  const { items } = scene;
  const [hole, ...more] = alone(items).filter((g) => g.to < at);
  if (!hole || more.length > 0 || !/^(?:with|once)(?: an?| the)?$/.test(joined(items, 0, hole.from)))
    return undefined;
  return IN_PLACE.test(joined(items, hole.to + 1, at + 1)) ? ledBy(scene, hole) : undefined;
}
const IN_PLACE =
  /^(?:[a-z]+ )?(?:tube |ett )?(?:in place|in situ|in position|in|is in) ?,? (?:it|the (?:scope|bronchoscope|fibrescope)) (?:(?:will|can|still|just|easily|also) )*(?:pass|passes|goes through|goes down|fits)$/;

/** "You can railroad a tracheal tube of 4.0 mm ID over it": over what the sentence before names. */
function ledOver(scene: Scene, at: number): Roles | undefined {
  const { items } = scene;
  if (!ON_IT.test(joined(items, at + 1, at + 3)) || !goesBefore(items, at)) return undefined;
  const [first, second, ...more] = alone(items);
  const hole = second ?? first;
  if (!first || !hole || more.length > 0 || hole.sizes[0]!.system !== 'tube-id') return undefined;
  if (!second) return ledBy(scene, hole);
  return passer(items, first) ? { thing: first, hole, carried: false } : undefined;
}
const ON_IT = /^(?:it|this|that|them|the (?:bougie|scope|bronchoscope|stylet))(?: |$)/;

/** The one thing of the sentence before, that goes through others by what it is. */
function ledBy(scene: Scene, hole: Group): Roles | undefined {
  const said = [...scene.context.slice(-1), ...scene.before].at(-1);
  if (!said || said.close === '?') return undefined;
  const [thing, other, ...more] = distinct(alone(said.items));
  if (!thing || more.length > 0 || (other && !sameWidth(thing, other))) return undefined;
  return groups(said.items).length <= 2 && passer(said.items, thing)
    ? { thing, hole, carried: false, led: true, around: said.items }
    : undefined;
}

/** "The 8.5 Fr sheath in the neck admits a 10 Fr catheter", "… leaves ample space for a guidewire of 0.038 inch". */
function takes(scene: Scene, at: number): Roles | undefined {
  const { items } = scene;
  // "Take the 4.0 tube and …" orders.
  if (BARE.test(items[at]!.word) && !MODAL.test(items[at - 1]?.word ?? '') && !refuses(items, at))
    return undefined;
  const all = alone(items);
  const thing = all.find((g) => g.from > at);
  // "lets in a 7 Fr catheter".
  const from = /^(?:in|through)$/.test(items[at + 1]?.word ?? '') ? at + 2 : at + 1;
  if (!thing || items.slice(from, thing.from).some(({ word }) => EDGE.test(word) && word !== 'of'))
    return undefined;
  const own = all.findLast((g) => g.to < at);
  const hole = own ? { hole: own, carried: false } : spokenOf(scene, thing, at);
  // A wire of a size, not a thing by a size alone, where another gauge could be put in the place of the first.
  const another = hole && (passer(items, thing) || !sameSystem(thing, hole.hole));
  return hole && another ? { thing, ...hole } : undefined;
}
const BARE = /^(?:take|accept|hold|let|allow|admit)$/;
const MODAL = /^(?:will|can|would|could|to|also|still|even|easily|just|happily|comfortably|readily)$/;

/** "will not take", "cannot accept": told of it, and no order. */
const refuses = (items: readonly Item[], at: number): boolean =>
  /^(?:cannot|can't|won't|doesn't)$/.test(items[at - 1]?.word ?? '') ||
  /^(?:will|can|does) not$/.test(joined(items, at - 2, at));

/** "5 Fr sheath: also fits a 7 Fr catheter", "an 8 Fr angiographic catheter is happy in a 7 Fr sheath". */
function fits(items: readonly Item[], at: number): Roles | undefined {
  const all = alone(items);
  const [a, b] = [all.findLast((g) => g.to < at), all.find((g) => g.from > at)];
  if (!a || !b || (/^(?:happy|comfortable|snug)$/.test(items[at]!.word) && items[at + 1]?.word !== 'in'))
    return undefined;
  if (hollow(items, b) && passer(items, a)) return { thing: a, hole: b, carried: false };
  return hollow(items, a) && passer(items, b) ? { thing: b, hole: a, carried: false } : undefined;
}

/** "room for", "wide enough for". */
const roomFor = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'for' &&
  /^(?:room|space|enough|ample|made|meant|built|is|are)$/.test(items[at - 1]?.word ?? '');

/** Sizes by themselves. */
const alone = remembered((items: readonly Item[]): readonly Group[] =>
  groups(items).filter(
    ({ sizes, mentions }) =>
      sizes.length === 1 &&
      !mentions[0]!.bound &&
      !mentions[0]!.length &&
      // Inches of a wire; a needle is so long.
      !(sizes[0]!.system === 'inch' && sizes[0]!.value > 0.1),
  ),
);

/** The size that a preposition leads to, with what describes it. */
function objectAfter(items: readonly Item[], at: number, all: readonly Group[]): Group | undefined {
  const next = all.find((g) => g.from > at);
  if (!next || next.from - at > 8) return undefined;
  const between = items.slice(at + 1, next.from);
  const plain = between.every(
    ({ word }, i) =>
      (!EDGE.test(word) && !(i > 0 && ARTICLE.test(word) && between[i - 1]!.word !== 'of')) ||
      (word === 'of' && INNER.test(between[i - 1]?.word ?? '')),
  );
  return plain ? next : undefined;
}
const ARTICLE = /^(?:an?|the)$/;
const EDGE =
  /^(?:[,;:.()—–]|and|or|but|with|to|from|for|of|by|is|are|was|than|while|because|since|so|when|where|which|that|who|if|it|you|we|they|in|on|at|per|as|like|after|before|behind|beside|until|whose|not)$/;
const INNER =
  /^(?:inside|lumen|bore|middle|barrel|shaft|channel|interior|length|size|tube|needle|sheath|introducer|cannula|bougie|wire|guidewire|scope|sleeve)$/;

/** Nothing, a pronoun or "the needle" stands for the hole. */
const BACK =
  /^(?:$|[.,;)!]|(?:it|there|one)(?: |$)|(?:this|that)(?: [.,;)!]|$)|(?:the|that|this|its)(?: (?:very|same|own|whole))* (?:sheath|needle|cannula|introducer|tube|lumen|bore|inside|middle|ett)(?: (?!of\b)|$)|(?:perfectly|quite|well|easily|nicely|without|comfortably|happily|smoothly|readily) )/;

/** The hole spoken of: the only other size of the sentence, or of the last sentence that names any. */
function spokenOf(
  scene: Scene,
  thing: Group,
  at: number,
): Pick<Roles, 'hole' | 'carried' | 'around'> | undefined {
  const own = distinct(alone(scene.items)).filter(
    (g) => !sameSizes(g, thing) && !sameWidth(g, thing) && !WIRES.has(g.sizes[0]!.system),
  );
  if (own.length > 0)
    return own.length === 1 && own[0]!.to < at ? { hole: own[0]!, carried: false } : undefined;
  const said = [...scene.context.slice(-1), ...scene.before].findLast(
    ({ items }) => groups(items).length > 0,
  );
  const [hole, ...more] = said ? distinct(groups(said.items)) : [];
  if (!hole || more.length > 0 || hole.sizes.length > 1 || said!.close === '?') return undefined;
  return { hole, carried: true, around: said!.items };
}

/** "A 10 Fr catheter is 3.3 mm wide": the same thing in another unit. */
function sameWidth(a: Group, b: Group): boolean {
  if (![a, b].some((g) => g.sizes[0]!.system === 'millimetre')) return false;
  const [one, other] = [outerDiameter(a.sizes[0]!, {}), outerDiameter(b.sizes[0]!, {})];
  return one !== undefined && other !== undefined && one.min < other.max + 0.06 && other.min < one.max + 0.06;
}

const WIRES: ReadonlySet<string> = new Set(['wire-inch', 'inch']);

/** Could one go through the other at all, by what they are? */
function passable(items: readonly Item[], { thing, hole, carried, around = items }: Roles): boolean {
  const noun = () => nounOf(carried ? around : items, hole);
  if (thing === hole || sameSizes(thing, hole)) return false;
  const inner = thing.sizes[0]!.system;
  switch (hole.sizes[0]!.system) {
    case 'needle-gauge':
      return WIRES.has(inner) || inner === 'needle-gauge' || inner === 'french';
    case 'french':
      if (inner === 'needle-gauge') return false;
      return hole.mentions[0]!.device === 'sheath' || (!carried && LUMENS.test(nounOf(items, hole)));
    case 'tube-id':
      return inner === 'french' || inner === 'millimetre';
    case 'millimetre':
      return HOLES.has(noun()) && (inner !== 'millimetre' || passer(items, thing));
    case 'wire-inch':
    case 'inch':
      return WIRES.has(inner) && INSIDES.test(noun()) && !INSIDES.test(nounOf(items, thing));
    default:
      return false;
  }
}
const INSIDES = /^(?:lumens?|bore|channels?)$/;
const LUMENS = /^(?:sheath|introducer|drain|catheter|tube|foley|one)$/;

/** The noun right behind a size, or before it where it is named first: "sheath, 5 Fr". */
function nounOf(items: readonly Item[], g: Group): string {
  const after = items.slice(g.to + 1, g.to + 4);
  if (after[0]?.word === 'drill' && after[1]?.word === 'guide') return 'sleeve';
  const [owner, of] = items.slice(Math.max(0, g.from - 2), g.from);
  if (of?.word === 'of' && owner && isThing(owner)) return owner.word;
  const end = after.findIndex((item) => item.kind !== 'word' || EDGE.test(item.word));
  const own = after.slice(0, end < 0 ? after.length : end).find(isThing);
  return own?.word ?? items.slice(Math.max(0, g.from - 3), g.from).findLast(isThing)?.word ?? '';
}
const isThing = ({ word, deviceNoun }: Item): boolean =>
  deviceNoun === true || PASSERS.has(word) || HOLES.has(word);

const hollow = (items: readonly Item[], g: Group): boolean => {
  const { system } = g.sizes[0]!;
  return HOLES.has(nounOf(items, g)) || system === 'tube-id' || system === 'needle-gauge';
};
const passer = (items: readonly Item[], g: Group): boolean =>
  WIRES.has(g.sizes[0]!.system) || PASSERS.has(nounOf(items, g));

const NOT = /^(?:not|never|cannot|no|\w+n't)$/;

/** "won't pass through": the going itself is denied. */
function deniesGoing(items: readonly Item[], no: number, at: number): boolean {
  if (items[no]!.word === 'no' || no > at || at - no > 4) return false;
  const between = items.slice(no + 1, at + 1);
  return (
    between.some(({ word }) => GOING.has(word) || TAKING.has(word) || HOLDING.has(word)) &&
    !between.some(({ word }) =>
      /^(?:always|often|only|just|easily|well|quite|really|happily|readily)$/.test(word),
    )
  );
}

/** Denied of the two as they are made: not of a kinked sheath, nor once it has clotted, nor of the one in the hand. */
function plainly(items: readonly Item[], { thing, hole, carried }: Roles, no: number): boolean {
  if (carried || [thing, hole].some((g) => !/^an?$/.test(items[g.from - 1]?.word ?? ''))) return false;
  if (stated(items)) return false;
  const [from, to] = [Math.min(thing.from, hole.from), Math.max(thing.to, hole.to)];
  const inside = items.slice(from, to + 1);
  const rest = items
    .slice(to + 1)
    .find((item) => !isThing(item) && !/^(?:tracheal|endotracheal)$/.test(item.word));
  return (
    inside.every((item, i) => i + from === no || item.kind === 'size' || isThing(item) || ON_WAY(item)) &&
    !items.slice(thing.to + 1, thing.to + 4).some(({ word }) => FATTER.test(word)) &&
    (rest === undefined || /^(?:[.;!]|so)$/.test(rest.word))
  );
}
/** Some are thicker than the shaft that they are named for. */
const FATTER = /^(?:balloons?|stents?|guiding|coils?|baskets?|devices?)$/;
/** "Once it has clotted, …": what is told of the two holds then. */
export const stated = (items: readonly Item[]): boolean =>
  items.some(({ word }, i) => STATES.test(word) && items.slice(0, i).every(({ kind }) => kind !== 'size'));
const STATES = /^(?:if|when|where|once|should|after|because|since|as|until|unless|while|with|without)$/;
const ON_WAY = ({ word }: Item): boolean =>
  ON_THE_WAY.has(word) || GOING.has(word) || TAKING.has(word) || THROUGH.has(word) || MEASURED.test(word);
const MEASURED =
  /^(?:tracheal|endotracheal|size|mm|is|wide|thick|across|outside|and|it|,|vascular|big|large|for|at)$/;

/** "the 8 Fr drain site": what a size has left behind. */
const behind = (items: readonly Item[], { to }: Group): string =>
  items.slice(to + 1, to + 4).find((item) => !isThing(item))?.word ?? '';
const WOUND = /^(?:site|tract|track|holes?|wound|stoma|scar|exit|entry|balloon|bag|position|'s|one's)$/;

const clauseFrom = (items: readonly Item[], at: number): number =>
  items.slice(0, at).findLastIndex((item, i) => CLOSES.test(item.word) || breaks(items, i)) + 1;
function clauseTo(items: readonly Item[], at: number): number {
  const end = items.findIndex(
    (item, i) => i > at && (CLOSES.test(item.word) || WHEN.test(item.word) || breaks(items, i)),
  );
  return end < 0 ? items.length - 1 : end - 1;
}
const CLOSES = /^[;:.(!—]$/;
const breaks = (items: readonly Item[], i: number): boolean =>
  (items[i]!.word === ',' && JOINS.test(items[i + 1]?.word ?? '')) ||
  (/^(?:you|we|i|they)$/.test(items[i + 1]?.word ?? '') &&
    /^(?:can|will|may|should|must|could|simply|just)$/.test(items[i + 2]?.word ?? ''));
const JOINS = /^(?:because|since|so|which|although|though|if|when|as|and|but|while|whereas)$/;

/** Another hollow thing, named without its size, could be the hole. */
function strange(items: readonly Item[], i: number, { hole, thing }: Roles): boolean {
  const { word } = items[i]!;
  if (!/^(?:dilator|sheath|needle|trocar|peel-away|channel)$/.test(word)) return false;
  if ([hole, thing].some((g) => i > g.to && i <= g.to + 3)) return false;
  const { system } = hole.sizes[0]!;
  return !(system === 'needle-gauge' ? /^(?:needle|trocar)$/ : /^sheath$/).test(word);
}
