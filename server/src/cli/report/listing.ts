/** Reports of `list`: every size mention. */
import { safeJson, safeLine, safePath } from '../escape.ts';
import type { PlacedMention } from '../result.ts';
import { paint } from './colour.ts';
import type { ReportKind } from './model.ts';
import { joined, unlinked, uri } from './sarif.ts';

const NAMES: Readonly<Record<string, string>> = { ambiguous: 'unclear' };

/** A system as it stands in a listing. */
export const nameOf = (system: string): string => NAMES[system] ?? system;

export const listText: ReportKind = ({ colour }) => {
  const p = paint(colour);
  const row = (path: string, { place, text, system, value, device, material }: PlacedMention) => {
    const where = p.strong(`${safePath(path)}:${place.line}:${place.column}:`);
    const about = [device, material].filter((word) => word !== undefined).join(', ');
    return `${where} ${safeLine(text)}  ${nameOf(system)} ${value}${about ? `  ${p.faint(`(${about})`)}` : ''}\n`;
  };
  return {
    note: ({ path, mentions }) => mentions.map((one) => row(path, one)).join(''),
    end: ({ mentions, notes }) => `${p.strong(`${mentions} size mentions in ${notes} notes.`)}\n`,
  };
};

export const listJsonl: ReportKind = () => ({
  note: ({ path, mentions }) =>
    mentions
      .map(({ place, text, system, value, device, material }) => {
        const { line, endLine, column, endColumn } = place;
        return `${safeJson({ file: path, line, endLine, column, endColumn, text, system, value, device, material })}\n`;
      })
      .join(''),
});

const MENTION_RULE = { id: 'size-mention', shortDescription: { text: 'A size written in the note' } };

export const listSarif: ReportKind = () =>
  joined(
    ({ path, mentions }) =>
      mentions.map(({ place, text, system, value }) => ({
        ruleId: MENTION_RULE.id,
        ruleIndex: 0,
        kind: 'informational',
        level: 'none',
        message: { text: unlinked(`${text}: ${nameOf(system)} ${value}`) },
        locations: [
          {
            physicalLocation: {
              artifactLocation: { uri: uri(path) },
              region: {
                startLine: place.line,
                startColumn: place.column,
                endLine: place.endLine,
                endColumn: place.endColumn,
              },
            },
          },
        ],
        properties: { system, value },
      })),
    () => [MENTION_RULE],
  );
