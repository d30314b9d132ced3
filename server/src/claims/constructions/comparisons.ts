/** What reads sizes set against each other, in the order in which it is tried. */
import { beside } from './beside.ts';
import { chain } from './chain.ts';
import { chosen } from './chosen.ts';
import { contrast } from './contrast.ts';
import { countedSet } from './counted-set.ts';
import { effect } from './effect.ts';
import { ends } from './ends.ts';
import { extreme } from './extreme.ts';
import { flowing } from './flowing.ts';
import { follow } from './follow.ts';
import { hence } from './hence.ts';
import { kinds } from './kinds.ts';
import { linedUp } from './lined-up.ts';
import { loosely } from './loosely.ts';
import type { Construction } from './model.ts';
import { needed } from './needed.ts';
import { neighbour } from './neighbour.ts';
import { next } from './next.ts';
import { nothing } from './nothing.ts';
import { ofOwners } from './of-owners.ts';
import { oneWith } from './one-with.ts';
import { order } from './order.ts';
import { outdo } from './outdo.ts';
import { outermost } from './outermost.ts';
import { owing } from './owing.ts';
import { pair } from './pair.ts';
import { purpose } from './purpose.ts';
import { ratio } from './ratio.ts';
import { reason } from './reason.ts';
import { stepping } from './stepping.ts';
import { superlative } from './superlative.ts';
import { than } from './than.ts';
import { turn } from './turn.ts';
import { unmatched } from './unmatched.ts';

const READERS: readonly Construction[] = [
  than,
  needed,
  outdo,
  ratio,
  superlative,
  extreme,
  countedSet,
  outermost,
  nothing,
  unmatched,
  oneWith,
  beside,
  reason,
  owing,
  hence,
  chain,
  order,
  neighbour,
  contrast,
  ends,
  kinds,
  turn,
  pair,
  effect,
  next,
  stepping,
  follow,
  chosen,
  loosely,
  purpose,
  flowing,
  linedUp,
];

/** Each of them leaves alone what is said of things that only go with the sizes. */
export const COMPARISONS: readonly Construction[] = READERS.map((reader) => ({
  ...reader,
  read: (scene) => (ofOwners(scene.items) ? [] : reader.read(scene)),
}));
