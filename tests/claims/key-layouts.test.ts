/**
 * Every usual way to set out choices with every usual way to give their key: a wrong key is found, a right one is silent.
 * Rules behind the questions: ISO 9626 and ISO 6009, UCUM, USP <861>, ISO 10555-5 for the hubs.
 */
import { describe, expect, test, vi } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';

vi.setConfig({ testTimeout: 240_000 });

interface Question {
  readonly stem: string;
  readonly choices: readonly string[];
  readonly right: number;
  readonly wrong: number;
}

const QUESTIONS: readonly Question[] = [
  {
    stem: 'Which cannula has the widest bore?',
    choices: ['22 G', '18 G', '14 G', '20 G'],
    right: 2,
    wrong: 0,
  },
  { stem: 'How wide is a 12 Fr catheter?', choices: ['12 mm', '4 mm', '6 mm', '3 mm'], right: 1, wrong: 2 },
  { stem: 'Which suture is the thinnest?', choices: ['2-0', '0', '5-0', '3-0'], right: 2, wrong: 0 },
  { stem: 'The hub of a 20 G IV cannula is', choices: ['green', 'pink', 'blue', 'grey'], right: 1, wrong: 2 },
];

const small = (i: number): string => 'abcd'[i]!;
const large = (i: number): string => 'ABCD'[i]!;

type Layout = (question: Question, number: string) => string;

/** Choices below their stem, one a line. */
const lines =
  (line: (choice: string, i: number) => string, gap = '\n\n'): Layout =>
  ({ stem, choices }, number) =>
    `${number}${stem}${gap}${choices.map(line).join('\n')}\n`;

/** Choices in a row. */
const row =
  (one: (choice: string, i: number) => string, between: string, gap = ' '): Layout =>
  ({ stem, choices }, number) =>
    `${number}${stem}${gap}${choices.map(one).join(between)}\n`;

const CHOICES: Readonly<Record<string, Layout>> = {
  'a) lines': lines((choice, i) => `${small(i)}) ${choice}`),
  'A. lines': lines((choice, i) => `${large(i)}. ${choice}`),
  '(a) lines': lines((choice, i) => `(${small(i)}) ${choice}`),
  '- a) list': lines((choice, i) => `- ${small(i)}) ${choice}`),
  '* A: list': lines((choice, i) => `* ${large(i)}: ${choice}`),
  'nested lines': lines((choice, i) => `   ${small(i)}. ${choice}`, '\n'),
  'nested list': lines((choice, i) => `   - ${large(i)}. ${choice}`, '\n'),
  'A – lines': lines((choice, i) => `${large(i)} – ${choice}  `),
  'bold letters': lines((choice, i) => `**${large(i)}** ${choice}\\`),
  'a) in a row': row((choice, i) => `${small(i)}) ${choice}`, ' '),
  'A. in a row': row((choice, i) => `${large(i)}. ${choice}`, ', '),
  '(A) in a row': row((choice, i) => `(${large(i)}) ${choice}`, '; ', '\n'),
  'strokes between': row((choice, i) => `${small(i)} ${choice}`, ' / ', '\n'),
  table: lines((choice, i) => `${i === 0 ? '| | |\n|---|---|\n' : ''}| ${large(i)} | ${choice} |`),
};

type Key = (chosen: number, choices: readonly string[]) => string;

const KEYS: Readonly<Record<string, Key>> = {
  'Answer: b': (i) => `Answer: ${small(i)}`,
  '**Answer:** B': (i) => `**Answer:** ${large(i)}`,
  'Answer: b) choice': (i, choices) => `Answer: ${small(i)}) ${choices[i]}`,
  'Answer: choice': (i, choices) => `Answer: ${choices[i]}`,
  'Correct answer: B.': (i) => `Correct answer: ${large(i)}.`,
  'Correct: (b)': (i) => `Correct: (${small(i)})`,
  'Key: b': (i) => `Key: ${small(i)}`,
  'Solution: B': (i) => `Solution: ${large(i)}`,
  'The answer is B.': (i) => `The answer is ${large(i)}.`,
  'B is correct.': (i) => `${large(i)} is correct.`,
  '> Answer: B': (i) => `> Answer: ${large(i)}`,
  '→ B': (i) => `→ ${large(i)}`,
  '(B)': (i) => `(${large(i)})`,
};

const SECTIONS: Readonly<Record<string, (chosen: number) => string>> = {
  'a list': (i) => `## Answers\n\n1. ${large(i)}\n2. A`,
  'a row': (i) => `## Answers\n\n1 ${small(i)}, 2 a`,
  'a label': (i) => `Key: 1${small(i)}, 2a`,
  dashes: (i) => `Answers: 1-${large(i)}, 2-A`,
  colons: (i) => `Answers: 1: ${small(i)}; 2: a`,
  arrows: (i) => `Answers: 1 → ${large(i)}, 2 → A`,
  'a table': (i) => `## Answers\n\n| Question | Answer |\n|---|---|\n| 1 | ${large(i)} |\n| 2 | A |`,
  'a table of columns': (i) => `## Answers\n\n| 1 | 2 |\n|---|---|\n| ${large(i)} | A |`,
  questions: (i) => `### Answer key\n\n- Q1: ${large(i)}\n- Q2: A`,
};

const OTHER = '2. What does ISO stand for?\n\na) a body for standards\nb) an oxygen mask\n';

const contradicted = (text: string): boolean =>
  analyse(text).findings.some(({ kind }) => kind === 'contradiction');

/** What goes wrong with one layout of choices. */
function failures(make: (question: Question, chosen: number) => string): string[] {
  return QUESTIONS.flatMap((question) => [
    ...(contradicted(make(question, question.right)) ? [`right, yet reported: ${question.stem}`] : []),
    ...(contradicted(make(question, question.wrong)) ? [] : [`wrong, yet silent: ${question.stem}`]),
  ]);
}

describe.each(Object.entries(CHOICES))('choices: %s', (_, layout) => {
  test.each(Object.entries(KEYS))('key below: %s', (__, key) => {
    expect(failures((question, i) => `${layout(question, '')}\n${key(i, question.choices)}\n`)).toEqual([]);
  });

  test.each(Object.entries(SECTIONS))('key in a section of its own: %s', (__, section) => {
    expect(
      failures((question, i) => `# Quiz\n\n${layout(question, '1. ')}\n${OTHER}\n${section(i)}\n`),
    ).toEqual([]);
  });
});
