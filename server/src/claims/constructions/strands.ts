/** How a thread is built, in words: "polyglactin 910 consists of many filaments", "nylon is made of a single strand". */
import type { PropertyClaim } from '../model.ts';
import { materialsIn } from '../text/materials.ts';
import { sentenceSpan, spanOf } from '../text/scene.ts';
import type { Construction } from './model.ts';

const COUNT: ReadonlyMap<string, string> = new Map([
  ...['single', 'one', '1'].map((word) => [word, 'structure:monofilament'] as const),
  ...['many', 'several', 'multiple', 'numerous'].map((word) => [word, 'structure:multifilament'] as const),
]);
const FILAMENT = /^(?:filaments?|strands?|fibres?|fibers?)$/;
const BUILT = /^(?:consists?|made|composed|built|spun)$/;

export const strands: Construction = {
  id: 'strands',
  needs: () => [{ holds: ['material'], like: BUILT }],
  read(scene) {
    const { items } = scene;
    const named = materialsIn(scene.items);
    const subject = named[0];
    if (!subject || new Set(named.map((m) => m.id)).size !== 1) return [];
    const built = items.findIndex((item, i) => i > subject.to && BUILT.test(item.word));
    if (built < 0 || built - subject.to > 4) return [];
    const at = items.findIndex((item, i) => i > built && i <= built + 4 && COUNT.has(item.word));
    if (at < 0 || !items.slice(at + 1, at + 4).some((item) => FILAMENT.test(item.word))) return [];
    const claim: PropertyClaim = {
      kind: 'property',
      construction: 'strands',
      span: sentenceSpan(scene),
      focus: spanOf(scene, items[at]!),
      subject: subject.id,
      of: 'material',
      property: COUNT.get(items[at]!.word)!,
      has: true,
    };
    return [{ claim, at, from: subject.at, to: at }];
  },
};
