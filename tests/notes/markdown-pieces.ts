/** Random Markdown for property tests: pieces that open, close, break and hide things. */
import fc from 'fast-check';

const PIECES = [
  '18 G', '3-0 silk', 'text', ' ', ' ', '  ', '    ', '\n', '\n', '\n\n', '\n\n', '\r\n', '\r\n\r\n', '\r', '\t',
  '**', '*', '_', '~~', '`', '``', '- ', '- [x] ', '1. ', '2) ', '> ', '>', '# ', '## ', '#### ', '---\n', '===\n',
  '***\n', '|', ' | ', '|-|-|\n', '\n|a|b|\n|-|-|\n|1|2|\n', '[a]', '[a][b]', '[^1]', '[^1]: ', '[a]: x\n', '[b]:',
  '![', '[', ']', '](x)', '](x "3-0")', '\\', '\\|', '&amp;', '&ge;', '&#49;', '<b>', '</b>', '<div>\n', '<!--',
  '-->', '<!-- 2-0 -->', '```\n', '```', '~~~\n', '$', '$$\n', '<script>', '</script>', '+++\n', '😀', '𝟏𝟖', '\0', '\uFEFF',
  '\u2028', '(', ')', '"', '!', '.', '<', '\n\n- a\n\n  b\n', '\n\n> q\n', '\n\nP\n\n', '\n\n    code\n\n', '\n1. a\n   - b\n\n',
]; // biome-ignore format: a table

/** A text of up to `maxLength` pieces. */
export const markdown = (maxLength = 40) =>
  fc.array(fc.constantFrom(...PIECES), { maxLength }).map((pieces) => pieces.join(''));

export interface RandomEdit {
  readonly at: number;
  readonly remove: number;
  readonly insert: string;
}

/** An edit at a place given as a fraction of the text. */
export const edit: fc.Arbitrary<RandomEdit> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  remove: fc.nat({ max: 6 }),
  insert: fc.oneof(fc.constantFrom(...PIECES), markdown(4)),
});

export function applyEdit(text: string, { at, remove, insert }: RandomEdit): string {
  const from = Math.floor(at * text.length);
  return text.slice(0, from) + insert + text.slice(from + remove);
}

/** How many runs of a property: few in a normal test run, more when asked for. */
export const runs = (usual: number): number => Math.round(usual * Number(process.env.SIZEWRIGHT_RUNS ?? 1));
