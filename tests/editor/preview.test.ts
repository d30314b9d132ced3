/** Tooltips in the preview: tokens as markdown-it makes them, wrapped and otherwise left alone. */
import { expect, test } from 'vitest';
import { type Tip, type Token, withTips } from '../../client/src/preview-marks.ts';

class Made implements Token {
  tag = '';
  nesting = 0;
  attrs: [string, string][] | null = null;
  constructor(
    public type: string,
    public content: string,
    public map: [number, number] | null = null,
    public children: Token[] | null = null,
  ) {}
}

const inline = (line: number, ...texts: string[]): Token =>
  new Made(
    'inline',
    texts.join(''),
    [line, line + 1],
    texts.map((text) => new Made('text', text)),
  );

const tip = (line: number, text: string): Tip => ({ line, text, tip: `about ${text}` });

/** "a [2-0|about 2-0] b" for the children of an inline token. */
const shown = (token: Token | undefined): string =>
  (token?.children ?? [])
    .map(({ type, content, nesting, attrs }) =>
      type !== 'sizewright'
        ? content
        : nesting === 1
          ? `[${attrs?.find(([name]) => name === 'title')?.[1]}|`
          : ']',
    )
    .join('');

test('a size is wrapped, the words around it stay', () => {
  const [token] = withTips([inline(0, 'Close with 2-0 silk.')], [tip(0, '2-0')]);
  expect(shown(token)).toBe('Close with [about 2-0|2-0] silk.');
});

test('the same size twice is wrapped twice, in order', () => {
  const [token] = withTips([inline(0, '18 G, then 18 G.')], [tip(0, '18 G'), tip(0, '18 G')]);
  expect(shown(token)).toBe('[about 18 G|18 G], then [about 18 G|18 G].');
});

test('tips of other lines are not used; cells of one row share theirs', () => {
  const cells = [inline(2, '14 Fr'), inline(2, '4.67 mm')];
  const tips = [tip(0, '9 Fr'), tip(2, '14 Fr'), tip(2, '4.67 mm'), tip(5, '14 Fr')];
  expect(withTips(cells, tips).map(shown)).toEqual(['[about 14 Fr|14 Fr]', '[about 4.67 mm|4.67 mm]']);
});

test('a size that markup splits, and tokens without text, are left as they are', () => {
  const split = inline(0, '**18', '** G');
  const heading = new Made('heading_open', '', [0, 1]);
  expect(withTips([heading, split], [tip(0, '18 G')]).map((token) => token.content)).toEqual([
    '',
    '**18** G',
  ]);
});

test('the tokens that the preview keeps are not changed', () => {
  const kept = inline(0, 'Close with 2-0 silk.');
  withTips([kept], [tip(0, '2-0')]);
  expect(shown(kept)).toBe('Close with 2-0 silk.');
});
