/** Which size a comparing word is said of, when words that mean nothing to us lie between the two. */

import { finds } from '../../notes/patterns.ts';
import { single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes } from '../text/scene.ts';
import { CHOICE_VERBS, WISH_VERBS } from '../words/choices.ts';
import { clauseStart } from './than.ts';

/** The size spoken of, and whether the sentence only says when it would be taken. */
export interface Subject {
  readonly group: Group;
  /** What is asserted is the choice, whatever condition leads to it. */
  readonly unconditional?: true;
}

type Finder = (scene: Scene, word: Measured, all: readonly Group[]) => Subject | undefined;

/** The first way of finding it that finds one. */
export const subjectOf: Finder = (scene, word, all) => {
  if (itself(scene.items, word)) return undefined;
  for (const find of [attributive, apposed, wished, outcome, predicated]) {
    const subject = find(scene, word, all);
    if (subject) return subject;
  }
  return undefined;
};

/** "the larger one was still sealed", "for the smaller bag": the comparing word names a thing of its own. */
const itself = (items: readonly Item[], { at, to }: Measured): boolean => {
  if (!/^(?:the|our|his|her|their|your)$/.test(items[at - 1]?.word ?? '')) return false;
  const next =
    /^(?:one|ones)$/.test(items[to + 1]?.word ?? '') || items[to + 1]?.deviceNoun ? to + 2 : to + 1;
  return (
    OWN_VERB.test(items[next]?.word ?? '') || /^(?:for|with|in|on|to|of)$/.test(items[at - 2]?.word ?? '')
  );
};
const OWN_VERB =
  /^(?:is|are|was|were|has|have|had|will|can|may|went|goes|gets|got|stayed|should|must|runs|ran|flows)$/;

const BREAKS = /^(?:for|of|and|or|in|on|at|to|so|with|from|than|through|as|but|[,;:.()—–])$/;

/** "the smaller 16 Fr". */
const attributive: Finder = ({ items }, word, all) => {
  const group = all.find((g) => g.from > word.to && g.from - word.to <= 2);
  return group && !items.slice(word.to + 1, group.from).some((item) => BREAKS.test(item.word))
    ? { group }
    : undefined;
};

/** "A wider tube, that is to say a 10 Fr", "something thicker: the 2-0". */
const apposed: Finder = ({ items }, word, all) => {
  const group = all.find((g) => g.from > word.to && g.from - word.to <= 9);
  const next = items[(group?.to ?? 0) + 1]?.word ?? '';
  // One of a list is not the one.
  if (
    !group ||
    /^(?:or|and|\/|to|versus|vs)$/.test(next) ||
    (next === ',' && items[group.to + 2]?.kind === 'size')
  )
    return undefined;
  return NOUN_PHRASE.test(joined(items, word.to + 1, group.from))
    ? { group, unconditional: true }
    : undefined;
};
const NOUN_PHRASE =
  /^(?:(?:of the (?:two|pair|three) |[a-z-]+ ){0,2}?[,:(—–](?: ?(?:being|in this case|here|so|say|usually|for (?:example|instance)))?|(?:[a-z-]+ ){0,6}?(?:[,(—–] )?(?:that is(?: to say)?|that's|i\.e\.?|ie|namely|meaning|which is|called))(?: ,)?(?: (?:an?|the|our|your|its|size|number))?$/;

/** "you want something a bit thicker". */
export function wishedFor(items: readonly Item[], { at }: Measured): boolean {
  const before = items.slice(Math.max(0, at - 7), at);
  const cut = before.findLastIndex((item) => item.kind === 'punctuation' || item.kind === 'size');
  const clause = before.slice(cut + 1);
  // "avoid anything finer than a 22": what one does not want.
  if (clause.some((item) => SHUNNED.test(item.word))) return false;
  return clause.some(
    (item, i) => WISH_VERBS.test(item.word) && !(VAGUE.test(item.word) && opening(clause, i)),
  );
}
const SHUNNED =
  /^(?:avoid(?:s|ed|ing)?|fear(?:s|ed|ing)?|prevents?|risk(?:s|ed|ing)?|danger|dread|spares?|refuses?)$/;
/** "Anything finer than a 4-0 will snap": what the clause speaks of, no wish. */
const VAGUE = /^(?:something|anything)$/;
const opening = (clause: readonly Item[], i: number): boolean =>
  i === 0 ||
  /^(?:if|when|whenever|since|as|because|that|so|and|but|or|while|where)$/.test(clause[i - 1]!.word);

/** "needs a larger tube, so take an 18 Fr", "when you want something thicker you pass the 6-0". */
const wished: Finder = ({ items }, word, all) => {
  if (!wishedFor(items, word)) return undefined;
  const chosen = all.filter(
    (g) => g.from > word.to && takenAt(items, g) && !afterThan(items, g) && !owned(items, g),
  );
  const [only, ...more] = chosen;
  if (!only) return grounded(items, word, all);
  if (more.length > 0 || only.from - word.to > 18) return undefined;
  const way = items.slice(word.to + 1, only.from);
  if (way.some((item) => ELSE.test(item.word) || TOLD.test(item.word))) return undefined;
  const opens = OPENS.test(items.find((item) => item.kind === 'word')?.word ?? '');
  return opens || way.some((item) => SO.test(item.word)) || AND_GO.test(joined(items, word.to + 1, only.from))
    ? { group: only, unconditional: true }
    : undefined;
};
/** "change it for an 18 Fr, because clot needs a larger tube": the choice first, then what is needed. */
function grounded(items: readonly Item[], word: Measured, all: readonly Group[]): Subject | undefined {
  const [only, ...more] = all.filter((g) => g.to < word.at);
  if (!only || more.length > 0 || !takenAt(items, only) || word.at - only.to > 12) return undefined;
  const way = items.slice(only.to + 1, word.at);
  return way.some((item) => /^(?:because|since|as)$/.test(item.word)) &&
    !way.some((item) => ELSE.test(item.word) || TOLD.test(item.word))
    ? { group: only, unconditional: true }
    : undefined;
}

/** What was done once may have been a slip. */
const TOLD =
  /^(?:gave|given|handed|got|received|sent|brought|passed|took|used|opened|picked|chose|went|was|were|had)$/;
const ELSE = /^(?:if|while|whereas|but|instead|though|although|unless|or|otherwise|not|no|none)$/;
const OPENS = /^(?:when|if|whenever|once|where|should|for)$/;
/** "I want something wider and go to": no other subject between. */
const AND_GO =
  /^(?:one |size |thread |tube |needle )?(?:, )?and (?:then )?(?:go|use|take|reach|pick|open|move|change|switch)\b/;
const SO = /^(?:so|therefore|hence|thus|:|;|then)$/;

/** A verb of choice right before a size: "take the", "going up to an", "you pass our". */
export const takenAt = (items: readonly Item[], { from }: Group): boolean => {
  const before = items.slice(Math.max(0, from - 5), from);
  const verb = before.findLastIndex((item) => CHOICE_VERBS.test(item.word));
  return verb >= 0 && before.slice(verb + 1).every((item) => ON_THE_WAY.test(item.word) || item.deviceNoun);
};
const ON_THE_WAY =
  /^(?:up|down|out|in|over|for|to|it|the|an?|our|your|his|her|size|number|pink|one|with|instead)$/;

const afterThan = (items: readonly Item[], { from }: Group): boolean =>
  items.slice(Math.max(0, from - 5), from).some((item) => item.word === 'than');

/** "move up to a 22 G and you have more room", "put in a 14 Ch …, and it was wider": the outcome of a choice. */
const outcome: Finder = ({ items }, word, all) => {
  const and = items
    .slice(0, word.at)
    .findLastIndex((item) => /^(?:and|so|because|since|as)$/.test(item.word));
  const own = items.slice(and + 1, word.at);
  if (
    and < 0 ||
    own.some((item) => item.kind === 'size' || /^(?:something|anything|for)$/.test(item.word)) ||
    !PRONOUN.test(joined(items, and + 1, word.at))
  )
    return undefined;
  const [only, ...more] = distinct(all.filter((g) => g.to < and && takenAt(items, g) && !owned(items, g)));
  return only && more.length === 0 && word.at - only.to <= 20
    ? { group: only, unconditional: true }
    : undefined;
};
/** "If you only have a 3-0, …": what is there is not what is chosen. */
const owned = (items: readonly Item[], { from }: Group): boolean => {
  const verb = items.slice(Math.max(0, from - 5), from).findLast((item) => CHOICE_VERBS.test(item.word));
  return /^(?:have|keep|want|got)$/.test(verb?.word ?? '');
};
const PRONOUN = /(?:^|\s)(?:it|it's|they|they're|that|this|you|you'll|you'd|we|we'll|he|she|which)(?:\s|$)/;

const VERB =
  /^(?:is|are|was|were|be|being|been|has|have|had|having|gives?|gave|giving|offers?|runs?|ran|flows?|looks?|feels?|makes?|leaves?|lets?|sits?|comes?|proves?|proved|stays?|it's|that's|they're|'s|means?|works?)$/;
const PREPOSITION =
  /^(?:than|for|with|of|to|from|against|into|in|on|by|over|under|like|as|beside|after|before|unlike|through|down)$/;

/** "a 22 is a size wider", "…, being finer", "it is the thinner": the subject of the clause. */
const predicated: Finder = (scene, word, all) => {
  const { items } = scene;
  const start = clauseStart(items, word.at);
  const verb = items.slice(start, word.at).findLastIndex((item) => VERB.test(item.word));
  const own = all.filter((g) => g.from >= start && g.to < word.at);
  const [only, ...more] = own;
  if (only) {
    const head = headed(items, only);
    const between = items.slice(only.to + 1, word.at);
    return more.length === 0 &&
      head &&
      !between.some((item) => finds(OWNER, item.word)) &&
      (start + verb > only.to || trailing(between))
      ? { group: only }
      : undefined;
  }
  if (verb < 0 && !/^(?:being|and|therefore)$/.test(items[start]?.word ?? '')) return undefined;
  return pronounSubject(scene, start, start + Math.max(verb, 0), all);
};

/** Somebody or something else between the size and the word: it may be what is compared. */
const OWNER =
  /^(?:patients?|veins?|vessels?|child|children|bab(?:y|ies)|arms?|hands?|you|we|i|they|he|she|wall|walls|length|price|pain|knots?|hole|holes|box|drawer|handle|wings?|hub|people|students?|which|who|where|whose|if|when|while|because|than|not|no|never|nor|neither|without|unless|hardly|both|either|each|every)$/;

const headed = (items: readonly Item[], { from }: Group): boolean => {
  let i = from - 1;
  while (i >= 0 && /^(?:an?|the|our|your|my|this|that|his|her|one|size|number)$/.test(items[i]!.word)) i--;
  return !PREPOSITION.test(items[i]?.word ?? '');
};

/** "The 24, smaller yet", "18 G and therefore wider". */
const trailing = (between: readonly Item[]): boolean =>
  between.length > 0 &&
  between.every((item) =>
    /^(?:,|—|–|\(|and|therefore|thus|hence|so|of|even|still|much|far|an?|the|bit|little|rather|slightly|somewhat|yet)$/.test(
      item.word,
    ),
  );

/** "which is", "it is", "that one has", nothing at all before "being": what was spoken of before. */
function pronounSubject(
  scene: Scene,
  start: number,
  verb: number,
  all: readonly Group[],
): Subject | undefined {
  const { items } = scene;
  const said = joined(items, start, verb);
  const opener = items[start - 1]?.word ?? '';
  const before = all.filter((g) => g.to < start);
  if (
    /^(?:which|who|that|being)$/.test(opener) ||
    said === 'which' ||
    /^being$/.test(items[start]?.word ?? '')
  ) {
    const nearest = before.at(-1);
    return nearest && start - nearest.to <= 12 ? { group: nearest } : undefined;
  }
  const rank = RANK.exec(said)?.[1];
  if (rank) return ranked(scene, rank, before);
  if (!REFERS.test(said)) return undefined;
  // "whereas a 22 G comes at once because it is the thinner": of two, the one of the clause right before.
  const close = before.filter((g) => g.from >= clauseStart(items, start - 1));
  const [only, ...more] = distinct(close.length > 0 ? close : before);
  if (only) return more.length === 0 ? { group: only } : undefined;
  const previous = scene.before.at(-1) ?? scene.context.at(-1);
  const spoken = previous && previous.close !== '?' ? distinct(groups(previous.items)) : [];
  const [last, ...rest] = spoken;
  return last && rest.length === 0 && last.sizes.length === 1 && !all.some((g) => sameSizes(g, last))
    ? { group: last }
    : undefined;
}
/** "the first is wider", "the latter being finer": one of the two named last. */
function ranked({ before }: Scene, rank: string, own: readonly Group[]): Subject | undefined {
  const two = own.length > 0 ? distinct(own) : distinct(groups(before.at(-1)?.items ?? []).flatMap(single));
  const group = two[/^(?:first|former)$/.test(rank) ? 0 : 1];
  return two.length === 2 && group ? { group } : undefined;
}
const RANK =
  /^(?:(?:and|but|so|for|as|because|since) )?the (first|second|former|latter|last)(?: one| of (?:the two|these|them))?$/;
const REFERS =
  /^(?:(?:and|but|so|for|as|because|since) )?(?:it|it's|this|that|(?:this|that) one|(?:the|this|that) (?:[a-z]+ )?(?:tube|needle|cannula|thread|suture|stitch|catheter|drain|wire|sheath|size|guidewire|strand))(?: (?:also|still|then|of course|really|always|usually|even))?$/;
