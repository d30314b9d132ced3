/**
 * Sizes set under a limit: "18 G or bigger (20 G, 22 G)", "nothing narrower than a 16 G, so a 20 G will do",
 * "a 22 G satisfies the rule of 18 G or wider".
 */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { LIMIT_WORDS, type Limit, limitsIn } from '../text/limits.ts';
import {
  type Group,
  groups,
  operand,
  type Scene,
  sameSystem,
  sentenceSpan,
  spanOf,
  together,
} from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import {
  ACCEPTS,
  BELONGS,
  ELSEWHERE,
  EXAMPLE_AFTER,
  EXAMPLES,
  EXCEPTS,
  KEEPS,
  KEEPS_ABOVE,
  KEEPS_BELOW,
  PATIENTS,
  RULE,
  SO,
} from '../words/limits.ts';
import type { Construction, Reading } from './model.ts';

export const limit: Construction = {
  id: 'limit',
  needs: () => [
    { sizes: 2, words: LIMIT_WORDS },
    { sizes: 2, holds: ['compared'], words: ['or', 'and', 'than'] },
    { sizes: 1, words: [...RULE, ...SO, 'that', 'this', 'it', 'those', 'these', 'them'] },
  ],
  read(scene) {
    const limits = limitsIn(scene.items);
    const only = limits[0];
    if (only && limits.length === 1)
      return [...named(scene, only), ...drawn(scene, only), ...kept(scene, only)];
    return limits.length === 0 ? referred(scene) : [];
  },
};

const excepted = (items: readonly Item[]) =>
  textOf(items)
    .replace(SOFT, ' ')
    .split(' ')
    .some((word) => EXCEPTS.test(word) || PATIENTS.test(word));
/** "if the vein allows": a rule is softened by it, and its sense stays. */
const SOFT =
  /\b(?:if|when|where|wherever|whenever) (?:(?:the|her|his|their) \w+ allows?|(?:at all )?possible|you can)\b/g;

/** Groups that may be members: of the system of the bound, not the bound itself. */
const others = (scene: Scene, { bound }: Limit): Group[] =>
  groups(scene.items).filter((g) => g.from !== bound.from && (sameSystem(g, bound) || widths(g, bound)));

/** "Threads under 0.3 mm: metric 1 and metric 4": millimetres that can be the width of such a thing, and not its length. */
function widths(g: Group, { sizes: [bound], mentions }: Group): boolean {
  const most = WIDEST.get(g.sizes[0]!.system);
  return (
    bound!.system === 'millimetre' && most !== undefined && bound!.value <= most && !mentions[0]!.approximate
  );
}
const WIDEST: ReadonlyMap<string, number> = new Map([
  ['usp', 1],
  ['ep-metric', 1],
  ['needle-gauge', 2.5],
  ['french', 14],
]);

/** "20 Fr or larger, such as 16 Fr", "18 G or bigger (20 G, 22 G)", "including the 20 G", "20 Fr among them". */
function named(scene: Scene, limit: Limit): Reading[] {
  const { items } = scene;
  const rest = items.slice(limit.to + 1);
  if (rest.some((item) => item.kind === 'word' && (EXCEPTS.test(item.word) || PATIENTS.test(item.word))))
    return [];
  return others(scene, limit)
    .filter((g) => g.from > limit.to)
    .filter(
      (g) =>
        listed(items, limit, g) ||
        (sameSystem(g, limit.bound) &&
          !parted(items.slice(limit.to + 1, g.from)) &&
          (bracketed(items, limit, g) || exampled(items, limit, g))),
    )
    .slice(0, 1)
    .map((g) => reading(scene, limit, g, g.from));
}

/** "18 G or larger with thinner ones, such as 22 G": something else came up that the examples may be of. */
const parted = (between: readonly Item[]) =>
  between.length > 10 ||
  between.some((item) => item.magnitude !== undefined || /^(?:with|called|[;:.])$/.test(item.word));

/** "Everything thicker than 2-0 lives in the top drawer: 0, 1 and 2 silk." Several sizes after a colon, to the end. */
function listed(items: readonly Item[], limit: Limit, g: Group): boolean {
  const rest = items.slice(g.to + 1).filter((item) => item.kind === 'word' && !item.deviceNoun);
  const between = items.slice(limit.to + 1, g.from - 1);
  return (
    g.mentions.length > 1 &&
    items[g.from - 1]?.word === ':' &&
    rest.length === 0 &&
    between.length <= 10 &&
    !between.some(
      (item) =>
        item.kind === 'size' ||
        (item.magnitude && !/^(?:top|thick|wide)$/.test(item.word)) ||
        /^(?:with|called|need|needs|takes?|through|then|[;:])$/.test(item.word),
    )
  );
}

/** Nothing but the sizes between the brackets right behind the limit. */
const bracketed = (items: readonly Item[], limit: Limit, g: Group) =>
  g.from <= limit.to + 7 &&
  items[g.from - 1]?.word === '(' &&
  items[g.to + 1]?.word === ')' &&
  items
    .slice(limit.to + 1, g.from - 1)
    .every(
      (item, i) => item.deviceNoun || (item.kind === 'word' && i < 4 && !item.magnitude && !item.axisNoun),
    );

function exampled(items: readonly Item[], limit: Limit, g: Group): boolean {
  for (let n = 1; n <= 5; n++) {
    const opener = items.slice(Math.max(limit.to + 1, g.from - n), g.from);
    if (opener.length === n && EXAMPLES.some((pattern) => pattern.test(textOf(opener)))) return true;
  }
  const comma = /^(?:,|\(|—|–)$/.test(items[g.from - 1]?.word ?? '');
  return comma && EXAMPLE_AFTER.test(textOf(items.slice(g.to + 1, g.to + 4)).replace(/^, /, ''));
}

/** "…, so a 10 Fr will do", "…, and a 22 G meets that rule". */
function drawn(scene: Scene, limit: Limit): Reading[] {
  const { items } = scene;
  const g = others(scene, limit).find((one) => one.from > limit.to && sameSystem(one, limit.bound));
  if (!g) return [];
  const link = items.slice(limit.to + 1, g.from);
  if (TURNS.test(textOf(link))) return [];
  if (BELONGS.test(textOf(items.slice(g.to + 1, g.to + 6))) && !excepted(link))
    return [reading(scene, limit, g, g.to)];
  if (!rules(items, limit)) return [];
  const verb = acceptedAt(items, limit, g) ?? handedAt(items, link, g) ?? verbAt(items, g, limit);
  const outside = [...items.slice(0, limit.from), ...items.slice(limit.to + 1)];
  if (verb === undefined || excepted(outside) || together(items, g)) return [];
  const refers = limit.noun === true || refersBack(items, verb) || qualifies(items, verb, items, limit);
  const so = items.slice(verb, verb + 3).some((item) => SO.has(item.word));
  return concludes(link) || ((refers || so) && link.some((item) => /^[,;:"”]$/.test(item.word)))
    ? [reading(scene, limit, g, verb)]
    : [];
}

/** "12 Fr at most … in fact 15 is twice that, so a 14 is within the rule": by then another rule is meant. */
const TURNS = /\b(?:in fact|actually|on second thoughts?|mind you|then again|come to think)\b|\.\.|…/;

/** "and so accepts a 22 G". */
function acceptedAt(items: readonly Item[], limit: Limit, g: Group): number | undefined {
  const at = /^(?:an?|the)$/.test(items[g.from - 1]?.word ?? '') ? g.from - 2 : g.from - 1;
  return at > limit.to && ACCEPTS.test(items[at]?.word ?? '') ? at : undefined;
}

/** "so hand over the 0", "so take a 20 G". */
const handedAt = (items: readonly Item[], link: readonly Item[], g: Group): number | undefined =>
  (items.slice(g.to + 1).find((item) => !item.deviceNoun)?.kind ?? 'punctuation') === 'punctuation' &&
  HANDED.test(textOf(link))
    ? g.from
    : undefined;
const HANDED =
  /\b(?:so|therefore|hence),? (?:(?:you|we|i|please|just|can|could|may|will|should|now|then) ){0,3}(?:take|took|use|used|choose|chose|pick|picked|open|opened|fetch|fetched|get|got|give|gave|pass|passed|hand|handed|reach|reached|go|went|ask|asked|put|place|insert|try|tried)(?: (?:him|her|me|them|over|for|in|out|up|with|down))*(?: (?:an?|the|your|our|one))?$/;

/** "Anything finer than 6-0 snaps", "20 Fr or larger hurts": what is said of a class is no rule that others could keep to. */
const rules = (items: readonly Item[], limit: Limit) =>
  !limit.strict &&
  (limit.from > 1 ||
    limit.from < limit.bound.from ||
    /^(?:[,:;"”—–]|for|in|on|is|please|only)$/.test(items[limit.to + 1]?.word ?? ','));

/** "so a 10 Fr", not "so that clots pass, a 10 Fr". */
const concludes = (link: readonly Item[]) =>
  link.slice(-4).some((item, i, near) => SO.has(item.word) && near[i + 1]?.word !== 'that');

/** "A 22 G satisfies the requirement of '18 G or wider'." */
function kept(scene: Scene, limit: Limit): Reading[] {
  const { items } = scene;
  const g = others(scene, limit).find((one) => one.to < limit.from && sameSystem(one, limit.bound));
  const verb = g && verbAt(items, g, limit);
  if (!g || verb === undefined || limit.from - verb > 8 || together(items, g)) return [];
  if (excepted(items.slice(0, limit.from))) return [];
  const between = items.slice(verb, limit.from);
  return between.every((item) => BRIDGE.test(item.word) || RULE.has(item.word))
    ? [reading(scene, limit, g, verb)]
    : [];
}
const BRIDGE =
  /^(?:satisf(?:y|ies)|meets?|fulfils?|fulfills?|complies|conforms?|keeps|sticks|passes|clears|obeys|with|to|the|our|that|this|of|a|an|ward|house|local|for|is|within|in|line|keeping|therefore|also|easily|written|as|are|enough|thick|thin|wide|fine|big|small|large|among|amongst|one|counts?|["“”':(,])$/;

/** The limit stands in the sentence before: "A 20 G satisfies that standard." */
function referred(scene: Scene): Reading[] {
  const { items } = scene;
  const before = scene.before.at(-1) ?? (scene.passage.list ? undefined : scene.context.at(-1));
  const limits = before ? limitsIn(before.items) : [];
  const [limit] = limits;
  const all = groups(items);
  const g = all[0];
  if (!before || !limit || limits.length !== 1 || !g || all.length !== 1 || !sameSystem(g, limit.bound))
    return [];
  if (TURNS.test(textOf(items.slice(0, g.from)))) return [];
  const belongs = BELONGS.test(textOf(items.slice(g.to + 1, g.to + 6)));
  const verb = belongs ? g.to : rules(before.items, limit) ? verbAt(items, g, limit) : undefined;
  if (verb === undefined || before.close === '?' || excepted(items) || together(items, g)) return [];
  if (groups(before.items).length !== 1 || excepted(beside(before, limit))) return [];
  return belongs ||
    refersBack(items, verb) ||
    qualifies(items, verb, before.items, limit) ||
    items.slice(0, verb + 3).some((item) => SO.has(item.word))
    ? [reading(scene, limit, g, verb)]
    : [];
}

/** Words of the sentence before outside the limit itself. */
const beside = (sentence: Sentence, limit: Limit): readonly Item[] => [
  ...sentence.items.slice(0, limit.from),
  ...sentence.items.slice(limit.to + 1),
];

/** The verb of keeping that follows the size, its noun and its place. */
function verbAt(items: readonly Item[], g: Group, limit: Limit): number | undefined {
  const patterns = [...KEEPS, limit.side === 'at-least' ? KEEPS_ABOVE : KEEPS_BELOW];
  for (let at = g.to + 1; at <= g.to + 6; at++) {
    if (!standsBefore(items.slice(g.to + 1, at))) continue;
    const phrase = textOf(items.slice(at, at + 6));
    const match = patterns.map((pattern) => pattern.exec(phrase)?.[0]).find((found) => found !== undefined);
    if (match !== undefined) {
      const elsewhere = ELSEWHERE.has(phrase.slice(match.length + 1).split(' ')[0]!);
      // "may stay" permits: the size is what is asserted, before the "may".
      return elsewhere && !match.endsWith('enough') ? undefined : match.startsWith('may') ? g.to : at;
    }
  }
  return undefined;
}

/** "a 20 G needle", "the 22 G in her hand", "the 16 Fr in bed 4". */
const standsBefore = (between: readonly Item[]): boolean => {
  const rest = between.filter((item, i) => !(i < 2 && item.deviceNoun) && item.word !== 'therefore');
  return (
    rest.length === 0 ||
    /^(?:in|on|from|of) (?:(?:the|her|his|my|our|this|that|your|their) )?(?:[a-z]+ )?[a-z0-9]+$/.test(
      textOf(rest),
    )
  );
};

/** "The protocol asks for an 18 G or wider, and a 16 G qualifies": a rule, and a word of keeping it. */
const qualifies = (items: readonly Item[], verb: number, rule: readonly Item[], limit: Limit): boolean =>
  /^(?:qualif(?:y|ies)|complies|conforms|is (?:allowed|permitted|acceptable|within|enough|sufficient|in order|compliant))\b/.test(
    textOf(items.slice(verb, verb + 2)),
  ) &&
  rule
    .slice(Math.max(0, limit.from - 6), limit.from)
    .some(
      (item) =>
        RULE.has(item.word) ||
        /^(?:protocols?|guidelines?|guidance|asks?|requires?|demands?|needs?|wants?|calls)$/.test(item.word),
    );

/** "that rule", "this limit", "the requirement", "meets this". */
const refersBack = (items: readonly Item[], verb: number) =>
  POINTS.test(textOf(items.slice(verb, verb + 6))) ||
  items
    .slice(verb, verb + 8)
    .some(
      (item, i) =>
        RULE.has(item.word) &&
        items
          .slice(verb, verb + i)
          .some((near) => /^(?:that|this|the|our|these|those|both)$/.test(near.word)),
    );
const POINTS =
  /^(?:also )?(?:satisf(?:y|ies)|meets?|fulfils?|fulfills?|keeps? to|sticks? to|complies with|obeys|is within|is in line with|(?:is|stays|lies|remains|comes) (?:\w+ )?(?:below|under|above|over)) (?:that|this|it)(?: [.,;!)]|$)/;

function reading(scene: Scene, limit: Limit, g: Group, at: number): Reading {
  return {
    claim: {
      kind: 'limit',
      construction: 'limit',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[g.from]!, scene.items[g.to]!),
      size: operand(scene, g),
      bound: operand(scene, limit.bound),
      side: limit.side,
      strict: limit.strict,
    },
    at,
    from: g.from,
    to: Math.max(at, g.to),
    own: true,
  };
}
