/** Words that tell a diameter or a needle's length from every other length. */
import { wholeWords } from './pattern.ts';

/** What a length may measure that is no size: wounds, depths, distances, people, pictures. */
export const OTHER_LENGTH = wholeWords([
  'wounds?',
  'lacerations?',
  'lacs?',
  'incisions?',
  'cuts?',
  'scars?',
  'gash',
  'tears?',
  'defects?',
  'deep(?! (?:ones?\\b|im\\b|injections?|intramuscular|muscles?|layers?))',
  'depth',
  'veins?',
  'vessels?',
  'arter(?:y|ies)',
  'insert(?:ed|ion(?! (?:cord|tube)))?',
  'advance[ds]?',
  'advancing',
  'withdraw[ns]?',
  'pull(?:ed)? back',
  'distance',
  'apart',
  'spac(?:ed|ing)',
  'intervals?',
  'from the (?:edge|margin|tip|skin|limbus|lips?|hub|heel|midline|wound|end|apex)',
  'away',
  'margins?',
  'edges?',
  'above',
  'below',
  'lesions?',
  'stones?',
  'tumou?rs?',
  'polyps?',
  'pupils?',
  'nodules?',
  'cysts?',
  'mass(?:es)?',
  'bites?',
  'tall',
  'height',
  'taped at',
  'at the (?:lips?|teeth|gums?|nares|nostril|skin)',
  'at skin',
  'lips?',
  'teeth',
  'marks?',
  'past',
  'beyond',
  'tails?',
  '(?:leave|left|cut|trim\\w*|keep|kept) (?:the |both |its )?ends',
  'slack',
  'loops?',
  'swelling',
  'bumps?',
  'wheals?',
  'indurat\\w+',
  'blebs?',
  'redness',
  'rash(?:es)?',
  'skin test',
  'bruise',
  'haematoma',
  'hematoma',
  'ulcers?',
  'burns?',
  'strips?',
  'gauze',
  'dressing',
  'tape',
  'ruler',
  'paper',
  'screen',
  'from skin',
  'hg',
  'thickness of (?:fat|skin)',
  'stump',
  'gap',
  'ears?',
  'posterior',
  'anterior',
  'behind',
  'lateral',
  'medial',
  'distal',
  'proximal',
  'cephalad',
  'inferior',
  'superior',
  'caudal',
  'stricture',
  'active',
  'every',
  'increment\\w*',
  'rectus',
  'fascia',
  'loss of resistance',
  'bracket',
  'slot',
]);

/** Parts of the body whose own diameter is told. */
export const BODY_MEASURED = wholeWords([
  'fenestrations?',
  'strictures?',
  'lesions?',
  'tumou?rs?',
  'aneurysms?',
  'stones?',
  'polyps?',
  'nodules?',
  'defects?',
  'ducts?',
  'aorta',
  'pupils?',
  'cysts?',
  'ulcers?',
  '(?<!multi-)samples?(?! needles?)',
  'specimens?',
  '(?:bronchial|tracheal|airway|venous|arterial|vessel|vein|ductal|duct|bronchus|trachea) diameters?',
]);

const BODY =
  '(?:trachea|bronchus|windpipe|glottis|larynx|vein|artery|vessel|aorta|duct|ureter|urethra|meatus|flap|hole|gap|wound|cut|incision|laceration|scar|defect|ulcer|burn|stone|polyp|lesion|mass|nodule|lump|tumou?r|cyst|aneurysm|pupil|swelling|bruise|graft|bite|space|cord|canal|nostril|nail|finger|skin|fat|margin|edge|mark|line of stitches)s?';

/** Without one of them the pattern below, which takes long to make, is not worth it. */
export const BODY_NAMED = new RegExp(BODY, 'i');

/** "The trachea of an adult is about …", "a hole of up to …": a part of the body or a wound is what measures so much. */
export const BODY_IS = new RegExp(
  `(?:^|[.;:,]\\s|\\b(?:and|but|so|since|because|when|if|where|while|that)\\s)["“‘*_]?(?:(?:an?|the|this|that|his|her|their|its|your|each|every|one|most|any|for)\\s)?(?:[a-z-]+\\s){0,2}${BODY}(?:\\s(?:of|in|on|at|from|under)\\s(?:[a-z-]+\\s?){1,4})?(?:\\s(?:which|that|usually|often|only|just|now))?\\s(?:is|was|are|were|measures?|measured|of|up to|with)\\s(?:(?:about|only|just|roughly|some|around|over|under|up|to|at|most|least|usually|often|nearly|less|more|than|now|still|an?)\\s){0,3}$`,
  'i',
);
export const BODY_CELL = new RegExp(
  `^\\W*(?:[a-z-]+\\s){0,2}${BODY}(?:\\s(?:length|width|size|depth))?\\W*$`,
  'i',
);

/** Right after a length: where on the body it is measured. */
export const ELSEWHERE =
  /^\s?(?:posterior|anterior|behind|lateral|medial|distal|proximal|deep|above|below|from (?:the|each)|apart|away|at (?:the )?skin|long (?:wound|incision|cut|laceration))\b/i;

/** What says that a length is a size. */
export const DIAMETER = wholeWords([
  'diameters?',
  'across',
  'bores?',
  'lumens?',
  'wide',
  'width',
  'outer',
  'outside',
  'inner',
  'inside',
  'calib(?:er|re)',
  'thick',
  'thickness',
  'od',
  'id',
  'gauge',
  'channels?',
  '[a-z]+oscopes?',
  'punch(?:es)?',
  'micromet(?:er|re)',
  'call?ipers?',
  'round',
  'fat',
  'thin',
  'thinner',
  'thicker',
  'cross-section',
  'measures?',
  'girth',
  'french',
  'charri[eè]re',
]);

/** Definitions of the units themselves: "one inch is 25.4 mm", "each French is 0.33 mm". */
export const DEFINES_AFTER =
  /^\s(?:to|in|per|make|makes|is|equals|=)\s(?:(?:an?|one|the|each|every|1|about|exactly)\s)?(?:inch|French|25[.,]4|2[.,]54)/i;
/** "1 in. = 2.54 cm". */
export const IN_METRIC = /^\.?\s?=\s?(?:25[.,]4|2[.,]54)/;
export const STEP_OF_A_SCALE =
  /\b(?:(?:an?|one|each|every|per)\s(?:extra\s|single\s|further\s)?(?:French|Fr|step)\b|\bsteps? (?:up|on))[^0-9;]{0,44}$/i;
/** Filters, cells and particles are measured in micrometres too. */
export const FILTERED =
  /\b(?:filters?|filtered|pores?|particles?|embol\w+|beads?|microspheres?|cells?|mesh|particulate)\b/i;

/** "⅝ in is about 16 mm, 1 in is …": the next of the lengths that are turned into millimetres. */
export const FELLOW_INCH = /\bin(?:ch(?:es)?)?\.?\s(?:is|=)\s(?:about\s)?[0-9.]+\s?mm[,;]\s(?:and\s)?$/i;

/** Right after inches: the same in millimetres. */
export const TWIN_MM =
  /^(?:,\s|\s(?:is|=)\s|\s?\()(?:or\s|that\sis,?\s|which\sis\s)?(?:about\s|roughly\s|some\s)?[0-9.]{1,4}\s?mm\b/i;

/** "Tube A is 6.0 mm inside, tube B 6.5 mm. Harder to breathe through?" */
export const BREATHED =
  /\btubes?\b[\s\S]{0,120}\bbreath(?:e|es|ed|ing)?\b|\bbreath(?:e|es|ed|ing)?\b[\s\S]{0,120}\btubes?\b/i;
