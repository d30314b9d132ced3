/** Marks for errors left in on purpose: what each covers, against a plain reading of the rule, character by character. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseWhole } from '../../server/src/course/index.ts';
import { runs } from '../notes/markdown-pieces.ts';

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.';
const MARK = '<!-- wrong on purpose: for the quiz -->';

const outcome = (text: string): string[] =>
  analyseWhole(text).findings.map(({ check, deliberate }) =>
    deliberate === undefined ? check : `covered: ${deliberate}`,
  );

describe('a mark', () => {
  it.each([
    ['above the block', `${MARK}\n${WRONG}\n`, ['covered: for the quiz']],
    ['above the block, with blank lines', `${MARK}\n\n\n${WRONG}\n`, ['covered: for the quiz']],
    ['over what starts with its block', `${MARK}\n4-O nylon.\n`, ['covered: for the quiz']],
    [
      'above the block, with a line of blanks between',
      `${MARK}\n \t\n${WRONG}\n \n${WRONG}\n`,
      ['covered: for the quiz', 'size-comparison'],
    ],
    ['at the end of the note', `${WRONG}\n\n${MARK}`, ['size-comparison', 'idle-mark']],
    [
      'with an empty line of old machines below the block',
      `${MARK}\r\r${WRONG}\r\r${WRONG}\r`,
      ['covered: for the quiz', 'size-comparison'],
    ],
    ['on the line', `${WRONG} ${MARK}\n`, ['covered: for the quiz']],
    ['in a quote', `> ${MARK}\n> ${WRONG}\n`, ['covered: for the quiz']],
    ['before another block', `${MARK}\n\nWash your hands.\n\n${WRONG}\n`, ['idle-mark', 'size-comparison']],
    ['below the block', `${WRONG}\n\n${MARK}\n`, ['size-comparison', 'idle-mark']],
    [
      'with nothing after the colon',
      `<!-- wrong on purpose: -->\n${WRONG}\n`,
      ['idle-mark', 'size-comparison'],
    ],
    ['without a reason', `<!-- wrong on purpose -->\n${WRONG}\n`, ['idle-mark', 'size-comparison']],
    [
      'over a block of lines',
      `${MARK}\n${WRONG}\n${WRONG}\n\n${WRONG}\n`,
      ['covered: for the quiz', 'covered: for the quiz', 'size-comparison'],
    ],
    [
      'over several lines of its own',
      `<!-- wrong on purpose:\nfor the\nquiz -->\n${WRONG}\n`,
      ['covered: for the\nquiz'],
    ],
    [
      'twice over one finding: the first counts',
      `${MARK}\n${WRONG} <!-- wrong on purpose: again -->\n`,
      ['covered: for the quiz', 'idle-mark'],
    ],
    ['with line endings of Windows', `${MARK}\r\n\r\n${WRONG}\r\n`, ['covered: for the quiz']],
    [
      'over a block of lines with line endings of Windows',
      `${MARK}\r\n${WRONG}\r\n${WRONG}\r\n\r\n${WRONG}\r\n`,
      ['covered: for the quiz', 'covered: for the quiz', 'size-comparison'],
    ],
    [
      'on the line, with line endings of old machines',
      `${WRONG} ${MARK}\r${WRONG}\r`,
      ['covered: for the quiz', 'size-comparison'],
    ],
  ])('%s', (_, text, expected) => {
    expect(outcome(text)).toEqual(expected);
  });

  it('that can go says so, one without a reason asks for it', () => {
    expect(analyseWhole(`${MARK}\n`).findings).toMatchObject([
      {
        says: 'This mark covers no finding.',
        holds: 'It can go.',
        unnecessary: true,
        fixes: [
          {
            title: 'Remove the mark',
            safety: 'safe',
            edits: [{ span: { start: 0, end: MARK.length }, text: '' }],
          },
        ],
      },
    ]);
    expect(analyseWhole('<!-- wrong on purpose: -->\n').findings).toEqual([
      {
        check: 'idle-mark',
        kind: 'style',
        severity: 'hint',
        span: { start: 0, end: 26 },
        says: 'This mark gives no reason.',
        holds: 'Write why the error is left in: <!-- wrong on purpose: reason -->.',
        source: 'this checker',
        sources: [],
        fixes: [],
        related: [],
        derivation: [],
        unnecessary: false,
      },
    ]);
  });
});

/** The rule as it is told: a mark with prose on its line covers the line, any other the block below. */
function plainly(text: string, mark: { start: number; end: number }): { start: number; end: number } {
  const lines: { start: number; end: number; blank: boolean }[] = [];
  let start = 0;
  for (const line of text.split('\n')) {
    lines.push({ start, end: start + line.length, blank: line.trim() === '' });
    start += line.length + 1;
  }
  const own = lines.filter(({ start, end }) => end >= mark.start && start <= mark.end);
  const [from, to] = [own[0]!.start, own.at(-1)!.end];
  if (/[^\s>*+-]/.test(text.slice(from, mark.start) + text.slice(mark.end, to)))
    return { start: from, end: to };
  const below = lines.slice(lines.indexOf(own.at(-1)!) + 1);
  const first = below.findIndex(({ blank }) => !blank);
  if (first < 0) return { start: text.length, end: text.length };
  const rest = below.slice(first).findIndex(({ blank }) => blank);
  return { start: below[first]!.start, end: rest < 0 ? text.length : below[first + rest]!.start };
}

it('covers what the rule says, however marks crowd', () => {
  const piece = fc.constantFrom(
    `${WRONG} `,
    `${WRONG}\n`,
    '\n',
    '\n\n',
    '> ',
    '- ',
    '<!-- wrong on purpose: a -->',
    '<!-- wrong on purpose: b\nc -->',
    'Hands. ',
  );
  const property = fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
    const { note, findings } = analyseWhole(pieces.join(''));
    const marks = note.comments.map(({ span, text }) => ({
      reason: text.trim().slice('wrong on purpose: '.length),
      covers: plainly(note.text, span),
    }));
    for (const { check, span, deliberate } of findings) {
      if (check === 'idle-mark') continue;
      const by = marks.find(({ covers }) => span.start >= covers.start && span.start < covers.end);
      expect(deliberate).toBe(by?.reason);
    }
  });
  fc.assert(property, { numRuns: runs(300) });
});
