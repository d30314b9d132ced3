/** "The largest suction catheter for a 7.0 tube?" "18 Fr": the one tube asked about and the one French of the reply. */
import type { FormulaClaim } from '../../model.ts';
import { textOf } from '../../text/joined.ts';
import { overTube } from '../../text/suction.ts';
import { negated } from '../choice.ts';
import { spanOf } from '../desk.ts';
import type { Piece } from '../piece.ts';
import type { Told } from './index.ts';
import { numbersIn, sizesSaid } from './said.ts';

const ASKED = /^suction(?:ing|s|ed)?$/;
const OF_TUBE = /\b(?:tubes?|ett|tracheal|endotracheal|trach\w*|airway|id)\b/;
/** Asked of something else than the usual limit. */
const OTHERWISE =
  /\b(?:why|when|too|smallest|least|pressure|deep|depth|seconds?|how (?:long|far|often)|colou?r|mm wide|blocks?|stuck|outside|outer|than|wrong)\b/;
/** Tracheal tubes in millimetres, and suction catheters in French. */
const TUBES: readonly [number, number] = [2, 11];
const CATHETERS: readonly [number, number] = [4, 30];
const within = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;

/** Of a suction catheter by the tube. */
export const asksOfSuction = ({ items }: Piece): boolean =>
  items.some(({ word }) => ASKED.test(word)) && OF_TUBE.test(textOf(items));

/** Whoever asks so is never answered by a width: nothing else is read then. */
export function suctioned({ question, head, reply, focus }: Told): FormulaClaim[] | undefined {
  const text = textOf(question.items);
  if (!asksOfSuction(question) && !(OF_TUBE.test(text) && head.items.some(({ word }) => ASKED.test(word))))
    return undefined;
  const [tube, ...more] = tubesOf(question);
  const said = cathetersIn(head);
  // "No more than 18 Fr."
  const [catheter, ...others] = said.length > 0 ? said : cathetersIn(reply);
  if (tube === undefined || catheter === undefined || more.length > 0 || others.length > 0) return [];
  if (OTHERWISE.test(text) || negated(question)) return [];
  const formula = overTube(catheter, tube) ? 'suction-over-tube' : 'suction-by-tube';
  return [
    {
      kind: 'formula',
      construction: 'answer-key',
      span: spanOf(question),
      focus,
      system: 'tube-id',
      formula,
    },
  ];
}

/** The tubes that a question names, whatever their number was taken for: "a size 8 tube", "7.0 mm", "a 6 tube". */
function tubesOf(question: Piece): number[] {
  const texts = question.items.flatMap(({ mention }) => mention?.text ?? []);
  // "Tube: 7.5 mm ID. Options: 10, 12, 14": the tube says what it is, and the rest is offered.
  const plain = texts.filter((text) => /mm|id\b/i.test(text));
  const named = (plain.length > 0 ? plain : texts).flatMap((text) => {
    const number = TUBE.exec(text)?.[1];
    return number ? [Number(number)] : [];
  });
  const values = named.length > 0 ? named : numbersIn(question).map(({ value }) => value);
  return [...new Set(values)].filter((value) => within(value, TUBES));
}
const TUBE = /^(?:[a-z]+\.? )?(\d{1,2}(?:\.\d)?)(?: ?mm)?(?: id)?$/i;

function cathetersIn(head: Piece): number[] {
  const sizes = sizesSaid(head).map(({ sizes: [size] }) => size!);
  const values =
    sizes.length > 0
      ? sizes.filter(({ system }) => system === 'french').map(({ value }) => value)
      : numbersIn(head).map(({ value }) => value);
  return [...new Set(values)].filter((value) => within(value, CATHETERS));
}
