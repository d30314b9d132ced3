/**
 * What is told of a needle's point in free words, where no tighter reading was found: "tapers slice tissue, cutters push
 * it apart", "the edge runs inside the bend in reverse cutting", "a needle that is triangular in section, such as a taper".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { ownerOf } from '../text/owner.ts';
import { type PointAt, pointsIn } from '../text/points.ts';
import type { Scene } from '../text/scene.ts';

/** A property of a point, and the item that says it. */
interface PointTold {
  readonly point: PointAt;
  readonly at: number;
  readonly property: string;
}

/** Words for any needle. */
const NEEDLES = /^(?:needles?|points?|ones?|tips?|kind|type|sort)$/;
/** What turns a statement round, or makes another of it. */
const OPERATORS =
  /^(?:not|never|no|without|less|rather|than|instead|unlike|if|unless|whether|would|could|might|may|cannot|can't|doesn't|don't|isn't|aren't|won't|neither|nor|or|least|hardly|avoid|where|when|though|although|nothing|none)$/;

export function pointTold(scene: Scene): PointTold[] {
  const { items } = scene;
  if (items.length > 60 || scene.sentence.close === '?') return [];
  const named = pointsIn(items);
  return items.flatMap((_, at) => {
    const property = saidAt(items, at);
    if (!property) return [];
    const point = exampleOf(items, at, named) ?? subjectOf(scene, at, named);
    if (!point || !fits(point, property)) return [];
    const from = Math.max(0, point.at < at ? point.at - 2 : at - 4);
    const turned = items.slice(from, at + 1).filter((item) => OPERATORS.test(item.word));
    // "without edges": the words carry their own negation.
    const own = property === 'edge:none' && /^edges?$/.test(items[at]!.word) ? 1 : 0;
    return turned.length > own ? [] : [{ point, at, property }];
  });
}

/** Only what tells the edged from the edgeless. */
const fits = ({ id }: PointAt, property: string): boolean =>
  property === 'edge:some'
    ? id === 'taper' || id === 'blunt'
    : property === 'edge:none'
      ? id === 'cutting' || id === 'reverse-cutting'
      : id !== 'spatula';

const TISSUE =
  /^(?:tissues?|fibres?|fibers?|it|them|walls?|layers?|skin|bowel|muscle|fascia|dura|vessels?|cells|way|through|everything|mucosa|capsule|peritoneum)$/;
const CUTS = /^(?:cuts?|slices?|slits?|carves?|incises?|slicing|cutting)$/;
/** "a cutting needle", "cuts down on tearing", "taper for gut, cutting for skin". */
const NOT_CUT = /^(?:needles?|points?|ones?|tips?|kind|type|sort|down|back|short|off|edges?|for|in|on|at)$/;
const SPREADS =
  /^(?:spreads?|parts?|separates?|pushe?s?|stretches|dilates?|squeezes?|eases?|spreading|parting|pushing)$/;

/** What the word at `at` says of a point. */
function saidAt(items: readonly Item[], at: number): string | undefined {
  const { word, kind } = items[at]!;
  if (kind !== 'word') return undefined;
  const after = items.slice(at + 1, at + 6);
  const object = after.findIndex((item) => TISSUE.test(item.word));
  const clause = after.findIndex((item) => item.kind === 'punctuation');
  const takes = object >= 0 && (clause < 0 || object < clause);
  if (CUTS.test(word) && items[at - 1]?.word !== '/' && !NOT_CUT.test(after[0]?.word ?? '') && takes)
    return 'edge:some';
  if (SPREADS.test(word) && takes)
    return /^push/.test(word) && !after.some((item) => /^(?:apart|aside)$/.test(item.word))
      ? undefined
      : 'edge:none';
  if (/^(?:edges?|blades?)$/.test(word))
    return edged(items, at) ? 'edge:some' : edgeless(items, at) ? 'edge:none' : undefined;
  if (word === 'slit' && MAKES.test(joined(items, at - 3, at))) return 'edge:some';
  if (word === 'hole' && items[at - 1]?.word === 'round' && MAKES.test(joined(items, at - 4, at)))
    return 'edge:none';
  if (/^(?:triangular|three-sided|three-cornered|triangle)$/.test(word)) return 'section:triangular';
  if (
    /^(?:round|circular)$/.test(word) &&
    /^(?:in|cross|cross-section|section|when|end-on)$/.test(after[0]?.word ?? '') &&
    ROUND.test(joined(items, at + 1, at + 8))
  )
    return 'section:round';
  return undefined;
}

const MAKES =
  /\b(?:leaves?|makes?|opens?|cuts?|leaving|making)(?: (?:an?|the|small|little|triangular|clean|round|tiny))*$/;
/** "without edges", "with no cutting edge at all". */
const edgeless = (items: readonly Item[], at: number): boolean =>
  /\b(?:without|has no|have no|with no|lacks|lacking)(?: (?:an?|any|sharp|cutting|real))*$/.test(
    joined(items, at - 5, at),
  ) && !/^(?:of the wound|to be)\b/.test(joined(items, at + 1, at + 4));

/** How it looks cut through, not "round in the hand". */
const ROUND = /\b(?:section|cross-section|end[- ]on|cut (?:it )?(?:across|through)|the end)\b/;
/** "has three sharp edges", "with an edge along its inner curve"; not "the wound edge". */
const edged = (items: readonly Item[], at: number): boolean =>
  (/\b(?:sharp|cutting|two|three|four|side)$/.test(joined(items, at - 1, at)) &&
    /^(?:along|on|down|at) (?:its|their|both|all|three|two|the sides?)\b/.test(
      joined(items, at + 1, at + 4),
    )) ||
  (/\b(?:has|have|having|with|carries|carry|bears?|its|their|gets|because of)(?: (?:an?|the|its|one|two|three|four|small|fine|very|sharp|keen|cutting|razor|razor-sharp|side|third|extra|single|real|true|side|honed|ground|,))+$|\b(?:its|their)$/.test(
    joined(items, at - 6, at),
  ) &&
    !/^(?:of|the)? ?(?:the |a )?(?:wound|incision|skin)\b/.test(joined(items, at + 1, at + 4)));

/** "…, such as a taper one". */
function exampleOf(items: readonly Item[], at: number, named: readonly PointAt[]): PointAt | undefined {
  const [first, ...more] = named;
  if (!first || more.length > 0 || first.at <= at || first.at - at > 10) return undefined;
  const kind = items
    .slice(Math.max(0, at - 6), at)
    .some((item) => /^(?:needle|something|one|point)$/.test(item.word));
  return kind &&
    /(?:^| )(?:(?:such as|e\.g|for (?:example|instance)|namely|that is|like|so)(?: ,)?(?: (?:an?|the|our|take|use))?|(?:is|are)(?: (?:called|known as|named))?(?: an?| the)?|(?:and )?so (?:\w+ ){0,4}(?:an?|the))$/.test(
      joined(items, at + 1, first.at),
    )
    ? first
    : undefined;
}

function subjectOf(scene: Scene, at: number, named: readonly PointAt[]): PointAt | undefined {
  const owner = ownerOf(scene.items, at, named, NEEDLES);
  if (typeof owner !== 'string') return owner;
  if (owner !== 'before') return undefined;
  const before = scene.before.at(-1);
  const opens = scene.items
    .slice(0, 3)
    .some((item) => /^(?:it|its|it's|this|that|they|their|these)$/.test(item.word));
  const known = before && opens && named.length === 0 ? pointsIn(before.items) : [];
  const [only] = known;
  return only && known.every(({ id }) => id === only.id) ? { ...only, at: -1, to: -1 } : undefined;
}
