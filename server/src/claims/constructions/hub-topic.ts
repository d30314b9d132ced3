/**
 * One colour on two devices, spoken of in one sentence, and its sizes in the next: "Pink on a needle hub is not what pink on
 * an IV cannula is. The needle is 18 G.", "Pink needs care. On the cannula it is 20 G, on the needle 18 G."
 */
import type { Device } from '../../sizes/model.ts';
import type { ColourClaim } from '../model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';
import { coloursIn } from './hub-words.ts';
import type { Reading } from './model.ts';

export function ofTopic(scene: Scene): Reading[] {
  const { items, sentence } = scene;
  const before = scene.before.at(-1);
  const all = groups(items);
  if (!before || all.length === 0 || all.length > 2 || sentence.close === '?') return [];
  const colour = topicOf(before.items);
  if (!colour || TURNS.test(joined(items))) return [];
  const told = all.map((g, i) => ({ g, device: deviceOf(items, all[i - 1]?.to ?? -1, g) }));
  const [first, second] = told;
  if (told.some(({ device }) => !device) || (second && second.device === first!.device)) return [];
  const rest = joined(items, all.at(-1)!.to + 1, all.at(-1)!.to + 4);
  return ENDS.test(rest) ? told.map(({ g, device }) => reading(scene, g, colour, device!)) : [];
}

/** The one colour that a sentence speaks of without a size, on both devices or as something to take care of. */
function topicOf(items: readonly Item[]): string | undefined {
  const colours = coloursIn(items);
  const families = new Set(colours.map(({ family }) => family));
  const [family] = families;
  if (!family || families.size > 1 || items.some(({ kind }) => kind === 'size')) return undefined;
  const code = codeOf(items);
  const text = joined(items);
  const both = code === 'both' && (TWO.test(text) || colours.length === 2);
  const careful = (code === undefined || code === 'both') && items.length <= 12 && CARE.test(text);
  return both || careful ? family : undefined;
}
const TWO =
  /\b(?:differ\w*|(?:not|n't) (?:the same|mean|what)|something else|another (?:size|gauge|thing)|two (?:sizes|gauges|things|numbers|meanings)|depends|unlike|confus\w+)\b/;
const CARE =
  /\b(?:needs? care|care(?:ful)?|beware|watch|attention|trap|catch|tricky|twice|two (?:sizes|gauges|things|meanings)|two codes|both codes|not the same|depends|differs?|different)\b/;

/** "The needle is", "on the IV cannula it is", "the hypodermic": what a size is said of, in its own part of the sentence. */
function deviceOf(items: readonly Item[], from: number, { from: to }: Group): Device | undefined {
  const words = items.slice(from + 1, to);
  const code = codeOf(words);
  return (code === 'needle' || code === 'cannula') && SAID_OF.test(joined(words)) ? code : undefined;
}
const SAID_OF =
  /^(?:(?:[,;]|and|but|while|whereas|so|then|here) ?)*(?:(?:on|in|for|as|with) )?(?:(?:an?|the|our) )?(?:[a-z-]+ ){0,2}?(?:needles?|cannulas?|cannulae|hypodermics?|iv|hubs?|one|catheters?)(?: hubs?| cannulas?| needles?)?,?(?: (?:it|this|that|pink|green|blue|yellow|grey|gray|orange|colour|the colour))?(?: (?:is|means|marks|stands for|says|gives|tells|being|will be|has|=)| :)?(?: (?:an?|the))?$/;
const TURNS = /\b(?:not|never|no|nor|neither|if|unless|than|or|once|formerly|used to|wrong|would|\w+n't)\b/;
const ENDS = /^(?:[.,;!)]|$|one\b|needle\b|cannula\b|there\b|and\b)/;

function reading(scene: Scene, g: Group, colour: string, device: Device): Reading {
  const claim: ColourClaim = {
    kind: 'colour',
    construction: 'colour',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[g.from]!, scene.items[g.to]!),
    size: operand(scene, g),
    colour,
    device,
    same: true,
  };
  return { claim, at: g.from, from: g.from, to: g.to };
}
