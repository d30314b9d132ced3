/**
 * Words around a claim by which an author sets it before the reader without standing behind it. A row a way of speaking: where it
 * stands, what it is known by, and an example whose claim, between « and », is false and asserted by nobody.
 */
import type { Claim } from '../model.ts';

/** Where the words are looked for, seen from the claim. */
export type Place =
  /** In the twelve words before it and its first word. */
  | 'before'
  /** In the twelve words before it, up to where it begins. */
  | 'right before'
  /** In the six words before the word that carries it. */
  | 'at the word'
  /** From its first size to the word that carries it. */
  | 'within'
  /** From twelve words before it to the word that carries it. */
  | 'up to the word'
  /** In the twelve words after it. */
  | 'behind'
  /** In the three words after the word that carries it. */
  | 'after the word'
  /** In the first eight words of its sentence. */
  | 'opening';

export interface Hearsay {
  readonly place: Place;
  readonly like: RegExp;
  /** Only claims of this kind; without it, any. */
  readonly kind?: Claim['kind'];
  readonly example: string;
}

/** Between the words that hold a claim up and the claim itself. */
const THEN = /(?: [^\s,;:.]+){0,4}$/;
const rightBefore = (like: RegExp): RegExp => new RegExp(`\\b(?:${like.source})${THEN.source}`);

export const HEARSAY: readonly Hearsay[] = [
  // What was thought once, or by others.
  {
    place: 'up to the word',
    like: /\b(?:pages?|handouts?|posters?|slides?|sheets?|leaflets?|books?|chapters?|charts?|web ?sites?|papers?|articles?|apps?|videos?|drafts?)(?: [0-9]\S*)? (?:also |once |even |still |then |wrongly )?called\b/,
    example: 'Page 4 also «called silk a monofilament».',
  },
  {
    place: 'up to the word',
    kind: 'formula',
    like: /\b(?:if you|if they|whoever|anyone who|those who|people who) (?:said|wrote|got|put|chose|answered|ticked|picked|gave|went for|came to)\b/,
    example: 'If you said 0.27 mm, «you read the gauge as hundredths of a millimetre».',
  },
  {
    place: 'up to the word',
    like: /\bthere(?:'s| is| was)(?: also| still)? (?:one|an? (?:\w+ )?(?:rule|saying|trick|myth|story|tale|line|rumour|belief|legend|formula|notion)) (?:that (?:is |was |keeps )?)?(?:going (?:round|around|about)|doing the rounds|making the rounds|which goes|in the (?:dorm|corridor|coffee room|canteen))\b/,
    example: 'There is a rule going round: «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\bused to (?:think|believe|say|teach|write|claim|assume|preach|swear|insist|be told|be taught|(?:tell|teach) (?:people|everyone|everybody|them|him|her|students?|trainees?|juniors?|patients?|families|relatives|(?:my|our|the|new) \w+)(?: new \w+)? that)\b/,
    example: 'We used to think «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\bthey(?:'ll)? (?:always |often |still |all |sometimes |will )?(?:say|said|think|thought|believe|believed|claim|claimed|reckon|swear|insist|tell (?:you|me|us))\b/,
    example: 'On night shift they always say «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\b(?:i|we|you) (?:often |still |always |sometimes |keep |can )?(?:hear|hearing|heard|(?:am|are|was|were) told(?! to (?!think|believe|expect)))\b/,
    example: 'Every winter we hear that «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /(?:\b(?:would|might|could|may)|'d|’d) (?:well )?(?:expect|think|guess|suppose|imagine|assume)\b/,
    example: 'From the numbers you would think «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:whoever|anyone who|anybody who|those who)\b(?! (?:thinks?|works?|prefers?|measures?|counts?|likes?) (?:in )?(?:inch|mm\b|millimet|cm\b|centimet|metric|imperial))/,
    example: 'Whoever takes the 22 G because «a 22 G is wider than an 18 G» will wait.',
  },
  {
    place: 'before',
    kind: 'comparison',
    like: /\b(?:student|learner|trainee|pupil|novice|beginner|junior|newcomer|somebody|someone|he|she|they) (?:then |now |always |often |will )?(?:asks?|asked|asking|calls?|called|begs?|begged|wants?|wanted) (?:me |us |you )?for\b/,
    example: 'Then the student asks for «a thinner cannula, a 14 G in place of an 18 G».',
  },
  {
    place: 'before',
    like: /\baccording to\b(?! (?:the )?(?:iso|din|en|usp|standard)\b)/,
    example: 'According to the porter «silk is a monofilament».',
  },
  {
    place: 'before',
    like: /\b(?:put|suggested) to (?:me|us) that\b/,
    example: 'It was suggested to me that «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:by|in|to) (?:his|her|their|some people's|one's) (?:account|mind|head|eyes|book|view|thinking)\b/,
    example: 'In his book «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /(?:['’]s|\b(?:his|her|their)) (?:word|name|term) for\b/,
    example: 'Their name for it: «a 12 Fr catheter is a 6 mm tube».',
  },
  {
    place: 'before',
    like: /\bdoubts? (?:that|whether|if)\b/,
    example: 'I doubt that «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:surprised|sorry|amused|shocked|startled|puzzled) to (?:read|hear|see|find) that\b/,
    example: 'I was surprised to read that «silk is a monofilament».',
  },
  {
    place: 'before',
    like: /\b(?:yet to (?:see|meet|find)|never (?:seen|met|found)|hardly (?:anyone|anybody)|show me)\b/,
    example: 'Show me where «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\b(?:trap|temptation|danger|pitfall) is (?:to (?:believe|think|say|assume|read|write)|thinking|believing|assuming)\b/,
    example: 'The temptation is to think «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\bwhat (?:not|never) to (?:write|say|teach|tell|put|think|believe)\b/,
    example: 'This is what not to put on a slide: «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:rather than|instead of|without|stop|avoid) (?:saying|teaching|telling|writing|thinking|believing|assuming|claiming)\b/,
    example: 'Please stop saying «a 22 G is wider than an 18 G».',
  },
  { place: 'before', like: /\bfar from being\b/, example: 'Far from being so, «silk is a monofilament».' },
  {
    place: 'before',
    like: /\bat first (?:sight|glance)\b/,
    example: 'At first glance «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\bin (?:a|an|another|some) (?:\w+ )?world\b/,
    example: 'In another world «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\bas (?:though|if)\b(?!.* ,)/,
    example: 'He talks as though «5-0 is thicker than 3-0».',
  },
  // What is read, printed or drawn somewhere.
  {
    place: 'before',
    like: /\b(?:you|we) (?:will |may |might |often |can |sometimes |still |also |have )+read that\b/,
    example: 'In older notes you will read that «silk is a monofilament».',
  },
  {
    place: 'before',
    like: /\b(?:you|we|i|they|he|she) (?:\w+ )?read (?:it )?(?:in|on) (?:\S+ ){1,4}that\b/,
    example: 'He once read in a thriller that «silk is a monofilament».',
  },
  {
    place: 'before',
    like: /\b(?:textbook|book|poster|chart|slide|handout|leaflet|page|website|author) (?:gives|puts|lists|calls)\b/,
    example: 'The old leaflet gives: «a 12 Fr catheter is 6 mm».',
  },
  {
    place: 'before',
    like: /\bold (?:\S+ ){0,2}?(?:sheets?|stickers?|posters?|cards?|lists?|tables?|charts?|boards?)(?: (?:of|for|on) \S+)? (?:says?|said|reads?)\b/,
    example: 'Our old card reads «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:so|and now|twice|still) (?:the|its|our) (?:text|draft|manuscript|translation) (?:now |still )?(?:says|said|has|reads) that\b/,
    example: 'A row slipped, so our text now has that «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:rep|reps|maker|supplier|seller|neighbour|colleague|other ward|car \d)(?: ?['’]?s)? (?:card|list|leaflet|poster|table|sheet|box|label) (?:has|had|gives|gave|prints|put|puts)\b/,
    example: "The supplier's list has «a 12 Fr catheter is 6 mm».",
  },
  {
    place: 'before',
    like: /\b(?:slip|slides?|errors?|typos?|misprint|labels?|posters?)\b(?: \S+){0,4} (?:made|makes|turned|turns)\b/,
    example: 'A slip of the pen made it: «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /(?:^|[;:] |\b(?:sheet|page|issue|letter|script|essay) )(?:and |then )?you (?:say|said|write|wrote|print|printed|claim|claimed) (?!to\b|["“])/,
    example: 'On your sheet you wrote that «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:lose|delete|drop|strike|remove|cut|omit|scrap|withdraw|out) (?:the|that|this|its|our) (?:sentence|line|claim|statement|paragraph|bit|remark|part|passage|words?)\b/,
    example: 'Strike the sentence that «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:drew|draws|sketched|painted) (?!(?:it|this|them|that|up|blood|off|back|from|saline|fluid)\b)/,
    example: 'He drew a picture in which «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\b(?:he|she|they|i|we) had drawn the\b/,
    example: 'She had drawn the sizes so that «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\b(?:students?|learners?|trainees?|candidates?|beginners?|many|people|some|they) (?:often |will |may |always |sometimes )?draw\b/,
    example: 'Beginners often draw it so that «a 22 G is wider than an 18 G».',
  },
  // What learners put down.
  {
    place: 'before',
    like: /\b(?:students?|learners?|trainees?|candidates?|beginners?|pupils?|residents?|fellows|interns?|many|most|some|others|half of (?:them|you)|one of (?:them|you)) (?:of (?:them|you) )?(?:often |still |always |sometimes |usually |had |have |also )?(?:put|gave|picked|ticked|ringed|circled)\b(?! (?:back|away|down their|out|in|on|up|it|them|together)\b)/,
    example: 'Half of you put: «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /^(?:and |but )?(?:one|two|three|four|five|six|another|a (?:second|third|fourth)|some|several|many|most|others|a few|\d+) (?:of (?:them|you|the \w+) |\w+ )?(?:had|made|put|gave|listed|took) (?:[^\s;:.]+ ){1,4}as (?:an?|the)\b/,
    example: 'Two of them gave silk as a proof: «silk is a monofilament».',
  },
  {
    place: 'before',
    like: /\b(?:swapped|transposed|interchanged) ["“]/,
    example: 'He transposed "thick" and "thin": «5-0 is thicker than 3-0».',
  },
  {
    place: 'before',
    like: /\b(?:reversed|inverted|swapped|transposed|muddled|confused|turned round) (?:it|them|this|these|the (?:order|scale|list|row|two|pair|numbers))\b(?! (?:for|with|to|out|in|over|by)\b)/,
    example: 'One trainee turned round the scale: «a 22 G is wider than an 18 G».',
  },
  {
    place: 'before',
    like: /\b(?:he|she|they|some)(?:'d| would) have it\b|^the day (?!(?:after|before)\b)|\bout of the question that\b|\bnowhere but\b|^(?:up to|until|till) then\b|^for (?:the longest|a long) time\b|\bon (?:half|most|some|many|several|two|three|four) (?:of )?(?:(?:the|their|your) )?(?:sheets|papers|answers|scripts)\b/,
    example: 'On half the sheets «5-0 is thicker than 3-0».',
  },
  // Right before the claim.
  {
    place: 'right before',
    like: rightBefore(
      /(?:said|thought|believed|assumed|wrote|claimed|insisted|swore|argued|guessed|imagined|sure|(?:was|were|been|being|got) (?:told|taught|assured|persuaded|put to (?:me|us)))/,
    ),
    example: 'I had been persuaded that «a 22 G is wider than an 18 G».',
  },
  {
    place: 'right before',
    like: rightBefore(
      /(?:you|they|one|he|she)(?:'ll| will| would|'d) (?:write|say|call|think|read|answer|put|tick|chart|end up with)/,
    ),
    example: "Before lunch you'll end up with «5-0 is thicker than 3-0».",
  },
  {
    place: 'right before',
    like: rightBefore(
      /(?<!\b(?:i|we|i've|we've|you|it|that|this|which|who|experience|practice|training|time|years|physics|charts?|tables?|packets?|labels?|standards?|numbers?|figures?|tests?|trials?|stud(?:y|ies)|bench)(?: (?:have|has|had|just|also|already|once|only|all|then|now|always|often|soon))*) (?:told|taught|assured|informed|persuaded|convinced) (?:me|us|her|him|them|people|everyone|everybody|(?:the|my|our|his|her|their|an?|two|some|one) (?:[a-z-]+ )?[a-z-]+)/,
    ),
    example: 'They told her that «5-0 is thicker than 3-0».',
  },
  {
    place: 'right before',
    like: rightBefore(/have (?:you|us|me|them) (?:think|believe)/),
    example: 'The advert would have us believe «silk is a monofilament».',
  },
  {
    place: 'right before',
    like: rightBefore(/had it (?:down )?that/),
    example: 'The register had it down that «5-0 is thicker than 3-0».',
  },
  {
    place: 'right before',
    like: rightBefore(
      /i (?:once |also |even |then |just )?told (?:my|the|our|a|an|one|some|his|her|this|that|him|them|everybody|everyone)(?: [a-z-]+){0,2} that/,
    ),
    example: 'In my first year I told everybody that «5-0 is thicker than 3-0».',
  },
  {
    place: 'right before',
    like: rightBefore(
      /(?<!(?:right|fair|true|correct|safe|fine|accurate|needless|is|it|remember|agree|want|have|need|(?:want|like|expect|need) you) )to (?:say|think|believe|assume|claim|suppose|write|call|conclude)/,
    ),
    example: 'It would be odd to say «5-0 is thicker than 3-0».',
  },
  {
    place: 'right before',
    like: rightBefore(
      /(?:tempting|tempted|easy|natural|common) to (?:read|see|take|hear|treat|order|rank|picture|expect|imagine|guess|list|put)/,
    ),
    example: 'It is tempting to guess «5-0 is thicker than 3-0».',
  },
  {
    place: 'right before',
    like: rightBefore(/and (?:say|think|believe|assume|claim) that/),
    example: 'Do come back and say that «5-0 is thicker than 3-0».',
  },
  {
    place: 'right before',
    like: rightBefore(
      /(?:for|of|by|about|from|in|into|like|against) (?:saying|thinking|believing|assuming|claiming|writing|calling|supposing)/,
    ),
    example: 'The marks went for calling «5-0 thicker than 3-0».',
  },
  {
    place: 'right before',
    like: rightBefore(
      /(?:idea|notion|belief|impression|assumption|view|claim|suggestion|feeling|theory)(?: (?:in|on|from|by|at|of) (?:\S+ ){1,4}?)? ?(?:that|of)/,
    ),
    example: 'Where does the notion come from, the notion that «5-0 is thicker than 3-0».',
  },
  {
    place: 'right before',
    kind: 'colour',
    like: /(?<!\b(?:is|are|be|so|also|commonly|often|been) )\bcalled (?:the|an?|my|his|her|our|their|that)$/,
    example: 'The porter called the «pink cannula an 18 G».',
  },
  // Between its parts.
  {
    place: 'at the word',
    kind: 'comparison',
    like: /\b(?:drawn(?! (?:up|from))|depicted|pictured|painted|sketched|sold|advertised|marketed)(?: \S+){0,4}(?: as)?$|\bwhy (?:\S+ ){1,5}(?:would|should|might|could) (?:be|run|flow)$|\bought to (?:be|run|flow|feel|look)$/,
    example: 'The catalogue had a 22 G sold as wider than an 18 G.',
  },
  {
    place: 'at the word',
    kind: 'property',
    like: /\b(?:seen|heard|found|read|had) (?:\S+ ){1,4}called$|\b(?:cards?|posters?|labels?|books?|sheets?|slides?|leaflets?|somebody|someone|he|she|they|students?|candidates?|draft) (?:\S+ ){0,2}called(?: \S+){1,3}$/,
    example: 'I have seen polypropylene called absorbable.',
  },
  {
    place: 'within',
    like: /\b(?:seems?|seemed|appear(?:s|ed)?(?! (?:as|on|under|beside|next) )|(?:looks?|looked|feels?|felt) (?:about |nearly |just |almost )?as|believing|thinking|supposing|assuming|imagining|expecting|(?:who|that) (?:still |really |also )?(?:believes?|thinks?(?! in (?:inch|mm|millimet|cm|centimet|metric|imperial|french|gauge))|thought|says?|said|reckons?|assumes?|imagines?|claims?|reverses?))\b/,
    example: 'She chose the 22 G, believing it to be wider than the 18 G.',
  },
  {
    place: 'up to the word',
    like: /\b(?:took|mistook|held|thought|believed|considered|declared) (?:\S+ ){1,4}to be\b|\b(?:calls|charts|books) (?:it|them|that|this)\b|(?<!\b(?:is|are|be|been) )\b(?:labelled|charted|recorded|documented|logged|booked)(?: \w+)? as\b|\b(?:was|were|had been|got) (?:\w+ly |still |once )?(?:called|termed|listed|described|printed|classed|filed)\b|\bdrawn (?:with|without|finer|thicker|thinner|wider|narrower|inside|outside)\b|\b(?:they|people|some|many) (?:all |still |often )?(?:call|chart|book|label) (?:it|them|that|this)\b/,
    example: 'Ten of the twelve took 5-0 to be thicker than 3-0.',
  },
  {
    place: 'up to the word',
    like: /\b(?:ask|see|tell|know|say|decide|wonder|guess|work out|find out|choose|judge|feel)(?:s|ed|ing)? (?:\S+ ){0,3}which (?:\S+ ){0,3}(?:is|are|was|were)\b/,
    example: 'Ask a colleague which size is which: the 5-0 is thicker than 3-0.',
  },
  {
    place: 'behind',
    like: /^(?:[a-z]+ )?(?:\S+ ){0,2}?(?:only|merely|just) (?:on paper|in name|in (?:the )?figures?|in (?:its |the )?numbers?|by (?:its |the )?(?:numbers?|name|figure)|as an? (?:number|figure))\b/,
    example: '«The 27 G is bigger than the 18 G» only on paper.',
  },
  {
    // The number is compared, not the thing.
    place: 'up to the word',
    like: /\b(?:numerically|arithmetically|(?<!\b(?:fr|french|ch|charrière|mm|the|a|an|dilator|hegar|urethral|metal) )sounds?|as (?:a|bare) numbers?|as numbers go|by (?:the )?numbers?|(?<!\b(?:up|down|climb|rise|drop|fall) )in numbers?|on paper|in figures)\b/,
    example: 'As numbers go, «a 22 G is larger than an 18 G».',
  },
  {
    // A world in which the scale were another.
    place: 'up to the word',
    like: /\b(?:if|had|were) (?:only )?(?:the )?(?:gauges?|french|scales?|numbers?|zeros|sizes)\b.{1,120}\bwould\b/,
    example: 'If gauge worked like French, a 22 G would be wider than an 18 G.',
  },
  // Behind it: it does not stand, or somebody else made it.
  {
    place: 'behind',
    like: /^[,(—–-] which (?:is|was|does|did)(?: not|n't)(?= [.,;!)]|$| (?:right|true|correct|so|hold)\b)/,
    example: '«A 22 G is wider than an 18 G», which is not true.',
  },
  {
    place: 'behind',
    like: /\b(?:had|have|has|having|must have) (?:\w+ )?(?:swapped|mixed|confused|muddled|transposed|reversed|misread) (?:them|the two|it|things|the numbers|the scales?)\b/,
    example: '«A 22 G is wider than an 18 G» on his sheet, having swapped the two.',
  },
  {
    place: 'behind',
    like: /\bso (?:they|people|some|he|she) (?:say|says|said|claim|claims)\b/,
    example: '«Silk is a monofilament», or so they say.',
  },
  {
    place: 'behind',
    like: /, (?:says?|said|claims?|claimed|writes?|wrote|insists?|insisted|reads) (?:(?:an?|one|some|another|that|this|his|her|their) [a-z]{3,}|(?:the |most |many |all )?(?:students|trainees|juniors|candidates|pupils|learners|beginners)\b)/,
    example: '«A 22 G is wider than an 18 G», says a table online.',
  },
  {
    place: 'behind',
    like: /(?<!\bas )\b(?:they|some|people|others|many|patients|owners) (?:say|said|claim|claimed|believe|believed|think|thought|tell (?:us|me))(?= ?[.!;)]| ?$)/,
    example: '«A 22 G is wider than an 18 G», they say.',
  },
  {
    place: 'behind',
    like: /\b(?:does|do|did|will|would)(?: not|n't) (?:hold|stand|follow)(?= [.,;!?)]|$| up\b| water\b)/,
    example: 'That «5-0 is thicker than 3-0» does not hold water.',
  },
  {
    place: 'behind',
    like: /\bis(?: not|n't) (?:true|so|right|correct|the case)\b/,
    example: 'That «5-0 is thicker than 3-0» is not the case.',
  },
  {
    place: 'behind',
    like: /\b(?:cannot be right|(?:i|we) (?:later |then |soon )?(?:put|set) (?:that|this|him|her|them|it) (?:right|straight)|has (?:it|this|that|things) (?:backwards|wrong|upside down|the wrong way round))\b/,
    example: 'That «5-0 is thicker than 3-0» cannot be right.',
  },
  {
    place: 'behind',
    like: /^(?:[,;.] )(?:but |and |yet )?(?:it|that|this|they) (?:isn't|is not|aren't|are not)(?= [.,;!]|$)/,
    example: '«Silk is a monofilament», but it is not.',
  },
  {
    place: 'behind',
    like: /^(?:[,(—–-] )?(?:(?:is )?not (?:true|so|right|correct)|(?:and|but|yet) (?:is|are|was)(?: not|n't)|(?:he|she|they|i|we|someone|somebody) (?:said|thought|wrote|claimed|insisted|answered)|(?:(?:cannula|needle|one) )?(?:was |were )?(?:recorded|documented|charted|logged))\b/,
    example: '«A 22 G is wider than an 18 G», she insisted.',
  },
  {
    place: 'after the word',
    kind: 'property',
    like: /^(?:[a-z]+ )?or not\b/,
    example: 'Catgut, polypropylene: absorbable or not.',
  },
  // The sentence opens so.
  {
    place: 'opening',
    like: /^(?:\S+ [.)] )?(?:t ?\/ ?f|true ?(?:or|\/) ?false|true or not) [:—–?.-]/,
    example: '3) true or not: «silk is a monofilament».',
  },
  {
    place: 'opening',
    like: /^(?:\S [.)] )?(?:assuming|believing|thinking|supposing|imagining|expecting|saying|to (?:assume|believe|think|suppose|say)) /,
    example: 'Saying «a 22 G is wider than an 18 G» helps nobody.',
  },
  {
    place: 'opening',
    kind: 'order',
    like: /^(?:(?:\S{1,9} ){1,2}[.):—–-] )?(?:put|place|order|re-order|reorder) (?:these|them|those|the following|the (?:sizes|needles|cannulas|cannulae|catheters|sutures|threads|tubes|wires))(?: (?:sizes|needles|cannulas|cannulae|catheters|sutures|threads|tubes|wires))?(?: (?:in|into|from|by)\b| [:,(])|^(?:(?:\S{1,9} ){1,2}[.):—–-] )?(?:rank|sort|arrange|rearrange) (?!as |like )/,
    example: 'Sort from thick to thin: 5-0, 2-0, 4-0.',
  },
];
