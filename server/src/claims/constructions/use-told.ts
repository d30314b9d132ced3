/**
 * Which needle point for which tissue, in free words: "on liver you want something that slices, so a reverse cutting needle
 * is right", "spleen tears easily; for this take the cutting needle". One point, one tissue, and nothing that turns it round.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type PointAt, pointsIn } from '../text/points.ts';
import type { Scene } from '../text/scene.ts';
import { OTHER_TISSUES, TISSUES } from '../words/tissues.ts';
import type { Reading } from './model.ts';
import { tissueAt, useReading } from './use-claim.ts';

/** Words that warn, compare, hedge, or tell of something else. */
const CONTRARY =
  /^(?:not|never|no|nor|neither|avoid|avoids|too|wrong|would|could|might|may|unless|except|without|unsuitable|cannot|can't|don't|doesn't|isn't|aren't|won't|shouldn't|unlike|than|hardly|risks?|fails?|trouble|ruins?|damages?|damaged|drawer|tray|box|pack|card|after|then|only|until|away|beyond|over|both|or|kept|caught|went|slipped|bent|dropped|once|whether|clamps?|retractor|scalpel|knife|scissors|either|like|inject\w*|draw\w*|vial|ampoule|biopsy|later|stopped|why)$/;
/** From here on a ground or an aim is told. */
const GROUND =
  /^(?:because|since|so that|for it|for they|to avoid|to spare|which|whose|as it|as they|as its|as the|where|and so|in order)\b/;
const USES =
  /^(?:for|on|in|through|with|takes?|needs?|wants?|calls?|suits?|used|use|uses|using|choose|chosen|pick|load|ask|sewn|sews?|sewing|stitched|stitch|stitching|closed?|closing|sutured?|suturing|anastomos\w+|repair(?:ed|ing)?|joined?|joining|meant|made|designed|right|ideal|best|gets|done|give|gives|hand|fetch|open|reach|passes|goes|prefer|likes?|kinder|gentler|safer|better)$/;
const FOR_THESE =
  /\b(?:for|on|in|with|through) (?:these|this|it|them|both|either|such tissue|that)\b|\bhere\b|\bthere\b|^(?:so|therefore)\b|[,;] (?:so|therefore|hence|thus)\b/;

export function useTold(scene: Scene): Reading[] {
  const { items } = scene;
  if (items.length > 50 || scene.sentence.close === '?') return [];
  const asked = answer(scene);
  const taken = asked.length > 0 ? asked : resumed(scene);
  if (taken.length > 0) return taken;
  const close = clauses(items).flatMap(([from, to]) => readClause(scene, from, to));
  return close.length > 0 ? close : anywhere(scene);
}

/**
 * "So when the surgeon is closing a jejunum and asks you what is on the packet, the one you want to be holding is the reverse
 * cutting needle": one point and one kind of tissue in the whole sentence, somebody sews, and nothing turns it round.
 */
function anywhere(scene: Scene): Reading[] {
  const { items } = scene;
  const [point, ...more] = points(items, 0, items.length);
  if (!point || more.length > 0 || pointsIn(items).length > 1) return [];
  const end = groundAt(items, 0, items.length);
  const main = items.slice(0, end);
  const tissues = tissuesIn(items, 0, end);
  const [first] = tissues;
  if (first === undefined || new Set(tissues.map((at) => tissueAt(items, at))).size > 1) return [];
  if (main.some(({ word }) => CONTRARY.test(word) || TURNS.test(word) || OTHER_TISSUES.test(word))) return [];
  const sewn = main.some(({ word }) => SEWING.test(word));
  const asked = ASKED_FOR.test(joined(items, point.at - 6, point.at));
  if (!sewn || !(asked || SEWN_WITH.test(joined(items, point.at - 5, point.at)))) return [];
  return tissues.map((at) => useReading(scene, point, at, tissueAt(items, at)));
}
const TURNS =
  /^(?:if|but|while|whereas|although|though|dangerous\w*|harm\w*|leak\w*|tears?|tearing|torn|cut|cuts|split|rips?|ripped|mistake\w*|regret\w*|complain\w*|surprised|refus\w+|anything|nothing|nobody|forbid\w*|banned|worse|worst|bad|shame|said|says|thought|thinks|told|asked|used|once|old|instead|every|whenever|beneath|under|near|beside|behind|above|through|before|against|removed?|opened|entered)$/;
const SEWING =
  /^(?:clos(?:e|es|ed|ing|ure)|sew|sews|sewn|sewing|oversew\w*|stitch\w*|sutur(?:e[sd]?|ing)|anastomos\w+|repair\w*|join\w*|graft\w*|hand-sewn)$/;
/** What is wanted, taken or given stands right behind. */
const ASKED_FOR =
  /\b(?:ask|asks|call|calls|glad|reach|reaches|go|opt|looking|wait|waiting) (?:for|of)(?: \S+){0,3}$|\b(?:want|wants|need|needs|take|takes|use|choose|pick|open|load|hand|give|prefer|prefers|fetch|get|grab|bring|holding|have)(?: \S+){0,4}$/;
const SEWN_WITH =
  /\b(?:done|sewn|oversewn|closed|stitched|sutured|repaired|joined|closing|sewing|stitching|work|works) with(?: \S+){0,3}$/;

/** One point here, and tissues listed in the sentence before, where no point is named. */
function pointForBefore(
  items: readonly Item[],
  before: readonly Item[],
): { readonly point: PointAt; readonly tissue: string } | undefined {
  const [point, ...more] = pointsIn(items);
  const tissues = tissuesIn(before, 0, before.length);
  const [first, last] = [tissues[0], tissues.at(-1)];
  if (!point || more.length > 0 || first === undefined || last === undefined) return undefined;
  if (pointsIn(before).length > 0 || !listed(before, first, last)) return undefined;
  return items.some((item, i) => CONTRARY.test(item.word) && !/^hand/.test(items[i - 1]?.word ?? ''))
    ? undefined
    : { point, tissue: tissueAt(before, first) };
}

/** "Liver is friable. That's why it gets a blunt needle.": the one tissue of the sentence before. */
function resumed(scene: Scene): Reading[] {
  const { items } = scene;
  const before = scene.before.at(-1);
  if (!before || before.close === '?' || items.length > 24 || before.items.length > 24) return [];
  const told = pointForBefore(items, before.items);
  if (!told || tissuesIn(items, 0, items.length).length > 0) return [];
  if (before.items.some((item) => NOT_THERE.test(item.word))) return [];
  if (!TAKES_UP.test(joined(items)) && !(TOPIC.test(joined(before.items)) && handed(items, told.point)))
    return [];
  if (told.point.id === 'blunt' && !items.some((item) => SEWS.test(item.word))) return [];
  return [useReading(scene, told.point, told.point.at, told.tissue)];
}
/** "it gets", "here take", "does just that". */
const TAKES_UP =
  /^(?:that's why|that is why|so|therefore|hence|for this|for it|for that|for these|here|there|this is why)\b.*\b(?:gets?|takes?|needs?|wants?|use|used|choose|pick|take|have|reach|ask|right|best|ideal)\b|^(?:it|they|these) (?:gets?|takes?|needs?|wants?|calls? for)\b|\bdoes (?:just|exactly) (?:that|this)\b/;
/** "Liver tears.", "The spleen:": a tissue and what befell it, said as a heading says it. */
const TOPIC =
  /^(?:(?:an?|the|for|on|now|next|a small|small|deep) )*[a-z-]+(?: (?:tears?|cuts?|lacerations?|injur(?:y|ies)|repairs?|wounds?|rents?|ruptures?|closures?|anastomos[ei]s|trauma|splits?|surgery))? ?[.:!]?$/;
/** "I ask for size 1 chromic gut on a cutting needle": that it is taken, up to the needle. */
const handed = (items: readonly Item[], point: PointAt): boolean =>
  HANDED.test(joined(items, 0, point.at)) &&
  !/^(?:and|or|but|to)\b/.test(joined(items, point.to + 2, point.to + 4));
const HANDED =
  /^(?:(?:here|so|then|i|we|you|always|usually|they|please|,) )*(?:asks? for|calls? for|takes?|use|uses|want|need|choose|pick|open|load|hand(?: over| up)?|give|prefer|fetch|get|reach for|opt for)(?: [^.;:?]*? (?:on|with))?(?: (?:an?|the|our|your))?$/;
const NOT_THERE =
  /^(?:not|never|no|avoid|over|under|through|into|near|beside|past|reached|entered|perforated|opened)$/;

/** "Skin calls for a cutting needle, and so does bowel.": the same point for the tissue behind. */
export function soDoes(scene: Scene): Reading[] {
  const { items } = scene;
  const [point, ...more] = pointsIn(items);
  const at = items.findLastIndex((item) => TISSUES.has(item.word));
  if (!point || more.length > 0 || at < point.to) return [];
  return SO_DOES.test(joined(items, point.to + 1, at)) && !items.some((item) => CONTRARY.test(item.word))
    ? [useReading(scene, point, at, TISSUES.get(items[at]!.word)!)]
    : [];
}
const SO_DOES =
  /^(?:needles? |points? |ones? )?, ?(?:and )?so (?:does|do|is|are|has|have)(?: the)?$|^(?:needles? |points? |ones? )?and so (?:does|do|is|are)(?: the)?$/;

/** "What do I take for the aorta? A cutting needle.": the tissue stands in the question. */
function answer(scene: Scene): Reading[] {
  const { items } = scene;
  const question = scene.before.at(-1) ?? scene.context.at(-1);
  if (question?.close !== '?' || items.length > 12 || question.items.length > 20) return [];
  const told = pointForBefore(items, question.items);
  if (!told || told.point.at > 4 || !question.items.some((item) => ASKS.test(item.word))) return [];
  if (question.items.some((item) => UNWANTED.test(item.word))) return [];
  return [useReading(scene, told.point, told.point.at, told.tissue)];
}
const ASKS = /^(?:which|what|needle|point)$/;
/** What is asked for is what must not be taken. */
const UNWANTED =
  /^(?:not|never|no|\w+n't|cannot|avoid\w*|refus\w+|reject\w*|wrong|worst|unsuitable|unsafe|forbidden|least|last|why|or|tears?|rather)$/;

const ILL =
  /^(?:leaks?|leaked|tears?|tore|rips?|ripped|cuts?|fails?|failed|bleeds?|bled|splits?|spells|means)$/;

/** Where several points are named, contrasted clauses are read apart. */
function clauses(items: readonly Item[]): [number, number][] {
  const named = points(items, 0, items.length);
  if (named.length < 2) return [[0, items.length]];
  const cuts = items.flatMap((item, i) => (/^(?:[;,]|and|but|while|whereas)$/.test(item.word) ? [i] : []));
  return [-1, ...cuts].map((cut, i): [number, number] => [cut + 1, cuts[i] ?? items.length]);
}

/** The points meant; what is set aside by "rather than" or "instead of" is not. */
const points = (items: readonly Item[], from: number, to: number): readonly PointAt[] =>
  pointsIn(items).filter((p) => p.at >= from && p.to < to && !SET_ASIDE.test(joined(items, p.at - 4, p.at)));
const SET_ASIDE = /\b(?:rather than|instead of|and not|not|, never)(?: (?:an?|the|with|with an?|any))*$/;

function readClause(scene: Scene, from: number, to: number): Reading[] {
  const { items } = scene;
  const end = groundAt(items, from, to);
  const [point, ...more] = points(items, from, end);
  const tissues = tissuesIn(items, from, end);
  const [first, last] = [tissues[0], tissues.at(-1)];
  if (!point || more.length > 0 || first === undefined || last === undefined) return [];
  if (point.at > first && point.at < last) return [];
  if (!listed(items, first, last)) return [];
  // "A cutting needle on bowel leaks": what comes of it.
  if (point.to < first && ILL.test(items[last + 1]?.word ?? '')) return [];
  if (
    items
      .slice(from, end)
      .some(
        (item, i) =>
          CONTRARY.test(item.word) && !setAside(items, from + i, point) && !likewise(items, from + i),
      )
  )
    return [];
  const between = point.to < first ? items.slice(point.to + 1, first) : items.slice(last + 1, point.at);
  const use = (at: number) => useReading(scene, point, at, tissueAt(items, at));
  const labelled = first < point.at ? joined(items, last + 1, point.at) : joined(items, point.to + 1, first);
  if (LABEL.test(labelled)) return tissues.map(use);
  if (
    between.length > 14 ||
    !between
      .concat(items.slice(Math.max(from, Math.min(point.at, first) - 5), Math.min(point.at, first)))
      .some((item) => USES.test(item.word))
  )
    return [];
  const parted = between.some(
    (item, i) =>
      /^[;.]$/.test(item.word) ||
      item.word === 'but' ||
      (item.word === 'and' && ANOTHER.test(joined(between, i + 1, i + 3))),
  );
  if (parted && !FOR_THESE.test(joined(items, last + 1, point.at))) return [];
  // A blunt needle that is for drawing up sews nothing.
  if (point.id === 'blunt' && !items.some((item) => SEWS.test(item.word))) return [];
  return tissues.map(use);
}
/** "The vein was closed and the nurse handed me a …": somebody does something else. */
const ANOTHER =
  /^(?:he|she|they|somebody|someone|(?:the|my|our|a|his|her) (?!needles?\b|points?\b|one\b|best\b|right\b))/;
/** "Bowel: cutting.", "Bowel – a taper": the needle right behind its tissue. */
const LABEL = /^(?:wall |walls )?[:=–—](?: (?:an?|the|always|only))?$/;
const SEWS =
  /^(?:sutured|suturing|taper|suture|sutures|sew|sewn|sewing|stitch|stitches|close|closed|closing|closure|round|point)$/;

/** Where a stretch names tissues. */
const tissuesIn = (items: readonly Item[], from: number, to: number): readonly number[] =>
  items.flatMap((item, i) =>
    i >= from && i < to && TISSUES.has(item.word) && isTissue(items, i) ? [i] : [],
  );

/** "gut" is a thread, and "vessel" may be a bowl. */
export const isTissue = (items: readonly Item[], i: number): boolean =>
  (items[i]!.word !== 'gut' ||
    /^(?:the|small|large)$/.test(items[i - 1]?.word ?? '') ||
    items[i + 1]?.word === 'wall') &&
  !NOT_TISSUE.test(items[i + 1]?.word ?? '') &&
  !(items[i + 2] && WOUNDS.test(items[i + 2]!.word) && items[i + 1]!.kind === 'word');
const NOT_TISSUE =
  /^(?:surgeons?|surgery|clinic|theatre|list|tray|set|patients?|drops|team|ward|lab|hooks?|graft|clamp|lines?|sheaths?|catheters?|cannula\w*|access|harvest|port|procedures?|operations?|cases?|incisions?|wounds?|scars?|sites?|drapes?|fistulas?|retractors?|prep|nick)$/;
const WOUNDS = /^(?:incisions?|wounds?|scars?|catheters?|lines?|harvest)$/;

/** "peritoneum, like bowel": another tissue that gets the same. */
const likewise = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'like' && TISSUES.has(items[i + 1]?.word ?? '');

const setAside = (items: readonly Item[], i: number, point: PointAt): boolean =>
  /^(?:than|instead|not|never)$/.test(items[i]!.word) &&
  pointsIn(items).some((p) => p !== point && p.at > i && p.at - i <= 4);

/** Several tissues are meant together only in a list. */
const listed = (items: readonly Item[], first: number, last: number): boolean =>
  items
    .slice(first + 1, last)
    .every(
      (item) =>
        /^(?:,|and|the|wall|walls|small|large|like)$/.test(item.word) ||
        TISSUES.has(item.word) ||
        OTHER_TISSUES.test(item.word),
    );

/** Where the clause goes over to its ground. */
function groundAt(items: readonly Item[], from: number, to: number): number {
  for (let i = from + 3; i < to; i++)
    if (
      /^(?:because|since|so|for|to|which|whose|as|where|in|and)$/.test(items[i]!.word) &&
      GROUND.test(joined(items, i, i + 2))
    )
      return i;
  return to;
}
