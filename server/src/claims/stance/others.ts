/**
 * What somebody else said, wrote or wanted, told at any distance from the claim: "about half said the edge is on …", "one wrote
 * on the sheet: …", "stores proposed to drop the 5-0 since …". Told in the past, of others, and of nobody who teaches.
 */
import { finds } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { speaksAgain } from './own-words.ts';
import { named } from './unreal.ts';

const SAID =
  /^(?:said|wrote|claimed|thought|believed|insisted|swore|argued|guessed|answered|replied|assumed|shouted|reckoned|announced|declared|maintained|protested|whispered|mumbled|typed|concluded|inferred|deduced|gathered|figured|supposed|imagined)$/;
/** What is asked for with a reason is asked for with the reason of who asks. */
const WANTED =
  /^(?:asked|wanted|demanded|refused|requested|begged|preferred|insisted|proposed|suggested|objected|complained)$/;
const REASON = /^(?:because|since|as|that)$/;
/** The author, those who teach with the author, and rules. */
const OWN =
  /^(?:i|we|you|who|which|it|tutor|teacher|lecturer|instructor|demonstrator|professor|rule|standard|law)$/;
const SUBJECT = 6;

/** Is the claim of this reading part of what another is told to have said? */
export function saidElsewhere({ items }: Scene, { claim, at }: Reading): boolean {
  // A size that is not sold is none, whoever asks for it.
  if (named(claim)) return false;
  const verb = items.findLastIndex((_, i) => i < at && i > 0 && tells(items, i, at));
  return verb > 0 && byOthers(items, verb) && !ended(items, verb, at);
}

/**
 * "Some of you divide by a hundred instead of ten. That would make 0.03 mm.", '"It is one over the gauge." For 18 G that would
 * be 1/18 in.': what comes of another's mistake.
 */
export const ofTheirMistake = ({ items, before, quotes }: Scene): boolean => {
  const last = before.at(-1);
  return (
    last !== undefined &&
    items.some(({ word }) => /^(?:would|'d)$/.test(word)) &&
    (isQuoted(last.items, quotes) ||
      (THEIRS.test(joined(last.items, 0, 4)) &&
        last.items.some(({ word }) => /^(?:instead|rather|forget|forgets|wrongly|mistakenly)$/.test(word))))
  );
};

const isQuoted = (items: readonly Item[], quotes: Scene['quotes']): boolean =>
  items.length > 0 && quotes.some(([start, end]) => start <= items[0]!.start && items.at(-1)!.end <= end);

const THEIRS =
  /^(?:some|many|most|several|others|one|half|a few|people|everybody|everyone|students?|trainees?|learners?|candidates?)(?: of (?:you|us|them|my|our|the))?\b/;

const tells = (items: readonly Item[], i: number, at: number): boolean =>
  finds(SAID, items[i]!.word) ||
  // "He had been told by the nurse that …".
  (/^(?:told|taught|informed|assured)$/.test(items[i]!.word) &&
    /^(?:been|was|were|is|are|being)$/.test(items[i - 1]!.word)) ||
  (WANTED.test(items[i]!.word) &&
    !/^(?:is|are|was|were|been|be)$/.test(items[i - 1]!.word) &&
    items.slice(i + 1, at).some(({ word }) => REASON.test(word)));

/** The words before the verb, back to the mark or the "and" before them, name somebody else. */
function byOthers(items: readonly Item[], verb: number): boolean {
  const from = items.findLastIndex(
    (item, i) => i < verb && (item.kind === 'punctuation' || /^(?:and|but|when|because)$/.test(item.word)),
  );
  const subject = items.slice(Math.max(from + 1, verb - SUBJECT), verb);
  return (
    subject.some((item) => item.kind === 'word') &&
    !subject.some((item) => OWN.test(item.word) || /^(?:rightly|correctly|that|as|to)$/.test(item.word))
  );
}

/** Behind a full clause or quotation the author goes on: "asked for a second one, and we chose …", "said so; …", "having said that, …". */
const ended = (items: readonly Item[], verb: number, at: number): boolean =>
  speaksAgain(items.slice(0, at + 1), verb) || GOES_ON.test(joined(items, verb, at));
const GOES_ON =
  /[;)]|, (?:and|so|but|which|when|while)\b|["“][^"“”]*["”]|^\w+ (?:that|so|this|it|no|yes|nothing|as much) ?(?:,|and|because|as|since)/;
