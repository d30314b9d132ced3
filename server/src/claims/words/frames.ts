/** Words that show how an author stands to a statement: reporting a mistake, rejecting, keying, asking. One idea a list. */

const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));

/** Nouns that call what stands beside them a mistake. */
export const MISTAKE_WORDS = set(
  `myth myths misconception misconceptions mistake mistakes mistaken mistakenly error errors erratum errata wrong wrongly
  incorrect incorrectly false falsely untrue fallacy nonsense rubbish misread misreads misreading misprint misprinted misquoted typo typos
  confusion blunder bogus distractor distractors trap traps debunked mix-up mixup mixups muddle muddled
  struck crossed retracted withdrawn deleted delete superseded misheard misstated misremembered folklore fiction rumour rumours rumor rumors hearsay`,
);

/** Who is quoted: people whose words are reported rather than taught. */
export const REPORTED_SPEAKERS = set(
  `student students learner learners trainee trainees orientee orientees newcomer newcomers novice novices beginner beginners intern interns
  resident residents rookie rookies patient patients parent parents mother father wife husband sister brother son daughter uncle aunt neighbour neighbours flatmate relative relatives rep reps salesman porter owner owners anyone anybody whoever
  somebody someone people many everyone everybody colleague colleagues partner partners locum locums predecessor candidate candidates pupil pupils
  handout slide slides poster table figure photo picture pictures caption box diagram arrow print misprint chart posters version draft edition page leaflet author textbook website forum internet post`,
);

/** Verbs that report words or beliefs. */
export const REPORTING_VERBS = set(
  `say says said saying think thinks thought believe believes believed assume assumes assumed claim claims claimed write writes wrote
  written state states stated insist insists insisted argue argues argued read reads expect expects expected swear swears swore
  guess guesses guessed reckon reckons reckoned tell tells told taught answered answer answers imagine imagines printed gave had showed shows listed used prints `,
);

/** Words that reject what was said just before. */
export const REJECTIONS = set(
  'no nope wrong false incorrect nonsense rubbish never myth untrue nah flip negative hardly reverse',
);

/** Fixed openings of a sentence that rejects the one before, after the first word. */
export const REJECTING_OPENINGS: readonly string[] = [
  'not so',
  'not true',
  'not quite',
  'not at all',
  'not correct',
  'it is not',
  "it isn't",
  'that is wrong',
  "that's wrong",
  'that was wrong',
  'that was a mistake',
  'this was wrong',
  'i was wrong',
  'we were wrong',
  'that is false',
  "that's false",
  'that is backwards',
  "that's backwards",
  'that is not',
  "that's not",
  'that is a myth',
  'this is wrong',
  'this is false',
  'this is a myth',
  'other way round',
  'other way around',
  'the other way',
  'the opposite',
  'it is the opposite',
  "it's the opposite",
  'it is the reverse',
  'it is exactly the opposite',
  'it is just the opposite',
  'quite the opposite',
  'just the opposite',
  'the reverse is',
  'the reverse holds',
  'the reverse applies',
  'the reverse of',
  'it is wrong',
  "it's wrong",
  'it is the other way',
  "it's the other way",
  'we struck',
  'taken down',
  'torn down',
  'binned',
  'crossed out',
  'scrapped',
  'it should',
  'it must',
  'should be',
  'should read',
  'read instead',
  'correct the',
  'strike it',
  'delete',
  'we said the opposite',
  'backwards',
  'upside down',
];

/** Verbs of a forbidding: "never write", "don't teach that". */
export const TEACHING_VERBS = set(
  'write say teach tell think assume believe call read chart record answer accept let',
);

export const OPTION_LEAD =
  /\b(?:(?<!, )which (?:of|one|statement|answer|is|are|size|needle|cannula|catheter|suture)|true or false|t\/f|circle|tick|select|choose (?:one|the|all)|pick (?:one|the|all)|all that apply|true or not|right or wrong|multiple choice|mark each|decide whether)\b/;

/** A heading of a part of a test. */
export const TEST_HEADING =
  /\b(?:quiz|questions?|tests?|exam|mcqs?|answers?|key|check yourself|revision|assessment|self-check|practice)\b/i;
