/** Numbers chained to a size by commas, arrows, "or" and the like: "one, zero, two-oh", "18 G, 20, 22". */
import { mentionOf } from '../build.ts';
import type { Mention } from '../model.ts';
import type { Scene, Surroundings } from '../scene.ts';
import { type Place, placeOf } from '../sense/place.ts';
import { size } from '../sense/verdict.ts';
import { counts, LABELLED } from '../words/counted.ts';
import { isClosed } from './frame.ts';
import { isPlainNumber } from './plain-number.ts';
import { isThird } from './rungs.ts';
import { besideZeros, suits } from './suits.ts';
import { type Bare, LINK_REACH, linked } from './tokens.ts';

/** New mentions among the free numbers, growing outwards from the known ones. */
export function chains(
  around: Surroundings,
  scene: Scene,
  own: readonly Mention[],
  free: readonly Bare[],
): Mention[] {
  const text = scene.passage.text;
  const found = new Map<number, Mention>();
  const starts = new Map(own.map((one) => [one.span.start, one]));
  const ends = new Map(own.map((one) => [one.span.end, one]));
  const grow = (bare: Bare, neighbour: Mention | undefined): void => {
    const mention =
      neighbour && !found.has(bare.span.start) ? chained(around, scene, bare, neighbour) : undefined;
    if (!mention) return;
    found.set(bare.span.start, mention);
    starts.set(bare.span.start, mention);
    ends.set(bare.span.end, mention);
  };
  for (const bare of [...free].reverse()) grow(bare, following(text, bare, starts));
  for (const bare of free) grow(bare, preceding(text, bare, ends));
  return [...found.values()];
}

function following(text: string, bare: Bare, starts: ReadonlyMap<number, Mention>): Mention | undefined {
  for (let at = bare.span.end + 1; at <= bare.span.end + LINK_REACH; at++) {
    const mention = starts.get(at);
    if (mention) return linked(text, bare.span, mention.span) ? mention : undefined;
  }
  return undefined;
}

function preceding(text: string, bare: Bare, ends: ReadonlyMap<number, Mention>): Mention | undefined {
  for (let at = bare.span.start - 1; at >= bare.span.start - LINK_REACH; at--) {
    const mention = ends.get(at);
    if (mention) return linked(text, mention.span, bare.span) ? mention : undefined;
  }
  return undefined;
}

function chained(around: Surroundings, scene: Scene, bare: Bare, neighbour: Mention): Mention | undefined {
  const system = neighbour.sizes[0]?.system;
  if (
    bare.spoken &&
    POINTED_AT.test(scene.passage.text.slice(Math.max(0, bare.span.start - 12), bare.span.start))
  )
    return undefined;
  if (!system || neighbour.kind === 'ambiguous') return undefined;
  const place = placeOf(around, scene, bare);
  if (
    !suits(system, bare) &&
    !thickThread(place, system, bare) &&
    !(system === 'usp' && besideZeros(place, bare))
  )
    return undefined;
  if (isPlainNumber(place, bare)) return undefined;
  if (LABELLED.test(place.before) || counts(place.after) || says(place.before) || isThird(place, bare))
    return undefined;
  // "2-0 = 2, 4-0 = 4": how many zeros there are.
  if (/(?:^|[^0-9])([0-9]{1,2})-0\s?=\s?$/.exec(place.before)?.[1] === `${bare.value}`) return undefined;
  if (opensEquation(scene, place, bare, neighbour)) return undefined;
  if (!isClosed(place, bare) && !/^(?:\s?[/–-]|\s\([a-z])/.test(place.after)) return undefined;
  return mentionOf(place, bare, size(system, 'chain', neighbour.text));
}

/** "this one, the 2-0", "the finer one, 4-0": "one" stands for a thing there. */
const POINTED_AT =
  /\b(?:the|this|that|which|each|every|any|no|another|other|same|only|(?:thick|thinn|fin|heavi|small|larg|bigg|wid|narrow|strong|slimm|stout|weak|slow|fast)(?:er|est))\s$/i;

/** "from 11-0 (smallest) to 7": the far end of the scale of threads, thicker than any that is used much. */
const thickThread = (place: Place, system: string, { value, decimals }: Bare): boolean =>
  system === 'usp' &&
  decimals === 0 &&
  value <= 10 &&
  /\bfrom\s(?:size\s)?[0-9]{1,2}[-/]0\b[^.;]{0,24}\sto\s$/i.test(place.before);

/** "0 is metric 3.5, 1 is metric 4": the number opens an equation of its own, as the one before did. */
const opensEquation = (
  { passage: { text } }: Scene,
  place: Place,
  { span }: Bare,
  neighbour: Mention,
): boolean =>
  neighbour.span.end <= span.start &&
  EQUALS_AFTER.test(place.after) &&
  EQUALS_BEFORE.test(text.slice(Math.max(0, neighbour.span.start - 12), neighbour.span.start));
const EQUALS_AFTER = /^\s(?:is|=|equals|measures)\s/;
const EQUALS_BEFORE = /\s(?:is|=|equals|measures)\s(?:about\s)?$/;

/** "nylon says 2, 5-0 …": the number belongs to the verb, not to the next size. */
const says = (before: string): boolean =>
  /\b(?:says|reads|is|has|have|equals|of|=)\s?$/i.test(before.slice(-10)) ||
  SIZE_IS_A.test(before.slice(-40));
/** "5-0 nylon is a 1 and 4-0 …": what the size before it comes to. */
const SIZE_IS_A = /[0-9](?:-0|\s?(?:Fr|French|Ch|G|gauge))(?:\s[a-z]+){0,2}\sis\s(?:an?|about)\s$/i;
