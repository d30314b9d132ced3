/** A sheath said to be as wide outside as what it lets in: "an 8.5 Fr sheath measures 8.5 Fr on the outside". */
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** Readings of a sentence that gives a sheath its own number outside. */
export function sheathed(scene: Scene): Reading[] {
  if (!holds(scene.items, NAMES_SHEATH) || toldOutside(scene.items)) return [];
  const close = closely(scene);
  if (close.length > 0) return close;
  const below = belowName(scene);
  return below.length > 0 ? below : loosely(scene);
}
/** "The sheath itself is about 9 Fr outside, 3 mm": its outside, which is no name of it. */
const toldOutside = (items: readonly Item[]): boolean => {
  const own = groups(items)[0];
  return (
    own !== undefined &&
    /^(?:on the )?(?:outside|outer|externally)\b/.test(joined(items, own.to + 1, own.to + 4)) &&
    /\bsheath(?: itself)? (?:is|measures|comes to|will be)(?: about| roughly| some| nearly)?(?: an?)?$/.test(
      joined(items, 0, own.from),
    )
  );
};
const SHEATH = /^(?:sheaths?|sheath's|introducers?)$/;
const NAMES_SHEATH = cue(SHEATH);

function closely(scene: Scene): Reading[] {
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

/** "Measured outside, a sheath marked 7 Fr is two French smaller than its number", "… is 4 Fr on the outside" of a 6 Fr sheath. */
function belowName(scene: Scene): Reading[] {
  const { items } = scene;
  const [own, other, ...more] = groups(items);
  const text = joined(items);
  if (!own || more.length > 0 || items.length > 40 || scene.sentence.close === '?') return [];
  if (own.sizes[0]!.system !== 'french' || own.sizes.length > 1 || /\bif\b/.test(text)) return [];
  if (!OUTSIDE.test(text) || TURNS.test(text.replace(BY_NAME, ' ')) || OTHER_THING.test(text)) return [];
  const less = LESS.exec(text);
  const told = other
    ? narrower(items, own, other)
    : less !== null &&
      OWN_SIDE.test(text) &&
      text.indexOf('sheath') < less.index &&
      !/\bthan\b.*\bthan\b/.test(text);
  if (!told) return [];
  const at = other ?? own;
  const claim = ruleClaim(scene, 'sheathed', 'french', 'sheath-is-outer', at.from, at.to);
  return [{ claim, at: at.from, from: own.from, to: at.to }];
}
const LESS =
  /\b(?:smaller|thinner|narrower|slimmer|finer|less)\b(?: [a-z]+){0,6}? than (?:(?:its|the|that|their)(?: own)? (?:number|label|name|size|figure|marking|packet|french)\b|it is (?:called|marked|named|labelled))/;
const OTHER_THING =
  /\b(?:catheters?|drains?|lines?|pigtails?|stents?|guiding|long(?:er)?|cm|length|balloons?|hubs?|valves?|arms?|tips?)\b/;

/** The sheath's own French, and fewer of them outside: not for one measured as exactly as it is made. */
function narrower(items: readonly Item[], own: Group, outside: Group): boolean {
  const [a, b] = [own.sizes[0]!, outside.sizes[0]!];
  if (b.system !== 'french' || outside.sizes.length > 1 || a.value - b.value < 0) return false;
  const between = joined(items, own.to + 1, outside.from);
  const named = joined(items, Math.max(0, own.from - 4), own.from);
  const sheath =
    /^(?:[a-z]+ )?(?:sheath|introducer)\b/.test(between) ||
    /\bsheath (?:marked|labelled|labeled|named|called|of)$/.test(named);
  if (/\b(?:smaller|thinner|narrower|slimmer|less) than(?: an?)?$/.test(between))
    return sheath && /\boutside\b/.test(joined(items)) && a.value === b.value;
  if (sheath && MAKES_HOLE.test(between)) return true;
  return sheath && IS_OUTSIDE.test(between) && said(items, [], outside);
}
const MAKES_HOLE =
  /^(?:[a-z]+ ){0,2}?(?:sheath|introducer)(?: sheath)? (?:makes|leaves|needs) (?:only )?(?:an?|the) (?:hole|puncture)(?: (?:of|that is|as wide as))?(?: (?:only|just))?(?: an?)?$/;
const IS_OUTSIDE = /^(?:[a-z]+ ){0,2}(?:sheath )?(?:is|measures|has)(?: (?:only|just|about|roughly))*$/;

/** What turns the sentence, or speaks of the sheath's inside. */
const TURNS =
  /\b(?:inside|inner|internal|lumen|bore|through|takes?|accepts?|admits?|fits?|not|never|no|nor|unless|unlike|instead|rather|but|though|although|whereas|while|more|over|plus|dilators?|needles?|wires?|too|wrong|mistake|myth|thinks?|thought|would|say|says|said|some|many|might|could|before|after|upsiz\w+|chang\w+|swap\w*|replac\w+)\b|\w+n't|\?/;
const BY_NAME = /\b(?:french|number|label|name|packet) (?:says|said)\b/;
const ASKED = /\bif you (?:read|see|find|look|have|meet|take|are given)\b/;
const OWN_SIDE = /\b(?:outside|outer|external(?:ly)?|od)\b/;
const OUTSIDE =
  /\b(?:outside|outer|outward(?:ly)?|external(?:ly)?|od|holes?|punctures?|arteriotomy|tunnel)\b/;

/** The same in whatever words: a sheath and a catheter of one number compared, or a sheath's own third of a millimetre outside. */
function loosely(scene: Scene): Reading[] {
  const { items } = scene;
  const [own, other, ...more] = groups(items);
  const text = joined(items);
  const asked = ASKED.test(text);
  if (!own || !other || more.length > 0 || items.length > 40 || scene.sentence.close === '?') return [];
  if (!OUTSIDE.test(text) || TURNS.test(text.replace(BY_NAME, ' ')) || (!asked && /\bif\b/.test(text)))
    return [];
  const told =
    other.sizes[0]!.system === 'french'
      ? noWider(items, own, other)
      : OWN_SIDE.test(text) &&
        sameWidth(own, other) &&
        other.from - own.to <= REACH &&
        !/\bcatheters?\b/.test(text);
  if (!told) return [];
  const claim = ruleClaim(scene, 'sheathed', 'french', 'sheath-is-outer', other.from, other.to);
  return [{ claim, at: other.from, from: own.from, to: other.to, ...(asked ? { unconditional: true } : {}) }];
}
const REACH = 16;

/** Of a sheath and a catheter of the same French, the sheath is said to be the narrower, or both the same. */
function noWider(items: readonly Item[], a: Group, b: Group): boolean {
  const [x, y] = [a, b].map((g) => thingOf(items, g));
  if (!x || !y || x === y || [a, b].some(({ sizes }) => sizes.length > 1)) return false;
  const [sheath, catheter] = x === 'sheath' ? [a, b] : [b, a];
  const less = catheter.sizes[0]!.value - sheath.sizes[0]!.value;
  // A sheath is about two French wider than its name: against a much thicker catheter it may well be the narrower.
  if (less < 0 || less >= 1) return false;
  if (ALIKE.test(joined(items))) return !items.some(({ magnitude }) => magnitude?.degree === 'comparative');
  const words = measuredWords(items).filter(({ degree }) => degree === 'comparative');
  const [word] = words;
  if (!word || words.length > 1 || word.axis === 'number' || word.axis === 'flow') return false;
  const subject = subjectOf(items, a, b, word.at);
  return subject !== undefined && (subject === sheath) === (word.sign === -1);
}
const ALIKE =
  /\b(?:(?:same|equal|identical) (?:outer |outside |size of )?(?:size|width|diameter|outside|thickness|hole|holes|puncture|punctures|girth|calib(?:re|er)|on the outside|outside)|equally (?:wide|thick|fat|big|large)|as (?:wide|thick|fat|big|large) as)\b/;

/** What a size is the number of: the thing named right behind it. */
function thingOf(items: readonly Item[], { to }: Group): 'sheath' | 'catheter' | undefined {
  const next = items.slice(to + 1, to + 4);
  const at = next.findIndex(({ word, kind }) => kind !== 'word' || SHEATH.test(word) || CATHETER.test(word));
  const word = next[at]?.word ?? '';
  return SHEATH.test(word) ? 'sheath' : CATHETER.test(word) ? 'catheter' : undefined;
}
const CATHETER = /^(?:catheters?|drains?|lines?|pigtails?|stents?)$/;

/** "X … smaller than … Y": the one before the word; "the sheath is the thinner of the two": the thing named right before. */
function subjectOf(items: readonly Item[], a: Group, b: Group, at: number): Group | undefined {
  const than = items.findIndex(({ word }, i) => i > at && word === 'than');
  if (than > 0) return a.to < at && b.from > than ? a : undefined;
  if (!OF_TWO.test(joined(items, at + 1, at + 6)) || b.to > at) return undefined;
  const named = items.slice(b.to + 2, at).findLast(({ word }) => SHEATH.test(word) || CATHETER.test(word));
  if (!named) return undefined;
  const what = SHEATH.test(named.word) ? 'sheath' : 'catheter';
  return [a, b].find((g) => thingOf(items, g) === what);
}
const OF_TWO = /^(?:one )?(?:of (?:the|these|those) (?:two|pair)|[.;,]|$)/;

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
