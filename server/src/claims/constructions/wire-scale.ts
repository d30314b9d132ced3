/**
 * A needle said to be as thick as electrical wire of the same number: "an 18 G needle is exactly as thick as 18 AWG wire".
 * The two gauges are tables of their own.
 */
import { joined } from '../text/joined.ts';
import { groups } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

export const wireScale: Construction = {
  id: 'wire-scale',
  needs: () => [{ sizes: 2, words: ['as', 'same', 'equals', 'equal', 'identical'] }],
  read(scene) {
    const { items } = scene;
    const [a, b, ...more] = groups(items);
    if (!a || !b || more.length > 0 || scene.sentence.close === '?') return [];
    const [left, right] = [a, b].map(({ sizes }) => (sizes.length === 1 ? sizes[0] : undefined));
    const systems = [left?.system, right?.system].sort().join();
    if (systems !== 'needle-gauge,wire-gauge' || left!.value !== right!.value) return [];
    if (![a, b].some(({ mentions }) => /awg|american/i.test(mentions[0]!.text))) return [];
    if (items.some(({ word }) => NEGATIONS.has(word) || TURNS.test(word))) return [];
    if (!ALIKE.test(joined(items))) return [];
    return [
      {
        claim: ruleClaim(scene, 'wire-scale', 'needle-gauge', 'gauge-is-awg', a.from, b.to),
        at: b.from,
        from: a.from,
        to: b.to,
      },
    ];
  },
};

const ALIKE =
  /\b(?:(?:is|are) (?:(?:exactly|just|precisely|quite) )*as (?:thick|thin|wide|fine) as|(?:exactly |just )?the same (?:thickness|diameter|width|size|thing)|equals?|(?:is|are) (?:equal|identical) (?:to|with))\b/;
const TURNS =
  /^(?:if|unless|whether|than|nearly|almost|roughly|about|but|while|whereas|though|although|or|only|myth|mistake|wrong|looks?|seems?|sounds?|would|might|may|number)$/;
