/** "Which size lies between 4-0 and 2-0?" "5-0.": the reply is the size placed, or its number on the scale of the two. */
import type { System } from '../../../sizes/model.ts';
import type { Operand, RangeClaim } from '../../model.ts';
import { negated } from '../choice.ts';
import { sizesOf } from '../desk.ts';
import type { Piece } from '../piece.ts';
import { placed } from '../placed.ts';
import type { Told } from './index.ts';
import { figuresIn, operandAt, sizesSaid } from './said.ts';

export function placing({ question, head, focus }: Told): RangeClaim[] | undefined {
  const system = sizesOf(question)[0]?.sizes[0]?.system;
  if (!system || negated(question)) return undefined;
  const claim = placed(question, replied(head, system), focus);
  return claim && [claim];
}

function replied(head: Piece, system: System): Operand | undefined {
  if (!head.items.every(({ kind, word, deviceNoun }) => kind !== 'word' || deviceNoun || ALONE.test(word)))
    return undefined;
  const [size, ...more] = sizesSaid(head);
  if (size) return more.length === 0 ? size : undefined;
  const [figure, ...others] = figuresIn(head, system);
  return figure && others.length === 0 ? operandAt(head, figure.item, system, figure.value) : undefined;
}

/** Words beside a size that stands for the whole reply; "Student A wrote 22 Ch" tells a story. */
const ALONE =
  /^(?:it|it's|that|that's|is|an?|the|would|be|answer|size|only|fr|ch|g|gauge|french|silk|nylon|\d.*)$/;
