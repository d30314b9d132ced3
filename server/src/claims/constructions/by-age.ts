/**
 * A child's tube worked out by the rule that the text gives: "age over four plus four: so a four-year-old needs a 5.0".
 * Only the sum is judged, with the rule as it is written.
 */

import { wordValue } from '../../mentions/words/numbers.ts';
import { matchesOf } from '../../notes/index.ts';
import type { Note } from '../../notes/model.ts';
import type { FormulaClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { writtenOf } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import { type Group, groups, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { roundingOf } from './tubes.ts';

const YEARS =
  /^(?:aged?|ages|years?|year-old|years-old|year-olds|yr|yrs|yo)$|-(?:year|yr)-olds?$|^(?:boy|girl|child|toddler|one|mannequin|patient|at)$/;

const NUMBER_WORDS = '[0-9]{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve';

export const byAge: Construction = {
  id: 'by-age',
  needs: () => [
    { holds: ['tube'], like: YEARS },
    { holds: ['tube'], like: CARRIES },
  ],
  read(scene) {
    if (scene.sentence.close === '?') return [];
    const tubes = groups(scene.items).filter((g) => g.sizes[0]!.system === 'tube-id' && g.sizes.length === 1);
    const said = tubes.at(-1);
    if (!said) return [];
    const told = textOf(scene.items.slice(0, clauseEnd(scene.items, said.to))).replace(GIVEN, ' ');
    const own = told.replace(OFFSET, ' ').replace(HAS, '$1 takes');
    const offset = OFFSET.test(told) && !NO_CUFF.test(own);
    if (STOPS.test(own)) return [];
    // "Cuffed, half a size off. So that one has a 4.5": which of the two rules the tube is by stays open.
    const before = scene.before.at(-1);
    if (before && HALF.test(textOf(before.items)) && !cuffOf(textOf(scene.items))) return [];
    const age =
      ageIn(own) ?? (tubes.length === 1 ? (ofSameChild(scene, own) ?? ageBefore(scene, own)) : undefined);
    if (age === undefined || age > 16) return [];
    // One tube for one age: "at six 5.5, at eight 6.0" is a row of them.
    if (
      tubes.length > 1 &&
      new Set(tubes.filter((g) => agedBefore(scene.items, g.from)).map((g) => g.sizes[0]!.value)).size > 1
    )
      return [];
    const rule = (offset ? undefined : ruleFor(scene, own)) ?? ruleOfNote(scene, textOf(scene.items));
    if (!rule) return farOff(scene, said, own);
    // "(6 / 4) + 3.5 = 5.0" after the rule for uncuffed tubes: the sum as written is by another rule.
    const written = SUM.exec(own);
    if (written && Number(written[1]) !== rule) return [];
    const value = said.sizes[0]!.value;
    const sum = age / 4 + rule;
    const right = Math.abs(sum - value) <= roundingOf(sum);
    return [
      reading(
        scene,
        said.from,
        right ? 'tube-as-worked-out' : 'tube-worked-out-wrong',
        `${age} ÷ 4 + ${rule} = ${sum}`,
      ),
    ];
  },
};

/** "Cuffed tubes take half a size off, so …": said of the rule, not of the tube worked out. */
const OFFSET =
  /\b(?:for |with )?(?:a |the )?cuffed (?:tubes? |ones? )?(?:you |we )?(?:(?:take|takes|is|are|taking|goes|go|comes?|subtract|drop) )*(?:off )?(?:half a size|a half size|half|0\.5)(?: (?:off|less|smaller|down|lower|is taken off|comes off))?(?: ,)?(?: so)?/;
const HALF = /\b(?:half a size|a half size|half (?:off|less|down))\b/;
const HAS = /\b(year[- ]olds?|(?:child|boy|girl) of [a-z0-9]+) has\b/g;

/** What the text books add to a quarter of the age, from the least to the most; and how far off a tube must be. */
const ADDED = { cuffed: [3, 4], uncuffed: [4, 4.5], any: [3, 4.5] } as const;
const FAR_OFF = 1;
/** Years in which the rule is taught. */
const [YOUNGEST, OLDEST] = [1, 12];

/** "For a boy of six the uncuffed tube is a 7.5": without a rule in the text, only far from every rule that is taught. */
function farOff(scene: Scene, said: Group, own: string): Reading[] {
  const age = ageIn(own);
  if (age === undefined || age < YOUNGEST || age > OLDEST || NOT_TRACHEAL.test(own)) return [];
  const [least, most] = ADDED[cuffOf(own) ?? 'any'];
  const [low, high] = [age / 4 + least - FAR_OFF, age / 4 + most + FAR_OFF];
  const { value } = said.sizes[0]!;
  const far = value >= high || value <= low;
  return far && scene.passage.cell === undefined
    ? [reading(scene, said.from, 'tube-by-age-other', `${age} ÷ 4 + 4 = ${age / 4 + 4}`)]
    : [];
}
const NOT_TRACHEAL = /\b(?:tracheostom\w+|laryngeal|mask|supraglottic|nasopharyn\w+|suction|bronchoscope)\b/;

/** Takes up a child spoken of before. */
const CARRIES =
  /^(?:you|you'd|you'll|he|him|she|her|that|that's|so|it|they|them|take|takes|needs?|cuffed|uncuffed|same)$/;

/** Up to the end of the clause that names the tube: what follows is about another. */
function clauseEnd(items: readonly Item[], to: number): number {
  const end = items.findIndex(
    ({ word }, i) => i > to && /^(?:[,;:.!()]|and|or|with|but|while|to|then)$/.test(word),
  );
  return end < 0 ? items.length : end;
}

/** "if you have a two-year-old": who it is about, not whether it holds. */
const GIVEN =
  /\b(?:if|when|whenever|suppose|say) (?:you've got|you've|you have|you get|you are given|you were given|you want|you need|you use|you meet|there is|there's|he is|she is|he's|she's|the child is|it's)\b/g;

const LED =
  /^(?:[a-z]+ : )?(?:so|then|and|cuffed|uncuffed|that|that's|that is|which|you|you'd|you'll|you would|for (?:him|her|them|that)|he|she|they|it|him|her|take|ask|open|want|i'd|we'd)\b/;
const NOW =
  /\b(?:take|takes|need|needs|want|wants|give|gives|gets?|is|that's|makes?|end up|you'd|you'll|use|uses|ask|open|comes|have|has|say)\b/;

/** The one age told in the nearest sentence before, when this one takes it up. */
function ageBefore(scene: Scene, own: string): number | undefined {
  if (/\b(?:suction|catheters?|french|fr|ch|bougie|bronchoscope)\b/.test(textOf(scene.items)))
    return undefined;
  const [tube] = groups(scene.items);
  if (!tube || !NOW.test(textOf(scene.items.slice(0, tube.from)))) return undefined;
  if (!LED.test(own) || !NOW.test(own) || own.length > 130) return undefined;
  const before = [...scene.context.slice(-2), ...scene.before].slice(-3).toReversed();
  for (const sentence of before) {
    const text = textOf(sentence.items);
    const told = agesIn(text);
    const ages = told.length > 0 ? told : bareAge(text);
    if (ages.length > 0) return ages.length === 1 && !ROW.test(text) ? ages[0] : undefined;
  }
  return undefined;
}

const SAME =
  /\b(?:the same|that same|the very same) (?:lad|lass|boy|girl|child|kid|toddler|patient|youngster|age|one|little one)\b/;
/** "4/4 is 1": a quarter of the age, which is not told again. */
const QUARTERED = /\b(1[0-2]|[1-9]) (?:\/|÷|over|divided by) (?:4|four) (?:is|=|makes|gives|,|\+|plus)/;

/** "A cuffed one for the same lad": the age of the one child of the sentences before. */
function ofSameChild(scene: Scene, own: string): number | undefined {
  if (!SAME.test(own)) return undefined;
  const before = [...scene.context.slice(-2), ...scene.before].slice(-3);
  const ages = before.flatMap(({ items }) => {
    const text = textOf(items);
    const told = [...agesIn(text), ...bareAge(text)];
    const quartered = QUARTERED.exec(text)?.[1];
    return told.length > 0 || quartered === undefined ? told : [Number(quartered)];
  });
  return new Set(ages).size === 1 ? ages[0] : undefined;
}

/** "The girl is eight." */
const BARE = new RegExp(
  `^(?:[a-z]+ : )?(?:(?:so|now|and|say|right|well) (?:, )?)?(?:she|he|(?:the|your|our|my|this) (?:patient|boy|girl|child|kid|little one)) is (${NUMBER_WORDS})(?: years?(?: old)?)?(?= [.,;]|$)`,
);
const bareAge = (text: string): readonly number[] => {
  const age = numberOf(BARE.exec(text)?.[1] ?? '');
  return age === undefined ? [] : [age];
};

/** What the note's own rule adds, wherever it stands; for a tube with a cuff half a size less than without. */
function ruleOfNote({ note, passage }: Scene, own: string): number | undefined {
  // A choice of a question is read with its key elsewhere.
  if (/\([a-e]\)|\b[A-E][).] /.test(passage.text)) return undefined;
  const rules = rulesOf(note);
  const cuff = cuffOf(own);
  const plain = new Set(rules.filter(({ cuff: of }) => of !== 'cuffed').map(({ more }) => more));
  const cuffed = new Set(rules.filter(({ cuff: of }) => of === 'cuffed').map(({ more }) => more));
  if (cuff === 'cuffed')
    return cuffed.size === 1
      ? [...cuffed][0]
      : cuffed.size === 0 && plain.size === 1 && plain.has(4)
        ? 3.5
        : undefined;
  return plain.size === 1 && (cuff === 'uncuffed' || cuffed.size === 0) ? [...plain][0] : undefined;
}

const rulesOf = remembered((note: Note) =>
  note.passages.flatMap(({ text }) =>
    /\bage\b/i.test(text) && text.length < 1500
      ? text
          .toLowerCase()
          .replace(/(\w)\/(\d)/g, '$1 / $2')
          .replace(/([,;:.])(?=\s|$)/g, ' $1')
          .split(' . ')
          .flatMap(rulesIn)
      : [],
  ),
);

const SUM = /(?:\/|÷) ?4 ?\)? ?\+ ?([0-9](?:\.[0-9])?)/;

/** Does the age stand before this item? */
const agedBefore = (items: readonly Item[], at: number): boolean =>
  AGED.test(`${textOf(items.slice(0, at))} the `);

const textOf = (items: readonly Item[]): string => writtenOf(items).replace(/(\w)\/(\d)/g, '$1 / $2');

/** Another size is spoken of beside the one worked out, or the sum is not followed. */
const STOPS =
  /\b(?:because|used|took|went|passed|oedema|narrow|smaller|larger|bigger|half a size|size (?:up|down|above|below)|not|never|instead|than|if|or|spare|croup|stridor|preterm|premature|also|ready|either|was|were|had|has|have|too|came|wore|wrong|depth|length|lips?|cm|ages? [0-9]+ to|(?:small|big|large|tall|short) for|unless|but|though|however|actually|really|down's)\b|\?/;

const MORE = '(4|four|3\\.5|3\\.0|3|three and a half|three)(?![.0-9])';
const RULE = new RegExp(
  `\\b(?:age (?:in years )?(?:\\)? ?)?(?:/|÷|over|divided by) ?(?:4|four)|divid\\w+ (?:the |his |her )?age by (?:4|four)|(?:the|his|her) age (?:in years )?(?:, )?(?:and )?(?:then )?divid\\w+ (?:it |this |that )?by (?:4|four)|a quarter of the age)(?: \\))?(?: ,)?(?: and)?(?: then)? (?:\\+|plus|adds?|adding) ${MORE}(?: and a half)?`,
  'g',
);
const NO_CUFF = /\b(?:uncuffed|no cuff|without (?:a )?cuff)\b/;
const CUFF = /(?:^|[^n])\bcuffed\b|\bwith (?:a |the )?cuff\b/;

type Cuff = 'cuffed' | 'uncuffed' | undefined;
const cuffOf = (text: string): Cuff => {
  const [without, within] = [NO_CUFF.test(text), CUFF.test(text)];
  return without === within ? undefined : without ? 'uncuffed' : 'cuffed';
};

/** What is added, by the rule of this sentence or of those before it. */
function ruleFor(scene: Scene, own: string): number | undefined {
  const before = [...(scene.before.length < 3 ? scene.context.slice(-1) : []), ...scene.before];
  const texts = [...before.map((sentence) => textOf(sentence.items)), own];
  const rules = texts.flatMap(rulesIn);
  const last = AGED.exec(own);
  const cuff = cuffOf(last ? own.slice(last.index) : own) ?? cuffOf(textOf(scene.items));
  const added = new Set(
    rules.filter((rule) => !cuff || !rule.cuff || rule.cuff === cuff).map((rule) => rule.more),
  );
  return added.size === 1 ? [...added][0] : undefined;
}

function rulesIn(text: string): { more: number; cuff: Cuff }[] {
  const matches = matchesOf(text, RULE);
  return matches.flatMap((match, i) => {
    const from = i === 0 ? 0 : matches[i - 1]!.index + matches[i - 1]![0].length;
    const more = numberOf(match[0].endsWith('three and a half') ? '3.5' : match[1]!);
    if (more === undefined) return [];
    const either = eitherRule(text.slice(match.index + match[0].length), more);
    const beside = matches.length === 1 ? text : text.slice(from, match.index);
    return either ?? [{ more, cuff: cuffOf(beside) }];
  });
}

/** "… plus 4 if uncuffed, plus 3.5 if cuffed": one rule for each kind of tube. */
function eitherRule(text: string, first: number): { more: number; cuff: Cuff }[] | undefined {
  const [, cuff, more, other] = EITHER.exec(text) ?? [];
  const second = more === undefined ? undefined : numberOf(more);
  if (second === undefined || cuff === other) return undefined;
  return [
    { more: first, cuff: cuff as Cuff },
    { more: second, cuff: other as Cuff },
  ];
}
const FOR_CUFF =
  '(?:if|for|when|with|where) (?:(?:an?|the) )?(?:tube is )?(cuffed|uncuffed)(?: tubes?| ones?)?';
const EITHER = new RegExp(
  `^ ${FOR_CUFF}(?: ,)?(?: and| or| but)?(?: ,)?(?: plus| \\+| add)? ${MORE} ${FOR_CUFF}`,
);

const numberOf = (text: string): number | undefined => {
  const value = /^[0-9.]+$/.test(text) ? Number(text) : wordValue(text);
  return value === undefined || Number.isNaN(value) ? undefined : value;
};

const NUMBER = `(${NUMBER_WORDS})`;
const AGED = new RegExp(
  `\\b(?:boy|girl|child|patient|one|toddler|kid) (?:of|aged|at) ${NUMBER}\\b(?! (?:kg|months?|weeks?|mm))|\\b${NUMBER}[- ](?:year|yr)s?[- ]olds?\\b|\\bage(?:d)? ${NUMBER}\\b(?! (?:months?|weeks?))|\\b${NUMBER} years? old\\b|\\bat ${NUMBER}(?: years?\\b| (?=the |an? |he |she |her |his ))|: ${NUMBER} years?(?= ,)`,
);
const EACH_AGED = new RegExp(AGED.source, 'g');

/** "at six the tube is 5.5, at eight 6.0". */
const ROW = new RegExp(`\\bat ${NUMBER} .*\\bat ${NUMBER}\\b`);

function ageIn(text: string): number | undefined {
  const all = agesIn(text);
  return all.length === 1 && !ROW.test(text) ? all[0] : undefined;
}

/** The ages of a stretch, each as often as it is told. */
const agesIn = (text: string): readonly number[] =>
  matchesOf(text, EACH_AGED).flatMap(
    (match) => numberOf(match.slice(1).find((part) => part !== undefined)!) ?? [],
  );

function reading(scene: Scene, at: number, formula: string, sum: string): Reading {
  const claim: FormulaClaim = {
    kind: 'formula',
    construction: 'by-age',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[at]!),
    system: 'tube-id',
    formula,
    sum,
  };
  return { claim, at, from: at, to: at, unconditional: true };
}
