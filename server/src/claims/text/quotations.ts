/** Quotations of a passage. An unclosed mark quotes nothing: it is an inch mark. */
import type { Item } from './items.ts';

const OPEN_QUOTES = new Set(['"', '“', '«', '‘', "'"]);
const CLOSE_QUOTES = new Set(['"', '”', '»', '’', "'"]);

/** Quotation spans of a passage as item offsets: straight or curly marks that open before a word and close after one. */
export function quotationSpans(items: readonly Item[]): [number, number][] {
  const spans: [number, number][] = [];
  let open: Item | undefined;
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!;
    if (item.kind !== 'punctuation') continue;
    const before = items[i - 1];
    const gluedBefore =
      before !== undefined && before.end === item.start && before.word !== '(' && before.word !== '—';
    if (!open && OPEN_QUOTES.has(item.word) && !gluedBefore) open = item;
    else if (open && CLOSE_QUOTES.has(item.word) && gluedBefore && matches(open, item)) {
      spans.push([open.start, item.end]);
      open = undefined;
    }
  }
  return spans;
}

const PAIRS: Readonly<Record<string, string>> = { '"': '"', '“': '”', '«': '»', '‘': '’', "'": "'" };
const matches = (open: Item, close: Item) => PAIRS[open.word] === close.word;
