/** What may stand between a colour and its size, as people write it: one pattern a way of saying. */

/** "The blue cap goes on the 18 G": a thing put on another. */
export const PUT = /\b(?:goes|go|sits|screws|clips|fits) (?:on|onto|over)\b/;

/** "Take the green one if you want an 18 G". */
export const WANTED =
  /^(?:(?:one|hub|cannula|needle|catheter|cap) )?(?:if|when|where) (?:you|we|they|the (?:notes?|plan|order|chart)) (?:want|need|call for|calls? for|ask for|asks? for|say|says|are after)s? (?:an?|the)$/;

/** "An 18 G needle, and the cap is red": the cap of a packet or of a filter needle. */
export const LOOSE_CAP = /(?:^| )and the cap (?:is|was)(?: an?)?$/;

/** "orange on the other make": not the code. */
export const OTHER_MAKE =
  /^(?:(?:hub|cap|one|needle|cannula) )?(?:on|in|from|with) (?:the|an|some|that|our)? ?(?:other|another|old) (?:make|makes|kind|supplier|kit|brand)\b/;

/** "A 21 G needle; its hub is orange", "21 G, and here the hub is orange". */
export const OWN_HUB =
  /^(?:(?:needle|cannula|catheter) )?[,;:—–-] (?:and |where )?(?:here )?(?:its|the|whose) hub (?:is|will be|should be)(?: an?| the)?$/;

/** "A 16 G cannula; that is the blue hub". */
export const POINTED =
  /^(?:(?:needle|cannula|catheter|one|ready|first|please|in|, please) )*[,;:—–(-] (?:and )?(?:that is|that's|this is|it is|it's|that will be|this one is|which is|it has|this has|that has|this one has|this one wears|it wears)(?: always| of course| usually)? (?:the|an?)$/;

/** "…; this one comes in grey". */
export const COMES =
  /^(?:(?:needle|cannula|catheter|one|ready|first|please|in|, please) )*[,;:—–(-] (?:and )?(?:it|this one|that one|this|that|which) (?:comes in|wears|is|will be)$/;

/** "asks for a grey cannula they are asking for", "of the white-funnelled catheter has failed, expect to find". */
export const EXPECTED =
  /(?:^| )(?:(?:they|you|we|he|she) (?:are |is |will be |will |must |can )?(?:ask(?:s|ing)?(?: you)? for|after|mean(?:s|ing)?|want(?:s|ing)?|hold(?:ing)?|look(?:ing)? at|get(?:ting)?)|expect(?: to (?:find|see|get))?|(?:you|we|they) (?:are |will be )?(?:deal(?:ing)? with|have|hold|get)|(?:it|that|this) (?:is|will be|must be|has to be|is going to be|means)|(?:is|are|was) called)(?: an?| the| size)*$/;

/** "handed a blue cannula, recognises it as …". */
export const KNOWN =
  /^(?:(?:one|hub|cannula|needle|catheter|cap|funnel) )?(?:, )?(?:\w+ ){0,2}?(?:recogni[sz]es?|identif(?:y|ies)|knows?|reads?|calls?|names?|takes?|treats?|counts?|makes?) (?:it|this|that|them)(?: as| to be| is| for)?(?: an?| the)?$/;

/** "The 22 G, recognisable by its pink hub", "the 20 Fr, you know it by the yellow funnel", "get the 24 G, so look for the yellow one". */
export const TOLD_BY =
  /^(?:(?:needle|cannula|catheter|one|foley) )?, (?:(?:and )?(?:you(?:'ll)?|we|one) (?:will |can |could )?(?:easily |always )?(?:recogni[sz]e|know|tell|spot|identify|pick out|find|see) (?:it|this|that|them|this one) (?:from afar |at once |easily )?(?:by|from) (?:its|the|their)|(?:easily |readily |always )?(?:recogni[sz]able|recogni[sz]ed|known|told|identified|spotted|marked) by (?:its|the)|(?:so|and so|hence) (?:(?:you |we )?(?:look|ask|reach|feel) for|(?:you |we )?(?:take|grab|open|pick|fetch|want|need)) (?:an?|the))$/;

/** "An orange needle is 25 G, as is the orange cannula", "a blue needle is 23 G and so is a blue cannula". */
export const AS_IS = /^(?:, )?(?:as|and so|so) (?:is|does|are) (?:an?|the|our)?$/;

/** "…, as green is its colour". */
export const ITS_COLOUR = /^(?:(?:needle|cannula|catheter|one) )?, (?:as|since|because|for)$/;

/** "The orange ones at the front are the 14s and the green ones behind them are the 18s". */
export const PLACED =
  /^(?:ones?|hubs?|cannula[es]*|needles?|boxes|packets?|catheters?) (?:(?:at|in|on) the (?:very |far )?(?:front|back|top|bottom|left|right|side|end|middle|door|shelf|drawer|window)|(?:behind|beside|below|under|above|next to|in front of) (?:them|it|these|those)|further (?:back|down|up)) (?:are|is)(?: an?| the)?$/;

/** Words that may stand between a colour and its size and tie them. */
export const TIES = new Set(
  `namely i.e . identifies denotes indicates over-the-needle peripheral connector our is are was = : , - – ( the a an hub hubs cannula cannulae needle one means for ones on as of marks wears has have with in its comes come
  therefore thus also always usually now still definitely just course naturally simply
  colour color coloured colored and tells you that are holding it gets get carries valve catheter foley shows signals says to mean cap plastic
  coded colour-coded color-coded urinary suction connector connectors funnel urethral
  size iv hypodermic your this by standard code chart iso hub's wings flange by holds hold be gives give then which can told known recognised recognized spotted identified respectively what find see always goes belongs stands so it's you're chooses must be at`.split(
    /\s+/,
  ),
);
