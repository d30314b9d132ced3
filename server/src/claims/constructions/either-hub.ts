/**
 * One colour said of a needle and a cannula of one size: "needles and cannulae of 18 G are both green", "needle or cannula,
 * pink always means 20 G".
 */
import type { ColourClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { distinct, type Group, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { codeOf } from '../words/codes.ts';
import type { Colour } from './hub-code.ts';
import type { Reading } from './model.ts';

/** A claim for each of the two; nothing when the sentence speaks of more than one size or colour. */
export function onEither(scene: Scene, colours: readonly Colour[], sizes: readonly Group[]): Reading[] {
  const { items } = scene;
  const colour = colours.at(-1);
  const [size, ...others] = distinct(sizes);
  if (!colour || colours.some(({ family }) => family !== colour.family) || !size || others.length > 0)
    return [];
  if (size.sizes.length !== 1 || size.sizes[0]!.system !== 'needle-gauge') return [];
  const led = joined(items).match(SURE_OF_IT)?.[0].split(' ').length ?? 0;
  if (items.slice(led).some(({ word }) => NEGATIONS.has(word) || OPEN.test(word))) return [];
  const said = colour.at < size.from ? colourFirst(scene, colours, size) : sizeFirst(items, colour);
  if (!said) return [];
  return (['needle', 'cannula'] as const).map((device) => {
    const claim: ColourClaim = {
      kind: 'colour',
      construction: 'either-hub',
      span: sentenceSpan(scene),
      focus: spanOf(scene, items[colour.at]!, items[colour.to]!),
      size: operand(scene, size),
      colour: colour.family,
      same: true,
      device,
    };
    return { claim, at: colour.to, from: Math.min(size.from, colour.at), to: Math.max(size.to, colour.to) };
  });
}

const sizeFirst = (items: readonly Item[], colour: Colour): boolean =>
  codeOf(items.slice(0, colour.at)) === 'both' && SHARED.test(joined(items, 0, colour.at));

/** "Whether on a needle or a cannula, pink is 20 G": both named in one breath with the one colour and the one size. */
function colourFirst({ items, sentence }: Scene, colours: readonly Colour[], size: Group): boolean {
  const colour = colours.at(-1);
  if (!colour || size.from !== size.to || sentence.close === '?') return false;
  const before = joined(items, 0, colour.at);
  const link = joined(items, colour.to + 1, size.from);
  const after = joined(items, size.to + 1);
  if (!MEANS.test(link)) return false;
  return (LED.test(before) && ENDED.test(after)) || (ALONE.test(before) && TRAILED.test(after));
}
const MEANS =
  /^(?:hubs? |one )?(?:(?:always|also|both|invariably) )?(?:is|are|means?|marks?|stands? for|=)(?: (?:always|both|the same|invariably))?(?: (?:an?|the))?$/;
const OF_NEEDLE = '(?:an? |the )?(?:hypodermic |injection )?needles?';
const OF_CANNULA = '(?:an? |the )?(?:iv |venous )?cannula(?:s|e)?';
const BOTH = `(?:(?:whether|both) )?(?:(?:on|for) (?:both )?)?(?:${OF_NEEDLE} (?:or|and) (?:on |for )?${OF_CANNULA}|${OF_CANNULA} (?:or|and) (?:on |for )?${OF_NEEDLE})(?: (?:hubs?|alike|both))*`;
const LED = new RegExp(`(?:^|[:;.—–] |\\b(?:so|and|but) )(?:whether )?${BOTH}(?: ,)?(?: (?:the|an?))?$`);
const ALONE = /(?:^|[:;.,—–]|\b(?:so|and|but|that|remember))(?: ?(?:the|an?))?$/;
const TRAILED = new RegExp(`^,? ?(?:whether |no matter whether )?${BOTH}(?= ?$| [.,;!)])`);
const ENDED = /^$|^[.,;!)]/;

const SHARED =
  /\b(?:are both|both are|both of (?:which|them) are|(?:are|is) alike|all|come in|both come in|both have an?)(?: the same)?$/;
/** "A colour that nobody mixes up: …": what it denies is not what follows. */
const SURE_OF_IT =
  /^(?!.*\b(?:true|so|say|said|believe|think)\b.*:)[^:]*\b(?:nobody|no one|you (?:cannot|can't|never)) (?:ever |can )?(?:mix(?:es)?|confuses?|forgets?|mistakes?|gets? (?:it |this )?wrong)\b[^:]*:/;
const OPEN = /^(?:if|unless|than|but|while|whereas|only)$/;
