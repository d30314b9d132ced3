/** Hover of a size: the first line answers, the picture and the table follow, then how the system runs. */
import type { Mention } from '../mentions/model.ts';
import {
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
import type { HoverOptions } from './hover.ts';
import { lensOf } from './lens.ts';
import { blocks, escapeMarkdown, picture, table } from './markdown.ts';
import { millimetres } from './millimetres.ts';
import { sizePicture } from './size-picture.ts';
import { CAUTION, CONFIDENCE_WORDS, DEVICE_WORDS, TARGET_WORDS } from './words.ts';

export function mentionHover(mention: Mention, options: HoverOptions): string {
  if (mention.kind === 'ambiguous') return unclearHover(mention);
  const lens = lensOf(mention);
  if (mention.length === true) return lengthHover(mention);
  return blocks([
    ...mention.sizes.map((size) => answer(size, mention, lens)),
    options.picture ? drawing(mention.sizes, lens) : undefined,
    conversions(mention.sizes, lens),
    facts(mention.sizes, mention, lens),
    sources(mention.sizes, lens),
    `*${CAUTION}*`,
  ]);
}

function unclearHover(mention: Mention): string {
  const readings = mention.readings.map(
    ({ words, write }) => `- ${escapeMarkdown(words)} — write **${escapeMarkdown(write)}**`,
  );
  return blocks([
    `**${escapeMarkdown(mention.text)}** can be read in more than one way:`,
    readings.join('\n'),
  ]);
}

function lengthHover(mention: Mention): string {
  const size = mention.sizes[0];
  if (size === undefined) return '';
  const rows = convert(size).map((each) => [each.text, each.standard]);
  return blocks([
    `**${escapeMarkdown(fullLabel(size))}**: a length along the device, not a thickness`,
    table(['same length', 'by'], rows),
  ]);
}

/** "USP 2-0 · silk suture · 0.3 to 0.349 mm outside · thinner than 0, thicker than 3-0". */
function answer(size: Size, mention: Mention, lens: Lens): string {
  const outer = outerDiameter(size, lens);
  const inner = innerDiameter(size, lens);
  const parts = [
    `**${escapeMarkdown(fullLabel(size))}**`,
    whose(mention),
    outer && `${millimetres(outer)} outside`,
    inner && `${millimetres(inner)} inside`,
    between(size, lens),
  ];
  return parts.filter(Boolean).join(' · ');
}

function whose(mention: Mention): string {
  const material = mention.material === undefined ? undefined : materialById(mention.material)?.name;
  const device = mention.device === undefined ? undefined : DEVICE_WORDS[mention.device];
  return escapeMarkdown([material, device].filter((word) => word !== undefined).join(' '));
}

function between(size: Size, lens: Lens): string {
  const { thinner, thicker } = neighbours(size, lens);
  if (existence(size, lens).exists === 'no') return '';
  // What goes by its inside is narrow or wide, not thin or thick.
  const inside = outerDiameter(size, lens) === undefined && innerDiameter(size, lens) !== undefined;
  const [less, more] = inside ? ['narrower', 'wider'] : ['thinner', 'thicker'];
  const words = [
    thicker && `${less} than ${escapeMarkdown(fullLabel(thicker))}`,
    thinner && `${more} than ${escapeMarkdown(fullLabel(thinner))}`,
  ];
  return words.filter(Boolean).join(', ');
}

function drawing(sizes: readonly Size[], lens: Lens): string | undefined {
  const drawn = sizePicture(sizes, lens);
  return drawn && picture(drawn.alternative, drawn.svg);
}

function conversions(sizes: readonly Size[], lens: Lens): string {
  const many = sizes.length > 1;
  const rows = sizes.flatMap((size) =>
    convert(size, lens).map((each) => [
      ...(many ? [fullLabel(size)] : []),
      TARGET_WORDS[each.to],
      each.text,
      each.standard,
    ]),
  );
  return table([...(many ? ['size'] : []), 'in', 'value', 'by'], rows);
}

function facts(sizes: readonly Size[], mention: Mention, lens: Lens): string {
  const systems = [...new Set(sizes.map((size) => size.system))];
  const lines = [
    ...systems.map(
      (system) => `${escapeMarkdown(SYSTEM_NAMES[system])}: ${escapeMarkdown(DIRECTION_WORDS[system])}`,
    ),
    ...sizes.flatMap((size) => colours(size, mention)),
    ...cautions(sizes, lens).map(escapeMarkdown),
  ];
  return lines.map((line) => `- ${line.charAt(0).toUpperCase()}${line.slice(1)}`).join('\n');
}

/** Which code a device follows; both when the device is not said, for the same size has another colour on each. */
const CODES: readonly {
  code: ColourCode;
  system: System;
  on: string;
  devices: readonly (Device | undefined)[];
}[] = [
  {
    code: 'ISO 6009',
    system: 'needle-gauge',
    on: 'Hub colour on a needle',
    devices: ['needle', 'winged-set', undefined],
  },
  {
    code: 'ISO 10555-5',
    system: 'needle-gauge',
    on: 'Hub colour on an over-needle IV catheter',
    devices: ['cannula', undefined],
  },
  {
    code: 'urinary catheter',
    system: 'french',
    on: 'Colour of a urinary catheter of this size',
    devices: ['urinary-catheter'],
  },
  {
    code: 'suction catheter',
    system: 'french',
    on: 'Colour of a suction catheter of this size',
    devices: ['suction-catheter'],
  },
];

const colours = (size: Size, mention: Mention): string[] =>
  CODES.filter(({ system, devices }) => system === size.system && devices.includes(mention.device)).flatMap(
    ({ code, on }) => {
      const colour = colourOf(code, size.value);
      if (colour === undefined) return [];
      const by = [code.startsWith('ISO') ? code : '', doubtful(colour.confidence)].filter(Boolean).join(', ');
      return [`${on}: ${colour.colours.join(' or ')}${by === '' ? '' : ` (${by})`}`];
    },
  );

const doubtful = (confidence: Confidence): string =>
  confidence === 'confirmed' ? '' : CONFIDENCE_WORDS[confidence];

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

function sources(sizes: readonly Size[], lens: Lens): string {
  const known = intervals(sizes, lens);
  const keys = [...new Set(known.flatMap((interval) => interval.sources))];
  if (keys.length === 0 && known.length === 0) return '';
  const standard = [...new Set(known.map((interval) => interval.standard))].join('; ');
  const doubt = weakest(known.map((interval) => interval.confidence));
  return `Source: ${escapeMarkdown(standard)}${cited(keys)} — ${CONFIDENCE_WORDS[doubt]}`;
}

/** At most two works in full; a hover is no bibliography. */
function cited(keys: readonly SourceKey[]): string {
  const works = keys.map((key) => SOURCES[key]?.cite).filter((cite) => cite !== undefined);
  if (works.length === 0) return '';
  const more = works.length > 2 ? ` and ${works.length - 2} more` : '';
  return ` (${escapeMarkdown(works.slice(0, 2).join('; '))}${more})`;
}

const RANK: readonly Confidence[] = ['confirmed', 'single-source', 'common-practice', 'memory'];
const weakest = (all: readonly Confidence[]): Confidence =>
  all.reduce<Confidence>(
    (worst, each) => (RANK.indexOf(each) > RANK.indexOf(worst) ? each : worst),
    'confirmed',
  );
