/** Suture materials named in a row of items, longest name first. */
import { GUT_OWNERS } from '../../mentions/words/materials.ts';
import { MATERIALS } from '../../sizes/index.ts';
import type { Item } from './items.ts';
import { remembered } from './remember.ts';

export interface NamedMaterial {
  readonly at: number;
  readonly to: number;
  readonly id: string;
}

const NAMES = new Map<string, string>();
for (const material of MATERIALS)
  for (const name of [material.name, ...material.names]) {
    const key = name.toLowerCase().replace(/[(),]/g, '').trim();
    if (!NAMES.has(key)) NAMES.set(key, material.id);
  }
/** The fast kinds by their longer names. */
for (const kind of ['form', 'version', 'type', 'kind', 'variety', 'sort'])
  for (const fast of ['rapid', 'fast', 'quick', 'fast-absorbing', 'short-lived'])
    for (const name of ['polyglactin', 'polyglactin 910'])
      NAMES.set(`${fast} ${kind} of ${name}`, 'polyglactin-910-rapid');
/** Cotton by itself is a thread unless it is said to be something else. */
NAMES.set('cotton', 'cotton');
const NO_THREAD =
  /^(?:wool|buds?|swabs?|balls?|tips?|tipped|wicks?|gauze|gloves?|gowns?|sheets?|pads?|tape|seed|wadding)$/;

/** By first word: of how many words the longest name is that starts with it. */
const LONGEST = new Map<string, number>();
for (const name of NAMES.keys()) {
  const [first = '', ...rest] = name.split(/\s+/);
  LONGEST.set(first, Math.max(LONGEST.get(first) ?? 0, rest.length + 1));
}

/** Materials of a sentence, in its order. */
export const materialsIn = remembered((items: readonly Item[]): readonly NamedMaterial[] => {
  const found: NamedMaterial[] = [];
  for (let i = 0; i < items.length; i++) {
    const hit = longestAt(items, i);
    if (!hit) continue;
    found.push(hit);
    i = hit.to;
  }
  return found;
});

const unowned = (word: string): string => (word.endsWith("'s") ? word.slice(0, -2) : word);
const plain = (item: Item): string => unowned(item.word);

/** Whether the name of a material may begin with this word. */
export const mayNameMaterial = (word: string): boolean => LONGEST.has(unowned(word));

function longestAt(items: readonly Item[], at: number): NamedMaterial | undefined {
  const most = LONGEST.get(plain(items[at]!)) ?? 0;
  for (let n = Math.min(most, items.length - at); n >= 1; n--) {
    const words = items.slice(at, at + n);
    if (words.some((item) => item.kind === 'punctuation')) continue;
    if (n === 1 && items[at]!.word === 'cotton' && NO_THREAD.test(items[at + 1]?.word ?? ''))
      return undefined;
    if (n === 1 && items[at]!.word === 'gut' && GUT_OWNERS.has(items[at - 1]?.word ?? '')) return undefined;
    const id = NAMES.get(words.map(plain).join(' '));
    if (id) return { at, to: at + n - 1, id };
  }
  return undefined;
}
