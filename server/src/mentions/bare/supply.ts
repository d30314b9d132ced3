/** "Put a spare 14 in the top drawer", "scissors and a 20", "put a 16 into her": a size asked for, fetched or used, its system unsaid. */
import type { Place } from '../sense/place.ts';
import { wholeWords } from '../words/pattern.ts';
import type { Bare } from './tokens.ts';

/** One of them, or some: the number names a thing that was not spoken of before. */
const INDEFINITE =
  /\b(?:an?|another|spare|a couple of|a few|two|three|some|more)\s(?:spare\s|new\s|clean\s|second\s)?["“‘'*_]?$/i;

/** Somebody asks, brings, keeps, uses. */
const PRACTICAL = wholeWords([
  'puts?',
  'needs?',
  'needed',
  'rings?',
  'rang',
  'phones?',
  'phoned',
  'calls?',
  'called',
  'ask(?:s|ed)?',
  'sends?',
  'sent',
  'leaves?',
  'left',
  'holds?',
  'carr(?:y|ies)',
  'brings?',
  'fetch(?:es)?',
  'gets?',
  'got',
  'have',
  'has',
  'had',
  'wants?',
  'wanted',
  'order(?:s|ed)?',
  'lays?',
  'open(?:s|ed)?',
  'finds?',
  'lends?',
  'borrow(?:s|ed)?',
  'packs?',
  'keeps?',
  'stock(?:s|ed)?',
  'restock(?:s|ed)?',
  'sign(?:s|ed)? for',
  'list',
  'spare',
  'plus',
  'scissors',
  'tape',
  'dressings?',
]);

/** Where supplies stand and lists are kept. */
const STORES = wholeWords([
  'drawers?',
  'troll(?:e|ie)ys?',
  'carts?',
  'bags?',
  'box(?:es)?',
  'shel(?:f|ves)',
  'cupboards?',
  'kits?',
  'stores?',
  'stock',
  'restock(?:ed|ing)?',
  'pouch(?:es)?',
  'lockers?',
  'spares?',
  'top-up',
  'lists?',
  'form',
  'sheet',
  'delivery',
  'tape',
  'scissors',
  'dressings?',
  'gauze',
  'wipes',
  'torch',
  'rooms?',
  'bays?',
  'beds?',
  'theatres?',
  'stations?',
  'on the (?:chart|board|whiteboard)',
]);

/** What becomes of a thing that is put into somebody, or lies wrapped in a packet. */
const HANDLED = wholeWords([
  '(?:un|re)?opened',
  '(?:un|re)?wrapped',
  '(?:un)?used',
  'unopened',
  'in (?:its|the) packet',
  'without (?:its|a|the) packet',
  'sterile',
  'sited',
  'inserted',
  'removed',
  'in place',
  'in situ',
  '(?:in|out)(?=[.,;!]|$)',
  'blocked',
  'kinked',
  'clogged',
  'leak(?:s|ed|ing)?',
  'flush(?:es|ed)',
  'drain(?:s|ed|ing)',
  "(?:won['’]t|will not|wouldn['’]t|would not|doesn['’]t|does not|didn['’]t|did not) (?:go(?: in)?|fit|pass|drain|flush)",
]);

/** Does a short line speak of things that are stored, fetched or put into somebody? */
export const ofSupplies = (line: string): boolean =>
  STORES.test(line) || PRACTICAL.test(line) || HANDLED.test(line);

/** Talk of how wide or fast a thing is, or of what is named: the context is there to be followed. */
export const SIZE_TALK =
  /\b(?:[a-z]+er than|thick\w*|thinn?\w*|wid(?:e|er|est|th)|narrow\w*|bores?|fine[rst]*|big\w*|large\w*|small\w*|flows?|fast\w*|slow\w*|runs?(?!\sout)|millilit\w+|m[lL]|drips?|gau?ges?|french|diameters?|usual\w*|instead|number|fails?|bleed\w*|bled|blood|transfus\w*|veins?|vein|contrast|colou?r)\b|[0-9]\s?-?(?:mm|G|Fr|Ch)\b/i;

const AFTER =
  /^["”’'*_]?\s?(?:[.,;:)?!"”’*_]|$|(?:and|for|when|from|by|at|on|with|in|into|to|out|ready|please|before|over|back|each|as|open|here|there|aside|handy|now|today|tonight|tomorrow|if|in case|so|put|placed|sited)\b)/i;

/** "return the 12 to its bin", "whoever borrowed the 10": where it belongs is told, not what it is. */
const MOVED =
  /\b(?:return(?:s|ed|ing)?|borrow(?:s|ed|ing)?|put(?:s|ting)? back|brings? back|brought back|took|takes|lost|mislaid|missing)\s["“‘'*_]?(?:an?|the|our|that)\s["“‘'*_]?$/i;
const PLACED =
  /\b(?:bins?|back where|where it (?:lives|belongs|came from)|home|cupboard|drawers?|shel(?:f|ves)|troll(?:e|ie)ys?|carts?|racks?|pegs?|counts?)\b/i;

/** "The 14 from trolley two": known by where it lay. */
const FROM_STORE =
  /^\sfrom\s(?:(?:the|our|my|that|this|your|her|his)\s)?(?:[a-z]+\s){0,2}(?:troll(?:e|ie)ys?|drawers?|shel(?:f|ves)|cupboards?|bags?|box|trays?|stores?|kit|rack)\b/i;
const DEFINITE = /\bthe\s["“]?$/i;
/** "He says a 16 will do." */
const SAYS = /\b(?:says?|said|thinks?|thought|reckons?|suggests?|suggested)\s(?:that\s)?an?\s$/i;
const WILL_DO = /^\s(?:will|would|should|might)\s(?:do|be fine|be enough)\b/i;

/** Is it asked for or used, with nothing said about its size? `far`: passages before speak of one system. */
export function supplied(place: Place, bare: Bare, far: boolean): boolean {
  if (bare.spoken && bare.value < 3) return false;
  if (SAYS.test(place.before) && WILL_DO.test(place.after)) return true;
  if (DEFINITE.test(place.before) && FROM_STORE.test(place.after) && !SIZE_TALK.test(place.text)) return true;
  if (
    MOVED.test(place.before) &&
    PLACED.test(place.after) &&
    AFTER.test(place.after) &&
    !SIZE_TALK.test(place.text)
  )
    return true;
  const indefinite = bare.plural || INDEFINITE.test(place.before);
  if (!indefinite || !AFTER.test(place.after) || SIZE_TALK.test(place.text)) return false;
  return STORES.test(place.text) || (!far && PRACTICAL.test(place.before));
}
