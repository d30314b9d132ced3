/**
 * The Markdown parser: unified with remark (CommonMark, GFM, front matter, math). Positions in the syntax
 * tree are not exact inside text, so the tokens themselves are handed on, each with its source offsets.
 */
import type { CompileContext, Extension, Token } from 'mdast-util-from-markdown';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkMath from 'remark-math';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';

/** Receives every token in source order; offsets are relative to the parsed text. */
export interface TokenSink {
  enter(type: string, start: number, end: number): void;
  exit(type: string, start: number, end: number): void;
}

let sink: TokenSink | undefined;

/** Adds a listener for tokens to the extensions remark-parse takes from the processor's data. */
function listenToTokens(this: Processor): void {
  const data = this.data() as { fromMarkdownExtensions?: unknown[] };
  const listener: Extension = {
    beforeEnter(this: CompileContext, token: Token) {
      sink?.enter(token.type, token.start.offset, token.end.offset);
    },
    afterExit(this: CompileContext, token: Token) {
      sink?.exit(token.type, token.start.offset, token.end.offset);
    },
  };
  data.fromMarkdownExtensions ??= [];
  data.fromMarkdownExtensions.push(listener);
}

const processor = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(remarkFrontmatter, ['yaml', 'toml'])
  .use(remarkMath)
  .use(listenToTokens)
  .freeze();

/** Parses Markdown without a leading byte order mark and tells `to` every token. */
export function parseMarkdown(markdown: string, to: TokenSink): void {
  sink = to;
  try {
    processor.parse(markdown);
  } finally {
    sink = undefined;
  }
}
