/** A key that marks a wrong answer is one finding, about the key: no other check speaks of the same statement. */
import { expect, it } from 'vitest';
import { analyseWhole } from '../../server/src/course/index.ts';

it.each([
  ['1. A 4-0 suture is thicker than a 2-0 suture. (T)\n', '4-0 is thicker than 2-0'],
  ['1. 4-0 means three zeros. (T)\n', 'the figure before “-0” is not the number of zeros'],
  ['1. French is the diameter in millimetres. (T)\n', 'French is the diameter in millimetres'],
  [
    '1. A reverse cutting needle has its third edge on the inner curve. (T)\n',
    'the edge of a reverse cutting needle lies on the inner curve',
  ],
  ['What colour is a 20 G cannula?\n\n- a. Pink\n- b. Green\n\nAnswer: b\n', '20 G is green'],
  ['What is 12 Fr in mm?\n\n- a. 4 mm\n- b. 6 mm\n\nAnswer: b\n', '12 Fr is 6 mm'],
])('%s', (note, said) => {
  const { findings } = analyseWhole(note);
  expect(findings.map(({ check, says }) => [check, says])).toEqual([['quiz-key', `The key says ${said}.`]]);
});

it.each(['ask X', 'not yes', 'see box x'])(
  'a cell that says “%s” is no tick: nothing is keyed, and a statement set out to be judged asserts nothing',
  (cell) => {
    const note = `| Statement | True | False |\n|---|---|---|\n| A 4-0 is thicker than a 2-0. | ${cell} | |\n`;
    expect(analyseWhole(note).findings.map(({ check }) => check)).toEqual([]);
  },
);
