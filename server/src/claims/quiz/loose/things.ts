/** Questions about colours, materials and statements: the colour of a size, the thread with a property, yes or no. */
import { compound } from '../../compound.ts';
import type { Claim, ColourClaim, Operand, PropertyClaim, Stance } from '../../model.ts';
import type { Item } from '../../text/items.ts';
import { textOf } from '../../text/joined.ts';
import { materialsIn } from '../../text/materials.ts';
import { pointsIn } from '../../text/points.ts';
import { groups } from '../../text/scene.ts';
import { codeOf } from '../../words/codes.ts';
import { fateIn } from '../../words/fates.ts';
import { PROPERTY_WORDS } from '../../words/properties.ts';
import { codeBefore, negated } from '../choice.ts';
import { compare, materialIs, onKey, readAs, sceneOf, sizeIs, sizeKey, sizesOf, spanOf } from '../desk.ts';
import type { Piece } from '../piece.ts';
import { AGREED_TO, NO, YES } from '../yes.ts';
import type { Told } from './index.ts';
import { numbersIn, onlyMaterial, operandAt, sizesSaid } from './said.ts';

/** "A pink cannula is what gauge?" "18", "And the 22?" "Yellow": one colour and one size between the two. */
export function hue({ question, head, focus }: Told): ColourClaim[] | undefined {
  const said = coloursOf(head);
  // "A 20 G cannula: green, pink or blue?" "Pink.": one of those on offer.
  const all = coloursOf(question);
  const asked = all.length > 1 && said.length === 1 && all.includes(said[0]!) ? [] : all;
  const colours = new Set([...asked, ...said]);
  if (colours.size !== 1 || asked.length > 0 === said.length > 0 || negated(question)) return undefined;
  const offered = asked.length > 0 ? sizesOf(question) : [];
  const chosen = offered.length > 1 && head.items.length <= FEW - 2 ? oneOf(offered, head) : undefined;
  const text = textOf(chosen ? question.items.filter(({ word }) => word !== 'or') : question.items);
  // "Then a pink cannula is an 18?" "It is a 20.": put forward, and mended.
  if (THREADS.test(text) || (offered.length > 0 && !chosen)) return undefined;
  const own = codeOf(question.items) ?? codeOf(head.items);
  const device = own ?? (chosen && codeBefore(question, chosen));
  if (device === 'both') return undefined;
  const named = chosen ? [chosen] : [...sizesOf(question), ...sizesSaid(head)];
  const numbers = numbersIn(head).filter(({ value }) => value >= THINNEST_NUMBER);
  const bare =
    named.length === 0 && numbers.length === 1 && asked.length > 0
      ? operandAt(head, numbers[0]!.item, scaleOf(device), numbers[0]!.value)
      : undefined;
  const size = named.length === 1 ? named[0]! : bare;
  if (!size || (said.length > 0 && sizesSaid(head).length > 0)) return undefined;
  return [sizeIs(size, [...colours][0]!, device, focus, spanOf(question))];
}
/** "18 G, 20 G or 22 G?" "22 G.", "The 22.": the one size of a reply, where the question offers it. */
function oneOf(offered: readonly Operand[], head: Piece): Operand | undefined {
  const [said, ...more] = sizesSaid(head);
  if (said) return more.length === 0 ? offered.find((one) => sizeKey(one) === sizeKey(said)) : undefined;
  const [number, ...others] = numbersIn(head);
  const alone =
    number && others.length === 0 && new Set(offered.map(({ sizes }) => sizes[0]!.system)).size === 1;
  return alone ? offered.find(({ sizes }) => sizes[0]!.value === number.value) : undefined;
}
/** No scale with colours has smaller numbers; those count options. */
const THINNEST_NUMBER = 5;
/** Dyes of threads, and what else has a colour. */
const THREADS =
  /\b(?:no|not|if|without|or|instead|threads?|sutures?|dyed?|blood|label|box|packets?|drawer|tape|sticker|than)\b/;
const coloursOf = ({ items }: Piece): string[] => items.flatMap(({ colour }) => colour ?? []);
const scaleOf = (device: ReturnType<typeof codeOf>): 'french' | 'needle-gauge' =>
  device === 'urinary-catheter' || device === 'suction-catheter' ? 'french' : 'needle-gauge';

/** "Which of silk, nylon and polyglactin goes away alone?" "Silk.", "Which is not absorbed?" */
export function materialChosen({
  question,
  head,
  focus,
}: Told): { claim: PropertyClaim; stance: Stance }[] | undefined {
  const { items } = question;
  const chosen = onlyMaterial(head);
  const offered = materialsIn(items).map(({ id }) => id);
  if (!chosen || head.items.length > FEW || (offered.length > 0 && !offered.includes(chosen)))
    return undefined;
  if (offered.length === 1 || !/\b(?:which|what|name|one|pick|choose)\b|[:,]/.test(textOf(items)))
    return undefined;
  const property = askedOf(items);
  if (!property || EXCHANGES.test(textOf(items))) return undefined;
  const claim = materialIs(chosen, property, focus, spanOf(question));
  return [{ claim, stance: negated(question) || NOT.test(textOf(items)) ? 'denied' : 'asserted' }];
}
const FEW = 6;
const EXCHANGES =
  /\b(?:than|instead|replaces?|swap|rather|before|after|like|as|with|did|except|when|why|how|if|used? (?:for|in|on))\b/;
const NOT = /\b(?:not|never|isn't|aren't|doesn't|won't|does not|will not)\b/;

/** The one property asked for; a word before a name describes that one ("braided silk"). */
function askedOf(items: readonly Item[]): string | undefined {
  const named = materialsIn(items);
  const rows = items.flatMap((item, i) => {
    const row = PROPERTY_WORDS.get(item.word);
    return row && !named.some(({ at, to }) => at === i + 1 || to === i - 1)
      ? [`${row.property}:${row.value}`]
      : [];
  });
  const [property, ...more] = new Set(rows);
  if (property) return more.length === 0 ? property : undefined;
  const text = textOf(items.filter((_, i) => !named.some(({ at, to }) => i >= at && i <= to)));
  return fateIn(text)?.property ?? (ALONE.test(text) ? 'absorbable:yes' : undefined);
}
/** What a thread does that the body takes up. */
const ALONE =
  /\b(?:(?:goes|go|disappears?|vanish(?:es)?|comes? (?:out|away)|drops? out|falls? out) (?:away )?(?:alone|unaided|without help|by itself|on its own)|dissolv(?:e|es|ing)|absorbs?|resorbs?)\b/;

const TRUTH =
  /^(?:(?:is (?:it|this|that) )?(?:true or (?:false|not)|true \/ false|t \/ f|t or f|right or wrong|fact or (?:fiction|myth)|agree or disagree|yes or no)|(?:true|correct|right|agree))$/;
const TRUE = /^(?:true|t|correct|right|yes|agree|fact)\b/;
const FALSE = /^(?:false|f|incorrect|wrong|no|untrue|disagree|myth|fiction)\b/;

/** "True or false: a 5-0 is thicker than a 3-0." "True.", "Is silk absorbable?" "Yes." */
export function agreedTo({
  question,
  head,
  focus,
  desk,
}: Told): { claim: Claim; stance: Stance }[] | undefined {
  const said = textOf(head.items.filter(({ kind }) => kind !== 'punctuation'));
  const statement =
    stated(question.items) ??
    (BARE.test(said) || (JUDGED.test(said) && question.items[0]?.word === 'statement')
      ? toldBefore(question)
      : undefined);
  const [yes, no] = statement ? [TRUE.test(said), FALSE.test(said)] : [YES.test(said), NO.test(said)];
  if (yes === no) return undefined;
  const scene = sceneOf(desk, question);
  if (!scene) return [];
  const claim = statement
    ? onlyOne(readAs(scene, statement))
    : (isSo(question, focus) ?? isSame(question, focus));
  if (claim && statement && no && (compound(statement, claim.kind) || UNIVERSAL.test(textOf(statement))))
    return [];
  if (!claim) return statement ? [] : undefined;
  const moved = { ...claim, focus, span: spanOf(question), construction: 'answer-key' } as Claim;
  return [{ claim: moved, stance: yes ? 'asserted' : 'denied' }];
}

/** "Polypropylene dissolves. Verdict: true": a whole statement that asks nothing, and nothing but a verdict on it. */
const BARE = /^(?:true|false|untrue)$/;
/** "Statement: …. Verdict: wrong." */
const JUDGED = /^(?:right|wrong|correct|incorrect)$/;
const toldBefore = ({ items }: Piece): readonly Item[] | undefined =>
  items.some(({ word }) => /^(?:\?|or|which|what|why|how)$/.test(word)) ? undefined : items;

/** "All yellow hubs are 24 G." "False.": some may be. */
const UNIVERSAL = /\b(?:all|every|always|only|never|both|any|each|no|none|exactly|must)\b/;

/** One claim only: who denies a sentence of two denies either. */
function onlyOne(claims: readonly Claim[]): Claim | undefined {
  const kinds = new Set(claims.map(({ kind }) => kind));
  return kinds.size === 1 && AGREED_TO.has(claims[0]!.kind) ? claims[0] : undefined;
}

/** The statement between "True or false" and the end, where a question has one. */
function stated(items: readonly Item[]): readonly Item[] | undefined {
  const words = items.map(({ word }) => word.replace(/(?<=[a-z])\/(?=[a-z])/, ' / '));
  for (const count of [2, 3, 4, 5, 6]) {
    const front = words
      .slice(0, count)
      .filter((word) => /[a-z/]/.test(word))
      .join(' ');
    if (TRUTH.test(front) && front.includes(' ') && /^[?:.,—–]$/.test(words[count - 1] ?? ''))
      return items.slice(count).filter(({ word }) => word !== '?');
    const back = words
      .slice(-count)
      .filter((word) => /[a-z/]/.test(word))
      .join(' ');
    if (TRUTH.test(back) && back.includes(' ')) {
      const cut = items.slice(0, -count);
      const stop = items.at(-count)?.word ?? '';
      if (/^[.?:;—–,(]$/.test(stop)) return cut;
      if (/^[.?:;—–,(]$/.test(cut.at(-1)?.word ?? '')) return cut.slice(0, -1);
    }
  }
  return undefined;
}

/** "Is 2 the same as 2-0?", "Are a 1-0 and a 0 one size?" */
function isSame(question: Piece, focus: Told['focus']): Claim | undefined {
  const text = textOf(question.items);
  const [a, b, ...more] = sizesOf(question);
  if (!a || !b || more.length > 0 || !SAME.test(text) || OPEN.test(text)) return undefined;
  const [one, other] = [a.sizes[0]!, b.sizes[0]!];
  // Two things of one number may differ in what the number counts; threads do not.
  if (one.system !== other.system || (one.value === other.value && one.system !== 'usp')) return undefined;
  return { ...compare(a, b, { axis: 'outer', sign: 1 }, focus, spanOf(question)), relation: 'same' };
}
const SAME =
  /^\W*(?:is|are)\b.*\b(?:the same|one (?:and the same )?(?:size|thread|thickness)|equal|identical)\b/;

/** "Which needle has its third edge on the outer curve?": the reply in the place of what was asked for. */
export function substituted({ question, head, focus, desk }: Told): Claim[] | undefined {
  const items = question.items.filter(({ word }) => word !== '?');
  const which = items.findIndex(({ word }) => word === 'which' || word === 'what');
  const verb = items.findIndex((item, i) => i > which && VERB.test(item.word));
  const scene = sceneOf(desk, question);
  if (!scene || which < 0 || which > 1 || verb < 0 || verb - which > 4 || negated(question)) return undefined;
  if (groups(items).length > 0 || !speaksOf(head.items)) return undefined;
  const noun = items.slice(which + 1, verb).filter(({ word }) => /^(?:needle|thread|suture)s?$/.test(word));
  const own = head.items.filter(({ kind, word }) => kind !== 'punctuation' && !/^(?:the|a|an)$/.test(word));
  const told = readAs(scene, [...own, ...noun, ...items.slice(verb)]);
  const claim = told.length > 0 && told.every(({ kind }) => kind === 'property') ? told[0] : undefined;
  return claim ? [onKey(claim, focus, spanOf(question))] : undefined;
}
const VERB = /^(?:is|are|has|have|carries|cuts?|goes|needs?|holds|dissolves?|stays?|lies|puts|keeps)$/;
const speaksOf = (items: readonly Item[]): boolean =>
  pointsIn(items).length === 1 || materialsIn(items).length === 1;

const COPULA = /^(?:is|are|was|were)$/;

/** "Is silk absorbable?": one material and one property, and nothing besides. */
function isSo(question: Piece, focus: Told['focus']): PropertyClaim | undefined {
  const { items } = question;
  const words = items.filter(({ kind }) => kind !== 'punctuation');
  const named = materialsIn(words);
  const text = textOf(words);
  const [first] = words;
  if (named.length !== 1 || groups(items).length > 0 || OPEN.test(text)) return undefined;
  if (!first || !/^(?:is|are|does|do|will|would)$/.test(first.word) || named[0]!.at > 2) return undefined;
  const after = words.slice(named[0]!.to + 1);
  const rows = after.flatMap(({ word }) => PROPERTY_WORDS.get(word) ?? []);
  const [row, ...more] = rows;
  const property = row
    ? `${row.property}:${row.value}`
    : (fateIn(textOf(words.slice(1)))?.property ??
      (ALONE.test(textOf(after)) ? 'absorbable:yes' : undefined));
  if (!property || more.length > 0 || (row && !COPULA.test(first.word) && row.value !== 'yes'))
    return undefined;
  return materialIs(named[0]!.id, property, focus, spanOf(question));
}
const OPEN =
  /\b(?:or|if|when|unless|not|always|ever|all|any|only|really|still|best|good|safe|used|than)\b|n't\b/;
