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
  content: string;
  map: [number, number] | null;
  children: Token[] | null;
  attrs: [string, string][] | null;
}

export interface State {
  readonly env: unknown;
  readonly tokens: Token[];
  readonly Token: new (type: string, tag: string, nesting: -1 | 0 | 1) => Token;
}

export interface MarkdownReader {
  readonly core: { readonly ruler: { push(name: string, rule: (state: State) => void): void } };
}

/** `tips` in the order of their lines. A size that markup splits is left as it is. */
export function markSizes(state: State, tips: readonly Tip[]): void {
  let next = 0;
  for (const token of state.tokens) {
    if (token.type !== 'inline' || token.map === null || token.children === null) continue;
    const [from, to] = token.map;
    while (next < tips.length && tips[next]!.line < from) next++;
    const inside: Tip[] = [];
    // The cells of a table row share its lines, so tips are not used up here.
    for (let i = next; i < tips.length && tips[i]!.line < to; i++) inside.push(tips[i]!);
    if (inside.length > 0) token.children = marked(state, token.children, inside);
  }
}

function marked(state: State, children: readonly Token[], tips: readonly Tip[]): Token[] {
  let next = 0;
  return children.flatMap((child) => {
    if (child.type !== 'text') return [child];
    const parts: Token[] = [];
    let rest = child.content;
    for (let hit = firstHit(rest, tips, next); hit !== undefined; hit = firstHit(rest, tips, next)) {
      const tip = tips[hit.index]!;
      next = hit.index + 1;
      parts.push(text(state, rest.slice(0, hit.at)), ...wrapped(state, tip));
      rest = rest.slice(hit.at + tip.text.length);
    }
    return [...parts, text(state, rest)].filter((token) => token.type !== 'text' || token.content !== '');
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

function wrapped(state: State, { text: written, tip }: Tip): Token[] {
  const open = new state.Token('sizewright_open', 'span', 1);
  open.attrs = [
    ['class', 'sizewright-size'],
    ['title', tip],
  ];
  return [open, text(state, written), new state.Token('sizewright_close', 'span', -1)];
}

function text(state: State, content: string): Token {
  const token = new state.Token('text', '', 0);
  token.content = content;
  return token;
}
