/** Nouns that fix what a comparison is about. */
import type { Axis } from '../model.ts';

/** Noun → axis, with −1 where more of it means less of the axis (resistance against flow). */
export const AXIS_NOUNS: ReadonlyMap<string, { axis: Axis; sign: 1 | -1 }> = new Map(
  (
    [
      [
        'bore',
        1,
        'bore bores lumen lumens lumina channel inside interior room space elbow-room headroom passage passageway opening',
      ],
      [
        'outer',
        1,
        'diameter diameters diam girth calibre caliber calibres calibers width thickness profile waist waistline footprint breadth size sizes cross-section outside shaft',
      ],
      ['flow', 1, 'flow flows rate rates speed throughput flow-rate flowrate'],
      ['flow', -1, 'resistance drag'],
      ['strength', 1, 'strength hold pull tensile'],
      [
        'hole',
        1,
        'hole holes puncture punctures pinhole track tract opening wound-channel arteriotomy venotomy dent mark footprint',
      ],
      ['outer', 1, 'trauma stretch'],
      ['number', 1, 'number numbers numeral numerals figure figures digit digits decimals'],
    ] as const
  ).flatMap(([axis, sign, words]) => words.split(' ').map((word) => [word, { axis, sign }] as const)),
);

/** Things a size is written on, and words that stand for one ("the thinner one"). */
export const DEVICE_NOUNS: ReadonlySet<string> = new Set(
  `needle needles hypodermic hypodermics cannula cannulae cannulas cannulation catheter catheters line lines tube tubes tubing drain drains sheath
  sheaths wire wires guidewire guidewires suture sutures thread threads strand strands stitch stitches tie ties
  shaft shafts pipe pipes hose hoses straw straws one ones kind sort end option choice pick item sibling brother sister cousin
  neighbour neighbor introducer dilator dilators stent stents iv ivs pivc port ports access device
  devices instrument tip pair two three lot set bunch trio family drawer tray kit piece plastic steel needle-gauge
  material gut silk nylon polypropylene polyglactin polydioxanone polyester monofilament braid filament cord string
  butterfly foley sump trocar pigtail picc cvc product beast fellow customer model version member barrel
  tracheostomy airway bougie sound sounds`
    .split(/\s+/)
    .filter(Boolean),
);

/** How a system is named when the text speaks of its numbers. */
export const SYSTEM_NOUNS: ReadonlyMap<
  string,
  'needle-gauge' | 'french' | 'usp-zeros' | 'ep-metric' | 'usp' | 'tube-id' | 'wire-inch' | 'hegar'
> = new Map([
  ['gauge', 'needle-gauge'],
  ['gauges', 'needle-gauge'],
  ['gage', 'needle-gauge'],
  ['g', 'needle-gauge'],
  ['needle gauge', 'needle-gauge'],
  ['french', 'french'],
  ['fr', 'french'],
  ['f', 'french'],
  ['charrière', 'french'],
  ['charriere', 'french'],
  ['ch', 'french'],
  ['french size', 'french'],
  ['french scale', 'french'],
  ['french gauge', 'french'],
  ['zero', 'usp-zeros'],
  ['zeros', 'usp-zeros'],
  ['zeroes', 'usp-zeros'],
  ['nought', 'usp-zeros'],
  ['noughts', 'usp-zeros'],
  ['naught', 'usp-zeros'],
  ['naughts', 'usp-zeros'],
  ['ought', 'usp-zeros'],
  ['oughts', 'usp-zeros'],
  ['aught', 'usp-zeros'],
  ['aughts', 'usp-zeros'],
  ['oh', 'usp-zeros'],
  ['ohs', 'usp-zeros'],
  ["o's", 'usp-zeros'],
  ['metric number', 'ep-metric'],
  ['metric size', 'ep-metric'],
  ['metric gauge', 'ep-metric'],
  ['metric system', 'ep-metric'],
  ['metric scale', 'ep-metric'],
  ['hegar', 'hegar'],
  ['hegars', 'hegar'],
  ['ep number', 'ep-metric'],
  ['ep size', 'ep-metric'],
  ['usp', 'usp'],
  ['whole number', 'usp'],
  ['whole numbers', 'usp'],
]);
