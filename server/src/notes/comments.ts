/** HTML comments in a piece of HTML, as CommonMark delimits them. */
import type { Comment } from './model.ts';

/** Comments whose opening lies in source [start, end); one left open runs to `end`. */
export function findComments(source: string, start: number, end: number): Comment[] {
  const found: Comment[] = [];
  let at = source.indexOf('<!--', start);
  while (at >= 0 && at < end) {
    const close = source.indexOf('-->', at + 4);
    const inside = close < 0 || close + 3 > end ? end : close;
    const stop = inside === end ? end : inside + 3;
    found.push({ span: { start: at, end: stop }, text: source.slice(at + 4, inside) });
    at = source.indexOf('<!--', stop);
  }
  return found;
}
