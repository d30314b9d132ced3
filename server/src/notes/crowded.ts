/**
 * Bounds on what is parsed. Markdown has texts, none written by a hand, on which a parser needs time with the
 * square of their length: many signs in one paragraph that open something and never close it, and containers
 * nested by the hundred. Bounding both keeps reading linear.
 */
import type { Event, Token } from 'micromark-util-types';

/**
 * Signs that may open markup, and long runs of signs that may end a bare address; the product of their
 * number and the length of the paragraph bounds the work spent on it. A dense paragraph of 4,000 characters
 * with 500 such signs is within it.
 */
const OPENERS = /[`$<[*_~&]|[!"')*,.:;?_~]{16,}/g;
const WORK_LIMIT = 2_000_000;

/** Signs that open what is not prose: text full of them is better not read at all. */
const HIDING = /[`$<]|https?:|www\./i;

/** More containers at the start of one line than this are not read. */
const DEEP = /^(?![ \t]*([-*])(?:[ \t]*\1)*[ \t]*$)(?:[ \t]*(?:>|[-+*](?=\s|$)|\d{1,9}[.)](?=\s|$))){65}/m;

/** Whether some line opens containers without end. */
export function isTooDeep(markdown: string): boolean {
  return DEEP.test(markdown);
}

function openers(text: string): number {
  let count = 0;
  for (const match of text.matchAll(OPENERS)) count += match[0].length;
  return count;
}

/** The pieces of text, line by line, that make up one paragraph, heading or cell. */
function chain(first: Token): Token[] {
  const tokens: Token[] = [];
  for (let token: Token | undefined = first; token; token = token.next) tokens.push(token);
  return tokens;
}

/**
 * Takes text over the limit out of what will be parsed as inline Markdown. Such text stays in the events as
 * `chunkText`, or as `chunkHidden` when code, HTML, math or addresses may be in it.
 */
export function withhold(markdown: string, events: readonly Event[]): void {
  for (const [step, token] of events) {
    if (step !== 'enter' || token.contentType !== 'text' || token.previous) continue;
    const tokens = chain(token);
    const text = tokens.map((part) => markdown.slice(part.start.offset, part.end.offset)).join('');
    if (text.length < 1000 || openers(text) * text.length <= WORK_LIMIT) continue;
    for (const part of tokens) {
      part.contentType = undefined;
      if (HIDING.test(text)) part.type = 'chunkHidden' as Token['type'];
    }
  }
}
