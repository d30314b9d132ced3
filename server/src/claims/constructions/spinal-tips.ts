/** "The pencil-point is the one with the slanted bevel", "pencil-point needles have their hole at the very tip". */
import { itemAt, joined } from '../text/joined.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

const NAME = /(?:^| )(?:pencil-points?|pencil points?)(?: spinal)?(?: (?:needles?|ones?|tips?))?(?= |$)/;
const OPEN =
  /^ (?:(?:is|are) the (?:one|ones|kind|needle|needles) )?(?:which |that )?(?:has|have|with|carries|opens?) [^;.]{0,40}?\b(?:(?:sharp|slanted|slanting|cutting|long|angled|oblique) (?:\w+ )?bevel|(?:hole|opening|orifice|eye) (?:is |lies |sits )?(?:right |exactly |directly )?(?:at|in|on) (?:the|its) (?:very )?(?:tip|point|end))\b/;
const SIDE =
  /\b(?:side|lateral|sideways|near|behind|short of|below|before|back from|mm|cutting needles?|bevelled needles?|unlike|whereas|while|than|other)\b/;

export const spinalTips: Construction = {
  id: 'spinal-tips',
  needs: () => [{ like: /^pencil/ }],
  leaning: true,
  read(scene) {
    const text = joined(scene.items);
    const name = NAME.exec(text);
    if (!name || scene.items.some((item) => NEGATIONS.has(item.word) || item.word === 'if')) return [];
    const rest = text.slice(name.index + name[0].length);
    const match = OPEN.exec(rest);
    if (!match || SIDE.test(rest.slice(0, match[0].length + 24)) || /\bunlike\b/.test(text)) return [];
    const from = itemAt(scene.items, name.index + 1);
    const at = itemAt(scene.items, name.index + name[0].length + match[0].length - 1);
    const claim = ruleClaim(scene, 'spinal-tips', 'needle-gauge', 'pencil-point-open', at);
    return [{ claim, at, from, to: at }];
  },
};
