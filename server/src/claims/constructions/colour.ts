/** Hub colours: "18 G pink, 20 G yellow", "the deep green hub is the 23 G", "black tells you it is a 25 G". */
import type { Device } from '../../sizes/model.ts';
import type { ColourClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';
import type { Construction, Reading } from './model.ts';

interface Colour {
  readonly at: number;
  readonly to: number;
  readonly family: string;
}

export const colour: Construction = {
  id: 'colour',
  needs: () => [{ sizes: 1, holds: ['colour'] }],
  read(scene) {
    const colours = coloursIn(scene.items);
    const sizes = groups(scene.items).filter(
      (g) =>
        g.mentions.length === 1 && g.sizes.length === 1 && coded(g) && !otherThing(scene.items[g.to + 1]),
    );
    if (colours.length === 0 || sizes.length === 0) return [];
    // Blunt and filter needles for drawing up carry their makers' own colours.
    if (scene.items.some((item) => DRAWING_UP.test(item.word))) return [];
    return pairUp(scene.items, colours, sizes).map(([c, g]) => reading(scene, c, g));
  },
};

const DRAWING_UP = /^(?:blunt|filter|fill|blunt-fill|filter-needle)$/;

const coded = (group: Group) =>
  group.sizes[0]!.system === 'needle-gauge' || group.sizes[0]!.system === 'french';

const SHADES = new Set(['deep', 'dark', 'light', 'pale', 'medium', 'bright', 'mid', 'iso']);

function coloursIn(items: readonly Item[]): Colour[] {
  return items.flatMap((item, at) => {
    if (!item.colour) return [];
    const next = items[at + 1];
    if ((next?.word === '-' && next.start === item.end) || NOT_HUB.has(next?.word ?? '') || otherThing(next))
      return [];
    if (ALERT.test(items[at - 1]?.word ?? '') || fruit(items, at)) return [];
    const from = SHADES.has(items[at - 1]?.word ?? '') ? at - 1 : at;
    return [{ at: from, to: at, family: item.colour }];
  });
}
const NOT_HUB = new Set([
  'flag',
  'flags',
  'cells',
  'cell',
  'blood',
  'card',
  'cards',
  'zone',
  'list',
  'top',
  'coat',
  'book',
  'tube',
  'tubes',
  'skin',
  'bag',
  'bags',
  'bin',
  'matter',
]);

/** "Code blue", "category red": an alarm. */
const ALERT = /^(?:code|category|status|alert|triage|priority)$/;
/** "practise on an orange with …". */
const fruit = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'orange' &&
  items[at - 1]?.word === 'an' &&
  /^(?:with|for|and|,|\.)$/.test(items[at + 1]?.word ?? '.');

/** "the blue clamp", "the 20 G drawer": the colour of something that is not a hub. */
const otherThing = (next: Item | undefined) =>
  next?.kind === 'word' &&
  /^(?:lights?|clamps?|tourniquets?|tapes?|ties|tie|stickers?|syringes?|plugs?|bungs?|ports?|drapes?|pens?|trolleys?|boxes|box|trays?|labels?|gloves?|line|lines|markers?|wristbands?|lids?|sheets?|forms?|room|rooms|bay|drawers?|dressings?|packs?|packets?|aprons?|gowns?|bands?|bins?|bags?|curtains?|signs?|dots?|pumps?|beds?|chairs?|pouch(?:es)?|wrappers?|wraps?|sleeves?|envelopes?|bottles?|cups?|bowls?|rings?|arrows?|rows?|boards?|charts?|cloths?|covers?|folders?|stripes?|trolley|cupboards?|shel(?:f|ves)|end|ends|team|area)$/.test(
    next.word,
  );

/** Colours and sizes that alternate are paired in order; anything less regular is not read. */
function pairUp(
  items: readonly Item[],
  colours: readonly Colour[],
  sizes: readonly Group[],
): [Colour, Group][] {
  const clauses = split(items);
  return clauses.flatMap(([from, to]) => {
    const cs = colours.filter((c) => c.at >= from && c.to < to);
    const gs = sizes.filter((g) => g.from >= from && g.to < to);
    if (cs.length === gs.length && alternate(cs, gs))
      return cs.map((c, i): [Colour, Group] => [c, gs[i]!]).filter(([c, g]) => tied(items, c, g));
    const one = gs.length === 1 && cs.length > 1 ? cs.filter((c) => tied(items, c, gs[0]!)) : [];
    if (one.length === 1) return [[one[0]!, gs[0]!]];
    if (cs.length === 1 && gs.length === 2 && cs[0]!.to < gs[0]!.from)
      return gs.map((g): [Colour, Group] => [cs[0]!, g]).filter(([c, g]) => g !== gs[0] || tied(items, c, g));
    return [];
  });
}

function split(items: readonly Item[]): [number, number][] {
  const cuts: [number, number][] = [];
  let from = 0;
  for (let i = 0; i < items.length; i++) {
    if (items[i]!.word !== ';' && items[i]!.word !== '.') continue;
    cuts.push([from, i]);
    from = i + 1;
  }
  cuts.push([from, items.length]);
  return cuts;
}

/** Either every colour comes before its size or every one after it. */
function alternate(colours: readonly Colour[], sizes: readonly Group[]): boolean {
  const before = colours.every((c, i) => c.to < sizes[i]!.from && (i === 0 || c.at > sizes[i - 1]!.to));
  const after = colours.every(
    (c, i) => c.at > sizes[i]!.to && (i + 1 >= sizes.length || c.to < sizes[i + 1]!.from),
  );
  return before || after;
}

const TIES = new Set(
  `identifies denotes indicates over-the-needle peripheral connector our is are was = : , - – ( the a an hub hubs cannula cannulae needle one means for ones on as of marks wears has have with in its comes come
  therefore thus also always usually now still definitely just course naturally simply
  colour color coloured colored and tells you that are holding it gets get carries valve catheter foley shows signals says to mean cap plastic
  coded colour-coded color-coded urinary suction connector connectors funnel urethral
  size iv hypodermic your this by standard code chart iso hub's wings flange by holds hold be gives give always goes belongs stands so it's you're chooses`.split(
    /\s+/,
  ),
);

/** "her lips were blue", "the arm with the 20 G was blue": the colour of a patient. */
const BODY =
  /^(?:arms?|hands?|lips?|skin|legs?|foot|feet|fingers?|toes?|face|nails?|sites?|wounds?|bruises?)$/;

/** Only tying words may stand between a colour and its size, and not many. */
function tied(items: readonly Item[], c: Colour, g: Group): boolean {
  const [from, to] = c.to < g.from ? [c.to, g.from] : [g.to, c.at];
  if (items.slice(Math.max(0, Math.min(c.at, g.from) - 5), c.at).some((item) => BODY.test(item.word)))
    return false;
  const between = items.slice(from + 1, to);
  if (between.length > 14 || PUT.test(between.map((item) => item.word).join(' '))) return false;
  if (between.every(ties)) return true;
  if (WANTED.test(between.map((item) => item.word).join(' ')) && c.to < g.from) return true;
  // A noun phrase may stand before the verb: "the brown hub in the tray is a 26 G".
  const verb = between.findIndex((item) => VERBS.has(item.word));
  const hub =
    c.to < g.from
      ? between.slice(0, 3).some((item) => HUBS.has(item.word))
      : HUBS.has(items[c.to + 1]?.word ?? '');
  return hub && verb > 0 && between.slice(verb + 1).every(ties) && between.slice(0, verb).every(plain);
}

const ties = (item: Item) =>
  TIES.has(item.word) || item.deviceNoun === true || CODE_WORDS.has(item.word) || SHADES.has(item.word);
/** "The blue cap goes on the 18 G": a thing put on another. */
const PUT = /\b(?:goes|go|sits|screws|clips|fits) (?:on|onto|over)\b/;
/** "Take the green one if you want an 18 G". */
const WANTED =
  /^(?:(?:one|hub|cannula|needle|catheter|cap) )?(?:if|when|where) (?:you|we|they|the (?:notes?|plan|order|chart)) (?:want|need|call for|calls? for|ask for|asks? for|say|says|are after)s? (?:an?|the)$/;
const VERBS = new Set([
  'identifies',
  'denotes',
  'indicates',
  'stands',
  'is',
  'are',
  'means',
  'marks',
  'wears',
  'has',
  'carries',
  'tells',
]);
const HUBS = new Set([
  'over-the-needle',
  'ring',
  'band',
  'connector',
  'hub',
  'hubs',
  'one',
  'cap',
  'funnel',
  'wing',
  'wings',
  'valve',
  'needle',
  'needles',
  'cannula',
  'catheter',
]);
const STOPS = new Set([
  'not',
  'than',
  'and',
  'or',
  'but',
  'if',
  'unless',
  'when',
  'never',
  'while',
  'beside',
  'without',
]);
const plain = (item: Item) =>
  !STOPS.has(item.word) && item.word !== ';' && item.word !== '.' && item.kind !== 'size' && !item.colour;
const CODE_WORDS = new Set([
  'international',
  '6009',
  '10555-5',
  '10555',
  'colour-code',
  'same',
  'needles',
  'cannulas',
  'universal',
]);

function reading(scene: Scene, c: Colour, g: Group): Reading {
  const device = deviceOf(scene, c, g);
  const focus = spanOf(scene, scene.items[c.at]!, scene.items[c.to]!);
  const claim: ColourClaim = {
    kind: 'colour',
    construction: 'colour',
    span: sentenceSpan(scene),
    focus,
    size: operand(scene, g),
    colour: c.family,
    same: true,
    ...(device ? { device } : {}),
  };
  return { claim, at: Math.max(c.to, g.to), from: Math.min(c.at, g.from), to: Math.max(c.to, g.to) };
}

/** The device the code belongs to: nearest words of the clause, the sentence, the sentences before, the headings. */
function deviceOf(scene: Scene, c: Colour, g: Group): Device | undefined {
  const own = codeOf(ownStretch(scene.items, c, g));
  if (own && own !== 'both') return own;
  const several = scene.items.filter((item) => item.kind === 'size').length > 1;
  const near = several ? undefined : codeOf(scene.items.slice(Math.max(0, g.from - 5), g.to + 6));
  if (near) return near === 'both' ? undefined : near;
  const here =
    several && own !== 'both' && bothNamed(scene.items) ? undefined : codeOf(outside(scene.items, c, g));
  if (here) return here === 'both' ? undefined : here;
  // "pink = 18 G, green = 21 G (needle)": the line speaks of needles itself, whatever came before.
  if (codeOf(scene.items) === 'needle') return undefined;
  for (const sentence of [...scene.before].reverse()) {
    const found = codeOf(sentence.items);
    if (found) return found === 'both' ? undefined : found;
  }
  // A lead-in or the passage before settles it only when it speaks of one code; then the nearest heading.
  const around = codeOf(scene.context.flatMap((sentence) => sentence.items));
  if (around && around !== 'both') {
    const above = headingCode(scene);
    return above && above !== around ? undefined : around;
  }
  const heading = headingCode(scene);
  if (heading) return heading;
  const told = g.mentions[0]!.device;
  return told === 'needle' ? undefined : told;
}

/** "blue, not black (that is the needle)": a bracket further off speaks of something else. */
function outside(items: readonly Item[], c: Colour, g: Group): readonly Item[] {
  const open = items.findIndex((item, i) => item.word === '(' && i > Math.max(c.to, g.to) + 1);
  const close = items.findIndex((item, i) => item.word === ')' && i > open);
  return open < 0 || close < 0 || close - open > 8 ? items : [...items.slice(0, open), ...items.slice(close)];
}

/** The sentence gives one size to a needle and another to a cannula. */
const bothNamed = (items: readonly Item[]) => items.filter((item) => item.colour !== undefined).length > 1;

/** From the size or colour before this pair to the one after it. */
function ownStretch(items: readonly Item[], c: Colour, g: Group): readonly Item[] {
  const marks = (item: Item) =>
    item.kind === 'size' || item.colour !== undefined || item.word === ';' || item.word === '.';
  const sized = items.slice(0, g.from).findLastIndex((item) => item.kind === 'size');
  // One colour may serve two sizes: then only the second size's own words count for it.
  const shared = c.to < g.from && sized > c.to;
  const [from, to] = shared ? [g.from, g.to] : [Math.min(c.at, g.from), Math.max(c.to, g.to)];
  const start = items.slice(0, from).findLastIndex(marks) + 1;
  const next = items.slice(to + 1).findIndex(marks);
  // When the colour comes first, what follows the size belongs to the next pair.
  const end =
    c.to < g.from && !shared && next >= 0
      ? Math.min(to + 3, items.length)
      : next < 0
        ? items.length
        : to + 1 + next;
  return items.slice(start, end);
}

function headingCode(scene: Scene): Device | undefined {
  for (const heading of [...scene.headings].reverse()) {
    const found = codeOf(heading.split(/[^a-z0-9-]+/).map((word) => ({ word })));
    if (found) return found === 'both' ? undefined : found;
  }
  return undefined;
}
