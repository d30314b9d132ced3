/** Which needle point for which tissue: "for bowel choose a reverse cutting needle", "vessels are sewn with a taper". */
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { POINT_WORDS, type PointAt, pointsIn } from '../text/points.ts';
import type { Scene } from '../text/scene.ts';
import { OTHER_TISSUES, TISSUES, TOUGH } from '../words/tissues.ts';
import type { Construction, Reading } from './model.ts';
import { tissueAt, useReading } from './use-claim.ts';
import { isTissue, soDoes, useTold } from './use-told.ts';

/** "for", "on", "through": a use; or a verb of sewing. */
const USES =
  /^(?:for|on|in|through|with|is|are|takes?|needs?|wants?|calls?|suits?|used|use|choose|chosen|pick|load|ask|sewn|sew|sewing|stitched|stitch|stitching|closed?|closing|sutured?|suturing|anastomos\w+|repair(?:ed|ing)?|joined?|joining|meant|made|designed|best|right|ideal|good|gets|get|goes|go|works?|done|give|gives|hand|fetch|bring|want|open)$/;
const SMALL =
  /^(?:a|an|the|of|to|and|or|by|it|its|we|you|i|me|us|please|always|usually|our|your|most|any|all|used|needle|needles|wall|layer|layers|edge|edges|tissue|tissues|other|such|as|like|so|,|:|your|ones?|point|points|tip|first|choice|should|must|can|will|be|is|are|right|best|ideal|good|gentlest|kindest|safest|gentle|kind|safe|usual|standard|favourite|preferred|proper|natural|sensible|meant|made|designed|well|tough|thick|delicate|soft|friable|small|large|human|adult|closure|work|surgery|repair|anastomosis|anastomoses|normal|ordinary|that|which|one|for|on|in|up|out|job|thing|when|whenever|where|they|this|these|here|there|reach|do|doing|job|put|back|together|start|every|each|always|only|patient's|under|suture|stitch|through|fine)$/;
/** Sentences that warn, compare, hedge or explain are left alone. */
const CONTRARY =
  /^(?:not|never|no|avoid|instead|rather|than|too|wrong|damages?|damaged|tears?|tearing|risks?|would|unless|why|if|except|without|unsuitable|cannot|can't|don't|isn't|aren't|unlike|but|while|whereas|may|might|could|neither|nor|hardly|trauma|holes?|leaks?|fails?|trouble|ruins?|drawer|tray|box|pack|card|next|before|after|then|over|only|until|away|beyond)$/;

export const pointUses: Construction = {
  id: 'point-uses',
  needs: () => [{ like: POINT_WORDS }],
  read(scene) {
    if (endedBadly(scene)) return [];
    const tight = strictly(scene);
    return [...(tight.length > 0 ? tight : useTold(scene)), ...soDoes(scene)];
  },
};

/** "… with a cutting needle. It leaked at once.", "asked for one and got a look", "as welcome as a fork": a story, or no praise. */
const endedBadly = ({ items, after: [next] }: Scene): boolean =>
  /\b(?:got|gets|earned|earns) an? (?:look|laugh|stare|lecture|scolding|telling-off)\b|\bas welcome\b/.test(
    textOf(items),
  ) ||
  (next !== undefined &&
    /^(?:it|this|that|the \w+) (?:had |has )?(?:leaked|tore|torn|gave way|given way|fell apart|cut out|was (?:re)?done again|was redone)\b/.test(
      textOf(next.items),
    ));

function strictly(scene: Scene): Reading[] {
  const main = scene.items.slice(0, reasonAt(scene.items));
  if (main.some((item) => CONTRARY.test(item.word))) return [];
  return clauses(main).flatMap(([from, to]) => readClause(scene, from, to));
}

/** ", since its edges do not cut": the ground is another statement. */
function reasonAt(items: readonly Item[]): number {
  const at = items.findIndex(
    (item, i) => i > 4 && /^(?:since|because|as)$/.test(item.word) && items[i - 1]!.word === ',',
  );
  return at < 0 ? items.length : at;
}

/** Where a sentence names several points, each clause is read by itself. */
function clauses(items: readonly Item[]): [number, number][] {
  if (pointsIn(items).length < 2) return [[0, items.length]];
  const cuts = items.flatMap((item, i) => (/^(?:[;,.]|and)$/.test(item.word) ? [i] : []));
  return [-1, ...cuts].map((cut, i): [number, number] => [cut + 1, cuts[i] ?? items.length]);
}

function readClause(scene: Scene, from: number, to: number): Reading[] {
  const { items } = scene;
  const [point, ...more] = pointsIn(items).filter((p) => p.at >= from && p.to < to);
  const tissues = items.flatMap((item, i) =>
    i >= from && i < to && TISSUES.has(item.word) && isTissue(items, i) ? [i] : [],
  );
  const [first, last] = [tissues[0], tissues.at(-1)];
  if (!point || more.length > 0 || first === undefined || last === undefined) return [];
  if (!joined(items, first, last) || (point.at > first && point.at < last)) return [];
  const between = point.to < first ? items.slice(point.to + 1, first) : items.slice(last + 1, point.at);
  const lead = items.slice(from, Math.min(point.at, first));
  const linked = [...between, ...lead.slice(-4)].some((item) => USES.test(item.word));
  if (!linked || between.length > 9 || !between.every(quiet) || !anchored(items, point, first)) return [];
  return tissues.map((at) => useReading(scene, point, at, tissueAt(items, at)));
}

/** Several tissues are meant together only in a list. */
const joined = (items: readonly Item[], first: number, last: number): boolean =>
  items
    .slice(first + 1, last)
    .every(
      (item) =>
        /^(?:,|and|or|the|wall|walls)$/.test(item.word) ||
        TISSUES.has(item.word) ||
        OTHER_TISSUES.test(item.word),
    );

const quiet = (item: Item): boolean =>
  SMALL.test(item.word) ||
  USES.test(item.word) ||
  OTHER_TISSUES.test(item.word) ||
  TOUGH.test(item.word) ||
  item.kind === 'size';

/** A tissue after the point hangs on "for", "on" or a verb of its own: "a cutting needle for skin". */
function anchored(items: readonly Item[], point: PointAt, first: number): boolean {
  const before = items.slice(Math.max(0, first - 4), first).map((item) => item.word);
  if (point.to < first)
    return before.some((word) =>
      /^(?:for|on|in|through|to|sew(?:ing)?|stitch(?:ing)?|clos(?:e|ing)|sutur(?:e|ing)|anastomos(?:e|ing)|join(?:ing)?|repair(?:ing)?|suits?|on)$/.test(
        word,
      ),
    );
  // "The liver lies under the skin": a tissue before the point opens the clause or hangs on a use.
  return (
    before.length === 0 ||
    before.every(
      (word) => SMALL.test(word) || USES.test(word) || OTHER_TISSUES.test(word) || /^[,:]$/.test(word),
    )
  );
}
