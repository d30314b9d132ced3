/** The text a Markdown reader sees. */
import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';

export const mdastText = (markdown: string): string => textOf(fromMarkdown(markdown));

function textOf(node: Nodes): string {
  if ('children' in node) return node.children.map(textOf).join('');
  return node.type === 'text' ? node.value : `{${node.type}}`;
}
