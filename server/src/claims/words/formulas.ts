/** Rules of conversion as people write them, and whether each holds. */
import type { System } from '../../sizes/model.ts';
import { ABBREVIATION_RULES } from './abbreviations.ts';
import { FLOW_LAWS } from './flow-laws.ts';
import { SPINAL_TIPS } from './spinal.ts';
import { TUBE_RULES } from './tube-rules.ts';
import { WORKED } from './worked.ts';

export interface FormulaRow {
  readonly id: string;
  readonly system: System;
  readonly says: string;
  readonly true: boolean;
  readonly holds: string;
  readonly standard: string;
  readonly sources: readonly string[];
}

const FRENCH = 'French is three times the outer diameter in millimetres: divide French by 3 for millimetres';
const NAMES = 'French, Charrière, Fr, Ch and FG are one scale';
const fr = (id: string, says: string, holds: boolean, rule = FRENCH): FormulaRow => ({
  id,
  system: 'french',
  says,
  true: holds,
  holds: rule,
  standard: 'definition of the French (UCUM, ISO 20696)',
  sources: ['UCUM', 'ISO20696'],
});

const sheath: Omit<FormulaRow, 'id' | 'says' | 'true'> = {
  system: 'french',
  holds: 'A sheath is sized by what it accepts: its French is the inner diameter, and the outside is larger',
  standard: 'teaching sources on introducer sheaths',
  sources: ['thoracic', 'learnir', 'irblog'],
};
const tube: Omit<FormulaRow, 'id' | 'says' | 'true'> = {
  system: 'tube-id',
  holds: 'A single-lumen tracheal tube is sized by its inner diameter in millimetres',
  standard: 'airway size references',
  sources: ['ett', 'gupta'],
};

const suction: Omit<FormulaRow, 'id' | 'says' | 'true'> = {
  system: 'tube-id',
  holds:
    'The usual rule: the French of a suction catheter is at most twice the inner diameter of the tube in millimetres; local practice decides',
  standard: 'airway size references',
  sources: ['suctionrule'],
};
const doubleLumen: Pick<FormulaRow, 'holds' | 'standard' | 'sources'> = {
  holds: 'A double-lumen tube is sized in French by its outer diameter, unlike single-lumen tubes',
  standard: 'airway size references',
  sources: ['gupta'],
};
const wire: Pick<FormulaRow, 'holds' | 'standard' | 'sources'> = {
  holds: 'Guidewires are named in inches: 0.014 in is 0.36 mm and 0.035 in is 0.89 mm',
  standard: 'teaching sources on guidewires',
  sources: ['northcutt', 'irblog'],
};

const things = (id: string, system: System, says: string): FormulaRow => ({
  id,
  system,
  says,
  true: false,
  holds: 'Needles are sized by gauge; urinary catheters, drains and feeding tubes in French',
  standard: 'ISO 9626, ISO 20696',
  sources: ['ISO9626-scope', 'ISO20696'],
});

const thou: Pick<FormulaRow, 'holds' | 'standard' | 'sources'> = {
  holds: 'A thou is a thousandth of an inch, 0.0254 mm',
  standard: 'definition of the inch',
  sources: ['GNU'],
};

/** A number with the unit of the other scale. */
const scaled = (id: string, system: System, says: string, holds: string): FormulaRow => ({
  id,
  system,
  says,
  true: false,
  holds,
  standard: 'ISO 9626 and the definition of the French',
  sources: ['ISO9626-scope', 'UCUM'],
});
export const FORMULAS: readonly FormulaRow[] = [
  ...SPINAL_TIPS,
  ...ABBREVIATION_RULES,
  ...TUBE_RULES,
  fr('mm-is-french-over-3', 'millimetres are French divided by 3', true),
  fr('mm-is-french-times-3', 'millimetres are French multiplied by 3', false),
  fr('french-is-mm-times-3', 'French is millimetres multiplied by 3', true),
  fr('french-is-mm-over-3', 'French is millimetres divided by 3', false),
  fr('french-over-other', 'millimetres are French divided by a number other than 3', false),
  fr('french-times-other', 'French is millimetres multiplied by a number other than 3', false),
  fr('french-plus', 'French and millimetres differ by a number added', false),
  fr('french-is-circumference', 'French is the circumference in millimetres', false),
  fr('french-is-diameter-mm', 'French is the diameter in millimetres', false),
  fr('french-is-radius', 'French is three times the radius', false),
  fr('french-is-inner', 'French measures the inner diameter', false),
  fr('french-is-length', 'French measures the length', false),
  { id: 'tube-is-length', says: 'a tracheal tube is sized by its length', true: false, ...tube },
  {
    id: 'gut-is-thicker',
    system: 'usp',
    says: 'gut is the thicker thread in one USP size',
    true: true,
    holds:
      'In one USP size gut is a step thicker than other threads: 3-0 gut is metric 3, 3-0 silk or synthetic metric 2',
    standard: 'USP <861>',
    sources: ['USP29-861', 'thieme', 'jpvet'],
  },
  {
    id: 'gut-is-thinner',
    system: 'usp',
    says: 'gut is the thinner thread in one USP size',
    true: false,
    holds:
      'In one USP size gut is a step thicker than other threads: 3-0 gut is metric 3, 3-0 silk or synthetic metric 2',
    standard: 'USP <861>',
    sources: ['USP29-861', 'thieme', 'jpvet'],
  },
  {
    id: 'gut-is-as-thick',
    system: 'usp',
    says: 'gut is as thick as other threads in one USP size',
    true: false,
    holds:
      'In one USP size gut is a step thicker than other threads: 3-0 gut is metric 3, 3-0 silk or synthetic metric 2',
    standard: 'USP <861>',
    sources: ['USP29-861', 'thieme', 'jpvet'],
  },
  {
    id: 'double-lumen-is-inner',
    system: 'french',
    says: 'a double-lumen tube is sized by its inner diameter',
    true: false,
    ...doubleLumen,
  },
  {
    id: 'double-lumen-is-outer',
    system: 'french',
    says: 'a double-lumen tube is sized by its outer diameter',
    true: true,
    ...doubleLumen,
  },
  {
    id: 'wire-in-inches',
    system: 'wire-inch',
    says: 'guidewires are sized in inches',
    true: true,
    ...wire,
  },
  {
    id: 'wire-in-other',
    system: 'wire-inch',
    says: 'guidewires are sized on another scale',
    true: false,
    ...wire,
  },
  things('needles-in-french', 'needle-gauge', 'needles are sized in French'),
  things('catheters-in-gauge', 'french', 'urinary catheters, drains or feeding tubes are sized by gauge'),
  {
    id: 'gauge-is-length',
    system: 'needle-gauge',
    says: 'the gauge gives the length of a needle',
    true: false,
    holds: 'Needle gauge gives the outer diameter; length is a number of its own',
    standard: 'ISO 9626',
    sources: ['ISO9626-scope', 'nomchart'],
  },
  { id: 'sheath-is-outer', says: 'the French of a sheath is its outer diameter', true: false, ...sheath },
  { id: 'sheath-is-inner', says: 'the French of a sheath is its inner diameter', true: true, ...sheath },
  { id: 'tube-is-outer', says: 'a tracheal tube is sized by its outer diameter', true: false, ...tube },
  { id: 'tube-is-inner', says: 'a tracheal tube is sized by its inner diameter', true: true, ...tube },
  fr('french-step', 'one French is a third of a millimetre', true),
  fr(
    'french-step-other',
    'one French is something other than a third of a millimetre',
    false,
    'One French is a third of a millimetre',
  ),
  fr(
    'french-around',
    'one French is about 1.05 mm around',
    true,
    'One French is a third of a millimetre in diameter, about 1.05 mm around',
  ),
  fr(
    'french-around-other',
    'this is what one French measures around',
    false,
    'One French is a third of a millimetre in diameter, about 1.05 mm around',
  ),
  {
    id: 'inch-is-25.4',
    system: 'inch',
    says: 'an inch is 25.4 mm',
    true: true,
    holds: 'An inch is exactly 25.4 mm',
    standard: 'definition of the inch',
    sources: ['GNU'],
  },
  {
    id: 'inch-is-other',
    system: 'inch',
    says: 'an inch is something other than 25.4 mm',
    true: false,
    holds: 'An inch is exactly 25.4 mm',
    standard: 'definition of the inch',
    sources: ['GNU'],
  },
  { id: 'thou-of-inch', system: 'wire-inch', says: 'a thou is a thousandth of an inch', true: true, ...thou },
  {
    id: 'thou-of-other',
    system: 'wire-inch',
    says: 'a thou is something other than a thousandth of an inch',
    true: false,
    ...thou,
  },
  {
    id: 'wire-inches-as-mm',
    system: 'wire-inch',
    says: 'a guidewire is a few hundredths of a millimetre thick',
    true: false,
    holds: 'Guidewires are named in inches: 0.014 in is 0.36 mm and 0.035 in is 0.89 mm',
    standard: 'teaching sources on guidewires',
    sources: ['northcutt', 'irblog'],
  },
  {
    id: 'tube-in-french',
    system: 'tube-id',
    says: 'a tracheal tube has its size in French',
    true: false,
    holds: 'A single-lumen tracheal tube is sized by its inner diameter in millimetres, not in French',
    standard: 'airway size references',
    sources: ['ett', 'gupta'],
  },
  scaled(
    'needle-in-french',
    'needle-gauge',
    'a needle has its size in French',
    'Needles are sized by gauge: 19 G is 1.1 mm, 19 Fr would be 6.3 mm',
  ),
  scaled(
    'cannula-in-french',
    'needle-gauge',
    'an intravenous cannula has its size in French',
    'Intravenous cannulas are sized by gauge: 18 G is 1.3 mm, 18 Fr would be 6 mm',
  ),
  {
    id: 'catheter-in-gauge',
    system: 'french',
    says: 'a bladder or stomach catheter has its size in gauge',
    true: false,
    holds: 'Urinary and nasogastric catheters are sized in French, not in gauge',
    standard: 'ISO 20696 and the definition of the French',
    sources: ['ISO20696', 'UCUM'],
  },
  scaled(
    'two-units',
    'french',
    'one number is gauge and French at once',
    'Gauge and French are different scales: 16 G is 1.6 mm, 16 Fr is 5.3 mm',
  ),
  {
    id: 'zeros-as-written',
    system: 'usp',
    says: 'the figure before “-0” counts the zeros',
    true: true,
    holds: 'The figure before “-0” counts the zeros: 2-0 is 00',
    standard: 'transcription style guides',
    sources: ['BOS'],
  },
  {
    id: 'writings-differ',
    system: 'usp',
    says: 'two ways to write one size are two sizes',
    true: false,
    holds: '2-0, 2/0 and 00 are one size; so are 0, 1-0 and 1/0',
    standard: 'transcription style guides',
    sources: ['BOS'],
  },
  fr('french-names-differ', 'the several names of one scale are several sizes', false, NAMES),
  {
    id: 'steps-as-counted',
    system: 'usp',
    says: 'these two threads are so many sizes apart',
    true: true,
    holds: 'USP sizes run 2, 1, 0, 2-0, 3-0, 4-0 and so on, each of them one step',
    standard: 'USP <861>',
    sources: ['USP29-861'],
  },
  {
    id: 'steps-miscounted',
    system: 'usp',
    says: 'these two threads are so many sizes apart',
    true: false,
    holds: 'USP sizes run 2, 1, 0, 2-0, 3-0, 4-0 and so on, each of them one step',
    standard: 'USP <861>',
    sources: ['USP29-861'],
  },
  {
    id: 'usp-is-needle',
    system: 'usp',
    says: 'the size of a suture is the size of its needle',
    true: false,
    holds: 'The USP size is the diameter of the thread; the needle is described apart from it',
    standard: 'USP <861>',
    sources: ['USP29-861'],
  },
  {
    id: 'zeros-miscounted',
    system: 'usp',
    says: 'the figure before “-0” is not the number of zeros',
    true: false,
    holds: 'The figure before “-0” counts the zeros: 2-0 is 00',
    standard: 'transcription style guides',
    sources: ['BOS'],
  },
  ...FLOW_LAWS,
  {
    id: 'gauge-is-inner',
    system: 'needle-gauge',
    says: 'gauge measures the inner diameter',
    true: false,
    holds: 'Needle gauge goes by the outer diameter; the bore depends on the wall',
    standard: 'ISO 9626',
    sources: ['ISO9626-scope'],
  },
  {
    id: 'gauge-is-linear',
    system: 'needle-gauge',
    says: 'gauge numbers are equal steps of width',
    true: false,
    holds:
      'Gauge numbers come from a table and their steps are not equal: 14 G is about 2.11 mm and 28 G about 0.36 mm',
    standard: 'nominal needle gauge chart',
    sources: ['nomchart'],
  },
  {
    id: 'tube-by-age',
    system: 'tube-id',
    says: 'a child’s tube is a quarter of the age plus 4 uncuffed, plus 3.5 cuffed',
    true: true,
    holds:
      'A first estimate for a child’s tube is age/4 + 4 uncuffed, age/4 + 3.5 cuffed; local practice decides',
    standard: 'airway size references',
    sources: ['ett'],
  },
  {
    id: 'tube-by-age-other',
    system: 'tube-id',
    says: 'a child’s tube goes by another sum of the age',
    true: false,
    holds:
      'A first estimate for a child’s tube is age/4 + 4 uncuffed, age/4 + 3.5 cuffed; local practice decides',
    standard: 'airway size references',
    sources: ['ett'],
  },
  { id: 'suction-by-tube', says: 'a suction catheter is at most twice the tube', true: true, ...suction },
  { id: 'suction-by-tube-other', says: 'a suction catheter goes by another rule', true: false, ...suction },
  { id: 'suction-over-tube', says: 'this suction catheter suits this tube', true: false, ...suction },
  ...WORKED,
  {
    id: 'colour-is-one-gauge',
    system: 'needle-gauge',
    says: 'one colour is one gauge on needles and on IV cannulas',
    true: false,
    holds:
      'Needles and IV cannulas have a colour code each, and the two differ: pink is an 18 G needle and a 20 G cannula',
    standard: 'ISO 6009, ISO 10555-5',
    sources: ['ISO10555-5'],
  },
  {
    id: 'gauge-is-awg',
    system: 'needle-gauge',
    says: 'needle gauge and American Wire Gauge give the same diameters',
    true: false,
    holds: 'Needle gauge has a table of its own: an 18 G needle is about 1.27 mm, 18 AWG is 1.02 mm',
    standard: 'nominal needle gauge chart; AWG formula (GNU Units)',
    sources: ['nomchart', 'GNU'],
  },
  {
    id: 'gauge-is-measure',
    system: 'needle-gauge',
    says: 'the gauge is the diameter in a unit of length',
    true: false,
    holds:
      'Gauge numbers come from a table and rise as needles get thinner: 18 G is about 1.27 mm, 25 G about 0.5 mm',
    standard: 'nominal needle gauge chart',
    sources: ['nomchart'],
  },
  {
    id: 'gauge-is-reciprocal',
    system: 'needle-gauge',
    says: 'a gauge is one over the diameter',
    true: false,
    holds: 'Gauge numbers come from a table: 20 G is about 0.036 in, not 1/20 in',
    standard: 'nominal needle gauge chart',
    sources: ['nomchart'],
  },
  {
    id: 'metric-is-tenths',
    system: 'ep-metric',
    says: 'the metric number is the diameter in tenths of a millimetre',
    true: true,
    holds: 'The metric number is the least diameter in tenths of a millimetre',
    standard: 'European Pharmacopoeia',
    sources: ['PhEur-table', 'chu'],
  },
  {
    id: 'metric-is-other',
    system: 'ep-metric',
    says: 'the metric number is the diameter in another unit',
    true: false,
    holds: 'The metric number is the least diameter in tenths of a millimetre',
    standard: 'European Pharmacopoeia',
    sources: ['PhEur-table', 'chu'],
  },
];
