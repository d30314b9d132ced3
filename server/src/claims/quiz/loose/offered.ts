/** "A 24 Fr catheter: 6, 8 or 12 mm?" "12.": a size, what it may measure, and which of these the reply names. */
import type { System } from '../../../sizes/model.ts';
import type { EquivalenceClaim, Operand } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { negated } from '../choice.ts';
import { sizesOf, spanOf } from '../desk.ts';
import type { Piece } from '../piece.ts';
import type { Told } from './index.ts';
import { numbersIn, operandAt, sizesSaid } from './said.ts';
import { equal, LENGTHS, OTHER_NUMBER, unitAsked } from './values.ts';

interface Offer {
  readonly given: Operand;
  readonly system: System;
  readonly values: readonly number[];
}

export function offered({ question, head, focus }: Told): EquivalenceClaim[] | undefined {
  const text = textOf(question.items.filter(({ kind }) => kind === 'word'));
  if (OTHER_NUMBER.test(text) || negated(question)) return undefined;
  const offer = offerIn(question, text);
  if (!offer) return undefined;
  const { given, system, values } = offer;
  const from = given.sizes[0]!.system;
  if (from === 'tube-id' || from === 'wire-inch' || (!LENGTHS.has(from) && !LENGTHS.has(system))) return [];
  const [size, ...more] = sizesSaid(head);
  const [number, ...others] = size ? [] : numbersIn(head);
  const said =
    size ?? (number && others.length === 0 ? operandAt(head, number.item, system, number.value) : undefined);
  if (!said) return undefined;
  const own = said.sizes[0];
  const fits = own?.system === system && values.includes(own.value);
  return fits && more.length === 0 ? [equal(given, said, text, focus, spanOf(question))] : [];
}

/** The one size of its scale, against two values or more of another. */
function offerIn(question: Piece, text: string): Offer | undefined {
  const sizes = sizesOf(question);
  const numbers = numbersIn(question).filter(({ item }) => joinedBy(question.items, item));
  const systems = [...new Set(sizes.map(({ sizes: [size] }) => size!.system))];
  const of = (system: System) => sizes.filter(({ sizes: [size] }) => size!.system === system);
  const system =
    systems.length === 1
      ? unitAsked(text, systems[0]!)
      : systems.find((one) => choosesAmong(question, of(one)));
  if (!system || systems.length > 2) return undefined;
  const given = sizes.filter(({ sizes: [size] }) => size!.system !== system);
  const values = [
    ...of(system).map(({ sizes: [size] }) => size!.value),
    ...numbers.map(({ value }) => value),
  ];
  return given.length === 1 && values.length >= 2 ? { given: given[0]!, system, values } : undefined;
}

/** Some of them stand beside "or", a comma or a stroke. */
const choosesAmong = ({ items }: Piece, sizes: readonly Operand[]): boolean =>
  sizes.some(({ mentions: [mention] }) => {
    const at = items.findIndex((item) => item.mention === mention);
    return at >= 0 && joinedAt(items, at);
  });
const joinedBy = (items: readonly Item[], item: Item): boolean => joinedAt(items, items.indexOf(item));
const joinedAt = (items: readonly Item[], at: number): boolean =>
  [items[at - 1], items[at + 1]].some((near) => near && /^(?:or|,|\/)$/.test(near.word));
