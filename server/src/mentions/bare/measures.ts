/** Columns of diameters whose header names no unit: "OD", "Inner diameter", "Bore". */
import type { System } from '../../sizes/model.ts';
import { headingsOf, labelsOf, type Scene, type Surroundings } from '../scene.ts';
import { HEADERS, OF_OTHER, OTHER_HEADER } from '../words/frames.ts';

const WIDTH = '(?:\\s(?:diameters?|width|dia\\.?))?';
const OUTSIDE = new RegExp(
  `^\\W*(?:(?:outer|outside|external|overall)${WIDTH}|o\\.?d\\.?|diameter|width|thickness|across)\\W*$`,
  'i',
);
const INSIDE = new RegExp(`^\\W*(?:(?:inner|inside|internal)${WIDTH}|i\\.?d\\.?|bore|lumen)\\W*$`, 'i');
const TUBES = /\b(?:tubes?|ETTs?|trach\w*|intubat\w*|airways?)\b/i;
const SIZED = /[0-9]\s?(?:G|Fr|F|Ch|gauge|French)\b|[0-9]-0\b/;
const WIDEST = 12;

const headsOf = (around: Surroundings, { passage }: Scene): readonly Scene[] => {
  const row = passage.cell ? (around.note.tables[passage.cell.table]?.rows[0] ?? []) : [];
  return row.slice(0, WIDEST).flatMap((index) => around.scenes[index] ?? []);
};

/** A column that counts, prices or grades. "ID" beside another measure is an inner diameter, elsewhere a key. */
export function isOther(around: Surroundings, header: Scene): boolean {
  const { text } = header.passage;
  if (text.length <= LONGEST && (HOW_FAR.test(text) || OF_OTHER.test(text))) return true;
  if (!OTHER_HEADER.test(text) || IN_MM.test(text)) return false;
  return !(/\bID\b/.test(text) && (besideMeasure(around, header) || ofTubes(around, header)));
}

/** A header longer than this is prose, and asked for every cell below it. */
const LONGEST = 80;
/** "Length at the lips (cm)", "Depth, cm": how far it goes in. */
const HOW_FAR = /^(?!.*\bmm\b)(?:.{0,40}\b(?:cm|at (?:the )?(?:lips?|teeth|gums?|nares|nostrils?|skin)))\b/i;

/** "ID (mm)": no key of a row. */
const IN_MM = /^\W*I\.?D\.?\W{1,3}(?:in\s)?(?:mm|millimet(?:re|er)s?)\W*$/i;

/** Another column of the table is a diameter or names a system of sizes. */
const besideMeasure = (around: Surroundings, header: Scene): boolean =>
  headsOf(around, header).some(
    (one) =>
      one !== header &&
      (OUTSIDE.test(one.passage.text) ||
        INSIDE.test(one.passage.text) ||
        HEADERS.some(([, pattern]) => pattern.test(one.passage.text))),
  );

/** What stands over the table: its lead-in and the heading. */
function over(around: Surroundings, { passage }: Scene): readonly Scene[] {
  const table = passage.cell && around.note.tables[passage.cell.table];
  return [around.scenes[table?.leadIn ?? -1], headingsOf(around, passage)[0]].filter(
    (one): one is Scene => one !== undefined,
  );
}

const ofTubes = (around: Surroundings, scene: Scene): boolean =>
  [...over(around, scene), ...headsOf(around, scene)].some(
    (one) =>
      one.kinds.has('tracheal-tube') ||
      (TUBES.test(one.brief) && [...one.kinds].every((kind) => kind === 'catheter')),
  );

/** "Outer diameters in mm" right above a table: the unit of a column that names none. */
const captioned = (around: Surroundings, scene: Scene): boolean =>
  over(around, scene).some((one) =>
    /\b(?:in|against|to|,) (?:mm|millimet(?:re|er)s)\b|\((?:in )?mm\)/i.test(one.passage.text.slice(0, 120)),
  );

/**
 * The system of a cell in a column of diameters: millimetres, of a tracheal tube's bore its size. A row that is named by
 * gauge or French is of no tracheal tube.
 */
export function measured(around: Surroundings, header: Scene | undefined, scene: Scene): System | undefined {
  if (!header) return undefined;
  const inside = INSIDE.test(header.passage.text);
  if (!inside && !OUTSIDE.test(header.passage.text)) return undefined;
  const { text } = scene.passage;
  const sized = SIZED.test(labelsOf(around, scene.passage).row?.brief ?? '');
  if (inside && !sized && ofTubes(around, header) && !/[.,][1-46-9]/.test(text)) return 'tube-id';
  const beside = (sized || besideMeasure(around, header)) && /[0-9][.,][0-9]/.test(text);
  return beside || captioned(around, scene) ? 'millimetre' : undefined;
}
