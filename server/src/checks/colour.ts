/** A hub colour that the code of the device gives to another size. */
import { statementCheck } from './statement-check.ts';

export const colour = statementCheck(
  {
    id: 'hub-colour',
    title: 'The colour belongs to another size',
    docs: 'Hypodermic needles follow ISO 6009, IV cannulas ISO 10555-5, and the two differ: pink is an 18 G needle and a 20 G cannula. When the text does not say which, a colour that fits either is left alone. A colour said to be one gauge on both is reported.',
  },
  ({ claim }) =>
    (claim.kind === 'colour' && claim.construction !== 'answer-key') || claim.construction === 'hues',
);
