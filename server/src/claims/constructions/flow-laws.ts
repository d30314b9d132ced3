/**
 * What changes the flow through one and the same tube: "under pressure a 16 G runs faster", "cold packed cells run slower than
 * warm saline", "raise the bag and it slows", "the narrowest part of the line is what limits you". One such thing a sentence;
 * where two change, nothing is read.
 */

import { cue, holds } from '../text/cues.ts';
import { flowSaid } from '../text/flowing.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { distinct, groups, type Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { FLOW_DEGREES, FLUID } from '../words/flowing.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

export const flowLaws: Construction = {
  id: 'flow-laws',
  needs: () => [
    { like: FLOW_DEGREES, every: [CONDITION] },
    { like: FLOW_DEGREES, also: LIMITS },
    { holds: ['superlative'], like: LIMITS },
  ],
  leaning: true,
  read(scene) {
    const { items } = scene;
    if (scene.sentence.close === '?' || items.length > 60) return [];
    if (holds(items, TURNED) || (holds(items, SAME) && items.some((_, i) => alike(items, i)))) return [];
    // Of a note without sizes nothing is read.
    if (groups(items).length === 0 && scene.system === undefined) return [];
    const limit = limiting(scene);
    if (limit) return limit;
    if (distinct(groups(items).flatMap(single)).length > 1) return [];
    const [word, ...more] = flowSaid(items);
    if (!word || more.length > 0) return [];
    const hits = conditions(items, word.at);
    const [first] = hits;
    if (!first || hits.some(({ law }) => law !== first.law)) return [];
    const sign = subjectOf(items, hits, word.at);
    if (!sign) return [];
    const formula = `${first.law}-is-${sign === word.sign ? 'faster' : 'slower'}`;
    return [
      {
        claim: ruleClaim(scene, 'flow-laws', 'needle-gauge', formula, word.at),
        at: word.at,
        from: word.at,
        to: word.to,
        unconditional: true,
      },
    ];
  },
};

const TURNS =
  /^(?:unless|but|although|though|however|until|too|may|might|could|would|whether|yet|despite|even|equally|equal|no)$/;

const TURNED = cue(NEGATIONS, TURNS);
const SAME = cue(['same']);

/** "runs at the same speed". */
const alike = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'same' && /^(?:speed|rate|flow|time|pace|way)$/.test(items[i + 1]?.word ?? '');

/** Something that changes the flow, and whether there is more of it. */
interface Condition {
  readonly law: Law;
  readonly at: number;
  readonly sign: 1 | -1;
}
type Law = 'longer' | 'pressed' | 'raised' | 'viscous' | 'obstructed';

const PRESSED =
  /^(?:squeez(?:e|es|ed|ing)|pressuris(?:ed|ing)|pressuriz(?:ed|ing)|pressure-bag|pumped|mmhg)$/;
const UNPRESSED = /^(?:gravity|unaided|unsqueezed|unpressurised)$/;
const RAISED = /^(?:rais(?:e|es|ed|ing)|hoist(?:ed)?|lift(?:s|ed|ing)?)$/;
const LOWERED = /^(?:lower(?:ed|ing)?|drop(?:ped|ping)?)$/;
const HUNG = /^(?:bags?|stand|pole|drip|hook|bottle|head|reservoir)$/;
const VISCOUS = /^(?:viscous|cold|colder|chilled|refrigerated|thick|thicker|concentrated|packed)$/;
const RUNNY = /^(?:warm|warmed|warmer|warming|dilut(?:e|ed|ing)|watery|runny|thin|thinner)$/;
const OBSTRUCTED = /^(?:kinked|kink|bent|clamped|crushed|half-closed|half-shut)$/;
const LONG = /^(?:long|longer)$/;
const SHORT = /^(?:short|shorter)$/;
const PRESSURE = 'pressure';
/** With none of these nothing changes the flow. */
const CONDITION = cue(...[PRESSED, UNPRESSED, RAISED, LOWERED, VISCOUS, RUNNY, OBSTRUCTED, LONG, SHORT], [
  PRESSURE,
]);
const TUBE =
  /^(?:cannulas?|cannulae|catheters?|lines?|tubes?|tubing|needles?|ones?|lumens?|extension|extensions|set|giving|midline|version)$/;

function conditions(items: readonly Item[], but: number): Condition[] {
  return items.flatMap((item, at) => {
    if (item.kind !== 'word' || at === but) return [];
    const found = conditionAt(items, at);
    return found ? [{ law: found[0], at, sign: found[1] }] : [];
  });
}

function conditionAt(items: readonly Item[], at: number): readonly [Law, 1 | -1] | undefined {
  const { word } = items[at]!;
  const next = items.slice(at + 1, at + 4);
  if (PRESSED.test(word)) return ['pressed', 1];
  if (word === PRESSURE && (next[0]?.word === 'bag' || items[at - 1]?.word === 'under'))
    return ['pressed', 1];
  if (UNPRESSED.test(word)) return ['pressed', -1];
  if (RAISED.test(word) && next.some((near) => HUNG.test(near.word))) return ['raised', 1];
  if (LOWERED.test(word) && next.some((near) => HUNG.test(near.word))) return ['raised', -1];
  // "less likely to kink": not kinked.
  if (OBSTRUCTED.test(word)) return items[at - 1]?.word === 'to' ? undefined : ['obstructed', 1];
  const fluid = next.some(
    (near) => FLUID.test(near.word) || /^(?:cells|gelatine?|oil|juice)$/.test(near.word),
  );
  if (fluid && VISCOUS.test(word)) return ['viscous', 1];
  if (fluid && RUNNY.test(word)) return ['viscous', -1];
  const length = LONG.test(word) ? 1 : SHORT.test(word) ? -1 : undefined;
  const thing = next.some((near) => near.kind === 'size' || TUBE.test(near.word));
  return length && thing && !/^(?:as|how|so|too|very)$/.test(items[at - 1]?.word ?? '')
    ? ['longer', length]
    : undefined;
}

const AGAINST = /^(?:than|rather|instead|compared|against|versus|unlike)$/;

/** How much of it the subject has: what stands behind "than" has the opposite. */
function subjectOf(items: readonly Item[], hits: readonly Condition[], word: number): 1 | -1 | undefined {
  const cut = items.findIndex((item) => AGAINST.test(item.word));
  const own = hits.filter(({ at }) => cut < 0 || at < cut);
  const other = hits.filter(({ at }) => cut >= 0 && at > cut);
  const oneWay = (all: readonly Condition[]) => all.every(({ sign }) => sign === all[0]!.sign);
  if (!oneWay(own) || !oneWay(other)) return undefined;
  const [mine, theirs] = [own[0]?.sign, other[0]?.sign];
  if (mine && theirs) return mine === theirs ? undefined : mine;
  // "It runs faster than under gravity.": what has the opposite is left out.
  if (!mine) return theirs && cut > word ? (theirs === 1 ? -1 : 1) : undefined;
  return cut < 0 || cut > word ? mine : undefined;
}

const LIMITS =
  /^(?:limits?|limited|limiting|governs?|decides?|determines?|dictates?|bottleneck|throttles?|depends?|set)$/;
const PART =
  /^(?:parts?|bits?|points?|sections?|segments?|pieces?|places?|stretch|links?|components?|bore|spot|end)$/;
const OF_LINE =
  /^(?:flow|flows|line|lines|tubing|system|chain|extension|drip|infusion|circuit|set|cannula|fluid|speed|rate)$/;

/** "What limits you is the widest part of the line." */
function limiting(scene: Scene): Reading[] | undefined {
  const { items } = scene;
  const word = measuredWords(items).find(
    (m) => m.degree === 'superlative' && items.slice(m.at + 1, m.at + 3).some((item) => PART.test(item.word)),
  );
  if (!word || !items.some((item) => OF_LINE.test(item.word))) return undefined;
  const magnitude = items[word.at]!.magnitude!;
  if (magnitude.axis !== 'outer' && magnitude.axis !== 'bore') return undefined;
  if (!items.some((item) => LIMITS.test(item.word)) || /\bhow\b/.test(joined(items, 0, 4))) return undefined;
  const formula = magnitude.sign === 1 ? 'widest-limits' : 'narrowest-limits';
  return [
    {
      claim: ruleClaim(scene, 'flow-laws', 'needle-gauge', formula, word.at),
      at: word.at,
      from: word.at,
      to: word.at,
    },
  ];
}
