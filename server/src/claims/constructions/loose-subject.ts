/** Which size a comparing word is said of, when words that mean nothing to us lie between the two. */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Measured } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes } from '../text/scene.ts';
import { CHOICE_VERBS, WISH_VERBS } from '../words/choices.ts';
import { clauseStart } from './than.ts';

/** The size spoken of, and whether the sentence only says when it would be taken. */
export interface Subject {
  readonly group: Group;
  /** What is asserted is the choice, whatever the condition. */
  readonly wished?: true;
}

type Finder = (scene: Scene, word: Measured, all: readonly Group[]) => Subject | undefined;

/** The first way of finding it that finds one. */
export const subjectOf: Finder = (scene, word, all) => {
  for (const find of [attributive, apposed, wished, outcome, predicated]) {
    const subject = find(scene, word, all);
    if (subject) return subject;
  }
  return undefined;
};

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
  if (!group || !NOUN_PHRASE.test(joined(items, word.to + 1, group.from))) return undefined;
  return { group };
};
const NOUN_PHRASE =
  /^(?:[a-z-]+ ){0,2}?(?:[,:(—–] ?(?:that is(?: to say)?|that's|i\.e\.?|ie|namely|meaning|which is|being|in this case|here|so|say|usually|for (?:example|instance))?|that is to say|namely|called)(?: ,)?(?: (?:an?|the|our|your|its|size|number))?$/;

/** "needs a larger tube, so take an 18 Fr", "when you want something thicker you pass the 6-0". */
const wished: Finder = ({ items }, word, all) => {
  const before = items.slice(Math.max(0, word.at - 7), word.at);
  const cut = before.findLastIndex((item) => item.kind === 'punctuation' || item.kind === 'size');
  const wish = before.slice(cut + 1).some((item) => WISH_VERBS.test(item.word));
  if (!wish) return undefined;
  const chosen = all.filter((g) => g.from > word.to && takenAt(items, g) && !afterThan(items, g));
  const [only, ...more] = chosen;
  return only && more.length === 0 && only.from - word.to <= 18 ? { group: only, wished: true } : undefined;
};

/** A verb of choice right before a size: "take the", "going up to an", "you pass our". */
const takenAt = (items: readonly Item[], { from }: Group): boolean => {
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
  const start = clauseStart(items, word.at);
  const own = items.slice(start, word.at);
  if (own.some((item) => item.kind === 'size')) return undefined;
  const and = items
    .slice(0, word.at)
    .findLastIndex((item) => /^(?:and|so|because|since|as|for)$/.test(item.word));
  if (
    and < 0 ||
    !PRONOUN.test(
      items
        .slice(and + 1, word.at)
        .map((item) => item.word)
        .join(' '),
    )
  )
    return undefined;
  const taken = all.filter((g) => g.to < and && takenAt(items, g));
  const [only, ...more] = distinct(taken);
  return only && more.length === 0 && word.at - only.to <= 20 ? { group: only } : undefined;
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
    const head = headed(items, only, word);
    const between = items.slice(only.to + 1, word.at);
    return more.length === 0 &&
      head &&
      !between.some((item) => OWNER.test(item.word)) &&
      (verb >= 0 || trailing(between))
      ? { group: only }
      : undefined;
  }
  if (verb < 0 && !/^(?:being|and|therefore)$/.test(items[start]?.word ?? '')) return undefined;
  return pronounSubject(scene, start, start + Math.max(verb, 0), word, all);
};

/** Somebody or something else between the size and the word: it may be what is compared. */
const OWNER =
  /^(?:patients?|veins?|vessels?|child|children|bab(?:y|ies)|arms?|hands?|you|we|i|they|he|she|wall|walls|length|price|pain|knots?|hole|holes|box|drawer|handle|wings?|hub|people|students?|which|who|where|whose|if|when|while|because|than|not|no|never|nor|neither|without|unless|hardly|both|either|each|every)$/;

const headed = (items: readonly Item[], { from }: Group, word: Measured): boolean => {
  let i = from - 1;
  while (i >= 0 && /^(?:an?|the|our|your|my|this|that|his|her|one|size|number)$/.test(items[i]!.word)) i--;
  const before = items[i]?.word ?? '';
  return !PREPOSITION.test(before) || (word.axis === 'flow' && /^(?:through|down|with|in)$/.test(before));
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
  word: Measured,
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
  if (!REFERS.test(said)) return undefined;
  const [only, ...more] = distinct(before);
  if (only) return more.length === 0 ? { group: only } : undefined;
  const previous = scene.before.at(-1) ?? scene.context.at(-1);
  const spoken = previous && previous.close !== '?' ? distinct(groups(previous.items)) : [];
  const [last, ...rest] = spoken;
  return last && rest.length === 0 && last.sizes.length === 1 && !all.some((g) => sameSizes(g, last))
    ? { group: last }
    : undefined;
}
const REFERS =
  /^(?:and |but |so |for |as |because |since )?(?:it|it's|this|that|this one|that one|the (?:tube|needle|cannula|thread|suture|stitch|catheter|drain|wire|sheath))(?: (?:also|still|then|of course|really|always|usually))?$/;
