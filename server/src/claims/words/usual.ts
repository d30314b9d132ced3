/**
 * Sizes as taught for a kind of patient. They are habits, not standards: a finding on them is a soft hint, and only
 * far outside. Sources as cited in each row; rows of one source only are left out.
 */
import type { Device, System } from '../../sizes/model.ts';

export interface UsualRow {
  readonly id: string;
  readonly system: System;
  readonly devices: readonly Device[];
  /** Words for the device, when the size does not carry one. */
  readonly named: RegExp;
  readonly patient: RegExp;
  /** Values no text read teaches for this patient, ends included. */
  readonly outside: readonly [number, number];
  /** With one of these words the size is for something else: "draw it up with …". */
  readonly unless?: RegExp;
  readonly holds: string;
  readonly sources: readonly string[];
}

const ADULT =
  /\b(?:adults?|grown-ups?|grown (?:man|men|woman|women)|(?:big |tall |average |small )?(?:man|men|woman|women)|males?|females?)\b/;
const BABY = /\b(?:newborns?|neonates?|neonatal|preterms?|premature|infants?|bab(?:y|ies))\b/;
const BLEEDING =
  /\b(?:trauma|bleed(?:ing|er|ers|s)?|ha?emorrhag\w+|shock|resuscitation|massive transfusion|major transfusion)\b/;
const IV = /\b(?:cannula[es]?|cannulas|iv|ivs|catheters?|access|lines?|drip|bag|fluids?|volume|litres?)\b/;
const TRACHEAL = /\b(?:tracheal|endotracheal|ett|et tubes?|airway tubes?|intubat\w+)\b/;
const URINARY = /\b(?:urinary|urethral|foley|bladder|catheteri[sz]\w+)\b/;

/** A wide needle draws a drug up, and another one gives it. */
const DRAWN =
  /\b(?:draw\w*|drew|aspirat\w+|withdraw\w*|vials?|ampoules?|bottles?|mix\w*|reconstitut\w+|filter|blunt|cannulas?|cannulae|drip|infusion|infusions)\b/;

export const USUAL: readonly UsualRow[] = [
  {
    id: 'usual-tracheal-adult',
    system: 'tube-id',
    devices: ['tracheal-tube'],
    named: TRACHEAL,
    patient: ADULT,
    outside: [1, 5],
    holds: 'Tracheal tubes for adults are taught as 7.0 to 9.0 mm; 5.0 mm and less are sizes for children',
    sources: ['ett'],
  },
  {
    id: 'usual-tracheal-baby',
    system: 'tube-id',
    devices: ['tracheal-tube'],
    named: TRACHEAL,
    patient: BABY,
    outside: [6, 12],
    holds: 'Tracheal tubes of 6.0 mm and more are sizes for large children and adults',
    sources: ['ett'],
  },
  {
    id: 'usual-urinary-adult',
    system: 'french',
    devices: ['urinary-catheter'],
    named: URINARY,
    patient: ADULT,
    outside: [26, 60],
    holds: 'Urethral catheters for adults are taught as 12 to 18 Fr, and 20 to 24 Fr for irrigation',
    sources: ['foley'],
  },
  {
    id: 'usual-urinary-baby',
    system: 'french',
    devices: ['urinary-catheter'],
    named: URINARY,
    patient:
      /\b(?:child(?:ren)?|children's|toddlers?|paediatric|pediatric|newborns?|infants?|bab(?:y|ies))\b/,
    outside: [20, 60],
    holds: 'Urethral catheters for children are taught as 6 to 10 Fr',
    sources: ['foley'],
  },
  {
    id: 'usual-iv-bleeding',
    system: 'needle-gauge',
    devices: ['cannula', 'catheter'],
    named: IV,
    patient: BLEEDING,
    outside: [22, 30],
    holds: 'For bleeding and resuscitation 14 to 16 G is taught, 18 G by some',
    sources: ['ivflow', 'ivcolde', 'lb1'],
  },
  {
    id: 'usual-iv-baby',
    system: 'needle-gauge',
    devices: ['cannula', 'catheter'],
    named: IV,
    patient: BABY,
    outside: [10, 18],
    holds: 'For infants 24 G is taught, 22 G for children',
    sources: ['ivflow', 'ivcolde'],
  },
  {
    id: 'usual-spinal',
    system: 'needle-gauge',
    devices: [],
    named: /\b(?:spinals?|spinal needles?|lumbar punctures?|intrathecal)\b/,
    patient: /\b(?:spinals?|spinal needles?|lumbar punctures?|intrathecal)\b/,
    outside: [10, 18],
    holds: 'Spinal needles are taught as 22 to 27 G',
    sources: ['pdph2', 'pdph3'],
  },
  {
    id: 'usual-pen',
    system: 'needle-gauge',
    devices: ['needle'],
    named: /\b(?:pen needles?|insulin|pens?)\b/,
    patient: /\b(?:pen needles?|insulin)\b/,
    unless: DRAWN,
    outside: [10, 24],
    holds: 'Pen needles for insulin are 29 to 34 G',
    sources: ['pen'],
  },
  {
    id: 'usual-vaccine',
    system: 'needle-gauge',
    devices: ['needle'],
    named: /\b(?:vaccin\w+|immuni[sz]ations?|flu jabs?|needles?)\b/,
    patient: /\b(?:vaccines?|vaccinations?|vaccinated|vaccinating|immuni[sz]ations?|flu jabs?)\b/,
    unless: DRAWN,
    outside: [10, 19],
    holds: 'Vaccines are given with needles of 22 to 27 G',
    sources: ['immunisation'],
  },
  {
    id: 'usual-fine-bore',
    system: 'french',
    devices: ['catheter', 'drain'],
    named: /\b(?:fine-bore|fine bore|finebore)\b/,
    patient: /\b(?:fine-bore|fine bore|finebore)\b/,
    unless: /\b(?:drainage|drain|aspirat\w*|decompress\w*|suction|wide-bore|or|removed)\b/,
    outside: [15, 60],
    holds: 'Fine-bore feeding tubes for adults are 6 to 12 Fr',
    sources: ['ng'],
  },
];
