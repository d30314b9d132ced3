/** Ways of setting a statement before the reader without standing behind it, beyond plain reporting. */
import type { Reading } from './constructions/model.ts';
import type { Scene } from './text/scene.ts';

/** Said before the claim: what people once held, what nobody should say, what was drawn or felt. */
const BEFORE: readonly RegExp[] = [
  /\bused to (?:think|believe|say|teach|write|claim|assume|be told|be taught)\b/,
  /\b(?:rather than|instead of|without|stop|avoid) (?:saying|teaching|telling|writing|thinking|believing|assuming|claiming)\b/,
  /\b(?:drew|draws|drawn|sketched|painted)\b/,
  /\bas (?:though|if)\b/,
  /\bfar from being\b/,
];

/** Said after it: the claim does not stand. */
const AFTER =
  /\b(?:(?:does|do|did|will|would)(?: not|n't) (?:hold|stand|follow)|is(?: not|n't) (?:true|so|right|correct|the case)|cannot be right|has (?:it|this|that|things) (?:backwards|wrong|upside down|the wrong way round))\b/;

const REACH = 12;

/** Is the claim held by somebody else, or refuted in its own sentence? */
export function hearsay(scene: Scene, { from, at, to }: Reading): boolean {
  const words = (a: number, b: number) =>
    scene.items
      .slice(Math.max(0, a), b)
      .map((item) => item.word)
      .join(' ');
  const first = Math.min(from, at);
  const before = words(first - REACH, first + 1);
  const last = Math.max(to, at);
  return BEFORE.some((pattern) => pattern.test(before)) || AFTER.test(words(last + 1, last + 1 + REACH));
}
