/** '"Grey is 14 G." Yes, well remembered.': somebody else's words, and right after them the author says that they hold. */
import { finds } from '../../notes/patterns.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import type { Scene } from '../text/scene.ts';
import type { Sentence } from '../text/sentences.ts';

/** Nobody agrees at greater length, words. */
const LONGEST = 16;

/** Does the next sentence say yes to the whole of this one, and no more? */
export const affirmed = ({ sentence, after, next, passage }: Scene): boolean => {
  const said = after[0] ?? (passage.list || passage.cell ? undefined : next);
  return said !== undefined && sentence.close !== '?' && agrees(said);
};

const agrees = remembered(
  ({ items, close }: Sentence): boolean =>
    close !== '?' &&
    items.length <= LONGEST &&
    finds(AGREES, `${joined(items)} `) &&
    !items.some(({ word, kind }) => kind === 'size' || TURNS.test(word)),
);
const AGREES =
  /^(?:["”*_] )?(?:yes|right|correct|true|exactly|precisely|agreed|quite right|spot on|full marks|well (?:remembered|done|spotted|put|said)|that(?:'s| is) (?:right|correct|true|so|how it is))(?: again| too| as well)? (?:["”*_] )?[,.!;] /;
const TURNS =
  /^(?:but|except|not|though|although|however|only|if|unless|if|no|never|wrong|actually|\w+n't|nearly|almost|half|partly|or|as|then)$/;
