/** Columns of a table that hold what was wrong: printed, said, answered, with what holds beside it. */
import type { Note } from '../../notes/model.ts';
import type { Read } from './reads.ts';

/** A cell under "Printed", "Wrong", "Was": what stands there is reported, not taught. */
export function inStruckColumn(note: Note, reads: readonly Read[], read: Read): boolean {
  const { cell } = read.passage;
  if (!cell || cell.row === 0) return false;
  const header = note.tables[cell.table]?.rows[0] ?? [];
  const textOf = (index: number | undefined): string => reads[index ?? -1]?.passage.text ?? '';
  const head = textOf(header[cell.column]);
  if (STRUCK_HEADER.test(head)) return true;
  if (SAID.test(head) && header.slice(0, FEW).some((index) => MENDS.test(textOf(index)))) return true;
  const beside = textOf(note.tables[cell.table]?.rows[cell.row]?.[cell.column + 1]);
  return CALLED_FALSE.test(beside);
}

/** "Wrong, a monofilament" in the cell beside it. */
const CALLED_FALSE =
  /^\W{0,3}(?:false|wrong|incorrect|untrue|myth|no|nope|nonsense|rejected|not true|not so)\s*[,;:.(–—-]\s*\w/i;

export const STRUCK_HEADER =
  /^(?:for(?=\W*$)|(?:their|his|her|(?:the )?(?:students?|candidates?|trainees?|learners?|pupils?|class|group|team)(?:['’]s?)?(?: \w+)?) (?:answers?|repl(?:y|ies)|versions?|attempts?|guess(?:es)?|try|wording|view|sheet)|jumbled|shuffled|scrambled|mixed[ -]up|unsorted|muddled|printed|wrong|was|before|errors?|mistakes?|slips?|misconceptions?|(?:common|typical|frequent|usual|classic|popular) (?:errors?|mistakes?|slips?|misconceptions?|myths?|misreadings?|beliefs?)|incorrect|myths?|old|as printed|first draft|heard|(?:what |the )?(?:you|they|people|some|others|students?|candidates?|trainees?|patients?|owners?|learners?|pupils?)(?:['’]s?)? (?:may |might |often |will |sometimes )?(?:hear|say|says|said|think|thinks|answer|answers|answered|reply|wrote|writes?|put|believe)|(?:i|we|she|he) (?:had |first |once |always )?(?:thought|believed|assumed|guessed|used to think)|misreading|guess(?:es|ed)?\b|predict(?:ed|ions?)|before measuring|(?:said|written?|given|put|ticked|answered|heard|seen|opened|taken|used) (?:instead|wrongly)|(?:[\w-]+ ){0,4}(?:wrong|mistaken|incorrect|false) (?:answers?|replies|reply|beliefs?|ideas?|statements?|versions?|claims?|entry|entries|guess(?:es)?)|instead(?: of)?|not(?: this| to do)?(?=\W*$)|not this|never(?=\W*$)|avoid(?=\W*$)|don't)\b/i;

/** "Said" beside "Better": what somebody said, and what ought to have been. */
const SAID =
  /^\W*(?:(?:as |what (?:was |they |he |she |you |a student |students? )?)?(?:said|heard|wrote|written|put|answered|given|seen|found|on the (?:sheet|slide|poster|board))|students?|candidates?|trainees?|learners?|draft|first try|version 1)\W*$/i;
/** Columns of a table that is read by people. */
const FEW = 12;
const MENDS =
  /^\W*(?:better|should (?:be|say|read|have been)|correct(?:ed|ion|ions)?|mended|(?:what i )?wish\w*|meant|fixed|fix|rather|in fact|the truth|truth|amended|what (?:was|is) meant)\b/i;
