/** Ways of setting a statement before the reader without standing behind it, beyond plain reporting. */

import type { Passage } from '../../notes/model.ts';
import { finds, firstMatch } from '../../notes/patterns.ts';
import type { Reading } from '../constructions/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { lineAt } from '../text/lines.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import { offersEither } from '../text/truth-keys.ts';
import { HEARSAY, type Hearsay, type Place } from '../words/hearsay.ts';

/** "None of these is so: …"; "none of them is wider than" is read as it stands. */
const NONE_OF = /\bnone of\b/;

/** A label before a colon that sets what follows before the reader to be judged, mended or struck. */
const LABEL =
  /^(?:\S )?(?:was|not (?:true|so|right|correct)|old(?: text| version| wording| slide| handout| poster| leaflet| rule| label)?|before(?: correction| editing| revision)?|formerly|previously|printed|heard|claim|(?:the )?(?:answer|reply|response) given|(?:given|wrong|first|your|(?:students?|candidates?|trainees?|learners?)(?: ?'s?)?) (?:answer|reply|response)|original|draft|discuss|debate|debunk|comment(?: on this)?|agree or disagree|(?:correct|fix|mend|improve|rewrite) (?:this|these|that|it|the following)) :/;

const REACH = 12;
const SHOWN_REACH = 6;

/** Is the claim held by somebody else, refuted in its own sentence, or set out to be judged? */
export function hearsay(scene: Scene, reading: Reading): boolean {
  const { claim, from, at, unconditional } = reading;
  const first = Math.min(from, at);
  return (
    setAside(scene, reading) ||
    (claim.construction !== 'nothing' && NONE_OF.test(before(scene.items, first))) ||
    offersEither(scene.passage) ||
    inChoices(scene.items) ||
    checkedNext(scene) ||
    arguedOver(scene) ||
    amongNumbered(scene) ||
    (claim.kind === 'comparison' && claim.axis === 'flow' && explained(scene)) ||
    crossed(scene, scene.items[at]?.start ?? 0) ||
    (inverted(scene) &&
      !(unconditional && scene.items[0]?.word === 'should') &&
      !toldAside(scene.items, at) &&
      !fallback(scene.items, first)) ||
    reportedLead(scene) ||
    learnerSpeaks(scene) ||
    attributed(scene) ||
    labelled(scene, first)
  );
}

/** One of the ways of the table stands where it must. */
const setAside = ({ items }: Scene, reading: Reading): boolean =>
  PLACES.some(([place, ways]) => {
    const said = SAID[place](items, reading);
    return ways.some(
      ({ kind, like }) => (kind === undefined || kind === reading.claim.kind) && finds(like, said),
    );
  });

const anyOf = (rows: readonly Hearsay[]): RegExp =>
  new RegExp(rows.map(({ like }) => `(?:${like.source})`).join('|'));

const start = ({ from, at }: Reading): number => Math.min(from, at);

/** The words that stand at a place of the table. */
const SAID: Readonly<Record<Place, (items: readonly Item[], reading: Reading) => string>> = {
  before: (items, reading) => before(items, start(reading)),
  'right before': (items, reading) => joined(items, start(reading) - REACH, start(reading)),
  'at the word': (items, { at }) => joined(items, at - SHOWN_REACH, at),
  within: (items, reading) => joined(items, start(reading), reading.at + 1),
  'up to the word': (items, reading) => joined(items, start(reading) - REACH, reading.at + 1),
  behind: (items, { at, to }) => {
    const last = compared(items, Math.max(to, at));
    return joined(items, last + 1, last + 1 + REACH);
  },
  'after the word': (items, { at }) => joined(items, at + 1, at + 4),
  opening: (items) => joined(items, 0, 8),
};

/** The ways of one place as one pattern for claims of any kind and one for each kind: asked at once, not one by one. */
const PLACES = (Object.keys(SAID) as Place[]).map((place) => {
  const rows = HEARSAY.filter((row) => row.place === place);
  const ways = [...new Set(rows.map(({ kind }) => kind))].map((kind) => ({
    kind,
    like: anyOf(rows.filter((row) => row.kind === kind)),
  }));
  return [place, ways] as const;
});

/** What stands before a claim, from where the author's own word begins. */
const before = (items: readonly Item[], first: number): string =>
  joined(items, Math.max(first - REACH, turnedTo(items, first)), first + 1);

/** "Finest of these: a 2-0, b 4-0, c 0": choices to be made among, with nothing but their letters before them. */
const inChoices = (items: readonly Item[]): boolean => CHOICES.test(joined(items));
const CHOICES = /[:?] a [^,;]{1,40}[,;] b [^,;]{1,40}[,;] c /;

/** "Which is false? (1) Silk is braided. (2) Nylon dissolves.": to be chosen among. */
const amongNumbered = ({ passage: { text }, sentence: { start } }: Scene): boolean => {
  const before = text.slice(Math.max(0, start - 250), start + 4);
  return ITS_NUMBER.test(text.slice(Math.max(0, start - 4), start + 4)) && WHICH_ONE.test(before);
};
const ITS_NUMBER = /(?:^|\s)\(?[1-6a-f]\)/;
const WHICH_ONE =
  /\bwhich (?:one |of these |of the following |statement )?(?:is|are) (?:false|wrong|not true|untrue|the lie|true|right|correct)\s?\?/i;

/** "The 20 G ran faster than the 16 G. Reason: the 16 G sat against a valve.": how it was once, and why. */
const explained = ({ after: [next] }: Scene): boolean =>
  next !== undefined && next.close !== '?' && HINDRANCE.test(joined(next.items));
const HINDRANCE =
  /\b(?:reason|cause|why|because|turned out|was|were|sat|had)\b.*\b(?:valve|kink\w*|clamp\w*|clot\w*|blocked|tissued|bent|closed|shut|half open|pulled back)\b/;

/** "Who is right? Tom says …. Mia says …": set out for the reader to decide. */
const arguedOver = ({ passage, items }: Scene): boolean =>
  finds(ARGUES, joined(items, 0, 4)) && whoIsRight(passage);
const ARGUES = /^\W*\w+(?: \w+)? (?:says|said|thinks|claims|argues|believes|maintains|writes)\b/;
const whoIsRight = remembered(({ text }: Passage): boolean =>
  /\b(?:who|which (?:of them|one|student|nurse)) (?:is|was) (?:right|correct|wrong|mistaken)\b/i.test(text),
);

/** "My consultant says …. Is that right?": asked about, not told. */
const checkedNext = ({ after: [next] }: Scene): boolean =>
  next?.close === '?' && next.items.length <= 9 && CHECKS.test(joined(next.items));
const CHECKS =
  /^(?:(?:so|but|and) )?(?:is|was) (?:that|this|it|he|she) (?:true|right|so|correct|what|how|really|the case)\b|^(?:does|do) (?:that|this|it) (?:hold|sound right)(?: \?)?$/;

/** "I used to think so too, but a 20 G …": where the author's own word begins. */
const turnedTo = (items: readonly Item[], first: number): number => {
  // "You would think so, and yes, …"
  const yes = items.findLastIndex(
    (item, i) => i < first && item.word === 'yes' && items[i - 1]?.word === 'and',
  );
  if (yes > 1 && items[yes - 2]!.word === ',') return yes + 1;
  const but = items.findLastIndex(
    (item, i) => i < first && item.word === 'but' && items[i - 1]?.word === ',',
  );
  return but > 0 && !/^(?:that|also|not|only|who|which)$/.test(items[but + 1]!.word) ? but + 1 : 0;
};

/** Where the claim ends: "wider than an 18 G" reaches to the size it is compared with. */
function compared(items: readonly Item[], last: number): number {
  const next = items.findIndex((item, i) => i > last && item.kind === 'size');
  const between = next < 0 ? [] : items.slice(last + 1, next);
  return next >= 0 &&
    between.length <= 3 &&
    between.every((item) => /^(?:than|an?|the|that|of|as)$/.test(item.word))
    ? next
    : last;
}

/** "This is what one candidate wrote." right after. */
const ATTRIBUTED =
  /^(?:this|that|these|those|so|thus) (?:is|was|are|were)? ?(?:what|how|the words of)\b.*\b(?:wrote|written|said|says|answered|claimed|think|thinks|thought|believe|believes)\b/;
const attributed = (scene: Scene): boolean => {
  const next = scene.after[0] ?? scene.next;
  return next !== undefined && next.items.length <= 16 && finds(ATTRIBUTED, joined(next.items, 0, 16));
};

/** "Candidates wrote the following." or "What not to say:" above a list. */
const SAID_BY =
  /\b(?:students?|candidates?|trainees?|learners?|pupils?|residents?|beginners?|people|patients?)\b(?!.*\b(?:should|must|need|ought)\b).*\b(?:wrote|write|said|say|answered|claimed|claim|think|thought|believe|believed)\b/;
const FORBIDDEN = /\b(?:not to|never|don't|do not) (?:say|write|teach|think|believe|tell)\b/;
function reportedLead(scene: Scene): boolean {
  if (!scene.passage.list || !scene.lead || scene.lead.items.length > 24) return false;
  const lead = joined(scene.lead.items, 0, 24);
  return SAID_BY.test(lead) || FORBIDDEN.test(lead);
}

const CROSS_BEHIND = /^(?:[^\s;✓✔✅✗✘✖❌]+[ \t]+){0,12}[✗✘✖❌]/u;
/** "Student: We learned polydioxanone dissolves in …": what a learner says, unless the next speaker says so too. */
const learnerSpeaks = ({ items, after, next }: Scene): boolean => {
  const label = firstMatch(LEARNER, joined(items, 0, 7));
  const following = joined((after[0] ?? next)?.items ?? [], 0, 6);
  return (
    label !== null && !/\b(?:right|correct|yes|exactly|good|well done|true|indeed|agreed)\b/.test(following)
  );
};
const LEARNER =
  /^(?:\( \w+ \) )?(?:the |an? )?(?:students?|learners?|trainees?|candidates?|pupils?|apprentices?|interns?|novices?|beginners?|patients?|owners?|mother|father|parents?|audience|caller|reps?) :/;

/** "✗ 5-0 is thicker than 3-0", "21 G takes 0.035 ✗ → 0.018": a line with a cross in front, or behind what was said. */
function crossed({ passage, sentence }: Scene, at: number): boolean {
  const { text } = passage;
  const line = lineAt(passage, at);
  const behind = text.slice(at, Math.min(line.end, Math.max(sentence.end, at) + 4));
  return (
    /^\s*(?:[✗✘✖❌]|[*?](?=\S))/u.test(text.slice(line.start, line.start + 6)) ||
    /^[^✓✔✅✗✘✖❌;→]{0,120}[✗✘✖❌]/u.test(behind) ||
    CROSS_BEHIND.test(text.slice(at, at + 160))
  );
}

/** "Were 5-0 thicker, …", "Had the 22 G been wider, …": a condition without its "if". */
function inverted(scene: Scene): boolean {
  const opener = scene.items.find((item) => item.kind !== 'punctuation');
  return opener !== undefined && /^(?:were|had|should)$/.test(opener.word) && opener.capital;
}

/** "Should the 16 Fr leak, use an 18 Fr, the thicker tube": what is to be done then is told, not wished. */
function fallback(items: readonly Item[], first: number): boolean {
  const comma = items.findIndex((item) => item.word === ',');
  return (
    items[0]?.word === 'should' &&
    comma > 0 &&
    comma < first &&
    /^(?:use|take|try|pick|choose|open|reach|pass|change|switch|go|swap|move)$/.test(
      items[comma + 1]?.word ?? '',
    )
  );
}

/** "Had we run out we could have opened 3-0, which is thicker": what the clause says is so, whatever happened. */
function toldAside(items: readonly Item[], at: number): boolean {
  const which = items.slice(0, at).findLastIndex((item) => item.word === 'which');
  if (which < 1 || items[which - 1]!.word !== ',' || at - which > 6) return false;
  return (
    /^(?:is|are)$/.test(items[which + 1]!.word) &&
    items.slice(which + 2, at).every(({ word }) => PLAIN.test(word))
  );
}
const PLAIN =
  /^(?:an?|one|two|the|step|steps|size|sizes|even|much|far|slightly|bit|little|rather|still|also|just|of|course)$/;

function labelled(scene: Scene, first: number): boolean {
  const colon = scene.items.findIndex((item) => item.word === ':');
  if (colon < 1 || colon > 5 || colon > first) return false;
  const between = scene.items.slice(colon + 1, first);
  return LABEL.test(joined(scene.items, 0, colon + 1)) && !between.some((item) => /^[;.]$/.test(item.word));
}
