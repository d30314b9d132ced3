/** `convert "18 G"`: one size in the other systems. */
import { findMentions } from '../../mentions/index.ts';
import type { Context, Mention } from '../../mentions/model.ts';
import { readNote } from '../../notes/index.ts';
import { convert as conversions, label, SYSTEM_NAMES } from '../../sizes/index.ts';
import type { Conversion, Lens, Size } from '../../sizes/model.ts';
import { CAUTION } from '../caution.ts';
import { safeLine } from '../escape.ts';
import { paint, wantsColour } from '../report/colour.ts';
import { say } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';

export type ConvertOptions = Lens;

/** Throws `UsageError` when the text names no size. */
function read(text: string, context: Context): readonly Mention[] {
  const mentions = findMentions(readNote(text, { format: 'text' }), context);
  if (mentions.length === 0)
    throw new UsageError(
      `"${safeLine(text)}" is no size that can be read; write it with its unit, as in "18 G", "14 Fr", "USP 2-0", "4.7 mm"`,
    );
  return mentions;
}

function row({ to, text, standard, caution, confidence }: Conversion): string {
  const doubt = confidence === 'memory' ? ' (from memory)' : '';
  const line = `  ${text.padEnd(30)}${SYSTEM_NAMES[to]} · ${standard}${doubt}`;
  return caution ? `${line}\n    caution: ${caution}` : line;
}

function block(size: Size, lens: Lens, strong: (text: string) => string): string {
  const rows = conversions(size, lens).map(row);
  const body = rows.length > 0 ? rows.join('\n') : '  no conversion is published for this size';
  return `${strong(label(size))}  ${SYSTEM_NAMES[size.system]}\n${body}\n`;
}

function unclear({ text, readings }: Mention): string {
  const ways = readings.map(({ words, write }) => `  ${words}${write ? `: write "${write}"` : ''}`);
  return [`${safeLine(text)} can be read in more than one way:`, ...ways, ''].join('\n');
}

export function convert(text: string, options: ConvertOptions): number {
  const { strong, faint } = paint(wantsColour(process.env));
  const mentions = read(text, { device: options.device });
  for (const mention of mentions) {
    const lens: Lens = {
      device: options.device ?? mention.device,
      material: options.material ?? mention.material,
    };
    if (mention.kind === 'ambiguous') say(unclear(mention));
    for (const size of mention.sizes) say(block(size, lens, strong));
  }
  say(`${faint(CAUTION)}\n`);
  return mentions.some((mention) => mention.kind === 'ambiguous') ? 1 : 0;
}
