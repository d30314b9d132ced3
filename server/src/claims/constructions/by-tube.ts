/** A suction catheter worked out by the rule that stands before: "Double the tube. For a 7.0 tube you land on 14 Fr." */
import type { FormulaClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { groups, sentenceSpan, spanOf } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';
import type { Construction } from './model.ts';

export const byTube: Construction = {
  id: 'by-tube',
  needs: () => [{ holds: ['french'], like: NAMED }],
  read(scene) {
    const { items } = scene;
    const french = groups(items).filter((g) => g.sizes[0]!.system === 'french');
    const tube = tubeIn(items);
    const [catheter] = french;
    if (
      !catheter ||
      french.length > 1 ||
      catheter.sizes.length > 1 ||
      tube === undefined ||
      tube.at > catheter.from
    )
      return [];
    const rule = [...scene.context.slice(-3), ...scene.before].findLast(doubles);
    if (!rule || STOPS.test(joined(items)) || scene.after.slice(0, 2).some(tells)) return [];
    const over = catheter.sizes[0]!.value - 2 * tube.value;
    const most = LIMIT.test(joined(items)) && LIMIT.test(joined(rule.items)) ? OVER_LIMIT : OVER;
    const claim: FormulaClaim = {
      kind: 'formula',
      construction: 'by-tube',
      span: sentenceSpan(scene),
      focus: spanOf(scene, items[catheter.from]!, items[catheter.to]!),
      system: 'tube-id',
      formula: over >= most ? 'suction-worked-out-wrong' : 'suction-as-worked-out',
      sum: `2 × ${tube.value} = ${2 * tube.value}`,
    };
    return [{ claim, at: catheter.from, from: tube.at, to: catheter.to }];
  },
};

/** What gives the catheter, or the tube it is for. */
const NAMED = /^(?:tubes?|gives?|lands?|takes?|needs?|makes?|gets?|is|use|uses|comes?)$/;

/** How far over twice the tube: catheters come in even numbers, and some round up. */
const OVER = 1.5;
/** Where the rule gives the limit and the sentence names the most that may be used, there is nothing to round up to. */
const OVER_LIMIT = 0.9;
const LIMIT = /\b(?:limit|most|maximum|max|biggest|largest|widest|fattest|thickest|ceiling|no more|up to)\b/;
const STOPS = /\b(?:not|never|than|if|too|instead|or|unless|but|though|wrong|blocks?|was|were|without)\b|\?/;
const TWICE = /\b(?:twice|doubles?(?!-)|doubled|doubling|two times|times (?:two|2)|2 (?:×|x|times))\b/;

/** "It did go in, but it left hardly any room. Changed to 12 Fr.": a story of one that was too big. */
const tells = ({ items }: Sentence): boolean => TELLS.test(joined(items));
const TELLS =
  /\b(?:too (?:big|thick|wide|tight|large|snug)|did (?:not )?go|didn't|stuck|jammed|hardly any|no room|changed (?:it )?(?:to|for)|swapped (?:it )?(?:to|for)|should have|wrong|mistake)\b/;

/** The rule in a sentence: the tube doubled, for suction or in French. */
function doubles(sentence: Sentence): boolean {
  const text = joined(sentence.items);
  return (
    TWICE.test(text) &&
    /\btubes?\b|\bett\b/.test(text) &&
    /\b(?:suction|catheter|french|fr)\b/.test(text) &&
    sentence.close !== '?' &&
    !/\b(?:not|never|don't)\b/.test(text)
  );
}

/** "a 7.0 tube", "5.0 gives": the tube that the rule is worked out for. */
function tubeIn(items: readonly Item[]): { at: number; value: number } | undefined {
  const found = items.flatMap((item, at) => {
    const size = item.mention?.sizes[0];
    if (size?.system === 'tube-id' && item.mention!.sizes.length === 1) return [{ at, value: size.value }];
    return !item.mention && /^[2-9]\.[05]$/.test(item.word) ? [{ at, value: Number(item.word) }] : [];
  });
  return found.length === 1 ? found[0] : undefined;
}
