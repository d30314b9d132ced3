/**
 * Second readings of values that ship: the same sizes as another source prints them, kept apart from the tables that
 * ship. A test compares the two; where a second source differs, `differs` says so and the difference is listed on the
 * page of values.
 */
import type { Lens, System } from '../src/sizes/model.ts';

export interface Reading {
  readonly system: System;
  readonly written: string;
  readonly lens?: Lens;
  /** As printed, mm. */
  readonly min: number;
  readonly max: number;
  /** Why it does not agree with the value that ships; absent when it does. */
  readonly differs?: string;
}

export interface SecondTable {
  readonly title: string;
  readonly source: string;
  readonly readings: readonly Reading[];
}

type Printed = readonly [written: string, min: number, max: number, differs?: string];
const read = (system: System, lens: Lens, rows: readonly Printed[]): Reading[] =>
  rows.map(([written, min, max, differs]) => ({
    system,
    written,
    lens,
    min,
    max,
    ...(differs === undefined ? {} : { differs }),
  }));

const one = (written: string, mm: number): Printed => [written, mm, mm];
const silk: Lens = { material: 'silk' };
const gut: Lens = { material: 'gut' };
const needle: Lens = { device: 'needle' };
const cannula: Lens = { device: 'cannula' };

export const SECOND_TABLES: readonly SecondTable[] = [
  {
    title: 'Suture diameters, German Wikipedia',
    source: 'dewiki',
    readings: read('usp', silk, [
      ['11-0', 0.01, 0.019],
      ['10-0', 0.02, 0.029],
      ['9-0', 0.03, 0.039],
      ['8-0', 0.04, 0.049],
      ['7-0', 0.05, 0.059, 'upper limit 0.059; two other tables print 0.069'],
      ['6-0', 0.07, 0.079, 'upper limit 0.079; two other tables print 0.099'],
      ['5-0', 0.1, 0.149],
      ['4-0', 0.15, 0.199],
      ['3-0', 0.2, 0.249],
      ['0', 0.35, 0.399],
      ['1', 0.4, 0.499],
      ['2', 0.5, 0.599],
      ['3', 0.6, 0.699],
      ['4', 0.6, 0.699],
      ['5', 0.7, 0.799],
      ['6', 0.8, 0.899],
      ['7', 0.9, 0.999],
      ['8', 1, 1.099],
    ]),
  },
  {
    title: 'Nonabsorbable sutures, Japanese standard of 2015',
    source: 'JP2015',
    readings: read('usp', silk, [
      ['12-0', 0.001, 0.009],
      ['11-0', 0.01, 0.019],
      ['10-0', 0.02, 0.029],
      ['9-0', 0.03, 0.039],
      ['8-0', 0.04, 0.049],
      ['7-0', 0.05, 0.069],
      ['6-0', 0.07, 0.099],
      ['5-0', 0.1, 0.149],
      ['4-0', 0.15, 0.199],
      ['3-0', 0.2, 0.269, 'Japan ends 3-0 at 0.269; USP and the European Pharmacopoeia at 0.249'],
      ['2-0', 0.27, 0.349, 'Japan begins 2-0 at 0.270; USP and the European Pharmacopoeia at 0.300'],
      ['0', 0.35, 0.399],
      ['1', 0.4, 0.499],
      ['2', 0.5, 0.599],
      ['3', 0.6, 0.699],
      ['4', 0.6, 0.699],
      ['5', 0.7, 0.799],
    ]),
  },
  {
    title: 'Sutures 2-0 to 0, physician teaching page',
    source: 'jpblog',
    readings: read('usp', silk, [
      ['4-0', 0.15, 0.199],
      [
        '2-0',
        0.3,
        0.339,
        'the upper limit of USP; the value that ships ends at that of the European Pharmacopoeia',
      ],
      ['0', 0.35, 0.399],
    ]),
  },
  {
    title: 'Suture diameters printed in a teaching repository',
    source: 'oneskill',
    readings: read('usp', silk, [
      ['2-0', 0.3, 0.39, 'prints 0.30–0.39; the pharmacopoeias end at 0.339 and 0.349'],
      ['3-0', 0.2, 0.29, 'prints 0.20–0.29; the pharmacopoeias end at 0.249'],
    ]),
  },
  {
    title:
      'Gut, by the metric number that a learning module prints (number = tenths of a millimetre at least)',
    source: 'thieme',
    readings: read('usp', gut, [
      ['6-0', 0.1, 0.149],
      ['5-0', 0.15, 0.199],
      ['4-0', 0.2, 0.249],
    ]),
  },
  {
    title: 'Hypodermic needles, designated metric size, Japanese notice on colour codes',
    source: 'JPneedle',
    readings: read('needle-gauge', needle, [
      one('14', 2.1),
      one('15', 1.8),
      one('16', 1.6),
      one('17', 1.4),
      one('18', 1.2),
      one('19', 1.1),
      one('20', 0.9),
      one('21', 0.8),
      one('22', 0.7),
      one('23', 0.6),
      one('24', 0.55),
      one('25', 0.5),
      one('26', 0.45),
      one('27', 0.4),
      one('29', 0.33),
      one('30', 0.3),
    ]),
  },
  {
    title: 'Hypodermic needles, outer diameter by catalogue',
    source: 'catspot',
    readings: read('needle-gauge', needle, [one('24', 0.566), one('25', 0.515), one('26', 0.464)]),
  },
  {
    title: 'Widest and finest needle, trauma teaching page',
    source: 'tpro',
    readings: read('needle-gauge', needle, [one('7', 4.57), one('34', 0.18)]),
  },
  {
    title: 'Over-needle IV catheters, outer diameter, emergency-medicine article',
    source: 'hilbert',
    readings: read('needle-gauge', cannula, [
      one('14', 2.2),
      one('16', 1.7),
      one('17', 1.5),
      one('18', 1.3),
      one('20', 1.1),
      one('22', 0.9),
      one('24', 0.7),
    ]),
  },
  {
    title: 'French of suction catheters, Japanese notice on colour codes',
    source: 'JPneedle',
    readings: read('french', { device: 'suction-catheter' }, [
      one('5', 1.67),
      one('6', 2),
      one('7.5', 2.5),
      one('8', 2.67),
      one('9', 3),
      one('10', 3.33),
      one('12', 4),
      one('14', 4.67),
      one('15', 5),
      one('16', 5.33),
      one('18', 6),
      one('20', 6.67),
    ]),
  },
  {
    title: 'Urethral catheters, nominal diameter rounded up to 0.1 mm',
    source: 'ISO20696',
    readings: read('french', { device: 'urinary-catheter' }, [
      one('8', 2.7),
      one('10', 3.4),
      one('12', 4),
      one('14', 4.7),
      one('16', 5.4),
      one('18', 6),
      one('20', 6.7),
      one('22', 7.4),
      one('24', 8),
    ]),
  },
  {
    title: 'Bench diameters of orthopaedic wire sold as 18-gauge by three suppliers',
    source: 'pfisterer',
    readings: read('wire-gauge', { device: 'steel-wire' }, [
      ['18', 0.99, 0.99, 'one supplier’s wire is thinner than the American gauge'],
      one('18', 1.19),
      one('18', 1.2),
    ]),
  },
];
