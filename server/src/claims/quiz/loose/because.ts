/**
 * Why an answer is right, where the reason leans on what was asked: "B, because the point cuts the tissue" of the taper in the
 * question, "9: it measures 3 mm" of the size that was chosen.
 */
import type { Claim } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { pointsIn } from '../../text/points.ts';
import type { Scene } from '../../text/scene.ts';
import { negated } from '../choice.ts';
import { type KeyReading, mark, onKey, readAs, spanOf } from '../desk.ts';
import type { Piece } from '../piece.ts';

const LONGEST = 25;
const STOPS =
  /\b(?:not|never|no|than|unlike|whereas|while|but|if|unless|other|others|would|instead|rather|wrong|only|first|both|the (?:rest|second))\b|n't\b/;
const KINDS: ReadonlySet<Claim['kind']> = new Set(['property', 'equivalence', 'colour']);

/** `chosen`: the items that name the answer. */
export function because(
  question: Piece,
  chosen: readonly Item[],
  reason: Piece | undefined,
  scene: Scene | undefined,
): KeyReading[] {
  if (!reason || !scene || reason.items.length < 3 || reason.items.length > LONGEST) return [];
  if (STOPS.test(textOf(reason.items)) || negated(question)) return [];
  const told = subjects(question, chosen).flatMap((subject) =>
    readAs(scene, [...subject, ...said(reason.items)]).filter(
      (claim) => KINDS.has(claim.kind) && !/^use/.test(propertyOf(claim)),
    ),
  );
  const [claim] = told;
  return claim && told.every(({ kind }) => kind === claim.kind)
    ? [{ claim: onKey(claim, spanOf(reason), spanOf(question)), stance: 'asserted' }]
    : [];
}

const propertyOf = (claim: Claim): string => (claim.kind === 'property' ? claim.property : '');

/** The one point that the question names, else the answer itself. */
function subjects(question: Piece, chosen: readonly Item[]): Item[][] {
  const points = [...pointsIn(question.items)];
  const [point] = points;
  if (point && points.every(({ id }) => id === point.id))
    return [
      [
        ...question.items.slice(point.at, point.to + 1),
        mark('needle'),
        mark('is'),
        mark('right'),
        mark(','),
        mark('because'),
      ],
    ];
  return chosen.length > 0 ? [[...chosen]] : [];
}

/** "is right, because the point cuts the tissue", "it measures 3 mm": without what only joins it to the answer. */
function said(items: readonly Item[]): readonly Item[] {
  const at = items.findIndex(({ word }) => /^(?:because|since|as|for)$/.test(word));
  const own = items.slice(at >= 0 && at <= 5 ? at + 1 : 0);
  const from = own.findIndex(({ kind }) => kind !== 'punctuation');
  return /^(?:it|which|this|that)$/.test(own[from]?.word ?? '')
    ? own.slice(from + 1)
    : own.slice(Math.max(from, 0));
}
