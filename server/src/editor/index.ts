/**
 * What an author is helped with in an editor: one file a feature, each from an analysis and offsets to plain values.
 * Lives here: hovers, fixes, hints, completion, symbols, rename, tables and charts. Not here: the protocol, positions,
 * documents (`lsp`), judging (`claims`), what is reported (`checks`).
 */
export { type Action, actionsIn, safeEdits } from './actions.ts';
export { type ChartRow, chartRows, type Named } from './chart.ts';
export { type Completion, completionsAt } from './completion.ts';
export { hintsIn } from './hints.ts';
export { hoverAt } from './hover.ts';
export { mentionsOf, sizeAt } from './references.ts';
export { newSize, type Refusal, renameIn, renameTarget } from './rename.ts';
export { spansAround } from './selection.ts';
export { sheetStretch } from './sheets.ts';
export { type HeadingSymbol, outline, type SizeSymbol, sizeSymbol } from './symbols.ts';
export { type Token, type TokenKind, tokensOf } from './tokens.ts';
export { runTool } from './tools.ts';
export { tooltip } from './tooltip.ts';
