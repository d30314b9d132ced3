/** A chart of sizes to scale, as a picture in Markdown with its content in words. */
import { base64 } from '../base64.ts';
import { drawSizes, type Picture } from '../picture.ts';
import { lensOfSubject, type Request, SUBJECTS } from './request.ts';
import { footing } from './table.ts';

/** The picture of a request; undefined when none of its sizes has a diameter. */
export const sheetDrawings = ({ subject, sizes }: Request): Picture | undefined =>
  drawSizes(sizes.map((size) => ({ size, lens: lensOfSubject(subject) })));

export function sheetChart(request: Request): string {
  const picture = sheetDrawings(request);
  if (picture === undefined) return `*No size here has a diameter to draw.*`;
  const words = picture.alternative.replace(/[[\]\\]/g, '\\$&').replace(/\s+/g, ' ');
  const image = `![${SUBJECTS[request.subject].title} to scale: ${words}](data:image/svg+xml;base64,${base64(picture.svg)})`;
  return `${image}\n\n${footing(request)}`;
}
