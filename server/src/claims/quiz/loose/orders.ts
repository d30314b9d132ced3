/** Tasks to put sizes in order whose words the grammar does not join: "Rank by flow, best first", and the row that answers. */
import type { Axis, OrderClaim } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { decidable, measuredWords } from '../../text/magnitudes.ts';
import { negated } from '../choice.ts';
import { sizeKey, sizesOf, spanOf } from '../desk.ts';
import type { Told } from './index.ts';

const FEWEST = 3;
const RANKS = /\b(?:rank|sort|order|arrange|line up|list|put|stack|lay)\b/;
const FROM_MOST =
  /\b(?:best|most|highest|greatest|top|fastest|quickest|strongest|biggest|largest|widest|thickest) (?:one )?first\b/;
const FROM_LEAST =
  /\b(?:worst|least|lowest|poorest|slowest|weakest|smallest|finest|thinnest|narrowest) (?:one )?first\b/;

/** The row of the reply, where it holds what was to be sorted and nothing else. */
export function sorted({ question, reply, focus }: Told): OrderClaim[] | undefined {
  const text = textOf(question.items);
  const [most, least] = [FROM_MOST.test(text), FROM_LEAST.test(text)];
  const axis = axisOf(question.items);
  if (!RANKS.test(text) || most === least || !axis || negated(question)) return undefined;
  const [asked, items] = [sizesOf(question), sizesOf(reply)];
  const words = (all: typeof items) => all.map(sizeKey).sort().join();
  if (items.length < FEWEST || words(asked) !== words(items)) return undefined;
  return [
    {
      kind: 'order',
      construction: 'answer-key',
      span: spanOf(question),
      focus,
      items,
      axis,
      runs: most ? 'down' : 'up',
    },
  ];
}

/** The one quantity named, by a noun or by the word that says where the row begins. */
function axisOf(items: readonly Item[]): Axis | undefined {
  const said = [
    ...items.flatMap(({ axisNoun }) => (axisNoun && axisNoun.sign === 1 ? axisNoun.axis : [])),
    ...measuredWords(items).flatMap(({ axis }) => (decidable(axis) ? axis : [])),
  ].filter((axis) => axis !== 'number');
  const axes = new Set(said);
  return axes.size === 1 ? said[0] : undefined;
}
