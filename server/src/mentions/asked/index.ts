/** Questions about words that name no size: steps without a direction, colours without a thing. One of each a passage. */
import { sourceSpan } from '../../notes/index.ts';
import type { Mention } from '../model.ts';
import type { Scene, Surroundings } from '../scene.ts';
import { colourQuestion } from './colour.ts';
import { stepQuestion } from './idiom.ts';
import type { Question } from './model.ts';

/** Id that such mentions carry in place of a notation. */
const NOTATION = 'unsized';

export const questionsOf = (around: Surroundings, scene: Scene): readonly Mention[] =>
  [stepQuestion(around, scene), colourQuestion(around, scene)].flatMap((question) =>
    question ? [mentionOf(scene, question)] : [],
  );

function mentionOf({ passage }: Scene, { span, readings, rule }: Question): Mention {
  const text = passage.text.slice(span.start, span.end);
  return {
    passage: passage.index,
    span,
    source: sourceSpan(passage, span),
    text,
    kind: 'ambiguous',
    sizes: [],
    readings,
    notation: NOTATION,
    decimals: 0,
    evidence: [{ rule, saw: text }],
  };
}
