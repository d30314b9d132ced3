/** One colour on two devices: "a pink needle and a pink cannula are the same gauge", "orange means the same gauge on both". */
import { colourFamily, gaugesOf } from '../../sizes/index.ts';
import type { Item } from '../text/items.ts';
import type { Scene } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** What a hub colour is learned for; wider ones are rare. */
const WIDEST = 14;

const NEEDLE = /^(?:needles?|hypodermics?)$/;
const CANNULA = /^(?:cannula[es]?|cannulas|ivs?)$/;

export const hues: Construction = {
  id: 'hues',
  needs: () => [{ holds: ['colour'], like: CANNULA }, { words: ['colour', 'color', 'colours', 'colors'] }],
  leaning: true,
  read(scene) {
    const { items } = scene;
    const shared = oneCode(items);
    if (shared !== undefined) return [reading(scene, shared, shared)];
    const at = sameGauge(items);
    const family = at === undefined ? undefined : onlyColour(items);
    if (at === undefined || !family || items.some((item) => item.kind === 'size') || leftOpen(items))
      return [];
    if (!items.some((item) => NEEDLE.test(item.word)) || !items.some((item) => CANNULA.test(item.word)))
      return [];
    const [needles, cannulas] = (['ISO 6009', 'ISO 10555-5'] as const).map((code) =>
      gaugesOf(code, family).filter((gauge) => gauge >= WIDEST),
    ) as [number[], number[]];
    // Of a colour that one code lacks, or that both give to one gauge, nothing is said.
    if (needles.length === 0 || cannulas.length === 0 || needles.some((gauge) => cannulas.includes(gauge)))
      return [];
    return [
      reading(
        scene,
        at,
        items.findIndex((item) => item.colour),
      ),
    ];
  },
};

function reading(scene: Scene, at: number, from: number): Reading {
  const claim = ruleClaim(
    scene,
    'hues',
    'needle-gauge',
    'colour-is-one-gauge',
    at,
    Math.min(at + 1, scene.items.length - 1),
  );
  return { claim, at, from: Math.min(at, from), to: at };
}

const A = '(?:hypodermic |injection )?needles?';
const B = '(?:(?:iv |venous )?cannula(?:e|s)?|iv catheters?|ivs?)';
const HUES = 'colou?rs';
const CODE = 'colou?r[ -](?:code|coding|scheme|system)s?';
/** "Needles and cannulas share one colour code", "the colour code of cannulas is the same as that of needles". */
const ONE_CODE = new RegExp(
  `\\b(?:(?:${A} and (?:the )?${B}|${B} and (?:the )?${A}) (?:both )?(?:share|have|use|follow|go by) (?:one|the same|a single|a common|the one) ${CODE}|` +
    `(?:${A} ${HUES} and ${B}|${B} ${HUES} and ${A}) ${HUES} (?:are (?:exactly |just )?(?:the same|identical)|match)|` +
    `${HUES} (?:carry|carries|transfer|go) (?:straight |right )?over (?:from (?:the )?(?:${A}|${B}) )?to (?:the )?(?:${A}|${B})|` +
    `${CODE} (?:of|for|on) (?:the )?(?:${A}|${B}) is (?:exactly |just )?the same as (?:that|the one) (?:of|for|on) (?:the )?(?:${A}|${B}))`,
);

function oneCode(items: readonly Item[]): number | undefined {
  const words = items.map((item) => item.word).join(' ');
  const open = items.some((item) =>
    /^(?:not|never|no|if|unless|\?|neither|nor|different|but|think|believe|assume)$/.test(item.word),
  );
  if (open || !ONE_CODE.test(words)) return undefined;
  return items.findIndex((item) => /^colou?r/.test(item.word));
}

/** Words that leave it open, deny it, or speak of something else about the two. */
const OPEN =
  /^(?:not|never|no|nor|neither|isn't|aren't|don't|doesn't|different|differ|differs|differently|two|unlike|but|although|though|while|whereas|if|unless|assume|assumes|think|thinks|believe|whether|or|yet|however|both|only|[?;])$/;

/** "… the same thing though, 18 both ways": neither word takes anything back. */
const leftOpen = (items: readonly Item[]): boolean =>
  items.some(
    (item, i) =>
      OPEN.test(item.word) &&
      !(item.word === 'though' && items[i + 1]?.kind === 'punctuation') &&
      !(item.word === 'both' && /^(?:ways|times|cases)$/.test(items[i + 1]?.word ?? '')),
  );
const GAUGE = /^(?:gauge|gauges|size|sizes|thing|width|thickness|bore|diameter|calibre|caliber)$/;
const LINK = /^(?:is|are|has|have|means|mean|:|must|=|always|be|of|stands|for)$/;

/** "are the same gauge", ": one gauge". */
function sameGauge(items: readonly Item[]): number | undefined {
  const as = items.findIndex(
    (item, i) =>
      item.word === 'as' &&
      /^(?:thick|wide|thin|big|large|narrow|fine)$/.test(items[i + 1]?.word ?? '') &&
      items[i + 2]?.word === 'as' &&
      LINK.test(items[i - 1]?.word ?? ''),
  );
  const ends = items.at(-1)?.kind === 'punctuation' ? items.at(-2) : items.at(-1);
  // "as thin as the pink cannula is long": another quality of the other.
  if (as >= 0) return CANNULA.test(ends?.word ?? '') || NEEDLE.test(ends?.word ?? '') ? as : undefined;
  const at = items.findIndex(
    (item, i) =>
      /^(?:same|one|equal|identical)$/.test(item.word) &&
      GAUGE.test(items[i + 1]?.word ?? '') &&
      items.slice(Math.max(0, i - 3), i).some((near) => LINK.test(near.word)),
  );
  return at < 0 ? undefined : at;
}

/** The one family of colour named before or after; two colours are two statements. */
function onlyColour(items: readonly Item[]): string | undefined {
  const families = new Set(items.flatMap((item) => (item.colour ? [colourFamily(item.colour)] : [])));
  return families.size === 1 ? [...families][0] : undefined;
}
