/** A suture material said to be what it is not. */
import { statementCheck } from './statement-check.ts';

export const material = statementCheck(
  {
    id: 'suture-material',
    title: 'The material is described wrongly',
    docs: 'A material (by generic name) is called absorbable, braided, monofilament, natural or synthetic, and it is not; or it is said to outlast a thread that every text says lasts longer. Materials made in both structures are left alone.',
  },
  ({ claim }) => claim.kind === 'property' && claim.of === 'material' && claim.construction !== 'answer-key',
);
