/** "22-gauge cannula. Grab the pink one.": a colour to reach for, said of the one size of the sentence before. */
import type { ColourClaim } from '../model.ts';
import { groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { codeOf } from '../words/codes.ts';
import type { Construction, Reading } from './model.ts';

const REACH = new Set([
  'grab',
  'take',
  'pick',
  'fetch',
  'open',
  'use',
  'get',
  'pull',
  'choose',
  "that's",
  'means',
  'look',
  'reach',
  'find',
]);
const SCALES: ReadonlySet<string> = new Set(['needle-gauge', 'french']);
const NOUNS = new Set([
  'one',
  'hub',
  'ones',
  'cannula',
  'needle',
  'funnel',
  'foley',
  'catheter',
  'connector',
]);

export const grab: Construction = {
  id: 'grab',
  needs: () => [{ holds: ['colour'] }, { sizes: 1, holds: ['answers'] }],
  read(scene) {
    if (scene.items.length > 12) return [];
    if (groups(scene.items).length > 0) return answeredBySize(scene);
    const at = scene.items.findIndex((item, i) => item.colour !== undefined && reached(scene, i));
    const before = scene.before.at(-1);
    const sized =
      before && before.close !== '?'
        ? groups(before.items).filter((g) => SCALES.has(g.sizes[0]!.system))
        : [];
    const subject = sized[0];
    if (
      at < 0 ||
      sized.length !== 1 ||
      !subject ||
      subject.sizes.length !== 1 ||
      before!.items.some((item) => item.colour)
    )
      return [];
    const device = codeOf(scene.items) ?? codeOf(before!.items) ?? subject.mentions[0]!.device;
    const french = subject.sizes[0]!.system === 'french';
    const [noun, end] = scene.items.slice(at + 1, at + 3);
    if (french && noun?.word === 'one' && end?.kind === 'word') return [];
    if (device === 'both' || french !== /^(?:urinary|suction)-catheter$/.test(device ?? '')) return [];
    const claim: ColourClaim = {
      kind: 'colour',
      construction: 'grab',
      span: sentenceSpan(scene),
      focus: spanOf(scene, scene.items[at]!),
      size: operand(scene, subject),
      colour: scene.items[at]!.colour!,
      same: true,
      ...(device ? { device } : {}),
    };
    return [{ claim, at, from: at, to: at }] satisfies Reading[];
  },
};

/** "Blue hub on an IV cannula? That is a 22 G." */
function answeredBySize(scene: Scene): Reading[] {
  const question = scene.before.at(-1);
  const [size, ...more] = groups(scene.items);
  const coloured = question?.close === '?' ? question.items.filter((item) => item.colour) : [];
  const device = question && codeOf(question.items);
  const short = /^(?:that|it|a|an|the|this)(?: (?:is|was|means|will be))?(?: an?| the| your)?$/;
  const before = scene.items
    .slice(0, size?.from ?? 0)
    .map((item) => item.word)
    .join(' ');
  if (
    !size ||
    more.length > 0 ||
    coloured.length !== 1 ||
    !device ||
    device === 'both' ||
    !short.test(before)
  )
    return [];
  if (size.sizes.length !== 1 || groups(question!.items).length > 0) return [];
  const claim: ColourClaim = {
    kind: 'colour',
    construction: 'grab',
    span: sentenceSpan(scene),
    focus: spanOf(scene, scene.items[size.from]!),
    size: operand(scene, size),
    colour: coloured[0]!.colour!,
    same: true,
    device,
  };
  return [{ claim, at: size.from, from: size.from, to: size.to }];
}

/** "grab the pink one": a verb of reaching right before, a hub or "one" right after. */
function reached(scene: Scene, i: number): boolean {
  const before = scene.items.slice(Math.max(0, i - 3), i).map((item) => item.word);
  const named = /^(?:it|that|this) is (?:the|a)$/.test(
    scene.items
      .slice(0, i)
      .map((item) => item.word)
      .join(' '),
  );
  return (named || before.some((word) => REACH.has(word))) && NOUNS.has(scene.items[i + 1]?.word ?? '');
}
