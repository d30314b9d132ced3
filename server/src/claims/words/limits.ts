/** Words of a limit and of keeping to it. One idea a list. */

const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));

/** "20 Fr and above": a bound by the number itself, for scales that rise with the size. */
export const NUMBER_ABOVE = set('above up upward upwards over more greater higher');
export const NUMBER_BELOW = set('below under less lower fewer down downward downwards');

/** "nothing narrower than 16 G": what the comparing word says is shut out. */
export const SHUTS_OUT = set('no nothing not none never nobody without avoid');

/** "anything finer than 6-0": the comparing word opens the class, its own end left out. */
export const OPENS = set('anything everything all any every those sizes ones whatever');

/** "a 20 G satisfies that rule", "a 10 Fr will do". */
export const KEEPS: readonly RegExp[] = [
  /^(?:therefore |thus |also |easily |just |fully |still )?(?:satisf(?:y|ies)|meets?|fulfils?|fulfills?|honou?rs?|respects?|passes|clears|keeps? (?:to|within)|sticks? to|stays? within|complies with|comply with|conforms? to|agrees? with|fits?|matches|obeys|observes|falls within|lies within)\b(?: (?:the|that|this|our|both|your|its|it))?/,
  /^(?:will|would|can) (?:also |therefore |thus |just |easily )?(?:do|serve|be used|be fine|be enough|go in|pass|suffice|satisf(?:y|ies)|meet|fulfil)\b/,
  /^(?:is|are) (?:also |therefore |thus |perfectly |quite |just |well |fully |still )?(?:fine|right|correct|allowed|permitted|acceptable|ok|okay|enough|in order|sufficient|suitable|within|inside|covered by|in line with|in keeping with|good enough|all right|permissible|compliant)\b/,
  /^(?:does|do) (?:well|nicely|fine|the job)\b/,
  /^qualif(?:y|ies)\b/,
  /^(?:is|are) (?:quite |just |certainly )?(?:thick|thin|wide|narrow|fine|big|small|large|slim) enough\b/,
  /^may (?:therefore |thus |also |well )?(?:stay|be used|go in|pass|remain|be taken|be chosen|be left in)\b/,
];

/** "the 16 Fr is below that", by the side that keeps to the limit. */
export const KEEPS_BELOW =
  /^(?:is|are|stays?|lies|remains?|falls|comes) (?:also |still |well |just |safely )?(?:below|under|within|underneath) (?:that|this|it)\b/;
export const KEEPS_ABOVE =
  /^(?:is|are|stays?|lies|remains?|comes) (?:also |still |well |just |safely )?(?:above|over|within|beyond) (?:that|this|it)\b/;

/** "12 Fr is one of those". */
export const BELONGS =
  /^(?:is|are|counts?|belongs?|ranks?) (?:also |therefore |thus |as )?(?:one of|among|amongst|part of|with|to) (?:them|those|these|that (?:group|set|class))(?= [.,;!)]|$)/;

/** "and so accepts a 22 G": who keeps the rule takes the size. */
export const ACCEPTS = /^(?:accepts?|allows?|permits?|admits?|takes?|passes|approves?)$/;

/** "a limit of 12 Fr", "the minimum is 24 Fr": nouns of a bound, for scales that rise. */
export const UPPER = set('limit maximum ceiling cap');
export const LOWER = set('minimum floor');

/** What the rule is called when a sentence refers back to it. */
export const RULE = set(
  `rule rules limit limits standard standards requirement requirements minimum maximum policy test condition conditions
  criterion criteria order request threshold cap ceiling floor advice instruction bill`,
);

/** The consequence is drawn: "so a 10 Fr will do". */
export const SO = set('so therefore thus hence consequently accordingly');

/** Patients of whom a rule need not hold. */
export const PATIENTS = /^(?:child|children|infants?|neonates?|newborns?|babies|baby|toddlers?)$/;

/** Words with which an exception is made or a limit is left again. */
export const EXCEPTS =
  /^(?:but|except|excepting|exception|exceptions|unless|if|otherwise|instead|though|although|however|only|yet|even|when|where|than|too|not|no|never|nor|without|pinch|emergency|last|resort|cannot|can't|isn't|aren't|won't|doesn't|don't|outside|beyond|avoid|rather|failing|fails|failed|exceeds?|breaks?|versus|vs|whereas|while|despite|before|until|after|once|was|were|previously|formerly|old|maybe|perhaps|pairs?|\?)$/;

/** "such as 16 Fr", "including the 20 G": members named. */
export const EXAMPLES: readonly RegExp[] = [
  /^(?:,|\(|—|–|:)? ?(?:such as|for example|for instance|e\.g|like|including|say|i\.e|namely|among them|that is)(?: ,| :)?(?: (?:an?|the|our|your))?$/,
];
/** The same behind the size: "20 Fr among them", "5-0 for example". */
export const EXAMPLE_AFTER = /^(?:among them|for example|for instance|included|being one|say|e\.g)\b/;

/** "is fine for the cheek": said of another place than the limit. */
export const ELSEWHERE = set('for on in at as by during under over to from');
