/**
 * Rules and sums about tracheal tubes: the suction catheter by the tube, the tube by the child's age worked out in
 * numbers, and the tube whose number is said to be its outside.
 */
import { readNumber, wordValue } from '../../mentions/words/numbers.ts';
import type { Item } from '../text/items.ts';
import { writtenOf } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { equate } from './equate.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** "An umbilical catheter of 3.5 is French": no tube is spoken of. */
const OF_CATHETER =
  /^(?:an?|the) (?:[a-z]+ )?catheters? (?:of|marked|called|labelled) [0-9.]+ (?:is|are|means) (?:in )?french\b/;

export const tubes: Construction = {
  id: 'tubes',
  needs: () => [
    { like: /^age/ },
    { like: /\bsuction\b/, also: CUES },
    { holds: ['tube', 'mixed'], like: /^(?:is|=|means|equals|measures|works|comes)$/, also: CUES },
    { like: /^(?:outside|outer|external|length)$/, also: /^tubes?$/ },
    { holds: ['tube'], like: /\b(?:outside|outer|external(?:ly)?|od)\b/ },
    { holds: ['tube'], like: INNER },
    { like: /\b(?:plus|add)\b|\+/, also: CUES },
  ],
  leaning: true,
  read(scene) {
    const text = writtenOf(scene.items);
    const age = ageRule(scene);
    if (age.length > 0) return [...age, ...cuffs(scene, text)];
    if (!TUBE.test(`${text} ${scene.headings.join(' ')} ${earlier(scene)}`) || scene.items.some(denies))
      return [];
    if (OF_CATHETER.test(text)) return suctionRule(scene, text);
    return [
      ...suctionRule(scene, text),
      ...outside(scene),
      ...inside(scene, text),
      ...labelled(scene, text),
      ...toldOutside(scene),
      ...inFrench(scene),
      ...byAge(scene),
      ...cuffs(scene, text),
    ];
  },
};

/** Words of tubes and of the rules about them. */
export const CUES = /^(?:tubes?|tube's|ett|tracheal|endotracheal|cuffed|uncuffed|suction|plus|add|\+)$|^age/;
const TUBE = /\b(?:age over|tubes?|ett|tracheal|endotracheal|cuffed|uncuffed|intubat\w*|airway|airways)\b/;
const denies = (item: Item): boolean => NEGATIONS.has(item.word) && item.word !== 'no';

const TWICE = /\b(?:twice|doubles?|doubled|doubling|two times|2 (?:×|x|times)|(?:×|x|times|by) (?:two|2))\b/;
const OTHER_FACTOR =
  /\b(?:(?:three|four|five|3|4|5) times|(?:3|4|5) (?:×|x)|(?:multipl\w+|times|×|x) (?:\w+ ){0,4}?(?:by )?(?:three|four|five|3|4|5)|triples?|tripled|treble|halve|divid\w+ (?:\w+ ){0,5}?by (?:two|three|four|2|3|4)|the same (?:number|figure) as)\b/;
const HALF = /\b(?:half|a half) (?:of )?(?:the )?(?:tube|internal|inner|id)\b/;

/** "The French of the suction catheter is at most twice the tube." Half the tube is a rule of its own, in millimetres. */
function suctionRule(scene: Scene, text: string): Reading[] {
  if (!/\bsuction\b(?! drains?\b)/.test(text) || !/\b(?:tubes?|tube's|ett)\b/.test(text)) return [];
  const french = scene.items.some((item) => item.system === 'french');
  const twice = TWICE.exec(text);
  const other = OTHER_FACTOR.exec(text) ?? (french ? HALF.exec(text) : null);
  if ((twice !== null) === (other !== null)) return [];
  const at = itemAt(scene.items, (twice ?? other)!.index);
  return [
    reading(scene, twice && !NEXT_ABOVE.test(text) ? 'suction-by-tube' : 'suction-by-tube-other', at, at),
  ];
}

/** "… and take the next catheter above": the rule goes down. */
const NEXT_ABOVE =
  /\b(?:the next|one|next) (?:(?:catheter|size|one|number|french|even|suction) ){0,2}(?:above|up|larger|bigger|wider|higher)\b|\bround(?:ed|ing)? (?:it )?up\b/;

/** The two sentences before this one. */
const earlier = (scene: Scene): string =>
  [...scene.context.slice(-2), ...scene.before]
    .slice(-3)
    .map(({ items }) => writtenOf(items))
    .join(' . ');

const INNER = /^(?:inside|inner|internal(?:ly)?|bore|lumen|id)$/;
const OTHER_THING =
  /\b(?:outside|outer|external\w*|od|walls?|than|too|through|down|into|takes?|passes|pass|fits?|room|scopes?|\w+scopes?|catheters?|suction|bougies?|stylets?|introducers?|cuff|from|to|or|and|if|instead|double|left|leaves|free|cm)\b|\w+n't/;

/** "A 7.0 tube is 7.5 mm inside": it is called by its inside. */
function inside(scene: Scene, text: string): Reading[] {
  const [id, length, ...more] = groups(scene.items);
  if (
    !id ||
    !length ||
    more.length > 0 ||
    id.sizes[0]!.system !== 'tube-id' ||
    !single(id) ||
    !single(length)
  )
    return [];
  if (!/mm$/i.test(length.mentions[0]!.text) || length.from - id.to > 12 || OTHER_THING.test(text)) return [];
  if (ANOTHER_TUBE.test(writtenOf(scene.items.slice(id.to + 1, length.from)))) return [];
  const value = length.sizes[0]!.value;
  if (!/^(?:tube-id|millimetre)$/.test(length.sizes[0]!.system)) return [];
  return equate(scene, id, { ...length, sizes: [{ system: 'millimetre', value }] }).filter(
    ({ claim }) => claim.kind === 'equivalence' && claim.axis === 'bore',
  );
}

/** "Tube A is 6.0 mm inside, tube B 6.5 mm": the second is of another tube. */
const ANOTHER_TUBE =
  /^(?:on the )?(?:inside|inner|internal(?:ly)?|bore|lumen|id)\b|[,;:] (?:(?:the|an?|your|my|our) )?(?:tube|ett|other|second|next|last|first|one)\b/;

/** "A 7.5 tracheal tube measures 7.5 mm on the outside": the wall has to be somewhere. */
function outside(scene: Scene): Reading[] {
  const { items } = scene;
  const [id, other] = groups(items);
  if (!id || !other || id.sizes[0]!.system !== 'tube-id' || !single(id) || !single(other)) return [];
  if (!/^(?:tube-id|millimetre)$/.test(other.sizes[0]!.system)) return [];
  if (other.sizes[0]!.value > id.sizes[0]!.value || other.from - id.to > 12) return [];
  const between = writtenOf(items.slice(id.to + 1, other.from));
  const after = ` ${writtenOf(items.slice(other.to + 1, other.to + 5))}`.split(
    / (?:and|but|while|[,;.(]) /,
  )[0]!;
  // "The external diameter of a 7.0 tube is 7.0 mm."
  const of = OUTSIDE_OF.exec(writtenOf(items.slice(Math.max(0, id.from - 6), id.from)))?.[0] ?? '';
  // "is less than 8 mm thick on the outside": no more than its own number either.
  const near = `${of} ${between} ${writtenOf([items[other.from]!])}${after}`.replace(LESS_THAN, ' ');
  if (
    !/\b(?:outside|outer|external|externally|od)\b/.test(near) ||
    /\b(?:inside|inner|internal|id|than)\b/.test(near)
  )
    return [];
  if (!/\b(?:is|measures?|has|means|=|with|of|:)\b|[=:(]/.test(between)) return [];
  return [reading(scene, 'tube-is-outer', other.from, id.from)];
}
const LESS_THAN = / (?:less|smaller|narrower|thinner|slimmer) than /;
const OUTSIDE_OF =
  /\b(?:outside|outer|external)(?: (?:diameter|width|side|measurement))? of (?:an?|the|this|that|your|our|every|each)(?: size)?$/;

/** "The 3.5 on the tube is the outside diameter", "the 7.0 refers to its outer width": the number, and what it tells. */
const TOLD =
  /^(?:tube |tracheal tube )?(?:(?:(?:printed|marked|written|stamped) )?(?:on|along) (?:it|(?:the|an?|your|this|that) (?:(?:tracheal|endotracheal|breathing|et|cuffed|uncuffed) )?(?:tube|packet|pack|label|box|connector|pilot balloon)) )?(?:is|means|gives|refers to|stands for|tells you|describes|says|denotes)(?: you)? (?:the|its) (?:outside|outer|external)(?: (?:diameter|width|measurement|calibre|size))?(?= in (?:mm|millimet(?:re|er)s)| of the tube| [.,;:]|$)/;
function toldOutside(scene: Scene): Reading[] {
  const { items } = scene;
  const [id, ...more] = groups(items);
  if (!id || more.length > 0 || id.sizes[0]!.system !== 'tube-id' || !single(id)) return [];
  if (!/^(?:the|that|this|its)$/.test(items[id.from - 1]?.word ?? '')) return [];
  // "The 8.2 printed under the 6.0 is the outside": another number is told.
  if (/^(?:under|below|beneath|beside|above|after|behind|to|by)$/.test(items[id.from - 2]?.word ?? ''))
    return [];
  if (!TOLD.test(writtenOf(items.slice(id.to + 1))) || /\bdouble\b/.test(earlier(scene))) return [];
  const at = items.findIndex((item, i) => i > id.to && /^(?:outside|outer|external)$/.test(item.word));
  return [reading(scene, 'tube-is-outer', at, id.from)];
}
const LABELLED =
  /\b(?:breathing |tracheal |endotracheal |airway )?(?:tube|tubes) (?:says|reads|is marked|are marked|marked|carries|is called|labelled|is labelled|is a|that says) \S+ , (?:that|it|this|the \d\S*|the number) (?:is|means|gives|tells you|refers to) (?:the |its )?([^.;]{0,50})/;

/** "When a tube says 6.0, that is the width over the outside." */
function labelled(scene: Scene, text: string): Reading[] {
  const measure = LABELLED.exec(text)?.[1] ?? '';
  const outer = /\b(?:outside|outer|external)\b/.test(measure);
  const length = /^(?:\w+ )?length\b/.test(measure);
  if ((!outer && !length) || /\b(?:inside|inner|internal|not|french|double-lumen)\b/.test(text)) return [];
  const at = scene.items.findLastIndex((item) => /^(?:outside|outer|external|length)$/.test(item.word));
  return [reading(scene, outer ? 'tube-is-outer' : 'tube-is-length', at, at)];
}

/** "A size 8 tracheal tube is 8 Fr": its outside is more than three times that. */
function inFrench(scene: Scene): Reading[] {
  const [id, french, ...more] = groups(scene.items);
  if (!id || !french || more.length > 0 || !single(id) || !single(french)) return [];
  if (id.sizes[0]!.system !== 'tube-id' || french.sizes[0]!.system !== 'french') return [];
  const between = writtenOf(scene.items.slice(id.to + 1, french.from));
  if (
    !/^(?:tracheal |endotracheal |breathing )?(?:tube )?(?:is|=|means|equals|measures|works out at|comes to)(?: an?| about| the same as an?)?$/.test(
      between,
    )
  )
    return [];
  if (
    /\b(?:suction|takes?|double|lumen|exchang\w+|catheters?|bougies?)\b/.test(
      `${writtenOf(scene.items)} ${earlier(scene)}`,
    )
  )
    return [];
  // "An 8.0 is 24 Fr inside"
  if (
    Math.abs(french.sizes[0]!.value - 3 * id.sizes[0]!.value) < 1.5 &&
    scene.items.some(({ word }) => INNER.test(word))
  )
    return [];
  return french.sizes[0]!.value > 3 * id.sizes[0]!.value
    ? []
    : [reading(scene, 'tube-in-french', french.from, id.from)];
}
const single = ({ mentions, sizes }: Group) => mentions.length === 1 && sizes.length === 1;

const AGE =
  /\bage (?:in years )?(\/|÷|over|divided by|times|×|x|\*) (two|three|four|five|six|2|3|4|5|6)\b(?:.{0,10}?(?:\+|plus|and add|add) (three and a half|\d(?:\.\d)?|two|three|four|five|six|seven|eight|nine|ten))?/;

/** "twice the age plus four", "a quarter of the age and four". */
const SHARE =
  /\b(twice|doubles?|half|halves?|a third of|three times|a quarter of|one quarter of|quarters?) (?:the )?(?:child's )?age\b.{0,12}?(?:\+|plus|and|adds?)(?: add)? (three and a half|\d(?:\.\d)?|three|four|five|six|seven|eight)\b/;

/** "taking the age, halving it and adding four". */
const STEPS =
  /\b(?:the |his |her )?(?:child's )?age (?:in years )?, (halv\w+|doubl\w+|divid\w+|multipl\w+) (?:it |this )?(?:by (two|three|four|five|2|3|4|5) )?(?:, )?(?:and )?(?:then )?add/;

/** "Years divided by four", "take the age and divide it by four": as one sum of the age. */
const agesOf = (text: string): string =>
  text
    .replace(/\b(age|years)\/(\d)/g, '$1 / $2')
    .replace(/(\d)\s*\.\s*(\d)/g, '$1.$2')
    .replace(/\b(?:the |his |her |their )?years (?=(?:\/|÷|divided by|over) )/, 'age ')
    .replace(/\b(quarter|third|half) of (?:the |his |her )?years\b/, '$1 of the age')
    .replace(
      /\btak(?:e|ing) (?:the |his |her |their )?(?:child's )?(?:age|years)(?: in years)? ?(?:, )?(?:and )?(?:then )?divid(?:e|ing) (?:it |them |that )?by /,
      'age divided by ',
    )
    .replace(
      /\bdivid\w+ (?:the |his |her |their |your )?(?:child's )?(?:age (?:in years )?|years )by /,
      'age divided by ',
    )
    .replace(/\bage(?: in years)? ?(?:, )?(?:and |then )*divide (?:it |that )?by /, 'age divided by ');

/** The size of a child's tracheal tube by age: a quarter of the age, plus 4 uncuffed or 3.5 cuffed. */
function ageRule(scene: Scene): Reading[] {
  const text = agesOf(writtenOf(scene.items));
  const match = AGE.exec(text);
  const steps = match ? null : STEPS.exec(text);
  const share = match || steps ? null : SHARE.exec(text);
  if (!match && !share && !steps) return [];
  const tube = /\b(?:tubes?|ett|cuffed|uncuffed|tracheal|airway)\b/.test(
    `${text} ${scene.headings.join(' ')} ${scene.before.flatMap((s) => s.items.map((item) => item.word)).join(' ')}`,
  );
  if (!tube || /\b(?:depth|length|lips?|cm)\b/.test(text)) return [];
  const count = (word: string | undefined) =>
    word === undefined
      ? undefined
      : word === 'three and a half'
        ? 3.5
        : (readNumber(word)?.value ?? Number.NaN);
  const more = count(match?.[3] ?? share?.[2]);
  const divides = /^(?:\/|÷|over|divided by)$/.test(match?.[1] ?? '');
  const right = match
    ? divides && count(match[2]) === 4 && (more === undefined || (more >= 3 && more <= mostAdded(text)))
    : steps
      ? /^divid/.test(steps[1]!) && count(steps[2]) === 4
      : /quarter/.test(share![1]!) && more !== undefined && more >= 3 && more <= mostAdded(text);
  const at = Math.max(
    0,
    scene.items.findIndex(({ word }) => /^(?:age|years)/.test(word)),
  );
  return [reading(scene, right ? 'tube-by-age' : 'tube-by-age-other', at, at)];
}

/** A cuff takes room: nobody adds more than four for a cuffed tube. */
const mostAdded = (text: string): number =>
  /(?:^|[^n])\bcuffed\b|\bwith (?:a |the )?cuff\b/.test(text) &&
  !/\b(?:uncuffed|without|no cuff)\b/.test(text)
    ? 4
    : 4.5;

const COUNT = '([0-9]+(?:\\.[0-9]+)?|[a-z]+)';
const SUM = new RegExp(
  `(?:^|[ :=(])${COUNT} ?(?:/|÷|over|divided by) ?(?:4|four)(?: (?:is|=) (?:[a-z]+ and (?:a|three) (?:half|quarters?)|${COUNT}))?(?: [,;])?(?: and)? (?:\\+|plus|add) (4|four|3\\.5|three and a half)(?: mm)? (?:=|is|makes|gives|equals|comes to|and you have|and the (?:un)?(?:cuffed )?tube is|, that is|,|so|:)(?: (?:so |an? |about |size |you get ))? ?${COUNT}(?![a-z0-9])`,
);

/** Between two tubes half a size is rounding, more is a slip; what comes out at a tube is that tube. */
const ROUNDING = 0.51;
export const roundingOf = (sum: number): number => (Number.isInteger(sum * 2) ? 0.01 : ROUNDING);

/** "8/4 + 4 = 8". */
function byAge(scene: Scene): Reading[] {
  const text = writtenOf(scene.items)
    .replace(/(\d)\/(\d)/g, '$1 / $2')
    // "4 + 6/4 = 5.5": the same sum the other way round.
    .replace(/(^|[ :(])(4|3\.5) \+ ([0-9]+) \/ 4 (?=[=:]|is |makes |gives )/, '$1$3 / 4 + $2 ');
  const match = SUM.exec(text);
  if (!match) return [];
  const [age, part, more, said] = [match[1], match[2], match[3], match[4]].map(numberOf);
  if (age === undefined || more === undefined || said === undefined || age > 16) return [];
  const wrong =
    Math.abs(age / 4 + more - said) > roundingOf(age / 4 + more) ||
    (part !== undefined && Math.abs(age / 4 - part) > ROUNDING);
  const at = scene.items.findLastIndex((item) => writtenOf([item]).replace(/ mm$/, '') === match[4]);
  const last = at < 0 ? scene.items.length - 1 : at;
  return [reading(scene, wrong ? 'tube-by-age-other' : 'tube-by-age', last, last)];
}

function numberOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (text === 'three and a half') return 3.5;
  if (text === 'four and a half') return 4.5;
  const value = wordValue(text) ?? Number(text);
  return Number.isNaN(value) ? undefined : value;
}

const ADDED = '(?:[^+;]{0,40}?)(?:\\+|plus|add) (4\\.5|4|3\\.5|3|(?:four|three)(?: and a half)?)';
/** "plus four for uncuffed, plus three and a half for cuffed". */
const NAMED =
  '(?:\\+|plus|add) (4\\.5|4|3\\.5|3|four and a half|four|three and a half|three) (?:for|if|with|in) (?:an? |the |it is )?';
const NAMED_UNCUFFED = new RegExp(`${NAMED}uncuffed\\b`);
const NAMED_CUFFED = new RegExp(`${NAMED}cuffed\\b`);
const UNCUFFED = new RegExp(`\\buncuffed\\b${ADDED}`);
const CUFFED = new RegExp(`(?<!un)\\bcuffed\\b${ADDED}`);

/** "age/4 + 3.5 uncuffed, + 4 cuffed": the cuff takes room, so the cuffed tube is never the larger. */
function cuffs(scene: Scene, text: string): Reading[] {
  const [unBefore, before] = [NAMED_UNCUFFED.exec(text)?.[1], NAMED_CUFFED.exec(text)?.[1]];
  const named = unBefore !== undefined && before !== undefined;
  const [un, cuffed] = (named ? [unBefore, before] : [UNCUFFED.exec(text)?.[1], CUFFED.exec(text)?.[1]]).map(
    numberOf,
  );
  if (!/\b(?:age|formula|rule)\b/.test(text) || un === undefined || cuffed === undefined || un >= cuffed)
    return [];
  const at = scene.items.findIndex((item) => item.word === 'uncuffed');
  return [reading(scene, 'tube-by-age-other', Math.max(at, 0), Math.max(at, 0))];
}

function itemAt(items: readonly Item[], offset: number): number {
  let length = 0;
  for (let i = 0; i < items.length; i++) {
    length += writtenOf([items[i]!]).length;
    if (length > offset) return i;
    length += 1;
  }
  return items.length - 1;
}

function reading(scene: Scene, formula: string, at: number, from: number): Reading {
  const claim = ruleClaim(scene, 'tubes', 'tube-id', formula, at);
  return { claim, at, from, to: at };
}
