/** A size put in a class that no text puts it in. */
import { statementCheck } from './statement-check.ts';

export const category = statementCheck(
  {
    id: 'size-class',
    title: 'No text puts this size in that class',
    docs: 'Large-bore IV access is 14 to 16 G; some texts add 18 G, so 18 G is left alone and 20 G and thinner are reported. Chest drains and feeding tubes have classes of their own.',
  },
  ({ claim }) => claim.kind === 'category' && claim.construction !== 'answer-key',
);
