/** "a 24 G is a large-bore line", "large-bore access, 14 or 16 G". */

import type { Item } from '../text/items.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf } from '../text/scene.ts';
import { CATEGORIES, type CategoryRow } from '../words/categories.ts';
import type { Construction, Reading } from './model.ts';

export const category: Construction = {
  id: 'category',
  needs: () => [{ sizes: 1, words: [...FORMS].map((form) => form.split(' ')[0]!) }],
  read(scene) {
    const all = groups(scene.items);
    if (all.length === 0) return [];
    const forms = formsIn(scene.items);
    return forms.flatMap((form) => readForm(scene, form, all, forms));
  },
};

interface Form {
  readonly at: number;
  readonly to: number;
  readonly text: string;
}
const FORMS = new Set(CATEGORIES.flatMap((row) => row.forms));

function formsIn(items: readonly Item[]): Form[] {
  return items.flatMap((item, at) => {
    if (FORMS.has(item.word)) return [{ at, to: at, text: item.word }];
    const two = `${item.word} ${items[at + 1]?.word}`;
    return FORMS.has(two) ? [{ at, to: at + 1, text: two }] : [];
  });
}

/** The one size the class is said of: nearest, tied by a verb of being, an apposition or a bracket. */
function readForm(scene: Scene, form: Form, all: readonly Group[], forms: readonly Form[]): Reading[] {
  const after = all.find((g) => g.from > form.to);
  const before = all.filter((g) => g.to < form.at).at(-1);
  // "The 16 G is large-bore and the 24 G small-bore": each size has its own class behind it.
  const taken = forms.some((other) => after && other.at > after.to && tied(scene.items, other, after));
  const order = taken && before ? [before, after] : [after, before];
  const group = order.find((g): g is Group => g !== undefined && tied(scene.items, form, g));
  if (!group || group.mentions.some((m) => m.bound)) return [];
  // "No large-bore access, so a 22 G had to do": the size stands for the lack of it.
  if (group === after && /^(?:no|without|failed|lost|lacking)$/.test(scene.items[form.at - 1]?.word ?? ''))
    return [];
  const row = rowFor(form, group);
  if (!row) return [];
  return [
    {
      claim: {
        kind: 'category',
        construction: 'category',
        span: sentenceSpan(scene),
        focus: spanOf(scene, scene.items[group.from]!, scene.items[group.to]!),
        size: operand(scene, group),
        category: row.id,
        member: true,
      },
      // With a request first, what is asserted is the size that answers it.
      at: Math.max(form.at, group.from),
      from: Math.min(form.at, group.from),
      to: Math.max(form.to, group.to),
    },
  ];
}

function rowFor(form: Form, group: Group): CategoryRow | undefined {
  const system = group.sizes[0]!.system;
  const device = group.mentions.find((m) => m.device)?.device;
  return CATEGORIES.find(
    (row) =>
      row.system === system &&
      row.forms.includes(form.text) &&
      (!row.devices || (device !== undefined && row.devices.includes(device))),
  );
}

const TIES = new Set(
  `is are was counts as a an the perfectly good fine proper true real , ( : — – = means mean line lines access iv ivs cannula cannulae
  cannulas catheter catheters chest feeding nasogastric pleural thoracic not isn't aren't . venous peripheral two one that i.e or and count qualifies still also of in our at for adult needle needles e.g like such hand arm forearm vein always really definitely certainly too so with fine good enough
  chest trolley cart tray hand over give offer
  sit sits run runs range ranges bracket from between covers cover anything everything what we mean by locking pigtail
  then adults come comes as children's
  belongs belong sits lives with pigtails shelf drains drain tubes sold known classed counted described
  among amongst both each left right on side
  true plain ready already here there grown-up proper call called call it open use put place insert choose grab take pick get fetch reach go`.split(
    /\s+/,
  ),
);

function tied(items: readonly Item[], form: Form, g: Group): boolean {
  const [from, to] = form.to < g.from ? [form.to, g.from] : [g.to, form.at];
  const between = items.slice(from + 1, to);
  if (between.length > 10) return false;
  return between.every((item) => TIES.has(item.word) || item.deviceNoun);
}
