/**
 * What is told of a thread in free words, where no tighter reading was found: "you have to remember it never goes away",
 * "the body clears it within two months", "… so well because it is drawn as a single filament". The subject may stand in
 * the sentence before. What is said must have one owner, and nothing may turn it round.
 */
import type { Item } from '../text/items.ts';
import { materialsIn, type NamedMaterial } from '../text/materials.ts';
import { ownerOf } from '../text/owner.ts';
import { qualityAt } from '../text/qualities.ts';
import type { Scene } from '../text/scene.ts';
import { becomes } from '../words/becoming.ts';
import { materialClaim } from './material-claim.ts';
import type { Reading } from './model.ts';
import { exampleNamed, exampleOf, listOf, namedLast, wantedOf } from './told-otherwise.ts';

/** Words for any thread. */
const THREAD_NOUNS = /^(?:threads?|sutures?|stitch|stitches|strands?|materials?|ones?|ties?)$/;
/** What turns a statement round, or makes another of it. */
const OPERATORS =
  /^(?:if|unless|whether|or|than|instead|rather|except|neither|nor|either|should|would|could|suppose|imagine|almost|hardly|rarely|seldom|half|partly|some|sometimes|question|ask|asks)$/;

interface Told {
  readonly at: number;
  readonly property: string;
  readonly value: string;
  readonly own: boolean;
  /** Said of the thread by words that have their own subject: "nobody needs to take it out". */
  readonly free: boolean;
  readonly from?: number | undefined;
  /** Stands where no verb ties it to a subject. */
  readonly loose: boolean;
}

export function toldOf(scene: Scene): Reading[] {
  const { items } = scene;
  if (items.length > 60 || scene.sentence.close === '?') return [];
  const named = materialsIn(items);
  return tellings(items).flatMap((told) => {
    if (fadesOnly(items, told)) return [];
    const wanted = told.own
      ? undefined
      : (wantedOf(items, told.at, named) ?? namedLast(items, told.at, named));
    if (wanted) return [{ ...reading(scene, told, wanted), unconditional: true }];
    const kind = told.own ? undefined : exampleNamed(items, told.at, named);
    if (kind) return [{ ...reading(scene, told, kind), unconditional: true, own: true }];
    if (told.loose) return [];
    const example = told.own ? exampleOf(items, told.at, named) : undefined;
    if (example) return turned(items, 0, told.at) ? [] : [reading(scene, told, example)];
    const owner = told.free
      ? freely(items, told.at, named)
      : ownerOf(items, told.from ?? told.at, named, THREAD_NOUNS);
    if (owner === 'other')
      return turned(items, 0, told.at)
        ? []
        : listOf(items, told.at, named).map((m) => reading(scene, told, m));
    if (turned(items, typeof owner === 'string' ? 0 : owner.at, told.at)) return [];
    if (owner === 'both') return named.filter((m) => m.to < told.at).map((m) => reading(scene, told, m));
    if (typeof owner !== 'string') return [reading(scene, told, owner)];
    const subject = owner === 'before' ? carried(scene) : oneOfTwo(scene, owner);
    return subject ? [reading(scene, told, { ...subject, at: told.at, to: told.at })] : [];
  });
}

/** "after six weeks polydioxanone has not been absorbed": denied of that time only. */
const fadesOnly = (items: readonly Item[], { value, own, property }: Told): boolean =>
  property === 'absorbable' &&
  own &&
  value === 'no' &&
  items.some(({ word }) => /^(?:not|n't|won't|hasn't|doesn't|isn't|never)$/.test(word)) &&
  items.some(({ word }) =>
    /^(?:weeks?|months?|days?|fortnight|yet|still|by|until|before|tomorrow)$/.test(word),
  );

/** Qualities and fates of the sentence, each property once. */
function tellings(items: readonly Item[]): Told[] {
  const found = items.flatMap((_, at): Told[] => {
    const fate = becomes(items, at);
    if (fate)
      return [
        {
          at,
          property: 'absorbable',
          value: fate.stays ? 'no' : 'yes',
          own: true,
          free: fate.free,
          from: fate.from,
          loose: false,
        },
      ];
    const row = qualityAt(items, at);
    if (!row) return [];
    const loose = !predicated(items, at);
    return [{ at, property: row.property, value: row.value, own: false, free: false, loose }];
  });
  return found.filter(
    (one, i) =>
      one.loose || !found.slice(0, i).some((other) => !other.loose && other.property === one.property),
  );
}

const BE =
  /^(?:is|are|was|being|it's|they're|that's|'s|as|counts|stays|remains|made|drawn|extruded|spun|built|called|classed|makes|rates|qualifies)$/;
/** Between "is" and a quality: what would make it the quality of something else. */
const ELSEWHERE =
  /^(?:for|with|under|over|by|in|on|beside|after|before|to|at|like|into|onto|against|around|between|without|within|it|they|you|we|he|she|i|this|these|those|when|where|while|because|since|so|but|that|which|who|your|his|her|their|not|never|no|next|used|tied|kept|stored|;|:|\(|—|–)$/;
const FAR = 8;

/** "is …", "as a …", "makes it a …": what stands before a noun of its own is said of that. */
function predicated(items: readonly Item[], at: number): boolean {
  if (!ends(items, at)) return false;
  for (let i = at - 1; i >= Math.max(0, at - FAR); i--) {
    const { word } = items[i]!;
    // "as thick as a 3-0 synthetic": likened, not told.
    if (word === 'as' && items[i - 2]?.word === 'as') return false;
    if (BE.test(word) || (word === 'it' && /^makes?$/.test(items[i - 1]?.word ?? ''))) return true;
    if (
      (ELSEWHERE.test(word) && !DENIES.test(word)) ||
      (items[i]!.kind === 'punctuation' && !/^[,"“”'‘’]$/.test(word))
    )
      return false;
    if (word === ',' && /^(?:the|an?|our|your)$/.test(items[i + 1]?.word ?? '')) return false;
  }
  return false;
}
const DENIES = /^(?:not|never)$/;

/** Nothing follows that the quality would belong to: "braided and soft", "a braided skin suture", not "absorbable mesh". */
function ends(items: readonly Item[], at: number): boolean {
  for (let i = at + 1; i <= at + 3; i++) {
    const item = items[i];
    if (!item || item.kind === 'punctuation' || ENDS.test(item.word) || THREAD_NOUNS.test(item.word))
      return true;
    if (item.kind === 'word' && !qualityAt(items, i) && !item.word.endsWith('ly') && i === at + 3)
      return false;
  }
  return false;
}
const ENDS =
  /^(?:and|but|so|because|since|which|that|in|within|over|by|after|for|with|from|on|like|as|while|whereas|throughout|inside|though|to|at|through|too|also|once|when|here|there|monofilament|multifilament|filament|kind|type|sort|class|nature|construction|structure|group|family|all|until|under|whatever|however|before|until|either|both)$/;

/** Something between the thing and what is told of it that turns it round. */
const turned = (items: readonly Item[], from: number, at: number): boolean =>
  items.slice(Math.max(0, from - 1), at + 1).some((item) => OPERATORS.test(item.word)) ||
  items.slice(at, at + 10).some((item) => /^(?:if|unless|than|years?)$/.test(item.word));

/** "nobody needs to take it out": said of the one material around it. */
function freely(
  items: readonly Item[],
  at: number,
  named: readonly NamedMaterial[],
): NamedMaterial | 'before' | 'other' {
  const ids = new Set(named.map(({ id }) => id));
  if (ids.size > 1 || items.some((item) => OTHER_STAYS.test(item.word))) return 'other';
  return named[0] ? (named[0].at <= at + 8 ? named[0] : 'other') : 'before';
}
/** Other things that are taken out, or that go. */
const OTHER_STAYS =
  /^(?:drains?|tubes?|catheters?|cannulas?|cannulae|staples?|clips?|needles?|packs?|dressings?|strips?|swabs?|lines?|sheaths?|wires?|mesh|glue|plaster|skin-staples)$/;

const REACH = 3;
const RESUMES =
  /^(?:it|it's|it'll|its|they|they're|this|that|that's|these|those|which|stitch|stitches|suture|sutures|thread|threads|strand|material|stuff|them)$/;

/** The one material spoken of in the sentences before, when this one goes on about it. */
function carried(scene: Scene): NamedMaterial | undefined {
  const { items } = scene;
  const opens = items.slice(0, 14).some((item) => RESUMES.test(item.word));
  // "Left = goes away": said of what stands before the sign.
  if (items[1]?.word === '=') return undefined;
  const before = scene.before.slice(-REACH);
  const nearest = before.findLast((sentence) => materialsIn(sentence.items).length > 0);
  const last = nearest ?? (opens && scene.before.length === 0 ? scene.context.at(-1) : undefined);
  if (!last || (!opens && nearest !== before.at(-1))) return undefined;
  const named = materialsIn(last.items);
  const [first] = named;
  const one = first && named.every(({ id }) => id === first.id);
  const likened = /^(?:like|unlike|than|as|not|without|over|except|of)$/.test(
    last.items[(first?.at ?? 0) - 1]?.word ?? '',
  );
  return one && !likened ? first : undefined;
}

/** "The former …" of the two that the sentence before names. */
function oneOfTwo(scene: Scene, which: 'former' | 'latter'): NamedMaterial | undefined {
  const named = materialsIn(scene.before.at(-1)?.items ?? []);
  return named.length === 2 ? named[which === 'former' ? 0 : 1] : undefined;
}

function reading(scene: Scene, told: Told, m: NamedMaterial): Reading {
  const claim = materialClaim(scene, 'told-of', m.id, `${told.property}:${told.value}`, told.at);
  return {
    claim,
    at: told.at,
    from: told.own ? told.at : Math.min(m.at, told.at),
    to: Math.max(m.to, told.at),
    ...(told.own ? { own: true } : {}),
  };
}
