/** Ways to tell the width of a size without a verb that sets them equal: calipers, asides, a noun for what it is. */
import type { Item } from '../text/items.ts';
import type { Group } from '../text/scene.ts';
import { HOLES, idle, MEASURE_AFTER, NEVER, phrase } from './equal-words.ts';
import { LENGTHS } from './equate.ts';

/** "it makes a 16 Fr about 5.3 mm": the verb stands before both. */
export const made = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  between.length > 0 &&
  between.length <= 2 &&
  between.every((item) => ['about', 'roughly', 'around', 'some', 'nearly'].includes(item.word)) &&
  items
    .slice(Math.max(0, left.from - 3), left.from)
    .some((item) => /^(?:makes?|gives?|puts?|has|have)$/.test(item.word));

/** "think of a 30 Fr as 10 mm". */
export const thought = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  between.some((item) => item.word === 'as') &&
  between.every((item) => idle(item) || phrase(item)) &&
  items
    .slice(Math.max(0, left.from - 4), left.from)
    .some((item) => /^(?:think|picture|remember|know|read)$/.test(item.word));

/** "32 French is the big one, eleven millimetres across": what it is, and then its width. */
export const introducedBy = (items: readonly Item[], right: Group, between: readonly Item[]) =>
  between.length >= 4 &&
  between.length <= 8 &&
  between.at(-1)!.word === ',' &&
  (between.at(-2)!.deviceNoun === true || between.at(-2)!.word === 'size') &&
  /^(?:is|was)$/.test(between[0]!.word) &&
  /^(?:the|our|an?|my)$/.test(between[1]!.word) &&
  between.slice(2, -1).every((item) => item.kind === 'word' && !NEVER.has(item.word)) &&
  MEASURE_AFTER.has(items[right.to + 1]?.word ?? '');

/** "Put a caliper on an 18 Fr and it should read 6 mm." */
export const metered = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  items.slice(0, left.from).some((item) => TOOLS.test(item.word)) &&
  !items.slice(0, left.from).some((item) => HOLES.test(item.word)) &&
  READS.test(between.map((item) => item.word).join(' '));
const TOOLS = /^(?:cal+ipers?|micrometers?|micrometres?|rulers?|gauges?|measure|measured|measuring)$/;
const READS =
  /^(?:\S+ ){0,2}?(?:,|and|,? ?then)? ?(?:you|we|it|they) (?:should |will |would |'ll |can )?(?:reads?|finds?|found|gets?|got|sees?|saw|measures?|measured|shows?|showed|gives?|gave|says?|said|comes? to|came to)(?: (?:about|roughly|only|just|nearly|around))?$/;

/** "The calipers showed 0.5 mm on a 25 G needle." */
export const read = (items: readonly Item[], left: Group, right: Group, between: readonly Item[]) =>
  LENGTHS.has(left.sizes[0]!.system) &&
  !LENGTHS.has(right.sizes[0]!.system) &&
  items.slice(0, left.from).some((item) => TOOLS.test(item.word)) &&
  /^(?:on|for|across|over) (?:an?|the|our|this|one)(?: \S+)?$/.test(
    between.map((item) => item.word).join(' '),
  ) &&
  items.slice(Math.max(0, left.from - 3), left.from).some((item) => SHOWS.test(item.word));
const SHOWS =
  /^(?:shows?|showed|reads?|gives?|gave|says?|said|measures?|measured|gets?|got|finds?|found|was|is)$/;

/** "a 27 G needle, at 0.4 mm, hardly hurts". */
export const aside = (items: readonly Item[], right: Group, between: readonly Item[]) =>
  LENGTHS.has(right.sizes[0]!.system) &&
  /^(?:\S+ )?, (?:at|with its|being|all of|which is)(?: (?:about|around|roughly|only|just|a|some|nearly))*$/.test(
    between.map((item) => item.word).join(' '),
  ) &&
  /^(?:[,)]|across|wide|thick)$/.test(items[right.to + 1]?.word ?? '');

/** "A 16 Fr drain, and that is 1.6 mm thick". */
export const resumed = (items: readonly Item[], right: Group, between: readonly Item[]) =>
  LENGTHS.has(right.sizes[0]!.system) &&
  between.slice(0, 2).every((item) => item.deviceNoun || /^(?:,|and|;|so|—|–|that)$/.test(item.word)) &&
  RESUMES.test(between.map((item) => item.word).join(' ')) &&
  MEASURE_AFTER.has(items[right.to + 1]?.word ?? '');
const RESUMES =
  /^(?:\S+ )?(?:[,;—–] )?(?:and|so) (?:that|it) (?:is|measures|will be|comes to)(?: (?:about|roughly|only|just|nearly|around|some))*$/;

/** "10–14 Fr, which one student correctly gave as 5 to 7 mm": told by another, and held to be right. */
export const endorsed = (between: readonly Item[]) =>
  ENDORSED.test(between.map((item) => item.word).join(' '));
const ENDORSED =
  /^(?:\S+ )?, which (?:\S+ ){1,5}?(?:(?:correctly|rightly) (?:\S+ )?(?:gave|put|quoted|called|made|reckoned|worked out|answered|said|knew)|(?:gave|put|quoted|reckoned|answered|knew) (?:it )?(?:correctly|rightly))(?: (?:as|at|to be|is))?(?: (?:about|roughly|around|nearly))?$/;

/** "18 Ch: take off a third, 12 mm", "15 Fr over pi, 4.8 mm": the sum is told on the way. */
export const reckoned = (right: Group, between: readonly Item[]) =>
  LENGTHS.has(right.sizes[0]!.system) && RECKONS.test(between.map((item) => item.word).join(' '));
const RECKONS =
  /^(?:[:,;—–] )?(?:(?:take|knock) (?:off|away) (?:a|one) (?:third|half|quarter)|(?:take|knock) (?:a|one) (?:third|half|quarter) (?:off|away)|(?:over|÷|divided by|divide by) (?:pi|π|three|3)) [,:=](?: (?:so|that is|makes|gives|is))?$/;

/** "has an outside diameter of 8 mm and is therefore sold as a 24 Fr": the measure, and then the name it goes by. */
export const soldAs = (left: Group, right: Group, between: readonly Item[]) =>
  LENGTHS.has(left.sizes[0]!.system) &&
  !LENGTHS.has(right.sizes[0]!.system) &&
  SOLD_AS.test(between.map((item) => item.word).join(' '));
const SOLD_AS =
  /^(?:(?:wide|across|thick|in (?:outside |outer )?diameter|outside) )?(?:, )?(?:and|so) (?:it )?(?:is|are|was) (?:(?:therefore|so|thus|hence|then|accordingly) )?(?:sold|labell?ed|called|numbered|marked|known|catalogued|listed|named|sized|classed|printed)(?: as)?(?: (?:an?|size))?$/;

/** "The packet shows USP 4-0 and, below it, metric 1.5": the two names printed on one packet. */
export const printed = (items: readonly Item[], left: Group, between: readonly Item[]) =>
  PRINTED.test(between.map((item) => item.word).join(' ')) &&
  PACKET.test(
    items
      .slice(Math.max(0, left.from - 9), left.from)
      .map((item) => item.word)
      .join(' '),
  );
const PRINTED =
  /^(?:, )?(?:and )?(?:, )?(?:below it|underneath(?: it)?|beneath(?: it)?|under it|beside it|next to it|just below)(?: ,)?(?: the words?)?$/;
const PACKET =
  /\b(?:packet|packets|label|labels|box|foil|sleeve|wrapper)\b(?: \S+){0,4} (?:shows?|reads?|says?|carries|bears?|gives?|states?|printed|marked)(?: both)?(?: usp)?$/;
