/** Wraps sizes in the tokens of a Markdown reader. Knows no editor. */

/** A size in a note: its line, as written, what to say about it. */
export interface Tip {
  /** 0-based. */
  readonly line: number;
  readonly text: string;
  readonly tip: string;
}

/** The part of the preview's Markdown reader that is used. */
export interface Token {
  type: string;
  tag: string;
  nesting: number;
  content: string;
  map: [number, number] | null;
  children: Token[] | null;
  attrs: [string, string][] | null;
}

export interface MarkdownReader {
  readonly renderer: { render(tokens: Token[], options: unknown, env: unknown): string };
}

/**
 * The tokens with sizes wrapped; the given ones are kept by the preview and stay as they are. `tips` in the order of
 * their lines. A size that markup splits is left as it is.
 */
export function withTips(tokens: readonly Token[], tips: readonly Tip[]): Token[] {
  let next = 0;
  return tokens.map((token) => {
    if (token.type !== 'inline' || token.map === null || token.children === null) return token;
    const [from, to] = token.map;
    while (next < tips.length && tips[next]!.line < from) next++;
    const inside: Tip[] = [];
    // The cells of a table row share its lines, so tips are not used up here.
    for (let i = next; i < tips.length && tips[i]!.line < to; i++) inside.push(tips[i]!);
    return inside.length === 0 ? token : like(token, { children: marked(token.children, inside) });
  });
}

/** A token of the same making with some fields changed. */
const like = (token: Token, fields: Partial<Token>): Token =>
  Object.assign(Object.create(Object.getPrototypeOf(token)), token, fields);

function marked(children: readonly Token[], tips: readonly Tip[]): Token[] {
  let next = 0;
  return children.flatMap((child) => {
    if (child.type !== 'text') return [child];
    const parts: Token[] = [];
    let rest = child.content;
    for (let hit = firstHit(rest, tips, next); hit !== undefined; hit = firstHit(rest, tips, next)) {
      const tip = tips[hit.index]!;
      next = hit.index + 1;
      parts.push(like(child, { content: rest.slice(0, hit.at) }), ...wrapped(child, tip));
      rest = rest.slice(hit.at + tip.text.length);
    }
    return [...parts, like(child, { content: rest })].filter(
      (token) => token.type !== 'text' || token.content !== '',
    );
  });
}

function firstHit(
  rest: string,
  tips: readonly Tip[],
  from: number,
): { index: number; at: number } | undefined {
  for (let index = from; index < tips.length; index++) {
    const at = rest.indexOf(tips[index]!.text);
    if (at >= 0) return { index, at };
  }
  return undefined;
}

function wrapped(child: Token, { text, tip }: Tip): Token[] {
  const mark = { type: 'sizewright', tag: 'span', content: '' };
  const attrs: [string, string][] = [
    ['class', 'sizewright-size'],
    ['title', tip],
  ];
  return [
    like(child, { ...mark, nesting: 1, attrs }),
    like(child, { content: text }),
    like(child, { ...mark, nesting: -1, attrs: null }),
  ];
}
