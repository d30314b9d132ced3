/** How it is said that a size does not exist, that a scale ends, or that it has only even numbers. Sizes stand as "#". */

const ARTICLE = '(?:(?:an?|the) )?';
const ONE = `${ARTICLE}(?:(?:size|usp|gauge|number) )?#`;
const ROW = `${ONE}(?:(?: ,| or| and| nor)+(?: no)? ${ONE}){0,4}`;
const NEEDLES = '(?:(?:hypodermic|injection|hollow) )?needles?';
const THREADS = '(?:usp )?(?:sutures?|threads?|stitch(?:es)?|ligatures?)(?: (?:material|sizes?))?';
const CANNULAS = '(?:(?:iv|venous|intravenous|peripheral) )?cannula(?:s|e)?|guide-?wires?';
const NOUN = `(?: (?:${NEEDLES}|${THREADS}|${CANNULAS}|sizes?))?`;
const THING = `(?:${NEEDLES}|${THREADS}|${CANNULAS}|(?:usp |needle )?sizes?|ones?|gauges?)`;
const MAKERS =
  '(?:nobody|no one|no-one|no (?:manufacturer|maker|company|factory|firm))(?: (?:in the world|anywhere|on earth))?';
const MAKE = '(?:makes?|manufactures?|produces?|sells?|has ever made|ever made)';
const NOT_MADE =
  "(?:(?:is|are) (?:simply |just )?(?:not|never)|isn't|aren't) (?:being )?(?:made|manufactured|produced)";
const ADVERB = '(?:(?:simply|really|just|quite simply|in fact|actually|therefore|thus|of course|indeed) )?';
/** What leaves it said of the whole trade. */
const EVERYWHERE =
  '(?: (?:at all|anywhere|anywhere in the world|in existence|in the world|on the market|made|ever made|(?:in|on) (?:the )?(?:usp|gauge|needle|usp suture)(?: (?:scale|series|system|list|range|table|numbering|standard)s?)?))?';
const SCALE =
  '(?:the )?(?:usp(?: (?:scale|series|system|list|numbering|sizes?|table))?|(?:gauge|needle) (?:scale|series|system|numbering))';

const FINER = '(?:finer|thinner|smaller|narrower)';
const THICKER = '(?:thicker|bigger|larger|heavier|coarser|stouter|wider)';
const MORE = `(?:${FINER}|${THICKER})`;
const MOST = '(?:finest|thinnest|smallest|thickest|biggest|largest|heaviest|coarsest|stoutest)';
const THAN = ` than (?:${ONE}${NOUN}|that|this|it)`;
/** "Nothing is made thicker than 0": a whole number of the USP scale, though nothing beside it says so. */
const THAN_LAST = ` than (?:${ONE}${NOUN}|(?:(?:size|number) )?[0-4]|that|this|it)`;
const OF_ALL =
  '(?:there (?:is|are)|in existence|that (?:exists?|is made|are made)|made|ever made|on the market|in the world|(?:of|in|on) the usp(?: (?:scale|series|system|list))?|of all(?: (?:sutures|threads|usp sizes))?|(?:of|on) the scale)';
const ENDS = '(?:stops?|ends?|finish(?:es)?|gives? up|runs? out|comes? to an end)';
const VAGUE = '(?:(?:the )?(?:scale|series|numbering|list|sizes|numbers)|sutures|threads|it)';
const NAMED = `(?:${SCALE}|(?:the )?(?:suture|thread|needle|gauge) (?:sizes?|scale|numbering|numbers|gauges)|needle gauges|hypodermic needles|gauges)`;
/** Whole numbers of the USP scale are read here though nothing beside them says that they are sizes. */
const LAST = `(?:${ONE}|(?:(?:size|number) )?[0-4])`;
const AT_END = '(?: (?:at|on|in) the \\w+ (?:end|side))?';

/** What is said of what. */
export interface Way {
  readonly absent: 'itself' | 'beyond' | 'between' | 'uneven';
  readonly like: RegExp;
  /** Also what is said of a shelf, where nothing near speaks of the scale. */
  readonly shelf?: true;
  /** Says no thing: something near must say which scale it is. */
  readonly vague?: true;
}

/** What may open the clause, and what may follow it. */
const OPENS =
  '(?:^|(?<=(?:[,;:.!?—–("“”]|\\b(?:and|but|so|because|since|as)) ))(?:(?:and|but|so|well|no|yes|also|indeed|in fact|remember|note|remember that|note that|bear in mind that|actually|sadly|incidentally|of course|please note|please note that|(?:in|on) (?:the )?usp(?: (?:scale|system|list|series))?|at the \\w+ end(?: of the (?:scale|list|series))?) (?:, )?)*';
const CLOSES =
  '(?: (?:(?:in|on|of) the usp(?: (?:scale|series|system|list))?|of (?:the|that) scale))?(?= ?$| [;:.!?)—–(]| ,(?! (?:or |and |nor )?(?:no )?(?:an? )?#)| (?:and|but|so|because|since|while|though|although|which)\\b(?! (?:no )?(?:an? |the )?#))';

const way = (absent: Way['absent'], text: string, more: Pick<Way, 'shelf' | 'vague'> = {}): Way => ({
  absent,
  like: new RegExp(`${OPENS}(?:${text})${CLOSES}`),
  ...more,
});

/** "There is no such thing as a 19 G needle", "7-0 does not exist", "nobody makes a 23 G", "you will not find a 7-0". */
const ITSELF: readonly Way[] = [
  way(
    'itself',
    `(?:(?:there is|there's|there are) ${ADVERB})?no such (?:thing|size|gauge|needle|suture|thread|stitch)s? as ${ROW}${NOUN}${EVERYWHERE}`,
  ),
  way(
    'itself',
    `${ROW}${NOUN} ${ADVERB}(?:(?:do|does) ${ADVERB}not|doesn't|don't) ${ADVERB}exist${EVERYWHERE}|${ROW}${NOUN} ${NOT_MADE}${EVERYWHERE}|(?:no|neither) ${ROW}${NOUN} (?:exists?|(?:is|are) (?:made|manufactured|produced))${EVERYWHERE}`,
  ),
  way('itself', `${MAKERS} ${MAKE} ${ROW}${NOUN}${EVERYWHERE}`),
  way(
    'itself',
    `${SCALE} (?:has|knows|lists) no ${ROW}${NOUN}|${SCALE} (?:skips|omits|leaves out|misses out) ${ROW}${NOUN}`,
  ),
  way(
    'itself',
    `${ROW}${NOUN} (?:is|are) ${ADVERB}(?:not|no) (?:an? )?(?:real |usp )?(?:needle |suture |thread )(?:sizes?|gauges?)`,
  ),
  way(
    'itself',
    `(?:what|the (?:one|size|number)(?: (?:that|which))?) (?:${ADVERB}(?:(?:does|do) (?:simply )?not|doesn't|don't) ${ADVERB}exist|(?:is not|isn't|is never) made)${EVERYWHERE} (?:is|are) ${ADVERB}${ROW}${NOUN}`,
  ),
  way(
    'itself',
    `(?:the )?(?:iv |venous )?cannula (?:list|series|range|scale|gauges|sizes) (?:has|have|knows?) no ${ROW}`,
  ),
  way('itself', `(?:there is|there's|there are) ${ADVERB}no ${ROW}${NOUN}${EVERYWHERE}`, { shelf: true }),
  way(
    'itself',
    `(?:you will|you'll|one will) (?:not|never) (?:find|meet|see|come across) ${ROW}${NOUN}${EVERYWHERE}|you won't (?:ever )?(?:find|meet|see|come across) ${ROW}${NOUN}${EVERYWHERE}`,
    { shelf: true },
  ),
];

/** "Nobody makes a thread finer than 5-0", "6-0 is the finest there is", "the scale ends at 7-0". */
const BEYOND: readonly Way[] = [
  way(
    'beyond',
    `${MAKERS} ${MAKE} (?:anything|(?:any |an? )?${THING}) ${MORE}(?:${THAN})?${EVERYWHERE}|${MAKERS} ${MAKE} (?:any |an? )?${MORE} ${THING}(?:${THAN})?${EVERYWHERE}`,
  ),
  way(
    'beyond',
    `(?:nothing|no ${THING}) ${MORE}(?:${THAN_LAST})? (?:exists?|(?:is|are) (?:made|manufactured|produced)|has ever been made)${EVERYWHERE}|(?:nothing|no ${THING}) (?:(?:is|are) (?:ever )?|has ever been |have ever been )(?:made|manufactured|produced) (?:any )?${MORE}${THAN_LAST}`,
  ),
  way(
    'beyond',
    `${THING} ${MORE}${THAN} (?:(?:do|does) not exist|don't exist|doesn't exist|${NOT_MADE})${EVERYWHERE}`,
  ),
  way('beyond', `(?:nothing|no ${THING}) ${MORE}(?:${THAN})? (?:is|are) sold${EVERYWHERE}`, { shelf: true }),
  way(
    'beyond',
    `(?:there is|there's|there are) ${ADVERB}(?:nothing|no ${THING}|no such thing as an? ${THING}) ${MORE}${THAN}${EVERYWHERE}`,
    { shelf: true },
  ),
  way('beyond', `${ONE}${NOUN} (?:is|are) ${ADVERB}the ${MOST}(?: ${THING})? ${OF_ALL}`, { shelf: true }),
  way(
    'beyond',
    `${ONE}${NOUN} (?:is|are) ${ADVERB}as (?:thin|fine|small|thick|big|coarse) as (?:${THING}|thread|they|it) (?:comes?|gets?|goes?|(?:is|are) made)`,
    { shelf: true },
  ),
  way(
    'beyond',
    `the ${MOST} (?:usp (?:size|suture|thread)s?|${THING} ${OF_ALL}) ?(?:, |: )?(?:is|are|being) ${ONE}`,
    { shelf: true },
  ),
  way('beyond', `the ${MOST}(?: ${THING})? ${OF_ALL} (?:is|are) ${ONE}`, { shelf: true, vague: true }),
  way(
    'beyond',
    `${NAMED} ${ENDS} (?:at|with) ${LAST}${AT_END}|${NAMED} (?:goes|go|runs?|comes?) (?:no (?:further|finer|thinner|smaller) than|only (?:as far as|down to|up to)) ${LAST}${AT_END}`,
    { shelf: true },
  ),
  way('beyond', `${VAGUE} ${ENDS} (?:at|with) ${LAST}${AT_END}`, { shelf: true, vague: true }),
  way('beyond', `(?:at the \\w+ end ,? ?)?${ONE} is where (?:${VAGUE}|${NAMED}) ${ENDS}`, {
    shelf: true,
    vague: true,
  }),
];

const ON = '(?:straight|directly|right)';
/** "… goes straight from 5-0 to 7-0": what lies between is left out. Both may be read as one range. */
const STRAIGHT = `(?:go(?:es)?|runs?|steps?|moves?) (?:${ON} from ${ONE}(?: to ${ONE})?|from ${ONE} ${ON} to ${ONE})|(?:jumps?|leaps?|skips?|hops?) (?:${ON} )?from ${ONE}(?: (?:${ON} )?to ${ONE})?`;
/** "USP has no size between 2-0 and 4-0". */
const BETWEEN: readonly Way[] = [
  way(
    'between',
    `${SCALE} (?:has|knows|lists) (?:no (?:other |further )?${THING}|nothing)(?: in)? between ${ONE} and ${ONE}|no (?:other |further )?${THING} (?:exists?|is made|lies|comes)(?: in)? between ${ONE} and ${ONE}`,
  ),
  way(
    'between',
    `(?:there is|there's|there are) ${ADVERB}(?:no (?:other |further |such thing as an? )?${THING})(?: in)? between ${ONE} and ${ONE}${EVERYWHERE}|between ${ONE} and ${ONE} (?:there is|there's|there are|lies?|comes?) ${ADVERB}no (?:other |further )?${THING}${EVERYWHERE}`,
    { shelf: true },
  ),
  way('between', `(?:${NAMED}|${SCALE}) (?:${STRAIGHT})`, { shelf: true }),
  way('between', `(?:${VAGUE}|the (?:run|sequence|row|ladder)) (?:${STRAIGHT})`, {
    shelf: true,
    vague: true,
  }),
];

const GAUGES = `(?:${NEEDLES}(?: gauges?| sizes| gauge numbers)?|(?:the )?gauges?|gauge (?:numbers|sizes|scale)|the gauge scale)`;
/** "Needle gauges go up in twos", "needles come only in even numbers", "there are no odd gauges". */
const UNEVEN: readonly Way[] = [
  way(
    'uneven',
    `${GAUGES} (?:(?:only|always|all|just) )?(?:go(?:es)?|comes?|runs?|rises?|counts?|steps?|climbs?|increases?|advances?|(?:is|are) (?:numbered|made|sold)|exists?)(?: (?:up|down))?(?: (?:only|always|just))? (?:in|by) (?:twos|2s|steps of (?:two|2)|even (?:numbers|gauges|sizes|steps)(?: only)?)`,
  ),
  way(
    'uneven',
    `(?:all |every )?${GAUGES} (?:is|are) ${ADVERB}(?:(?:all|always|only|an) )?even(?: numbers?)?(?: only)?|(?:there are|there's|there is) no (?:odd|uneven)(?:-numbered)? (?:needle )?(?:gauges?|needles?|needle sizes)|(?:odd|uneven)(?:-numbered)? (?:needle )?gauges (?:do not exist|don't exist|${NOT_MADE})|only even (?:needle )?gauges (?:exist|are made)|${MAKERS} ${MAKE} (?:odd|uneven)(?:-numbered)? (?:needle )?(?:gauges|needles)`,
  ),
];

export const WAYS: readonly Way[] = [...ITSELF, ...BEYOND, ...BETWEEN, ...UNEVEN];

/** Words of a scale's end. */
export const ENDING: readonly string[] =
  'stop stops end ends finish finishes give gives run runs come comes go goes'.split(' ');

/** One of them must be there before any pattern is tried. */
export const SAYS_NO =
  /^(?:no|not|never|nor|neither|nothing|nobody|no-one|won't|don't|doesn't|isn't|aren't|skips|omits|leaves|misses|stops?|ends?|finish(?:es)?|gives?|runs?|comes?|where|go(?:es)?|gets?|there|exists?|existence|made|jumps?|leaps?|hops?|steps?|moves?|skips?|twos|2s|steps|even|uneven|odd|world|market|finest|thinnest|smallest|thickest|biggest|largest|heaviest|coarsest|stoutest)$/;
