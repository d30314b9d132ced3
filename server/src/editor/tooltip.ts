/** A size in two or three plain lines, for places without markup. */

import type { Mention } from '../mentions/model.ts';
import { convert, fullLabel, outerDiameter } from '../sizes/index.ts';
import { type Locale, list, quote, say, tell } from '../texts/index.ts';
import { lensOf } from './lens.ts';
import { millimetres } from './millimetres.ts';
import { TOOLTIP } from './texts/hover.ts';

export function tooltip(mention: Mention, locale?: Locale): string {
  if (mention.kind === 'ambiguous') {
    const readings = list(
      mention.readings.map((reading) => reading.meant),
      TOOLTIP.or,
    );
    return say(locale, TOOLTIP.unclear, { text: quote(mention.text), readings });
  }
  const lens = lensOf(mention);
  return mention.sizes
    .map((size) => {
      const outer = mention.length === true ? undefined : outerDiameter(size, lens);
      const thick = outer === undefined ? '' : `: ${tell(millimetres(outer), locale)}`;
      const others = convert(size, lens).map((each) => tell(each.text, locale));
      return `${tell(fullLabel(size), locale)}${thick}${others.length === 0 ? '' : ` (${[...new Set(others)].join(', ')})`}`;
    })
    .join('\n');
}
