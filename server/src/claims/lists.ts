/** What a list asserts by its order: items under "from thick to thin:" must run that way. */
import type { Note } from '../notes/model.ts';
import { direction } from '../sizes/index.ts';
import { becomes } from './constructions/changing.ts';
import { orderCue } from './constructions/order.ts';
import type { Claim, Operand, OrderClaim } from './model.ts';
import { sorts } from './stance/to-sort.ts';
import { joined } from './text/joined.ts';
import type { Read } from './text/scenes.ts';
import { NEGATIONS } from './words/changes.ts';

export function readLists(note: Note, reads: readonly Read[]): Claim[] {
  return itemLists(reads).flatMap((items) => readList(note, reads, items));
}

/** First paragraphs of the items of each list, in the order of the note. Lists of tasks are left out. */
export function itemLists(reads: readonly Read[]): Read[][] {
  const lists = new Map<number, Read[]>();
  for (const read of reads) {
    const { list } = read.passage;
    if (!list || list.checked !== undefined || isContinuation(lists.get(list.list), read)) continue;
    const items = lists.get(list.list);
    if (items) items.push(read);
    else lists.set(list.list, [read]);
  }
  return [...lists.values()];
}

/** A second paragraph of the same item. */
const isContinuation = (seen: readonly Read[] | undefined, read: Read) =>
  seen?.at(-1)?.passage.list?.index === read.passage.list?.index;

function readList(note: Note, reads: readonly Read[], items: readonly Read[]): OrderClaim[] {
  const first = items[0];
  if (!first || items.length < 3) return [];
  const operands = leadingAll(items);
  if (!operands) return [];
  const lead = leadItems(note, reads, first);
  const sized = first.passage.list?.leadIn !== undefined && lead.some((item) => item.kind === 'size');
  const cue =
    (sized ? undefined : (orderCue(lead) ?? byNumber(lead, operands))) ?? saidBehind(reads, items.at(-1)!);
  if (!cue || sorts(lead)) return [];
  const span = { start: operands[0]!.span.start, end: operands.at(-1)!.span.end };
  return [
    {
      kind: 'order',
      construction: 'list',
      span,
      focus: span,
      items: operands,
      axis: cue.axis,
      runs: cue.runs,
    },
  ];
}

/** The size with which each item opens; nothing where one opens with none. */
function leadingAll(items: readonly Read[]): Operand[] | undefined {
  const operands: Operand[] = [];
  for (const item of items) {
    const operand = leading(item);
    if (!operand) return undefined;
    operands.push(operand);
  }
  return operands;
}

/** "Suction catheters, ascending", "in descending order", where the numbers rise with the size. */
function byNumber(lead: Read['items'], operands: readonly Operand[]): ReturnType<typeof orderCue> {
  const at = lead.findIndex(
    ({ word }, i) =>
      /^(?:ascending|descending)$/.test(word) &&
      /^(?:[:.,)]|order(?! (?:of|by))|$)/.test(joined(lead, i + 1, i + 3)),
  );
  const rising = operands.every((one) => one.sizes[0] && direction(one.sizes[0].system) === 'up');
  if (at < 0 || !rising || lead.length > 14) return undefined;
  if (lead.some(({ word }) => NEGATIONS.has(word) || OPEN.test(word) || word === '?')) return undefined;
  return { at, to: at, axis: 'outer', runs: lead[at]!.word === 'ascending' ? 'up' : 'down' };
}

/** "The list goes from thin to thick." in the paragraph right behind it. */
function saidBehind(reads: readonly Read[], last: Read): ReturnType<typeof orderCue> {
  const next = reads[last.passage.index + 1];
  const first = next?.passage.list || next?.passage.kind !== 'paragraph' ? undefined : next?.sentences[0];
  if (!first || first.close === '?' || first.items.length > 20 || !OF_LIST.test(joined(first.items, 0, 8)))
    return undefined;
  const open = first.items.some(
    ({ kind, word }) => kind === 'size' || NEGATIONS.has(word) || OPEN.test(word),
  );
  return open ? undefined : (orderCue(first.items) ?? becomes(first.items));
}
const OF_LIST =
  /^(?:(?:so|and|here|as you see|again) ,? ?)?(?:(?:the|this|that|my|our) (?:list|order|row|rack|line|sequence|series|set|column)|that|this|it|they|these|all of (?:these|them))(?:'s)? (?:\S+ )?(?:goes|go|runs?|is|are|reads?|stands?|climbs?|falls?|rises?|gets?|becomes?|grows?|widens?|narrows?)\b|^(?:(?:from )?(?:top to bottom|left to right|the top down)|(?:going|reading|moving|working) down|down the (?:list|page)|each|every)\b/;
const OPEN =
  /^(?:if|unless|should|wrong|reverse|reversed|wrongly|jumbled|mixed|shuffled|or|but|rather|instead)$/;

/** The last sentence of the lead-in, or the heading right above, when the list has nothing else before it. */
export function leadItems(note: Note, reads: readonly Read[], first: Read): Read['items'] {
  const lead = first.passage.list?.leadIn;
  if (lead !== undefined) return reads[lead]?.sentences.at(-1)?.items ?? [];
  const above = reads[first.passage.index - 1];
  return above?.passage.kind === 'heading' && note.passages[first.passage.path.at(-1) ?? -1] === above.passage
    ? above.items
    : [];
}

/** The size that opens an item, and the only one in it. */
export function leading(read: Read): Operand | undefined {
  const sized = read.items.filter((item) => item.mention && item.mention.kind !== 'ambiguous');
  const mention = sized[0]?.mention;
  if (!mention || sized.length !== 1 || mention.sizes.length !== 1 || read.items.indexOf(sized[0]!) > 3)
    return undefined;
  return {
    sizes: mention.sizes,
    mentions: [mention],
    span: mention.source,
    ...(mention.device ? { device: mention.device } : {}),
    ...(mention.material ? { material: mention.material } : {}),
  };
}
