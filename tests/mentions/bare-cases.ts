/** Numbers without a unit, and words that ask which size is meant: what settles them, and what leaves them alone. */
const GREEN = '`green`: a question: a green cannula, 18 G, or a green needle, 21 G';

export const BARE: readonly (readonly [note: string, read: readonly string[]])[] = [
  // A device that cannot have the size is not the one it belongs to.
  ['Leave the needle in and take a 14 Fr.', ['`14 Fr`: 14 Fr']],
  // A column of sizes: by the device in its header, else by the nearest heading that settles the system.
  ['| Age | ETT size |\n|---|---|\n| 1 year | 4 |\n', ['`4`: 4 mm ID, tracheal-tube']],
  ['# Foley catheters\n\n| Patient | Size |\n|---|---|\n| man | 16 |\n', ['`16`: 16 Fr, urinary-catheter']],
  [
    '# Foley catheters\n\n## Adults\n\n| Patient | Size |\n|---|---|\n| man | 16 |\n',
    ['`16`: 16 Fr, urinary-catheter'],
  ],
  // The unit of a column that names none stands above the table.
  ['Outer diameters (mm):\n\n| French | Outside |\n|---|---|\n| 6 Fr | 2 |\n', ['`6 Fr`: 6 Fr', '`2`: 2 mm']],
  [
    'Outer diameters (in mm):\n\n| French | Outside |\n|---|---|\n| 6 Fr | 2 |\n',
    ['`6 Fr`: 6 Fr', '`2`: 2 mm'],
  ],
  // So many things are no size.
  ['The 18 G cannula is green. We did 14 cannulas and 3 drains.', ['`18 G`: 18 G, cannula']],
  ['The 18 G cannula is green. In all 14 cannulas failed.', ['`18 G`: 18 G, cannula']],
  // Grams stay grams where a gauge is named on nothing that has one.
  ['The 20 G line is in. Each 18g of sugar.', ['`20 G`: 20 G']],
  // Units that are explained are no sizes.
  ['Three French make one millimetre, so 12 Fr is 4 mm.', ['`12 Fr`: 12 Fr', '`4 mm`: 4 mm']],
  ['Three steps 1 mm, says the chart for 12 Fr.', ['`12 Fr`: 12 Fr']],
  ['One inch makes 25.4 mm.', []],
  // A colour alone is a question, whatever the sentence before speaks of.
  ['A 20 G cannula lay there. Grab a green one.', ['`20 G`: 20 G, cannula', GREEN]],
  ['A 20 G cannula lay there. Bring a needle. Grab a green one.', ['`20 G`: 20 G, cannula', GREEN]],
  ['A 20 G cannula lay there. Grab a green one for the cannula.', ['`20 G`: 20 G, cannula']],
];
