/** One self-contained HTML page with pictures to scale. No script, no address outside the page. */
import { drawSizes, escapeXml } from '../../sizes/index.ts';
import { CAUTION } from '../caution.ts';
import { safeLine } from '../escape.ts';
import type { NoteResult, PlacedFinding } from '../result.ts';
import { isOpen, type ReportKind } from './model.ts';
import { summary } from './text.ts';

const STYLE = `
:root { color-scheme: light dark; }
body { font: 1rem/1.5 system-ui, sans-serif; max-width: 60rem; margin: 2rem auto; padding: 0 1rem; }
h2 { margin-top: 2.5rem; overflow-wrap: anywhere; }
article { border-inline-start: 0.3rem solid; padding-inline-start: 1rem; margin: 1.5rem 0; }
blockquote { margin: 0.5rem 0; white-space: pre-wrap; overflow-wrap: anywhere; }
mark { font-weight: 600; }
.place, footer { font-size: 0.9rem; opacity: 0.8; }
svg { max-width: 100%; height: auto; }
`;

const html = (text: string): string => escapeXml(safeLine(text));

function quoted({ excerpt, excerptAt = 0, place }: PlacedFinding): string {
  const start = place.column - 1 - excerptAt;
  const end = place.endLine === place.line ? place.endColumn - 1 - excerptAt : excerpt.length;
  return `<blockquote>${html(excerpt.slice(0, start))}<mark>${html(excerpt.slice(start, end))}</mark>${html(excerpt.slice(end))}</blockquote>`;
}

function picture({ sizes }: PlacedFinding): string {
  const drawn = sizes.length > 1 ? drawSizes(sizes) : undefined;
  return drawn ? `<figure>${drawn.svg}</figure>` : '';
}

function article(one: PlacedFinding): string {
  const fixes = one.fixes.map(({ title }) => `<li>${html(title)}</li>`).join('');
  return [
    '<article>',
    `<p class="place">Line ${one.place.line}, ${one.severity}, <code>${html(one.check)}</code></p>`,
    `<p><strong>${html(one.says)}</strong></p>`,
    quoted(one),
    `<p>${html(one.holds)}</p>`,
    picture(one),
    `<p class="place">Source: ${html(one.source)}</p>`,
    fixes && `<ul>${fixes}</ul>`,
    '</article>',
  ]
    .filter(Boolean)
    .join('\n');
}

function section({ path, findings }: NoteResult): string {
  const open = findings.filter(isOpen);
  if (open.length === 0) return '';
  return `<section>\n<h2>${html(path)}</h2>\n${open.map(article).join('\n')}\n</section>\n`;
}

const HEAD = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>Sizes in the notes</title>
<style>${STYLE}</style>
</head>
<body>
<h1>Sizes in the notes</h1>
<p>${CAUTION}</p>
`;

export const pageReport: ReportKind = () => ({
  begin: () => HEAD,
  note: section,
  end: (totals) => `<footer><p>${html(summary(totals))}</p></footer>\n</body>\n</html>\n`,
});
