/** "#1", "No. 1", "number 2", "size 0", "size seven": a number that says it is a size, but not of which system. */
import { DIGITS, WORD_NUMBER } from '../../server/src/mentions/words/numbers.ts';
import type { Notation } from './model.ts';
import { readSeries, series } from './series.ts';

const NUMBER = '(?:[0-9]{1,2}(?:[.,](?:5|0))?|[0-9]{1,2}½)';
const START = '(?<![0-9A-Za-zÀ-ÿ_&/#.-])';
const END = '(?![0-9A-Za-zÀ-ÿ_%]|[.,:/⁄-][0-9])';
const plausible = (value: number): boolean => value >= 0 && value <= 60;

export const numbered: Notation = {
  id: 'numbered',
  title: 'Numbered size',
  about: 'A hash, No., number or size before a bare number; the thing it is written on tells the system.',
  pattern: `${START}(?:#[\\s]?|(?:no|nos|nr|nº|n°)\\.?[\\s]|(?:numbers?|sizes?|größe|talla|tamaño|taille)[\\s](?:an?[\\s])?)(?:${series(NUMBER, 5)})${END}`,
  contextual: true,
  anyCase: true,
  read: (text) => readSeries(text, DIGITS, plausible, 'before'),
  examples: ['#1', 'No. 1', 'number 2', 'size 0', 'sizes 7 and 8'],
  counterExamples: ['a number of 2s9', 'sizes'],
};

export const numberedSpoken: Notation = {
  id: 'numbered-spoken',
  title: 'Numbered size in words',
  about: 'A spoken number that says it is a size: number two, size seven and a half.',
  pattern: `${START}(?:number|no\\.|size|sizes)[\\s](?:an?[\\s])?(?:${series(WORD_NUMBER, 5)})(?:[\\s]and[\\s]a[\\s]half)?${END}(?![\\s-](?:oh|aught|ought|nought|zero|gauge|french))`,
  contextual: true,
  anyCase: true,
  read: (text) => {
    const half = /[\s]and[\s]a[\s]half$/i.exec(text);
    const items = readSeries(half ? text.slice(0, half.index) : text, WORD_NUMBER, plausible, 'before');
    const last = items.at(-1);
    if (!half || !last) return items;
    const values = [...last.values.slice(0, -1), last.values.at(-1)! + 0.5];
    return [...items.slice(0, -1), { ...last, end: text.length, values, decimals: 1 }];
  },
  examples: ['number two', 'size seven', 'size seven and a half'],
  counterExamples: ['number three-oh', 'the number of them'],
};
