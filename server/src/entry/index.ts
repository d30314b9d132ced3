/**
 * The library: check a text, list its sizes, convert a size. Needs neither Node nor an editor, touches no file
 * and never throws on any text. Positions count from 1, in UTF-16 units, as editors count them; offsets from 0.
 *
 * A teaching aid, not advice on a patient.
 */
import { placed } from '../cli/result.ts';
import { analyse, mentionsOnly, mergeSettings, readSettings, type Settings } from '../course/index.ts';
import { findMentions } from '../mentions/index.ts';
import { readNote } from '../notes/index.ts';
import { convert as conversionsOf, label } from '../sizes/index.ts';
import type { Lens } from '../sizes/model.ts';

export interface Place {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  /** Offset of the first character. */
  readonly start: number;
  /** Offset behind the last character. */
  readonly end: number;
}

export interface Fix {
  readonly title: string;
  /** `safe`: makes the statement true and changes nothing else. `choice`: the author must choose. */
  readonly safety: 'safe' | 'choice';
  readonly edits: readonly { readonly place: Place; readonly text: string }[];
}

export interface Finding {
  /** Stable id of the check. */
  readonly check: string;
  readonly kind: 'contradiction' | 'ambiguity' | 'style';
  readonly severity: 'error' | 'warning' | 'info' | 'hint';
  readonly place: Place;
  /** What the text says: one short sentence. */
  readonly says: string;
  /** What holds: one short sentence. */
  readonly holds: string;
  /** Name of the standard or source behind it. */
  readonly source: string;
  readonly fixes: readonly Fix[];
  /** The reason, when a deliberate mark covers the finding. */
  readonly deliberate?: string;
  /** Stays the same when lines move and neighbours are reworded. */
  readonly identity: string;
}

export interface Mention {
  readonly place: Place;
  readonly text: string;
  /** `usp`, `needle-gauge`, `french` …; `ambiguous` when it can be read in more than one way. */
  readonly system: string;
  /** "18"; "14..16" for a range; the number as written when ambiguous. */
  readonly value: string;
  readonly device?: string;
  /** Generic name of a suture material. */
  readonly material?: string;
}

export interface Conversion {
  /** The size it was read as, with its unit. */
  readonly from: string;
  readonly to: string;
  /** As shown: "1.27 mm", "metric 3". */
  readonly text: string;
  /** Name of the standard or source. */
  readonly standard: string;
  /** `confirmed`, `single-source`, `memory` or `common-practice`. */
  readonly confidence: string;
  readonly caution?: string;
}

export interface Options {
  /** Decides the format by its ending: Markdown, .vtt, .srt or .txt. */
  readonly path?: string;
  /** Content of a course settings file, as an object. */
  readonly settings?: object;
}

/** Thrown for settings that are wrong, with every problem in words; never for a text. */
export class SettingsError extends Error {
  override readonly name: string = 'SettingsError';
}

const known = new WeakMap<object, Settings>();

function settingsOf(content: object | undefined): Settings | undefined {
  if (content === undefined) return undefined;
  const before = known.get(content);
  if (before) return before;
  const { file, problems } = readSettings(JSON.stringify(content));
  if (!file) throw new SettingsError(problems.map(({ message }) => message).join('\n'));
  const settings = mergeSettings([file]);
  known.set(content, settings);
  return settings;
}

/** Findings of a text in source order. Throws `SettingsError`. */
export function check(text: string, options: Options = {}): Finding[] {
  const analysis = analyse(text, settingsOf(options.settings), options.path);
  return (placed(options.path ?? '', analysis, 'findings')?.findings ?? []).map(
    ({ check, kind, severity, place, says, holds, source, fixes, deliberate, identity }) => ({
      ...{ check, kind, severity, place, says, holds, source, fixes, identity },
      ...(deliberate !== undefined && { deliberate }),
    }),
  );
}

/** Size mentions of a text in source order. Throws `SettingsError`. */
export function list(text: string, options: Options = {}): Mention[] {
  const analysis = mentionsOnly(text, settingsOf(options.settings), options.path);
  return [...(placed(options.path ?? '', analysis, 'mentions')?.mentions ?? [])];
}

/** The sizes named in `size`, such as "18 G", in the other systems; empty when it names none that can be read. */
export function convert(
  size: string,
  options: { readonly device?: string; readonly material?: string } = {},
): Conversion[] {
  const mentions = findMentions(readNote(size, { format: 'text' }), options as Lens);
  return mentions.flatMap((mention) => {
    const lens = { device: mention.device, material: mention.material, ...options } as Lens;
    return mention.sizes.flatMap((one) =>
      conversionsOf(one, lens).map(({ to, text, standard, confidence, caution }) => ({
        ...{ from: label(one), to, text, standard, confidence },
        ...(caution !== undefined && { caution }),
      })),
    );
  });
}
