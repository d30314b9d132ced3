/** New texts from old ones. */
import { DICTIONARY } from './dictionary.ts';
import type { Chance } from './random.ts';

/** Length above which texts are cut, UTF-16 code units: long ones are the business of the tests of growth. */
const LONGEST = 1500;

type Mutation = (text: string, chance: Chance, other: string) => string;

function stretch(text: string, chance: Chance, longest: number): [number, number] {
  const start = chance.below(text.length + 1);
  return [start, Math.min(text.length, start + 1 + chance.below(longest))];
}

const splice = (text: string, start: number, end: number, put: string): string =>
  text.slice(0, start) + put + text.slice(end);

const insert: Mutation = (text, chance) => {
  const at = chance.below(text.length + 1);
  return splice(text, at, at, chance.pick(DICTIONARY));
};

const replace: Mutation = (text, chance) =>
  splice(text, ...stretch(text, chance, 6), chance.pick(DICTIONARY));

const remove: Mutation = (text, chance) => splice(text, ...stretch(text, chance, 12), '');

const repeat: Mutation = (text, chance) => {
  const [start, end] = stretch(text, chance, 30);
  return splice(text, end, end, text.slice(start, end).repeat(1 + chance.below(5)));
};

const graft: Mutation = (text, chance, other) => {
  const at = chance.below(text.length + 1);
  return splice(text, at, at, other.slice(...stretch(other, chance, 120)));
};

const join: Mutation = (text, chance, other) => text + chance.pick(['', ' ', '\n', '\n\n', '. ']) + other;

/** Words and punctuation by their ends, where one may be changed for another. */
function exchangeMatches(pattern: RegExp, put: (chance: Chance) => string): Mutation {
  return (text, chance, other) => {
    const places = [...text.matchAll(pattern)];
    if (places.length === 0) return insert(text, chance, other);
    const { index, 0: found } = chance.pick(places);
    return splice(text, index, index + found.length, put(chance));
  };
}

const number = exchangeMatches(/\d{1,20}/g, (chance) => String(chance.below(chance.pick([3, 11, 40, 1000]))));
const word = exchangeMatches(/[a-zA-Z]{1,30}/g, (chance) => chance.pick(DICTIONARY));
const space = exchangeMatches(/\s{1,30}/g, (chance) =>
  chance.pick(['\n', '\n\n', '\r\n', '\t', '', '\u00a0', ' > ']),
);

const letterCase: Mutation = (text, chance) => {
  const [start, end] = stretch(text, chance, 20);
  const part = text.slice(start, end);
  return splice(text, start, end, chance.next() < 0.5 ? part.toUpperCase() : part.toLowerCase());
};

const MUTATIONS = [
  insert,
  insert,
  replace,
  replace,
  remove,
  repeat,
  graft,
  join,
  number,
  number,
  word,
  word,
  space,
  letterCase,
];

/** `text` changed in one or several ways, with parts of `other`. */
export function mutate(text: string, other: string, chance: Chance): string {
  let result = text;
  for (let times = 1 + chance.below(4); times > 0; times--)
    result = chance.pick(MUTATIONS)(result, chance, other).slice(0, LONGEST);
  return result;
}
