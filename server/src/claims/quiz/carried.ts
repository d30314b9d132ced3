/** Questions that lean on the one before: "And of a 9 Ch?", "(II) The 24?", "Which is thicker? 9-0 or 10-0?" */
import type { Item } from '../text/items.ts';
import { measuredWords } from '../text/magnitudes.ts';
import type { Sentence } from '../text/sentences.ts';
import { askedMagnitude, type Desk, mark, sizesOf } from './desk.ts';
import { numbersIn, operandAt } from './loose/said.ts';
import type { Piece } from './piece.ts';
import { questionIn } from './turns.ts';

const LONGEST = 9;
/** Words that add nothing to what was asked before. */
const LEANS =
  /^(?:and|of|an?|the|what|how|about|then|or|so|for|in|with|on|is|one|now|finally|lastly|last|next|please|that|this|to|make|do|does|it|if)$/;

/** The question whole, with what the one before it said; undefined where it stands by itself. */
export const carried = (own: Piece, base: Piece): Piece | undefined =>
  exchanged(own, base) ?? continued(own, base);

/** How far back a question may lean. */
const BACK = 5;

/** A question made whole by what was asked before it in the same passage, or in the item above it. */
export function leaning({ reads }: Desk, own: Piece): Piece | undefined {
  const { passage, sentences } = own.read;
  const at = sentences.findIndex(({ start, end }) => start <= own.span.start && own.span.start < end);
  const above = reads[passage.index - 1];
  const near = sentences
    .slice(Math.max(0, at - BACK), Math.max(0, at))
    .map((sentence) => ({ read: own.read, sentence }));
  const last = above?.passage.list && above.passage.list.list === passage.list?.list ? above : undefined;
  const before = [
    ...(last?.sentences.slice(-BACK) ?? []).map((sentence) => ({ read: last!, sentence })),
    ...near,
  ];
  let whole: Piece | undefined;
  for (const { read, sentence } of before) {
    if (!asks(sentence)) continue;
    const asked = questionIn(read, sentence);
    whole = (whole && carried(asked, whole)) ?? asked;
  }
  return whole && carried(own, whole);
}

const asks = ({ close, items }: Sentence): boolean =>
  close === '?' || items.slice(0, 4).some(({ word }) => /^(?:name|give|state|which|what|say)$/.test(word));

/** The frame of the question before, about the size or the colour of this one. */
function exchanged(own: Piece, base: Piece): Piece | undefined {
  const words = own.items.filter(({ kind }) => kind !== 'punctuation');
  if (words.length === 0 || words.length > LONGEST) return undefined;
  const thing = onlyThing(own, base);
  const old = base.items.filter(
    thing?.colour ? ({ colour }) => colour !== undefined : ({ kind }) => kind === 'size',
  );
  if (!thing || old.length !== 1) return undefined;
  if (!words.every((item) => item.start === thing.start || LEANS.test(item.word) || item.deviceNoun))
    return undefined;
  return { ...own, items: base.items.map((item) => (item === old[0] ? thing : item)) };
}

/** The one size, colour or figure that a question names. */
function onlyThing(own: Piece, base: Piece): Item | undefined {
  const named = own.items.filter(({ kind, colour }) => kind === 'size' || colour !== undefined);
  if (named.length > 0) return named.length === 1 ? named[0] : undefined;
  const [figure, ...more] = numbersIn(own);
  const [size] = sizesOf(base);
  const system = size?.sizes[0]?.system;
  if (!figure || more.length > 0 || !system) return undefined;
  const { mentions } = operandAt(own, figure.item, system, figure.value);
  return { ...figure.item, kind: 'size', mention: mentions[0] };
}

/** "Which is thicker?" and behind it what there is to choose from. */
function continued(own: Piece, base: Piece): Piece | undefined {
  if (base.items.length > LONGEST || !askedMagnitude(base.items) || sizesOf(base).length > 0)
    return undefined;
  if (sizesOf(own).length < 2 || measuredWords(own.items).length > 0) return undefined;
  return { ...own, items: [...base.items.filter(({ word }) => word !== '?'), mark(':'), ...own.items] };
}
