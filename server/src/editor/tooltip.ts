/** A size in two or three plain lines, for places without markup. */
import type { Mention } from '../mentions/model.ts';
import { convert, fullLabel, outerDiameter } from '../sizes/index.ts';
import { lensOf } from './lens.ts';
import { millimetres } from './millimetres.ts';

export function tooltip(mention: Mention): string {
  if (mention.kind === 'ambiguous') {
    return `${mention.text} can be read as ${mention.readings.map((reading) => reading.words).join(', or ')}`;
  }
  const lens = lensOf(mention);
  return mention.sizes
    .map((size) => {
      const outer = mention.length === true ? undefined : outerDiameter(size, lens);
      const thick = outer === undefined ? '' : `: ${millimetres(outer)}`;
      const others = convert(size, lens).map((each) => each.text);
      return `${fullLabel(size)}${thick}${others.length === 0 ? '' : ` (${[...new Set(others)].join(', ')})`}`;
    })
    .join('\n');
}
