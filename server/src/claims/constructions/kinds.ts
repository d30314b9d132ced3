/**
 * Kinds of devices compared by name, where the text gives each its size: "Pigtails are 8–14 Fr, surgical drains 24–36 Fr.
 * The pigtails are the wider ones."
 */
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSystem } from '../text/scene.ts';
import { DEVICE_NOUNS } from '../words/nouns.ts';
import type { Construction, Reading } from './model.ts';
import { comparison } from './than.ts';

const BE = ['is', 'are', 'being', 'be'];
/** "must be", "will be", "has to be", "turns out to be": whoever concludes it says that it is so. */
const CONCLUDED = /^(?:will|must|has|have|to|turns?|out)$/;

export const kinds: Construction = {
  id: 'kinds',
  leaning: true,
  needs: () => [
    { holds: ['compared'], words: BE },
    { holds: ['superlative'], words: BE },
  ],
  read(scene) {
    if (scene.sentence.close === '?') return [];
    const words = measuredWords(scene.items).filter(
      (m) =>
        decidable(m.axis) &&
        m.axis !== 'flow' &&
        m.axis !== 'strength' &&
        !m.idiom &&
        !m.excess &&
        m.degree !== 'plain',
    );
    const [word] = words;
    const said = word && saidOf(scene.items, word);
    return word && said ? judgedBy(scene, word, said) : [];
  },
};

/** A kind with its size, by the words that name it. */
interface Named {
  readonly names: readonly string[];
  readonly group: Group;
}

/** The kind said to be the larger, and the kind after "than". */
interface Said {
  readonly subject: readonly string[];
  readonly other?: readonly string[];
  readonly from: number;
}

const ARTICLE = /^(?:the|our|an?|those|these)$/;
const STEADY = /^(?:therefore|thus|always|still|also|by|far|much|clearly|then|hence|a|bit|of|course)$/;
const OPENS = /^(?:so|therefore|thus|hence|and|then|[,;:—–.])$/;

/** "[so] the pigtails are the larger": the subject stands alone between its opening and the verb. */
function saidOf(items: readonly Item[], word: Measured): Said | undefined {
  const be = items.findLastIndex((item, i) => i < word.at && BE.includes(item.word));
  const between = items.slice(be + 1, word.at);
  if (
    be < 1 ||
    between.length > 4 ||
    !between.every((item) => STEADY.test(item.word) || ARTICLE.test(item.word))
  )
    return undefined;
  const verb = verbFrom(items, be);
  if (verb < 1) return undefined;
  const opening =
    items.slice(0, verb).findLastIndex((item) => OPENS.test(item.word) || item.kind === 'size') + 1;
  const from = opening + ofTwo(items.slice(opening, verb));
  const said = items.slice(from, verb);
  // "The one for skin is the fatter": told by what it is for.
  const phrase = finds(FOR, `${said.map((item) => item.word).join(' ')} `) ? said.slice(-1) : said;
  if (items[from - 1]?.kind === 'size' || (phrase === said && !isThing(phrase))) return undefined;
  const than = items.findIndex((item, i) => i > word.at && i <= word.to + 3 && item.word === 'than');
  const other = than < 0 ? undefined : phraseAfter(items, than);
  const definite = items[word.at - 1]?.word === 'the' || word.degree === 'superlative';
  if (than < 0 ? !definite || !closes(items, word) : !other) return undefined;
  return { subject: namesIn(phrase), from, ...(other ? { other } : {}) };
}

/** Where the verb begins; a "be" with none of these before it is no statement. */
function verbFrom(items: readonly Item[], be: number): number {
  if (items[be]!.word !== 'be') return be;
  let from = be;
  while (from > 0 && CONCLUDED.test(items[from - 1]!.word)) from--;
  return from === be ? -1 : from;
}

const FOR = /^the (?:one|ones|needle|tube|thread|suture|catheter|drain) (?:for|in) (?:the )?[a-z-]+ $/;

/** "Of the two the spinal needle is …": how many words to leave out. */
const ofTwo = (phrase: readonly Item[]): number =>
  /^of (?:the|these|those) (?:two|pair) /.test(`${phrase.map((item) => item.word).join(' ')} `) ? 3 : 0;

/** "the surgical drains": a few words that end in a device; not "the box of drains" nor "the dog". */
const isThing = (phrase: readonly Item[]): boolean =>
  phrase.length > 0 &&
  phrase.length <= 4 &&
  phrase.every((item) => item.kind === 'word' && !/^of$|'s$/.test(item.word)) &&
  (DEVICE_NOUNS.has(singular(phrase.at(-1)!.word)) || /^(?:midlines?|pigtails?)$/.test(phrase.at(-1)!.word));

/** "the larger", "the larger ones", "the larger of the two": and nothing that narrows it. */
function closes(items: readonly Item[], word: Measured): boolean {
  const rest = items
    .slice(word.to + 1, word.to + 6)
    .map((item) => item.word)
    .join(' ');
  return (
    /^(?:(?:ones?|kind|sort|needles?|lines?|drains?|catheters?|tubes?)(?= |$))? ?(?:of (?:the|these|those) (?:two|pair)|(?:of|here)(?= [.,;])|$|[.,;!)])/.test(
      rest,
    ) || rest === ''
  );
}

function phraseAfter(items: readonly Item[], than: number): readonly string[] | undefined {
  const end = items.findIndex((item, i) => i > than && item.kind !== 'word');
  const phrase = items.slice(than + 1, end < 0 ? items.length : end);
  return isThing(phrase) && items[end]?.kind !== 'size' ? namesIn(phrase) : undefined;
}

const singular = (word: string) => (/[^su]s$/.test(word) ? word.slice(0, -1) : word);
/** Small words that tell no kind from another. */
const SMALL =
  /^(?:the|our|an?|those|these|is|are|of|at|in|on|we|they|it|one|size|kind|usual|standard|stock|keep|use|have|and|both|each|other|two)$/;
const namesIn = (phrase: readonly Item[]): string[] =>
  phrase.map((item) => singular(item.word)).filter((word) => !SMALL.test(word));

const LINK =
  /^(?:is|are|of|at|in|from|=|:|\(|run|runs|measure|measures|come|comes|about|usually|mostly|typically|always|a|an|size|sizes|be|to|out|turns?|will|must|has|really|also|course|actually)$/;
const BREAK = /^(?:[,;:.(—–]|and|or|but|while|whereas|so|the|our|an?|than|with|for|from)$/;

/** The sizes of a row of items with the words right before each. */
function named(items: readonly Item[]): Named[] {
  return groups(items).flatMap((group) => {
    let end = group.from;
    while (end > 0 && group.from - end < 6 && LINK.test(items[end - 1]!.word)) end--;
    let start = end;
    while (
      start > 0 &&
      end - start < 3 &&
      items[start - 1]!.kind === 'word' &&
      !BREAK.test(items[start - 1]!.word)
    )
      start--;
    const names = namesIn(items.slice(start, end));
    const plain = group.mentions.length === 1 && !group.mentions[0]!.bound;
    return plain && names.length > 0 ? [{ names, group }] : [];
  });
}

function judgedBy(scene: Scene, word: Measured, { subject, other, from }: Said): Reading[] {
  const own = named(scene.items.slice(0, from));
  const earlier = scene.before.length > 0 ? scene.before : scene.context;
  const nearest =
    own.length > 0
      ? own
      : earlier.flatMap((sentence) => (sentence.close === '?' ? [] : named(sentence.items)));
  const [a, b] = nearest;
  if (nearest.length !== 2 || !a || !b || !sameSystem(a.group, b.group)) return [];
  const all = groups(scene.items);
  if (own.length === 0 && all.length > 0) return [];
  if (own.length > 0 && all.some((g) => g.from >= from)) return [];
  const [first, second] = [matches(subject, a, b), matches(subject, b, a)];
  if (first === second) return [];
  const [left, right] = first ? [a, b] : [b, a];
  if (other && !matches(other, right, left)) return [];
  const read = comparison(scene, 'kinds', left.group, right.group, word);
  return [{ ...read, from: Math.min(from, word.at) }];
}

/** The words name this kind and not the other: what both are called by tells nothing. */
function matches(words: readonly string[], one: Named, other: Named): boolean {
  const only = (a: Named, b: Named) =>
    words.some((word) => a.names.includes(word) && !b.names.includes(word));
  return only(one, other) && !only(other, one);
}
