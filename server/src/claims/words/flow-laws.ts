/** What makes more or less run through one and the same needle or tube, and sums of volume, rate and time. */
import type { FormulaRow } from './formulas.ts';

const row = (
  id: string,
  says: string,
  holds: boolean,
  rule: string,
  standard: string,
  sources: readonly string[],
): FormulaRow => ({ id, system: 'needle-gauge', says, true: holds, holds: rule, standard, sources });

const measured = (id: string, says: string, holds: boolean, rule: string): FormulaRow =>
  row(id, says, holds, rule, 'published flow measurements of IV cannulas', ['mcpherson', 'hilbert']);
const LENGTH = 'Of two cannulas of one gauge the longer flows slower';
const WIDTH = 'Of two cannulas of one length the wider flows faster';
const SEVERAL = 'By published flows of single cannulas';

/** Taught in every text on flow; no source of our own. */
const taught = (id: string, says: string, holds: boolean, rule: string): FormulaRow =>
  row(id, says, holds, rule, 'from memory', []);
const PRESSURE = 'Through one and the same cannula more pressure drives more flow';
const HEIGHT = 'The higher the bag hangs, the faster it runs';
const VISCOSITY = 'Cold and thick fluids run slower than warm and thin ones';
const NARROWING = 'A kink, a clamp or a clot slows the flow';
const NARROWEST = 'The narrowest part of a line limits the flow';
const TIME = 'The time to run a volume in is the volume divided by the rate';

export const FLOW_LAWS: readonly FormulaRow[] = [
  measured('longer-is-slower', 'a longer cannula flows slower', true, LENGTH),
  measured('longer-is-faster', 'a longer cannula flows faster', false, LENGTH),
  measured('wider-is-faster', 'a wider cannula flows faster', true, WIDTH),
  measured('wider-is-slower', 'a wider cannula flows slower', false, WIDTH),
  measured('several-as-measured', 'several cannulas together are set against one', true, SEVERAL),
  measured('several-otherwise', 'several cannulas together are set against one', false, SEVERAL),
  taught('pressed-is-faster', 'more pressure makes the flow faster', true, PRESSURE),
  taught('pressed-is-slower', 'more pressure makes the flow slower', false, PRESSURE),
  taught('raised-is-faster', 'a higher bag runs faster', true, HEIGHT),
  taught('raised-is-slower', 'a higher bag runs slower', false, HEIGHT),
  taught('viscous-is-slower', 'a thicker or colder fluid runs slower', true, VISCOSITY),
  taught('viscous-is-faster', 'a thicker or colder fluid runs faster', false, VISCOSITY),
  taught('obstructed-is-slower', 'a narrowed line runs slower', true, NARROWING),
  taught('obstructed-is-faster', 'a narrowed line runs faster', false, NARROWING),
  taught('narrowest-limits', 'the narrowest part limits the flow', true, NARROWEST),
  taught('widest-limits', 'the widest part limits the flow', false, NARROWEST),
  taught('time-as-worked-out', 'this volume runs in that time at that rate', true, TIME),
  taught('time-worked-out-wrong', 'this volume runs in that time at that rate', false, TIME),
];
