/** Words of change, exchange, equality, order and negation. One idea a list. */

/** "As the number climbs": the thing before goes up. */
export const UP = new Set(
  `climb climbs climbing climbed rise rises rising rose increase increases increasing increased go-up goes-up going-up
  grow grows growing grew mount mounts ascend ascends ascending up upward upwards swells swell widen widens widening
  thicken thickens thickening expand expands enlarge enlarges enlarged fatten fattens broaden broadens gain gains balloon balloons
  more extra additional added another greater ↑ ⬆ ▲`
    .split(/\s+/)
    .filter(Boolean),
);

export const DOWN = new Set(
  `fall falls falling fell drop drops dropping dropped decrease decreases decreasing decreased decline declines sink sinks
  shrink shrinks shrinking shrank descend descends descending down downward downwards narrow narrows narrowing thin thins
  thinning dwindle dwindles taper tapers lessen lessens diminish diminishes lose loses slim slims contract contracts less fewer ↓ ⬇ ▼`
    .split(/\s+/)
    .filter(Boolean),
);

/** Verbs of change that carry an axis of their own. */
export const AXIS_CHANGE: ReadonlyMap<
  string,
  { axis: 'outer' | 'bore' | 'flow' | 'hole' | 'strength'; sign: 1 | -1 }
> = new Map(
  (
    [
      ['outer', 1, 'thickens thicken fattens fatten swells swell bulks'],
      ['outer', -1, 'thins slims slim shrinks shrink dwindles'],
      ['bore', 1, 'widens widen opens broadens'],
      ['bore', -1, 'narrows narrow tightens'],
      ['flow', 1, 'quickens'],
      ['flow', -1, 'slows'],
    ] as const
  ).flatMap(([axis, sign, words]) => words.split(' ').map((word) => [word, { axis, sign }] as const)),
);

export const NEGATIONS = new Set(
  `not no never neither nor cannot can't isn't aren't wasn't weren't doesn't don't didn't won't wouldn't shouldn't
  hardly nowhere nobody none without ain't`
    .split(/\s+/)
    .filter(Boolean),
);

/** Exchange verbs: the first size is given up, the second chosen. */
export const EXCHANGE = new Set(
  `swap swaps swapped swapping trade trades traded trading exchange exchanges exchanged replace replaces replaced
  switch switches switched switching change changes changed changing move moves moved moving drop drops dropped dropping
  step steps stepped stepping go goes going went upsize upsizing downsize downsizing pull come comes coming
  widening widen narrowing enlarging increasing decreasing jump jumps jumping shift shifts shifting upgrade upgraded upgrading downgrade`
    .split(/\s+/)
    .filter(Boolean),
);

export const HEDGES = new Set(
  `may might could perhaps maybe possibly sometimes some probably seemingly supposedly allegedly reportedly apparently arguably it'd that'd they'd`
    .split(/\s+/)
    .filter(Boolean),
);

export const CONDITIONS = new Set(
  `if suppose supposing imagine were unless whether provided assuming pretend had`
    .split(/\s+/)
    .filter(Boolean),
);
