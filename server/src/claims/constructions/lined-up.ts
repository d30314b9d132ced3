/**
 * Sizes said to stand in an order, read loosely: whatever small words stand between them, wherever the way they run is said,
 * in this sentence or in the one behind ("2-0, 3-0, 4-0. Yes, that is fine to thick."). Also "in ascending order" of what can
 * be in no order at all, "the middle one is the 32", "the first is the finest and the last the stoutest".
 */
import { finds } from '../../notes/patterns.ts';
import { direction } from '../../sizes/index.ts';
import { cue, holds } from '../text/cues.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { changed } from '../text/place.ts';
import { distinct, type Group, groups, type Scene, sameSizes, sameSystem, spanOf } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { becomes } from './changing.ts';
import { labelledRow } from './labelled-row.ts';
import type { Construction, Reading } from './model.ts';
import { both } from './of-two.ts';
import {
  backwards,
  type Cue,
  ofEitherScale,
  ofNumbers,
  orderCue,
  orderReading,
  otherWay,
  rearranged,
  startsAgain,
} from './order.ts';
import { expected, saidBefore } from './rack.ts';
import { rangeClaim } from './range-claim.ts';
import { comparison, withEach, wordless } from './than.ts';
import { requested, toBeSorted } from './to-arrange.ts';

export const linedUp: Construction = {
  id: 'lined-up',
  needs: () => [
    { sizes: 3 },
    { holds: ['opposed'] },
    { holds: ['superlative'] },
    // Said of the row in the sentence before.
    { like: /^(?:each|every|gets?|becomes?|grows?|widens?|narrows?|climbs?|rises?|falls?)$/ },
  ],
  leaning: true,
  read(scene) {
    const { items } = scene;
    if (
      scene.sentence.close === '?' ||
      holds(items, NEGATED) ||
      (holds(items, TURNED) && items.some(({ word }, i) => TURNS.test(word) && !expected(items, i)))
    )
      return [];
    const own = groups(items).flatMap(single);
    if (own.length === 0) {
      const row = labelledRow(scene);
      return row.length > 0 ? row : ofBefore(scene);
    }
    const run = runIn(items, own);
    if (
      run.length < 3 ||
      rearranged(items) ||
      backwards(items) ||
      requested(items, run[0]!) ||
      ofNumbers(items, run[0]!) ||
      toBeSorted(scene)
    )
      return [];
    const places = [...ordinals(scene, run), ...middleOf(scene, own), ...lastOf(scene, run, own)];
    if (places.length > 0) return places;
    const cue = cueIn(items, run) ?? calledRight(scene) ?? saidBefore(scene, run[0]!.from);
    return cue && !ofEitherScale(scene, run) && !otherWay(items, cue.at) && !startsAgain(items, run)
      ? [{ ...orderReading(scene, run, cue), unconditional: true }]
      : [];
  },
};

const TURNS =
  /^(?:wrong|wrongly|reverse|reversed|backwards|mix|mixed|muddled|jumbled|random|shuffled|unless|should|instead|rather|whichever|whatever|or|but)$/;
const TURNED = cue(TURNS);
const NEGATED = cue(NEGATIONS);
/** What ends a row of sizes: anything that says something of its own. */
const BREAKS =
  /^(?:[.?!]|than|if|when|because|since|while|whereas|is|are|was|were|has|have|with|over|under|through|into|inside|like|as)$/;
const breaks = ({ word }: Item, before: Item | undefined): boolean =>
  BREAKS.test(word) &&
  !(
    word === 'with' &&
    /^(?:follow|followed|start|begin|end|ends|finish|go|on|up|continue|closing)$/.test(before?.word ?? '')
  );
const GAP = 9;

/** The longest row of three or more sizes of one system, each with small words or its own name between. */
function runIn(items: readonly Item[], own: readonly Group[]): Group[] {
  let best: Group[] = [];
  let run: Group[] = [];
  for (const group of own) {
    const last = run.at(-1);
    const linked =
      last !== undefined &&
      sameSystem(last, group) &&
      group.sizes.length === 1 &&
      group.from - last.to <= GAP &&
      items
        .slice(last.to + 1, group.from)
        .every((item, i, all) => !item.magnitude && !breaks(item, all[i - 1]));
    run = linked ? [...run, group] : group.sizes.length === 1 ? [group] : [];
    if (run.length >= best.length) best = run;
  }
  const rest = own.filter((g) => !best.includes(g) && !best.some((one) => sameSizes(one, g)));
  return rest.length === 0 || best.length > 3 ? best : [];
}

function cueIn(items: readonly Item[], run: readonly Group[]): Cue | undefined {
  const [from, to] = [run[0]!.from, run.at(-1)!.to];
  const cue =
    orderCue(items) ??
    follows(items) ??
    ranked(items) ??
    mostToLeast(items) ??
    fromEnd(items) ??
    goingFrom(items, from) ??
    becomes(items) ??
    growing(items, run);
  if (cue && decidable(cue.axis) && (cue.to < from || cue.at > to)) return cue;
  return byNumber(items, run) ?? eitherWay(items, run);
}

/** "from the thin end", "starting with the thin ones": a plain word for where the row begins. */
function fromEnd(items: readonly Item[]): Cue | undefined {
  const word = measuredWords(items).find(
    (m) =>
      m.degree !== 'comparative' &&
      decidable(m.axis) &&
      /\b(?:from|at|with)(?: the)?$/.test(joined(items, m.at - 2, m.at)) &&
      /^(?:ends?|side|ones?|upwards?|up|onwards?|on|downwards?|down)\b/.test(
        joined(items, m.to + 1, m.to + 2),
      ),
  );
  return word && { at: word.at, to: word.to, axis: word.axis, runs: word.sign === 1 ? 'down' : 'up' };
}

/** "Going finer from 0 we carry 2-0, 3-0 and 4-0": the first of the row is where it sets out. */
function goingFrom(items: readonly Item[], first: number): Cue | undefined {
  const word = measuredWords(items).find(
    (m) => m.to < first && m.degree === 'comparative' && decidable(m.axis) && !m.idiom,
  );
  const sets =
    word &&
    /^(?:from|of|after|past|beyond) (?:an? |the |size )*$/.test(`${joined(items, word.to + 1, first)} `);
  const goes = word && GOES.test(joined(items, 0, word.at));
  return sets && goes
    ? { at: word.at, to: word.to, axis: word.axis, runs: word.sign === 1 ? 'up' : 'down' }
    : undefined;
}
const GOES =
  /\b(?:going|moving|getting|working|stepping|counting|climbing|running|go|move|work|step|next|then)(?: (?:up|down|on|ever|steadily|always))?$|^$/;

/** "each slimmer than the one it follows", "each stouter than its predecessor". */
function follows(items: readonly Item[]): Cue | undefined {
  const at = items.findIndex((item) => /^(?:each|every|all)$/.test(item.word));
  const word = measuredWords(items).find((m) => m.at > at && m.degree === 'comparative' && decidable(m.axis));
  if (at < 0 || !word || word.at - at > 4 || items[word.to + 1]?.word !== 'than') return undefined;
  const rest = joined(items, word.to + 2, word.to + 9);
  const sign = BEFORE.test(rest) ? word.sign : AFTER.test(rest) ? -word.sign : 0;
  return sign === 0
    ? undefined
    : { at: word.at, to: word.to, axis: word.axis, runs: sign === 1 ? 'up' : 'down' };
}
const BEFORE =
  /^(?:its predecessor|the (?:one|size|tube|last|previous)(?: one)? ?(?:it follows|before|above|to its left|used before|that went before)?|what (?:came|went) before)\b/;
const AFTER =
  /^(?:its successor|the next|the (?:one|size) (?:after|below|that follows|to its right|that comes next))\b/;

/** "the 22 comes last when the widest is first", "the flow you can expect, highest first". */
function ranked(items: readonly Item[]): Cue | undefined {
  for (const word of measuredWords(items)) {
    if (word.degree !== 'superlative') continue;
    const place =
      /^(?:is |one |at the |on the |on |at |of all |comes |stands |goes |hangs |lies |sits )*(first|top|left|front|start|last|bottom|right|back|end)\b/.exec(
        joined(items, word.to + 1, word.to + 6),
      )?.[1];
    if (!place) continue;
    const axis =
      word.axis === 'number'
        ? quantity(items, word.at)
        : decidable(word.axis)
          ? { axis: word.axis, sign: 1 }
          : undefined;
    if (!axis) continue;
    const early = /^(?:first|top|left|front|start)$/.test(place);
    const up = (word.sign * axis.sign === 1) !== early;
    return { at: word.at, to: word.to + 1, axis: axis.axis, runs: up ? 'up' : 'down' };
  }
  return undefined;
}

/** "the order of bore, greatest to least". */
function mostToLeast(items: readonly Item[]): Cue | undefined {
  const at = items.findIndex(
    (item, i) => item.word === 'to' && ENDS.test(`${items[i - 1]?.word} ${items[i + 1]?.word}`),
  );
  const noun = at < 0 ? undefined : quantity(items, at);
  if (!noun) return undefined;
  const down = /^(?:great|high|most|larg|bigg)/.test(items[at - 1]!.word) === (noun.sign === 1);
  return { at, to: at + 1, axis: noun.axis, runs: down ? 'down' : 'up' };
}
const ENDS =
  /^(?:(?:greatest|highest|most|largest|biggest) (?:least|lowest|smallest)|(?:least|lowest|smallest) (?:greatest|highest|most|largest|biggest))$/;

/** "in growing steps" where the numbers rise with the size. */
function growing(items: readonly Item[], run: readonly Group[]): Cue | undefined {
  const at = items.findIndex(
    ({ word }, i) =>
      /^(?:growing|increasing|rising|ascending|falling|decreasing|shrinking|descending)$/.test(word) &&
      /^(?:steps?|sizes?|order|series|sequence)$/.test(items[i + 1]?.word ?? ''),
  );
  if (at < 0 || direction(run[0]!.sizes[0]!.system) !== 'up') return undefined;
  const up = /^(?:grow|incr|ris|asc)/.test(items[at]!.word);
  return { at, to: at + 1, axis: 'outer', runs: up ? 'up' : 'down' };
}

/** The one quantity named before "highest first". */
function quantity(items: readonly Item[], at: number): Item['axisNoun'] {
  const nouns = items
    .slice(Math.max(0, at - 9), at)
    .flatMap((item) => (item.kind === 'word' && item.axisNoun ? [item.axisNoun] : []));
  const [noun] = nouns;
  return nouns.length === 1 && noun && decidable(noun.axis) ? noun : undefined;
}

/** "in ascending order" where the numbers rise with the size. */
function byNumber(items: readonly Item[], run: readonly Group[]): Cue | undefined {
  const at = items.findIndex(({ word }, i) => /^(?:ascending|descending)$/.test(word) || goingUp(items, i));
  if (at < 0 || direction(run[0]!.sizes[0]!.system) !== 'up') return undefined;
  const up = /^ascending|\bup/.test(joined(items, at, at + 2));
  return { at, to: at, axis: 'outer', runs: up ? 'up' : 'down' };
}

/** "Foley sizes going up: …". */
const goingUp = (items: readonly Item[], i: number): boolean =>
  GOING.test(joined(items, i, i + 3)) &&
  (items[i - 1]?.deviceNoun === true ||
    /^(?:sizes?|french|foleys?|series|range)$/.test(items[i - 1]?.word ?? ''));
const GOING = /^(?:going|running|climbing|counting|counted) (?:up|down)(?:wards)? :/;

/** "in size order", "in ascending order" of gauges: one way or the other, but not up and down. */
function eitherWay(items: readonly Item[], run: readonly Group[]): Cue | undefined {
  const words = joined(items);
  const found = IN_ORDER.exec(words);
  if (!found) return undefined;
  const values = run.map(({ sizes }) => sizes[0]!.value);
  const steps = values.slice(1).map((value, i) => Math.sign(value - values[i]!));
  const [ups, downs] = [steps.filter((step) => step > 0).length, steps.filter((step) => step < 0).length];
  if (ups === 0 || downs === 0 || Math.min(ups, downs) > 1) return undefined;
  const numbersUp = direction(run[0]!.sizes[0]!.system) === 'up';
  const up = ups > downs === numbersUp;
  const at = items.findIndex(({ word }) => word === 'order' || /^(?:sorted|ranked|arranged)$/.test(word));
  return at < 0 ? undefined : { at, to: at, axis: 'outer', runs: up ? 'up' : 'down' };
}
const IN_ORDER =
  /\b(?:in (?:ascending|descending|increasing|decreasing|rising|falling|size|number|strict) order|in order of (?:size|thickness|width|diameter|bore|gauge|calibre)|(?:sorted|ranked|arranged|ordered) by (?:size|thickness|width|(?:outside |outer )?diameter|bore|gauge))\b/;

/** "From heaviest to finest, please." "0, 3-0, 2-0, and that is the correct order.": the way was said before. */
function calledRight({ items, before, context }: Scene): Cue | undefined {
  if (!IN_THAT_ORDER.test(joined(items))) return undefined;
  const asked = [...context.slice(-2), ...before].findLast(
    (sentence) => orderCue(sentence.items) !== undefined,
  );
  const cue = asked?.items.every(({ kind }) => kind !== 'size') ? orderCue(asked.items) : undefined;
  return cue && decidable(cue.axis) ? { ...cue, at: -1, to: -1 } : undefined;
}
const IN_THAT_ORDER =
  /\b(?:correct|right|proper|true) (?:order|row|sequence|way round)\b|\bin (?:that|this|the (?:right|correct|proper)|just that) order\b|\b(?:ordered|sorted|arranged|lined up|placed|ranked) (?:correctly|properly|rightly|well)\b|\bgot (?:it|them|the order) right\b/;

/** "Yes, that is fine to thick.", "The list goes from thin to thick.": said of the row in the sentence before. */
function ofBefore(scene: Scene): Reading[] {
  const { items } = scene;
  const before = scene.before.at(-1);
  if (
    !before ||
    before.close === '?' ||
    items.length > 24 ||
    !(finds(TAKES_UP, joined(items, 0, 8)) || /^the (?:first|second|third|last)\b/.test(joined(items, 0, 3)))
  )
    return [];
  const own = groups(before.items).flatMap(single);
  if (before.items.some((item) => NEGATIONS.has(item.word) || TURNS.test(item.word))) return [];
  if (!before.items.every((item) => !item.magnitude)) return [];
  const run = runIn(before.items, own);
  const place = run.length >= 3 ? ordinals(scene, run, -1) : [];
  if (place.length > 0) return place;
  const two = items.filter((item) => item.magnitude).length >= 2;
  const cue =
    run.length < 3 ? undefined : ((two ? orderCue(items) : undefined) ?? follows(items) ?? becomes(items));
  if (!cue || !decidable(cue.axis)) return [];
  const { claim } = orderReading(changed(scene, { items: before.items }), run, { ...cue, at: -1, to: -1 });
  return [{ claim, at: cue.at, from: cue.at, to: cue.to }];
}
const TAKES_UP =
  /^(?:[a-z]+ : )?(?:(?:yes|right|good|so|and|well|correct|exactly) ,? ?)*(?:that(?:'s)?|this|it|they|these|those|the (?:list|order|row|rack|line|sequence|series|set)|each|every|all|the (?:further|farther|lower|deeper)|top to bottom|left to right|from (?:top|left|the (?:top|left))|read(?:ing)?)\b/;

const PLACES: ReadonlyMap<string, number> = new Map([
  ['first', 0],
  ['second', 1],
  ['third', 2],
  ['fourth', 3],
  ['last', -1],
]);

/** "Of 7-0, 0 and 3, the first is the finest and the last is the stoutest." */
function ordinals(scene: Scene, run: readonly Group[], from = run.at(-1)!.to): Reading[] {
  const { items } = scene;
  const words = measuredWords(items);
  return items.flatMap((item, at) => {
    const place = PLACES.get(item.word);
    if (place === undefined || at < from || items[at - 1]?.word !== 'the') return [];
    const word = words.find(
      (m) => m.at > at && m.at - at <= 5 && m.degree === 'superlative' && decidable(m.axis),
    );
    const said =
      word &&
      /^(?:one )?(?:of (?:these|those|them|the (?:three|four|lot)) )?(?:is|are|being|=|was)?(?: the)?$/.test(
        joined(items, at + 1, word.at),
      );
    const chosen = run.at(place);
    return word && said && chosen ? extreme(scene, chosen, run, word) : [];
  });
}

/** "the 22 comes last when the widest is first". */
function lastOf(scene: Scene, run: readonly Group[], own: readonly Group[]): Reading[] {
  const { items } = scene;
  const chosen = own.at(-1)!;
  const cue = ranked(items);
  if (!cue || run.includes(chosen) || !run.some((g) => sameSizes(g, chosen))) return [];
  const place = /^(?:comes|is|stands|goes|hangs|lies|sits|ranks|will be|ends up) (first|last)\b/.exec(
    joined(items, chosen.to + 1, chosen.to + 5),
  )?.[1];
  const word = measuredWords(items).find((m) => m.at === cue.at);
  if (!place || !word || cue.at < chosen.to) return [];
  const most = (place === 'last') === (cue.runs === 'up');
  return extreme(scene, chosen, run, { ...word, axis: cue.axis, sign: most ? 1 : -1 });
}

function extreme(scene: Scene, chosen: Group, run: readonly Group[], word: Measured): Reading[] {
  const others = distinct(run).filter((g) => g.sizes[0]!.value !== chosen.sizes[0]!.value);
  if (others.length === 0) return [];
  const made = wordless(comparison(scene, 'lined-up', chosen, both(others), word));
  return [{ ...withEach(made), from: word.at }];
}

const MIDDLE =
  /^(?:one|size|of the three|of [^;:.]{3,40}?|in (?:width|size|thickness|diameter)|\s)*(?:is|=|:|,)(?: the| an?)?$/;

/** "Of our three drains, 20, 28 and 32 Fr, the middle one in width is the 32." */
function middleOf(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const at = items.findIndex(
    ({ word }, i) => /^(?:middle|median|intermediate)$/.test(word) && items[i - 1]?.word === 'the',
  );
  const chosen = all.at(-1);
  const set = distinct(all);
  if (at < 0 || !chosen || set.length !== 3 || all.length !== 4) return [];
  const [before, after] = [joined(items, at + 1, chosen.from), joined(items, chosen.to + 1, at + 6)];
  const ahead =
    at < chosen.from && MIDDLE.test(before) && (/^(?:one|size) of\b/.test(before) || at > all[2]!.to);
  const behind =
    at > chosen.to &&
    /^(?:is|lies|sits|comes|stands) (?:in )?the middle(?: one| size)?\b(?! (?:of the (?:tray|drawer|table|row|page)|drawer|shelf|box))/.test(
      after,
    );
  if (!ahead && !behind) return [];
  const [low, high, ...more] = set.filter((g) => number(g) !== number(chosen)).sort(byValue);
  if (!low || !high || more.length > 0) return [];
  const claim = rangeClaim(scene, 'lined-up', chosen, [low, high], true);
  const [first, , last] = [low, chosen, high].sort(byValue);
  // The row may run either way in the text.
  const [from, to] = [Math.min(first!.from, last!.from), Math.max(first!.to, last!.to)];
  const focus = spanOf(scene, items[from]!, items[to]!);
  return [{ claim: { ...claim, focus }, at, from: at, to: chosen.to }];
}
const number = ({ sizes }: Group): number => sizes[0]!.value;
const byValue = (a: Group, b: Group): number => number(a) - number(b);
