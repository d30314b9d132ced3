/**
 * What is needed, and what is taken for it: "the thread should be finer than 3-0, so we change to 2-0", "the eyelid needs a
 * thread which is finer than 6-0, and for this we open a 5-0". The size taken is held to what was asked for.
 */
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { decidable, type Measured, measuredWords } from '../text/magnitudes.ts';
import { type Group, groups, type Scene, sameSizes, sameSystem } from '../text/scene.ts';
import type { Construction, Reading } from './model.ts';
import { comparison, wordless } from './than.ts';

const NEEDS = new Set(
  'should must needs need needed require requires required want wants wanted has have had calls demands ought'.split(
    ' ',
  ),
);

export const needed: Construction = {
  id: 'needed',
  needs: () => [{ sizes: 2, holds: ['compared'], words: NEEDS, also: ['than'] }],
  read(scene) {
    const { items } = scene;
    const [asked, taken, ...more] = groups(items);
    if (!asked || !taken || more.length > 0 || !sameSystem(asked, taken) || sameSizes(asked, taken))
      return [];
    const word = measuredWords(items).find(
      (m) => m.degree === 'comparative' && decidable(m.axis) && !m.idiom,
    );
    if (!word || !wanting(items, word) || !against(items, word, asked)) return [];
    return takenFor(items, asked, taken) ? [reading(scene, taken, asked, word)] : [];
  },
};

const WANTING =
  /\b(?:(?:should|must|(?:needs?|has|have|had|ought) to) be |(?:needs?|needed|requires?|required|wants?|wanted|calls for|demands) (?:an? )?(?:(?!(?:no|not|nothing|neither|a|an|the)\b)\S+ ){0,3}?(?:(?:which|that) (?:is|are|will be|should be|must be) )?)(?:(?:much|far|slightly|somewhat|rather|clearly|even|one size|an? (?:little|bit|shade|size)?) ?)?$/;

/** "should be", "requires a thread which is" right before the comparing word. */
const wanting = (items: readonly Item[], word: Measured): boolean =>
  WANTING.test(`${joined(items, Math.max(0, word.at - 9), word.at)} `);

/** "finer than 3-0", "finer again than 3-0", "a finer thread than 3-0". */
const against = (items: readonly Item[], word: Measured, asked: Group): boolean =>
  asked.from > word.to &&
  asked.from - word.to <= 5 &&
  /^(?:\S+ )?(?:again |still |yet )?than(?: (?:an?|the|our|your|this))?$/.test(
    joined(items, word.to + 1, asked.from),
  );

const TAKEN =
  /^(?:\S+ ){0,3}?(?:(?:[,;—–] )?(?:and )?(?:so|therefore|hence|thus|which is why|for (?:this|that|it|which|these|those|them)(?: (?:reason|purpose|job|task))?) (?:, )?|[,:—–] )(?:we|i|you|they|he|she|one|take|use|open|choose|pick|try|get|go|ask|fetch|reach|change|switch|a|an|the|our)\b/;
const TAKES =
  /(?:\b(?:takes?|took|uses?|used|opens?|opened|chooses?|chose|picks?|picked|tries|gets?|got|fetch|fetched|goes|go|went|change|changed|changes|switch|switched|reach|reached|ask|asked) (?:(?:up|down|over) )?(?:(?:to|for|on to) )?(?:an?|the|our|your)?|[,;:—–] (?:an?|the|our)) ?$/;
const PUT =
  /^(?:is|are|was|were) (?:then |therefore |usually |always )?(?:used|opened|taken|chosen|kept|put|placed|inserted|picked|preferred|fetched|brought|stocked|the (?:answer|one|choice))\b(?! (?:back|out|away|aside|down|off|only)\b)/;
/** What makes the second size something else than the thing taken. */
const TURNS_AWAY =
  /\b(?:not|never|no|if|unless|otherwise|else|instead|rather|but|though|although|until|except|without|when|where|while|than|or|failing|though|before|because|since)\b|n't\b/;

/** "…, so we change to 2-0", "…, for which a 22 G is kept". */
function takenFor(items: readonly Item[], asked: Group, taken: Group): boolean {
  const between = `${joined(items, asked.to + 1, taken.from)} `;
  if (taken.from - asked.to > 14 || TURNS_AWAY.test(between)) return false;
  const after = joined(items, taken.to + 1, taken.to + 8)
    .split(' ')
    .filter((one) => !/^(?:needle|cannula|catheter|tube|drain|thread|suture|wire|one)$/.test(one))
    .join(' ');
  // "the 20 G will not do", "the 20 G is too thin for that".
  if (/\b(?:not|never|no|too)\b|n't\b/.test(joined(items, taken.to + 1, taken.to + 6))) return false;
  if (!TAKEN.test(between) || !(TAKES.test(between) || PUT.test(after))) return false;
  // A bare comma joins the choice to a clause that asks; behind a statement of its own it begins another.
  return LINKED.test(between) || items.slice(0, 9).some((item) => OPENS.test(item.word));
}

const LINKED = /\b(?:so|therefore|hence|thus|why|for (?:this|that|it|which|these|those|them))\b|:/;
const OPENS = /^(?:where|when|whenever|if|since|as|because)$/;

/** What is asserted is the choice: a condition before it says when. */
function reading(scene: Scene, taken: Group, asked: Group, word: Measured): Reading {
  const made = wordless(comparison(scene, 'needed', taken, asked, word));
  return { ...made, from: word.at, to: taken.to, unconditional: true, own: true };
}
