/** Words around a bare number that make it a size once a system is settled. */

export const COLOUR =
  '(?:light|dark|deep|pale)?\\s?(?:orange|gr[ae]y|green|pink|blue|yellow|purple|violet|mauve|red|white|black|brown|cream|ivory|turquoise|lavender|lilac)';

/** Before the number: an article or the like. */
export const DETERMINED =
  /(?:^|[\s("“‘'*_])(?:an?|the|your|another|that|this|our|my|either|each|one|two|three|both|plain|any|sizes?)\s(?:(?:new|second|spare|fresh|single|kinked|blocked|bent|blunt|sharp|short|long|clean|decent|good|proper|lonely|lone|trusty|humble|ordinary|standard|cuffed|plain|looped|little|tiny)\s)?["“‘'*_]?$/i;

/** Before the number: a word that hands a size over. */
export const HANDED =
  /(?:^|[\s("“‘'*_])(?:from|to|than|or|and|with|between|versus|vs\.?|uses?|used|using|take[ns]?|took|try|tried|choose|pick|want|prefer|over|into|down to|up to|not|then|say|nor|via|through|as|reach for|drop to|go to|a|the|for|bigger|smaller|of|gives|comes to|makes|is|are|marked|labelled|labeled|below|above|under|beyond|pass|past|reach|(?:write|call|say|read|spell|print|draw)s? it|says|reads|prints|writing|written|wrote|(?:wrote|noted|jotted|put|scribbled)\sdown)\s["“‘'*_]?$/i;

/** After the number: the end of the phrase, or a word that cannot be what is counted. */
export const CLOSED = new RegExp(
  `^(?:\\s+[B-E][).:]?\\s|\\s?(?:[.,;:)\\]?!—–→>|*_·•]|["”’'](?![A-Za-z])|=|$)|['’]s\\s(?:the|an?|too|much|far|so|not|way|still|what|(?!outer|inner|diam|numb)[a-z]+er)\\b|\\s(?:is|was|are|isn't|were|will|won't|would|can|cannot|can't|could|should|has|have|gives?|gave|flows?|runs?|ran|goes|go|lets?|makes?|may|might|does|doesn't|did|and|or|to|than|for|on|in|with|from|over|instead|rather|first|then|at|if|when|because|since|which|that|by|as|not|versus|vs|into|through|down|up|but|so|while|only|gauge|out|better|best|good|worse|worst|great|ok|okay|ideal|perfect|plenty|ample|usual|standard|takes?|delivers?|passes|fits?|stays?|looks?|leaves?|works?|needs?|beats?|comes?|carries|kinks?|feels?|measures?|means|holds?|hurts?|moves?|drains?|wins|already|still|too|again|next|below|above|thick\\w*|thin\\w*|fat\\w*|fine\\w*|narrow\\w*|wid\\w*|big\\w*|small\\w*|slim\\w*|skinn\\w*|chunk\\w*|slender\\w*|stout\\w*|last (?:time|week|night|month)|distal|proximal|medial|range|bracket|now|please|here|there|of (?:the same|equal|similar|identical)|will|did|drips?|drip|pours?|empties|lives?|helps?|drops|slips|slides|buys?|costs|gains|gets|leaks|stands|turns|went|used|hurt|more|less|faster|slower|any|every|you|we|they|i|it|he|she|along|just|the|long|short|once|until|after|before|straight|beside|each|every|either|put|placed|sited|inserted|blew|blown|broke|came|bent|tore|slid|slipped|got|fell|held|let|led|gave|took|stood|sat|lay|stuck|kept|ran|hung|shot|blocked|clogged|kinked|leaked|worked|failed|felt|made|cost|costs|gave|most|all|many|some|both|cannot|didn't|wouldn't|couldn't|wasn't|weren't|hasn't|hadn't|had|must|isn't|aren't|also|never|always|almost|nearly|probably|really|usually|often|sometimes|itself|alone|too|either|anyway|today|tonight|later|between|under|over|against|near|around|across|inside|outside|within|without|like|about|per|except|upwards?|downwards?|onwards?|metric|yet|though|although|unless|where|whereas|who|what|why|how|right|left|ready|open|free|sits?|keeps?|snaps?|breaks?|frays?|belongs?|flushes|empties|squirts|sprays|clots|collapses|also|being|enough|twice|once|[a-z]+s\\s(?:sooner|earlier|faster|quicker|slower|better|worse|easier|first|easily|quickly))\\b|\\s${COLOUR}\\b)`,
  'i',
);

/** "fetch a 16", "pull a seven and a half": a size asked for without its system. */
export const FETCHED =
  /\b(?:fetch(?:es)?|collect|grab|toss|throw|chuck|slide|pass|hands?|handed|get|give|bring|pull|open|found there|tie [a-z ]{1,24}with)\s(?:me\s|us\s|you\s|her\s|him\s|them\s|over\s|up\s|out\s)?["“‘'*_]?(?:an?|the)\s["“‘'*_]?$/i;

/** "leave an 18 by the bed", "everyone needs a 5", "a couple of 14s": put out or wanted, with no system in sight. */
export const WANTED =
  /\b(?:leave|return|put|lay out|set out|send(?:s|ing)?(?: over| down| up| out| round)?|(?:ask|call|phone|ring|shout|sign)(?:s|ed|ing)?(?:\s(?:me|us|him|her|you|them|down|up|over|round))* for|needs?|wants?|would like|like to have|have|(?:run|ran|running|are|is|am|were)\s(?:low\son|short\sof|out\sof))\s(?:me\s|us\s|you\s|up\s|out\s|over\s|ready\s)?(?:a couple of\s|two\s|three\s|some\s)?["“‘'*_]?(?:(?:an?|the)\s(?:spare\s|new\s|clean\s|second\s|fresh\s)?)?["“‘'*_]?$/i;

/** After it: the phrase ends, or says where, when or for what. */
export const WANTED_AFTER =
  /^["”’'*_]?\s?(?:[.,;:)?!"”’*_]|$|for\b|when\b|from\b|by\b|at\b|on\b|with\b|in\b|to\b|open\b|out\b|ready\b|please\b|before\b|over\b|up\b|again\b|asap\b|urgently\b|quickly\b|stat\b|last\b|next\b|this\b|round\b|then\b)/i;

/** The whole of what was said or written: "A 12, please", "16 x 5 please", "tube, 14, one", "3, blue box". */
export const SAID_WHOLE =
  /(?:^|["“‘]|[:.]\s)(?:(?:tubes?|drains?|catheters?|sizes?),?\s)?(?:(?:an?|one|two|three|another)\s)?$/i;
export const SAID_WHOLE_AFTER =
  /^s?,\s(?:please\b|one\s[a-z]{3,10}[,.!"”])|^(?:s?,?\s(?:please|x\s?[0-9]{1,2}(?:\splease)?|(?:[a-z]+\s)?box(?:es)?(?:,[a-z\s]{1,12})?|one(?:\sbox|\seach)?|two(?:\sboxes|\seach)?)|)[.!]?["”’]|^s?,?\splease[.!]/i;

/** Words that set a system for what follows. */
export const SETTING: readonly (readonly [
  'needle-gauge' | 'french' | 'usp' | 'ep-metric' | 'wire-inch' | 'tube-id',
  RegExp,
])[] = [
  ['needle-gauge', /(?<!\b(?:French|Charri[eè]re)\s)\bgau?ges?\b|\bG\b|\bga\b/i],
  ['french', /\bFrench\b|\bFr\b|\bcharri[eè]re\b|\bCh\b/],
  ['ep-metric', /\bmetric\b|\bEP\b/],
  ['usp', /\bUSP\b|\bsuture sizes?\b/i],
  ['wire-inch', /\bwires?\b|\bguidewires?\b/i],
  ['tube-id', /\bETT\b|\b(?:endo)?tracheal tubes?\b|\bID\b/],
];

/** Table headers that name the unit of the cells below. */
export const HEADERS: readonly (readonly [
  'needle-gauge' | 'french' | 'usp' | 'ep-metric' | 'millimetre' | 'inch' | 'tube-id' | 'wire-inch',
  RegExp,
])[] = [
  ['wire-inch', /\bwires?\b.*\bin(?:ch(?:es)?)?\b/i],
  [
    'tube-id',
    /\b(?:tubes?|ETT|trach\w*)\b.*\b(?:ID|inside|inner|internal)\b|\b(?:ID|inside|inner|internal)\b.*\b(?:tubes?|ETT|trach\w*)\b|\bETT\b|\btracheal tube|^(?!.*\b(?:chest|feeding|gastric|ng|drain\w*|suction|outer|outside|od|length|depth)\b).*\btubes?\b.*\bmm\b/i,
  ],
  ['needle-gauge', /^(?!.*\b(?:French|Charri[eè]re|[ASB]WG)\b).*(?:\bgau?ge\b|\(G\)|\bga\b)|^G$/i],
  ['millimetre', /\bmm\b|millimet/i],
  ['french', /\bFrench\b|\bFr\b|charri[eè]re|\(F\)|^F$|\bCh\b/i],
  ['ep-metric', /\bmetric\b|\bEP\b|\bPh\.? ?Eur|^Euro(?:pean)?(?:\s(?:number|no\.?|size|figure)s?)?$/i],
  ['usp', /\bUSP\b|suture size|thread size/i],
  ['inch', /\binch(?:es)?\b|\(in\.?\)|, in\.?$|″/i],
];

/** "A synthetic of that metric number would be called": the scale says which is meant, and the cells say something else. */
export const OF_OTHER =
  /\b(?:of|at|with|for|by|has|shares?) (?:that|this|the same|its|each|equal) (?:\w+ )?(?:metric|USP|EP|French|gau?ge|mm)\b/i;

/** Headers of columns that count, price or grade: the numbers below them are no sizes, whatever the row is about. */
export const OTHER_HEADER =
  /^\W*(?:(?:no|number|#) (?:of|in)\b.*|(?:(?:unit|total|list|avg|average|min|max|minimum|maximum|current|search|monthly)\s)*(?:qty|quantity|quantities|count|counts|stock|price|prices|cost|costs|difficulty|volume|rank|ranking|score|scores|votes?|position|year|years|date|page|pages|id|sku|code|marks?|points?|hits?|uses?|weeks?|days?|hours?|minutes?|months?|age|ages|weight|dose|doses|n|%|percent|par(?: level)?|reorder\w*|used|ordered|left|each|per (?:box|pack|case|mm|cm|inch)|week\w*|day\w*|time|times|rate|balloons?(?:\s(?:size|volume|water|fill))?|fill|flow|speed|pressure|depth|angle|duration|rooms?|beds?|bays?|patients?|staff|in stock|on shelf)(?:\s?\(.{0,16}\))?)\W*$/i;

/** "the surgeon asked for a 3", "load me a 2": a thread asked for by word of mouth. */
export const ASKED_FOR =
  /\b(?:toss|throw|find|load|slide|send|order(?:s|ed)?|ask(?:s|ed|ing)? for|call(?:s|ed|ing)? for|want(?:s|ed)?|need(?:s|ed)?|shout(?:s|ed)? for|wanted|said|says|with)\s(?:me\s|us\s|him\s|her\s)?["“‘'*_]?an?\s["“‘'*_]?$/i;
