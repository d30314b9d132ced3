/** Suture needle points: where the edge of a cutting needle lies, and that a taper point has none. */
import { type Item, readItems } from '../text/items.ts';
import { joined, textOf } from '../text/joined.ts';
import { changed } from '../text/place.ts';
import { POINT_WORDS, type PointAt, pointsIn, toldApart } from '../text/points.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { flatSide, flatThere } from './flat-side.ts';
import type { Construction, Reading } from './model.ts';
import { pointTold } from './point-told.ts';
import { tearing } from './tearing.ts';

const INNER = new Set(
  'inner inside concave inward inwards wound-side surface-seeking upward upwards top hollow innermost'.split(
    ' ',
  ),
);
const OUTER = new Set(
  'outer outside convex outward outwards depth-seeking underside belly back outermost downwards'.split(' '),
);

export const points: Construction = {
  id: 'points',
  leaning: true,
  needs: () => [{ like: new RegExp(`${POINT_WORDS.source}|${HEADED.source}`) }],
  read(scene) {
    const own = pointsIn(scene.items);
    const reply = answered(scene, own);
    if (reply.length > 0) return reply;
    const found = own.length > 0 ? own : unnamed(scene);
    const first = readFor(scene, found);
    if (first.length > 0) return first;
    // "The bowel needle is a taper, and a taper has …": named again, by the clause that tells of it.
    const again = found.length > 1 && found.every(({ id }) => id === found[0]!.id);
    const last = again ? readFor(scene, found.slice(-1)) : [];
    return last.length > 0
      ? last
      : pointTold(scene).map(({ point, at, property }) => reading(scene, point, at, property));
  },
};

/** The one point that the words around a sentence name, where it speaks of the edge of a needle. */
const unnamed = (scene: Scene): PointAt[] =>
  OF_WOUND.test(joined(scene.items))
    ? []
    : [...resumed(scene), ...titled(scene), ...headed(scene)].slice(0, 1);
const OF_WOUND =
  /\bedges? (?:of (?:the |a |each )?(?:wound|skin|incision|flap)|(?:by|to) edge)\b|\b(?:wound|skin|flap) edges?\b/;

/** "Which needle has no edges? The reverse cutting.": what is asked is said of the one that is named. */
function answered(scene: Scene, own: readonly PointAt[]): Reading[] {
  const question = scene.before.at(-1) ?? scene.context.at(-1);
  const [point, ...more] = own;
  if (!point || more.length > 0 || question?.close !== '?' || scene.items.length > 8 || point.at > 3)
    return [];
  const asked = question.items;
  const subject =
    /^(?:which|what)$/.test(asked[0]?.word ?? '') &&
    /^(?:needles?|points?|one|type|kind)$/.test(asked[1]?.word ?? '');
  const open = asked.some((item) => /^(?:not|never|or|than|least|isn't|doesn't|if)$/.test(item.word));
  if (!subject || open || pointsIn(asked).length > 0 || scene.option) return [];
  const named = scene.items.slice(point.at, point.to + 1);
  const whole = changed(scene, { items: [...named, ...asked.slice(2)] });
  const [read] = readFor(whole, [{ ...point, at: 0, to: named.length - 1 }]);
  if (read?.claim.kind !== 'property') return [];
  // "Which has no edges?": only a reading that takes the negation in.
  if (asked.some((item) => /^(?:no|without|lacks)$/.test(item.word)) && read.claim.property !== 'edge:none')
    return [];
  const claim = { ...read.claim, focus: spanOf(scene, scene.items[point.at]!, scene.items[point.to]!) };
  return [{ ...read, claim, at: point.at, from: point.at, to: point.to, answered: true }];
}

const readFor = (scene: Scene, named: readonly PointAt[]): Reading[] => [
  ...edges(scene, named),
  ...edgeless(scene, named),
  ...denied(scene, named),
  ...cuts(scene, named),
  ...section(scene, named),
  ...[...tearing(scene.items, named), ...flatSide(scene.items, named)].map(({ point, at, property }) =>
    reading(scene, point, at, property),
  ),
  ...sharp(scene, named),
];

/** What is said of a point without its name. */
const HEADED = /^(?:edges?|curve|curvature|flat|section|cross-section)$/;

/** "Reverse cutting for most skin. It has a third edge …": the one point of the sentence before. */
function resumed(scene: Scene): PointAt[] {
  const opening = scene.items.filter((item) => item.kind === 'word').slice(0, 4);
  const opens =
    /^(?:it|its|it's|this|that|they|their|these|here)$/.test(opening[0]?.word ?? '') ||
    // "The third edge lies …", "There the edge is …".
    (/^(?:the|here|there)$/.test(opening[0]?.word ?? '') &&
      opening.some((item) => /^(?:edge|apex|flat|base)$/.test(item.word)));
  const before = scene.before.at(-1);
  const named = opens && before ? pointsIn(before.items) : [];
  // "… and most of ours are reverse cutting. That means …": what was named last.
  const [only, ...more] =
    /^(?:that|this|which)$/.test(scene.items[0]?.word ?? '') && /^means?$/.test(scene.items[1]?.word ?? '')
      ? named.slice(-1)
      : named;
  return only && more.length === 0 ? [{ ...only, at: -1, to: -1 }] : [];
}

/** "**Conventional cutting.** Three edges, the third …": the name of a point stands first by itself, and the rest is about it. */
function titled(scene: Scene): PointAt[] {
  const name = scene.before[0];
  if (name?.close !== '.' || speaksOfOthers(scene)) return [];
  const [point, ...more] = pointsIn(name.items);
  const rest = name.items.filter(
    ({ kind, word }, i) =>
      kind !== 'punctuation' &&
      !(point && i >= point.at && i <= point.to) &&
      !/^(?:an?|the|needles?|points?)$/.test(word),
  );
  const named = scene.before.flatMap(({ items }) => pointsIn(items));
  return point && more.length === 0 && rest.length === 0 && named.length === 1
    ? [{ ...point, at: -1, to: -1 }]
    : [];
}

/** What no heading settles: no edge is spoken of, or another needle is: "Compare the conventional needle: its edge …". */
const speaksOfOthers = ({ items }: Scene): boolean =>
  !items.some((item) => HEADED.test(item.word)) ||
  items.some((item) =>
    /^(?:conventional|standard|ordinary|reverse|other|others|unlike|compare|both)$/.test(item.word),
  );

/** The one point that the heading right above names: its sentences are about it. */
function headed(scene: Scene): PointAt[] {
  if (speaksOfOthers(scene)) return [];
  const named = pointsIn(readItems(scene.headings.at(-1) ?? '', []));
  const only = named[0];
  return only && named.length === 1 ? [{ ...only, at: -1, to: -1 }] : [];
}

/** "its edge faces the wound", "points away from the wound". */
function facing(items: readonly Item[], at: number): 'inner' | 'outer' | undefined {
  const word = items[at]!.word;
  const wound = items.slice(at + 1, at + 4).some((item) => /^(?:wound|incision)$/.test(item.word));
  const looks = /^(?:looks?|points?|faces?|directed|turned|turns?|facing|towards?|away)$/.test(
    items[at - 1]?.word ?? '',
  );
  const edge = items
    .slice(Math.max(0, at - (looks || /^(?:looks?|points?|faces)$/.test(word) ? 10 : 4)), at)
    .some((item) => /^(?:edges?|apex|third)$/.test(item.word));
  if (!wound || !edge) return undefined;
  if (word === 'away') return 'outer';
  if (/^(?:looks?|points?|turns?|turned)$/.test(word) && /^(?:at|to|into)$/.test(items[at + 1]?.word ?? ''))
    return 'inner';
  if (!/^(?:faces|facing|towards?)$/.test(word) || items[at - 1]?.word === 'away') return undefined;
  return 'inner';
}

/** "reverse cutting: the edge lies on the outer curve". One point and one side in the clause, or they alternate. */
function edges(scene: Scene, named: readonly PointAt[]): Reading[] {
  const { items } = scene;
  const edged = named.filter((p) => EDGED.has(p.id) && !toldApart(items, p));
  // "what sets it apart from a conventional one": the other is named to be told apart.
  const own = edged.filter((p) => !/\bapart from(?: an?| the)?$/.test(joined(items, p.at - 3, p.at)));
  const cutting = own.length > 0 ? own : edged;
  const sides = sidesIn(
    items,
    named.some((p) => p.id === 'spatula'),
  );
  const settled = sides.filter((s, i) => i === 0 || s.side !== sides[i - 1]!.side);
  const [only] = cutting;
  if (
    only &&
    named.length === 1 &&
    settled.length > 1 &&
    settled[0]!.at > only.to &&
    !contrasted(items, settled)
  )
    return settled.map(({ at, side }) => reading(scene, only, at, `edge:${side}`));
  if (cutting.length > 0 && cutting.length !== settled.length) return behind(scene, cutting, settled);
  if (cutting.length === 0) return [];
  const told = cutting.flatMap((point, i) => {
    const { at, side } = settled[i]!;
    const next = cutting[i + 1];
    const madeBy = cutting.length === 1 && at < point.at && makes(items.slice(at + 1, point.at));
    // "Because its edge faces the wound, the reverse cutting needle …": told before its name.
    const ahead =
      cutting.length === 1 &&
      at < point.at &&
      ITS.test(joined(items, 0, at)) &&
      /^[^,]*, (?:an?|the) $/.test(`${joined(items, at + 1, point.at)} `);
    if ((at < point.to && !madeBy && !ahead) || (next && at > next.at)) return [];
    // "If the edge is on the inside, you hold …": the condition is what tells the needle.
    return [{ ...reading(scene, point, at, `edge:${side}`), ...(madeBy ? { unconditional: true } : {}) }];
  });
  return told.length > 0 ? told : behind(scene, cutting, settled);
}
const EDGED: ReadonlySet<string> = new Set(['reverse-cutting', 'cutting', 'spatula']);
interface Side {
  readonly at: number;
  readonly side: 'inner' | 'outer';
}
/** The sides named where an edge is spoken of. */
function sidesIn(items: readonly Item[], spatula: boolean): Side[] {
  let last = -1;
  return items.flatMap((item, at): Side[] => {
    const side = INNER.has(item.word) ? 'inner' : OUTER.has(item.word) ? 'outer' : facing(items, at);
    const raised = spatula && /^(?:above|below)$/.test(item.word);
    if ((!side && !raised) || ofTheWound(items, at) || flatThere(items, at) || layOnTop(items, at)) return [];
    const near = items.slice(Math.max(0, at - 8), at + 4).some((word) => EDGE.has(word.word));
    if (!side) {
      const none = /\b(?:nothing|no|none|not|flat|never|without|lacks?|free)\b/.test(
        joined(items, at - 5, at),
      );
      return near && !none ? [{ at, side: 'outer' }] : [];
    }
    // "the third edge is on the outside and with the reverse one on the inside": said once for both.
    const again = last >= 0 && at - last <= 10;
    if (!near && !again && !item.word.endsWith('seeking')) return [];
    last = at;
    return [{ at, side }];
  });
}

/** "the outer edge of the wound". */
const ofTheWound = (items: readonly Item[], at: number): boolean =>
  /^(?:edge|side|margin|lip)s? of (?:the |a |each )?(?:wound|incision|skin|lesion|flap|cut)/.test(
    joined(items, at + 1, at + 6),
  );

/** "opened the reverse cutting because it lay on top": of the pile. */
const layOnTop = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'top' &&
  items[at - 1]?.word === 'on' &&
  !items.slice(Math.max(0, at - 8), at).some(({ word }) => /^(?:edges?|apex|ridge|third)$/.test(word));

/** "on the inside and not on the outside": the second is denied, or another needle's. */
const contrasted = (items: readonly Item[], sides: readonly Side[]): boolean =>
  sides.some(({ at }) => /^(?:is|are|stays|remains|being)$/.test(items[at + 1]?.word ?? '')) ||
  items.some((item) => /^(?:flat|smooth|opposite|base)$/.test(item.word)) ||
  items
    .slice(Math.max(0, sides[0]!.at - 4), sides.at(-1)!.at + 3)
    .some((item) =>
      /^(?:not|no|never|but|unlike|instead|rather|than|other|others|while|whereas|or|if|from|to|conventional|neither|both|never|away)$/.test(
        item.word,
      ),
    );

/** "inside the curve in reverse cutting, outside in the other": a side and its needle behind it. */
function behind(scene: Scene, cutting: readonly PointAt[], sides: readonly Side[]): Reading[] {
  const { items } = scene;
  return cutting.flatMap((point) => {
    const side = sides.findLast(({ at }) => at < point.at);
    const between = side ? joined(items, side.at + 1, point.at) : '';
    return side &&
      /^(?:(?:of )?the (?:curve|bend) |curve |edge |side )?(?:in|on|with|for)(?: (?:an?|the))?$/.test(between)
      ? [{ ...reading(scene, point, side.at, `edge:${side.side}`), from: side.at, to: point.to }]
      : [];
  });
}

const ITS = /^(?:because|since|as|with) (?:its|their)\b/;

/** "The edge on the outer curve makes it a reverse cutting needle." */
const makes = (between: readonly Item[]) =>
  between.length <= 8 &&
  (between.some((item) =>
    /^(?:makes?|means|marks|defines|holding|called|sets|tells|distinguishes)$/.test(item.word),
  ) ||
    IS_ONE.test(textOf(between))) &&
  !between.some((item) =>
    /^(?:than|like|unlike|not|no|never|on|beside|stronger|better|safer)$/.test(item.word),
  );
/** "… on the outer curve is a", "… you have a". */
const IS_ONE = /(?:^| )(?:is|are|it's|(?:you|we) have|(?:you|we) (?:are|'re) using)(?: an?| the)?$/;
const EDGE = new Set(
  'edge edges curve curvature apex side cutting third surface bend ridge blade corner triangle hollow'.split(
    ' ',
  ),
);

/** "a taper point has three cutting edges". */
function edgeless(scene: Scene, named: readonly PointAt[]): Reading[] {
  const taper = named.find((p) => p.id === 'taper' || p.id === 'blunt');
  if (!taper || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex((item, i) => i > taper.to && /^edges?$/.test(item.word));
  if (at < 0 || at - taper.to > 18) return [];
  const between = items.slice(taper.to, at);
  const says =
    between.some((item) => /^(?:has|have|with|carries|cuts|three|sharp|its)$/.test(item.word)) ||
    // "Taper: cutting edges on three sides."
    (/^: (?:two |sharp |cutting )+$/.test(`${joined(between, 1)} `) &&
      !/^(?:none|no|:|absent)$/.test(items[at + 1]?.word ?? ''));
  // "a taper needle, since a sharp edge could …": the edge is another needle's.
  const reason = between.findIndex((item) => /^(?:since|because|as|so|where|unlike|than)$/.test(item.word));
  const own = between.slice(reason + 1);
  const its = items.slice(at + 1, at + 5).some((item) => item.word === 'its');
  const owed = reason >= 0 && its && /^(?:of )?(?:the|an?) /.test(joined(between, reason + 1));
  const foreign = reason >= 0 && !owed && !own.some((item) => /^(?:its|it|they|their)$/.test(item.word));
  // "Which has no edges? The taper.": put together from question and answer, the negation is the words' own.
  const asked =
    taper.at >= 0 &&
    /\bno(?: cutting| sharp)?$/.test(joined(items, at - 3, at)) &&
    items[taper.at]!.start > items[at]!.start;
  if (asked) return [];
  return (says || owed) && !foreign ? [reading(scene, taper, at, 'edge:some')] : [];
}

/** "a blunt needle has a sharp tip". */
function sharp(scene: Scene, named: readonly PointAt[]): Reading[] {
  const [blunt] = named;
  const { items } = scene;
  if (blunt?.id !== 'blunt' || named.length !== 1) return [];
  const at = items.findIndex(
    (item, i) => i > blunt.to && /^(?:sharp|cutting|razor|keen|pointed|razor-sharp)$/.test(item.word),
  );
  const between = items.slice(blunt.to + 1, Math.max(at, 0));
  const says = between.length <= 6 && between.some((item) => /^(?:has|have|with|is|are)$/.test(item.word));
  const object = items.slice(at + 1, at + 4).some((item) => /^(?:tip|point|end|edges?)$/.test(item.word));
  if (
    at < 0 ||
    !says ||
    !object ||
    between.some((item) => /^(?:no|not|than|without|for|beside)$/.test(item.word))
  )
    return [];
  return [reading(scene, blunt, at, 'edge:some')];
}

/** "a reverse cutting needle has no edges at all". */
function denied(scene: Scene, named: readonly PointAt[]): Reading[] {
  const cutting = named.find((p) => p.id === 'reverse-cutting' || p.id === 'cutting');
  if (!cutting || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex((item, i) => i > cutting.to && /^edges?$/.test(item.word));
  const near = items.slice(Math.max(cutting.to, at - 4), at);
  if (/^(?:its|this|that|the)$/.test(items[at - 1]?.word ?? '') || OUTER.has(items[at - 1]?.word ?? ''))
    return [];
  if (at < 0 || at - cutting.to > 8 || !near.some((item) => item.word === 'no' || item.word === 'without'))
    return [];
  return [{ ...reading(scene, cutting, at, 'edge:none'), own: true }];
}

/** "a taper needle cuts tissue", "… because it slices its way through", "is sharpened along three sides". */
function cuts(scene: Scene, named: readonly PointAt[]): Reading[] {
  const taper = named.find((p) => p.id === 'taper' || p.id === 'blunt');
  if (!taper || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex((item, i) => i > taper.to && CUTS.test(item.word));
  if (at < 0 || at - taper.to > 16) return [];
  const before = items[at - 1]?.word ?? '';
  const between = items.slice(taper.to + 1, at);
  // "Where a taper needle cuts tissue, it has been bent": what happens when something is amiss.
  if (
    items
      .slice(0, taper.at)
      .some((item) => /^(?:where|wherever|if|when|whenever|once|should)$/.test(item.word))
  )
    return [];
  if (
    between.some((item) =>
      /^(?:no|not|never|without|instead|rather|than|unlike|where|if|when|down)$/.test(item.word),
    )
  )
    return [];
  const after = joined(items, at + 1, at + 5);
  const agent =
    at - taper.to <= 3 || /^(?:it|they|is|are|and|which|that|to|will|needles?|points?|tip)$/.test(before);
  const object = /^(?:sharpened|honed)$/.test(items[at]!.word)
    ? /^(?:along|on|at) (?:its |the |both |two |three |all )/.test(after)
    : /^(?:tissues?|(?:its|their) way|well\b|cleanly\b|through (?:the )?(?:tissues?|skin|dermis)|easily\b)/.test(
        after,
      ) || / tissues?\b/.test(` ${after}`);
  return agent && object ? [reading(scene, taper, at, 'edge:some')] : [];
}
const CUTS = /^(?:cuts?|slices?|carves?|sharpened|honed)$/;

/** "taper needles are round in section", "a cutting needle is triangular". */
function section(scene: Scene, named: readonly PointAt[]): Reading[] {
  const point = named[0];
  if (!point || named.length !== 1) return [];
  const { items } = scene;
  const at = items.findIndex(
    (item, i) => i > point.to && (item.word === 'triangular' || item.word === 'round'),
  );
  const between = items.slice(point.to + 1, Math.max(at, 0));
  const said = items.slice(at + 1, at + 4).some((item) => /^(?:cross-)?section$/.test(item.word));
  if (
    at < 0 ||
    !said ||
    between.length > 5 ||
    !between.some((item) => /^(?:is|are|has|have|with)$/.test(item.word))
  )
    return [];
  return [reading(scene, point, at, `section:${items[at]!.word}`)];
}

function reading(scene: Scene, point: PointAt, at: number, property: string): Reading {
  return {
    claim: {
      kind: 'property',
      construction: 'points',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[at]!),
      subject: point.id,
      of: 'point',
      property,
      has: true,
    },
    at,
    from: point.at < 0 ? at : Math.min(point.at, at),
    to: Math.max(point.to, at),
  };
}
