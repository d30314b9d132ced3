/**
 * A fast look at raw text: can it hold a size or a rule about sizes at all? It may say yes too often, never
 * no wrongly, since a text it turns down is not read any further.
 */
import { MATERIALS } from '../sizes/materials.ts';

/** Beginnings of words without which nobody writes a size in words. */
const NUMBER_WORDS = [
  'zero', 'naught', 'nought', 'aught', 'ought', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight',
  'nine', 'ten', 'eleven', 'twel', 'thirt', 'fourt', 'fift', 'twent', 'fort', 'hundred', 'half', 'quarter', 'oh',
]; // biome-ignore format: a table

/** Beginnings of words that a rule about sizes, colours, materials or needle points speaks of. */
const RULE_WORDS = [
  'gauge', 'gage', 'french', 'charri', 'usp', 'ep', 'metric', 'hegar', 'awg', 'swg', 'bwg', 'inch', 'millim',
  'sutur', 'needle', 'cannula', 'catheter', 'wire', 'tube', 'drain', 'sheath', 'dilator', 'stitch', 'thread',
  'size', 'number', 'diameter', 'bore', 'lumen', 'calib', 'thick', 'thin', 'fine', 'wide', 'narrow', 'flow',
  'large', 'small', 'big', 'great', 'strong', 'strength', 'absorb', 'filament', 'braid', 'twist', 'taper',
  'cutting', 'blunt', 'spatula', 'diamond', 'colour', 'color', 'hub',
]; // biome-ignore format: a table

/** Signs that may stand inside a word in the source without being part of it for a reader. */
const INSIDE_WORDS = /[*_~\\[\]\u00AD\u200B-\u200D\u2060\uFEFF]|&(?:shy|zwj|zwnj|ZeroWidthSpace|NoBreak);/g;

const MATERIAL_WORDS = MATERIALS.flatMap((material) => [material.name, ...material.names]);

const WORDS = new RegExp([...NUMBER_WORDS, ...RULE_WORDS, ...MATERIAL_WORDS.map(firstWord)].join('|'), 'i');

/** First run of letters of a name: long enough to know it by, short enough to survive a line break. */
function firstWord(name: string): string {
  return /[a-z]{3,}/i.exec(name)?.[0] ?? name;
}

/** Whether text may hold a size, a number in words or a rule about sizes. Linear in its length. */
export function mayHoldSizes(text: string): boolean {
  return /\p{N}/u.test(text) || WORDS.test(text.replace(INSIDE_WORDS, ''));
}
