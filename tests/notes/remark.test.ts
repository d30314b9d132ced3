/** Against the outside: the prose of remark's own syntax tree, for random Markdown. */
import fc from 'fast-check';
import type { Nodes } from 'mdast';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkMath from 'remark-math';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { expect, it } from 'vitest';
import { readNote } from '../../server/src/notes/index.ts';
import { markdown, runs } from './markdown-pieces.ts';

const remark = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(remarkFrontmatter, ['yaml', 'toml'])
  .use(remarkMath);

const PLACED = new Set(['inlineCode', 'inlineMath', 'image', 'imageReference']);
const SILENT = new Set(['code', 'math', 'yaml', 'toml', 'definition', 'footnoteReference']);

function proseOfTree(node: Nodes, inParagraph = false): string {
  if (node.type === 'text') return node.value;
  if (PLACED.has(node.type)) return '\uFFFC';
  if (node.type === 'html') return inParagraph ? '\uFFFC' : '';
  if (SILENT.has(node.type) || !('children' in node)) return '';
  const inner = inParagraph || ['paragraph', 'heading', 'tableCell'].includes(node.type);
  // Cells beyond those of the header are in the tree, but GFM does not show them.
  const width = node.type === 'table' ? node.children[0]!.children.length : undefined;
  const children: Nodes[] =
    width === undefined
      ? node.children
      : node.children.flatMap((row) => (row as { children: Nodes[] }).children.slice(0, width));
  return children.map((child) => proseOfTree(child, inner)).join('');
}

it('the prose is that of the tree', () => {
  const property = fc.property(markdown(), (text) => {
    // Sums of money are told apart from math here, not there.
    // Dashes at the start that open no front matter keep remark from seeing lists and quotes below them.
    const source = text.replaceAll('$', '').replace(/^(?:---|\+\+\+)/, '');
    const main = readNote(source).passages.filter((passage) => passage.kind !== 'alt');
    const prose = main.map((passage) => passage.text).join('');
    expect(prose.replace(/\s+/g, '')).toBe(proseOfTree(remark.parse(source)).replace(/\s+/g, ''));
  });
  fc.assert(property, { numRuns: runs(400) });
});
