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
  // "One" that stands for a thing is no size of a chain; a number with its gauge above is no thousandth of an inch.
  [
    'That one, the 2-0, is thicker than this one, the 3-0 silk.',
    ['`2-0`: USP 2-0, silk', '`3-0`: USP 3-0, silk'],
  ],
  [
    'An 18 G or a 21 G; hence an 0.035 and an 0.018 wire. The 21 is thinner than the 18.',
    [
      '`18 G`: 18 G',
      '`21 G`: 21 G',
      '`0.035`: 0.035 in, guidewire',
      '`0.018`: 0.018 in, guidewire',
      '`21`: 21 G',
      '`18`: 18 G',
    ],
  ],
  // "Won't" wins nothing, and a place is no unit.
  [
    "One of us sews with 3-0. It's thinner than 4-0 so it won't cut.",
    ['`3-0`: USP 3-0, suture', '`4-0`: USP 4-0, suture'],
  ],
  ['The guidewire: we keep the 0.035 in the drawer.', ['`0.035`: 0.035 in, guidewire']],
  ['The change was 0.035 in the group.', []],
  ['Go up two French sizes from the 12 Fr.', ['`12 Fr`: 12 Fr']],
  // The metric number, spoken of shortly before.
  [
    'The second number is the metric one. A packet of 6-0 nylon reads 0.7.',
    ['`6-0`: USP 6-0, nylon', '`0.7`: metric 0.7, nylon'],
  ],
  ['Any drain up to 21 Fr, that is to say 7 mm.', ['`21 Fr`: 21 Fr, drain, at most', '`7 mm`: 7 mm, drain']],
  // Files of the dentist, the size of a group, an age in front of a line.
  ['Use the 27 G needle. Files go up in order, 10, 15, 20.', ['`27 G`: 27 G, needle']],
  ['# Urinary catheters\n\nThe 14 Fr is usual. Group size 12.', ['`14 Fr`: 14 Fr, urinary-catheter']],
  ['- 48F, abscess, 12 Fr catheter, home on day 9\n', ['`12 Fr`: 12 Fr, catheter']],
  // Figures of the laboratory and the monitor, a scale, what weighs.
  ['Her GCS was 14 and she had a 16 G cannula in.', ['`16 G`: 16 G, cannula']],
  ['A man of 72 with a 16 Fr catheter and a PSA of 14.', ['`16 Fr`: 16 Fr, catheter']],
  ['Fluoro time 3.5, contrast 40, sheath 6 Fr.', ['`6 Fr`: 6 Fr, sheath']],
  ['On a scale of 1 to 10 the 3-0 silk is a 9.', ['`3-0`: USP 3-0, silk']],
  ['The 27 G needle; a 25 g mouse gets 0.5.', ['`27 G`: 27 G, needle']],
  // So many things are no size.
  ['The 18 G cannula is green. We did 14 cannulas and 3 drains.', ['`18 G`: 18 G, cannula']],
  ['The 18 G cannula is green. In all 14 cannulas failed.', ['`18 G`: 18 G, cannula']],
  // Grams stay grams where a gauge is named on nothing that has one.
  ['The 20 G line is in. Each 18g of sugar.', ['`20 G`: 20 G']],
  // A number in words right behind a unit counts what was counted before.
  ['A 5 Fr hole needs ten minutes and an 8 Fr twenty.', ['`5 Fr`: 5 Fr', '`8 Fr`: 8 Fr']],
  // Blades have no halves: beside them a tube's number stays a tube's.
  [
    'A 7.5 tube for most women, an 8.0 for most men, and size 3 blades.',
    ['`7.5`: 7.5 mm ID', '`8.0`: 8 mm ID'],
  ],
  ['A 7.5 tube for most women, and a 7.5 in gloves.', ['`7.5`: 7.5 mm ID']],
  // Units that are explained are no sizes.
  ['Three French make one millimetre, so 12 Fr is 4 mm.', ['`12 Fr`: 12 Fr', '`4 mm`: 4 mm']],
  ['Three steps 1 mm, says the chart for 12 Fr.', ['`12 Fr`: 12 Fr']],
  ['One inch makes 25.4 mm.', []],
  // A colour alone is a question, whatever the sentence before speaks of.
  ['A 20 G cannula lay there. Grab a green one.', ['`20 G`: 20 G, cannula', GREEN]],
  ['A 20 G cannula lay there. Bring a needle. Grab a green one.', ['`20 G`: 20 G, cannula', GREEN]],
  ['A 20 G cannula lay there. Grab a green one for the cannula.', ['`20 G`: 20 G, cannula']],
  // What is left in stock, and how far a tube goes in, are no sizes.
  ['# Urinary catheters\n\n- 12 Fr, white, 30 left\n', ['`12 Fr`: 12 Fr, urinary-catheter']],
  [
    '# Breathing tubes\n\n| Weight | Tube | Length at the lips (cm) |\n|---|---|---|\n| 2 kg | 3.5 | 8.5 |\n',
    ['`3.5`: 3.5 mm ID, tracheal-tube'],
  ],
  // The number on the thread, and what it is on the other scale.
  [
    'For the thick sutures, 0 is metric 3.5, 1 is metric 4, 2 is metric 5.',
    [
      '`0`: USP 0, suture',
      '`metric 3.5`: metric 3.5, suture',
      '`1`: USP 1, suture',
      '`metric 4`: metric 4, suture',
      '`2`: USP 2, suture',
      '`metric 5`: metric 5, suture',
    ],
  ],
  ['The sutures say metric as well: 4-0 is 1.5.', ['`4-0`: USP 4-0, suture', '`1.5`: metric 1.5, suture']],
  ['Is a 7-0 suture the same as a 7?', ['`7-0`: USP 7-0, suture', '`7`: USP 7, suture']],
  // A first choice right after the question.
  ['15 Fr in millimetres? A 5, B 15, C 45', ['`15 Fr`: 15 Fr', '`5`: 5 mm', '`15`: 15 mm', '`45`: 45 mm']],
  // A margin said in words, and the diameter of a catheter that goes through a tube.
  [
    'Allow about two French: the 6 Fr sheath makes a hole of 8 Fr.',
    ['`6 Fr`: 6 Fr, sheath', '`8 Fr`: 8 Fr, sheath'],
  ],
  // A third of the French number right before is its width, whatever else the thing might be long.
  ['The tail of it is 8 Fr, so roughly 2.7 mm.', ['`8 Fr`: 8 Fr', '`2.7 mm`: 2.7 mm, about']],
  ['The tail of it is 8 Fr, so roughly 20 mm long.', ['`8 Fr`: 8 Fr']],
  // "in" behind a whole number beside another length in inches.
  [
    'Needles of ¾ in for most, 1 in for the rest.',
    ['`¾ in`: 0.75 in, needle, a length', '`1 in`: 1 in, needle, a length'],
  ],
  // What is worked out from the label of a row has no unit of its own.
  [
    '| Tracheal tube, ID | Twice that | Suction catheter |\n|---|---|---|\n| 7.0 mm | 14 | 12 Fr |\n',
    ['`7.0 mm`: 7 mm ID, tracheal-tube', '`12 Fr`: 12 Fr, suction-catheter'],
  ],
  [
    '| USP | Metric | At least |\n|---|---|---|\n| 2-0 | 3 | 0.3 mm |\n| 3 and 4 | 6 | 0.6 mm |\n',
    [
      '`2-0`: USP 2-0',
      '`3`: metric 3',
      '`0.3 mm`: 0.3 mm',
      '`3`: USP 3',
      '`4`: USP 4',
      '`6`: metric 6',
      '`0.6 mm`: 0.6 mm',
    ],
  ],
  // A chapter of a book.
  ['A 14 Ch catheter. Read Ch 14 of the ward handbook.', ['`14 Ch`: 14 Fr, catheter']],
  // Answers one behind the other, parts of a sum, a tube with one decimal.
  ['A 12 Fr drain.\n\n**Key.** 1 C.\n2 B. 3 B.\n4 false. 5 true.', ['`12 Fr`: 12 Fr, drain']],
  [
    'Tracheal tubes: age over 4, plus 4. With a cuff, add 3½ instead of 4: 8 years gives 5.5.',
    ['`5.5`: 5.5 mm ID, tracheal-tube'],
  ],
  ['For an 8.0 tube stay below 16 Fr.', ['`8.0`: 8 mm ID', '`16 Fr`: 16 Fr, catheter']],
  ['Close the foal gut with a 3-0 thread.', ['`3-0`: USP 3-0, suture']],
  [
    'Keep a spare 3 silk taped to the bottle.',
    ['`3`: a question: size 3, a thick thread, or 3 zeros, a thin thread'],
  ],
];
