/** "Which of these lies between 16 and 20 Fr?", "Which is in the range of 14 to 18 Fr?": what is chosen lies between the two sizes asked about. */
import type { Span } from '../../notes/model.ts';
import type { Operand, RangeClaim } from '../model.ts';
import { joined } from '../text/joined.ts';
import { groups, operand } from '../text/scene.ts';
import { askedMagnitude, spanOf } from './desk.ts';
import type { Piece } from './piece.ts';

/** Where the two ends stand, each as a size of its own. */
function endsIn({ read, items }: Piece): readonly [Operand, Operand] | undefined {
  const all = groups(items);
  const [first, second] = all;
  const last = all.at(-1);
  if (!first || !last || all.length > 2 || !PLACES.test(joined(items, 0, first.from))) return undefined;
  if (!ENDS.test(joined(items, last.to + 1))) return undefined;
  if (all.length === 1)
    return first.sizes.length === 2
      ? [
          operand(read, { ...first, sizes: [first.sizes[0]!] }),
          operand(read, { ...first, sizes: [first.sizes[1]!] }),
        ]
      : undefined;
  return first.sizes.length === 1 && second!.sizes.length === 1
    ? [operand(read, first), operand(read, second!)]
    : undefined;
}
const PLACES =
  /^(?:\d{1,2} [.)] )?(?:(?:q|question) : )?(?:which|what|name|pick|choose|find|tick|mark|circle|only one of|one of) .*\b(?:(?:lies?|sits?|is|are|falls?|comes?|stands?|goes|belongs?|ranks?|fits?|slots?|that is|in width|in thickness|in size|size|gauge|needle|cannula|catheter|drain|tube|thread|suture)(?: (?:in|in size|in width|in thickness|somewhere|neatly|right|exactly))? between|(?:within|inside|in|into|to) (?:the|a|our) (?:range|bracket|window|band|span)(?: (?:of|from|between))?|(?:lies?|is|falls?|stays?) (?:within|inside))(?: an?| the)?$/;
const ENDS =
  /^(?:(?:needles?|cannula[es]?|catheters?|drains?|tubes?|threads?|sutures?|silk|nylon|in|size|thickness|width|diameter|the|list|series|scale|row) ?)*[?:.]?$/;

/** Nothing unless question and choice speak of one scale. */
export function placed(question: Piece, chosen: Operand | undefined, focus: Span): RangeClaim | undefined {
  if (chosen?.sizes.length !== 1) return undefined;
  const { system } = chosen.sizes[0]!;
  const ends = endsIn(question);
  if (!ends || askedMagnitude(question.items)) return undefined;
  const [low, high] = ends;
  if ([low, high].some(({ sizes }) => sizes[0]!.system !== system)) return undefined;
  return {
    kind: 'range',
    construction: 'answer-key',
    span: spanOf(question),
    focus,
    size: chosen,
    low,
    high,
    inside: true,
  };
}
