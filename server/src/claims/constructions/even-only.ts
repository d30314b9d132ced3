/**
 * Series said to have even or whole numbers only, beside hypodermic needles: "fistula needles are made in even gauges only",
 * "there are no half French sizes". Catheters of one kind do keep to even numbers: beside these nothing is read of French.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { EVEN_WAYS, EVEN_WORDS, type EvenWay } from '../words/even-only.ts';
import { around, narrowed } from './absent-where.ts';
import type { Construction, Reading } from './model.ts';

export const evenOnly: Construction = {
  id: 'even-only',
  leaning: true,
  needs: () => [{ words: EVEN_WORDS }],
  read(scene) {
    if (scene.sentence.close === '?' || narrowed(scene)) return [];
    const text = joined(scene.items);
    const way = EVEN_WAYS.find((each) => saidOf(scene, each, text));
    return way && !ofOneKind(scene, way) ? [reading(scene, way)] : [];
  },
};

/** Said of the series by name, or of what the sentence before names. */
const saidOf = ({ before }: Scene, { like, they, named }: EvenWay, text: string): boolean =>
  like.test(text) || (they.test(text) && named.test(joined(before.at(-1)?.items ?? [])));

/** Catheters for the bladder, for suction, for the stomach and drains come in even numbers. */
const ofOneKind = (scene: Scene, { series }: EvenWay): boolean =>
  series === 'french' ? KINDS.test(around(scene)) : MAKER.test(around(scene));
const KINDS =
  /\b(?:foley\w*|urinary|urine|bladder|urethra\w*|urolog\w*|suction\w*|chest|pleural|drains?|drainage|naso\w+|ng|gastrostomy|peg|ryle\w*|trocars?|balloons?|catheteri[sz]\w+|stock\w*|order\w*|catalogues?|bulldogs?)\b/;
const MAKER = /\b(?:stock\w*|catalogues?|order\w*|drawers?|shel(?:f|ves)|cupboards?)\b/;

function reading(scene: Scene, { series, absent }: EvenWay): Reading {
  const { items } = scene;
  const at = Math.max(0, items.findIndex(isSuch));
  const focus = spanOf(scene, items[at]!);
  return {
    claim: {
      kind: 'existence',
      construction: 'even-only',
      span: sentenceSpan(scene),
      focus,
      size: { sizes: [], mentions: [], span: focus },
      absent,
      series,
    },
    at,
    from: at,
    to: at,
    own: true,
  };
}
const SUCH = new Set(EVEN_WORDS);
const isSuch = ({ word }: Item): boolean => SUCH.has(word);
