/** A size put in a class that no text puts it in. */
import { statementCheck } from './statement-check.ts';

export const category = statementCheck(
  {
    id: 'size-class',
    title: 'No text puts this size in that class',
    docs: 'Large-bore IV access is 14 to 16 G; some texts add 18 G, so 18 G is left alone and 20 G and thinner are reported. Chest drains and feeding tubes have classes of their own; of fine and heavy threads and needles only the far ends are judged. A list under such a heading is read too.',
  },
  ({ claim }) => claim.kind === 'category' && claim.construction !== 'answer-key',
);
