/** How claims are said in messages. */
import { DIRECTION_WORDS, direction, label } from '../../sizes/index.ts';
import type { Size, System } from '../../sizes/model.ts';
import { list, type Part, type Phrase, phrase, quote, type Text } from '../../texts/index.ts';
import type { Axis, Operand, Relation } from '../model.ts';
import { RELATION } from '../texts/comparison.ts';
import { DIRECTION, ENDS, NUMBER } from '../texts/direction.ts';
import { FRAME } from '../texts/frame.ts';

/** A size as it is called: by its label, and by its colour where that is all the text gives. */
export const sizeWords = (operand: Operand, by: Text = FRAME.or): Part => {
  const words = labels(operand.sizes, by);
  const [mention] = operand.mentions;
  return mention?.notation === 'colour'
    ? phrase(FRAME.coloured, { colour: quote(mention.text), sizes: words })
    : words;
};

/** Labels in a row; one alone is just itself. */
export const labels = (sizes: readonly Size[], by: Text): Part =>
  sizes.length === 1
    ? label(sizes[0]!)
    : list(
        sizes.map((size) => label(size)),
        by,
      );

/** "is thicker than", "makes a larger hole than": with its verb. */
export const relationWords = (axis: Axis, relation: Relation): Phrase =>
  phrase(RELATION[axis][relation === 'more' ? 0 : relation === 'less' ? 1 : 2]);

export const endWords = (axis: Axis, up: boolean): Phrase => phrase(ENDS[axis][up ? 0 : 1]);

/** A number in words of its system: "a larger gauge number", "more zeros". */
export function numberWords(system: System, up: boolean, zeros: boolean): Phrase {
  if (zeros) return phrase(up ? DIRECTION.moreZeros : DIRECTION.fewerZeros);
  const name =
    system === 'needle-gauge'
      ? NUMBER.gauge
      : system === 'french'
        ? NUMBER.French
        : system === 'ep-metric'
          ? NUMBER.metric
          : NUMBER.size;
  return phrase(up ? DIRECTION.larger : DIRECTION.smaller, { name: phrase(name) });
}

/** The rule that settles a comparison within one system, as a clause. */
export function ruleWords(a: Size, b: Size): string {
  if (a.system !== b.system) return 'both said in millimetres';
  if (direction(a.system) === 'split')
    return a.value <= 0 && b.value <= 0 ? 'more zeros are thinner' : DIRECTION_WORDS.usp;
  return DIRECTION_WORDS[a.system];
}
