/** Pieces of the command line that are easier to try alone than through a process. */
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../server/src/checks/model.ts';
import { safe, safeLine } from '../../server/src/cli/escape.ts';
import { mend } from '../../server/src/cli/fix/edits.ts';
import { unified } from '../../server/src/cli/fix/unified.ts';
import { writeMended } from '../../server/src/cli/fix/write.ts';
import { Lines } from '../../server/src/cli/lines.ts';
import { xml } from '../../server/src/cli/report/junit.ts';

const finding = (start: number, end: number, text: string): Finding => ({
  check: 'x',
  kind: 'contradiction',
  severity: 'warning',
  span: { start, end },
  says: '',
  holds: '',
  source: '',
  sources: [],
  fixes: [{ title: '', safety: 'safe', edits: [{ span: { start, end }, text }] }],
  related: [],
  derivation: [],
});

describe('lines', () => {
  test('every offset of any text has the place that splitting the text gives', () => {
    const text = fc
      .array(fc.constantFrom('a', '🩺', '\r', '\n', '\r\n', '\u2028'), { maxLength: 20 })
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(text, (written) => {
        const lines = new Lines(written);
        for (let offset = 0; offset <= written.length; offset++) {
          // Between the two signs of one line ending there is no place of its own.
          if (written[offset - 1] === '\r' && written[offset] === '\n') continue;
          const before = written.slice(0, offset).split(/\r\n|\r|\n/);
          const { line, column } = lines.place({ start: offset, end: offset });
          expect([line, column]).toEqual([before.length, before.at(-1)!.length + 1]);
        }
        expect(Array.from({ length: lines.count }, (_, i) => lines.line(i + 1))).toEqual(
          written.split(/\r\n|\r|\n/),
        );
      }),
    );
  });
});

describe('fixes', () => {
  test('edits are made where they stand; one that overlaps an earlier one waits', () => {
    const { text, count } = mend('one two three', [
      finding(0, 3, '1'),
      finding(2, 7, 'x'),
      finding(8, 13, '3'),
    ]);
    expect([text, count]).toEqual(['1 two 3', 2]);
  });

  test('new lines come with the line ending of the note', () => {
    expect(mend('a\r\nb', [finding(0, 1, 'x\ny')]).text).toBe('x\r\ny\r\nb');
  });

  test('deliberate errors and choices are left', () => {
    const choice: Finding = {
      ...finding(0, 1, 'x'),
      fixes: [{ title: '', safety: 'choice', edits: [{ span: { start: 0, end: 1 }, text: 'x' }] }],
    };
    expect(mend('ab', [{ ...finding(0, 1, 'x'), deliberate: 'quiz' }, choice]).text).toBe('ab');
  });

  test('the preview of any edits turns the one text into the other', () => {
    const lines = fc.array(fc.constantFrom('a', 'b', 'c', ''), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(lines, fc.array(fc.nat(29), { maxLength: 5 }), (written, at) => {
        const text = `${written.join('\n')}\n`;
        const starts = written.map((_, i) => written.slice(0, i).join('\n').length + (i > 0 ? 1 : 0));
        const spots = [...new Set(at)]
          .filter((i) => i < written.length && written[i] !== '')
          .sort((a, b) => a - b);
        const edits = spots.map((i) => ({ span: { start: starts[i]!, end: starts[i]! + 1 }, text: 'X\nY' }));
        const after = mend(
          text,
          edits.map(({ span, text: new_ }) => finding(span.start, span.end, new_)),
        ).text;
        expect(patched(text, unified('n', text, edits))).toBe(after);
      }),
    );
  });

  test('a note that changed since it was read is not written', () => {
    const path = join(mkdtempSync(join(tmpdir(), 'sizes-')), 'a.md');
    writeFileSync(path, 'new');
    expect(() => writeMended(path, Buffer.from('old'), 'mended')).toThrow(
      'changed while it was being read; not written',
    );
    expect(readFileSync(path, 'utf8')).toBe('new');
  });
});

/** Applies a unified diff the plain way, by its line numbers. */
function patched(text: string, diff: string): string {
  const lines = text.split('\n').slice(0, -1);
  const out: string[] = [];
  let at = 0;
  for (const row of diff.split('\n').slice(2, -1)) {
    const head = /^@@ -(\d+),\d+ \+(\d+),\d+ @@$/.exec(row);
    if (head) {
      while (at < Number(head[1]) - 1) out.push(lines[at++]!);
      expect(out.length).toBe(Number(head[2]) - 1);
    } else if (row[0] === '+') out.push(row.slice(1));
    else {
      expect(lines[at]).toBe(row.slice(1));
      if (row[0] === ' ') out.push(lines[at]!);
      at++;
    }
  }
  return `${[...out, ...lines.slice(at)].join('\n')}\n`;
}

describe('escaping', () => {
  test('no text can command a terminal', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (text) => {
        expect(safe(text)).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
        expect(safeLine(text)).not.toMatch(/[\n\t]/);
      }),
    );
  });

  test('XML text holds only what XML 1.0 may', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (text) => {
        expect(xml(`${text}\ud800<&"`)).toMatch(
          /^[ -%'-;=?-~\u0080-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}&]*$/u,
        );
      }),
    );
  });
});
