/**
 * Statements as published, in our words, each with its source: handbook statements raise nothing; the mistakes that
 * published pages print are contradicted. Keys in brackets are those of the table of sources in `sizes`.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/src/course/analyse.ts';

const contradictions = (text: string) =>
  analyse(text).findings.filter((finding) => finding.kind === 'contradiction');

interface Published {
  readonly source: string;
  readonly text: string;
}

const STATEMENTS: readonly Published[] = [
  { source: 'UCUM, unit [Ch]', text: 'One Charrière is a third of a millimetre.' },
  {
    source: 'ISO 20696:2018, 5.5.2, note',
    text: 'The French size of a catheter is three times its outer diameter in millimetres.',
  },
  {
    source: 'ISO 20696:2018, 5.5.2: nominal sizes are rounded up to 0.1 mm',
    text: 'A 14 Fr urethral catheter is 4.7 mm across, and a 16 Fr is 5.4 mm.',
  },
  { source: 'DICOM CID 3510, catheter size units', text: 'A catheter may be given as 6 Fr or as 2 mm.' },
  {
    source: 'Rowlett, How Many?, wire gauges [BWG2]',
    text: 'Gauge numbers run backwards: the higher the gauge number, the thinner the wire.',
  },
  {
    source: 'nominal needle gauge chart [nomchart]',
    text: 'A 21 G needle has an outer diameter of 0.8192 mm and an inner diameter of 0.514 mm.',
  },
  {
    source: 'nominal needle gauge chart [nomchart]',
    text: 'The outer diameter of an 18 G needle is 0.050 inch.',
  },
  {
    source: 'ISO 9626:2016, scope',
    text: 'Needle tubing covers 3.4 mm (10 G) down to 0.18 mm (34 G).',
  },
  {
    source: 'Ph. Eur. table as reproduced [PhEur-table]',
    text: 'Metric 3 silk is 2-0, metric 2 silk is 3-0 and metric 1.5 silk is 4-0.',
  },
  {
    source: 'decimetric rule, Chu 1997 [chu]',
    text: 'The metric number is the least diameter in tenths of a millimetre.',
  },
  {
    source: 'USP 29-NF 24, monograph Absorbable Surgical Suture [USP29-abs]',
    text: 'Absorbable sutures: plain gut, chromic gut, polyglactin 910.',
  },
  {
    source: 'USP 32-NF 27, monograph Nonabsorbable Surgical Suture [USP32-nonabs]',
    text: 'Nonabsorbable sutures include silk, linen, polyester and stainless steel.',
  },
  {
    source: 'veterinary supplier note [jpvet]',
    text: 'At the same number gut is the thicker thread: 3-0 chromic gut is metric 3 and 3-0 nylon is metric 2.',
  },
  {
    source: 'Univ. of Saskatchewan, suture sizes [wcvm]',
    text: 'The more zeros a suture has the smaller it is, so 4-0 is smaller than 2-0; number 2 suture is larger than number 1.',
  },
  {
    source: 'Book of Style, sutures [BOS]',
    text: 'A suture written 2-0 is also written 00; a size 7 suture is thick and a 7-0 is fine.',
  },
  {
    source: 'IV catheter charts after ISO 10555-5 [ivcolde, hilbert]',
    text: 'IV cannulas: 14 G orange, 16 G grey, 17 G white, 18 G green, 20 G pink, 22 G blue, 24 G yellow, 26 G violet.',
  },
  {
    source: 'ISO 6009 colours as listed in a national notice [JPneedle]',
    text: 'Hypodermic needle hubs: 18 G pink, 19 G cream, 21 G green, 23 G blue, 25 G orange, 27 G grey.',
  },
  {
    source: 'Hilbert-Carius and zur Nieden 2015, Table 1 [hilbert]',
    text: 'Flow falls in the order 14 G, 16 G, 18 G, 20 G, 22 G: fluid runs faster through a 14 G than through a 22 G.',
  },
  {
    source: 'Starship guideline, arterial lines [starshipA]',
    text: 'Arterial lines: under 3 kg a 24 G, up to 50 kg a 22 G, then a 20 G.',
  },
  {
    source: 'interventional teaching texts [learnir, thoracic]',
    text: 'The French size of an introducer sheath is its inner diameter: a 6 Fr sheath takes a 6 Fr catheter.',
  },
  {
    source: 'radiology textbook chapter [radkey]',
    text: 'A 19 G needle, a 3 Fr dilator, a 0.038 in wire and 1 mm are all about the same.',
  },
  {
    source: 'RSNA primer on guidewires [northcutt]',
    text: 'A 0.035 in wire is 0.89 mm thick, a 0.018 in wire 0.46 mm.',
  },
  {
    source: 'airway size references [ett]',
    text: 'An endotracheal tube is sized by its inner diameter: 7.5 mm for a woman, 8.0 mm for a man.',
  },
  {
    source: 'Gupta and Gupta 2019, doi:10.4097/kja.d.18.00056',
    text: 'Double-lumen tubes are sized in French by the outside, for example 37 Fr.',
  },
  {
    source: 'McPherson et al. 2009, doi:10.1213/ane.0b013e3181966451',
    text: 'Flow rises with the bore, though by less than the fourth power of the radius: a 16 G flows faster than an 18 G.',
  },
  {
    source: 'chest drain trials and reviews [bauman, mehra]',
    text: 'A 14 Fr pigtail is a small-bore chest drain; a 28 Fr or 32 Fr chest tube is large-bore.',
  },
  {
    source: 'immunization guidance [cdcneedle, auneedle]',
    text: 'For the deltoid take a 22 to 25 G needle of 25 mm; a 25 G is finer than a 22 G.',
  },
  {
    source: 'needle point teaching [medscapeP, residentnet]',
    text: 'A conventional cutting needle has its third edge on the inner curve, a reverse cutting needle on the outer.',
  },
  {
    source: 'needle point teaching [surgimedic]',
    text: 'A taper point needle is round in section and has no cutting edge.',
  },
  {
    source: 'Foley colour charts, trade convention [foley]',
    text: 'Foley valve colours: 12 Fr white, 14 Fr green, 16 Fr orange, 18 Fr red.',
  },
];

describe('published statements raise nothing', () => {
  test.each(STATEMENTS)('$source', ({ text }) => {
    expect(contradictions(text).map((finding) => `${finding.says} ${finding.holds}`)).toEqual([]);
  });
});

const MISTAKES: readonly Published[] = [
  {
    source: 'encyclopedia article on thread sizes [dewiki]',
    text: 'A 2-0 polypropylene suture is metric 2.5.',
  },
  {
    source: 'encyclopedia article on thread sizes [dewiki]',
    text: 'Suture size 1-0 is thicker than size 0.',
  },
  { source: 'emergency handbook [lb3]', text: 'A 20 G needle is 1/20 inch across.' },
  { source: 'emergency handbook [lb3]', text: 'An 8 Fr catheter measures 3.8 mm.' },
  { source: 'emergency handbook [lb3]', text: 'The 14 G IV cannula is red.' },
  { source: 'pharmacy lexicon [bdsoft]', text: 'A 25 G hypodermic needle has a brown hub.' },
  { source: 'quiz page on cannula colours', text: 'A 22 G IV cannula is grey.' },
  { source: 'quiz page on cannula colours', text: 'A 20 G IV cannula is blue.' },
  { source: 'quiz page on cannula colours', text: 'An 18 G IV cannula is pink.' },
  { source: 'supplier page on pins', text: 'A 0.045 in wire is 0.045 mm.' },
  {
    source: 'open teaching repository [oneskill]',
    text: 'A conventional cutting needle has its edge on the outer curve.',
  },
  {
    source: 'open teaching repository [oneskill]',
    text: 'A reverse cutting needle has its edge on the inner curve.',
  },
  { source: 'textbook chapter [abdkey]', text: 'Cotton suture is absorbable.' },
  {
    source: 'nursing page on catheter sizes [foley]',
    text: 'The French size of a catheter is its circumference in millimetres.',
  },
  {
    source: 'encyclopedia article on gauges [stubsac]',
    text: 'The gauge is the reciprocal of the diameter in inches.',
  },
  {
    source: 'question page on needles [innermyth]',
    text: 'Needle gauge is a measure of the inner diameter.',
  },
  {
    source: 'question page on needles [innermyth]',
    text: 'The gauge refers to the inner measurement of the needle.',
  },
  {
    source: 'encyclopedia copies on the French scale [jfbc]',
    text: 'A 1 French instrument has a circumference of a third of a millimetre.',
  },
  { source: 'case reports with the wrong unit', text: 'A 19 French needle was used for the puncture.' },
  { source: 'case reports with two units', text: 'The bladder was drained with a 16 G Fr Foley catheter.' },
  { source: 'wire pages that lose the unit', text: 'A coronary guidewire is 0.014 mm in diameter.' },
  { source: 'case reports with the wrong unit', text: 'We passed an 8 French endotracheal tube.' },
];

/** Printed mistakes on which sources or writers leave room: silent on purpose. */
const LEFT_ALONE: readonly Published[] = [
  {
    source: 'open teaching repository [oneskill]: 2-0 as 0.30 to 0.39 mm, whose lower end holds',
    text: 'A 2-0 silk suture is 0.30 to 0.39 mm thick.',
  },
  {
    source: '[lb3]: 1.33 mm against 1.0 to 1.1 mm, within half a step of each other',
    text: 'A 4 Fr catheter is the same as a 20 G cannula.',
  },
  {
    source: '[ivcolde]: a colour without a device',
    text: 'A green hub always means 18 G, everywhere.',
  },
  {
    source: '[sinai]: two flow columns that disagree; flow has no single number',
    text: 'A 16 G gives 220 ml/min, a litre in 2.5 minutes.',
  },
  {
    source: '[lb2]: 18 G counted as large-bore by some',
    text: 'An 18 G is a large-bore cannula.',
  },
];

describe('published mistakes', () => {
  test.each(MISTAKES)('contradicted: $text ($source)', ({ text }) => {
    expect(contradictions(text).length).toBeGreaterThan(0);
  });
  test.each(LEFT_ALONE)('left alone: $text ($source)', ({ text }) => {
    expect(contradictions(text)).toEqual([]);
  });
});
