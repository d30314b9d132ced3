/**
 * Which things a scale is for: "needles are sized in French and drains in gauge", "catheters go by gauge and needles by
 * French". A catheter by itself may be an IV catheter, which goes by gauge; so only named kinds are judged.
 */
import { firstMatch } from '../../notes/patterns.ts';
import { itemAt, joined } from '../text/joined.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

const NEEDLES =
  '(?:(?:hypodermic |spinal |injection |epidural |pen |insulin |sharp |hollow )?needles?|needle sizes|iv cannulas|iv cannulae|peripheral cannula(?:s|e))';
const TUBES =
  '(?:(?:urinary|bladder|urethral|suction|foley) catheters?|foleys|(?:chest |wound |surgical )?drains?|(?:feeding|nasogastric|stomach|gastric) tubes?|nephrostom(?:y tubes|ies))';
const HOW =
  '(?:(?:are|is) (?:(?:always|usually|all|mostly) )?(?:sized|measured|counted|numbered|graded|sold|labelled|labeled|called|named|given|ordered|quoted|marked|stocked|classed|listed|stated|described|expressed|specified|printed|bought|known)|goe?s?|comes?|runs?|counts?|are|is)';
const BY = '(?:(?:in|by|on|with|to|using|according to)(?: the)?)';
const AND = '(?:(?:,|;|and|but|while|whereas) )*';

/** "needles are sized in French", "catheters go by gauge and needles by French", "we count needles in French". */
const shape = (things: string, scale: string): RegExp =>
  new RegExp(
    `(?:^|[ ,;])${things} (?:${HOW} )?(?:simply |just |always |usually )?${BY} ${scale}(?: scale| system| numbers?| units?| sizes?)?(?= [.,;:!)]| and | but | while | whereas |$)`,
  );
/** "the unit for chest drains is the gauge". */
const unit = (things: string, scale: string): RegExp =>
  new RegExp(
    `(?:^|[ ,;])(?:unit|scale|measure) (?:for|of|used for|on|used on) (?:the |all |most )?${things} is (?:always |usually )?(?:the )?${scale}(?: scale| system)?(?= [.,;:!)]|$)`,
  );
const SHAPES: readonly { readonly pattern: RegExp; readonly formula: string; readonly french: boolean }[] = [
  { pattern: shape(NEEDLES, '(?:french|charri[eè]re)'), formula: 'needles-in-french', french: true },
  { pattern: unit(NEEDLES, '(?:french|charri[eè]re)'), formula: 'needles-in-french', french: true },
  { pattern: unit(TUBES, '(?:gauges?|needle gauge)'), formula: 'catheters-in-gauge', french: false },
  { pattern: shape(TUBES, '(?:gauges?|needle gauge)'), formula: 'catheters-in-gauge', french: false },
];
/** A verb of its own: "catheters go by gauge". */
const OWN_VERB = new RegExp(` (?:${HOW}) `);
/** Without a verb of its own a thing leans on one before it: "catheters go by gauge and …", "we count …". */
const LED = new RegExp(
  `(?:^|[ ,;])(?:${HOW} ${BY} \\S+(?: scale| numbers?)? ${AND}|(?:we|you|they) (?:count|size|measure|order|number|label|name|grade|sort) (?:our |the |all |most )?|\\S+ (?:in|by) (?:gauge|french|millimetres|mm) ${AND})$`,
);

export const scaleOf: Construction = {
  id: 'scale-of',
  needs: () => [
    { holds: ['system'], like: /^(?:needles?|drains?|tubes?|catheters?|cannula[se]|nephrostom.+)$/ },
  ],
  read(scene) {
    const { items } = scene;
    const odd = (word: string) =>
      NEGATIONS.has(word) || /^(?:or|than|if|once|used|were|was|some)$/.test(word);
    if (items.length > 40 || items.some((item) => item.kind === 'size' || odd(item.word))) return [];
    const text = joined(items);
    for (const { pattern, formula, french } of SHAPES) {
      const match = firstMatch(pattern, text);
      if (!match) continue;
      const own = OWN_VERB.test(match[0]);
      if (!own && !LED.test(text.slice(0, match.index + 1))) continue;
      const at = itemAt(
        items,
        match.index + match[0].search(french ? /french|charri/ : /gauges?|needle gauge/),
      );
      const claim = ruleClaim(scene, 'scale-of', french ? 'needle-gauge' : 'french', formula, at);
      return [{ claim, at, from: itemAt(items, match.index + 1), to: at }];
    }
    return [];
  },
};
