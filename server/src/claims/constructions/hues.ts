/** One colour on two devices: "a pink needle and a pink cannula are the same gauge", "orange means the same gauge on both". */
import { colourFamily, gaugesOf } from '../../sizes/index.ts';
import type { FormulaClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction } from './model.ts';

const NEEDLE = /^needles?$/;
const CANNULA = /^(?:cannula[es]?|cannulas|ivs?)$/;

export const hues: Construction = {
  id: 'hues',
  needs: () => [{ holds: ['colour'], like: CANNULA }],
  read(scene) {
    const { items } = scene;
    const at = sameGauge(items);
    const family = at === undefined ? undefined : onlyColour(items);
    if (at === undefined || !family || items.some((item) => item.kind === 'size' || OPEN.test(item.word)))
      return [];
    if (!items.some((item) => NEEDLE.test(item.word)) || !items.some((item) => CANNULA.test(item.word)))
      return [];
    const [needles, cannulas] = [gaugesOf('ISO 6009', family), gaugesOf('ISO 10555-5', family)];
    // Of a colour that one code lacks, or that both give to one gauge, nothing is said.
    if (needles.length === 0 || cannulas.length === 0 || needles.some((gauge) => cannulas.includes(gauge)))
      return [];
    const claim: FormulaClaim = {
      kind: 'formula',
      construction: 'hues',
      span: sentenceSpan(scene),
      focus: spanOf(scene, items[at]!, items[Math.min(at + 1, items.length - 1)]!),
      system: 'needle-gauge',
      formula: 'colour-is-one-gauge',
    };
    return [
      {
        claim,
        at,
        from: Math.min(
          at,
          items.findIndex((item) => item.colour),
        ),
        to: at,
      },
    ];
  },
};

/** Words that leave it open, deny it, or speak of something else about the two. */
const OPEN =
  /^(?:not|never|no|nor|neither|isn't|aren't|don't|doesn't|different|differ|differs|differently|two|unlike|but|although|though|while|whereas|if|unless|assume|assumes|think|thinks|believe|whether|or|yet|however|both|only|[?;])$/;
const GAUGE = /^(?:gauge|gauges|size|sizes|width|thickness|bore|diameter|calibre|caliber)$/;
const LINK = /^(?:is|are|has|have|means|mean|:|must|=|always|be|of|stands|for)$/;

/** "are the same gauge", ": one gauge". */
function sameGauge(items: readonly Item[]): number | undefined {
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
