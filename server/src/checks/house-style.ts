/** Sizes written otherwise than the course settles. */

import type { Mention } from '../mentions/model.ts';
import { writeValue } from '../sizes/index.ts';
import { type Locale, quote, say, tell } from '../texts/index.ts';
import type { CheckDefinition, HouseStyle } from './definition.ts';
import type { Finding } from './model.ts';
import { STYLE } from './texts/findings.ts';

const ID = 'house-style';

export const houseStyle: CheckDefinition = {
  id: ID,
  kind: 'style',
  severity: 'hint',
  title: 'Written otherwise than the course settles',
  docs: 'The course settings choose one way to write each kind of size. Nothing is reported until a course chooses. Sizes in words, ranges and lists with a shared unit are left as they are.',
  run: ({ mentions, style, note, locale }) =>
    style ? mentions.flatMap((mention) => restyle(mention, style, note.text, locale)) : [],
};

function restyle(mention: Mention, style: HouseStyle, source: string, locale?: Locale): Finding[] {
  const written = source.slice(mention.source.start, mention.source.end);
  const text = inStyle(mention, style, written);
  if (text === undefined || text === written) return [];
  return [
    {
      check: ID,
      kind: 'style',
      severity: 'hint',
      span: mention.source,
      says: say(locale, STYLE.says, { text: quote(written) }),
      holds: say(locale, STYLE.holds, { text: quote(text) }),
      source: tell('course settings', locale),
      sources: [],
      fixes: [
        {
          title: say(locale, STYLE.write, { text: quote(text) }),
          safety: 'safe',
          edits: [{ span: mention.source, text }],
        },
      ],
      related: [],
      derivation: [],
    },
  ];
}

const DASHED = /^\d{1,2}\s?[-‐‑‒–—−/]\s?[0oO]$/;
const GAUGE = /^(\d{1,2})(?:[\s\u00a0-]?(?:g|ga|gauge)\.?)$/i;
const FRENCH = /^(\d{1,2}(?:\.\d)?)(?:[\s\u00a0-]?(?:f|fr|fg|ch|french|charri[eè]re)\.?)$/i;
const MILLIMETRE = /^(\d+(?:\.\d+)?)[\s\u00a0]?mm$/i;

function inStyle(mention: Mention, style: HouseStyle, written: string): string | undefined {
  const size = mention.sizes[0];
  if (!size || mention.spoken || mention.bound) return undefined;
  const value = writeValue(size);
  if (style.usp && DASHED.test(written) && size.value < 0)
    return style.usp === '2-0' ? value : value.replace('-', '/');
  if (size.system === 'needle-gauge' && style.gauge && GAUGE.test(written))
    return style.gauge.replace('18', value);
  if (style.french && FRENCH.test(written)) return style.french.replace('14', value);
  const measure = size.system === 'millimetre' && style.millimetre ? MILLIMETRE.exec(written) : null;
  return measure ? `${measure[1]}${style.millimetre === '0.9 mm' ? ' ' : ''}mm` : undefined;
}
