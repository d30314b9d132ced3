/**
 * A hub colour and its size told in any words: "blue cannulae are handed out for fragile veins because a 24 is kinder to
 * them", "a green cannula is better than nothing. It is a 22 G". One colour and one size, of one thing; whatever stands
 * between them is skipped unless it takes something back, compares, exchanges or brings in another thing.
 */
import type { Device } from '../../sizes/model.ts';
import type { ColourClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { distinct, type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import { codeOf } from '../words/codes.ts';
import type { Colour } from './hub-code.ts';
import { coloursIn, otherThing } from './hub-words.ts';
import type { Reading } from './model.ts';

/** A colour of a hub and the size it is said of; one of the two may stand in the sentence before. */
interface Told {
  readonly colour: Colour;
  readonly size: Group;
  /** Whether each stands in this sentence, and where its part of it begins. */
  readonly coloured: boolean;
  readonly sized: boolean;
  readonly shift: number;
  /** Nothing where a needle or a cannula may be meant. */
  readonly device: Device | undefined;
}

/** As told in any words; the colour or the size may stand in the sentence before. */
export const toldLoosely = (scene: Scene): Reading[] => toldIn(scene).map((told) => readingOf(scene, told));

function readingOf(scene: Scene, { colour, size, coloured, sized, device, shift }: Told): Reading {
  const places = [
    ...(coloured ? [colour.at + shift, colour.to + shift] : []),
    ...(sized ? [size.from + shift, size.to + shift] : []),
  ];
  const [from, to] = places as [number, number];
  const claim: ColourClaim = {
    kind: 'colour',
    construction: 'colour',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[from]!, scene.items[to]!),
    size: operand(scene, size),
    colour: colour.family,
    same: true,
    ...(device ? { device } : { code: 'any' as const }),
  };
  return { claim, at: Math.max(...places), from: Math.min(...places), to: Math.max(...places) };
}

const LONGEST = 45;

/** The one colour and the one size of a sentence, of a part of it, or of a sentence and the one it goes on from. */
function toldIn(scene: Scene): Told[] {
  const { items, sentence } = scene;
  if (sentence.close === '?' || items.length > LONGEST) return [];
  const [colours, sizes] = [hubs(items), gauges(items)];
  const [colour, ...otherColours] = colours;
  const [size, ...otherSizes] = sizes;
  if (colour && size) {
    if (otherColours.length > 0 || otherSizes.length > 0) return inParts(items);
    return linked(items, colour, size) ? told(colour, size, codeOf(items), HERE) : [];
  }
  const before = scene.before.at(-1);
  if (!before || before.close === '?' || before.items.length > LONGEST || before.items.some(calledWrong))
    return [];
  return colour ? colourAfter(scene, before, colours) : size ? sizeAfter(scene, before, sizes) : [];
}
const HERE = { coloured: true, sized: true };

/** "Somebody had taken the last of the 23s, so I used the 25; hub brown": a part with one of each. */
function inParts(items: readonly Item[]): Told[] {
  const cuts = items.flatMap((_, i) => (opensPart(items, i) ? [i] : []));
  const whole = codeOf(items);
  return [0, ...cuts.map((cut) => cut + 1)].flatMap((from, i) => {
    const part = items.slice(from, cuts[i] ?? items.length);
    const [colours, sizes] = [hubs(part), gauges(part)];
    const [colour, size] = [colours[0], sizes[0]];
    if (!colour || !size || colours.length > 1 || sizes.length > 1 || !linked(part, colour, size)) return [];
    return told(colour, size, codeOf(part) ?? whole, HERE).map((one) => ({ ...one, shift: from }));
  });
}

const opensPart = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === ','
    ? /^(?:(?:so|but|while|whereas|then)\b|and (?:an?|the) )/.test(`${joined(items, i + 1, i + 3)} `)
    : items[i]!.word === ';' && !THE_SAME.test(joined(items, i + 1, i + 4));

/** "A green cannula is better than nothing. It is a 22 G." */
function sizeAfter({ items }: Scene, before: Sentence, [size, ...more]: readonly Group[]): Told[] {
  const [colour, ...others] = hubs(before.items);
  if (!size || !colour || more.length > 0 || others.length > 0 || coloursIn(items).length > 0) return [];
  if (groups(before.items).length > 0) return [];
  // "Our urinary catheters with the black funnel": the thing stands before its own part.
  const own =
    before.items[colour.at - 2]?.word === 'with' && HUB.test(before.items[colour.to + 1]?.word ?? '');
  if (!own && codeOf(before.items.slice(0, colour.at)) !== undefined) return [];
  if (!GOES_ON.test(joined(items, 0, size.from)) || items.slice(0, size.from).some(takesBack)) return [];
  if (!standsAlone(items, size)) return [];
  return told(colour, size, codeOf([...before.items, ...items]), { coloured: false, sized: true });
}
const GOES_ON =
  /^(?:and )?(?:it|that|this|that one|this one|these|those|they)(?:'s| is| are| was| has| gives| means| comes| measures| says| will be|'ll be)(?: [a-z']+){0,5}$/;

/** "Our 22 G cannulas arrived last week. The wings on them are pink." */
function colourAfter(scene: Scene, before: Sentence, [colour, ...more]: readonly Colour[]): Told[] {
  const { items } = scene;
  const [size, ...others] = gauges(before.items);
  if (!size || !colour || more.length > 0 || others.length > 0 || groups(items).length > 0) return [];
  if (coloursIn(before.items).length > 0) return [];
  const lead = joined(items, 0, colour.at);
  if (!ITS_HUB.test(lead) || items.some((item, i) => takesBack(item) && !follows(items, i))) return [];
  return told(colour, size, codeOf([...before.items, ...items]), { coloured: true, sized: false });
}
/** "The hub colour is then pink." */
const follows = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'then' && COPULA.test(items[i - 1]?.word ?? '');
const CODE =
  '(?:by|according to|under|in|going by|following|as per|after) (?:(?:the|iso|en|din|usual|common|standard|international|hub|funnel|colou?rs?|codes?|coding|standards?|lists?|charts?|tables?|scheme|rules?|of|cannulas?|cannulae|needles?|\\d[\\d-]*) ?)+';
const ITS_HUB = new RegExp(
  `^(?:and )?(?:${CODE}(?:, )?)?(?:(?:its|the|their|whose)(?: [a-z]+)? (?:hubs?|wings?|caps?|funnels?|colou?r|colou?r code|hub colou?r|plastic|end)(?: (?:on|of|at|for) (?:it|them|that|this|these|those|that one|this one|the end))?(?: , (?:as|of course|by the way|naturally|remember|you know|again)(?: [a-z]+){0,4} ,)?|(?:it|they|this one|that one|that|this|these))(?: ?,? ?${CODE},?)? ?(?:is|are|was|were|will be|should be|has|have|wears?|carr(?:y|ies)|comes? in|ought to be|must be|looks?|shines?|shows?)(?: [a-z]+){0,3}$|^(?:(?:its|the) )?(?:hub|funnel|colou?r|wings?|cap|connector)(?: colou?r)? ?[:–—=-]$|^(?:and )?(?:that|this|it) is (?:the|an?|our) (?:iv )?(?:needle|cannula|one|foley|catheter) with (?:the|an?)$|^(?:the|that) (?:right|correct|proper) one has (?:an?|the)$`,
);

function told(
  colour: Colour,
  size: Group,
  code: Device | 'both' | undefined,
  where: Pick<Told, 'coloured' | 'sized'>,
): Told[] {
  const french = size.sizes[0]!.system === 'french';
  if (code === 'both' || (french && (code === undefined || code === 'needle' || code === 'cannula')))
    return [];
  const named = code === 'needle' || code === 'cannula' || french;
  return [{ colour, size, ...where, device: named ? code : undefined, shift: 0 }];
}

/** Colours of hubs; of one colour told twice the first. */
function hubs(items: readonly Item[]): Colour[] {
  const all = coloursIn(items);
  // Another colour beside it, of whatever it be, makes it two things.
  if (new Set(all.map(({ family }) => family)).size > 1) return all;
  const first = all.find((c) => ofHub(items, c));
  return first ? [first] : [];
}

/** A colour of a hub: its noun stands behind it, or it stands for the thing itself. */
function ofHub(items: readonly Item[], { to }: Colour): boolean {
  const rest = items.slice(to + 1, to + 4);
  const noun = rest.findIndex(({ word }) => HUB.test(word));
  if (noun >= 0 && rest.slice(0, noun).every(({ word, kind }) => kind === 'size' || OF_HUB.test(word)))
    return true;
  const next = rest[0];
  // "his face was grey"
  if (OWN.test(items[to - 3]?.word ?? '') && COPULA.test(items[to - 1]!.word) && !isHub(items[to - 2]!))
    return false;
  if (COPULA.test(items[to - 1]?.word ?? '') && !items.slice(0, to).some(isHub)) return false;
  if (/^(?:on|in|at)$/.test(next?.word ?? '') && !items.slice(to + 1, to + 5).some(isHub)) return false;
  return (
    next?.kind !== 'word' ||
    ALONE.test(next.word) ||
    /^(?:greens|pinks|blues|greys|grays|oranges|yellows)$/.test(items[to]!.word)
  );
}
const OWN = /^(?:his|her|their|my|your)$/;
const COPULA = /^(?:is|are|was|were|be|been|went|looks?|looked|turns?|turned|goes)$/;
/** The thing whose colour it is, or what stands for it. */
const isHub = ({ word, kind }: Item): boolean =>
  kind === 'size' || HUB.test(word) || /^(?:it|that|this|its|their|whose|colou?rs?|these|they)$/.test(word);
const HUB =
  /^(?:hubs?|hubbed|ones?|caps?|wings?|cannula(?:e|s)?|needles?|catheters?|ivs?|butterfl(?:y|ies)|funnels?|connectors?|valve|flange|hypodermics?|foleys?|plastic|end|tip)$/;
const OF_HUB =
  /^(?:iv|venous|peripheral|plastic|injection|hypodermic|winged|drip|cannula|needle|catheter|urinary|suction|foley|spinal|coded|big|small|large|little|tiny|standard)$/;
const ALONE =
  /^(?:is|are|was|were|means|tells|says|gives|stands|at|on|in|for|by|which|that|has|have|will|would|should|gets|goes|belongs|and|marks|equals|comes|as|because|since|to)$/;

const gauges = (items: readonly Item[]): Group[] => {
  const all = groups(items);
  const own = distinct(all).filter((g) => /^(?:needle-gauge|french)$/.test(g.sizes[0]!.system));
  const plain = own.every(({ sizes, mentions }) => sizes.length === 1 && !mentions[0]!.bound);
  return plain ? own : [];
};

/** Nothing between them, nor right before or behind, says otherwise. */
function linked(items: readonly Item[], c: Colour, g: Group): boolean {
  const forward = c.to < g.from;
  const [from, to] = forward ? [c.to, g.from] : [g.to, c.at];
  if (to - from > FURTHEST) return false;
  const first = Math.min(c.at, g.from);
  if (items.slice(Math.max(0, first - 4), first).some(({ word }) => DENIES.test(word))) return false;
  const last = Math.max(c.to, g.to);
  if (items.slice(last + 1, last + 5).some(({ word }) => AFTERWARDS.test(word))) return false;
  // "this 28" is what was spoken of, whatever comes between.
  if (forward && /^(?:this|that|such)$/.test(items[to - 1]?.word ?? '')) return true;
  if (!(forward ? SAYS_SIZE : SAYS_COLOUR).test(joined(items, from + 1, to)) || !standsAlone(items, g))
    return false;
  for (let i = from + 1; i < to; i++) if (takesBack(items[i]!) || parts(items, i, to, forward)) return false;
  return !LEADS_OFF.test(joined(items, Math.max(from + 1, to - 3), to));
}
/** What makes a colour the sign of a size, or a name in apposition. */
const SAYS_SIZE =
  /\b(?:is|are|was|were|be|being|it's|that's|they're|you're|means?|tells?|says|gives?|stands?|marks?|indicates?|shows?|signals?|measures?|holding|holds?|expects?|wants?|called|calls?|named?|counts?|makes?|writes?|wrote|records?|recorded|labels?|labell?ed|reads?|because|since|i\.e|namely|size|i)\b|[=:(—–,]/;
const SAYS_COLOUR =
  /\b(?:with|by|in|is|are|was|were|be|has|have|having|wears?|wearing|carr(?:y|ies)|comes?|shows?|hubs?|colou?rs?|wings?|caps?|whose|its|bears?|gets?|called)\b|[=:(—–,]/;

/** The size stands for the thing itself: not "a 22 G patient". */
function standsAlone(items: readonly Item[], { to }: Group): boolean {
  const next = items[to + 1];
  if (otherThing(next)) return false;
  return (
    next?.kind !== 'word' ||
    next.deviceNoun === true ||
    HUB.test(next.word) ||
    OF_HUB.test(next.word) ||
    AFTER_SIZE.test(next.word)
  );
}
const AFTER_SIZE =
  /^(?:is|are|was|were|will|would|can|has|have|goes|go|runs?|gives?|gets?|takes?|needs?|and|or|but|so|that|which|who|when|if|because|since|as|for|in|on|at|by|to|from|with|without|of|into|through|too|also|please|then|now|here|there|first|every|each|the|a|an|your|you|we|they|it|only|size)$/;
const FURTHEST = 26;
const DENIES =
  /^(?:not|never|no|nor|neither|cannot|\w+n't|without|unlike|than|instead|rather|except|if|unless|wrong)$/;
const AFTERWARDS = /^(?:not|than|instead|unlike|other|another|old|makes?|make)$/;

const calledWrong = ({ word }: Item): boolean =>
  /^(?:wrong|wrongly|mistak\w+|mistook|false|myth)$/.test(word);

/** Denied, compared, exchanged, supposed, reported or wished. */
const takesBack = (item: Item): boolean =>
  TAKES_BACK.test(item.word) ||
  calledWrong(item) ||
  item.magnitude?.degree === 'comparative' ||
  item.magnitude?.excess === true;
const TAKES_BACK =
  /^(?:not|never|no|nor|neither|cannot|\w+n't|without|unless|than|unlike|except|instead|rather|or|either|whether|but|while|whereas|although|though|confus\w+|taken|took|fail\w*|blew|blown|tissued|blocked|swap\w*|change[ds]?|exchang\w+|replac\w+|remov\w+|upsiz\w+|downsiz\w+|half|twice|double|times|steps?|between|next|other|another|would|if|when|where|wherever|until|before|beats?|after|then|once|likes?|looks?|similar|same|match\w*|differ\w*|beside|nearest|alternative|box(?:es)?)$/;

/** A mark or a word that opens something else. */
function parts(items: readonly Item[], i: number, to: number, forward: boolean): boolean {
  const { word } = items[i]!;
  const next = joined(items, i + 1, Math.min(to, i + 4));
  if (word === '.' && items[i - 1]?.word === 'i.e') return false;
  if (word === ';' || word === '.' || word === '!') return !THE_SAME.test(next);
  if (word === 'and' || word === 'so')
    return !THE_SAME.test(next) && !(forward && /^(?:is|means|gives|has)\b/.test(next));
  if (/^[,:—–(-]$/.test(word)) return !goesOn(items, i, to);
  return (
    /^(?:with|into|through|via|past|over|behind|under|above|against|from|plus|needs?|wants?|around)$/.test(
      word,
    ) && forward
  );
}
/** "it is", "that one is", "you are holding". */
const THE_SAME =
  /^(?:and )?(?:it|it's|that's|that|this|its|they're|(?:they|these) (?:are|have|come|carry)|you're|you (?:are|will|have|know|get|hold|can)|we (?:are|have|know)|hub|his|her|easily|marked|known|recogni[sz]\w+|told)\b/;
/** After a comma, a colon or a dash: what goes on about the same. */
const goesOn = (items: readonly Item[], i: number, to: number): boolean => {
  const next = joined(items, i + 1, Math.min(to + 1, i + 5));
  if (THE_SAME.test(next)) return true;
  if (
    /^(?:which|who|because|since|as|i\.e|namely|meaning|easily|recogni[sz]\w+|known|marked|spotted|seen|told|hub|so (?:it|that|you)|i want|i need|and (?:it|that|you|is|has))\b/.test(
      next,
    )
  )
    return true;
  // An aside is closed again; a name in apposition follows its article.
  const closes = items.slice(i + 1, to).some(({ word }) => word === ',' || word === ')');
  const opened = items.slice(Math.max(0, i - 14), i).some(({ word }) => word === ',' || word === '(');
  return closes || opened || /^(?:that|the|our|your) (?:[a-z]+ ){0,2}\S+$/.test(joined(items, i + 1, to + 1));
};
/** Right before what comes last: it belongs to something else. */
const LEADS_OFF =
  /(?:^| )(?:and|with|to|into|over|through|near|plus|like|\S+ as|on top of) (?:an?|the|that|our)$/;
