/** "a 24 G is a large-bore line", "large-bore access, 14 or 16 G". */

import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import type { CategoryRow } from '../words/categories.ts';
import { classClaim } from './class-claim.ts';
import { FIRST_WORDS, type Form, formsIn, rowFor } from './class-forms.ts';
import { type ClassTold, classTold, leftOut } from './class-told.ts';
import { describedClass } from './described-class.ts';
import type { Construction, Reading } from './model.ts';

export const category: Construction = {
  id: 'category',
  needs: () => [
    { sizes: 1, words: FIRST_WORDS() },
    { sizes: 1, holds: ['superlative'] },
    { holds: ['answers'], words: FIRST_WORDS() },
  ],
  leaning: true,
  read(scene) {
    const all = groups(scene.items);
    const forms = formsIn(scene.items);
    const read = all.length === 0 ? [] : forms.flatMap((form) => readForm(scene, form, all, forms));
    const told = classTold(scene, forms).filter(
      ({ group, row }) =>
        !isElsewhere(scene, row) &&
        !read.some(({ claim }) => claim.focus.start === group.mentions[0]!.source.start),
    );
    const close = [...read, ...told.map((one) => toldReading(scene, one))];
    return close.length > 0 ? close : describedClass(scene);
  },
};

/** The finding points at the class when its size stands in the question before. */
function toldReading(scene: Scene, { form, group, row, asked }: ClassTold): Reading {
  if (!asked) return reading(scene, form, group, row);
  const place = { from: form.at, to: form.to };
  return {
    claim: classClaim(scene, 'category', group, row.id, false, place),
    at: form.at,
    ...place,
    // "No, it is one of the thick ones": the answer is turned down, and then told.
    own: true,
  };
}

/** The one size the class is said of: nearest, tied by a verb of being, an apposition or a bracket. */
function readForm(scene: Scene, form: Form, all: readonly Group[], forms: readonly Form[]): Reading[] {
  const after = all.find((g) => g.from > form.to);
  const before = all.filter((g) => g.to < form.at).at(-1);
  // "The 16 G is large-bore and the 24 G small-bore": each size has its own class behind it.
  const taken = forms.some((other) => after && other.at > after.to && tied(scene.items, other, after));
  const order = taken && before ? [before, after] : [after, before];
  const group = order.find(
    (g): g is Group => g !== undefined && !leftOut(scene.items, g) && tied(scene.items, form, g),
  );
  if (!group || group.mentions.some((m) => m.bound)) return [];
  // "No large-bore access, so a 22 G had to do": the size stands for the lack of it.
  if (
    group === after &&
    (/^(?:no|without|failed|lost|lacking)$/.test(scene.items[form.at - 1]?.word ?? '') ||
      BESIDE.test(joined(scene.items, Math.max(0, form.at - 5), form.at)))
  )
    return [];
  const run = group === after ? runFrom(scene.items, all, group) : [group];
  return run.flatMap((one) => {
    const row = rowFor(form, one);
    if (row && isElsewhere(scene, row)) return [];
    const open =
      row?.listed !== true || (forms.length === 1 && group === after && opens(scene.items, form, group));
    const near = row?.close !== true || group !== after || toldBehind(scene.items, form, group);
    return row && open && near ? [reading(scene, form, one, row)] : [];
  });
}

/** "Aspirate the knee: large-bore needle, 20 G". A cannula or a line is for a vein wherever it is. */
function isElsewhere({ passage, headings, items }: Scene, { elsewhere }: CategoryRow): boolean {
  if (!elsewhere || VEINS.test(joined(items, 0, items.length))) return false;
  return elsewhere.test(passage.text.slice(0, 2000)) || headings.some((heading) => elsewhere.test(heading));
}
const VEINS =
  /\b(?:iv|ivs|access|cannulas?|cannulae|venous|veins?|lines?|drips?|venflons?|resuscitat\w+|transfus\w+|trauma|shock|bleed\w*)\b/;

/** "The opposite of large-bore access", "second to a large-bore line": what follows is another size. */
const BESIDE =
  /\b(?:opposite|second|next|alternatives?|failing|unlike|instead|replac\w+|short|out|lack|want|rather|other|else|beside|besides|apart|than|from|contrast|contrary|as opposed)(?: \w+)? (?:of|to|for|than|from)(?: an?| the| any| our)?(?: \w+)?$|\b(?:than|unlike|failing|besides)(?: an?| the| any)?(?: \w+)?$/;

/** "fine-bore (adult): 20 Fr", "fine-bore tubes are 20 Fr"; not "fine-bore or 16 Fr", "fine-bore for feeding, 16 Fr for drainage". */
const toldBehind = (items: readonly Item[], form: Form, group: Group): boolean =>
  !/^(?:\S+ )?(?:and|or)\b|\bfor [^,:(]* ,$/.test(joined(items, form.to + 1, group.from));

/** "the 16 G and the 22 G": sizes joined by "and" or "or", each with an article of its own. */
function runFrom(items: readonly Item[], all: readonly Group[], first: Group): Group[] {
  const run = [first];
  for (const g of all.slice(all.indexOf(first) + 1)) {
    const gap = items.slice(run.at(-1)!.to + 1, g.from).map((item) => item.word);
    if (gap.length < 2 || !JOINED.test(gap.join(' ')) || g.mentions.some((m) => m.bound)) break;
    run.push(g);
  }
  // "Large-bore access means a 14 G, and a 20 G for the drip": what follows the last one is said of it alone.
  return run.length > 1 && ENDS.test(items[run.at(-1)!.to + 1]?.word ?? '.') ? run : [first];
}
const JOINED = /^(?:,? ?(?:and|or)|,) (?:the|an?|our)$/;
const ENDS = /^[.;)!]$/;

function reading(scene: Scene, form: Form, group: Group, row: CategoryRow): Reading {
  const each = group.mentions.length > 1 && listed(scene.items, form, group);
  return {
    claim: classClaim(scene, 'category', group, row.id, each),
    // With a request first, what is asserted is the size that answers it.
    at: Math.max(form.at, group.from),
    from: Math.min(form.at, group.from),
    to: Math.max(form.to, group.to),
  };
}

/** A list that is opened as one: each of its sizes is said to be of the class. */
function listed(items: readonly Item[], form: Form, group: Group): boolean {
  const [from, to] = form.to < group.from ? [form.to, group.from] : [group.to, form.at];
  return items.slice(from + 1, to).some((item) => LISTS.test(item.word));
}
/** "small cannulae such as the 14 G", "fine sutures (2 and 3)"; not "unlike", "no" or "finer than" before it. */
function opens(items: readonly Item[], form: Form, group: Group): boolean {
  const between = items
    .slice(form.to + 1, group.from)
    .map((item) => item.word)
    .join(' ');
  return (
    /^(?:[,(—–:] ?)?(?:such as|like|e\.g|say|for example|for instance|including|include|includes|i\.e|namely|\(|:|are|are the)?(?: [,:.])?(?: (?:the|a|an|our|size|sizes|number))?$/.test(
      between,
    ) &&
    between !== '' &&
    !items.slice(Math.max(0, form.at - 2), form.at).some((item) => LEFT_OUT.test(item.word))
  );
}
const LEFT_OUT =
  /^(?:no|not|unlike|without|than|less|as|so|very|too|relatively|comparatively|for|never|isn't|nor)$/;
const LISTS = /^(?:[:(]|are|as|like|e\.g|include|includes|including|qualify|used|count|all|both|mean|means)$/;

const TIES = new Set(
  `" “ ” ' ‘ ’ is are was counts as a an the perfectly good fine proper true real , ( : — – = means mean line lines access iv ivs cannula cannulae
  cannulas catheter catheters chest feeding nasogastric pleural thoracic not isn't aren't . venous peripheral two one that i.e or and count qualifies still also of in our at for adult needle needles e.g like such hand arm forearm vein always really definitely certainly too so with fine good enough
  chest trolley cart tray hand over give offer
  sit sits run runs range ranges bracket from between covers cover anything everything what we mean by locking pigtail
  meaning think range resuscitation trauma transfusion shock bleeding haemorrhage hemorrhage anywhere then example instance including namely adults come comes as children's therefore thus hence say will do serve serves drainage something like these those all take qualify bed bay room states were used considered regarded deemed reckoned rated termed labelled include includes including falls fall into class group category this ward unit ask want only placed sited
  belongs belong sits lives with pigtails shelf drains drain tubes sold known classed counted described
  among amongst both each left right on side
  understood taken meant held us ) adult adults peripheral
  me my book i we'd ac acs antecubital
  true plain ready already here there grown-up proper call called call it open use put place insert choose grab take pick get fetch reach go`.split(
    /\s+/,
  ),
);

function tied(items: readonly Item[], form: Form, g: Group): boolean {
  const [from, to] = form.to < g.from ? [form.to, g.from] : [g.to, form.at];
  const between = items.slice(from + 1, to);
  // "Large-bore or not: …", "if large-bore lines will not do, a 22 G …": the class is left again before the size comes.
  const words = between.map((item) => item.word);
  if (form.to < g.from && /\band (?:an?|the|our)$/.test(words.join(' '))) return false;
  // "a 14 G is a wide cannula, a 24 G a narrow one": what is said of the second stands behind it.
  if (
    form.to < g.from &&
    /^, (?:an?|the|our)$/.test(words.join(' ')) &&
    /^(?:an?|the|our)$/.test(items[g.to + 1]?.word ?? '')
  )
    return false;
  if (/\bor not\b|\bnot\b.*,/.test(words.join(' '))) return false;
  if (between.length > 10) return linked(between);
  const plain = between.every(
    (item, i) =>
      TIES.has(item.word) ||
      (/^(?:to|for|by)$/.test(item.word) &&
        /^(?:me|us|my|our|that|which)$/.test(between[i + 1]?.word ?? '')) ||
      (/^(?:by|which)$/.test(item.word) && MEANT.test(words.join(' '))) ||
      (item.word === ';' && /^(?:think|say)$/.test(between[i + 1]?.word ?? '')) ||
      item.deviceNoun ||
      (/^(?:bed|bay|room)$/.test(between[i - 1]?.word ?? '') && /^[0-9]+$/.test(item.word)),
  );
  return plain || linked(between);
}

/** "large-bore, by which is meant", "by which we mean". */
const MEANT = /\bby which (?:\w+ )?(?:is |are )?(?:meant|mean|means|understand|understood)\b/;

/**
 * Whatever else is said between the class and the size: one verb of being or meaning ties them, with nothing behind it
 * but small words, and nothing on the way that turns, supposes, compares or speaks of another size.
 */
function linked(between: readonly Item[]): boolean {
  if (between.length > FURTHEST || between.some((item) => TURNS.test(item.word) || item.magnitude))
    return false;
  const at = between.findLastIndex((item) => LINKS.test(item.word));
  const first = between.findIndex((item) => LINKS.test(item.word));
  // "Something else, they are 16 Fr": said again of the same thing; "the reason why the usual is" is of another.
  if (first !== at && !/^(?:they|it|these|those|that|this|which)$/.test(between[at - 1]!.word)) return false;
  if (at < 0 || between.some((item) => item.kind === 'size')) return false;
  return between.slice(at + 1).every((item) => BEHIND.has(item.word));
}
const FURTHEST = 18;
const LINKS =
  /^(?:is|are|means?|runs?|ranges?|spans?|covers?|comprises?|starts?|begins?|comes?|counts?|:|=)$/;
const TURNS =
  /^(?:\w+n't|not|no|never|none|without|than|but|yet|though|although|however|instead|rather|unlike|except|unless|if|when|until|before|after|while|whereas|too|or|nor|either|neither|was|were|had|failed|fails|blocked|lost|because|since|so|for|through|over|into|inside|onto|beside|against|versus|vs|from|see|next|other|another|others|second|opposite|;|\?|\.|—|–|→)$/;
const BEHIND = new Set(
  `a an the our my size sizes something anything about around roughly usually often always generally typically mostly normally in of between from to say , ( " ' “ ” : at least
  range order here there now just simply therefore then by definition all`.split(/\s+/),
);
