/**
 * Words that put a size in a class, and the sizes that every text puts in it or leaves out.
 * `member` and `outside` are closed ranges of the system's values; what lies between is left alone, since texts differ.
 * Sources: peripheral large-bore is 14 to 16 G in all texts read, 18 G in some (sources lb1, lb2, lb3);
 * fine and heavy threads and needles: common practice, no source, and only the far ends are judged;
 * chest drains: small-bore 14 Fr or less, large-bore more than 20 Fr (sources mahmood, mehra, bauman).
 */
import type { Device, System } from '../../sizes/model.ts';
import { OTHER_PUNCTURE } from './usual.ts';

export interface CategoryRow {
  readonly id: string;
  readonly label: string;
  readonly forms: readonly string[];
  readonly system: System;
  readonly devices?: readonly Device[];
  readonly member: readonly [number, number];
  readonly outside: readonly [number, number];
  readonly holds: string;
  /** Only where its members are listed: "small cannulae such as", not "is a small cannula". */
  readonly listed?: true;
  /** Its uses are told apart in one breath: "fine-bore for feeding, 16 Fr for drainage" sets another beside it. */
  readonly close?: true;
  /** Where its words are said of another use, whose sizes are not those of the class. */
  readonly elsewhere?: RegExp;
  readonly sources: readonly string[];
}

const FINE = 'fine thin slim slender delicate light skinny dainty';
const HEAVY = 'heavy thick stout strong chunky fat coarse sturdy';
const each = (adjectives: string, nouns: string): string[] =>
  adjectives.split(' ').flatMap((adjective) => nouns.split(' ').map((noun) => `${adjective} ${noun}`));

export const CATEGORIES: readonly CategoryRow[] = [
  {
    id: 'large-bore-iv',
    label: 'large-bore',
    forms: [
      'large-bore',
      'large bore',
      'wide-bore',
      'wide bore',
      'big-bore',
      'big bore',
      'largebore',
      'widebore',
    ],
    system: 'needle-gauge',
    member: [10, 16],
    outside: [20, 40],
    // "Joint aspiration: large-bore needle, 20 G": for thick fluid, not for a drip.
    elsewhere: OTHER_PUNCTURE,
    holds: 'Large-bore IV access is 14 to 16 G; some texts include 18 G, none a thinner one',
    sources: ['lb1', 'lb2', 'lb3'],
  },
  {
    id: 'small-bore-iv',
    label: 'small-bore',
    forms: [
      'small-bore',
      'small bore',
      'narrow-bore',
      'narrow bore',
      'fine-bore',
      'fine bore',
      'fine-gauge',
      'fine gauge',
    ],
    system: 'needle-gauge',
    member: [22, 40],
    outside: [7, 16],
    holds: '14 and 16 G are large-bore, at the wide end of the scale',
    sources: ['lb1', 'lb3'],
  },
  {
    id: 'large-bore-drain',
    label: 'large-bore',
    forms: ['large-bore', 'large bore', 'wide-bore', 'wide bore'],
    system: 'french',
    devices: ['chest-tube', 'drain'],
    member: [24, 60],
    outside: [1, 12],
    holds: 'Large-bore chest drains are more than 20 Fr; 14 Fr and less is small-bore',
    sources: ['mahmood', 'mehra', 'bauman'],
  },
  {
    id: 'small-bore-drain',
    label: 'small-bore',
    forms: ['small-bore', 'small bore', 'narrow-bore', 'narrow bore'],
    system: 'french',
    devices: ['chest-tube', 'drain'],
    member: [6, 14],
    outside: [24, 60],
    holds: 'Small-bore chest drains are 14 Fr or less',
    sources: ['mahmood', 'mehra', 'bauman'],
  },
  {
    id: 'fine-bore-feeding',
    label: 'fine-bore',
    forms: ['fine-bore', 'fine bore', 'small-bore', 'small bore', 'narrow-bore'],
    system: 'french',
    devices: ['feeding-tube'],
    member: [5, 12],
    outside: [16, 40],
    holds: 'Fine-bore feeding tubes are 6 to 12 Fr',
    sources: ['ng'],
    close: true,
  },
  {
    id: 'wide-bore-feeding',
    label: 'wide-bore',
    forms: ['wide-bore', 'wide bore', 'large-bore', 'large bore', 'big-bore'],
    system: 'french',
    devices: ['feeding-tube'],
    member: [14, 24],
    outside: [4, 10],
    holds: 'Fine-bore feeding tubes are 6 to 12 Fr; wide-bore ones, for drainage, are 14 to 18 Fr',
    sources: ['ng'],
    close: true,
  },
  {
    id: 'adult-foley',
    label: 'an adult size',
    forms: ['adult size', 'adult sizes'],
    system: 'french',
    devices: ['urinary-catheter'],
    member: [12, 24],
    outside: [4, 8],
    holds: 'Urethral catheters for adults are taught as 12 to 18 Fr, and 20 to 24 Fr for irrigation',
    sources: [],
    close: true,
  },
  {
    id: 'fine-bore-tube',
    label: 'fine-bore',
    forms: ['fine-bore', 'fine bore'],
    system: 'french',
    member: [4, 12],
    outside: [20, 60],
    holds: 'Fine-bore tubes are 12 Fr or less',
    sources: ['ng'],
    close: true,
  },
  {
    id: 'small-bore-tube',
    label: 'small-bore',
    forms: ['small-bore', 'small bore', 'narrow-bore', 'narrow bore'],
    system: 'french',
    member: [4, 14],
    outside: [24, 60],
    holds: 'Small-bore tubes are 14 Fr or less',
    sources: ['mahmood', 'mehra', 'bauman', 'ng'],
    close: true,
  },
  {
    id: 'microsuture',
    label: 'microsurgical',
    forms: ['microsurgical', 'microsurgery', 'microsuture', 'micro-suture', 'microvascular'],
    system: 'usp',
    member: [-11, -7],
    outside: [-3, 10],
    holds: 'Microsurgical sutures are 8-0 and finer',
    sources: [],
  },
  {
    id: 'fine-sutures',
    label: 'a fine suture',
    forms: ['fine sutures', 'fine threads', 'fine stitches', 'finest sutures', 'finest threads'],
    system: 'usp',
    member: [-11, -4],
    outside: [0, 10],
    holds: 'Fine sutures are those with many zeros, 5-0 and finer; 0 and the whole numbers are the heavy end',
    sources: [],
  },
  {
    id: 'heavy-sutures',
    label: 'a heavy suture',
    forms: [
      'heavy sutures',
      'heavy threads',
      'thick sutures',
      'thick threads',
      'heaviest sutures',
      'heaviest threads',
    ],
    system: 'usp',
    member: [0, 10],
    outside: [-11, -6],
    holds: 'Heavy sutures are 0 and the whole numbers; more zeros are finer',
    sources: [],
  },
  {
    id: 'fine-needles',
    label: 'a fine needle',
    forms: ['fine needles', 'thin needles', 'finest needles', 'thinnest needles'],
    system: 'needle-gauge',
    member: [25, 40],
    outside: [7, 17],
    holds: 'Fine needles have high gauge numbers, 25 G and up; 16 G is at the wide end',
    sources: [],
  },
  {
    id: 'thick-needles',
    label: 'a thick needle',
    forms: ['thick needles', 'thickest needles', 'widest needles', 'wide needles'],
    system: 'needle-gauge',
    member: [7, 18],
    outside: [26, 40],
    holds: 'Thick needles have low gauge numbers; 26 G and up are fine',
    sources: [],
  },
  {
    id: 'fine-threads-listed',
    label: 'a fine suture',
    forms: each(
      `${FINE} small`,
      'suture thread stitch sutures threads stitches ones silk nylon strands ties',
    ),
    system: 'usp',
    member: [-11, -4],
    outside: [0, 10],
    holds: 'Fine sutures are those with many zeros, 5-0 and finer; 0 and the whole numbers are the heavy end',
    sources: [],
    listed: true,
  },
  {
    id: 'heavy-threads-listed',
    label: 'a heavy suture',
    forms: each(
      `${HEAVY} big large`,
      'suture thread stitch sutures threads stitches ones silk nylon strands ties',
    ),
    system: 'usp',
    member: [0, 10],
    outside: [-11, -5],
    holds: 'Heavy sutures are 0 and the whole numbers; more zeros are finer',
    sources: [],
    listed: true,
  },
  {
    id: 'small-cannulae-listed',
    label: 'a small cannula',
    forms: each(
      `${FINE} small tiny narrow little`,
      'cannula cannulae cannulas needle needles iv ivs ones line lines bores',
    ),
    system: 'needle-gauge',
    member: [22, 40],
    outside: [7, 16],
    holds: '14 and 16 G are at the wide end of the scale',
    sources: ['lb1', 'lb3'],
    listed: true,
  },
  {
    id: 'big-cannulae-listed',
    label: 'a big cannula',
    forms: each(
      'big wide large fat thick chunky stout broad',
      'cannula cannulae cannulas needle needles iv ivs ones line lines bores',
    ),
    system: 'needle-gauge',
    member: [10, 16],
    outside: [22, 40],
    holds: 'The wide cannulae and needles have the low gauge numbers; 22 G and up are fine',
    sources: ['lb1', 'lb2', 'lb3'],
    listed: true,
  },
];
