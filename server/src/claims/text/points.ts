/** Suture needle points named in a row of items: "reverse cutting", "a conventional cutter", "round-bodied". */

import { TISSUES } from '../words/tissues.ts';
import type { Item } from './items.ts';
import { remembered } from './remember.ts';

export interface PointAt {
  readonly at: number;
  readonly to: number;
  readonly id: 'reverse-cutting' | 'cutting' | 'taper' | 'blunt' | 'spatula';
}

/** With which the name of a point begins. */
export const POINT_WORDS =
  /^(?:reverse|cutting|cutters?|reverse-cutting|reverse-cutters?|taper|taper-?point|tapered|round|round-?bodied|blunt|blunt-tipped|spatula|spatulated|side-cutting|conventional)$/;

/** Points with a third edge are spoken of. */
const triangular = (items: readonly Item[]): boolean =>
  items.some((item) =>
    /^(?:triangular|edge|edges|apex|cutting|cutters?|depth-seeking|surface-seeking)$/.test(item.word),
  );
const NEEDLES = /^(?:needles?|ones?|points?|kind|sort|type)$/;
const STARTS = /^(?:[,;:.(–—-]|and|but|)$/;
/** "have a smooth round body": a property, not a name. */
const OWNS = /^(?:has|have|having|with)$/;
const TAPER = /^(?:taper|tapers|taper-point|tapered|round-bodied|roundbodied|taperpoint)$/;

/** Points of a sentence, in its order. */
export const pointsIn = remembered((items: readonly Item[]): readonly PointAt[] => {
  const cutting = items.some((item) => /cutt(?:ing|ers?)$/.test(item.word));
  const found: PointAt[] = [];
  for (let i = 0; i < items.length; i++) {
    const point = pointAt(items, i, cutting);
    if (!point) continue;
    found.push(point);
    i = point.to;
  }
  return found;
});

function pointAt(items: readonly Item[], i: number, cutting: boolean): PointAt | undefined {
  const [word, next, before] = [items[i]!.word, items[i + 1]?.word ?? '', items[i - 1]?.word ?? ''];
  const found = (id: PointAt['id'], to = i): PointAt => ({ at: i, to, id });
  if (/^reverse-cutt(?:ing|ers?)$/.test(word)) return found('reverse-cutting');
  if (word === 'reverse' && /^cutt(?:ing|ers?)$/.test(next)) return found('reverse-cutting', i + 1);
  if (
    /^(?:conventional|standard)$/.test(word) &&
    /^cutt(?:ing|ers?)$/.test(next) &&
    items[i + 2]?.word !== 'edge'
  )
    return found('cutting', i + 1);
  if (word === 'conventional' && cutting && /^(?:ones?|kind|sort|type)$/.test(next))
    return found('cutting', i + 1);
  // "of the two triangular points the conventional is …", "the reverse one".
  if (
    /^(?:conventional|reverse)$/.test(word) &&
    before === 'the' &&
    !/^(?:unlike|like|than|as|from)$/.test(items[i - 2]?.word ?? '') &&
    triangular(items) &&
    !/^cutt/.test(next)
  )
    return found(word === 'reverse' ? 'reverse-cutting' : 'cutting', NEEDLES.test(next) ? i + 1 : i);
  // "two cutting needles: the conventional one …": both kinds.
  if (word === 'cutting' && next === 'needles' && /^(?:two|both)$/.test(before)) return undefined;
  if (word === 'cutting' && /^(?:needles?|points?)$/.test(next) && !/^(?:reverse|sharp|short)$/.test(before))
    return found('cutting');
  // "Bowel: cutting."
  if (word === 'cutting' && /^[:=–—]$/.test(before) && /^(?:[.,;]|)$/.test(next)) return found('cutting');
  // "taper for bowel, cutting for skin"
  if (word === 'cutting' && next === 'for' && STARTS.test(before) && TISSUES.has(items[i + 2]?.word ?? ''))
    return found('cutting');
  // "a plain cutting one"
  if (word === 'cutting' && /^ones?$/.test(next) && /^(?:an?|the|plain|ordinary)$/.test(before))
    return found('cutting');
  if (word === 'cutters' || (word === 'cutter' && /^(?:an?|the)$/.test(before))) return found('cutting');
  if (TAPER.test(word)) return found('taper');
  if (
    word === 'round' &&
    (/^bodied$/.test(next) ||
      (next === 'body' &&
        !OWNS.test(before) &&
        !OWNS.test(items[i - 2]?.word ?? '') &&
        !OWNS.test(items[i - 3]?.word ?? '')) ||
      (/^needles?$/.test(next) && /^(?:an?|the)$/.test(before)))
  )
    return found('taper');
  if (
    word === 'blunt-tipped' ||
    (word === 'blunt' && (/^(?:taper|tip|suture)/.test(next) || NEEDLES.test(next)))
  )
    return found('blunt', next === 'taper' ? i + 1 : i);
  return /^(?:spatula|spatulated|side-cutting)$/.test(word) &&
    (NEEDLES.test(next) || /^(?:needles?|points?)$/.test(before) || (next === ':' && i < 2))
    ? found('spatula')
    : undefined;
}

/** "a cutting needle with its ridge outside the curve": which of the cutting needles is meant is told by what follows. */
export const toldApart = (items: readonly Item[], { id, at, to }: PointAt): boolean => {
  if (id !== 'cutting' || /^(?:conventional|standard)$/.test(items[at]?.word ?? 'standard')) return false;
  const next = NEEDLES.test(items[to + 1]?.word ?? '') ? to + 2 : to + 1;
  return (
    /^(?:with|whose|having)$/.test(items[next]?.word ?? '') &&
    items.slice(next + 1, next + 5).some(({ word }) => /^(?:edges?|ridge|apex|blade|side|corner)$/.test(word))
  );
};
