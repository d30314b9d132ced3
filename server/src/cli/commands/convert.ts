/** `convert "18 G"`: one size in the other systems. */

import { findMentions } from '../../mentions/index.ts';
import type { Context, Mention } from '../../mentions/model.ts';
import { readNote } from '../../notes/index.ts';
import { DEVICES } from '../../sizes/devices.ts';
import { convert as conversions, existence, label, MATERIALS, SYSTEM_NAMES } from '../../sizes/index.ts';
import type { Conversion, Lens, Size } from '../../sizes/model.ts';
import { CAUTION } from '../caution.ts';
import { safeLine } from '../escape.ts';
import { paint, wantsColour } from '../report/colour.ts';
import { say } from '../terminal.ts';
import { UsageError } from '../usage-error.ts';

/** As given on the command line. */
export interface ConvertOptions {
  readonly device?: string;
  readonly material?: string;
}

/** "2-0", "3/0", "00": zeros alone are a thread, since no other system counts them. */
const ZEROS = /^\s*(?:[0-9.]{1,4}[-/]0|0{2,12})\s*$/;

/** Throws `UsageError` when the text names no size. */
function read(text: string, context: Context): readonly Mention[] {
  const thread = ZEROS.test(text) || (context.device === 'suture' && /^\s*[0-9]{1,2}\s*$/.test(text));
  const note = readNote(thread ? `USP ${text.trim()} suture` : text, { format: 'text' });
  const mentions = findMentions(note, context);
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
  const { exists, because } = existence(size, lens);
  const none = exists === 'no' ? `does not exist: ${because}` : 'no conversion is published for this size';
  const body = rows.length > 0 ? rows.join('\n') : `  ${none}`;
  return `${strong(label(size))}  ${SYSTEM_NAMES[size.system]}\n${body}\n`;
}

function unclear({ text, readings }: Mention): string {
  const ways = readings.map(({ words, write }) => `  ${words}: write "${write}"`);
  return [`${safeLine(text)} can be read in more than one way:`, ...ways, ''].join('\n');
}

/** Ids of devices and materials in the words of the trade: "chromic gut" for "chromic-gut". */
const idOf = (words: string): string => words.trim().toLowerCase().replace(/\s+/g, '-');

/** Throws `UsageError` for a name that is not known, since its table would be guessed. */
function known<Id extends string>(
  given: string | undefined,
  ids: readonly Id[],
  what: string,
): Id | undefined {
  if (given === undefined) return undefined;
  const id = ids.find((one) => one === idOf(given));
  if (id === undefined) throw new UsageError(`no ${what} "${safeLine(given)}"; there are ${ids.join(', ')}`);
  return id;
}

/** The generic name or the id of a material. */
function materialOf(given: string | undefined): string | undefined {
  const named = MATERIALS.find(
    ({ names }) => given !== undefined && names.includes(given.trim().toLowerCase()),
  );
  return (
    named?.id ??
    known(
      given,
      MATERIALS.map(({ id }) => id),
      'material',
    )
  );
}

export function convert(text: string, options: ConvertOptions): number {
  const { strong, faint } = paint(wantsColour(process.env));
  const device = known(options.device, DEVICES, 'device');
  const material = materialOf(options.material);
  const mentions = read(text, material ? { device: device ?? 'suture' } : { ...(device ? { device } : {}) });
  for (const mention of mentions) {
    const lens: Lens = {
      device: device ?? mention.device,
      material: material ?? mention.material,
    };
    if (mention.kind === 'ambiguous') say(unclear(mention));
    for (const size of mention.sizes) say(block(size, lens, strong));
  }
  say(`${faint(CAUTION)}\n`);
  return mentions.some((mention) => mention.kind === 'ambiguous') ? 1 : 0;
}
