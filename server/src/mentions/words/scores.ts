/** Sport and voting: "won 3-0". */
import { wholeWords } from './pattern.ts';

const SCORES = [
  // Not of "won't".
  "won(?!['’]t)",
  'wins?',
  'beat(?:s|en)?',
  'lost',
  'lose',
  'led',
  'lead',
  'leading',
  'scored?',
  'scores',
  'league',
  'match',
  'games?',
  'goals?',
  'half-time',
  'softball',
  'football',
  'soccer',
  'hockey',
  'voted?',
  'votes',
  'tied',
  'shutout',
  'playoffs?',
  'cup',
  'tournament',
  'season',
  'undefeated',
  'unbeaten',
  'streak',
  'innings?',
  'standings',
  'derby',
  'kick-?off',
  'penalt(?:y|ies)',
  'tie-?break',
  'trivia',
  'darts',
  'bowling',
  'rugby',
  'cricket',
  'basketball',
  'baseball',
  'volleyball',
  'netball',
  'tennis',
  'chess',
  'referee',
  'halftime',
];
export const SCORE = wholeWords(SCORES);

/** Words of everyday life among them: in talk of threads they say nothing of a game. */
const EVERYDAY: ReadonlySet<string> = new Set([
  'lost',
  'lose',
  'led',
  'lead',
  'leading',
  'match',
  'half-time',
  'tied',
  'cup',
  'season',
  'streak',
]);
export const PLAYED = wholeWords(SCORES.filter((word) => !EVERYDAY.has(word)));

/** Right before or after "3-0": a result, whatever else the sentence speaks of. */
export const RESULT_BEFORE =
  /\b(?:won|win|wins|winning|beat|beats|lost|lose|led|leading|score(?:\sis|\swas)?|match|final|vote[ds]?|(?:beat|beats|defeated)\s[a-z\s]{1,30})\s(?:by\s|of\s|the\s|it\s)?$/i;
export const RESULT_AFTER =
  /^\s(?:(?:up|down|ahead)(?=[.,;!?]|\s(?:at|after|by|in)\b|$)|win|wins|lead|victory|defeat|loss|score|at half|in (?:the )?(?:league|cup|final|match|game|softball|football|soccer|hockey))\b/i;
