/** Colour words that a hub may have, told from those of flags, fruit, alarms and whatever things are kept in. */
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import type { Group, Scene } from '../text/scene.ts';
import type { Colour } from './hub-code.ts';

export const SHADES = new Set(['deep', 'dark', 'light', 'pale', 'medium', 'bright', 'mid', 'iso']);

/** The colours of a sentence that may be a hub's. */
export function coloursIn(items: readonly Item[]): Colour[] {
  return items.flatMap((item, at) => {
    if (!item.colour) return [];
    const next = items[at + 1];
    if ((next?.word === '-' && next.start === item.end) || NOT_HUB.has(next?.word ?? '') || otherThing(next))
      return [];
    if (OF_TOP.test(item.word)) return [];
    if (ALERT.test(items[at - 1]?.word ?? '') || fruit(items, at)) return [];
    const from = SHADES.has(items[at - 1]?.word ?? '') ? at - 1 : at;
    return [{ at: from, to: at, family: item.colour }];
  });
}
const NOT_HUB = new Set([
  'flag',
  'flags',
  'cells',
  'cell',
  'blood',
  'card',
  'cards',
  'zone',
  'list',
  'top',
  'coat',
  'book',
  'tube',
  'tubes',
  'skin',
  'bag',
  'bags',
  'bin',
  'matter',
]);

/** "the blue-topped tube" */
const OF_TOP = /-(?:topped|lidded|striped|label\w+|taped|stickered|handled|boxed)$/;

/** "Code blue", "category red": an alarm. */
const ALERT = /^(?:code|category|status|alert|triage|priority)$/;
/** "practise on an orange with …". */
const fruit = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'orange' &&
  items[at - 1]?.word === 'an' &&
  /^(?:with|for|and|,|\.)$/.test(items[at + 1]?.word ?? '.');

/** "the blue clamp", "the 20 G drawer": the colour of something that is not a hub. */
export const otherThing = (next: Item | undefined) =>
  next?.kind === 'word' &&
  finds(
    /^(?:lights?|clamps?|tourniquets?|tapes?|ties|tie|stickers?|syringes?|plugs?|bungs?|ports?|taps?|stopcocks?|drapes?|pens?|trolleys?|boxes|box|trays?|labels?|gloves?|line|lines|markers?|wristbands?|lids?|sheets?|forms?|room|rooms|bay|drawers?|dressings?|packs?|packets?|aprons?|gowns?|bands?|bins?|bags?|curtains?|signs?|dots?|pumps?|beds?|chairs?|pouch(?:es)?|wrappers?|wraps?|sleeves?|envelopes?|bottles?|cups?|bowls?|rings?|arrows?|rows?|boards?|charts?|cloths?|covers?|folders?|stripes?|trolley|cupboards?|shel(?:f|ves)|end|ends|team|area|hats?|gauze|towels?|doors?|scrubs|cars?|paint|ink|tins?|jars?|pots?|tubs?|baskets?|racks?)$/,
    next.word,
  );

/** "Final scores: Red 18, Blue 20", "count: 16 pink, 18 blue": bare numbers beside the words of counting. */
export const tallied = ({ items, before }: Pick<Scene, 'items' | 'before'>): boolean =>
  [...items, ...(before.at(-1)?.items ?? []).slice(0, 3)].some(({ word }) => COUNTS.test(word)) &&
  items.every((item) => item.kind !== 'size' || /^\d+$/.test(item.mention?.text ?? ''));
const COUNTS = /^(?:scores?|scored|scoring|votes?|voted|points?|counts?|counted|tally|tallies|stocktake)$/;

/** "20 G cannula: blue, pink, green, yellow": one size and a row of colours to choose from. */
export const inARow = (
  items: readonly Item[],
  colours: readonly Colour[],
  sizes: readonly Group[],
): boolean =>
  sizes.length === 1 &&
  colours.length > 2 &&
  colours[0]!.at > sizes[0]!.to &&
  ROW.test(textOf(items.slice(colours[0]!.at, colours.at(-1)!.at).filter(({ colour }) => !colour)));
const ROW = /^(?:[,/|*_]|or)(?: (?:[,/|*_]|or))*$/;
