/** How claims are said in messages. */
import { DIRECTION_WORDS, direction, label } from '../../sizes/index.ts';
import type { Size, System } from '../../sizes/model.ts';
import type { Axis, Operand, Relation } from '../model.ts';

export const sizeWords = (operand: Operand): string => operand.sizes.map((size) => label(size)).join(' or ');

const AXIS: Readonly<Record<Axis, readonly [string, string, string]>> = {
  outer: ['is thicker than', 'is thinner than', 'is as thick as'],
  bore: ['is wider inside than', 'is narrower inside than', 'is as wide inside as'],
  flow: ['is faster than', 'is slower than', 'is as fast as'],
  strength: ['is stronger than', 'is weaker than', 'is as strong as'],
  hole: ['makes a larger hole than', 'makes a smaller hole than', 'makes as large a hole as'],
  number: ['is higher than', 'is lower than', 'is equal to'],
  other: ['is more than', 'is less than', 'is the same as'],
};

/** "is thicker than", "makes a larger hole than": with its verb. */
export function relationWords(axis: Axis, relation: Relation): string {
  return AXIS[axis][relation === 'more' ? 0 : relation === 'less' ? 1 : 2];
}

const ENDS: Readonly<Record<Axis, readonly [string, string]>> = {
  outer: ['thicker', 'thinner'],
  bore: ['wider inside', 'narrower inside'],
  flow: ['faster', 'slower'],
  strength: ['stronger', 'weaker'],
  hole: ['a larger hole', 'a smaller hole'],
  number: ['a higher number', 'a lower number'],
  other: ['more', 'less'],
};
export const endWords = (axis: Axis, up: boolean): string => ENDS[axis][up ? 0 : 1];

/** A number in words of its system: "a larger gauge number", "more zeros". */
export function numberWords(system: System, up: boolean, zeros: boolean): string {
  if (zeros) return up ? 'more zeros' : 'fewer zeros';
  const name =
    system === 'needle-gauge'
      ? 'gauge'
      : system === 'french'
        ? 'French'
        : system === 'ep-metric'
          ? 'metric'
          : 'size';
  return `a ${up ? 'larger' : 'smaller'} ${name} number`;
}

/** The rule that settles a comparison within one system, as a clause. */
export function ruleWords(a: Size, b: Size): string {
  if (a.system !== b.system) return 'both said in millimetres';
  if (direction(a.system) === 'split')
    return a.value <= 0 && b.value <= 0 ? 'more zeros are thinner' : DIRECTION_WORDS.usp;
  return DIRECTION_WORDS[a.system];
}
