/** Words of doses and weights: beside them a "g" is grams. */
import { wholeWords } from './pattern.ts';

const SUBSTANCES = [
  'dextrose',
  'glucose',
  'sodium',
  'chloride',
  'potassium',
  'magnesium',
  'sul(?:f|ph)ate',
  'bicarbonate',
  'paracetamol',
  'acetaminophen',
  'cef[a-z]+',
  'ceph[a-z]+',
  'mannitol',
  'albumin',
  'protein',
  'carbs?',
  'carbohydrates?',
  'sugar',
  'fat',
  'fib(?:er|re)',
  'salt',
  'vancomycin',
  'piperacillin',
  'tazobactam',
  'amoxicillin',
  'meropenem',
  'tranexamic acid',
  'tranexamic',
  'immunoglobulin',
  'ivig',
  'calcium',
  'gluconate',
  'charcoal',
  'sucrose',
  'lactulose',
  'flucloxacillin',
  'ampicillin',
  'ibuprofen',
  'metronidazole',
  'cr(?:eam|ème)',
  'ointment',
  'gel',
  'powder',
  'drug',
  'antibiotic',
];
const WEIGHING = ['weigh(?:s|ed|t|ing)?', 'lost', 'lose', 'gained'];
const MEASURED = [...SUBSTANCES, ...WEIGHING];

/** Right before a weight: what is weighed. */
export const DRUG_BEFORE = new RegExp(
  `\\b(?:${MEASURED.join('|')})\\s?(?:iv\\s|po\\s|\\(|:|,?\\sabout\\s|dose\\s(?:of\\s)?|was\\s|is\\s|of\\s)?$`,
  'i',
);

/** Right after a weight: the substance. */
export const OF_SUBSTANCE = new RegExp(`^\\s?(?:of\\s)?(?:${SUBSTANCES.join('|')})\\b`, 'i');

/** Right after a weight: of what, in what, how often. */
export const MEASURED_OUT = new RegExp(
  `^\\s?(?:of\\b(?! (?:the|an?|this|equal|similar|any)\\b)|/|per\\b|in\\s[0-9]|iv\\sover|over\\s[0-9]|bolus|by mouth\\b|orally\\b|im\\b|qd|bd|tds|od\\b|daily|every\\b|bags?\\b|mouse\\b|mice\\b|rats?\\b|pups?\\b|chicks?\\b|birds?\\b|budgies?\\b|finch(?:es)?\\b|hamsters?\\b|gerbils?\\b|sachets?\\b|pots?\\b|jars?\\b|(?:${SUBSTANCES.join('|')})\\b|monofilament)`,
  'i',
);

/** Words of a sentence that weighs things. */
export const WEIGHED = wholeWords([
  ...MEASURED,
  'wet',
  'dry',
  'doses?',
  'sachets?',
  'meals?',
  'diet',
  'loading',
  'grams?',
  'birth ?weight',
  'sponges?',
  'swabs?',
  'pads?',
  'diapers?',
  'napp(?:y|ies)',
]);

/** After a gauge-like G: acceleration, networks. */
export const NOT_GAUGE =
  /^[\s-]*(?:force|forces|network|networks|signal|wi-?fi|ethernet|coverage|router|phone|mobile|acceleration|centrifug\w*|spin|rcf|shotguns?|shells?|rail\w*|track)\b|^[\s]?[x×]\s?[0-9]+\s?min/i;

/** A sentence about a centrifuge: its g is an acceleration. */
export const SPUN = /\bcentrifug\w*|\brotors?\b|\bspins? at\b|\bspun at\b/i;

/** Before it: rails, guns, centrifuges. */
export const NOT_GAUGE_BEFORE =
  /(?:shotgun[^.;]{0,30}|phase|tasks?|appendix|exhibit|sprint|milestone|railway|railroad|track|model train|cannon|spun at|spins? at|spinning at|centrifuged? at)\s?(?:of\s|at\s|to\s|an?\s|the\s)?$/i;
