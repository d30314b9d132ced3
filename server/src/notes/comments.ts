/** HTML comments in a piece of HTML, as CommonMark delimits them. */
import type { Comment } from './model.ts';

/** The comment that opens at `at`; one left open ends with the last character before `end` that is no space. */
function commentAt(source: string, at: number, end: number): Comment {
  const close = source.indexOf('-->', at + 4);
  if (close >= 0 && close + 3 <= end) {
    return { span: { start: at, end: close + 3 }, text: source.slice(at + 4, close) };
  }
  const rest = source.slice(at, end).trimEnd();
  return { span: { start: at, end: at + rest.length }, text: rest.slice(4) };
}

/** Comments whose opening lies in source [start, end). */
export function findComments(source: string, start: number, end: number): Comment[] {
  const found: Comment[] = [];
  let at = source.indexOf('<!--', start);
  while (at >= 0 && at < end) {
    const comment = commentAt(source, at, end);
    found.push(comment);
    at = source.indexOf('<!--', comment.span.end);
  }
  return found;
}
