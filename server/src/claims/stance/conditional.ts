/** Conditions before a claim: whether it is supposed, or only advice for a case or a wish. */
import type { Reading } from '../constructions/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { CONDITIONS, NEGATIONS } from '../words/changes.ts';

/** "if", "suppose" before the claim with no comma between, or a sentence that opens with a supposition. */
export function conditional(scene: Scene, { from, at }: Reading): boolean {
  const first = Math.max(from, at);
  for (let i = first; i >= 0; i--) {
    const item = scene.items[i]!;
    if (
      i < first &&
      (item.word === ',' ||
        item.word === ';' ||
        item.word === ':' ||
        toldOf(scene.items, i) ||
        consequenceFrom(scene.items, i))
    )
      break;
    if (CONDITIONS.has(item.word) && !(item.word === 'had' || item.word === 'were'))
      return !purpose(scene.items, i) && !wishFirst(scene.items, i, first);
  }
  const opener = scene.items.find((item) => item.kind === 'word')?.word;
  return opener === 'suppose' || opener === 'supposing' || opener === 'imagine' || opener === 'pretend';
}

/** "go to the 16 Fr which is the thicker": told of a size, whatever has to happen first. */
const toldOf = (items: readonly Item[], i: number): boolean =>
  items[i]!.word === 'which' &&
  /^(?:is|are)$/.test(items[i + 1]?.word ?? '') &&
  items.slice(Math.max(0, i - 2), i).some(({ kind }) => kind === 'size');

/** "Swap it for an 18 G if you want a bigger cannula": the condition is the aim of the advice. */
const purpose = (items: readonly Item[], i: number) =>
  items[i]!.word === 'if' &&
  i > 3 &&
  /^(?:you|we|they|one)$/.test(items[i + 1]?.word ?? '') &&
  /^(?:want|need|prefer|require|wish|like)$/.test(items[i + 2]?.word ?? '') &&
  items.slice(0, i).some((item) => item.kind === 'size' || item.colour !== undefined);

/** "If you want more flow, choose an 18 G": the wish before the advice, with no size of its own. */
function wishFirst(items: readonly Item[], i: number, at: number): boolean {
  const comma = items.findIndex((item, k) => k > i && (item.word === ',' || item.word === ':'));
  const size = items.findIndex((item, k) => k > comma && item.kind === 'size');
  return (
    items[i]!.word === 'if' &&
    comma > at &&
    (WISHES.test(items[i + 2]?.word ?? '') || HAS_TO.test(joined(items, i + 1, at))) &&
    !items.slice(i, comma).some((item) => item.kind === 'size') &&
    !items.slice(i, size).some((item) => NEGATIONS.has(item.word))
  );
}
/** "If the blood has to run faster, …": what is to be, and not yet. */
const HAS_TO = /^(?:\S+ ){1,5}?(?:(?:has|have|needs?|wants?|ought|is|are) to|must)(?: (?!not\b)\S+){0,4}$/;
const WISHES = /^(?:want|wants|need|needs|prefer|require|wish|like|after)$/;

const SUBJECTS = new Set(['you', 'it', 'they', 'we', 'she', 'he']);
const RESULTS = new Set([
  'is',
  'have',
  'will',
  "'ll",
  'get',
  'gain',
  'are',
  'would',
  'end',
  'gets',
  'has',
  'need',
]);

/** "If a 12 Fr leaks use a …": advice right behind what fails. */
const ADVICE = /^(?:use|take|try|pick|choose|open|reach|pass|change|switch|go)$/;
const FAILS = /^(?:fails|blocks|leaks|jams|kinks|sticks|snaps|breaks|tears|clots|out|fit|pass|block|leak)$/;
const blamed = (items: readonly Item[], i: number): boolean =>
  FAILS.test(items[i - 1]?.word ?? '') &&
  items.slice(Math.max(0, i - 6), i).some((item) => item.kind === 'size');

/** "…, and if it clots she goes up to a 12": what is done then, right behind what fails. */
const DOES = /^(?:goes|went|takes?|uses?|tries|try|picks?|moves?|chooses?|changes?|steps?|drops?|opens?|go)$/;
const remedy = (items: readonly Item[], i: number): boolean =>
  /^(?:she|he|we|you|they|i|one)$/.test(items[i]!.word) &&
  DOES.test(items[i + 1]?.word ?? '') &&
  FAILS.test(items[i - 1]?.word ?? '');

/** "If you swap your 4-0 for a 2-0 you have gone down": the main clause begins after the condition has named its size. */
function consequenceFrom(items: readonly Item[], i: number): boolean {
  if (remedy(items, i)) return true;
  if (ADVICE.test(items[i]!.word) && items[i - 1]?.kind === 'word' && blamed(items, i)) return true;
  // "If the hub is yellow it's a 22 G", "… you're holding a 22 G": in one word.
  const short = /^(?:it's|you're|you've|that's|they're)$/.test(items[i]!.word);
  if (!short && (!SUBJECTS.has(items[i]!.word) || !RESULTS.has(items[i + 1]?.word ?? ''))) return false;
  const condition = items.slice(0, i).findLastIndex((item) => CONDITIONS.has(item.word));
  return (
    condition >= 0 &&
    items.slice(condition, i).some((item) => item.kind === 'size' || item.colour !== undefined)
  );
}
