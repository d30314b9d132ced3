/**
 * How threads are written: "a 3-0 may also be written 00", "000 is read as size 2-0", "4/0 means number four", "2 or 2-0:
 * the dash is a habit of printing, the thread is the same".
 */
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { compares } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';
import { comparison, wordless } from './than.ts';

/** Words that set two writings of one size beside each other. */
const WRITES =
  /^(?:write|writes|written|writing|spell|spells|spelt|spelled|print|prints|printed|read|reads|called|call|means|mean|different|distinct|separate|two|from|marked|labelled|labeled|stands|words|is|are|=|as|dash|hyphen|slash|stroke|difference|order|orders|ordering|put|say|says|i\.e|namely|name|denote|describe|stand|make|stitch|differ|matter|between|own)$/;

export const spelled: Construction = {
  id: 'spelled',
  needs: () => [
    { holds: ['thread'], like: WRITES },
    { holds: ['thread', 'answers'] },
    // Of the thread in the sentence before; all such words speak of a size, or of two to stand between.
    { sizes: 1, like: WRITES, also: /size|between/ },
  ],
  read(scene) {
    // "The European label on the 5-0 reads 1": a number of another scale.
    if (holds(scene.items, OF_OTHER_SCALE)) return [];
    const all = groups(scene.items).flatMap(singly(scene.items)).filter(thread);
    const pairs = all.slice(1).flatMap((b, i) => {
      const a = all[i]!;
      return !sameSizes(a, b) && (ties(scene.items, a, b) || oneThread(scene.items, a, b))
        ? [reading(scene, a, b, /^["“”'‘’]$/.test(scene.items[a.to + 1]?.word ?? '') ? b.to : a.to)]
        : [];
    });
    if (pairs.length > 0) return pairs;
    const asked = answered(scene, all);
    return asked.length > 0 ? asked : [...apart(scene, all), ...ofItsOwn(scene, all), ...dashed(scene, all)];
  },
};

const OF_OTHER_SCALE = cue(/^(?:european|metric|ep|pharmacopoeia|pharmacopeia|decimetric)$/);

const thread = (g: Group) => g.sizes.length === 1 && g.sizes[0]!.system === 'usp';

/** A list of sizes, each by itself: "000 is 3-0, 00 is 2-0". */
const singly =
  (items: readonly Item[]) =>
  (g: Group): Group[] =>
    g.mentions.map((mention) => {
      const at = items.findIndex((item, i) => i >= g.from && item.mention === mention);
      return { from: at, to: at, mentions: [mention], sizes: mention.sizes };
    });

const NOUN = '(?:(?:silk|nylon|suture|thread|catgut|gut|polypropylene|one) )?';
const PLACE =
  '(?:(?:on|in) (?:an? |the |old |older |our |your |their |some |these |those |such |most |very |suture )*\\w+ )?';
const OFTEN = '(?:also |likewise |often |sometimes |usually |still |just |simply |then |therefore )*';
const SIZE = '(?:(?:a|an|the|size|number|no|plain|usp) )*';
const AS = `(?:as )?${SIZE}`;

/** Between two writings: the one is said to be read or written as the other. */
const BETWEEN = new RegExp(
  `^${NOUN}${PLACE}(?:, )?(?:which |it )?(?:` +
    `(?:may|can|could) ${OFTEN}be ${OFTEN}(?:written|spelt|spelled|printed|read|called|shown)|` +
    `(?:is|are) ${OFTEN}(?:written|spelt|spelled|printed|read|called|pronounced|shown|noted)|` +
    `(?:is|=) what (?:others|some|we|they|you|people|most|every(?:body|one)(?: else)?|the rest of us|the \\w+) ${OFTEN}(?:(?:now|today|nowadays|usually|would|then|these days) )*(?:calls?|writes?|prints?)|` +
    `(?:we|they|others|people|some|you) ${OFTEN}(?:now |today |nowadays )?(?:call|write|name|print)|` +
    `${OFTEN}(?:means|reads|stands for|corresponds to)|has (?:the|an) (?:old|older|other|modern|new) name|, in other words|, that is to say|, i\\.e(?: \\.)?|, namely|` +
    `is (?:a |the |an )?(?:(?:other|another|old|older|long|short) )?(?:way|form|spelling|shorthand) (?:of|for|to write)(?: writing)?` +
    `) (?:, )?${AS}$`,
);

/** "Read 00 nylon as 3-0", "some write 6-0 silk as 00000". */
const VERB_BEFORE =
  /(?:^| )(?:read|write|writes|spell|spells|print|prints|note|notes|writing|reading)(?: (?:a|an|the|size|number))?$/;
/** "Treat 00 as 3-0": of a row of zeros alone, since a thread may be taken for another. */
const TAKE_BEFORE = /(?:^| )(?:treat|treats|regard|understand|think of)(?: (?:an?|the|size|number))?$/;
/** "00 there is no more than a nought, so treat it as 0". */
const SO_TREAT = new RegExp(
  `^(?!.*\\b(?:if|not|never|out|gone|missing|left|without|and|or)\\b)[^;:.]{0,60}, so (?:you (?:can |may )?|just |please )?(?:treat|read|take|count|enter) (?:it|that|this) as ${SIZE}$`,
);
const AS_BETWEEN = new RegExp(`^${NOUN}as ${SIZE}$`);

/** "000 is 3-0": a row of zeros is nothing but another writing. */
const ZEROS = /^0{2,}$/;
const SETS_EQUAL = new RegExp(
  `^${NOUN}${PLACE}(?:(?:is|=|are) ${OFTEN}(?:nothing but |none other than |really |only )?|(?:it is|it's|that is|that's|you have) ${OFTEN}|, (?:which (?:is|means)|you (?:are holding|hold|have)|it is|it's|that is|that's|think|read|take it as|expect|hand over|give|pass|open|fetch) )${SIZE}$`,
);

function ties(items: readonly Item[], a: Group, b: Group): boolean {
  const gap = `${gapText(items, a, b)} `;
  const after = items[b.to + 1]?.word ?? '';
  // "is 3-0 or finer", "means 2-0 to 4-0": not one size.
  if (/^(?:or|and|to|than)$/.test(after) && items[b.to + 2]?.kind !== 'word') return false;
  if (items[b.to + 1]?.word === 'or' && items[b.to + 2]?.magnitude) return false;
  if (!shared(a, b)) return false;
  if (BETWEEN.test(gap)) return true;
  const before = textOf(items.slice(Math.max(0, a.from - 4), a.from));
  if (VERB_BEFORE.test(before) && AS_BETWEEN.test(gap)) return true;
  const zeros = [a, b].some((g) => ZEROS.test(g.mentions[0]!.text));
  const closes = (items[b.to + 1]?.kind ?? 'punctuation') === 'punctuation';
  if (zeros && closes && TAKE_BEFORE.test(before) && AS_BETWEEN.test(gap)) return true;
  if (zeros && closes && SO_TREAT.test(gap)) return true;
  return zeros && !/^(?:instead|too|as|first)$/.test(items[b.to + 1]?.word ?? '') && SETS_EQUAL.test(gap);
}

/** What stands between two sizes, without the quotation marks around them and an aside that counts: "0000, four of them, is". */
const gapText = (items: readonly Item[], a: Group, b: Group): string =>
  textOf(items.slice(a.to + 1, b.from).filter((item) => !/^["“”'‘’*]$/.test(item.word))).replace(
    /^, (?:that is )?\w+ (?:of them|noughts|zeros|zeroes|in a row|in all)(?: in a row)? , /,
    '',
  );

/** "And 000? 4-0.", "What is 00? 3-0.": the answer is nothing but a size. */
function answered(scene: Scene, [only, ...more]: readonly Group[]): Reading[] {
  const before = scene.before.at(-1) ?? scene.context.at(-1);
  if (!only || more.length > 0 || before?.close !== '?' || before.items.length > 9) return [];
  if (!scene.items.every((item) => item.kind === 'size' || ALONE.test(item.word))) return [];
  const [asked, ...others] = groups(before.items);
  if (!asked || others.length > 0 || !thread(asked) || !ZEROS.test(asked.mentions[0]!.text)) return [];
  if (sameSizes(asked, only) || !before.items.every((item) => item.kind === 'size' || ASKS.test(item.word)))
    return [];
  const read = wordless(comparison(scene, 'spelled', asked, only, compares(only.from, 'outer', 1), 'same'));
  return [{ ...read, at: only.from, from: only.from, to: only.to, own: true }];
}
const ALONE = /^(?:an?|that|is|it|it's|the|that's|size|silk|nylon|suture|[.!*"“”])$/;
const ASKS =
  /^(?:and|what|about|is|does|mean|then|so|how|which|size|a|an|the|of|on|packet|box|label|printed|marked|stand|for|do|you|call|read|would|old|[?,*"“”'‘’])$/;

/** "5-0 nylon and 0000 nylon name one thread." */
function oneThread(items: readonly Item[], a: Group, b: Group): boolean {
  const between = `${textOf(items.slice(a.to + 1, b.from))} `;
  const after = textOf(items.slice(b.to + 1, b.to + 7));
  return AND_BETWEEN.test(between) && NAME_ONE.test(after);
}
const AND_BETWEEN = new RegExp(`^${NOUN}and ${SIZE}$`);
const NAME_ONE = new RegExp(
  `^${NOUN}(?:both )?(?:name|are|mean|denote|stand for|describe|make) (?:one(?: and the same)?|the same|a single) (?:thread|size|suture|thing)(?= [.,;!]|$)`,
);

/** Both of the same material, or of one not said. */
const shared = (a: Group, b: Group) =>
  a.mentions[0]!.material === undefined ||
  b.mentions[0]!.material === undefined ||
  a.mentions[0]!.material === b.mentions[0]!.material;

/** Two writings of one size said to be two: "2/0 and 2-0 are different threads", "1-0 is not the same as 0". */
function apart(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const [a, b, ...more] = all;
  if (!a || !b || more.length > 0 || !sameSizes(a, b) || !shared(a, b)) return [];
  if (a.mentions[0]!.text === b.mentions[0]!.text || b.from - a.to > 9) return [];
  const after = textOf(items.slice(b.to + 1, b.to + 12));
  const between = textOf(items.slice(a.to + 1, b.from));
  const both = /^(?:(?:on|in) (?:\S+ ){1,3})?(?:and|from|while the other (?:says|has)|,)(?: an?| the)?$/;
  const two = DIFFERENT.test(after) && (both.test(between) || items.some((item) => item.word === 'and'));
  if (!two && !NOT_ONE.test(between)) return [];
  if (items.some((item) => /^(?:myth|nobody|wrongly|\?)$/.test(item.word))) return [];
  const at = two ? items.findIndex((item, i) => i > b.to && APART.test(item.word)) : b.from - 1;
  const claim = ruleClaim(scene, 'spelled', 'usp', 'writings-differ', a.from, b.to);
  return [{ claim, at: Math.max(at, a.to), from: a.from, to: b.to, own: true, unconditional: true }];
}
const APART = /^(?:different|two|distinct|separate|not|never|mixed|swapped)$/;
const DIFFERENT =
  /^(?:(?:on|in) (?:\S+ ){1,3})?(?:, )?(?:they )?(?:are|is|name|mean|make) (?:in fact |quite |really |two )?(?:different|distinct|separate|not the same|two)\b(?! (?:ways|forms|writings|spellings|names|way|habits|styles|printings|labels|notations))/;
const NOT_ONE =
  /(?:^| )(?:is|are) (?:not the same(?: (?:size|thread|suture|thing))? as|different from|another (?:size|thread) (?:than|from)|a different (?:size|thread|suture) (?:from|to|than))(?: an?| the)?$/;

/** "1-0 is a size of its own and comes between 0 and 1": another writing of 0 said to be no writing of it. */
function ofItsOwn(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const said = textOf(items);
  const cue = OF_ITS_OWN.exec(said);
  if (!cue || /\b(?:not|never|no|myth|nobody|if|whether|asks?|asked|wrongly|isn't|\?)\b/.test(said))
    return [];
  const before = said.slice(0, cue.index).split(' ').length - 1;
  const own = all.find(({ mentions, to }) => ONE_NOUGHT.test(mentions[0]!.text) && to <= before + 2);
  const previous = scene.before.at(-1);
  const led =
    previous !== undefined &&
    /^(?:it|this|that) /.test(said) &&
    groups(previous.items).some(({ mentions }) => ONE_NOUGHT.test(mentions[0]!.text)) &&
    groups(previous.items).length === 1;
  if (!own && !led) return [];
  const at = items.findIndex(({ word }, i) => i >= before - 1 && /^(?:own|itself|between)$/.test(word));
  const place = at < 0 ? items.length - 1 : at;
  const claim = ruleClaim(scene, 'spelled', 'usp', 'writings-differ', own?.from ?? place, place);
  return [{ claim, at: place, from: own?.from ?? 0, to: place, own: true, unconditional: true }];
}
const ONE_NOUGHT = /^(?:size |usp )?1[-/]0$/i;
const OF_ITS_OWN =
  /\b(?:(?:is|has|as) (?:an? )?(?:size of its own|size by itself|separate size|its own size|own size)|(?:sits|comes|lies|falls|stands|goes|fits|slots|is) (?:in |half ?way |midway |right |just |(?:the|an?) (?:(?:half|missing|middle|intermediate|in-between|extra) )?(?:half-step|step|size|rung|stage|one) )?between (?:size )?(?:0 and (?:1|2-0|00)|1 and 0|2-0 and 0)(?! ?mm))\b/;

const MARK = /^(?:dash|hyphen|slash|stroke|zero|nought)$/;
const SAME =
  /\b(?:the same (?:thread|size|thing|suture|silk|nylon|material|stitch|order|spool|reel|roll|strand|string|stuff|box)|(?:thread|silk|suture|size|nylon|material|stitch|spool|reel|strand) is the same|(?:makes|make|made|is) no (?:difference|odds)|differ only in (?:how|the way) they are (?:written|spelt|spelled|printed)|one thread|one size|doesn't matter|does not matter)\b/;
const SAID = /^(?:same|difference|odds|matter|only|one)$/;
const WRITTEN = /^(?:write|writes|written|writing|put|print|printed|says|say|order|ordering|orders)$/;

/** "Whether you write 3 or 3-0 makes no difference": the same figure with a dash and without. */
function dashed(scene: Scene, all: readonly Group[]): Reading[] {
  const { items } = scene;
  const words = textOf(items);
  const last = all.at(-1);
  if (
    !last ||
    all.length > 2 ||
    !SAME.test(words) ||
    /\b(?:not|never|isn't|aren't|nor|if you want)\b/.test(words.replace(/\bdoes not matter\b/g, ''))
  )
    return [];
  const plain = all.length === 2 ? all[0]! : bare(items, last);
  if (!plain || plain.sizes[0]!.value < 1 || plain.sizes[0]!.value !== 1 - last.sizes[0]!.value) return [];
  const about = items.some((item) => MARK.test(item.word) || WRITTEN.test(item.word));
  const at = items.findLastIndex((item) => SAID.test(item.word));
  return about ? [reading(scene, plain, last, Math.max(at, last.to))] : [];
}

/** "Writing 4 on the card": a figure right behind the verb, where the other size says what it is. */
function bare(items: readonly Item[], last: Group): Group | undefined {
  const at = items.findIndex(
    (item, i) =>
      i < last.from &&
      /^[1-9]$/.test(item.word) &&
      item.kind === 'word' &&
      WRITTEN.test(items[i - 1]?.word ?? ''),
  );
  // "dash or no dash, 2 and 2-0"
  const beside = last.from - 2;
  const joined =
    /^(?:and|or)$/.test(items[last.from - 1]?.word ?? '') && /^[1-9]$/.test(items[beside]?.word ?? '');
  if (at < 0 && !joined) return undefined;
  return figure(items, at < 0 ? beside : at);
}

const figure = (items: readonly Item[], at: number): Group => {
  return { from: at, to: at, mentions: [], sizes: [{ system: 'usp', value: Number(items[at]!.word) }] };
};

/** "If the packet prints 0000 it is a 4-0": the condition is how it is written. */
const shown = (items: readonly Item[], a: Group, b: Group): boolean =>
  /(?:^| )(?:it is|it's|that is|it means|that means|that's|you have|you hold|you are holding|fetch|open|pass|give|hand over|take|expect|read|(?:you (?:can|may|could) |just )?(?:read|take|count) it (?:as|for))(?: an?| the| size| just| simply| really)*$/.test(
    textOf(items.slice(a.to + 1, b.from)),
  );

function reading(scene: Scene, a: Group, b: Group, at: number): Reading {
  const word = compares(b.from, 'outer', 1);
  const left = a.mentions.length > 0 ? a : undefined;
  const read = wordless(comparison(scene, 'spelled', left ?? b, b, word, 'same'));
  const focus = spanOf(scene, scene.items[a.from]!, scene.items[b.to]!);
  if (read.claim.kind !== 'comparison') return read;
  const said = left
    ? read.claim.left
    : { sizes: a.sizes, mentions: [], span: spanOf(scene, scene.items[a.from]!) };
  return {
    ...read,
    claim: { ...read.claim, focus, left: said },
    at,
    from: a.from,
    to: b.to,
    ...(shown(scene.items, a, b) ? { unconditional: true } : {}),
  };
}
