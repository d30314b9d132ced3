/**
 * The Markdown parser: the grammar of remark (CommonMark, GFM, front matter, math), set up with unified. A
 * syntax tree has no exact positions inside text, so the tokens are handed on instead, each with its offsets.
 */
import { parse, preprocess } from 'micromark';
import { combineExtensions } from 'micromark-util-combine-extensions';
import { subtokenize } from 'micromark-util-subtokenize';
import type { Construct, ConstructRecord, Event, Extension } from 'micromark-util-types';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkMath from 'remark-math';
import { unified } from 'unified';
import { isTooDeep, withhold } from './crowded.ts';

/** Receives every token in source order; offsets are relative to the parsed text. */
export interface TokenSink {
  enter(type: string, start: number, end: number): void;
  exit(type: string, start: number, end: number): void;
}

const processor = unified().use(remarkGfm).use(remarkFrontmatter, ['yaml', 'toml']).use(remarkMath).freeze();

const { micromarkExtensions } = processor.data() as { micromarkExtensions: Extension[] };

/** Combined once: remark-parse would do so again for every stretch, and build a tree nobody reads. */
const grammar = combineExtensions(micromarkExtensions);

/**
 * Every letter may begin a bare address, so that the parser stops at each and starts a piece of text anew. Without the signs
 * that each of them holds there is none, and the grammar without them reads the same in a fraction of the time and memory.
 */
const MAY_HOLD_ADDRESS = /@|www|http/i;
const ADDRESSES: ReadonlySet<string | undefined> = new Set([
  'emailAutolink',
  'wwwAutolink',
  'protocolAutolink',
]);
const withoutAddresses: Extension = { ...grammar, text: other(grammar.text ?? {}) };

/** The constructs that are no bare addresses. */
function other(constructs: ConstructRecord): ConstructRecord {
  const kept = Object.entries(constructs).map(([code, own]) => {
    const all: readonly Construct[] = Array.isArray(own) ? own : own ? [own] : [];
    return [code, all.filter(({ name }) => !ADDRESSES.has(name))] as const;
  });
  return Object.fromEntries(kept.filter(([, all]) => all.length > 0).map(([code, all]) => [code, [...all]]));
}

/**
 * Parses Markdown without a leading byte order mark and tells `to` every token. Text that would take too long
 * comes as `chunkText` line by line; nothing is told of Markdown nested without end.
 */
export function parseMarkdown(markdown: string, to: TokenSink): void {
  if (isTooDeep(markdown)) return;
  const extension = MAY_HOLD_ADDRESS.test(markdown) ? grammar : withoutAddresses;
  const document = parse({ extensions: [extension] }).document();
  const events: Event[] = document.write(preprocess()(markdown, undefined, true));
  // Level by level: blocks first, then the text in them.
  while (!subtokenize(events)) withhold(markdown, events);
  for (const [step, token] of events) to[step](token.type, token.start.offset, token.end.offset);
}
