/**
 * One colour, or one code, on two devices: "a pink needle and a pink cannula are the same gauge", "green is green wherever
 * you meet it, on a needle or on a cannula", "needles and drips go by a single colour chart".
 */
import { colourFamily, gaugesOf } from '../../sizes/index.ts';
import type { Item } from '../text/items.ts';
import { itemAt, joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** What a hub colour is learned for; wider ones are rare. */
const WIDEST = 14;

const NEEDLE = /^(?:needles?|hypodermics?|butterfl(?:y|ies))$/;
const CANNULA = /^(?:cannula(?:e|s|ti?on)?|ivs?|drips?|pivcs?)$/;
const CODE = /^(?:colou?rs?|colou?r-cod(?:es?|ing)|hub-colou?rs?)$/;

export const hues: Construction = {
  id: 'hues',
  needs: () => [{ holds: ['colour'], like: CANNULA }, { words: ['colour', 'color', 'colours', 'colors'] }],
  leaning: true,
  read(scene) {
    const { items } = scene;
    if (items.length > LONGEST || items.some((item) => item.kind === 'size') || leftOpen(items)) return [];
    const cannula = named(items, CANNULA) || namesCatheter(items);
    if (!cannula || !(named(items, NEEDLE) || CARRIES.test(joined(items)))) return [];
    const family = onlyColour(items);
    const same = family ? sameGauge(items) : oneCode(items);
    if (same === undefined || (family && !differs(family))) return [];
    const from = items.findIndex((item) => item.colour ?? CODE.test(item.word));
    return from < 0 ? [] : [reading(scene, same, from)];
  },
};
const LONGEST = 50;

/** "Colours carry over to IV carts": from whatever was spoken of. */
const CARRIES = /\bcolou?rs? (?:carry|carries|transfers?) (?:straight |right )?over\b/;

const named = (items: readonly Item[], thing: RegExp): boolean => items.some(({ word }) => thing.test(word));
/** "iv catheters": a catheter beside a needle, with nothing to tell it from one in a vein. */
const namesCatheter = (items: readonly Item[]): boolean => /\biv catheters?\b/.test(joined(items));

/** Of a colour that one code lacks, or that both give to one gauge, nothing is said. */
function differs(family: string): boolean {
  const [needles, cannulas] = (['ISO 6009', 'ISO 10555-5'] as const).map((code) =>
    gaugesOf(code, family).filter((gauge) => gauge >= WIDEST),
  ) as [number[], number[]];
  return needles.length > 0 && cannulas.length > 0 && !needles.some((gauge) => cannulas.includes(gauge));
}

function reading(scene: Scene, at: number, from: number): Reading {
  const claim = ruleClaim(
    scene,
    'hues',
    'needle-gauge',
    'colour-is-one-gauge',
    at,
    Math.min(at + 1, scene.items.length - 1),
  );
  return { claim, at, from: Math.min(at, from), to: at, own: true };
}

/** Words that leave it open, deny it, or speak of something else about the two. */
const OPEN =
  /^(?:not|never|no|nor|neither|cannot|\w+n't|different|differ|differs|differently|difference|unequal|two|unlike|but|although|though|while|whereas|if|unless|assume[sd]?|think|thinks|thought|believe[sd]?|whether|or|yet|however|only|another|other|its|looks?|almost|nearly|roughly|about|except|drawers?|bins?|trays?|boxe?s?|labels?|labelled|stickers?|tapes?|suppliers?|makers?|length|long|price|costs?|shade|word|words|mistake|wrong|beware|careful|watch|trap|once|[?;])$/;

/** "… though, 18 both ways", "you need not worry which", "no difference", "needle or cannula": nothing is taken back. */
function leftOpen(items: readonly Item[]): boolean {
  const regardless = items.some(
    ({ word }, i) =>
      word === 'whether' ||
      word === 'regardless' ||
      word === 'whichever' ||
      (word === 'matter' && items[i - 1]?.word === 'no'),
  );
  return items.some(({ word }, i) => {
    if (!OPEN.test(word)) return false;
    const [before, next] = [items[i - 1], items[i + 1]];
    if (word === 'though') return next?.kind !== 'punctuation';
    if (word === 'whether') return !/\bor\b/.test(joined(items, i, i + 14));
    if (word === 'or') return !(regardless || between(items, i));
    if (word === 'difference') return before?.word !== 'no';
    if (word === 'no') return !/^(?:matter|difference|need)$/.test(next?.word ?? '');
    if (word === 'think') return next?.word !== 'of';
    if (word === 'about') return /^(?:the|an?)$/.test(next?.word ?? '');
    if (word === 'not' || word.endsWith("n't"))
      return !/\b(?:need|have to|worry|mind|care|matter|bother|ask)\b/.test(joined(items, i - 1, i + 4));
    return true;
  });
}

/** "a needle or on a cannula". */
const between = (items: readonly Item[], i: number): boolean =>
  [items.slice(Math.max(0, i - 3), i), items.slice(i + 1, i + 5)].every((side) =>
    side.some(({ word }) => NEEDLE.test(word) || CANNULA.test(word)),
  );

const GAUGE = 'gauges?|sizes?|thing|width|thickness|bore|diameter|calib(?:re|er)|meaning|number';
/** Of one colour: the same size, a match, the colour itself over again. */
const SAME_GAUGE = new RegExp(
  `\\b(?:(?:the same|one(?: and the same)?|equal|identical|a single)(?: (?:needle|hub|outer|outside|inner))? (?:${GAUGE})\\b` +
    `|(?:${GAUGE}) (?:is|are|will be|stays|remains) (?:exactly |just )?(?:the same|identical|equal|one)\\b` +
    `|(?:${GAUGE})(?: of the two)? (?:agrees?|match(?:es)?)\\b` +
    `|(?:is|are|be|mean|means) (?:exactly |just |both |all )*(?:the same|identical|interchangeable)(?= [,.;!)]|$| (?:on|for|in|across|everywhere|wherever|either)\\b)` +
    `|(?:match(?:es)?|agrees?|equals?)\\b.{0,60}\\b(?:in|of|by) (?:${GAUGE})\\b` +
    `|no difference (?:in (?:${GAUGE}) )?between\\b` +
    `|(?:is|are) (?:just |exactly |equally |both )*(?:as )?(?:thick|wide|thin|big|large|narrow|fine) as\\b(?!.* (?:long|heavy|old)\\b)` +
    `|equally (?:thick|wide|thin|big|large|narrow|fine)\\b` +
    `|wherever (?:you|we|it|they)\\b|on whatever\\b)`,
);

function sameGauge(items: readonly Item[]): number | undefined {
  const match = SAME_GAUGE.exec(joined(items));
  if (!match) return undefined;
  // "…, costs the same, one size of glove": the colour is told of both things, or told twice.
  return itemAt(items, match.index);
}

/** The one family of colour named, however often; two colours are two statements. */
function onlyColour(items: readonly Item[]): string | undefined {
  const families = new Set(items.flatMap((item) => (item.colour ? [colourFamily(item.colour)] : [])));
  return families.size === 1 ? [...families][0] : undefined;
}

const SCHEME = '(?:colou?r[ -])?(?:codes?|coding|scheme|system|chart|list|key|table|meanings?)';
/** Of no colour by itself: one code for both. */
const ONE_CODE = new RegExp(
  `\\b(?:(?:one|one and|the same|a single|a common|the one|a shared|identical)(?: and the same)?(?: [a-z]+)? ${SCHEME}\\b` +
    `|colou?rs? (?:of|on|for) .{3,40} (?:are (?:exactly |just )?(?:the same|identical)|match|agree)\\b` +
    `|colou?rs and .{2,20} colou?rs (?:are (?:exactly |just )?(?:the same|identical)|match|agree)\\b` +
    `|colou?rs? (?:carry|carries|transfers?|go|goes|agrees?|match(?:es)?) (?:straight |right )?(?:over|across|between|from|on both|for both)\\b` +
    `|colou?rs? .{0,40}\\b(?:in the same way|means? the same|the same (?:gauge|size|thing|meaning))\\b` +
    `|${SCHEME} (?:of|for|on) .{3,40} is (?:exactly |just )?the same as\\b` +
    `|same ${SCHEME}\\b)`,
);

function oneCode(items: readonly Item[]): number | undefined {
  if (items.some((item) => item.colour) || !items.some(({ word }) => CODE.test(word))) return undefined;
  const match = ONE_CODE.exec(joined(items));
  return match ? itemAt(items, match.index) : undefined;
}
