/** Ways of setting a statement before the reader without standing behind it, beyond plain reporting. */
import type { Reading } from '../constructions/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { lineAt } from '../text/lines.ts';
import type { Scene } from '../text/scene.ts';
import { offersEither } from '../text/truth-keys.ts';

/** Said before the claim: what people once held, what nobody should say, what was drawn or felt. */
const BEFORE: readonly RegExp[] = [
  /\bused to (?:think|believe|say|teach|write|claim|assume|be told|be taught)\b/,
  /\b(?:rather than|instead of|without|stop|avoid) (?:saying|teaching|telling|writing|thinking|believing|assuming|claiming)\b/,
  /\b(?:drew|draws|sketched|painted) (?!(?:it|this|them|that|up|blood|off|back|from|saline|fluid)\b)/,
  /\b(?:trap|temptation|danger|pitfall) is (?:to (?:believe|think|say|assume|read|write)|thinking|believing|assuming)\b/,
  /\b(?:students?|learners?|trainees?|candidates?|beginners?|many|people|some|they) (?:often |will |may |always |sometimes )?draw\b/,
  /\b(?:students?|learners?|trainees?|candidates?|beginners?|pupils?|residents?|fellows|interns?|many|most|some|others|half of (?:them|you)|one of (?:them|you)) (?:of (?:them|you) )?(?:often |still |always |sometimes |usually |had |have |also )?(?:put|gave|picked|ticked|ringed|circled)\b(?! (?:back|away|down their|out|in|on|up|it|them|together)\b)/,
  /\b(?:swapped|transposed|interchanged) ["“]/,
  /\b(?:reversed|inverted|swapped|transposed|muddled|confused|turned round) (?:it|them|this|these|the (?:order|scale|list|row|two|pair|numbers))\b(?! (?:for|with|to|out|in|over|by)\b)/,
  /^(?:and |but )?(?:one|two|three|four|five|six|another|a (?:second|third|fourth)|some|several|many|most|others|a few|\d+) (?:of (?:them|you|the \w+) |\w+ )?(?:had|made|put|gave|listed|took) (?:[^\s;:.]+ ){1,4}as (?:an?|the)\b/,
  /\b(?:textbook|book|poster|chart|slide|handout|leaflet|page|website|author) (?:gives|puts|lists|calls)\b/,
  /\bdoubts? (?:that|whether|if)\b/,
  /\bthey(?:'ll)? (?:always |often |still |all |sometimes |will )?(?:say|said|think|thought|believe|believed|claim|claimed|reckon|swear|insist|tell (?:you|me|us))\b/,
  /\b(?:you|we) (?:will |may |might |often |can |sometimes |still |also )+read that\b/,
  /\b(?:you|we|i|they|he|she) (?:\w+ )?read (?:it )?(?:in|on) (?:\S+ ){1,4}that\b/,
  /\bas (?:though|if)\b(?!.* ,)/,
  /\bfar from being\b/,
  /\b(?:surprised|sorry|amused|shocked|startled|puzzled) to (?:read|hear|see|find) that\b/,
  /\b(?:he|she|they|i|we) had drawn the\b/,
  /(?:^|[;:] |\b(?:sheet|page|issue|letter|script|essay) )(?:and |then )?you (?:say|said|write|wrote|print|printed|claim|claimed) (?!to\b|["“])/,
  /\bwhat (?:not|never) to (?:write|say|teach|tell|put|think|believe)\b/,
  /(?:['’]s|\b(?:his|her|their)) (?:word|name|term) for\b/,
  /\b(?:lose|delete|drop|strike|remove|cut|omit|scrap|withdraw|out) (?:the|that|this|its|our) (?:sentence|line|claim|statement|paragraph|bit|remark|part|passage|words?)\b/,
  /\b(?:yet to (?:see|meet|find)|never (?:seen|met|found)|hardly (?:anyone|anybody)|show me)\b/,
  /\bat first (?:sight|glance)\b/,
  /\b(?:i|we|you) (?:often |still |always |sometimes |keep |can )?(?:hear|hearing|heard|(?:am|are|was|were) told(?! to (?!think|believe|expect)))\b/,
  /(?:\b(?:would|might|could|may)|'d|’d) (?:well )?(?:expect|think|guess|suppose|imagine|assume)\b/,
  /\bin (?:a|an|another|some) (?:\w+ )?world\b/,
  /\b(?:whoever|anyone who|anybody who|those who)\b/,
  /\baccording to\b/,
  /\b(?:put|suggested) to (?:me|us) that\b/,
  /\bold (?:\S+ ){0,2}?(?:sheets?|stickers?|posters?|cards?|lists?|tables?|charts?|boards?)(?: (?:of|for|on) \S+)? (?:says?|said|reads?)\b/,
  /\b(?:so|and now|twice|still) (?:the|its|our) (?:text|draft|manuscript|translation) (?:now |still )?(?:says|said|has|reads) that\b/,
  /\b(?:rep|reps|maker|supplier|seller|neighbour|colleague|other ward|car \d)(?: ?['’]?s)? (?:card|list|leaflet|poster|table|sheet|box|label) (?:has|had|gives|gave|prints|put|puts)\b/,
  /\b(?:by|in|to) (?:his|her|their|some people's|one's) (?:account|mind|head|eyes|book|view|thinking)\b/,
  /\b(?:slip|slides?|errors?|typos?|misprint|labels?|posters?)\b(?: \S+){0,4} (?:made|makes|turned|turns)\b/,
];

/** Each of them holds one of these. */
const BEFORE_WORDS =
  /\b(?:they|you|surprised|sorry|amused|shocked|startled|puzzled|drawn|had|what|word|name|term|used|rather|instead|without|stop|avoid|lose|delete|drop|strike|remove|cut|omit|scrap|withdraw|out|drew|draws?|sketched|painted|trap|temptation|danger|pitfall|swapped|transposed|interchanged|reversed|inverted|muddled|confused|turned|doubts?|as|from|yet|never|hardly|show|first|would|might|could|may|d|world|who|whoever|according|account|mind|head|eyes|book|view|thinking|made|makes|turned|turns|read|put|suggested|old|textbook|chart|slide|handout|page|website|author|text|draft|manuscript|translation|card|list|leaflet|poster|table|sheet|box|label|gave|picked|ticked|ringed|circled)\b/;

/** "None of these is so: …"; "none of them is wider than" is read as it stands. */
const NONE_OF = /\bnone of\b/;

/** Right before the claim: words or thoughts of the past, things one may say, ideas held up to be looked at. */
const HELD = new RegExp(
  `\\b(?:${[
    '(?:said|thought|believed|assumed|wrote|claimed|insisted|swore|argued|guessed|imagined|sure|(?:was|were|been|being|got) (?:told|taught|assured|persuaded|put to (?:me|us)))',
    "(?:you|they|one|he|she)(?:'ll| will| would|'d) (?:write|say|call|think|read|answer|put|tick|chart|end up with)",
    'have (?:you|us|me|them) (?:think|believe)',
    'had it (?:down )?that',
    'i (?:once |also |even |then |just )?told (?:my|the|our|a|an|one|some|his|her|this|that|him|them|everybody|everyone)(?: [a-z-]+){0,2} that',
    '(?<!(?:right|fair|true|correct|safe|fine|accurate|needless|is|it|remember|agree|want|have|need|(?:want|like|expect|need) you) )to (?:say|think|believe|assume|claim|suppose|write|call|conclude)',
    '(?:tempting|tempted|easy|natural|common) to (?:read|see|take|hear|treat|order|rank|picture|expect|imagine|guess|list|put)',
    'and (?:say|think|believe|assume|claim) that',
    '(?:for|of|by|about|from|in|into|like|against) (?:saying|thinking|believing|assuming|claiming|writing|calling|supposing)',
    '(?:idea|notion|belief|impression|assumption|view|claim|suggestion|feeling|theory)(?: (?:in|on|from|by|at|of) (?:\\S+ ){1,4}?)? ?(?:that|of)',
  ].join('|')})(?: [^\\s,;:.]+){0,4}$`,
);

/** Said after it: the claim does not stand, or somebody else made it. */
const AFTER =
  /^[,(—–-] which (?:is|was|does|did)(?: not|n't)(?= [.,;!)]|$| (?:right|true|correct|so|hold)\b)|\b(?:(?:had|have|has|having|must have) (?:\w+ )?(?:swapped|mixed|confused|muddled|transposed|reversed|misread) (?:them|the two|it|things|the numbers|the scales?)\b|so (?:they|people|some|he|she) (?:say|says|said|claim|claims)\b|(?:does|do|did|will|would)(?: not|n't) (?:hold|stand|follow)(?= [.,;!?)]|$| up\b| water\b)|is(?: not|n't) (?:true|so|right|correct|the case)|cannot be right|(?:i|we) (?:later |then |soon )?(?:put|set) (?:that|this|him|her|them|it) (?:right|straight)\b|has (?:it|this|that|things) (?:backwards|wrong|upside down|the wrong way round))\b|^(?:[,;.] )(?:but |and |yet )?(?:it|that|this|they) (?:isn't|is not|aren't|are not)(?= [.,;!]|$)|^(?:[,(—–-] )?(?:(?:is )?not (?:true|so|right|correct)\b|(?:and|but|yet) (?:is|are|was)(?: not|n't)\b|(?:he|she|they|i|we|someone|somebody) (?:said|thought|wrote|claimed|insisted|answered)\b|(?:(?:cannula|needle|one) )?(?:was |were )?(?:recorded|documented|charted|logged)\b)/;

/** The number is compared, not the thing. */
const AS_NUMBER =
  /\b(?:numerically|arithmetically|(?<!\b(?:fr|french|ch|charrière|mm|the|a|an|dilator|hegar|urethral|metal) )sounds?|as (?:a|bare) numbers?|as numbers go|by (?:the )?numbers?|in numbers?|on paper|in figures)\b/;

/** "the 22 G drawn wider than the 18 G", "sold the 22 G as wider", "5-0 ought to be thicker … but no": how it is shown, or should be. */
const SHOWN_AS =
  /\b(?:drawn(?! (?:up|from))|depicted|pictured|painted|sketched|sold|advertised|marketed)(?: \S+){0,4}(?: as)?$|\bwhy (?:\S+ ){1,5}(?:would|should|might|could) (?:be|run|flow)$|\bought to (?:be|run|flow|feel|look)$/;
/** Between the size and the word: "chose the 22 G, believing it to be wider", "nobody asks which is the bigger". */
const HELD_OF =
  /\b(?:seems?|seemed|appears?|appeared|(?:looks?|looked|feels?|felt) (?:about |nearly |just |almost )?as|believing|thinking|supposing|assuming|imagining|expecting|(?:who|that) (?:still |really |also )?(?:believes?|thinks?|thought|says?|said|reckons?|assumes?|imagines?|claims?|reverses?))\b/;
/** "She'd have it that …", "nowhere but on his slide is …", "the day the 22 G is thicker …", "on half the sheets …". */
const ONLY_THERE =
  /\b(?:he|she|they|some)(?:'d| would) have it\b|^the day (?!(?:after|before)\b)|\bout of the question that\b|\bnowhere but\b|^(?:up to|until|till) then\b|^for (?:the longest|a long) time\b|\bon (?:half|most|some|many|several|two|three|four) (?:of )?(?:(?:the|their|your) )?(?:sheets|papers|answers|scripts)\b/;
/** "Ten of them took 2-0 to be thicker", "the ward calls it an 18". */
const TAKEN_FOR =
  /\b(?:took|mistook|held|thought|believed|considered|declared) (?:\S+ ){1,4}to be\b|\b(?:calls|charts|books) (?:it|them|that|this)\b|(?<!\b(?:is|are|be|been) )\b(?:labelled|charted|recorded|documented|logged|booked)(?: \w+)? as\b|\b(?:was|were|had been|got) (?:\w+ly |still |once )?(?:called|termed|listed|described|printed|classed|filed)\b|\bdrawn (?:with|without|finer|thicker|thinner|wider|narrower|inside|outside)\b|\b(?:they|people|some|many) (?:all |still |often )?(?:call|chart|book|label) (?:it|them|that|this)\b/;
/** "I have seen polypropylene called absorbable", "the card called polypropylene absorbable": somebody's name for it. */
const NAMED_SO =
  /\b(?:seen|heard|found|read|had) (?:\S+ ){1,4}called$|\b(?:cards?|posters?|labels?|books?|sheets?|slides?|leaflets?|somebody|someone|he|she|they|students?|candidates?|draft) (?:\S+ ){0,2}called(?: \S+){1,3}$/;
/** "absorbed or not": left open. */
const OR_NOT = /^(?:[a-z]+ )?or not\b/;
/** "called the pink one an 18". */
const CALLED =
  /(?<!\b(?:is|are|be|so|also|commonly|often|been) )\bcalled (?:the|an?|my|his|her|our|their|that)$/;
const ASKED_OF =
  /\b(?:ask|see|tell|know|say|decide|wonder|guess|work out|find out|choose|judge|feel)(?:s|ed|ing)? (?:\S+ ){0,3}which (?:\S+ ){0,3}(?:is|are|was|were)\b/;

/** "If gauge worked like French, a 22 G would …": a world in which the scale were another. */
const OTHER_WORLD =
  /\b(?:if|had|were) (?:only )?(?:the )?(?:gauges?|french|scales?|numbers?|zeros|sizes)\b.{1,120}\bwould\b/;

/** A label before a colon that sets what follows before the reader to be judged, mended or struck. */
const LABEL =
  /^(?:\S )?(?:was|not (?:true|so|right|correct)|old(?: text| version| wording| slide| handout| poster| leaflet| rule| label)?|before(?: correction| editing| revision)?|formerly|previously|printed|heard|claim|(?:the )?(?:answer|reply|response) given|(?:given|wrong|first|your|(?:students?|candidates?|trainees?|learners?)(?: ?'s?)?) (?:answer|reply|response)|original|draft|discuss|debate|debunk|comment(?: on this)?|agree or disagree|(?:correct|fix|mend|improve|rewrite) (?:this|these|that|it|the following)) :/;

/** "Assuming a bigger number means a bigger needle is …": a belief made the subject of the sentence. */
const HELD_UP =
  /^(?:\S [.)] )?(?:assuming|believing|thinking|supposing|imagining|expecting|saying|to (?:assume|believe|think|suppose|say)) /;

/** "Put these in order, thinnest first: …": the list is there to be sorted. */
const SORTING =
  /^(?:(?:\S{1,9} ){1,2}[.):—–-] )?(?:put|place|order|re-order|reorder) (?:these|them|those|the following|the (?:sizes|needles|cannulas|cannulae|catheters|sutures|threads|tubes|wires))(?: (?:sizes|needles|cannulas|cannulae|catheters|sutures|threads|tubes|wires))?(?: (?:in|into|from|by)\b| [:,(])|^(?:(?:\S{1,9} ){1,2}[.):—–-] )?(?:rank|sort|arrange|rearrange) (?!as |like )/;

/** An unkeyed statement to be called true or false. */
const TRUE_OR_FALSE = /^(?:\S+ [.)] )?(?:t ?\/ ?f|true ?(?:or|\/) ?false|true or not) [:—–?.-]/;

const REACH = 12;
const SHOWN_REACH = 6;

/** Is the claim held by somebody else, refuted in its own sentence, or set out to be judged? */
export function hearsay(scene: Scene, { claim, from, at, to, unconditional }: Reading): boolean {
  const first = Math.min(from, at);
  const last = compared(scene.items, Math.max(to, at));
  const opening = words(scene.items, 0, 8);
  const before = words(scene.items, first - REACH, first);
  const upTo = words(scene.items, Math.max(first - REACH, turnedTo(scene.items, first)), first + 1);
  return (
    ONLY_THERE.test(upTo) ||
    (BEFORE_WORDS.test(upTo) && BEFORE.some((pattern) => pattern.test(upTo))) ||
    (claim.construction !== 'nothing' && NONE_OF.test(upTo)) ||
    HELD.test(before) ||
    AFTER.test(words(scene.items, last + 1, last + 1 + REACH)) ||
    HELD_OF.test(words(scene.items, first, at + 1)) ||
    (claim.kind === 'comparison' && SHOWN_AS.test(words(scene.items, at - SHOWN_REACH, at))) ||
    (claim.kind === 'colour' && CALLED.test(before)) ||
    TAKEN_FOR.test(words(scene.items, first - REACH, at + 1)) ||
    (claim.kind === 'property' &&
      (NAMED_SO.test(words(scene.items, at - SHOWN_REACH, at)) ||
        OR_NOT.test(words(scene.items, at + 1, at + 4)))) ||
    ASKED_OF.test(words(scene.items, at - REACH, at + 1)) ||
    AS_NUMBER.test(words(scene.items, first - REACH, at + 1)) ||
    OTHER_WORLD.test(words(scene.items, first - REACH, at + 1)) ||
    TRUE_OR_FALSE.test(opening) ||
    HELD_UP.test(opening) ||
    offersEither(scene.passage) ||
    inChoices(scene.items) ||
    checkedNext(scene) ||
    amongNumbered(scene) ||
    (claim.kind === 'comparison' && claim.axis === 'flow' && explained(scene)) ||
    (claim.kind === 'order' && SORTING.test(opening)) ||
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

const words = joined;

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

/** "My consultant says …. Is that right?": asked about, not told. */
const checkedNext = ({ after: [next] }: Scene): boolean =>
  next?.close === '?' && next.items.length <= 9 && CHECKS.test(joined(next.items));
const CHECKS =
  /^(?:(?:so|but|and) )?(?:is|was) (?:that|this|it|he|she) (?:true|right|so|correct|what|how|really|the case)\b|^(?:does|do) (?:that|this|it) (?:hold|sound right)(?: \?)?$/;

/** "I used to think so too, but a 20 G …": where the author's own word begins. */
const turnedTo = (items: readonly Item[], first: number): number => {
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
  return next !== undefined && next.items.length <= 16 && ATTRIBUTED.test(words(next.items, 0, 16));
};

/** "Candidates wrote the following." or "What not to say:" above a list. */
const SAID_BY =
  /\b(?:students?|candidates?|trainees?|learners?|pupils?|residents?|beginners?|people|patients?)\b(?!.*\b(?:should|must|need|ought)\b).*\b(?:wrote|write|said|say|answered|claimed|claim|think|thought|believe|believed)\b/;
const FORBIDDEN = /\b(?:not to|never|don't|do not) (?:say|write|teach|think|believe|tell)\b/;
function reportedLead(scene: Scene): boolean {
  if (!scene.passage.list || !scene.lead || scene.lead.items.length > 24) return false;
  const lead = words(scene.lead.items, 0, 24);
  return SAID_BY.test(lead) || FORBIDDEN.test(lead);
}

const CROSS_BEHIND = /^(?:[^\s;✓✔✅✗✘✖❌]+[ \t]+){0,12}[✗✘✖❌]/u;
/** "Student: We learned polydioxanone dissolves in …": what a learner says, unless the next speaker says so too. */
const learnerSpeaks = ({ items, after, next }: Scene): boolean => {
  const label = LEARNER.exec(words(items, 0, 7));
  const following = words((after[0] ?? next)?.items ?? [], 0, 6);
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
  return LABEL.test(words(scene.items, 0, colon + 1)) && !between.some((item) => /^[;.]$/.test(item.word));
}
