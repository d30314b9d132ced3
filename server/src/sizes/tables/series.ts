/** The sizes in which things are commonly made, for "the next size up": common practice, no source unless named. */

/** Whole French of the usual catheters, tubes and drains. */
export const FRENCH_SERIES: readonly number[] = [
  1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40,
];

/** Tracheal tubes, inner diameter in mm: half sizes (sources ett, gupta for the measure, not the list). */
export const TUBE_SERIES: readonly number[] = Array.from({ length: 17 }, (_, i) => 2 + i / 2);

/** Hegar dilators, mm of diameter, whole numbers (source hegar for the measure, not the list). */
export const HEGAR_SERIES: readonly number[] = Array.from({ length: 26 }, (_, i) => i + 1);
