/**
 * Sizes as taught for a kind of patient or a use. They are habits, not standards: a finding on them is a soft hint, and
 * only far outside. Sources as cited in each row; a row without one is common practice, no source.
 */
import type { Device, System } from '../../sizes/model.ts';

/** Two values and what lies between. */
export type Band = readonly [number, number];

export interface UsualRow {
  readonly id: string;
  readonly system: System;
  readonly devices: readonly Device[];
  /** Words for the device, when the size does not carry one. */
  readonly named: RegExp;
  readonly patient: RegExp;
  /** Rows of one thing are told apart by the patient: where two of them are meant, neither is. */
  readonly thing: string;
  /** Values no text read teaches for this patient, ends included. */
  readonly outside: readonly Band[];
  /** Values so far off that a range which ends there is wrong, whatever its other end. */
  readonly ends?: readonly Band[];
  /** With one of these words the size is for something else: "draw it up with …". */
  readonly unless?: RegExp;
  /** The same, anywhere in the passage or over it: the thing serves another end. */
  readonly elsewhere?: RegExp;
  readonly holds: string;
  readonly sources: readonly string[];
}

const ADULT =
  /\b(?:adults?|grown-ups?|grown (?:man|men|woman|women)|(?:big |tall |average |small )?(?:man|men|woman|women|lady|ladies|gentlem[ae]n)|males?|females?)\b/;
const BABY = /\b(?:newborns?|neonates?|neonatal|preterms?|premature|infants?|bab(?:y|ies))\b/;
const CHILD =
  /\b(?:child(?:ren)?|child's|children's|toddlers?|paediatric|pediatric|kids?|newborns?|infants?|bab(?:y|ies)|(?:boys?|girls?) of (?:one|two|three|four|five|six|[1-6])|(?:one|two|three|four|five|six|[1-6])-year-olds?)\b/;
const BLEEDING =
  /\b(?:trauma|bleed(?:ing|er|ers|s)?|ha?emorrhag\w+|shock|shocked|exsanguinat\w+|resuscitation|resus|massive transfusion|major transfusion|crash(?:es|ed|ing)?|arrest(?:ed|s)?|needs (?:a lot of )?volume|volume fast)\b/;
const IV =
  /\b(?:cannula[es]?|cannulas|iv|ivs|ivc|ivcs|pivc|catheters?|access|lines?|drip|bag|fluids?|volume|litres?)\b/;
const TRACHEAL =
  /\b(?:tracheal|endotracheal|ett|ettube|et tubes?|airway tubes?|intubat\w+|tubes?|(?:un)?cuffed)\b/;
const URINARY = /\b(?:urinary|urethral?|foleys?|bladders?|catheteri[sz]\w+|urine|indwelling)\b/;
const IRRIGATION =
  /\b(?:irrigat\w+|wash-?outs?|washing out|three-way|3-way|triple-way|clots?|ha?ematuria|flush\w*|prostate|prostatectomy|turp|turps)\b/;

/** A wide needle draws a drug up, and another one gives it. */
const DRAWN =
  /\b(?:draw\w*|drew|aspirat\w+|withdraw\w*|vials?|ampoules?|bottles?|mix\w*|reconstitut\w+|filter|blunt|cannulas?|cannulae|drip|infusion|infusions)\b/;
const SPINAL = /\b(?:spinals?|spinal needles?|lumbar punctures?|intrathecal)\b/;
/** A long needle with a stylet reaches the heart, a joint, an abscess or a tumour as well: wide ones are used there. */
export const OTHER_PUNCTURE =
  /\b(?:pericardi\w*|subxiphoid|xiphoid|tamponade|\w*centesis|\w*aspirat\w+|abscess\w*|tonsil\w*|joints?|hips?|knees?|shoulders?|arthro\w+|facets?|sacroiliac|dis[ck]o\w+|biops\w+|fna|cytolog\w+|breast|nodules?|tumou?rs?|amnio\w+|cyst\w*|nerve (?:root )?blocks?|plexus|ganglion|trigger points?|guidewires?|marker|chest|pleural?|cricothyr\w+|sclero\w+)\b/i;
const FINE_BORE = /\b(?:fine-bore|fine bore|finebore)\b/;
const PEN = /\b(?:pen needles?|insulin|pens?)\b/;
const INTRAMUSCULAR =
  /\b(?:intramuscular(?:ly)?|deltoids?|vastus|gluteal|im (?:injections?|needles?|jabs?))\b/;
const SUBCUTANEOUS = /\b(?:subcutaneous(?:ly)?|subcut|sub-cut|sc (?:injections?|needles?)|under the skin)\b/;
const FEEDING =
  /\b(?:feeding[- ]tubes?|tube feed(?:s|ing)?|tube-feed(?:s|ing)|(?:nasogastric|ng|enteral) feed(?:s|ing)|feeding (?:only|alone)|nasogastric tubes? for feeding)\b/;
const NOT_NASAL = /\b(?:gastrostom\w+|peg|pegs|pej|buttons?|jejun\w+|stomas?|surgical\w*|ryle'?s?)\b/;
const DECOMPRESS = /\b(?:decompress\w+|ileus|bowel obstruction|(?:stomach|gastric) (?:drainage|emptying))\b/;
const PIGTAIL = /\b(?:pigtails?|pig-tails?)\b/;
const CHEST = /\b(?:chest|pleural?|thoracic|thoracostomy|thorax|intercostal|ha?emothorax|pneumothorax)\b/;
const HAEMOTHORAX =
  /\b(?:(?:trauma\w*|massive|big|large) .{0,30}ha?emothorax|ha?emothorax(?:es)?\b.{0,20} trauma|ha?emothorax)\b/;
const FISTULA = /\b(?:(?:ha?emo)?dialysis|fistulas?|fistulae|av fistulas?|avf|buttonhole|arteriovenous)\b/;
const ARTERIAL =
  /\b(?:arterial (?:lines?|cannula\w*|catheters?)|art(?:-| )lines?|a-lines?|radial (?:lines?|artery))\b/;
const TUOHY = /\b(?:tuohy|epidural needles?)\b/;
const MOUTH = /\b(?:mouths?|gums?|gingiva\w*|lips?|tongues?|intraoral(?:ly)?|oral mucosa)\b/;
const FACE = /\b(?:faces?|facial|eyelids?|eyebrows?|cheeks?)\b/;
const CORNEA = /\b(?:corneas?|corneal)\b/;
const FASCIA =
  /\b(?:linea alba|(?:abdominal|belly) (?:wall|fascia)|(?:midline|laparotomy) (?:fascia|closures?)|rectus sheath|fascial closures?|mass closures?)\b/;

/** Things that are sized on one scale, each told from the others: what a passage is about when only one is named. */
export const FAMILIES: readonly RegExp[] = [
  URINARY,
  CHEST,
  /\b(?:nasogastric|ng|feeding|stomach|gastric)\b/,
  /\b(?:suction\w*|tracheal|endotracheal|tracheostom\w+)\b/,
  /\b(?:central|venous|arterial|dialysis|sheaths?|introducers?|picc|umbilical|cardiac|angio\w*|stents?)\b/,
  /\b(?:bilia\w*|nephrostom\w+|abscess\w*|wound)\b/,
];

export const USUAL: readonly UsualRow[] = [
  {
    id: 'usual-tracheal-adult',
    thing: 'tracheal',
    system: 'tube-id',
    devices: ['tracheal-tube'],
    named: TRACHEAL,
    patient: ADULT,
    unless:
      /\b(?:microlaryn\w+|laryngectom\w+|child(?:ren)?|paediatric|pediatric|nasopharyn\w+|guedels?|oral airways?|laryngeal|stenosis|nasal|tracheostom\w+|jet|bronchoscop\w+)\b/,
    outside: [
      [1, 5],
      [10.5, 30],
    ],
    ends: [
      [1, 5],
      [10.5, 30],
    ],
    holds: 'Tracheal tubes for adults are taught as 7.0 to 9.0 mm; 5.0 mm and less are sizes for children',
    sources: ['ett'],
  },
  {
    id: 'usual-tracheal-baby',
    thing: 'tracheal',
    system: 'tube-id',
    devices: ['tracheal-tube'],
    named: TRACHEAL,
    patient: BABY,
    unless: /\b(?:tracheostom\w+|nasopharyn\w+)\b/,
    outside: [[6, 12]],
    ends: [[6, 12]],
    holds: 'Tracheal tubes of 6.0 mm and more are sizes for large children and adults',
    sources: ['ett'],
  },
  {
    id: 'usual-urinary-routine',
    thing: 'urinary-routine',
    system: 'french',
    devices: ['urinary-catheter', 'catheter'],
    named: /\b(?:urinary|urethral?|foleys?|bladders?|urine|catheters?|catheteri[sz]\w+)\b/,
    patient:
      /\b(?:(?:clear|clean) urine|healthy urethra|urethra is healthy|(?:routine|ordinary|uncomplicated|straightforward) (?:first )?(?:urinary |urethral |foley |bladder )*(?:catheter\w*|retention|drainage)|first (?:urinary |urethral |bladder )*catheter)\b/,
    unless: new RegExp(
      `${IRRIGATION.source.replace('clots?|', '')}|\\b(?:chest|central|venous|dialysis|nephrostom\\w+|suprapubic|cardiac|picc|umbilical)\\b|(?<!no )\\bclots?\\b`,
    ),
    outside: [[22, 60]],
    ends: [[24, 60]],
    holds: 'Urethral catheters for adults are taught as 12 to 18 Fr, and 20 to 24 Fr for irrigation',
    sources: ['foley'],
  },
  {
    id: 'usual-urinary-irrigation',
    thing: 'urinary-irrigation',
    system: 'french',
    devices: ['urinary-catheter', 'catheter'],
    named:
      /\b(?:urinary|urethral?|foleys?|bladders?|three-way|3-way|triple-way|prostate|prostatectomy|turp|turps)\b/,
    patient:
      /\b(?:three-way|3-way|triple-way|bladder (?:irrigation|wash-?outs?)|irrigat\w+ (?:the |a |his |her )?bladder)\b/,
    unless:
      /\b(?:child(?:ren)?|paediatric|pediatric|tap|taps|stopcocks?|connectors?|infants?|suction|two-way|lumen|channels?|outlets?|ports?|limbs?)\b/,
    outside: [[1, 12]],
    ends: [[1, 10]],
    holds: 'Three-way catheters for irrigation are taught as 20 to 24 Fr',
    sources: ['foley'],
  },
  {
    id: 'usual-urinary-adult',
    thing: 'urinary',
    system: 'french',
    devices: ['urinary-catheter'],
    named: URINARY,
    patient: ADULT,
    unless: /\b(?:stricture\w*|intermittent\w*|suprapubic|ureter\w*)\b/,
    outside: [
      [1, 8],
      [26, 60],
    ],
    holds: 'Urethral catheters for adults are taught as 12 to 18 Fr, and 20 to 24 Fr for irrigation',
    sources: ['foley'],
  },
  {
    id: 'usual-urinary-baby',
    thing: 'urinary',
    system: 'french',
    devices: ['urinary-catheter'],
    named: URINARY,
    patient: CHILD,
    unless: /\b(?:suprapubic|nephrostom\w+|teenage\w*|adolescents?|big|older)\b/,
    outside: [[18, 60]],
    ends: [[20, 60]],
    holds: 'Urethral catheters for children are taught as 6 to 10 Fr',
    sources: ['foley'],
  },
  {
    id: 'usual-iv-bleeding',
    thing: 'iv',
    system: 'needle-gauge',
    devices: ['cannula', 'catheter'],
    named: IV,
    patient: BLEEDING,
    outside: [[22, 30]],
    ends: [[24, 30]],
    holds: 'For bleeding and resuscitation 14 to 16 G is taught, 18 G by some',
    sources: ['ivflow', 'ivcolde', 'lb1'],
  },
  {
    id: 'usual-iv-baby',
    thing: 'iv',
    system: 'needle-gauge',
    devices: ['cannula', 'catheter'],
    named: IV,
    patient: BABY,
    outside: [[10, 18]],
    ends: [[10, 17]],
    holds: 'For infants 24 G is taught, 22 G for children',
    sources: ['ivflow', 'ivcolde'],
  },
  {
    id: 'usual-arterial',
    thing: 'arterial',
    system: 'needle-gauge',
    devices: [],
    named: ARTERIAL,
    patient: ARTERIAL,
    unless:
      /\b(?:femoral|sheaths?|introducers?|cvc|central|venous|ivs?|peripheral|other|arms?|before|resuscitation)\b/,
    outside: [[10, 16]],
    ends: [[10, 16]],
    holds: 'Arterial lines are taught as 20 G at the wrist and 18 G in the groin, finer in children',
    sources: ['artline'],
  },
  {
    id: 'usual-fistula',
    thing: 'fistula',
    system: 'needle-gauge',
    devices: [],
    named: FISTULA,
    patient: /\b(?:needles?|needling)\b/,
    unless:
      /\b(?:anaesthe\w+|anesthe\w+|lidocaine|local|inject\w*|bloods?|child(?:ren)?|numb\w*|stitch\w*|vaccin\w*|subcut\w*|heparin|epo|erythropoietin|biops\w+|spinal)\b/,
    outside: [[20, 34]],
    ends: [[22, 34]],
    holds: 'Fistula needles for dialysis are 14 to 17 G',
    sources: [],
  },
  {
    id: 'usual-dialysis-line',
    thing: 'dialysis-line',
    system: 'french',
    devices: [],
    named: /\b(?:dialysis|ha?emodialysis|ha?emofiltration) (?:lines?|catheters?)\b/,
    patient: ADULT,
    unless: CHILD,
    elsewhere: /\b(?:peritoneal|tenckhoff|piccs?|midlines?)\b/i,
    outside: [[1, 8]],
    ends: [[1, 8]],
    holds: 'Dialysis lines for adults are 11.5 to 16 Fr',
    sources: [],
  },
  {
    id: 'usual-spinal',
    thing: 'spinal',
    system: 'needle-gauge',
    devices: [],
    named: SPINAL,
    patient: SPINAL,
    unless: /\b(?:introducers?|epidurals?|tuohy|drains?|draw\w*|local)\b/,
    elsewhere: OTHER_PUNCTURE,
    outside: [[10, 18]],
    ends: [[10, 17]],
    holds: 'Spinal needles are taught as 22 to 27 G',
    sources: ['pdph2', 'pdph3'],
  },
  {
    id: 'usual-tuohy',
    thing: 'tuohy',
    system: 'needle-gauge',
    devices: [],
    named: TUOHY,
    patient: TUOHY,
    unless: /\b(?:spinals?|combined|cse|through|child(?:ren)?|infants?|neonat\w+|catheters?)\b/,
    outside: [[23, 34]],
    ends: [[23, 34]],
    holds: 'Epidural needles are 16 to 18 G in adults',
    sources: [],
  },
  {
    id: 'usual-pen',
    thing: 'pen',
    system: 'needle-gauge',
    devices: ['needle'],
    named: PEN,
    patient: /\b(?:pen needles?|insulin)\b/,
    unless: DRAWN,
    outside: [[10, 24]],
    ends: [[10, 24]],
    holds: 'Pen needles for insulin are 29 to 34 G',
    sources: ['pen'],
  },
  {
    id: 'usual-vaccine',
    thing: 'vaccine',
    system: 'needle-gauge',
    devices: ['needle'],
    named: /\b(?:vaccin\w+|immuni[sz]ations?|flu jabs?|needles?)\b/,
    patient: /\b(?:vaccines?|vaccinations?|vaccinated|vaccinating|immuni[sz]ations?|flu jabs?)\b/,
    unless: DRAWN,
    outside: [[10, 19]],
    ends: [[10, 18]],
    holds: 'Vaccines are given with needles of 22 to 27 G',
    sources: ['immunisation'],
  },
  {
    id: 'usual-intramuscular',
    thing: 'injection',
    system: 'needle-gauge',
    devices: [],
    named: INTRAMUSCULAR,
    patient: INTRAMUSCULAR,
    unless: DRAWN,
    outside: [[7, 17]],
    ends: [[7, 16]],
    holds: 'Injections into the muscle are taught with 22 to 25 G',
    sources: ['immunisation'],
  },
  {
    id: 'usual-subcutaneous',
    thing: 'injection',
    system: 'needle-gauge',
    devices: [],
    named: SUBCUTANEOUS,
    patient: SUBCUTANEOUS,
    unless: new RegExp(
      `${DRAWN.source}|\\b(?:tunnel\\w*|lines?|catheters?|fluids?|suture\\w*|stitch\\w*)\\b`,
    ),
    outside: [[7, 17]],
    ends: [[7, 16]],
    holds: 'Injections under the skin are taught with 23 to 27 G',
    sources: ['immunisation'],
  },
  {
    id: 'usual-fine-bore',
    thing: 'feeding',
    system: 'french',
    devices: ['catheter', 'drain'],
    named: FINE_BORE,
    patient: FINE_BORE,
    unless: /\b(?:drainage|drain|aspirat\w*|decompress\w*|suction|wide-bore|or|removed)\b/,
    outside: [[15, 60]],
    ends: [[18, 60]],
    holds: 'Fine-bore feeding tubes for adults are 6 to 12 Fr',
    sources: ['ng'],
  },
  {
    id: 'usual-feeding',
    thing: 'feeding-tube',
    system: 'french',
    devices: [],
    named: FEEDING,
    patient: FEEDING,
    unless: new RegExp(
      `${NOT_NASAL.source}|${DECOMPRESS.source}|\\b(?:drainage|drain|aspirat\\w*|suction)\\b`,
    ),
    outside: [[20, 60]],
    ends: [[22, 60]],
    holds: 'Fine-bore feeding tubes for adults are 6 to 12 Fr',
    sources: ['ng'],
  },
  {
    id: 'usual-decompression',
    thing: 'decompression',
    system: 'french',
    devices: [],
    named: /\b(?:stomachs?|gastric|nasogastric|ng|bowel|ileus|ryle'?s?)\b/,
    patient: DECOMPRESS,
    unless:
      /\b(?:child(?:ren)?|paediatric|pediatric|infants?|neonat\w+|newborns?|bab(?:y|ies)|chest|bladder|needles?)\b/,
    outside: [[1, 8]],
    ends: [[1, 7]],
    holds: 'Stomach tubes for decompression in adults are taught as 14 to 18 Fr',
    sources: ['ng'],
  },
  {
    id: 'usual-pigtail',
    thing: 'pigtail',
    system: 'french',
    devices: [],
    named: /\b(?:drains?|drainage|chest|pleural?|thoracic|tubes?|bore)\b/,
    patient: PIGTAIL,
    outside: [[24, 60]],
    ends: [[24, 60]],
    holds: 'Small-bore chest drains are 14 Fr or less',
    sources: ['mahmood', 'mehra', 'bauman'],
  },
  {
    id: 'usual-haemothorax',
    thing: 'haemothorax',
    system: 'french',
    devices: [],
    named: CHEST,
    patient: HAEMOTHORAX,
    unless:
      /\b(?:child(?:ren)?|paediatric|pediatric|infants?|neonat\w+|pneumothorax|pigtails?|effusions?|small)\b/,
    outside: [[1, 10]],
    ends: [[1, 8]],
    holds: 'For a haemothorax after trauma chest drains of 28 to 32 Fr are taught, wider ones in older texts',
    sources: ['bauman', 'chest2'],
  },
  thread(
    'mouth',
    MOUTH,
    [1, 10],
    'Inside the mouth 3-0 to 5-0 is taught',
    /\b(?:wounds? of|wide|face|corners?)\b/,
  ),
  thread(
    'face',
    FACE,
    [0, 10],
    'On the face 5-0 to 6-0 is taught',
    /\b(?:face-?lifts?|bones?|deep|drains?|to face|faces? (?:you|the|us|a))\b/,
  ),
  thread(
    'cornea',
    CORNEA,
    [-6, 10],
    'For the cornea 10-0 is taught',
    /\b(?:traction|bridle|lids?|conjunctiva\w*)\b/,
  ),
  thread(
    'fascia',
    FASCIA,
    [-11, -5],
    'For the abdominal wall 0 and 1 are taught',
    /\b(?:skin|subcut\w*|hernia|child(?:ren)?|infants?|vessels?|bleed\w*|laparoscop\w*)\b/,
  ),
];

/** A thread as taught for a place: common practice, no source. */
function thread(place: string, named: RegExp, outside: Band, holds: string, unless: RegExp): UsualRow {
  return {
    id: `usual-thread-${place}`,
    thing: `thread-${place}`,
    system: 'usp',
    devices: [],
    named,
    patient: named,
    unless,
    outside: [outside],
    holds,
    sources: [],
  };
}
