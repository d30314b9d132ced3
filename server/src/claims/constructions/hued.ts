/**
 * Sizes named by the colour of their hub: "a pink cannula is wider than a green one", "if the blue is too small, go to a
 * yellow". Each colour is put for the one size that has it in the code spoken of; then the sentence is read like any other.
 */
import type { Mention } from '../../mentions/model.ts';
import { sourceSpan } from '../../notes/index.ts';
import { colourCodeOf, gaugesOf } from '../../sizes/index.ts';
import type { Device } from '../../sizes/model.ts';
import type { Item } from '../text/items.ts';
import { changed } from '../text/place.ts';
import type { Scene } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';
import { COMPARISONS } from './comparisons.ts';
import { equative } from './equative.ts';
import { grab } from './grab.ts';
import { codeAround } from './hub-code.ts';
import { linedUp } from './lined-up.ts';
import type { Construction, Reading } from './model.ts';
import { order } from './order.ts';

/** What reads sizes set against each other, likenesses and choices included. */
const READERS: readonly Construction[] = [...COMPARISONS, equative, grab, order, linedUp];

export const hued: Construction = {
  id: 'hued',
  leaning: true,
  needs: () => [
    { holds: ['colour', 'measured'] },
    {
      holds: ['colour'],
      like: /^(?:half|twice|double|(?:up|down)(?:siz(?:e|es|ed|ing))?|than|same|swap|equal|order)$/,
    },
  ],
  read(scene) {
    const sized = withSizes(scene);
    if (!sized) return [];
    const found: Reading[] = [];
    for (const reader of READERS) if (found.length === 0) found.push(...reader.read(sized));
    return found;
  },
};

/** The sentence with its colours put for sizes; nothing when one of them could be anything else. */
function withSizes(scene: Scene): Scene | undefined {
  const here = coloursIn(scene.items);
  if (here.size >= 2 || onTwoDevices(scene.items)) {
    const items = put(scene, scene.items);
    return items && changed(scene, { items });
  }
  // "A yellow and a blue cannula are left. Of the two, yellow is the wider."
  const previous = here.size === 1 ? scene.before.at(-1) : undefined;
  if (!previous || previous.close === '?' || new Set([...here, ...coloursIn(previous.items)]).size !== 2)
    return undefined;
  const items = put(scene, scene.items);
  const earlier = items && put(scene, previous.items);
  return earlier && changed(scene, { items, before: [{ ...previous, items: earlier }] });
}

/** "The pink cannula is wider than the pink needle": one colour, two codes. */
function onTwoDevices(items: readonly Item[]): boolean {
  const devices = items.flatMap((item, i) => (item.colour ? [codeBeside(items, i)] : []));
  return (
    items.some(({ word }) => word === 'than') &&
    devices.length === 2 &&
    devices.every((device) => device) &&
    devices[0] !== devices[1]
  );
}

const coloursIn = (items: readonly Item[]): ReadonlySet<string> =>
  new Set(items.flatMap(({ colour }) => colour ?? []));

/** Items with each colour put for its size. */
function put(scene: Scene, items: readonly Item[]): Item[] | undefined {
  const at = items.flatMap((item, i) =>
    item.colour && !/^(?:cells?|blood)$/.test(items[i + 1]?.word ?? '') ? [i] : [],
  );
  if (at.length === 0 || items.some((item, i) => OTHERS.test(item.word) && !titled(items, i)))
    return undefined;
  // "Out of a green and a blue, the blue 22 …": a size written beside its colour is there already.
  if (items.some((item, i) => item.kind === 'size' && !items[i - 1]?.colour)) return undefined;
  const around = codeAround(scene);
  const sized = at.map((i) => {
    if (items[i + 1]?.kind === 'size') return items[i];
    return stands(items, i) ? sizeOf(scene, items[i]!, codeBeside(items, i) ?? around) : undefined;
  });
  if (sized.some((item) => item === undefined)) return undefined;
  return items.map((item, i) => sized[at.indexOf(i)] ?? item);
}

/** Central lines and filter needles have colours of their own; so have the things hubs are told apart from. */
const OTHERS =
  /^(?:blunt|filter|lumens?|dental|intraosseous|io|cvc|clamps?|tubes?|bottles?|box(?:es)?|drawers?|syringes?|skin|lips?|tape|dye|flash|colou?rs?|shades?|label|labels|funnels?|connectors?|catheters?)$/;

/** "Colours, small to large: …": what the row is called. */
const titled = (items: readonly Item[], i: number): boolean =>
  i === 0 && /^colou?rs$/.test(items[0]!.word) && /^[,:(]$/.test(items[1]?.word ?? '');

const BEFORE =
  /^(?:an?|the|to|than|order|row|from|for|or|and|of|with|through|over|via|,|:|;|—|–|\(|your|our|is|are|use|take|try|choose|pick|grab|open|fetch|need|between|one|any|every|this|that|go|deep|pale|light|dark)$/;
const AFTER =
  /^(?:needles?|cannulas?|cannulae|ones?|hubs?|ivs?|venous|peripheral|and|or|is|are|was|were|has|have|had|gives?|gave|runs?|ran|flows?|lets?|for|to|than|if|when|because|since|as|will|would|can|could|should|must|at|in|on|of|with|by|from|into|through|down|up|over|before|after|instead|rather|so|but|while|whereas|which|that|then|does|did|do|gets?|got|goes|went|comes|came|delivers?|empties|carries|carried|takes?|took|needs?|leaves?|makes?|looks?|feels?|beats?|threads?|blocks|fails|isn't|isn’t|won't|won’t|wouldn't|wouldn’t|doesn't|doesn’t|didn't|didn’t|not|any|you|we|i|they|,|\.|;|:|—|–|\)|!|\?|too)$/;

/** A colour that stands for a hub: "a pink", "the green one", "pink cannula". */
const stands = (items: readonly Item[], i: number): boolean =>
  (i === 0 || BEFORE.test(items[i - 1]!.word)) && (i === items.length - 1 || AFTER.test(items[i + 1]!.word));

function codeBeside(items: readonly Item[], i: number): Device | undefined {
  const found = codeOf(items.slice(i + 1, i + 3).filter((item) => item.kind === 'word' && !item.colour));
  return found === 'both' ? undefined : found;
}

/** Wider and finer hubs are hardly met, and share their colours with the usual ones. */
const usual =
  (device: Device) =>
  (gauge: number): boolean =>
    gauge >= (device === 'cannula' ? 14 : 16) && gauge <= 30;

function sizeOf(scene: Scene, item: Item, device: Device | undefined): Item | undefined {
  const code = device && colourCodeOf(device);
  if (!device || !code?.startsWith('ISO')) return undefined;
  const [gauge, ...others] = gaugesOf(code, item.colour!).filter(usual(device));
  if (gauge === undefined || others.length > 0) return undefined;
  const span = { start: item.start, end: item.end };
  const mention: Mention = {
    passage: 0,
    span,
    source: sourceSpan(scene.passage, span),
    text: item.word,
    kind: 'size',
    sizes: [{ system: 'needle-gauge', value: gauge }],
    readings: [],
    notation: 'colour',
    device,
    decimals: 0,
    evidence: [],
  };
  const { colour: _, ...rest } = item;
  return { ...rest, kind: 'size', mention };
}
