/** A dialogue in which the next speaker says the same of another size: "C: 20, it's larger.", "E: 14 is larger." */
import type { Scene } from './text/scene.ts';
import type { Sentence } from './text/sentences.ts';

/** Longest answer of the one who knows better. */
const LONGEST = 9;

export function retold(scene: Scene): boolean {
  const next = scene.after[0] ?? scene.next;
  if (!next || next.items.length > LONGEST || !speaks(next) || !speaks(scene.sentence)) return false;
  if (next.close === '?' || next.items[0]!.word === scene.sentence.items[0]!.word) return false;
  const said = new Set(
    scene.items.filter((item) => item.magnitude?.degree === 'comparative').map((item) => item.word),
  );
  const own = new Set(sizesOf(scene.sentence));
  const other = sizesOf(next);
  return other.length === 1 && !own.has(other[0]!) && next.items.some((item) => said.has(item.word));
}

const speaks = ({ items }: Sentence): boolean => items[0]?.capital === true && items[1]?.word === ':';

const sizesOf = ({ items }: Sentence): string[] =>
  items.filter((item) => item.kind === 'size').map((item) => String(item.mention?.sizes[0]?.value));
