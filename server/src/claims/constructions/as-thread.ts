/** A thread set equal to a needle or a tube: "a 25 G is only as thick as a 5-0 thread". Read where the two are far from each other. */
import { outerDiameter } from '../../sizes/index.ts';
import type { Size } from '../../sizes/model.ts';
import { joined, textOf } from '../text/joined.ts';
import { compares } from '../text/magnitudes.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

/** Readings of a sentence that gives a thread and a tube one width. */
export function asThread(scene: Scene): Reading[] {
  const { items } = scene;
  const [left, right, ...more] = groups(items);
  if (!left || !right || more.length > 0 || !farApart(left, right)) return [];
  const between = textOf(items.slice(left.to + 1, right.from));
  const lead = joined(items, 0, left.from);
  if (OF_ANOTHER.test(lead) || NEEDLE_OF_IT.test(between)) return [];
  if (!ALIKE.test(between) || TURNS.test(`${lead} ${between}`)) return [];
  // "as thick as a 3 Fr is long", "as wide as five 5-0 threads".
  if (!/^(?:an?|the|your|our)$/.test(items[right.from - 1]?.word ?? '')) return [];
  const behind = joined(items, right.to + 1, right.to + 4);
  if (!ENDS.test(behind)) return [];
  const word = compares(right.from - 1, 'outer', 1);
  return [wordless(comparison(scene, 'as-thread', left, right, word, 'same'))];
}

const ALIKE =
  /^(?:[a-z-]+ ){0,3}?(?:is|are|will be)(?: (?:only|just|exactly|about|roughly))?(?: as (?:thick|wide|broad|fine|thin) as| (?:of )?the same (?:thickness|width|diameter) as| the (?:thickness|width|diameter) of) (?:an?|the|your|our)$/;
/** "The needle of a 5-0 suture", "a 5-0 needle". */
const OF_ANOTHER = /\b(?:of|on|for|with|from|in|behind|at|to|inside)(?: (?:an?|the|our|your))?$/;
const NEEDLE_OF_IT = /^(?:[a-z]+ )?(?:suture |thread )?needle\b(?=.*\bneedle\b)|^(?:suture |thread )needle\b/;
const TURNS =
  /\b(?:not|never|no|nor|neither|cannot|\w+n't|if|unless|would|might|could|may|wall|walls|tip|hole|bore|inside|doubled|twice|half|times|nearly|almost)\b/;
const ENDS =
  /^(?:(?:[a-z]+ )?(?:thread|suture|needle|catheter|tube|drain|cannula|silk|nylon|stitch|strand)\b ?)?(?:$|[.,;:!)—–])/;

const THREADS: ReadonlySet<string> = new Set(['usp', 'ep-metric']);
const TUBES: ReadonlySet<string> = new Set(['needle-gauge', 'french']);

/** One of each, and the thicker half as thick again at least: "as thick as" is seldom meant to the hundredth. */
function farApart({ sizes: a }: Group, { sizes: b }: Group): boolean {
  const [one, other] = [a[0], b[0]];
  if (!one || !other || a.length + b.length > 2) return false;
  const kinds = [one, other].map(({ system }) => (THREADS.has(system) ? 1 : TUBES.has(system) ? 2 : 0));
  return kinds[0] !== kinds[1] && !kinds.includes(0) && apart(one, other);
}
function apart(a: Size, b: Size): boolean {
  const [one, other] = [outerDiameter(a, {}), outerDiameter(b, {})];
  if (!one || !other) return false;
  return one.min > FAR * other.max || other.min > FAR * one.max;
}
const FAR = 1.5;
