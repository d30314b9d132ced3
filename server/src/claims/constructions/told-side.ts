/**
 * Which side the number of a thing tells, in any words: "sheaths, like catheters, carry the French of their outside", "the
 * number on a Foley is its inner diameter". Clause by clause; a clause that names two things or both sides says nothing.
 */
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { itemAt, joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ofSheaths } from './of-sheaths.ts';
import { ruleClaim } from './rule-claim.ts';

interface Kind {
  readonly named: RegExp;
  readonly system: 'french' | 'tube-id';
  readonly outer?: string;
  readonly inner?: string;
}

const KINDS: readonly Kind[] = [
  {
    named: /\b(?:sheaths?|introducers?)\b/,
    system: 'french',
    outer: 'sheath-is-outer',
    inner: 'sheath-is-inner',
  },
  {
    named: /\bdouble[ -]lumen\b/,
    system: 'french',
    outer: 'double-lumen-is-outer',
    inner: 'double-lumen-is-inner',
  },
  {
    named: /\b(?:(?:tracheal|endotracheal|breathing|cuffed|uncuffed) tubes?|etts?|single-lumen)\b/,
    system: 'tube-id',
    outer: 'tube-is-outer',
    inner: 'tube-is-inner',
  },
  {
    named:
      /\b(?:foleys?|(?:urinary|urethral|suction|feeding|nasogastric) (?:catheters?|tubes?)|chest (?:drains?|tubes?)|drains?|catheters?)\b/,
    system: 'french',
    inner: 'french-is-inner',
  },
];

export function toldSide(scene: Scene): Reading[] {
  const { items, sentence } = scene;
  if (sentence.close === '?' || items.length > LONGEST || !holds(items, SIDE)) return [];
  return clauses(items).flatMap(([from, to]) => readClause(scene, from, to));
}
const LONGEST = 60;
const SIDE = cue(/\b(?:outer|outside|external|inner|inside|internal|lumen|bore)\b/);

/** Between semicolons, and where another thing is set against the first. */
function clauses(items: readonly Item[]): [number, number][] {
  const cuts = items.flatMap((item, i) =>
    item.word === ';' || (/^(?:whereas|while|but)$/.test(item.word) && i > 0) || andThe(items, i) ? [i] : [],
  );
  return [0, ...cuts.map((cut) => cut + 1)].map((from, i) => [from, cuts[i] ?? items.length]);
}
const andThe = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'and' && /^(?:the|that|an?|of|on|for|with)$/.test(items[i + 1]?.word ?? '');

function readClause(scene: Scene, from: number, to: number): Reading[] {
  const { items } = scene;
  const said = joined(items, from, to);
  if (STOPS.test(said)) return [];
  const plain = said.replace(LIKENED, ' ').trim();
  const first = KINDS.find(({ named }) => named.test(plain)) ?? spokenOf(scene, plain);
  // "catheter" is in many names: only the three others are things of their own beside it.
  const kinds = KINDS.slice(0, 3).filter(({ named }) => named.test(plain));
  if (!first || kinds.length > 1) return [];
  const [outer, inner] = [OUTER.exec(said), INNER.exec(said)];
  const side = outer ?? inner;
  if (!side || (outer && inner)) return [];
  const id = outer ? first.outer : first.inner;
  const told = said.slice(0, side.index + 1);
  if (
    !id ||
    (id === 'french-is-inner' && ofSheaths(scene)) ||
    !TELLS.test(told) ||
    (first === KINDS[3] && /\b(?:gauge|needle|cannula|tracheal|guiding|guide)\b/.test(said))
  )
    return [];
  const at = from + itemAt(items.slice(from, to), side.index + side[0].length - 1);
  const sizes = items.slice(from, to).filter((item) => item.kind === 'size');
  if (sizes.length > 1 || items.slice(at, to).some((item) => item.kind === 'size') || sizes.some(isLength))
    return [];
  const claim = ruleClaim(scene, 'formula', first.system, id, at);
  return [{ claim, at, from: at, to: at }];
}

/** "A 6 Fr sheath is 2.7 mm on the outside": a value, not what the number tells. */
const isLength = ({ mention }: Item): boolean =>
  /^(?:millimetre|inch|wire-inch)$/.test(mention?.sizes[0]?.system ?? '');

/** ", like catheters," */
const LIKENED =
  /,? ?\b(?:just |much |exactly )?(?:like|unlike|as with|as for|as on|as in|the same as)(?: (?:an?|any|most|all|every|the))?(?: (?:other|urinary|plain|ordinary|normal|usual|standard|common|simple|single-lumen|tracheal|endotracheal|breathing|cuffed|chest|suction)){0,3} (?:catheters?|drains?|tubes?|foleys?|needles?|sheaths?|introducers?)\b ?,?/g;

/** "Left double-lumen tube, 37 Fr. This one is numbered by …": the one kind of thing named in the sentence before. */
function spokenOf({ before }: Scene, said: string): Kind | undefined {
  const previous = TAKEN_UP.test(said) ? before.at(-1) : undefined;
  if (!previous || previous.close === '?') return undefined;
  const text = joined(previous.items).replace(LIKENED, ' ');
  const named = KINDS.filter((kind) => kind.named.test(text));
  const own = named.filter((kind) => kind !== KINDS[3]);
  return own.length > 1 ? undefined : (own[0] ?? named[0]);
}
const TAKEN_UP =
  /(?:^|, )(?:(?:and|so|here|but) )?(?!it (?:is|was) (?:the|its) )(?:this one|that one|it|this|these|they|its|their)\b/;

const STOPS =
  /\b(?:not|never|no|nor|neither|cannot|\w+n't|nothing|than|larger|bigger|wider|smaller|narrower|thicker|thinner|more|less|add|plus|divided|half|twice|times|depends?|varies|vary|both|either|if|unless|instead|rather|wrong|mistake|believe|think|thought|assume|or|ask|check|look|written|printed|marked|marks|stamped|holes|counted|find|exception|packet)\b/;

/** What is said to be named, before the side. */
const TELLS =
  /\b(?:(?:number|numbers|french|size|sizes|figure|figures|label|scale|charri[eè]re)\b.{0,50}\b(?:is|are|means?|gives?|tells?|refers?|stands?|measures?|measured|describes?|names?|of|for|from|by|to|on)|(?:sized|named|called|labell?ed|numbered|known|graded|measured|sold|ordered|quoted) .{0,30}\b(?:by|for|from|after|on|at)|(?:says|carries|reads|has) (?:an? )?\d+\b.{0,40}\bmeasured)\b/;

const END =
  '(?= ?[,.;!)]| ?$| of (?:the|an?|its|their) (?:tube|sheath|catheter|wall|thing)| as\\b| (?:diameter|width|wall|measurement|dimension|measure|size))';
const OUTER = new RegExp(
  `\\b(?:(?:outer|external|outside) (?:diameter|width|walls?|measurements?|dimensions?|measure|size)\\b|(?:on|at|by|from|of|for|is|its|their|the) outside${END})`,
);
const INNER = new RegExp(
  `\\b(?:(?:inner|internal|inside) (?:diameter|width|walls?|measurements?|dimensions?|measure|size)\\b|(?:on|at|by|from|of|for|is|its|their|the) (?:inside|lumen|bore)${END})`,
);
