/**
 * A thread named behind what is told of it: "something that goes by itself, e.g. nylon", "if you want a braid ask for silk",
 * "the braid on the tray is silk".
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { NamedMaterial } from '../text/materials.ts';

/** "a thread that dissolves, such as silk": `at` is the word that tells what becomes of it. */
export function exampleOf(
  items: readonly Item[],
  at: number,
  named: readonly NamedMaterial[],
): NamedMaterial | undefined {
  const [first, ...more] = named;
  if (!first || more.length > 0 || first.at <= at || first.at - at > 12) return undefined;
  const kind = items.slice(Math.max(0, at - 8), at).some((item) => ANY_THREAD.test(item.word));
  return kind && GIVES_EXAMPLE.test(joined(items, at + 1, first.at)) ? first : undefined;
}
const ANY_THREAD =
  /^(?:something|one|anything|thread|suture|stitch|material|ones|sutures|threads|materials)$/;
const GIVES_EXAMPLE =
  /(?:^| )(?:such as|e\.g|eg|say|for (?:example|instance)|namely|i\.e|that is|like|so|:|\()(?: [,:.])?(?: (?:an?|the|our|take|use|choose|pick))?$/;

/** "a monofilament, silk for instance", "braided threads such as nylon monofilament": named as one of its kind, whatever is said of it. */
export function exampleNamed(
  items: readonly Item[],
  at: number,
  named: readonly NamedMaterial[],
): NamedMaterial | undefined {
  const m = named.find((one) => one.at > at);
  if (!m || m.at - at > 7) return undefined;
  const between = joined(items, at + 1, m.at);
  if (!EXAMPLE.test(between)) return undefined;
  const marked = MARKED.test(between) || MARKED_AFTER.test(joined(items, m.to + 1, m.to + 4));
  const replaced = REPLACES.test(joined(items, at - 4, at));
  return marked && (!replaced || DIRECTLY.test(between)) ? m : undefined;
}
const EXAMPLE =
  /^(?:(?:threads?|sutures?|stitch|stitches|materials?|ones?|strands?) )?(?:(?:,|\(|:|–|—) ?)?(?:(?:such as|like|e\.g|eg|say|for example|for instance|as for example|namely|take) ?)?(?:, ?)?(?:an?|the|our|some|plain|ordinary)?$/;
const MARKED = /\b(?:such as|e\.g|eg|say|for (?:example|instance)|namely)\b/;
const MARKED_AFTER = /^(?:, )?(?:for (?:instance|example)|say)\b/;
const REPLACES = /\b(?:instead|rather|than|without|not|replace[sd]?|over)\b/;
const DIRECTLY = /^(?:\S+ )?such as/;

/** "Steel, polypropylene and plain gut are all threads that stay": each of a list at the head of the sentence. */
export function listOf(
  items: readonly Item[],
  at: number,
  named: readonly NamedMaterial[],
): readonly NamedMaterial[] {
  const run = named.filter((m) => m.to < at);
  const last = run.at(-1);
  if (!last || run.length < 2 || run.length !== named.length || run[0]!.at > 2) return [];
  const joins = run.every(
    (m, i) =>
      i === 0 ||
      items.slice(run[i - 1]!.to + 1, m.at).every(({ word, kind }) => kind === 'size' || LISTS.test(word)),
  );
  const between = joined(items, last.to + 1, at);
  return joins && ARE_ALL.test(between) ? run : [];
}
const LISTS = /^(?:,|and|&|plain|chromic|also|both|the)$/;
const ARE_ALL =
  /^(?:are|will) (?:both|all|the|threads?|sutures?|materials?|stitches|ones|kinds?|sorts?|that|which|will|of|just|simply|usually|things|those|what| )*$/;

const WANTS =
  /\b(?:want|wants|need|needs|prefer|prefers|require|after|looking for|wish for)(?: (?:an?|some|the|real|proper|soft|strong|fine|good|thread|that|is|smooth|suture|one|which|something))*$/;
const TAKES =
  /\b(?:for|take|use|choose|pick|have|try|open|get|hand|grab|order|is|with|be)(?: (?:the|some|a|our|either))*$/;
const TURNED =
  /^(?:not|never|no|don't|avoid|instead|than|rather|unlike|without|except|but|unless|or|neither|nor)$/;

/** "Ask for silk if you want a braid": the one material that is recommended. */
export function wantedOf(
  items: readonly Item[],
  at: number,
  named: readonly NamedMaterial[],
): NamedMaterial | undefined {
  const [only, ...more] = named;
  if (!only || more.some(({ id }) => id !== only.id) || !WANTS.test(joined(items, at - 7, at)))
    return undefined;
  const taken = TAKES.test(joined(items, only.at - 4, only.at)) || items[only.at - 1]?.word === ':';
  return taken && !items.some(({ word }) => TURNED.test(word)) ? only : undefined;
}

const NOUN_OF = /^(?:braids?|monofilaments?|multifilaments?|thread|suture|one|ones|material|stitch)$/;
const DIRECT = /^(?:the|our|my)$/;
const BREAKS = /^(?:[,;:.]|and|while|but|whereas)$/;
/** What may stand in such a subject besides: "the only natural thread in our cupboard". */
const PLACED =
  /^(?:only|one|on|in|of|at|this|that|these|our|the|my|here|there|we|have|stock|keep|use|left|right|same)$/;

/** "The braid on the tray is silk": the subject is the quality, and the thread its predicate. */
export function namedLast(
  items: readonly Item[],
  at: number,
  named: readonly NamedMaterial[],
): NamedMaterial | undefined {
  const m = named.find((one) => one.at > at);
  if (!m || !/^(?:is|are)$/.test(items[m.at - 1]?.word ?? '') || m.at - at > 10) return undefined;
  if (!NOUN_OF.test(items[at]!.word) && !NOUN_OF.test(items[at + 1]?.word ?? '')) return undefined;
  const subject = items.slice(at + 1, m.at - 1);
  if (
    subject.some(
      (item) => item.kind !== 'word' || TURNED.test(item.word) || /^(?:is|are|with|and|for)$/.test(item.word),
    )
  )
    return undefined;
  const before = items.slice(Math.max(0, at - 3), at);
  const article = before.findLastIndex((item) => DIRECT.test(item.word));
  if (article < 0 || !before.slice(article + 1).every((item) => PLACED.test(item.word))) return undefined;
  const opens = items[at - before.length + article - 1];
  return opens === undefined || BREAKS.test(opens.word) ? m : undefined;
}
