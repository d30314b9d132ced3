/** A sheath said to be as wide outside as what it lets in: "an 8.5 Fr sheath measures 8.5 Fr on the outside". */
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** Readings of a sentence that gives a sheath its own number outside. */
export function sheathed(scene: Scene): Reading[] {
  const { items } = scene;
  const [own, outside, ...more] = groups(items);
  if (!own || !outside || more.length > 0) return [];
  if (besideCatheter(items, own, outside)) {
    const claim = ruleClaim(scene, 'sheathed', 'french', 'sheath-is-outer', outside.from, outside.to);
    return [{ claim, at: outside.from, from: own.from, to: outside.to }];
  }
  if (!sameWidth(own, outside)) return [];
  // "The dilator of a 6 Fr sheath is 2 mm outside": another thing is measured.
  if (/\b(?:of|for|in|into|through|from|down|with)(?: an?| the| our)?$/.test(joined(items, 0, own.from)))
    return [];
  const between = items.slice(own.to + 1, outside.from);
  if (!LINK.test(textOf(between)) || !said(items, between, outside)) return [];
  const claim = ruleClaim(scene, 'sheathed', 'french', 'sheath-is-outer', outside.from, outside.to);
  return [{ claim, at: outside.from, from: own.from, to: outside.to }];
}

const LINK =
  /^(?:\S+ )?(?:sheath|introducer)(?: sheath)?(?: (?:that|which))?(?:(?: has| with| 's)? (?:an?|the|its) (?:outer|outside) diameter of| (?:also |therefore |then |just )?(?:is|measures|comes out at|will be)(?: also| therefore| exactly| just)?)(?: an?)?$/;

/** "From outside a 7 Fr sheath is narrower than a 7 Fr catheter", "… makes the same hole in the artery as a 6 Fr catheter". */
function besideCatheter(items: readonly Item[], sheath: Group, catheter: Group): boolean {
  const sizes = [sheath, catheter].map((g) => (g.sizes.length === 1 ? g.sizes[0]! : undefined));
  if (sizes.some((size) => size?.system !== 'french') || sizes[0]!.value > sizes[1]!.value) return false;
  const text = joined(items, sheath.to + 1, catheter.from);
  const lead = joined(items, 0, sheath.from);
  return (
    /^(?:[a-z-]+ )?(?:sheath|introducer)\b/.test(text) &&
    /^(?:[a-z-]+ )?(?:catheter|drain|line)\b/.test(joined(items, catheter.to + 1, catheter.to + 4)) &&
    NO_WIDER.test(text) &&
    /\b(?:outside|outer|hole|puncture)\b/.test(`${lead} ${text}`) &&
    !/\b(?:inside|lumen|bore|not|never|if|takes?|through|\w+n't)\b/.test(`${lead} ${text}`)
  );
}
const NO_WIDER =
  /\b(?:(?:narrower|thinner|smaller|slimmer|finer) (?:\w+ ){0,5}than(?: an?| the)?$|(?:the same|equal|identical) (?:\w+ ){1,6}as(?: an?| the)?$)/;

/** "on the outside" right behind, or an outer diameter before. */
const said = (items: readonly Item[], between: readonly Item[], outside: Group): boolean =>
  between.some(({ word }) => word === 'outer' || word === 'outside') ||
  /^(?:(?:on|at|across|around) (?:the|its) (?:outside|outer)|outside|outer diameter|externally|od)\b/.test(
    textOf(items.slice(outside.to + 1, outside.to + 5)),
  );

/** The same French, or just the millimetres that it makes. */
function sameWidth(own: Group, outside: Group): boolean {
  const [a, b] = [own.sizes[0]!, outside.sizes[0]!];
  if (own.sizes.length > 1 || outside.sizes.length > 1 || a.system !== 'french') return false;
  if (outside.mentions[0]!.bound) return false;
  if (b.system === 'french') return a.value === b.value;
  return b.system === 'millimetre' && Math.abs(b.value - a.value / 3) < 0.06;
}
