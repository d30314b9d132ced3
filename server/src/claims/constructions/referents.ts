/**
 * A property said of materials that are named further off: "the former is braided", "It is a monofilament." after the
 * sentence that names it, "silk, nylon and polyester are all permanent", "neither silk nor nylon is absorbable".
 */
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { materialsIn, type NamedMaterial } from '../text/materials.ts';
import { qualityAt, STRANDS } from '../text/qualities.ts';
import type { Scene } from '../text/scene.ts';
import { PROPERTY_WORDS, type PropertyRow } from '../words/properties.ts';
import { materialClaim } from './material-claim.ts';
import type { Construction, Reading } from './model.ts';

export const referents: Construction = {
  id: 'referents',
  leaning: true,
  needs: () => [{ words: PROPERTY_WORDS.keys() }, { like: STRANDS }],
  read(scene) {
    if (holds(scene.items, TURNED)) return [];
    return scene.items.flatMap((_, at) => {
      const row = qualityAt(scene.items, at);
      if (!row) return [];
      const predicate = predicateAt(scene.items, at);
      const said = predicate ? subjectsOf(scene, predicate.from) : [];
      if (said.length > 0)
        return said.map((m) => reading(scene, at, m, row, predicate!.not !== neither(scene.items, m)));
      const here = [opener, among, nominal, likeAll].flatMap((way) => way(scene.items, at));
      return [...here, ...demonstrated(scene, at)].map((m) => reading(scene, at, m, row, false));
    });
  },
};

const TURNED = cue(/^(?:unlike|except|than|if|unless|or)$/);

const COPULA = /^(?:is|are|was|were|it's|they're|stays?|remains?|counts?)$/;
const FILLER =
  /^(?:an?|the|all|both|each|always|also|usually|in|fact|really|fully|completely|truly|therefore|so|smooth|soft|plain|single|coated|as|made|classed|only|indeed|simply|one|strong|natural|synthetic|and|,|suture|sutures|thread|material|kind|slowly|quickly)$/;
const BACK = 8;

interface Predicate {
  /** The copula. */
  readonly from: number;
  readonly not: boolean;
}

/** "is (not) a smooth braid": the copula that carries the property word. */
function predicateAt(items: readonly Item[], at: number): Predicate | undefined {
  let not = false;
  for (let i = at - 1; i >= 0 && at - i <= BACK; i--) {
    const { word } = items[i]!;
    if (COPULA.test(word)) return { from: i, not };
    if (/^(?:isn't|aren't|wasn't)$/.test(word)) return { from: i, not: true };
    if (word === 'not') not = true;
    else if (!FILLER.test(word) && !PROPERTY_WORDS.has(word)) return undefined;
  }
  return undefined;
}

/** Whom the words before the copula mean; none when they name one material by itself, which is read elsewhere. */
function subjectsOf(scene: Scene, copula: number): NamedMaterial[] {
  const { items } = scene;
  const here = materialsIn(items).filter((m) => m.to < copula);
  const start = clauseStart(items, copula);
  const phrase = items
    .slice(start, copula)
    .map((item) => item.word)
    .join(' ');
  const rank =
    /^(?:the )?(former|latter)$/.exec(phrase)?.[1] ?? (/^it's$/.test(items[copula]!.word) ? 'it' : undefined);
  if (rank === 'former' || rank === 'latter') return pairOf(scene, here, rank);
  if (PRONOUN.test(phrase) || (rank === 'it' && start === copula)) return before(scene, here, phrase);
  return [...listed(items, here, copula), ...bracketed(items, here, copula)];
}
const PRONOUN =
  /^(?:it|this|that|they|these|both|both of them|both of these|this one|that one|this thread|this suture|this material)$/;

function clauseStart(items: readonly Item[], copula: number): number {
  const cut = items
    .slice(0, copula)
    .findLastIndex(
      (item) =>
        item.kind === 'punctuation' ||
        /^(?:and|but|while|whereas|because|so|since|as|that|which)$/.test(item.word),
    );
  // "that" and "this" may open the clause themselves.
  return cut === copula - 1 && /^(?:that|this)$/.test(items[cut]?.word ?? '') ? cut : cut + 1;
}

/** "Silk and polydioxanone differ: the former is …": two, here or in the sentence before. */
function pairOf(scene: Scene, here: readonly NamedMaterial[], rank: 'former' | 'latter'): NamedMaterial[] {
  const found = distinct(here.length >= 2 ? here : materialsIn(scene.before.at(-1)?.items ?? []));
  const chosen = found[rank === 'former' ? 0 : 1];
  return found.length === 2 && chosen ? [away(chosen, found === here)] : [];
}

/** "It is braided." after a sentence about one material, "Both are braided." after two. */
function before(scene: Scene, here: readonly NamedMaterial[], phrase: string): NamedMaterial[] {
  const previous = spokenBefore(scene, phrase);
  if (
    here.length > 0 ||
    !previous ||
    previous.items.some((item) => /^(?:unlike|not|than|like)$/.test(item.word))
  )
    return [];
  const found = distinct(materialsIn(previous.items));
  const count = phrase.startsWith('both') ? 2 : 1;
  if (/^(?:they|these)$/.test(phrase) ? found.length < 1 : found.length !== count) return [];
  if (/^(?:this|that)$/.test(phrase) && previous.close === '?' && previous.items.length > 8) return [];
  return found.map((m) => away(m, false));
}

/** The sentence before; "In 2-0 and 3-0." tells nothing but sizes and is passed over. */
const spokenBefore = ({ before: sentences, context }: Scene, phrase: string) =>
  sentences.findLast(
    ({ items }) =>
      !items.every((item) => item.kind === 'size' || SIZES_ONLY.test(item.word)) &&
      !(phrase === 'it' && goesOn(items)),
  ) ?? context.at(-1);
/** "It holds a knot.", between the material and what is said of it: still the same one. */
const goesOn = (items: readonly Item[]): boolean =>
  items[0]?.word === 'it' && materialsIn(items).length === 0 && !items.some((item) => item.deviceNoun);
const SIZES_ONLY =
  /^(?:in|from|to|and|or|,|\.|comes|sizes?|sold|kept|stocked|only|mostly|usually|here|we|use)$/;

const distinct = (found: readonly NamedMaterial[]): NamedMaterial[] =>
  found.filter((m, i) => found.findIndex((other) => other.id === m.id) === i);

/** A material of another sentence has no place in this one. */
const away = (m: NamedMaterial, own: boolean): NamedMaterial => (own ? m : { ...m, at: -1, to: -1 });

/** "silk, nylon and polyester are all …": every one of them. */
function listed(items: readonly Item[], here: readonly NamedMaterial[], copula: number): NamedMaterial[] {
  const run = [...here];
  const last = run.at(-1);
  if (
    !last ||
    !items.slice(last.to + 1, copula).every((item) => /^(?:all|both|each|sutures?|threads?)$/.test(item.word))
  )
    return [];
  let first = run.length - 1;
  while (
    first > 0 &&
    items.slice(run[first - 1]!.to + 1, run[first]!.at).every(joins) &&
    run[first - 1]!.to + 1 < run[first]!.at
  )
    first--;
  const members = run.slice(first);
  const opener = items[members[0]!.at - 1]?.word ?? '';
  return members.length < 2 || /^(?:of|between|among|like|from|with|to|for|after|not)$/.test(opener)
    ? []
    : members;
}
const joins = (item: Item): boolean => /^(?:,|and|nor|plus|&)$/.test(item.word);

/** "Neither silk nor nylon": denied of both. */
const neither = (items: readonly Item[], m: NamedMaterial): boolean =>
  m.at >= 0 && items.slice(0, m.at).some((item) => item.word === 'neither');

/** "Polydioxanone, the last of the group, is …". */
function bracketed(items: readonly Item[], here: readonly NamedMaterial[], copula: number): NamedMaterial[] {
  const [only, ...more] = here;
  if (!only || more.length > 0 || items[only.to + 1]?.word !== ',' || items[copula - 1]?.word !== ',')
    return [];
  const inside = items.slice(only.to + 2, copula - 1);
  const plain =
    inside.length > 0 &&
    inside.length <= 8 &&
    inside.every((item) => item.kind === 'word' && !COPULA.test(item.word) && !PROPERTY_WORDS.has(item.word));
  return plain && /^(?:the|an?|our|my|which|who|by|in|on|at|last|another|your)$/.test(inside[0]!.word)
    ? [only]
    : [];
}

/** "Being a braid, polydioxanone wicks", "As a monofilament, silk slides", "Because it is braided, a 4-0 nylon is soft". */
function opener(items: readonly Item[], at: number): NamedMaterial[] {
  const comma = items.findIndex((item, i) => i > at && item.word === ',');
  const [only, ...more] = materialsIn(items);
  if (!only || more.length > 0 || comma < 0 || comma - at > 3 || only.at <= comma) return [];
  const sized = items.slice(comma + 1, only.at);
  if (!sized.every((item) => item.kind === 'size' || /^(?:an?|the|our|this)$/.test(item.word))) return [];
  const lead = items.slice(0, at).map((item) => item.word);
  const rest = CAUSE.test(lead.slice(0, 2).join(' ')) ? lead.slice(2) : lead.slice(1);
  return /^(?:being|as|because|since)$/.test(lead[0] ?? '') &&
    (rest.length < lead.length - 1 || /^(?:being|as)$/.test(lead[0]!)) &&
    rest.every((word) => FILLER.test(word))
    ? [only]
    : [];
}
const CAUSE = /^(?:because|since|as) (?:it|it's)$/;

/** "Polypropylene comes out at ten days like all nonabsorbable threads": it is one of them. */
function likeAll(items: readonly Item[], at: number): NamedMaterial[] {
  const [only, ...more] = materialsIn(items);
  const lead = joined(items, at - 3, at);
  const noun = items[at + 1]?.word ?? '';
  return only &&
    more.length === 0 &&
    only.at < at &&
    !items.slice(only.to + 1, at).some(({ word }) => /^(?:[;:—–]|not|do|never)$/.test(word)) &&
    /(?:^| )(?:like|as with|as do|as are) (?:all|any|every|other|the other|most) ?$/.test(`${lead} `) &&
    /^(?:threads?|sutures?|materials?|stitches|strands?)$/.test(noun)
    ? [only]
    : [];
}

/** "Of the absorbable threads, nylon …": it is counted among them. */
function among(items: readonly Item[], at: number): NamedMaterial[] {
  const comma = items.findIndex((item, i) => i > at && item.word === ',');
  const lead = items.slice(0, at).map((item) => item.word);
  const only = materialsIn(items).filter((m) => m.at === comma + 1);
  const noun = items
    .slice(at + 1, Math.max(comma, at + 1))
    .every((item) => /^(?:threads?|sutures?|ones?|materials?|stitches|we|use|stock)$/.test(item.word));
  const opens = /^(?:of|among) (?:all )?(?:the|our) ?(?:common |usual )?$/.test(
    `${lead.join(' ')} `.replace(/ +$/, ' '),
  );
  const named = materialsIn(items);
  if (comma < 0 || (named[0] && named[0].at < comma)) return counted(items, at, named);
  return comma > 0 && noun && opens && named.length === 1 ? only : [];
}

/** "Among the braided threads are silk and polyglactin." */
function counted(items: readonly Item[], at: number, named: readonly NamedMaterial[]): NamedMaterial[] {
  const [first] = named;
  const lead = items
    .slice(0, at)
    .map((item) => item.word)
    .join(' ');
  if (!first || !/^(?:among|to) (?:all )?the$/.test(lead)) return [];
  const link = items
    .slice(at + 1, first.at)
    .map((item) => item.word)
    .join(' ');
  if (
    !/^(?:threads?|sutures?|ones|materials?|stitches) (?:are|is|belongs?|count|counts|you (?:will )?find|we (?:have|find|count))$/.test(
      link,
    )
  )
    return [];
  const all = named.every((m, i) => i === 0 || items.slice(named[i - 1]!.to + 1, m.at).every(joins));
  return all ? [...named] : [];
}

/** "6-0 polypropylene. A multifilament thread like this …": the one thread of the sentence before. */
function demonstrated(scene: Scene, at: number): NamedMaterial[] {
  const { items } = scene;
  const previous = scene.before.at(-1);
  if (at > 3 || !previous || previous.close === '?' || materialsIn(items).length > 0) return [];
  const titled = previous.items.length <= 4 && NOTHING_BUT.test(joined(items, 0, at + 6));
  if ((!titled && !POINTS.test(joined(items, 0, at + 6))) || items.some(({ word }) => SUPPOSED.test(word)))
    return [];
  if (previous.items.some(({ word }) => /^(?:unlike|not|never|no|than|like|instead|avoid|or)$/.test(word)))
    return [];
  const found = distinct(materialsIn(previous.items));
  return found.length === 1 ? [away(found[0]!, false)] : [];
}
/** "This braided thread", "such a braid", "an absorbable suture like this". */
const POINTS =
  /^(?:and |but |so )?(?:(?:this|such an?|these|such) (?:[a-z-]+ ){0,2}?[a-z-]+(?: (?:sutures?|threads?|strands?|stitch(?:es)?|materials?|ones?))? (?!which\b|as\b|of\b|with\b)|an? (?:[a-z-]+ ){1,2}?(?:sutures? |threads? |strands? |stitch |materials? )?(?:like|such as) (?:this|it|that|these|this one|that one)\b)/;
/** "Polypropylene. A braided, absorbable thread.": the material stands alone before. */
const NOTHING_BUT =
  /^an? (?:[a-z-]+ ,? ?){1,3}(?:sutures?|threads?|strands?|materials?|braid|monofilament)(?= [.,;:!—–]|$)/;
const SUPPOSED = /^(?:would|could|might|if|were|unless|instead|than|whereas|or|not|never|no)$/;

/** "The braid that holds knots well is polypropylene." */
function nominal(items: readonly Item[], at: number): NamedMaterial[] {
  const [only, ...more] = materialsIn(items);
  if (!only || more.length > 0 || at > 3 || !/^(?:the|our|one)$/.test(items[0]?.word ?? '')) return [];
  const copula = only.at - 1;
  const end = items[only.to + 1];
  if (copula <= at || !/^(?:is|was)$/.test(items[copula]?.word ?? '') || (end && end.kind !== 'punctuation'))
    return [];
  const between = items.slice(at + 1, copula);
  return between.length <= 10 &&
    between.every(
      (item) =>
        item.kind === 'word' &&
        !/^(?:not|no|never|is|was|are|nearest|closest|next|replaces?|replaced|rival|opposite|without)$/.test(
          item.word,
        ),
    )
    ? [only]
    : [];
}

function reading(scene: Scene, at: number, m: NamedMaterial, row: PropertyRow, denied: boolean): Reading {
  const claim = materialClaim(scene, 'referents', m.id, `${row.property}:${row.value}`, at);
  const from = m.at < 0 ? at : Math.min(m.at, at);
  return { claim, at, from, to: Math.max(m.to, at), own: true, ...(denied ? { denied } : {}) };
}
