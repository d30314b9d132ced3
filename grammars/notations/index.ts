/** Every notation, most telling first: where two match the same text, the earlier wins. */
import { frenchAfter, frenchSpoken } from './french-after.ts';
import { frenchBefore } from './french-before.ts';
import { gaugeAfter, gaugeSpoken } from './gauge-after.ts';
import { gaugeBefore } from './gauge-before.ts';
import { inches, inchesSpoken, inchFraction } from './inches.ts';
import { metricAfter, metricBefore } from './metric-suture.ts';
import {
  centimetres,
  micrometres,
  millimetres,
  millimetresMeasured,
  millimetresSpoken,
  needleProduct,
  needleProductBare,
  needleSlash,
} from './millimetres.ts';
import type { Notation } from './model.ts';
import { numbered, numberedSpoken } from './numbered.ts';
import { hegar, tubeInner } from './tubes.ts';
import { uspDashed, uspHyphened, uspNamed, uspSlip, uspSpoken, uspWritten } from './usp-zeros.ts';
import { wireGauge } from './wire-gauge.ts';
import { wireDigits, wireInches, wireShort, wireSpoken } from './wire-inches.ts';

export type { Item, Notation } from './model.ts';

export const NOTATIONS: readonly Notation[] = [
  tubeInner,
  hegar,
  wireGauge,
  metricBefore,
  metricAfter,
  gaugeAfter,
  frenchAfter,
  gaugeSpoken,
  frenchSpoken,
  needleProduct,
  needleProductBare,
  millimetres,
  millimetresMeasured,
  centimetres,
  micrometres,
  millimetresSpoken,
  wireSpoken,
  wireInches,
  inches,
  inchesSpoken,
  inchFraction,
  gaugeBefore,
  frenchBefore,
  uspNamed,
  uspDashed,
  uspWritten,
  uspHyphened,
  uspSpoken,
  numbered,
  numberedSpoken,
  uspSlip,
  wireDigits,
  wireShort,
  needleSlash,
];
