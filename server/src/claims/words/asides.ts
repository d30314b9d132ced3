/**
 * Words that may stand in the middle of a statement and change nothing in it: where, when, by the way, to be sure. "The 18 G
 * on the top shelf", "a low number on the packet", "is of course thinner". One idea a list; all in lower case.
 */

const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));

const withPlurals = (words: string): ReadonlySet<string> =>
  new Set([...set(words)].flatMap((word) => [word, `${word}s`, `${word}es`]));

/** They stress what is said, or tie it to what came before. Hedges ("usually") and bounds ("only") are no such words. */
export const EMPHASIS = set(
  `really actually indeed therefore thus hence accordingly consequently obviously clearly plainly evidently simply certainly
  definitely surely truly naturally incidentally always again now still besides moreover furthermore`,
);

/** Behind these, such a word is part of what is denied, asked or compared. */
export const BINDING = set(
  `not no never neither nor isn't aren't doesn't don't didn't won't wasn't weren't cannot can't how so as too than hardly nearly`,
);

/** Said by the way, of several words. */
export const BY_THE_WAY: readonly string[] = [
  'in other words',
  'as it happens',
  'as it turns out',
  'by the way',
  'of course',
  'after all',
  'as a result',
  'for that reason',
  'for this reason',
  'without doubt',
  'no doubt',
  'for sure',
  'to be sure',
  'as ever',
  'as always',
  'as before',
  'as you know',
  'as we know',
  'as you will see',
  'as you can see',
  'as i said',
  'as we said',
  'as mentioned',
  "i'm afraid",
  'i am afraid',
  'mind you',
  'for the record',
  'to be clear',
  'to be exact',
  'to be precise',
  'in short',
  'in brief',
  'in a word',
  'put simply',
  'put another way',
  'just so you know',
  'for those who ask',
  'for anyone who asks',
  'for those interested',
  'if you ask me',
  'if anyone asks',
  'if anybody asks',
  'if asked',
  'if you are asked',
  'if they ask',
  'if in doubt',
  'for what it is worth',
  'believe it or not',
  'strange as it sounds',
  'odd as it sounds',
  'all else being equal',
  'all else equal',
  'other things being equal',
  'all other things being equal',
  'everything else being equal',
  'length and pressure being equal',
  'pressure and length being equal',
  'length being equal',
  'pressure being equal',
  "don't forget that",
  'do not forget that',
  'never forget that',
  "let's not forget that",
];

/** "to take the one in your hand", "to name a common one": how an example is brought in. */
export const TAKES = set('take name give pick mention quote cite choose');

/** Other ways to say that something is so. */
export const COPULAS: readonly string[] = [
  'will be',
  'turns out to be',
  'turn out to be',
  'turns out',
  'turn out',
  'ends up being',
  'ends up',
  'proves to be',
  'proves',
  'happens to be',
  'happen to be',
  'is going to be',
  'are going to be',
  'is bound to be',
  'are bound to be',
  'is known to be',
  'are known to be',
  'remains',
  'stays',
];

/** In front of a size or a device they say nothing of its size. */
export const ORDINARY = set(
  'ordinary standard plain normal regular common everyday simple disposable sterile clean fresh new spare proper decent single-use trusty',
);

/** Where things are kept, printed, shown and used, and where in a body. No part of a device: it has a width of its own. */
export const PLACES: ReadonlySet<string> = new Set([
  ...withPlurals(
    `shelf drawer cupboard cabinet rack rail hook trolley cart tray bench table desk counter bin basket crate locker cage peg board
    store storeroom stockroom box packet pack pouch sachet wrapper carton foil label sticker lid kit bag rucksack grab-bag van ambulance
    vehicle car helicopter truck chart poster wall door page slide sheet card handout leaflet list display notebook folder
    ward unit room bay theatre clinic surgery department hospital office corridor kennel barn stable yard station base
    arm forearm leg hand foot wrist elbow neck groin thigh back chest shoulder ankle knee finger ear scalp flank paw hoof
    patient child baby toddler adult man woman boy girl dog cat horse cow calf foal puppy kitten colleague student`,
  ),
  ...set('shelves feet women men children babies puppies calves storage stock front classes'),
]);

/** In front of a place. "Through", "under" and "with" are left out: what is done to a thing may change how it flows. */
export const AT = set('in on at by near beside behind');

export const DETERMINERS = set('the a an my your our his her their this that each every any');

/** Behind "'s" they tell that it says "is", and does not name an owner. */
export const OF_PREDICATE = set('the a an much far slightly just about as nothing simply still too only not');

/** Between the determiner and the place: these do not only say where. */
export const TELLING = set(
  `not no same other wrong opposite old older former previous next first second third last only correct right-hand false
  inner outer inside outside own`,
);

/** Which of several places: of these two, one compares elsewhere. */
export const WHICH_PLACE = set('lower upper');

/** Things are found there by these: "the number printed on the packet". */
export const LEFT_THERE = set(
  `printed written stamped marked kept stored stocked hanging lying sitting standing shown listed taped pinned clipped stuck left
  waiting found laid placed put hung displayed packed given seen used`,
);

/** Whoever put it there: "the 28 Fr that we put into the man". */
export const PERSONS = set('we you i they he she someone somebody nurses students people');

/** Times of one or two words. */
export const DAYS = set(
  'monday tuesday wednesday thursday friday saturday sunday mondays tuesdays wednesdays thursdays fridays saturdays sundays',
);
export const SPANS_OF_TIME = set(
  'night morning afternoon evening week weekend month year shift term session time',
);
export const WHICH_TIME = set('last this that next every each');

/** "Lay out the long clamp and remember that …": what follows is the statement. */
export const BEAR_IN_MIND = set('remember note know mind');

/** With these a part of a sentence begins that stands before or behind the statement, and has no size in it. */
export const OPENERS = set('while when whenever before after as in on at once today');
export const TAILS = set('so and which');

/** "…, so check the box": advice that follows from the statement. */
export const ADVICE = set(
  'check look ask take keep mind read write open be make remember count label pick choose watch hold warn think hand bring leave say go',
);

/** A part with one of these may say that the statement is not meant, not true, or true only there. */
export const WEIGHING = set(
  `wrong false true untrue mistake mistaken mistakes myth error errors correct incorrect right opposite reverse other otherwise
  say says said saying think thinks thought believe believes believed claim claims claimed told tell tells asked ask asks swear
  swears argue argues argued quote quotes quoted write writes wrote answer answers answered question questions guess guessed read
  reads would could might may should were perhaps maybe suppose imagine pretend supposed if unless except without instead rather
  almost nearly about roughly not no never nor neither none nobody nothing hardly cannot theory exam quiz test story joke dream
  old older former formerly once ago used expected disagree agree agreed doubt but however although though it they this that these
  those one ones both either than pump pressure pressed squeeze squeezed cut shorten shortened stretch wet dry kinked clamped clamp`,
);
