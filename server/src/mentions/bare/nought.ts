/** A bare 0 in talk of threads: the size, unless it is the end of a scale or what was counted. */
import type { Place } from '../sense/place.ts';
import type { Bare } from './tokens.ts';

/** What a 0 may be the amount or the grade of. */
const AMOUNT =
  /\b(?:pain|scor(?:e[ds]?|ing)|outputs?|drainage|volumes?|counts?|totals?|days?|weeks?|hours?|levels?|grades?|stages?|groups?|points?|temperatures?|risks?|rates?|loss|losses|differences?|balances?|bleeding|urine|residuals?|pressures?|clock|timer|infections?|complications?|mortality|visits?|phases?|types?|class|ratings?|likert|vas|nrs|vip|phlebitis|oedema|edema|swelling|redness)\b[^.;:\n]{0,28}$/i;
/** The far end of a scale on which nobody counts threads. */
const SCALE_AFTER = /^\s?(?:to|through|[–—-])\s?(?:5|10|20|100)\b(?![-/]0)/;

/** "Pain was 0", "from 0 to 10": no thread. */
export const amountsToNothing = (place: Place): boolean =>
  SCALE_AFTER.test(place.after) ||
  (AMOUNT.test(place.before.slice(-60)) && !THREAD_BEFORE.test(place.before.slice(-16)));
const THREAD_BEFORE =
  /(?:silk|nylon|catgut|gut|sutures?|threads?|stitch(?:es)?|sizes?|USP|polyglactin|polydioxanone|polypropylene)\s(?:in\s|of\s)?$/i;

/** "it's 0", "where does 0 sit", "runs out of 0": spoken of as a thing. */
export const namesNought = (place: Place, { value, spoken, decimals }: Bare): boolean =>
  value === 0 &&
  !spoken &&
  decimals === 0 &&
  (NAMED.test(place.before) || VERB_AFTER.test(place.after) || ONE_NOUGHT_IS.test(place.before.slice(-24)));

/** "1-0 is 0 wearing a hat": another writing of it, and what it is. */
export const ONE_NOUGHT_IS = /(?<![0-9A-Za-z.-])1[-/]0\s(?:is|=|means)\s(?:just\s|only\s|simply\s|still\s)?$/;
const NAMED =
  /(?:\b(?:it|that|this|what|there|here|one|other)['’]s|\b(?:do(?:es)?|did|will|would|is|was|can|could|should|box(?:es)? of|packs? of|pack(?:et)?s? of|reels? of|drawer of|strands? of|lengths? of|out of|short of|without|stock|stocks|keep|keeps|kept|likes?|prefers?|loads?|opens?|tied?|ties|in|call(?:ed|s)?|seen|print(?:s|ed)?|means?|meant))\s["“‘'*_]?$/i;
const VERB_AFTER =
  /^\s(?:is|was|are|sits?|stands?|lies|comes?|goes|belongs?|keeps?|holds?|snaps?|breaks?|frays?|slips?|ties|cuts|handles|runs?|counts?|means?|takes?|measures?|also|and|or|then|but|in|for|on)\b/i;
