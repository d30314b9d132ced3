/** Words that announce questions and answers, in one table for every layout. */

/** What an answer calls itself. */
const RIGHT = 'right|correct|model|best|expected|sample|ideal|full|accepted|official|short';
const NAMES =
  'answer|ans|model(?=\\s*:)|gap(?=\\s*:)|(?:card )?back|turn over|over(?:leaf)?|reverse|correct(?=\\s*:)|right(?=\\s*:)|definition|response|reply|solution|ruling|verdict|key|accept|allow|expect(?:ed)?|looking for';
/** "Correct sequence:", "Right one:", "MCQ key:". */
const CHOSEN =
  '(?:correct|right|keyed|true|best) (?:sequence|order|row|one|choice|option|letter|match|pair|word|colour|number)(?=\\s*[:=→–—])|[a-z]{2,5} key(?=\\s*[:=→])';
/** "Two points:", "Full marks:", "You get the point for": what earns something is right. */
const EARNS =
  '(?:one|two|three|four|full|[1-5]) (?:points?|marks?)(?=\\s*[:=→–—])|award (?:one|the|a|full) (?:marks?|points?) for';

/** In front of an answer. */
export const ANSWER_LABEL = new RegExp(
  `^\\s*(?:the\\s+)?(?:(?:${RIGHT})\\s+)?(?:${NAMES}|${CHOSEN}|${EARNS}|a)\\s*\\d{0,2}\\s*(?:[.:)=](?!\\d)|[–—-](?!\\d)|is\\b|→)\\s*|^\\s*(?:(?:the )?(?:answer|right one|it) should (?:be|have been|read)|you should (?:have|get|say)(?: (?:got|written|said|put))?|i hope you (?:said|wrote|got|put))\\s+(?=\\S)`,
  'i',
);

/** In front of a question. */
export const QUESTION_LABEL =
  /^\s*(?:[Qq]\s(?=\s*[A-Z\d])|(?:q(?:uestion)?|(?:card )?front|term|prompt|card|ask|viva)\s*\d{0,2}\s*(?:[.:)–—-]|→|=)|\d{1,2}\.\d{1,2}[.)]?\s(?!(?:or|and|vs?|mm|id|tubes?|to)\b)|[a-z][1-9]\d?(?:[.:)]|\s[–—-]+|(?=\s))\s|\(?[ivx]{1,4}[.)]\s|\d{1,2}[.)]\s)\s*/i;

/** A line that can only ask. */
export const PROMPT =
  /^\W{0,3}(?:q(?:uestion)?|(?:card )?front|term|prompt|card|ask|task|stem|viva|oral)\s*\d{0,2}\s*(?:[.:)–—-]|→|=)\s*\S/i;
