/** Words beside which a number is something else. One row an idea. */

/** Sport and voting: "won 3-0". */
export const SCORE =
  /\b(?:won|win|wins|beat|beats|beaten|lost|lose|led|lead|leading|score|scored|scores|league|match|game|games|goal|goals|half-time|softball|football|soccer|hockey|vote|voted|votes|tied|final score|shutout|playoffs?|cup|quiz night|tournament)\b/i;

/** After a gauge-like G: acceleration, networks, money. */
export const NOT_GAUGE =
  /^[\s-]*(?:force|forces|network|networks|signal|wi-?fi|ethernet|coverage|router|phone|mobile|acceleration|centrifug\w*|spin|rcf)\b|^[\s]?[x×]\s?[0-9]+\s?min/i;
export const NOT_GAUGE_BEFORE =
  /(?:railway|railroad|track|model train|pressure|fuel|shotgun|cannon|spun at|centrifuged at)\s?[a-z ]{0,12}$/i;

/** After "French" in the sense of people and places. */
export const FRENCH_PEOPLE =
  /^[\s-]*(?:hospitals?|cent(?:er|re)s?|patients?|people|nurses?|doctors?|surgeons?|students?|speakers?|women|men|wom[ae]n|girls?|boys?|guests?|visitors?|colleagues?|words?|terms?|phrases?|lessons?|class(?:es)?|cit(?:y|ies)|towns?|cohorts?|regions?|departments?|universit|national|grand(?:mothers?|fathers?|parents?)|bulldogs?|poodles?|fries|toast|bread|wines?|horns?|teachers?|exchange|residents?|interns?|fellows?|trainees?|volunteers?|households?|schools?|villages?|teams?|units?\b|icus?\b|kiss|windows?|doors?|beans|press|plaits?|braids?|vocabulary|verbs?|textbooks?|novels?|films?|songs?|accents?|instrument makers?|pages?|translations?|registr|academic|public|private|investigators|sites)/i;

const DRUGS =
  'dextrose|glucose|sodium|chloride|potassium|magnesium|sul(?:f|ph)ate|bicarbonate|paracetamol|acetaminophen|cef[a-z]+|mannitol|albumin|protein|carbs?|carbohydrates?|sugar|fat|fib(?:er|re)|salt|vancomycin|piperacillin|tazobactam|amoxicillin|meropenem|ceftriaxone|tranexamic acid|tranexamic|immunoglobulin|ivig|calcium|gluconate|charcoal|sucrose|lactulose|flucloxacillin|ampicillin|ibuprofen|metronidazole|cr(?:eam|ème)|ointment|gel|powder|weigh(?:s|ed|t|ing)?|lost|lose|gained|drug|antibiotic';

/** Right before a weight: what is weighed. */
export const DRUG_BEFORE = new RegExp(
  `\\b(?:${DRUGS})\\s?(?:iv\\s|po\\s|\\(|:|,?\\sabout\\s|dose\\s(?:of\\s)?|was\\s|is\\s|of\\s)?$`,
  'i',
);

/** Right after a weight: of what, in what, how often. */
export const MEASURED_OUT = new RegExp(
  `^\\s?(?:of\\b|/|per\\b|in\\s[0-9]|iv\\sover|over\\s[0-9]|bolus|qd|bd|tds|od\\b|daily|every\\b|(?:${DRUGS})\\b|monofilament)`,
  'i',
);

/** Words of a sentence that weighs things. */
export const WEIGHED = new RegExp(
  `\\b(?:${DRUGS}|weigh\\w*|wet|dry|doses?|sachets?|meals?|diet|loading|grams?|birth ?weight|sponges?|swabs?|pads?|diapers?|napp(?:y|ies))\\b`,
  'i',
);

/** Words of a sentence about a person. */
export const PATIENT_WORDS =
  /\b(?:year-?old|y\/?o|found down|collapsed|complain\w*|presents?|presented|presenting|history of|hx|pmh|triage note|she|her|girl|woman|lady|mother|case [0-9]+:)\b|\b[0-9]{2}\s?M\b/i;

/** A person's age and sex: what follows "14F" then. */
export const PATIENT =
  /^[\s]?(?:,|;|:|\)|\bwith\b|presents?\b|presenting\b|c\/o\b|h\/o\b|post\b|admitted\b|referred\b|s\/p\b|who\b|seen\b|came\b|in (?:the )?(?:bay|bed|room)\b)/i;

/** What a length may measure that is no size: wounds, depths, distances, people, pictures. */
export const OTHER_LENGTH =
  /\b(?:wounds?|lacerations?|lacs?|incisions?|cuts?|scars?|gash|tears?|defects?|deep|depth|veins?|vessels?|arter(?:y|ies)|insert(?:ed|ion)?|advance[ds]?|advancing|withdraw[ns]?|pull(?:ed)? back|distance|apart|spac(?:ed|ing)|intervals?|from the (?:edge|margin|tip|skin|limbus|lips?|hub|heel|midline|wound|end|apex)|away|margins?|edges?|above|below|lesions?|stones?|tumou?rs?|polyps?|pupils?|nodules?|cysts?|mass(?:es)?|bites?|tall|height|taped at|at the (?:lips?|teeth|gums?|nares|nostril|skin)|lips?|teeth|marks?|past|beyond|tails?|slack|loops?|swelling|bruise|haematoma|hematoma|ulcers?|burns?|strips?|gauze|dressing|tape|ruler|paper|screen|from skin|hg|thickness of (?:fat|skin)|stump|drain(?:ed)? out|gap|ears?|posterior|anterior|behind|lateral|medial|distal|proximal|cephalad|inferior|superior|caudal|stricture|fenestration|length (?:of|is)|active|every|increment\w*|by [0-9]|rectus|fascia)\b/i;

/** Right after a length: where on the body it is measured. */
export const ELSEWHERE =
  /^\s?(?:posterior|anterior|behind|lateral|medial|distal|proximal|deep|above|below|from (?:the|each)|apart|away|long (?:wound|incision|cut|laceration))\b/i;

/** What says that a length is a size. */
export const DIAMETER =
  /\b(?:diameters?|across|bore|bores|lumens?|wide|width|outer|outside|inner|inside|caliber|calibre|thick|thickness|od|id|o\.d\.|i\.d\.|gauge|micrometer|micrometre|calipers?|callipers?|round|fat|thin|thinner|thicker|cross-section|measures?|girth|french|charri[eè]re)\b/i;

/** What follows a number that counts something. */
export const COUNTED =
  /^[\s-]*(?:%|percent|°|degrees?|ml|mls|millilit|lit(?:er|re)s?|l\/|cc|mg|mcg|µg|kg|kilos?|g\b|grams?|units?|iu|mmol|mmhg|hours?|hrs?|h\b|minutes?|mins?|min\b|seconds?|secs?|s\b|days?|weeks?|months?|years?|yrs?|y\/?o|-year|patients?|people|persons?|nurses?|students?|learners?|times|sites?|steps?|stations?|questions?|points?|pages?|items?|cases?|attempts?|of\b|am\b|pm\b|o'clock|drops?|bpm|hz|khz|mhz|gy|msv|kv|cmh|psi|dollars?|cents?|euros?|pounds?|lbs?|feet|foot|ft|meters?|metres?|km|miles?|throws?|knots?|bites?|layers?|kits?|packs?|boxes|box|sets|rows?|columns?|beds?|bays?|rooms?|cm\b|centimet\w*|mm\b|at the (?:teeth|lips?|skin|nose|nares|nostrils?|gums?)|slides?|marks?|percent|doses?|tubes of|bottles?|grams|seats?|groups?|cars?|volunteers?|hospitals?|cent(?:er|re)s?|\/|:|\.[0-9]|,[0-9]|x\b|×)/i;

/** What stands before a number that is a label of something else. */
export const LABELLED =
  /\b(?:steps?|days?|rooms?|bays?|beds?|pages?|p\.|pp\.|chapters?|modules?|lessons?|units?|stations?|questions?|q|clips?|slides?|figures?|fig|tables?|versions?|v|ages?|aged|stages?|grades?|levels?|types?|phases?|class|classes|wards?|floors?|ext|extensions?|lots?|lines?|items?|cases?|weeks?|months?|years?|no|number(?:ed)?|blades?|gloves?|laryngoscopes?|mac|miller|scores?|tiers?|priority|parts?|sections?|groups?|groups of|teams?|camera|take|scenes?|box(?:es)?|forms?|protocols?|codes?|rules?|options?|answers?|bench(?:es)?|desks?|drawers?|shelf|shelves|counter|cart|airways?|guedel|oral airways?|quiz|track|bus|gate|platform|ratio|rate|at|in|since|by|until|about|before|after|plus|minus|times|add|adds|divided by|multiplied by|over|[+×=÷*])\s*$/i;

/** Before a bare number: another number with a unit of its own, whose unit it shares. */
export const SHARES_UNIT =
  /[0-9]\s?(?:m[Ll]|cc|mg|kg|cm|hours?|h|min(?:utes)?|days?|weeks?|years?|%|°)\b[^.;:]{0,12}\b(?:not|or|and|to)\s$/;

/** Blades and gloves named in the sentence: their numbers are no sizes of ours. */
export const BLADED = /\b(?:blades?|scalpels?|gloves?|laryngoscope|macintosh|miller)\b/i;
