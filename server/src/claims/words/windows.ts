/** Words that place a size inside or outside a range of sizes. One idea a list. */

export const INSIDE = new Set(['inside', 'within', 'in', 'fits', 'between', 'middle']);
export const OUTSIDE = new Set(['outside', 'beyond', 'out']);
export const WINDOW = new Set(['group', 'window', 'range', 'bracket', 'band', 'limits', 'span', 'interval']);

/** One of these stands in every reference to a range named before. */
export const POINTS_BACK = new Set(
  'that this those these it them order rule policy protocol guideline guidance standard request list allowance spread choice book textbook manual recommendation requirement there what'.split(
    ' ',
  ),
);

const RULES =
  'order|rule|policy|protocol|guideline|guidance|standard|request|list|allowance|spread|choice|book|textbook|manual|recommendation|requirement';
const RULE = `(?:${RULES})`;
const NOUN = `(?:group|window|range|bracket|band|limits|span|interval|class|family|set|${RULES})`;
const BACK = '(?:that|this|those|these|their)';
const ADVERB = '(?:also |therefore |thus |still |well |just |easily |fully |safely )?';

/** Phrases right behind a size that place it in a range named before. */
export const PLACED: readonly { readonly pattern: RegExp; readonly inside: boolean }[] = [
  {
    inside: true,
    pattern: new RegExp(
      `^(?:would |does )?${ADVERB}(?:belongs? (?:to|in|within)|falls? (?:in|into|inside|within|under)|comes? (?:inside|within|under)|sits? (?:inside|within|between)|lies? (?:in|inside|within)|is ${ADVERB}(?:in|inside|within|covered by|part of|in keeping with|in line with|in accordance with|in agreement with)|stays? (?:in|inside|within)) (?:${BACK} ${NOUN}|the ${RULE}|(?:it|that|this|them)(?= [.,;!]|$)|within what (?:the|our|that|this) \\S+ (?:allows?|gives?|permits?|says?|lists?))`,
    ),
  },
  {
    inside: true,
    pattern: /^is (?:also |still |therefore |thus )?on (?:it|that list|this list|the list)(?= [.,;!]|$)/,
  },
  { inside: true, pattern: new RegExp(`^fits? ${ADVERB}(?:in|into|within) ${BACK} ${NOUN}`) },
  {
    inside: true,
    pattern: new RegExp(
      `^(?:is|being|counts as|belongs) ${ADVERB}(?:one of|among|amongst) (?:them|these|those)(?= [.,;!]|$| (?:sizes|numbers|gauges))`,
    ),
  },
  {
    inside: false,
    pattern: new RegExp(
      `^(?:falls?|lies?|is|sits?) ${ADVERB}(?:outside|beyond|not covered by) (?:${BACK} ${NOUN}|the ${RULE}|it|that|this)`,
    ),
  },
];

const END = '(?= [.,;!)]|$)';
const ASKED = `(?:(?:it|that|this|them)${END}|(?:that|this|the|our) ${RULE}${END}|what (?:the|our|that|this) \\S+ (?:says?|asks?|asks for|wants?|lists?|demands?|requires?|prescribes?)${END})`;

/** "fulfils it", "conforms to the textbook": behind a size, of the sizes that a rule asks for. */
export const KEEPS_TO = new RegExp(
  `^(?:therefore |thus |also |still |easily |fully )?(?:satisf(?:y|ies)|meets?|fulfils?|fulfills?|conforms? (?:to|with)|complies with|keeps? to|sticks? to|agrees? with|obeys?|observes?|respects?) ${ASKED}|^follows? (?:that|this|the|our) ${RULE}${END}|^(?:therefore |thus |so )?(?:is|was|were|are) (?:therefore |thus |so )?(?:according to|in line with|in keeping with|as per|within|by) (?:(?:the|our|that|this) )?${RULE}${END}|^,? ?(?:just |exactly )?as (?:the|our|that|this) ${RULE} (?:says|asks|wants|demands|requires|has it)${END}`,
);
/** "Allowed are 16 to 20 Fr. A 24 Fr is allowed.": what a rule lets in, and the size said to be let in by the same word. */
export const LETS_IN = /\b(allowed|permitted|acceptable|approved|accepted|licensed)\b/;
export const LET_IN =
  /^(?:[a-z]+ )?(?:is|are|was) (?:therefore |thus |hence |then )?(allowed|permitted|acceptable|approved|accepted|licensed)(?= [.,;!)]|$)/;

/** "With a 22 gauge in each arm you have fulfilled it": before and behind the size. */
export const WITH = /^(?:and |so |hence |therefore )?with (?:an?|the|one|size|my|our|his|her|this)$/;
export const YOU_KEEP = new RegExp(
  `^(?:[a-z]+ )?(?:(?:in|on) (?:[a-z]+ ){1,2})?(?:, )?(?:you|we|they|i|one)(?:'ve| have| will have| would have| has)? ?(?:already |also |therefore |then |thus |still )?(?:(?:fulfil(?:led)?|fulfill|me?et|satisf(?:y|ied)|compl(?:y|ied) with|ke(?:ep|pt) (?:to|within)|st(?:ick|uck) to|stay(?:ed)? within|obey(?:ed)?|(?:am|are|was|were) (?:within|inside)) ${ASKED}|(?:done|did|follow(?:ed)?) (?:what (?:the|our|that) \\S+ (?:says?|asks?|asks for|wants?|demands?|requires?)|(?:that|this|the|our) ${RULE})${END})`,
);

/** "The wires in the set range from 0.9 to 1.5 mm": the first words of what a box holds, up to the range. */
export const HELD =
  /\b(?:sets?|trays?|box|boxes|drawers?|cupboards?|shelf|kits?|trolleys?|cabinets?|racks?|cases?|basket|carts?|store)\b(?: [a-z]+){0,3}? (?:ranges?|runs?|goes?|go|covers?|spans?|reach(?:es)?|extends?|holds?|has|contains?|keeps?)\b(?: [a-z-]+){0,2}$/;
/** "You'll find the 2.0 mm in it, then": before and behind the size; what is added to the rest is said to be. */
export const SOUGHT =
  /^(?:(?:and|so|hence|therefore|thus|then|consequently) ,? ?)?(?:(?:you|we) (?:will |can |should |may )?(?:find|get|see|have|look for)|you'll (?:find|get|see|have)|we'll find|there (?:is|will be)|look for|take)?(?: ?(?:an?|the|your|our))?(?: [a-z-]+(?: of)?)?$/;
/** "So it contains a 2.0 mm", "From it I took the 6-0": the box is named before the size. */
export const BOX_FIRST =
  /^(?:(?:so|hence|therefore|thus) ,? ?(?:it|this|that) (?:contains|includes|has|holds)|from (?:it|there) (?:i|we|you) (?:took|take|get|can take))(?: (?:an?|the))?$/;
export const IN_THERE =
  /^(?:(?!fits?\b|goes\b|stands\b|used\b)[a-z-]+ ){0,2}?(?:(?:is|are|lies|sits|lives|will be|must be) )?(?:therefore |thus |then )?in (?:it|there|that one|the same (?:one|box|tray|drawer|set))(?: ,? ?then| therefore| of course)?(?= ?[.;!]|$)/;

/** "which covers a 22 Fr", "and that includes the 18 Fr": between a range and the size. */
export const COVERS =
  /(?:^|[,;] (?:and )?|\. )(?:which|that|this|it|and) (?:also |therefore |thus |still |easily )?(?:covers|includes|takes in|spans|comprises|allows for|leaves room for)(?: (?:an?|the|our|size))?$/;

/** "Needles in the 25 to 27 G range, among them the 29 G": between a range and the size. */
export const AMONG = /^(?:\w+ )?[,(] (?:among|amongst) (?:them|these|those|which)(?: an?| the| our)?$/;

/** "3-0 to 5-0, a 4-0 among them". */
export const AMONG_AFTER = /^(?:[a-z-]+ ){0,6}[,(—–](?: with)?(?: an?| the| our)?$/;

/** "any size from 6 to 10 Fr, such as an 8 Fr", "4-0 to 6-0, including 5-0". */
export const SUCH_AS =
  /^(?:\w+ )?[,(] (?:such as|for (?:example|instance)(?: ,)?|e\.g(?: \.)?|including|included|among them|like)(?: an?| the| our)?$/;

/** "from 14 to 24 G, with 18 G in the middle", "…, a 4-0 among them": behind the size. */
export const IN_IT =
  /^(?:(?:[a-z-]+ )?(?:being )?included(?= [.,;!)]|$)|(?:among|amongst) (?:them|these|those)|(?:somewhere )?in the middle|in between|between (?:them|the two))\b/;

/** "Between 3-0 and 5-0 you will find 4-0": between the ends and the size. */
export const FOUND_IN =
  /^(?:(?:silk|nylon|suture|thread|catheter|cannula|needle|drain)s? )?(?:, )?(?:(?:you|we) (?:will |can )?(?:find|have|get|see|place|put)|(?:there )?(?:lies|sits|comes|is|falls|stands|belongs)|there is)(?: an?| the| our)?$/;

/** "Anything from 16 to 20 G will do, so a 22 G counts as well": what opens the range, draws the conclusion, and is concluded. */
export const OPENS_RANGE =
  /(?:^|[^a-z])(?:anything|any (?:size|gauge|needle|cannula|catheter|drain|tube)|everything|all (?:sizes|gauges)) (?:from|between)$/;
export const CONCLUDES =
  /[,;:.] (?:and )?(?:so|hence|thus|therefore)(?: ,)?(?: for (?:instance|example)(?: ,)?)?(?: an?| the| our)?$/;
export const COUNTED =
  /^(?:also |therefore |still )?(?:counts|qualifies|will do|is (?:fine|ok|okay|all right|allowed|acceptable)|(?:is|would be) (?:also )?(?:included|one of (?:them|these|those|the (?:usual|normal|common) (?:ones|sizes))))(?: (?:as well|too|also))?(?: [.,;!)]|$)/;

/** The range is left open, or it is another one that counts. */
export const UNSETTLED =
  /^(?:unlike|except|unless|if|formerly|previously|old|whereas|while|was|were|used|not)$/;
