/** What the fuzzer starts from and puts in: Markdown's own signs, every notation, and the words of the sentence bank. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { NOTATIONS } from '../../../grammars/notations/index.ts';

const MARKDOWN = [
  '\n', '\n\n', '\r\n', '\r', '\t', ' ', '  \n', '    ', '# ', '## ', '- ', '* ', '1. ', '2) ', '- [x] ', '- [ ] ', '> ', '***\n',
  '---\n', '===\n', '```\n', '```', '~~~\n', '`', '``', '$', '$$\n', '**', '*', '_', '__', '~~', '|', ' | ', '\n|-|-|\n', '|:-:|\n',
  '[', ']', '[^1]', '[^1]: ', '[a]: x\n', '](x)', '](x "t")', '![', '<!--', '-->', '<!-- 2-0 -->', '<b>', '</b>', '<div>\n', '<br>',
  '<script>', '<', '>', '&nbsp;', '&amp;', '&#49;', '&ge;', '\\', '\\|', '\\-', '+++\n', '---\ntitle: a\n---\n', '{/* a */}', '{a}',
  'WEBVTT\n\n', '00:00:01.000 --> 00:00:02.000\n', '1\n00:00:01,000 --> 00:00:02,000\n', '<v A>', '\0', '\uFEFF', '\u2028', '\u00a0',
  '😀', '𝟏𝟖', '\ud800', '\udc00', '\u200b', '\u202e', 'é', '½', '¼', '–', '—', '−', '×', '≥', '≤', '±', 'µ', '″', '”', '⅓', '０', '١',
]; // biome-ignore format: a table

const WORDS = [
  ' is thicker than ', ' is thinner than ', ' wider than ', ' finer than ', 'the larger the gauge number, the ', ' or ', ' and ', ' to ',
  ' not ', 'never ', 'true or false: ', 'Answer: ', 'a. ', 'b) ', '(A) ', 'which ', '? ', '. ', ', ', '; ', ': ', '(', ')', '"', '“', '”',
  'silk ', 'nylon', 'needle ', 'cannula ', 'catheter ', 'suture ', 'wire ', 'French ', 'gauge ', 'hub ', 'pink', 'green', 'mm', ' mm ',
  'inch', 'in ', 'Fr', 'G', 'Ch', 'USP ', 'EP ', 'metric ', 'size ', 'No. ', '#', 'from thick to thin: ', 'from ', ' = ', ' ≈ ', ' × ',
  ' divided by 3', 'times three', 'one third of a millimetre', '0', '00', '000', '1', '2', '3', '-0', '/0', '2-0', '3/0', '18', '0.035',
  '1e9', '99999999999999999999', '0.0000001', '-1', '1,5', '1.000.000', 'nullnull', '__proto__', 'constructor', 'toString ',
]; // biome-ignore format: a table

/** Pieces to insert. */
export const DICTIONARY: readonly string[] = [
  ...MARKDOWN,
  ...WORDS,
  ...NOTATIONS.flatMap(({ examples, counterExamples }) => [...examples, ...counterExamples]),
];

function linesOf(folder: string, name: string): string[] {
  const lines = readFileSync(join(folder, name), 'utf8').split('\n');
  return lines.filter((line) => line.trim() !== '' && line.length < 500);
}

/** Texts to start from: the lines of the bank, singly, and whole notes of the demo course cut into parts. */
export function seeds(root: string): string[] {
  const bank = join(root, 'tests/claims/bank');
  const course = join(root, 'tests/course');
  const lines = readdirSync(bank).flatMap((name) => linesOf(bank, name));
  const parts = readdirSync(course)
    .filter((name) => /\.(?:md|vtt)$/.test(name))
    .flatMap((name) => readFileSync(join(course, name), 'utf8').match(/[\s\S]{1,600}(?:\n|$)/g) ?? []);
  return [...lines.flatMap((line) => line.split('|').map((cell) => cell.trim())), ...parts].filter(
    (text) => text !== '',
  );
}
