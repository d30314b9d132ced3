/** Bare numbers among the answers offered to a question: "finest: a 2-0, b 4-0, c 0, d 1", "same as 0? (a) 1 (b) 1-0". */
import type { Mention } from '../model.ts';
import { mentionsIn } from './board.ts';
import type { Rung } from './question.ts';

/** How far around the number the other answers stand. */
const REACH = 80;
/** What marks an answer, right before it. */
const MARKED = /(?:^|[\s(,;])\(?[a-eA-E](?:[).:]\s{0,3}|\s)["“]?$/;
/** The question wants the number of the other scale, or offers such. */
const METRIC_ASKED = /\b(?:in|what|which)\smetric\b|\bmetric\s(?:size|number|figure|equivalent)/i;
const DECIMAL_OFFERED = /(?:^|[\s(])[a-eA-E](?:[).:]\s?|\s)[0-9]{1,2}\.[0-9]/;

/** Answers that are threads, where no answer is anything else. */
export const fellowOptions: Rung = ({ place, bare, frame, known }) => {
  if (bare.spoken || bare.decimals > 0 || bare.value > LARGEST) return [];
  const { text } = place.scene.passage;
  const asks =
    bare.value === 0 && /^["”]?\?\s/.test(place.scene.passage.text.slice(bare.span.end, bare.span.end + 4));
  if (frame !== 'option' && !asks) return [];
  const start = Math.max(0, bare.span.start - (asks ? 0 : REACH));
  const offered = mentionsIn(known, { start, end: bare.span.end + REACH }).filter((one) =>
    isOffered(text, one),
  );
  if (offered.length === 0 || !offered.every(isThread)) return [];
  const around = text.slice(Math.max(0, bare.span.start - 2 * REACH), bare.span.end + REACH);
  return METRIC_ASKED.test(around) || DECIMAL_OFFERED.test(around) ? [] : ['usp'];
};
/** Thickest thread that is offered as an answer. */
const LARGEST = 7;

const isOffered = (text: string, { span }: Mention): boolean =>
  MARKED.test(text.slice(Math.max(0, span.start - 6), span.start));
const isThread = ({ sizes: [size] }: Mention): boolean => size?.system === 'usp';
