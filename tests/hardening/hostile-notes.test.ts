/**
 * Notes come from strangers, in proposals of changes. Whatever they hold stays text: no link, no markup, no picture from
 * elsewhere, no command to a terminal or to a runner of continuous integration, in any place where we show it.
 */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { describe, expect, it } from 'vitest';
import { type MarkdownReader, type Tip, type Token, withTips } from '../../client/src/preview-marks.ts';
import { chartSvg } from '../../client/webview/draw.ts';
import type { Row } from '../../client/webview/messages.ts';
import { CHECK_REPORTS, LIST_REPORTS } from '../../server/src/cli/report/kinds.ts';
import { count, noTotals } from '../../server/src/cli/report/model.ts';
import { LIST_REPORT_NAMES } from '../../server/src/cli/report/names.ts';
import { type NoteResult, placed } from '../../server/src/cli/result.ts';
import { type Analysis, analyseWhole } from '../../server/src/course/index.ts';
import { completionsAt, hoverAt, tooltip } from '../../server/src/editor/index.ts';
import { folderOf, sizewright } from '../cli/support.ts';
import { runs } from '../notes/markdown-pieces.ts';

const EVIL = [
  '[run](command:workbench.action.terminal.new)', '<img src=x onerror=alert(1)>', '<script>alert(1)</script>', '</blockquote><b>',
  '![](https://elsewhere.example/x.png)', '[a](javascript:alert(1))', '<https://elsewhere.example>', '`code`', '| a | b', '"><svg onload=x>',
  '\u001b[31m', '\u001b]8;;https://elsewhere.example\u0007', '\u009b2J', '\u202e', '\u2066', '\u0007', '\u0008\u0008', '{0}', '](x)',
  '::error title=x::y', '##[add-mask]x', '##vso[task.complete]', '%0A::error::x', '&lt;b&gt;', '$(touch x)', 'https://elsewhere.example',
]; // biome-ignore format: a table

const SIZES = [
  'A 16 G cannula is thinner than a 20 G cannula.', 'The 2-O silk suture is thin.', 'Use the 14 tube.', 'A 14 Fr catheter is 9 mm across.',
  'Silk is absorbable.', 'The 18 G cannula is pink.', 'The blue Foley catheter is 14 Fr.', 'A 13-0 suture.', 'Pick 3 silk or 3-0 silk.',
]; // biome-ignore format: a table

const evil = fc.constantFrom(...EVIL);
const piece = fc.oneof(
  evil,
  fc.constantFrom(...SIZES),
  fc
    .tuple(fc.constantFrom(...SIZES), evil, fc.nat(60))
    .map(([text, put, at]) => text.slice(0, at) + put + text.slice(at)),
  evil.map((text) => `<!-- wrong on purpose: ${text} -->\n`),
  evil.map((text) => `The ${text} cannula is 18 G. `),
  fc.constantFrom('\n\n', ' ', '\n', '- ', '> ', '| 18 G | green |\n|-|-|\n'),
);
const hostile = fc.array(piece, { minLength: 1, maxLength: 8 }).map((pieces) => pieces.join(''));
const name = evil.map((text) => `${text.replaceAll('/', '')}.md`);

/** Everything that a terminal could obey or hide, and line endings that it could be fooled with. */
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/;
/** A line by which a runner is told something, as runners read them. */
const COMMAND = /^\s*::|##\w*\[/m;

const holds = (text: fc.Arbitrary<string>, check: (note: string, path: string) => void): void =>
  fc.assert(fc.property(text, name, check), { numRuns: runs(120) });

/** Every node of Markdown, with those inside. */
function nodesOf(node: Nodes): Nodes[] {
  return 'children' in node ? [node, ...node.children.flatMap(nodesOf)] : [node];
}

/** Throws when shown Markdown has more in it than we put there ourselves. */
function expectTame(markdown: string): void {
  for (const node of nodesOf(fromMarkdown(markdown))) {
    expect(['html', 'link', 'linkReference', 'imageReference', 'definition', 'code']).not.toContain(
      node.type,
    );
    if (node.type === 'image') expect(node.url).toMatch(/^data:image\/svg\+xml;base64,/);
  }
}

describe('in the editor', () => {
  it('hovers and completions are text', () => {
    holds(hostile, (note) => {
      const analysis = analyseWhole(note);
      const places = [
        ...analysis.mentions.map(({ source }) => source.start),
        ...analysis.statements.map(({ claim }) => claim.focus.start),
      ];
      for (const place of places) {
        expectTame(hoverAt(analysis, place, { picture: true })?.markdown ?? '');
        for (const each of completionsAt(analysis, place))
          expectTame(JSON.stringify(each).replace(/[\\"]/g, ''));
      }
    });
  });

  it('the client lets no hover run commands or show HTML', () => {
    expect(readFileSync('client/src/client.ts', 'utf8')).toContain(
      'markdown: { isTrusted: false, supportHtml: false }',
    );
  });

  it('the preview wraps sizes and adds nothing', () => {
    const reader = new MarkdownIt({ html: false });
    const allowed =
      /^<\/?(?:p|ul|ol|li|blockquote|h\d|hr|code|pre|em|strong|s|table|thead|tbody|tr|t[hd]|br)(?: start="\d+")?\s*\/?>$/;
    const own = /^<span class="sizewright-size" title="[^"<>]*">$|^<\/span>$/;
    holds(hostile, (note) => {
      const tips = tipsOf(analyseWhole(note));
      for (const tag of marked(reader, note, tips).match(/<[^>]*>/g) ?? [])
        expect(allowed.test(tag) || own.test(tag) || /^<(?:a|img) /.test(tag) || tag === '</a>').toBe(true);
      // What the reader of the preview makes without us, it makes with us.
      expect(marked(reader, note, tips).replace(/<span class="sizewright-size"[^>]*>|<\/span>/g, '')).toBe(
        reader.render(note),
      );
    });
  });

  it('a tooltip in the preview cannot leave its attribute', () => {
    const tips: Tip[] = EVIL.map((tip) => ({ line: 0, text: '18 G', tip }));
    const shown = marked(new MarkdownIt(), '18 G '.repeat(EVIL.length), tips);
    expect(
      shown
        .match(/<[^>]*>/g)!
        .filter((tag) => !/^<(?:\/?p|\/span|span class="sizewright-size" title="[^"<>]*")>$/.test(tag)),
    ).toEqual([]);
    expect(shown).toContain('&quot;&gt;&lt;svg onload=x&gt;');
  });

  it('the chart draws text as text', () => {
    const row = (text: string): Row => ({
      label: text, system: text, device: text, min: 1, max: 2, measure: text, hollow: true, standard: text, caution: text, runs: 'up', places: [],
    }); // biome-ignore format: one row
    const svg = chartSvg(EVIL.map(row), EVIL.join(''));
    expect([...new Set(svg.match(/<\/?[a-z]+/g))].sort()).toEqual(
      ['</svg', '</text', '</title', '<circle', '<rect', '<svg', '<text', '<title'].sort(),
    );
    expect(svg).not.toMatch(/<[^>]*\son[a-z]+\s*=/);
  });

  it('the page of the chart writes no markup and allows nothing from elsewhere', () => {
    for (const file of ['chart', 'draw', 'shapes'])
      expect(readFileSync(`client/webview/${file}.ts`, 'utf8')).not.toMatch(
        /innerHTML|outerHTML|insertAdjacent|document\.write|eval/,
      );
    const page = readFileSync('client/src/chart.ts', 'utf8');
    expect(page).toContain("default-src 'none'");
    expect(page).not.toMatch(/unsafe-(?:inline|eval)|enableCommandUris/);
  });
});

function tipsOf({ note, mentions }: Analysis): Tip[] {
  return [...mentions]
    .sort((a, b) => a.source.start - b.source.start)
    .map((each) => ({
      line: note.text.slice(0, each.source.start).split(/\r\n|\n|\r/).length - 1,
      text: each.text,
      tip: tooltip(each),
    }));
}

function marked(reader: MarkdownIt, note: string, tips: readonly Tip[]): string {
  const tokens = withTips(reader.parse(note, {}) as unknown as Token[], tips);
  return (reader as unknown as MarkdownReader).renderer.render(
    tokens,
    (reader as { options: unknown }).options,
    {},
  );
}

type Kind = 'findings' | 'mentions';

function report(
  kinds: typeof CHECK_REPORTS | typeof LIST_REPORTS,
  of: string,
  wanted: Kind,
  note: string,
  path: string,
): string {
  const kind = (kinds as typeof CHECK_REPORTS)[of as 'text']({ colour: false });
  const result: NoteResult = placed(path, analyseWhole(note), wanted) ?? { path, findings: [], mentions: [] };
  const totals = noTotals();
  count(totals, result);
  return `${kind.begin?.() ?? ''}${kind.note(result)}${kind.end?.(totals) ?? ''}`;
}

const checked = (of: keyof typeof CHECK_REPORTS, note: string, path: string): string =>
  report(CHECK_REPORTS, of, 'findings', note, path);
const listed = (of: keyof typeof LIST_REPORTS, note: string, path: string): string =>
  report(LIST_REPORTS, of, 'mentions', note, path);

describe('in reports', () => {
  it('nothing commands a terminal', () => {
    holds(hostile, (note, path) => {
      for (const of of ['text', 'jsonl', 'sarif', 'junit', 'annotations', 'summary', 'page'] as const)
        expect([of, CONTROL.exec(checked(of, note, path))?.[0]]).toEqual([of, undefined]);
      for (const of of LIST_REPORT_NAMES)
        expect([of, CONTROL.exec(listed(of, note, path))?.[0]]).toEqual([of, undefined]);
    });
  });

  it('nothing commands a runner but what is meant to', () => {
    holds(hostile, (note, path) => {
      expect(checked('text', note, path)).not.toMatch(COMMAND);
      expect(listed('text', note, path)).not.toMatch(COMMAND);
      const lines = checked('annotations', note, path).split('\n').filter(Boolean);
      for (const line of lines)
        expect(line).toMatch(
          /^::(?:error|warning|notice) file=[^:,]*,line=\d+,endLine=\d+(?:,col=\d+,endColumn=\d+)?,title=[a-z-]+::/,
        );
    });
  });

  it('the page has only our own tags', () => {
    const allowed =
      /^<(?:!doctype html|html lang="en"|meta [^<>]*|\/?(?:head|title|style|body|h1|h2|p|section|article|blockquote|mark|strong|code|ul|li|figure|footer|html)|p class="place"|\/?svg[^<>]*|\/?(?:circle|rect|text|g|line|path|title)[^<>]*)>$/;
    holds(hostile, (note, path) => {
      const page = checked('page', note, path);
      expect((page.match(/<[^>]*>?/g) ?? []).filter((tag) => !allowed.test(tag))).toEqual([]);
      expect(page).not.toMatch(/<[^>]*\s(?:on\w+|href|src)\s*=/);
      expect(page).toContain("default-src 'none'");
    });
  });

  it('messages of SARIF make no links', () => {
    const messages = (value: unknown): string[] => {
      if (typeof value !== 'object' || value === null) return [];
      const own =
        'text' in value && typeof value.text === 'string' && !('byteLength' in value) ? [value.text] : [];
      return [
        ...own,
        ...Object.entries(value).flatMap(([key, each]) =>
          ['snippet', 'insertedContent', 'rules'].includes(key) ? [] : messages(each),
        ),
      ];
    };
    holds(hostile, (note, path) => {
      for (const log of [checked('sarif', note, path), listed('sarif', note, path)])
        for (const text of messages(JSON.parse(log))) expect(text).not.toMatch(/(?<!\\)\]\(/);
    });
  });

  it('the Markdown of summary and index is text', () => {
    holds(hostile, (note, path) => {
      for (const text of [checked('summary', note, path), listed('index', note, path)])
        for (const { type } of nodesOf(fromMarkdown(text)))
          expect(['html', 'link', 'linkReference', 'image', 'imageReference', 'definition']).not.toContain(
            type,
          );
    });
  });

  it('the programs for machines stay one record a line', () => {
    holds(hostile, (note, path) => {
      const lines = checked('jsonl', note, path).split('\n').filter(Boolean);
      for (const line of lines) expect(JSON.parse(line)).toMatchObject({ file: path });
    });
  });
});

describe('on standard error', () => {
  it('names of files are written out', () => {
    const cwd = folderOf({ '\u001b[31mred\n::error::x.md': Buffer.from([0xff, 0xfe]) });
    const { stderr, status } = sizewright(['check', '.'], { cwd });
    expect(status).toBe(2);
    expect(stderr).toContain('\\u001b[31mred\\n::error::x.md');
    expect(stderr.replaceAll('\n', '')).not.toMatch(CONTROL);
    expect(stderr).not.toMatch(/^::/m);
  });

  it('a preview of fixes commands neither a terminal nor a runner', () => {
    const wrong = 'A 4-0 suture is thicker than a 2-0 suture.';
    const cwd = folderOf({ 'a.md': `::error::x \u001b[2J\n\n##[add-mask]y\n\n${wrong}\n\n::error::z\n` });
    const { stdout } = sizewright(['fix', '--preview', '.'], { cwd });
    expect(stdout).toContain('thinner');
    expect(stdout.replaceAll('\n', '')).not.toMatch(CONTROL);
    expect(stdout).not.toMatch(COMMAND);
  });
});
