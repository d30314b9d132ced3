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

/** Talk of how wide or fast a thing is, or of what is named: the context is there to be followed. */
export const SIZE_TALK =
  /\b(?:[a-z]+er than|thick\w*|thinn?\w*|wid(?:e|er|est|th)|narrow\w*|bores?|fine[rst]*|big\w*|large\w*|small\w*|flows?|fast\w*|slow\w*|runs?|millilit\w+|m[lL]|drips?|gau?ges?|french|diameters?|usual\w*|instead|number|fails?|bleed\w*|bled|blood|transfus\w*|veins?|vein|contrast|colou?r)\b|[0-9]\s?-?(?:mm|G|Fr|Ch)\b/i;

const AFTER =
  /^["”’'*_]?\s?(?:[.,;:)?!"”’*_]|$|(?:and|for|when|from|by|at|on|with|in|into|to|out|ready|please|before|over|back|each|as|open|here|there|aside|handy|now|today|tonight|tomorrow|if|in case|so|put|placed|sited)\b)/i;

/** Is it asked for or used, with nothing said about its size? `far`: passages before speak of one system. */
export function supplied(place: Place, bare: Bare, far: boolean): boolean {
  if (bare.spoken && bare.value < 3) return false;
  const indefinite = bare.plural || INDEFINITE.test(place.before);
  if (!indefinite || !AFTER.test(place.after) || SIZE_TALK.test(place.text)) return false;
  return STORES.test(place.text) || (!far && PRACTICAL.test(place.before));
}
