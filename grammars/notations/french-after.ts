/** "14 Fr", "14F", "14 Charrière", "4-5-7 French", "five French". */
import { DIGITS, WORD_NUMBER } from '../../server/src/mentions/words/numbers.ts';
import { alternation, FRENCH_WORDS } from '../../server/src/mentions/words/units.ts';
import type { Notation } from './model.ts';
import { AFTER, BEFORE, readSeries, series } from './series.ts';

const NUMBER = '[0-9]{1,2}(?:[.,][0-9])?';
const plausible = (value: number): boolean => value >= 0.3 && value <= 99;
const UNIT = `[\\s]?-?[\\s]?(?:g[\\s]fr|${alternation(FRENCH_WORDS)})s?`;

export const frenchAfter: Notation = {
  id: 'french-after',
  title: 'French after the number',
  about: 'Catheters, tubes, drains, sheaths: the number, then Fr, F, Ch or Charrière.',
  system: 'french',
  pattern: `${BEFORE}#?(?:${series(NUMBER)})${UNIT}\\+?${AFTER}(?!-(?:fdg|fluor|dopa|psma|choline|labell?ed))`,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, plausible),
  examples: [
    '14 Fr',
    '14F',
    '14 FR',
    '14-French',
    '14 Charrière',
    '14 Ch',
    '4-5-7 French',
    '8.5 Fr',
    '8 to 12 Fr',
  ],
  counterExamples: ['18F-FDG', '98.6 °F', '14 friends'],
};

export const frenchSpoken: Notation = {
  id: 'french-spoken',
  title: 'French in words',
  about: 'Spoken French: the number in words, then French or Charrière.',
  system: 'french',
  pattern: `${BEFORE}(?!one[\\s-]french(?![\\s-](?:catheter|sheath|tube|drain|micro)))(?:${series(WORD_NUMBER)})[\\s-](?:french|charri[eè]re)${AFTER}(?![\\s](?:sizes|steps|units|numbers)(?![a-z]))(?![\\s](?:to|in|per|make|makes|equals?|is)[\\s](?:(?:one|a|the|every|each|1)[\\s])?(?:third|millimet|mm))`,
  anyCase: true,
  read: (text) => readSeries(text, WORD_NUMBER, plausible),
  examples: ['five French', 'fourteen or sixteen French'],
  counterExamples: [
    'a French tube',
    'one French is a third',
    'three French to the millimetre',
    'two French sizes up',
  ],
};
