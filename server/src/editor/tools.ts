/**
 * Answers for an assistant that verifies what it writes: the sizes of a text, what contradicts the standards in it,
 * what a size is in other systems. Plain text, the same for the same input.
 */
import { analyse } from '../course/index.ts';
import { findMentions } from '../mentions/index.ts';
import { readNote } from '../notes/index.ts';
import { CAUTION, convert, fullLabel, outerDiameter } from '../sizes/index.ts';
import { lensOf } from './lens.ts';
import { millimetres } from './millimetres.ts';
import { nameOf } from './symbols.ts';

export type ToolName = 'listSizes' | 'checkSizes' | 'convertSize';

/** Longest text taken, characters. */
export const LONGEST = 200_000;

/** Undefined when there is no such tool. */
export function runTool(name: string, text: string): string | undefined {
  if (!Object.hasOwn(TOOLS, name)) return undefined;
  if (text.length > LONGEST) return `The text is too long: at most ${LONGEST} characters.`;
  return `${TOOLS[name as ToolName](text)}\n${CAUTION}`;
}

const TOOLS: Readonly<Record<ToolName, (text: string) => string>> = {
  listSizes: (text) => {
    const found = findMentions(readNote(text));
    if (found.length === 0) return 'No size was found.';
    return found
      .map((each) => `line ${lineOf(text, each.source.start)}: "${each.text}" = ${nameOf(each)}`)
      .join('\n');
  },
  checkSizes: (text) => {
    const found = analyse(text).findings.filter((finding) => finding.deliberate === undefined);
    if (found.length === 0)
      return 'No contradiction and no unclear size was found. What cannot be judged is not reported.';
    return found
      .map(
        (each) =>
          `line ${lineOf(text, each.span.start)} [${each.check}]: ${each.says} ${each.holds} Source: ${each.source}`,
      )
      .join('\n');
  },
  convertSize: (text) => {
    const mention = findMentions(readNote(text))[0];
    const size = mention?.kind === 'size' ? mention.sizes[0] : undefined;
    if (mention === undefined || size === undefined) return `"${text.slice(0, 60)}" is not one clear size.`;
    const outer = outerDiameter(size, lensOf(mention));
    const lines = convert(size, lensOf(mention)).map(
      (each) => `${each.text} (${each.standard}${each.caution === undefined ? '' : `; ${each.caution}`})`,
    );
    return [
      `${fullLabel(size)}${outer === undefined ? '' : `: ${millimetres(outer)} outside`}`,
      ...lines,
    ].join('\n');
  },
};

function lineOf(text: string, offset: number): number {
  let line = 1;
  for (let at = text.indexOf('\n'); at >= 0 && at < offset; at = text.indexOf('\n', at + 1)) line++;
  return line;
}
