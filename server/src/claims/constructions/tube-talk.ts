/**
 * Tracheal tubes spoken of loosely: what the number means, the cuffed against the uncuffed tube. The words that matter may
 * stand anywhere in the sentence; what turns it round leaves it unread.
 */
import { matchesOf } from '../../notes/index.ts';
import type { Item } from '../text/items.ts';
import { itemAt, joined } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';
import { CUES } from './tubes.ts';

export const tubeTalk: Construction = {
  id: 'tube-talk',
  needs: () => [{ like: CUES }, { holds: ['tube'] }],
  leaning: true,
  read(scene) {
    if (!scene.items.some(ofTubes)) return [];
    const text = joined(scene.items);
    const found =
      doubleLumen(scene, text) ??
      meansOutside(scene, text) ??
      pairOf(scene) ??
      offset(scene, text) ??
      wordSum(scene);
    return found ? [found] : [];
  },
};

const TUBE = /\b(?:tracheal|endotracheal|ett|breathing tube|(?:un)?cuffed|tracheostomy tube)\b/;
const TURNS =
  /\b(?:\w+n't|not|never|no|nor|neither|than|instead|unlike|if|unless|whereas|while|but|although|though|however|myth|mistake|wrong\w*|used to|once|some|others (?:say|hold|take)|too|french|charriere|double|lumen|plus|minus|thicker|wider|larger|also|both|depends?|varies|differs?)\b|\?/;
/** What follows from it for the inside, and the other side shut out: both leave the sense as it is. */
const ASIDE =
  /\b(?:,|;|so|and|which|leaving|meaning|hence) [^.;]{0,24}\b(?:inside|inner|internal|lumen|bore|hole|channel)\b[^.;]{0,60}(?: \.)?$|, (?:and )?not (?:the |its |on the )?(?:inside|inner|internal|lumen|bore)\b[^.;,]{0,20}/;
const INNER = /\b(?:inside|inner|internal|lumen|bore|id|hole|channel)\b/;
const OUTER =
  /\b(?:outside|outer|external|externally|od|over the walls?|walls? (?:included|and all)|(?:from )?wall to wall)\b/;
const NUMBER =
  /\b(?:numbers?|figures?|sizes?|sized|digits?|marked|marking|printed|print|stamped|labell?ed|label|named|name|ordered|sold|called|numbered|stands for)\b|#/;
const TELLS =
  /\b(?:is|are|'s|means?|gives?|tells?|refers?|measured|measures?|describes?|stands?|denotes?|reports?|by|after|taken|says?|=)\b|:/;

const ofTubes = ({ word, mention }: Item): boolean =>
  CUES.test(word) || mention?.sizes.some(({ system }) => system === 'tube-id') === true;

/** "The number on a tracheal tube, say 7.5, is measured from one outer wall to the other". */
function meansOutside(scene: Scene, text: string): Reading | undefined {
  if (!OUTER.test(text)) return undefined;
  const plain = text.replace(ASIDE, ' ');
  const outer = OUTER.exec(plain);
  if (!outer || INNER.test(plain) || TURNS.test(plain)) return undefined;
  if (!TUBE.test(plain) && !scene.items.some((item) => item.mention?.sizes[0]?.system === 'tube-id'))
    return undefined;
  const before = plain.slice(0, outer.index);
  const number = NUMBER.exec(before) ?? (takenUp(scene) ? TAKEN_UP.exec(before) : null);
  if (!number || !TELLS.test(before.slice(number.index))) return undefined;
  if (/\b(?:printed|marked|written|stamped) (?:under|below|beneath|beside|above|after|next)\b/.test(before))
    return undefined;
  // "The outside of a 7.0 is 9.6 mm": another number than the tube's own.
  const sizes = new Set(groups(scene.items).flatMap((g) => g.sizes.map(({ value }) => value)));
  if (
    sizes.size > 1 ||
    /\b(?:cuff|balloon|inflat\w+|connector|length|distance|mark|cm|teeth|lips?|taped?|tied?)\b/.test(plain)
  )
    return undefined;
  const at = itemAt(scene.items, text.search(OUTER));
  return reading(scene, 'tube-is-outer', at, itemAt(scene.items, Math.max(0, text.search(NUMBER))));
}

/** "He had a 7.5, and 7.5 is the outside diameter": the number is said again by itself. */
const takenUp = (scene: Scene): boolean => {
  const near = [...(scene.before.at(-1)?.items ?? []), ...scene.items];
  const tubes = groups(near).filter(({ sizes }) => sizes[0]!.system === 'tube-id');
  return tubes.length > 1 && new Set(tubes.map(({ sizes }) => sizes[0]!.value)).size === 1;
};
const TAKEN_UP = /\b\d{1,2}(?:\.\d)? (?:is|means|stands for|gives(?: you)?|tells you) (?:the|its) $/;

/** "A double-lumen tube carries its inner diameter in French". */
function doubleLumen(scene: Scene, text: string): Reading | undefined {
  const inner =
    /\b(?:inner|inside|internal) (?:diameters?|widths?|measure(?:ment)?s?|calib(?:re|er)s?|size)\b/.exec(
      text,
    );
  if (!inner || !/\bdouble[- ]lumen (?:\w+ )?tubes?\b/.test(text)) return undefined;
  const before = text.slice(0, inner.index);
  if (
    /\b(?:outer|outside|external|single|each|lumens)\b/.test(text) ||
    TURNS.test(text.replace(/\b(?:double|lumen|french|charriere)\b/g, ' '))
  )
    return undefined;
  if (
    !/\b(?:sized?|sizes|number|figure|french|named|marked|labell?ed|carr(?:y|ies)|gives?|by|means?)\b/.test(
      before,
    )
  )
    return undefined;
  return reading(
    scene,
    'double-lumen-is-inner',
    itemAt(scene.items, inner.index),
    itemAt(scene.items, text.search(/\bdouble\b|\bdouble-/)),
  );
}

/** "Uncuffed he takes a 5.0, cuffed it would be a 5.5": each of two tubes by its cuff, for one child. */
function pairOf(scene: Scene): Reading | undefined {
  const { items } = scene;
  const tubes = groups(items).filter((g) => g.sizes[0]!.system === 'tube-id');
  if (tubes.length !== 2 || tubes.some((g) => g.sizes.length > 1)) return undefined;
  const cuffs = items.flatMap(({ word }, at) =>
    /^(?:un)?cuffed$/.test(word) ? [{ at, un: word === 'uncuffed' }] : [],
  );
  const [one, two] = cuffs;
  if (cuffs.length !== 2 || one!.un === two!.un) return undefined;
  const text = joined(items);
  if (
    AGES.test(text) ||
    /\b(?:not|never|too|than|leaks?|instead|wrong|or|if|swap\w*|chang\w+|replac\w+|adult|trach\w*y)\b|\w+n't/.test(
      text,
    )
  )
    return undefined;
  const [a, b] = tubes as [Group, Group];
  const led = one!.at < a.from && two!.at > a.to && two!.at < b.from;
  const closed = one!.at > a.to && one!.at < b.from && two!.at > b.to;
  if (!led && !closed) return undefined;
  const [cuffed, uncuffed] = one!.un ? [b, a] : [a, b];
  const wrong = cuffed.sizes[0]!.value > uncuffed.sizes[0]!.value;
  return reading(
    scene,
    wrong ? 'cuffed-is-larger' : 'cuffed-is-smaller',
    cuffed.from,
    Math.min(a.from, one!.at),
  );
}
/** Two ages are two children. */
const AGES =
  /-year-olds?\b.*-year-olds?\b|\byears? old\b.*\byears? old\b|\b(?:at|aged?|for an?) \w+\b.*\b(?:at|aged|for an?) (?:\d+|one|two|three|four|five|six|seven|eight|nine|ten)\b/;

const HALF =
  /\b(?:half a size|a half size|half size|0\.5(?: ?mm)?|half a (?:mm|millimet(?:re|er))|one size|a size)\b/g;
const MORE = /\b(?:larger|bigger|wider|up|more|on top|added|adds?|adding|plus|extra|above)\b/;
const LESS =
  /\b(?:smaller|narrower|less|down|off|below|minus|subtract\w*|drop\w*|knock\w*|deduct\w*|lower|finer)\b/;

/** "For cuffed tubes add half a size", "the cuffed one goes half a size up". */
function offset(scene: Scene, text: string): Reading | undefined {
  const halves = matchesOf(text, HALF);
  const cuff = /\b(?:un)?cuffed\b/.exec(text);
  if (
    halves.length !== 1 ||
    !cuff ||
    /\b(?:not|never|too|if|leaks?|wrong|stridor|cm|croup|instead|unless|also|or|but|have|ready|spare|between)\b|\w+n't|\?/.test(
      text,
    )
  )
    return undefined;
  const half = halves[0]!;
  const near = text.slice(Math.max(0, half.index - 14), half.index + half[0].length + 14);
  const [more, less] = [MORE.test(near), LESS.test(near)];
  if (more === less) return undefined;
  const than = text.search(/\bthan\b/);
  // "Half a size smaller than uncuffed": who is compared stands before, or nowhere.
  const own = than >= 0 && cuff.index > than ? undefined : cuff[0];
  const both = matchesOf(text, CUFFS);
  if (!own || (than < 0 && new Set(both.map((m) => m[0])).size > 1) || groups(scene.items).length > 1)
    return undefined;
  if (!/\b(?:tubes?|ones?|age|formula|children|child|size)\b/.test(text)) return undefined;
  const right = more === (own === 'uncuffed');
  const at = itemAt(scene.items, half.index);
  return reading(
    scene,
    right ? 'cuffed-is-smaller' : 'cuffed-is-larger',
    at,
    Math.min(at, itemAt(scene.items, cuff.index)),
  );
}
const CUFFS = /\b(?:un)?cuffed\b/g;

/** "Half plus four: 5.5 mm", "one and a half plus four makes a 6.5": what a quarter of the age came to, and the sum. */
const PART =
  '(\\d(?:\\.\\d{1,2})?|(?:(?:one|two|three) and )?(?:a )?(?:half|quarter|three quarters)|one|two|three)';
const WORD_SUM = new RegExp(
  `(?:^|[ :(])${PART} (?:plus|and add|add|\\+) (4|four|3\\.5|three and a half)(?: ,)? (?:[:=,]|is|makes|gives|that is|comes to|so|which is) (?:(?:an?|about|size|you get) )*(\\d(?:\\.\\d{1,2})?)(?![.0-9])(?= |$|[,;])`,
);
const DIVIDED = /(?:\/|÷|over|by|times|×|age|half|quarter of)$/;
const PARTS: ReadonlyMap<string, number> = new Map([
  ['half', 0.5],
  ['quarter', 0.25],
  ['three quarters', 0.75],
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
]);
function amount(text: string): number {
  const [whole, part] = text.replace(/\ba (?=half|quarter|three)/, '').split(' and ');
  return [whole, part].reduce(
    (sum, word) => sum + (word === undefined ? 0 : (PARTS.get(word) ?? Number(word))),
    0,
  );
}

function wordSum(scene: Scene): Reading | undefined {
  const words = scene.items
    .map((item) => (item.mention ? item.mention.text.toLowerCase().replace(/ ?mm$/, '') : item.word))
    .join(' ');
  const match = WORD_SUM.exec(words);
  if (
    !match ||
    DIVIDED.test(words.slice(0, match.index)) ||
    !/\b(?:child|boy|girl|tubes?|(?:un)?cuffed|age|aged|year|years)\b|-year-/.test(words)
  )
    return undefined;
  if (/\b(?:not|never|wrong|if|than|instead)\b|\w+n't|\?/.test(words)) return undefined;
  const off = Math.abs(amount(match[1]!) + amount(match[2]!) - Number(match[3]));
  if (!(off > 0.3)) return undefined;
  const at = scene.items.findLastIndex((item) => item.mention !== undefined);
  return at < 0 ? undefined : reading(scene, 'tube-by-age-other', at, at);
}

function reading(scene: Scene, formula: string, at: number, from: number): Reading {
  return {
    claim: ruleClaim(scene, 'tube-talk', 'tube-id', formula, at),
    at,
    from: Math.min(from, at),
    to: at,
    own: true,
  };
}
