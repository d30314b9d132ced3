/** Work that uses most of the analysis: what the engine makes of it is kept, so that later runs need not make it. */
import { NOTATIONS } from '../../../grammars/notations/index.ts';
import { placed } from '../cli/result.ts';
import { analyse } from '../course/index.ts';

/** A text for each way through the house. They are read, never reported. */
const TEXTS: readonly string[] = [
  'A 22 G needle is thinner than an 18 G needle, so it drips more slowly.',
  'The higher the gauge, the thinner the needle. A larger French number means a thicker catheter.',
  'For transfusion choose a 14 G or 16 G cannula rather than a 20 G; as the gauge rises the bore narrows.',
  'A 16 Fr urinary catheter is 5.3 mm thick; an 18 Fr one is 6 mm. 1 French equals a third of a millimetre.',
  'Close the skin of the face with 5-0 nylon and the scalp with 3-0. Silk is braided; polypropylene is a monofilament.',
  'A 4-0 suture is stronger than a 2-0 suture. The more zeros, the thinner the thread.',
  'The 0.035 in guidewire passes through a 5 Fr diagnostic catheter. Most adults need a 7.5 mm ID tracheal tube.',
  'From thickest to thinnest: 14 G, 16 G, 18 G, 20 G. The pink hub is 20 G and the green one 18 G.',
  '- A larger gauge is a thinner needle. True or false?\n- Which is wider?\n  - [ ] 14 G\n  - [x] 22 G\n\nAnswer: 1. False',
  '1. The widest is: A) 22 G B) 14 G C) 20 G\n\n## Answers\n\n1. B',
  '| Gauge | Colour | Flow |\n|---|---|---|\n| 14 G | orange | 250 mL/min |\n| 22 G | blue | 35 mL/min |\n',
  '## Needles\n\n> “A 22 G is wider than a 14 G,” said the learner.\n\nThat is *wrong*: see [the table](#sizes) and `14 G`.\n',
  'Students often say that a 22 G is wider than an 18 G. If a 4-0 were thicker than a 2-0, we would see it.',
  'Use a cutting needle for skin and a taper-point needle for bowel. A 2/0 is about as thick as a 0.3 mm wire.',
];

/** One text a step. */
export function* practice(): Generator<void> {
  const written = NOTATIONS.flatMap(({ examples }) => examples).map((example) => `Take ${example} for this.`);
  for (const text of [...TEXTS, written.join('\n\n')]) {
    placed('', analyse(text), 'findings');
    yield;
  }
}
