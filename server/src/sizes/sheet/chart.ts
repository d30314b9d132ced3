/** A chart of sizes to scale, as a picture that stands in Markdown. */
import { drawSizes, type Picture } from '../picture.ts';
import { lensOfSubject, type Request } from './request.ts';
import { footing } from './table.ts';

/** The picture of a request; undefined when none of its sizes has a diameter. */
export const sheetDrawings = ({ subject, sizes }: Request): Picture | undefined =>
  drawSizes(sizes.map((size) => ({ size, lens: lensOfSubject(subject) })));

/** One element a line, so that it reads and compares well; no blank line, which would end it in Markdown. */
const inLines = (svg: string): string => svg.replace(/></g, '>\n<').replace(/\n\s*\n/g, '\n');

export function sheetChart(request: Request): string {
  const picture = sheetDrawings(request);
  if (picture === undefined) return `*No size here has a diameter to draw.*`;
  return `${inLines(picture.svg)}\n\n${footing(request)}`;
}
