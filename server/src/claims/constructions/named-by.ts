/** What a size is taken for: "a 6 Fr sheath is 2.0 mm on the outside", "the 4-0 tells you the size of the needle". */
import { finds } from '../../notes/patterns.ts';
import type { FormulaClaim } from '../model.ts';
import { textOf } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

export const namedBy: Construction = {
  id: 'named-by',
  needs: () => [{ sizes: 2, like: SHEATH }, { words: ['needle'] }],
  leaning: true,
  read(scene) {
    return [...sheathOutside(scene), ...threadOrNeedle(scene)];
  },
};

const SHEATH = /^(?:sheaths?|introducers?)$/;

/** What the French of a sheath gives is what passes through; as wide as that outside it cannot be. */
const ROUNDING = 0.06;

function sheathOutside(scene: Scene): Reading[] {
  const { items } = scene;
  const all = groups(items);
  const [sheath, length, ...more] = all;
  if (!sheath || !length || !items.some((item) => SHEATH.test(item.word))) return [];
  // "…, the same as any 6 Fr catheter."
  if (more.some((g) => g.sizes[0]!.system !== 'french') || items.some((item) => item.word === 'dilator'))
    return [];
  if (!one(sheath, 'french') || !one(length, 'millimetre') || length.from - sheath.to > 8) return [];
  const near = textOf(items.slice(sheath.to + 1, length.to + 6));
  const outside = /\b(?:outside|outer|external|externally|od)\b/.test(near);
  if (!outside || /\b(?:inside|inner|internal|not|than|through|lets|takes|dilator|if)\b/.test(near))
    return [];
  if (!/\b(?:is|measures?|has|=)\b/.test(textOf(items.slice(sheath.to + 1, length.from)))) return [];
  if (length.sizes[0]!.value > sheath.sizes[0]!.value / 3 + ROUNDING) return [];
  return [reading(scene, length.from, sheath.from, 'french', 'sheath-is-outer')];
}

const one = (g: Group, system: string) =>
  g.mentions.length === 1 && g.sizes.length === 1 && g.sizes[0]!.system === system && !g.mentions[0]!.bound;

const THREAD =
  '(?:usp (?:number|size)|suture (?:number|size)|(?:number|size) (?:of|on) (?:a|the) suture(?: packet)?)';
const TELLS = '(?:is|gives|means|tells (?:you|us)|stands for|refers to|measures|names|describes|shows)';
const OF_NEEDLE = '(?:the |its )?(?:size|gauge|thickness|diameter|width|calib(?:re|er)|bore) of the needle';
const NEEDLE = new RegExp(
  `(?:\\b${THREAD}|#)(?: (?:on|of) (?:a |the )?(?:suture |thread )?(?:packet|label|box))? ${TELLS} ${OF_NEEDLE}\\b`,
);

/** "The USP number is the size of the needle": it is that of the thread. */
function threadOrNeedle(scene: Scene): Reading[] {
  const { items } = scene;
  const words = items
    .map((item) => (item.mention?.sizes[0]?.system === 'usp' ? '#' : item.kind === 'size' ? '@' : item.word))
    .join(' ');
  if (!finds(NEEDLE, words) || /\b(?:not|never|nor|if|whether|but)\b|\?/.test(words)) return [];
  const at = items.findLastIndex((item) => item.word === 'needle');
  if (at < 0) return [];
  return [reading(scene, at, at, 'usp', 'usp-is-needle')];
}

function reading(
  scene: Scene,
  at: number,
  from: number,
  system: FormulaClaim['system'],
  formula: string,
): Reading {
  const claim = ruleClaim(scene, 'named-by', system, formula, at);
  return { claim, at, from, to: at };
}
