/** What the metric number of a thread says: tenths of a millimetre, and what is made of it. */
import { cue, holds } from '../text/cues.ts';
import { textOf } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** "the metric number is the diameter in millimetres divided by ten", "the number divided by five gives millimetres". */
function metricOperation(text: string): string | undefined {
  if (!/\b(?:mm|millimet(?:re|er)s?|diameter)\b/.test(text)) return undefined;
  const operation =
    /\b(divided by|times|multiplied by|over|÷|×) (ten|10|five|5|two|2|three|3|four|4|a hundred|100)\b/.exec(
      text,
    );
  const verb =
    /\b(multiply|divide) (?:\w+ ){0,7}?by (ten|10|five|5|two|2|three|3|four|4|a hundred|100)\b/.exec(text);
  if (verb && !operation) {
    // Multiplying the metric number never gives millimetres; dividing it by ten does.
    const gives =
      /\b(?:to get|into|to|for|gives?) (?:the )?(?:mm|millimet)|\b(?:you|we) (?:have|get)\b.{0,30}\b(?:mm|millimet)/.test(
        text,
      );
    if (!gives) return undefined;
    return verb[1] === 'divide' && /^(?:ten|10)$/.test(verb[2]!) ? 'metric-is-tenths' : 'metric-is-other';
  }
  const tenfold = /\bten times\b/.test(text);
  if (!operation && !tenfold) return undefined;
  const of = /\b(?:mm|millimet(?:re|er)s?|diameter)\b.{0,30}(?:divided|times|multiplied|over|÷|×)/.test(text);
  if (tenfold) return 'metric-is-tenths';
  const ten = /^(?:ten|10)$/.test(operation![2]!);
  const divides = /^(?:divided|over|÷)/.test(operation![1]!);
  return ten && divides !== of ? 'metric-is-tenths' : 'metric-is-other';
}

const FRACTION =
  /\b(?:(tenths?|thousandths?|hundredths?|quarters?|thirds?|halves)) of (?:a|an|one) (millimet(?:re|er)|mm|inch)\b/;
const METRIC_WORD = /^(?:metric|ep)$/;
const METRIC = cue(METRIC_WORD);

export function readMetric(scene: Scene): Reading[] {
  const { items } = scene;
  if (!holds(items, METRIC)) return [];
  const at = items.findIndex(
    (item, i) =>
      METRIC_WORD.test(item.word) &&
      items.slice(i + 1, i + 3).some((near) => /^(?:numbers?|sizes?|gauge|figures?|terms)$/.test(near.word)),
  );
  if (at < 0) return [];
  if (/\b(?:are|is|means?|counts?) (?:whole|full) millimet(?:re|er)s?\b/.test(textOf(items.slice(at))))
    return [reading(scene, 'metric-is-other', at)];
  if (
    /\b(?:is|means|gives|equals) (?:just |simply )?(?:the )?(?:least |minimum |smallest )?(?:diameter|thickness|width) in (?:mm|millimet(?:re|er)s?)\b/.test(
      textOf(items.slice(at)),
    ) &&
    !/\b(?:tenths?|ten|10)\b/.test(textOf(items))
  )
    return [reading(scene, 'metric-is-other', at)];
  const match = FRACTION.exec(textOf(items.slice(at)));
  const operation = match ? undefined : metricOperation(textOf(items));
  if (operation) return [reading(scene, operation, at)];
  if (!match) return [];
  const id = match[1]!.startsWith('tenth') && match[2] !== 'inch' ? 'metric-is-tenths' : 'metric-is-other';
  return [reading(scene, id, at)];
}

function reading(scene: Scene, formula: string, at: number): Reading {
  const claim = ruleClaim(scene, 'formula', 'ep-metric', formula, at);
  return { claim, at, from: at, to: scene.items.length - 1 };
}
