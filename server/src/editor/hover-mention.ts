/** Hover of a size: the first line answers, the picture and the table follow, then how the system runs. */

import type { Mention } from '../mentions/model.ts';
import {
  CAUTION,
  type ColourCode,
  colourOf,
  convert,
  DIRECTION_WORDS,
  existence,
  fullLabel,
  innerDiameter,
  materialById,
  neighbours,
  outerDiameter,
  SOURCES,
  SYSTEM_NAMES,
} from '../sizes/index.ts';
import type {
  Confidence,
  Conversion,
  Device,
  Interval,
  Lens,
  Size,
  SourceKey,
  System,
} from '../sizes/model.ts';
import {
  type Locale,
  list,
  type Part,
  phrase,
  type Quoted,
  quote,
  say,
  type Text,
  tell,
} from '../texts/index.ts';
import type { HoverOptions } from './hover.ts';
import { lensOf } from './lens.ts';
import { blocks, escapeMarkdown, picture, table } from './markdown.ts';
import { millimetres } from './millimetres.ts';
import { sizePicture } from './size-picture.ts';
import { COLUMN, HOVER, HUB } from './texts/hover.ts';
import { CONFIDENCE, DEVICE_WORDS, TARGET_WORDS } from './texts/words.ts';

export function mentionHover(mention: Mention, options: HoverOptions): string {
  const { locale } = options;
  if (mention.kind === 'ambiguous') return unclearHover(mention, locale);
  const lens = lensOf(mention);
  if (mention.length === true) return lengthHover(mention, locale);
  return blocks([
    ...mention.sizes.map((size) => answer(size, mention, lens, locale)),
    options.picture ? drawing(mention.sizes, lens, locale) : undefined,
    conversions(mention.sizes, lens, locale),
    facts(mention.sizes, mention, lens, locale),
    sources(mention.sizes, lens, locale),
    `*${tell(CAUTION, locale)}*`,
  ]);
}

/** Words that can be no markup, whatever they say. */
const escaped = (part: Part, locale?: Locale): Quoted => quote(escapeMarkdown(tell(part, locale)));

function unclearHover(mention: Mention, locale?: Locale): string {
  const readings = mention.readings.map(({ meant, write }) =>
    say(locale, HOVER.reading, { words: escaped(meant, locale), write: quote(escapeMarkdown(write)) }),
  );
  return blocks([
    say(locale, HOVER.unclear, { text: quote(escapeMarkdown(mention.text)) }),
    readings.join('\n'),
  ]);
}

function lengthHover(mention: Mention, locale?: Locale): string {
  const size = mention.sizes[0];
  if (size === undefined) return '';
  const rows = convert(size).map((each) => [tell(each.text, locale), tell(each.standard, locale)]);
  const head = [say(locale, COLUMN.sameLength), say(locale, COLUMN.by)];
  return blocks([say(locale, HOVER.length, { size: escaped(fullLabel(size), locale) }), table(head, rows)]);
}

/** "USP 2-0 · silk suture · 0.3 to 0.349 mm outside · thinner than 0, thicker than 3-0". */
function answer(size: Size, mention: Mention, lens: Lens, locale?: Locale): string {
  const outer = outerDiameter(size, lens);
  const inner = innerDiameter(size, lens);
  const parts = [
    `**${escapeMarkdown(tell(fullLabel(size), locale))}**`,
    whose(mention, locale),
    outer && say(locale, HOVER.outside, { measure: millimetres(outer) }),
    inner && say(locale, HOVER.inside, { measure: millimetres(inner) }),
    between(size, lens, locale),
  ];
  return parts.filter(Boolean).join(' · ');
}

function whose(mention: Mention, locale?: Locale): string {
  const material = mention.material === undefined ? undefined : materialById(mention.material)?.name;
  const device = mention.device === undefined ? undefined : DEVICE_WORDS[mention.device];
  const words = [material, device].filter((word) => word !== undefined);
  return escapeMarkdown(tell(list(words, HOVER.ofMaterial), locale));
}

function between(size: Size, lens: Lens, locale?: Locale): string {
  const { thinner, thicker } = neighbours(size, lens);
  if (existence(size, lens).exists === 'no') return '';
  // What goes by its inside is narrow or wide, not thin or thick.
  const inside = outerDiameter(size, lens) === undefined && innerDiameter(size, lens) !== undefined;
  const [less, more] = inside
    ? [HOVER.narrowerThan, HOVER.widerThan]
    : [HOVER.thinnerThan, HOVER.thickerThan];
  const words = [
    thicker && say(locale, less, { size: escaped(fullLabel(thicker), locale) }),
    thinner && say(locale, more, { size: escaped(fullLabel(thinner), locale) }),
  ];
  return words.filter(Boolean).join(', ');
}

function drawing(sizes: readonly Size[], lens: Lens, locale?: Locale): string | undefined {
  const drawn = sizePicture(sizes, lens, locale);
  return drawn && picture(drawn.alternative, drawn.svg);
}

function conversions(sizes: readonly Size[], lens: Lens, locale?: Locale): string {
  const many = sizes.length > 1;
  const rows = sizes.flatMap((size) =>
    convert(size, lens).map((each) => [
      ...(many ? [fullLabel(size)] : []),
      TARGET_WORDS[each.to],
      each.text,
      each.standard,
    ]),
  );
  const head = [...(many ? [COLUMN.size] : []), COLUMN.unit, COLUMN.value, COLUMN.by];
  return table(
    head.map((text) => say(locale, text)),
    rows.map((cells) => cells.map((cell) => tell(cell, locale))),
  );
}

function facts(sizes: readonly Size[], mention: Mention, lens: Lens, locale?: Locale): string {
  const systems = [...new Set(sizes.map((size) => size.system))];
  const lines = [
    ...systems.map((system) =>
      say(locale, HOVER.system, {
        system: escaped(SYSTEM_NAMES[system], locale),
        rule: escaped(DIRECTION_WORDS[system], locale),
      }),
    ),
    ...sizes.flatMap((size) => colours(size, mention, locale)),
    ...cautions(sizes, lens).map((caution) => escapeMarkdown(tell(caution, locale))),
  ];
  return lines.map((line) => `- ${line.charAt(0).toUpperCase()}${line.slice(1)}`).join('\n');
}

/** Which code a device follows; both when the device is not said, for the same size has another colour on each. */
const CODES: readonly {
  code: ColourCode;
  system: System;
  on: Text;
  devices: readonly (Device | undefined)[];
}[] = [
  {
    code: 'ISO 6009',
    system: 'needle-gauge',
    on: HUB.needle,
    devices: ['needle', 'winged-set', undefined],
  },
  {
    code: 'ISO 10555-5',
    system: 'needle-gauge',
    on: HUB.cannula,
    devices: ['cannula', undefined],
  },
  {
    code: 'urinary catheter',
    system: 'french',
    on: HUB.urinary,
    devices: ['urinary-catheter'],
  },
  {
    code: 'suction catheter',
    system: 'french',
    on: HUB.suction,
    devices: ['suction-catheter'],
  },
];

const colours = (size: Size, mention: Mention, locale?: Locale): string[] =>
  CODES.filter(({ system, devices }) => system === size.system && devices.includes(mention.device)).flatMap(
    ({ code, on }) => {
      const colour = colourOf(code, size.value);
      if (colour === undefined) return [];
      const by = [code.startsWith('ISO') ? code : '', doubtful(colour.confidence, locale)].filter(Boolean);
      const told = { on: phrase(on), colours: list(colour.colours, HOVER.or) };
      if (by.length === 0) return [say(locale, HUB.colour, told)];
      return [say(locale, HUB.colourBy, { ...told, by: quote(by.join(', ')) })];
    },
  );

const doubtful = (confidence: Confidence, locale?: Locale): string =>
  confidence === 'confirmed' ? '' : say(locale, CONFIDENCE[confidence]);

function intervals(sizes: readonly Size[], lens: Lens): Interval[] {
  return sizes
    .flatMap((size) => [outerDiameter(size, lens), innerDiameter(size, lens)])
    .filter((interval) => interval !== undefined);
}

function cautions(sizes: readonly Size[], lens: Lens): string[] {
  const spoken: (Interval | Conversion)[] = [
    ...intervals(sizes, lens),
    ...sizes.flatMap((size) => convert(size, lens)),
  ];
  return [...new Set(spoken.map((each) => each.caution).filter((caution) => caution !== undefined))];
}

function sources(sizes: readonly Size[], lens: Lens, locale?: Locale): string {
  const known = intervals(sizes, lens);
  const keys = [...new Set(known.flatMap((interval) => interval.sources))];
  if (keys.length === 0 && known.length === 0) return '';
  const standard = [...new Set(known.map((interval) => tell(interval.standard, locale)))].join('; ');
  const doubt = weakest(known.map((interval) => interval.confidence));
  return say(locale, HOVER.sourced, {
    standard: quote(escapeMarkdown(standard)),
    cited: cited(keys),
    confidence: phrase(CONFIDENCE[doubt]),
  });
}

/** At most two works in full; a hover is no bibliography. */
function cited(keys: readonly SourceKey[]): Part {
  const works = keys.map((key) => SOURCES[key]?.cite).filter((cite) => cite !== undefined);
  if (works.length === 0) return '';
  const shown = quote(escapeMarkdown(works.slice(0, 2).join('; ')));
  return works.length > 2
    ? phrase(HOVER.citedMore, { works: shown, count: works.length - 2 })
    : phrase(HOVER.cited, { works: shown });
}

const RANK: readonly Confidence[] = ['confirmed', 'single-source', 'common-practice', 'memory'];
const weakest = (all: readonly Confidence[]): Confidence =>
  all.reduce<Confidence>(
    (worst, each) => (RANK.indexOf(each) > RANK.indexOf(worst) ? each : worst),
    'confirmed',
  );
