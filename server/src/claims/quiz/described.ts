/** "Which of these is absorbable?", "Which is NOT a monofilament?": the chosen material has the property asked for, or lacks it. */
import type { Span } from '../../notes/model.ts';
import type { PropertyClaim, Stance } from '../model.ts';
import { materialsIn } from '../text/materials.ts';
import { PROPERTY_WORDS } from '../words/properties.ts';
import { materialIs } from './desk.ts';
import type { Keyed } from './key.ts';

/** Undefined unless the question asks for one property and every choice is one material. */
export function described(
  { quiz, chosen }: Keyed,
  focus: Span,
  span: Span,
  negated: boolean,
): { claim: PropertyClaim; stance: Stance } | undefined {
  const rows = quiz.question.items.flatMap((item) => PROPERTY_WORDS.get(item.word) ?? []);
  const named = materialsIn(chosen.items);
  const row = rows[0];
  if (!row || rows.length > 1 || named.length !== 1 || materialsIn(quiz.question.items).length > 0)
    return undefined;
  if (!quiz.options.every((option) => materialsIn(option.items).length === 1)) return undefined;
  const claim = materialIs(named[0]!.id, `${row.property}:${row.value}`, focus, span);
  return { claim, stance: negated ? 'denied' : 'asserted' };
}
