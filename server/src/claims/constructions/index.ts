/** The constructions of the grammar, in the order in which they are tried. The first reading of a claim wins. */
import { between } from './between.ts';
import { category } from './category.ts';
import { colour } from './colour.ts';
import { contrast } from './contrast.ts';
import { direction } from './direction.ts';
import { equative } from './equative.ts';
import { equivalence } from './equivalence.ts';
import { existence } from './existence.ts';
import { follow } from './follow.ts';
import { formula } from './formula.ts';
import { grab } from './grab.ts';
import type { Construction } from './model.ts';
import { next } from './next.ts';
import { order } from './order.ts';
import { outdo } from './outdo.ts';
import { pair } from './pair.ts';
import { points } from './points.ts';
import { property } from './property.ts';
import { range } from './range.ts';
import { than } from './than.ts';
import { usual } from './usual.ts';

export const CONSTRUCTIONS: readonly Construction[] = [
  than,
  outdo,
  order,
  contrast,
  pair,
  next,
  follow,
  equative,
  direction,
  equivalence,
  colour,
  category,
  range,
  between,
  grab,
  formula,
  property,
  points,
  usual,
  existence,
];
