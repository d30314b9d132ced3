/** HTML comments in a piece of HTML, as CommonMark delimits them. */
import type { Comment } from './model.ts';

/** The comment that opens at `at`; one left open ends with the last character that is no space. */
function commentAt(html: string, at: number): Comment {
  const close = html.indexOf('-->', at + 4);
  const end = close < 0 ? Math.max(at + 4, html.trimEnd().length) : close + 3;
  return { span: { start: at, end }, text: html.slice(at + 4, close < 0 ? end : close) };
}

/** Comments in the HTML that is source [start, end); spans are those of the source. */
export function findComments(source: string, start: number, end: number): Comment[] {
  const html = source.slice(start, end);
  const found: Comment[] = [];
  for (let at = html.indexOf('<!--'); at >= 0; ) {
    const { span, text } = commentAt(html, at);
    found.push({ span: { start: start + span.start, end: start + span.end }, text });
    at = html.indexOf('<!--', span.end);
  }
  return found;
}
