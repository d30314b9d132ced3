/** Suture materials named in a row of items, longest name first. */
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
/** A family word: its properties must hold for every member that the word can mean. */
const LONGEST = Math.max(...[...NAMES.keys()].map((name) => name.split(/\s+/).length));

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

function longestAt(items: readonly Item[], at: number): NamedMaterial | undefined {
  for (let n = Math.min(LONGEST, items.length - at); n >= 1; n--) {
    const words = items.slice(at, at + n);
    if (words.some((item) => item.kind === 'punctuation')) continue;
    const id = NAMES.get(words.map((item) => item.word.replace(/'s$/, '')).join(' '));
    if (id) return { at, to: at + n - 1, id };
  }
  return undefined;
}
