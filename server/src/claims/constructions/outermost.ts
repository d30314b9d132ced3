/**
 * A superlative over a set that is not listed: "the finest on the shelf, which is the 2", "a 4 Fr, since it is the widest we
 * have". Read only where the whole note leaves no doubt: of all the sizes it names for such a device, the one chosen stands
 * at one end.
 */
import { direction } from '../../sizes/index.ts';
import type { Size } from '../../sizes/model.ts';
import { lastSpoken, single } from '../text/focus.ts';
import type { Item } from '../text/items.ts';
import { textOf } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

export const outermost: Construction = {
  id: 'outermost',
  needs: () => [{ holds: ['superlative'] }],
  leaning: true,
  read(scene) {
    const words = measuredWords(scene.items).filter(
      (m) => m.degree === 'superlative' && decidable(m.axis) && !m.idiom,
    );
    const word = words[0];
    if (words.length !== 1 || !word) return [];
    if (!/^(?:the|our|your)$/.test(scene.items[word.at - 1]?.word ?? '')) return [];
    const tail = tailOf(scene.items, word);
    if (tail === undefined || narrowed(scene.items, word.at)) return [];
    const chosen = chosenIn(scene, word, tail);
    if (chosen?.sizes.length !== 1 || chosen.mentions.some((m) => m.bound)) return [];
    if (tail === word.to && !spokenNear(scene, chosen)) return [];
    return against(scene, word, chosen);
  },
};

/** Words of a set that everything named in a note may belong to. */
const SCOPE = new Set(
  `of the these those them all our lot set range family bunch row shelf trolley tray cart cupboard drawer rack ward unit
  department theatre kit bag box list table on in we you they have stock keep carry hold own use used there is here
  available that which one ones size sizes can get place find it its by far manage`
    .split(/\s+/)
    .filter(Boolean),
);
const ENDS = /^(?:[,;.!:)(—–]|so|because|since|and|but|is|are|was)$/;

/** Last item of the words that say of which set; undefined when they narrow it. */
function tailOf(items: readonly Item[], word: Measured): number | undefined {
  for (let i = word.to + 1; i < items.length; i++) {
    const item = items[i]!;
    const there = /^(?:there|it)$/.test(items[i - 1]?.word ?? '');
    if (item.kind === 'size' || (ENDS.test(item.word) && !(item.word === 'is' && there))) return i - 1;
    if (!SCOPE.has(item.word) && !item.deviceNoun && !item.axisNoun) return undefined;
  }
  return items.length - 1;
}

/** "For babies the widest is …", "on this ward the widest …": another set than the note's. */
function narrowed(items: readonly Item[], at: number): boolean {
  const start = items.slice(0, at).findLastIndex((item) => /^[.;:!?]$/.test(item.word)) + 1;
  const clause = items.slice(start, at);
  return (
    NARROWS.test(clause[0]?.word ?? '') &&
    clause.slice(1).some((item) => item.kind === 'word' && !SCOPE.has(item.word) && !item.deviceNoun) &&
    !clause.some((item) => WISHES.test(item.word))
  );
}
const NARROWS = /^(?:of|for|in|on|among|amongst|with|at|during|when|if|where)$/;

const SAID =
  /^, (?:you|we|they) (?:hold|have|use|get|work with|are (?:holding|using|working with|left with))$|(?:^|[,;—–:] (?:(?:since|because|as|for|and|so) )?(?:(?:it|that|this|which|the latter) )?|\b(?:since|because|as|for) (?:it|that|this) )(?:is|was|are|being|it's|=)(?: (?:by far|clearly|also|easily|simply|quite simply|still))?$|\b(?:since|because|as|for) (?:it's|that's)$/;
const FOLLOWS =
  /^[,:=(—–]?(?: ?(?:which|that|and that|this|it))?(?: ?(?:is|are|was|means|meaning|being|would be))?(?: ?(?:the|an?|our))?$/;
const DRAWN =
  /^,? ?(?:so|hence|therefore|thus|that is|that means|meaning|which means)(?: (?:\w+ ){0,3}\w+)?$/;
const WISHES = /^(?:wants?|needs?|go|goes|reach|take|use|ask|choose|pick|get|put|place|open|jump)$/;

/** The size the superlative is said of. */
function chosenIn(scene: Scene, word: Measured, tail: number): Group | undefined {
  const { items } = scene;
  const all = groups(items).flatMap(single);
  const after = all.find((g) => g.from > tail);
  const before = all.filter((g) => g.to < word.at);
  const link = after ? textOf(items.slice(tail + 1, after.from)) : '';
  if (after && before.length === 0 && link !== '' && FOLLOWS.test(link)) return after;
  const wish = items.slice(Math.max(0, word.at - 6), word.at).some((item) => WISHES.test(item.word));
  if (after && before.length === 0 && wish && after.from - tail <= 6 && DRAWN.test(link)) return after;
  const named = before.at(-1);
  const said = textOf(items.slice((named?.to ?? -1) + 1, word.at - 1).filter((item) => !item.deviceNoun));
  if (named)
    return picked(before) && word.at - named.to <= 14 && (SAID.test(said) || beside(items, said, tail))
      ? named
      : undefined;
  return all.length === 0 && /^(?:and )?(?:it|that|this|that one) (?:is|was)$|^it's$/.test(said)
    ? lastSpoken(scene)
    : undefined;
}

/** "10, 12 and 14 Fr, the 14 for children …": one alone, or one of those before it over again. */
const picked = (before: readonly Group[]): boolean =>
  before.length === 1 || before.slice(0, -1).some((group) => sameSizes(group, before.at(-1)!));

/** "Children get the 14, the slimmest.": set beside it, and no statement of its own. */
const beside = (items: readonly Item[], said: string, tail: number): boolean =>
  said === ',' && /^(?:[,.;:!)]|)$/.test(items[tail + 1]?.word ?? '');

/** Is another size of its system spoken of around here? */
const spokenNear = (scene: Scene, chosen: Group): boolean =>
  [scene.sentence, ...scene.before, ...scene.context].some((sentence) =>
    groups(sentence.items).some((g) =>
      g.sizes.some(
        ({ system, value }) => system === chosen.sizes[0]!.system && value !== chosen.sizes[0]!.value,
      ),
    ),
  );

/** How many sizes of its kind a note must name, the chosen one with them. */
const ENOUGH = 3;

const rank = ({ system, value }: Size): number => (direction(system) === 'down' ? -value : value);

/** "Aorta 3-0, femoral 5-0, the tibials 7-0. So with 7-0 you hold the …": the sizes that the sentence before lists. */
function listed({ before }: Scene, { system, value }: Size): readonly Size[] | undefined {
  const previous = before.at(-1);
  const sizes = previous && previous.close !== '?' ? groups(previous.items).flatMap((g) => g.sizes) : [];
  const all = sizes.filter((size, i) => sizes.findIndex((one) => one.value === size.value) === i);
  return all.length >= ENOUGH &&
    all.every((size) => size.system === system) &&
    all.some((size) => size.value === value)
    ? all
    : undefined;
}

function against(scene: Scene, word: Measured, chosen: Group): Reading[] {
  const size = chosen.sizes[0]!;
  const others = (listed(scene, size) ?? scene.named(size.system, chosen.mentions[0]!.device)).filter(
    ({ value }) => value !== size.value,
  );
  if (others.length < ENOUGH - 1) return [];
  const over = others.filter((other) => rank(other) > rank(size)).length;
  if (over !== 0 && over !== others.length) return [];
  const at = scene.items[chosen.from]?.mention === chosen.mentions[0] ? chosen.from : word.at;
  const rest: Group = { ...chosen, sizes: others };
  const made = wordless(
    comparison(scene, 'outermost', chosen, rest, word, word.sign === 1 ? 'more' : 'less'),
  );
  if (made.claim.kind !== 'comparison') return [];
  return [
    {
      claim: { ...made.claim, focus: spanOf(scene, scene.items[at]!) },
      at: Math.max(word.at, at),
      from: Math.min(word.at, at),
      to: Math.max(word.to, at),
      unconditional: true,
    },
  ];
}
