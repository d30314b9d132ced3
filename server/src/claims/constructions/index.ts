/** The constructions of the grammar, in the order in which they are tried. The first reading of a claim wins. */
import { alike } from './alike.ts';
import { beside } from './beside.ts';
import { between } from './between.ts';
import { byAge } from './by-age.ts';
import { byTube } from './by-tube.ts';
import { category } from './category.ts';
import { chain } from './chain.ts';
import { colour } from './colour.ts';
import { contrast } from './contrast.ts';
import { counted } from './counted.ts';
import { countedSet } from './counted-set.ts';
import { coupled } from './coupled.ts';
import { defined } from './defined.ts';
import { direction } from './direction.ts';
import { effect } from './effect.ts';
import { ends } from './ends.ts';
import { equative } from './equative.ts';
import { equivalence } from './equivalence.ts';
import { existence } from './existence.ts';
import { extreme } from './extreme.ts';
import { fit } from './fit.ts';
import { follow } from './follow.ts';
import { formula } from './formula.ts';
import { chooser } from './gate.ts';
import { grab } from './grab.ts';
import { hence } from './hence.ts';
import { hued } from './hued.ts';
import { hues } from './hues.ts';
import { kinds } from './kinds.ts';
import { label } from './label.ts';
import { lasting } from './lasting.ts';
import { lengths } from './lengths.ts';
import { limit } from './limit.ts';
import { members } from './members.ts';
import type { Construction } from './model.ts';
import { namedBy } from './named-by.ts';
import { next } from './next.ts';
import { nothing } from './nothing.ts';
import { oddSizes } from './odd-sizes.ts';
import { order } from './order.ts';
import { outdo } from './outdo.ts';
import { outermost } from './outermost.ts';
import { owing } from './owing.ts';
import { pair } from './pair.ts';
import { pointUses } from './point-uses.ts';
import { points } from './points.ts';
import { property } from './property.ts';
import { range } from './range.ts';
import { ratio } from './ratio.ts';
import { reason } from './reason.ts';
import { referents } from './referents.ts';
import { spelled } from './spelled.ts';
import { stepping } from './stepping.ts';
import { strands } from './strands.ts';
import { sums } from './sums.ts';
import { superlative } from './superlative.ts';
import { than } from './than.ts';
import { tubes } from './tubes.ts';
import { turn } from './turn.ts';
import { unit } from './unit.ts';
import { usual } from './usual.ts';
import { whole } from './whole.ts';
import { width } from './width.ts';
import { worded } from './worded.ts';
import { wrongUnit } from './wrong-unit.ts';
import { zeros } from './zeros.ts';

export const CONSTRUCTIONS: readonly Construction[] = [
  than,
  outdo,
  ratio,
  superlative,
  extreme,
  countedSet,
  outermost,
  nothing,
  beside,
  reason,
  owing,
  hence,
  chain,
  order,
  contrast,
  ends,
  kinds,
  turn,
  pair,
  effect,
  next,
  stepping,
  follow,
  label,
  equative,
  spelled,
  direction,
  coupled,
  whole,
  sums,
  worded,
  equivalence,
  width,
  alike,
  colour,
  hues,
  hued,
  category,
  range,
  limit,
  defined,
  between,
  grab,
  tubes,
  byAge,
  byTube,
  formula,
  namedBy,
  lengths,
  unit,
  zeros,
  counted,
  property,
  referents,
  lasting,
  members,
  fit,
  strands,
  points,
  pointUses,
  usual,
  wrongUnit,
  existence,
  oddSizes,
];

/** The constructions that may read a sentence: no other would say anything. */
export const constructionsFor = chooser(CONSTRUCTIONS);
