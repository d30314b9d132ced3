/** Series of which it is believed that they have even or whole numbers only, and the sizes that are made nevertheless: common practice, no source. */
import type { Size } from '../model.ts';

export interface SeriesRow {
  /** Sizes with an odd number that are made. */
  readonly odd: readonly Size[];
  /** Sizes between two whole numbers that are made. */
  readonly half: readonly Size[];
  /** One plain clause about what is made. */
  readonly because: string;
}

const gauges = (...values: readonly number[]): Size[] =>
  values.map((value) => ({ system: 'needle-gauge', value }));
const french = (...values: readonly number[]): Size[] => values.map((value) => ({ system: 'french', value }));

export const PARTLY_SERIES = {
  fistula: { odd: gauges(15, 17), half: [], because: 'fistula needles are made from 14 to 17 G' },
  spinal: { odd: gauges(25, 27), half: [], because: 'spinal needles are made of 22, 25 and 27 G' },
  epidural: { odd: gauges(17), half: [], because: 'epidural needles are made of 16, 17 and 18 G' },
  dental: { odd: gauges(25, 27), half: [], because: 'dental needles are made of 25, 27 and 30 G' },
  pen: { odd: gauges(29, 31), half: [], because: 'pen needles are made from 29 to 34 G' },
  winged: { odd: gauges(21, 23), half: [], because: 'winged needles are made of 21, 23 and 25 G' },
  french: {
    odd: french(5, 7),
    half: french(3.5),
    because: 'catheters of 3.5, 5 and 7 Fr are made',
  },
} as const satisfies Readonly<Record<string, SeriesRow>>;

export type PartlySeries = keyof typeof PARTLY_SERIES;
