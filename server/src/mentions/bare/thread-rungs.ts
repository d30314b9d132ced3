/** Rungs for the numbers of threads, USP and metric. */
import { factsOf } from '../sense/note-facts.ts';
import { holds, mentionsIn, systemsOf } from './board.ts';
import type { Rung } from './question.ts';

/** "closes with 0, and she with 1, both polydioxanone": the thread of a nought is named in the sentence. */
export const sentenceThread: Rung = ({ place, bare }) =>
  place.materials.length > 0 && bare.value === 0 && !bare.spoken ? ['usp'] : [];

/** "past 0 the rule turns round, and 2 is thinner than 1": the rule of thread numbers. */
export const threadRule: Rung = ({ place, board }) =>
  factsOf(board.around).thread && THREAD_RULE.test(place.text) ? ['usp'] : [];
const THREAD_RULE =
  /\bwhole numbers?\b|\b(?:above|past|pass(?:ed)?|beyond|over|below|under)\s(?:0|zero|nought)\b|\b(?:noughts|zeros|zeroes)\b/i;

/** "3-0 nylon says 2", with the metric number spoken of: the number is the metric one. */
export const metricFigure: Rung = ({ place, known, bare }) => {
  if (METRIC.has(bare.value) && METRIC_TOLD.test(place.before)) {
    const near = { start: Math.max(0, place.sentence.start - NEAR), end: place.span.start };
    const named = mentionsIn(known, near).filter((one) => one.kind === 'size');
    return named.length > 0 && named.every((one) => one.sizes[0]?.system === 'usp') ? ['ep-metric'] : [];
  }
  const beside = NEXT_TO.test(place.before.slice(-24));
  if (!beside && !/\b(?:says|reads|is|be|shows|prints|becomes)\s$/i.test(place.before)) return [];
  const near = place.scene.passage.text.slice(Math.max(0, place.sentence.start - NEAR), place.sentence.end);
  const previous = place.around.scenes[place.scene.passage.index - 1]?.passage.text.slice(-BEFORE) ?? '';
  const thread = mentionsIn(known, place.sentence).some((one) => one.sizes[0]?.system === 'usp');
  const spoken = beside ? /\bmetric\b/i : /\bmetric (?:figure|number|size|one|label|value)s?\b/i;
  if (thread && spoken.test(`${previous} ${near}`)) return ['ep-metric'];
  return THREAD_IS.test(place.before.slice(-24)) && SAYS_METRIC.test(near) ? ['ep-metric'] : [];
};
/** "The European number of this suture is", "when the firm wants the metric size I tell him": then its figure. */
const METRIC_TOLD =
  /\b(?:metric|European|EP|Ph\.? ?Eur\.?)\s(?:(?:[a-z]+\s)?(?:numbers?|sizes?|figures?|values?|labels?|names?|codes?|scale|system|side|catalogue|boxe?s?|packets?|packs?|suppliers?|gauge)\b|one\s)(?:(?!\b(?:not|never|no|than|from|unlike)\b)[a-zé ,'’-]){0,70}\b(?:is|=|says|reads|shows|gives|have|has|say|tell\s(?:him|her|them|you|us)|call(?:s|ed)?(?:\s(?:it|this|that|them))?|ask(?:s)?\sfor|order|write|hears|wants|want|becomes|be|as|an?)\s(?:an?\s)?$/i;
const METRIC: ReadonlySet<number> = new Set([0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 1, 1.5, 2, 3, 3.5, 4, 5, 6, 7, 8]);
/** How far back the metric number is spoken of: in the passage, and in the one before. */
const NEAR = 200;
const BEFORE = 320;
/** "4-0 next to 1.5, or 6-0 beside 0.7": the two numbers of one box. */
const NEXT_TO = /\b[0-9]{1,2}-0\s(?:next to|beside|alongside|over|above|with|by)\s$/i;
/** "It says metric as well: 4-0 is 1.5 and 5-0 is 1." */
const THREAD_IS = /(?<![0-9A-Za-z.-])[1-9][0-2]?-0\s(?:is|=|reads)\s$/i;
const SAYS_METRIC = /\b(?:in|says|say|read|reads|gives?|show|shows|the|also) metric\b(?! [0-9])/i;

/** "1 is metric 4": the number on the thread, and what it is on the other scale. */
export const ofMetric: Rung = ({ place, bare }) =>
  SHARE_METRIC.test(place.scene.passage.text.slice(bare.run.end, bare.run.end + 40)) ||
  /^\s(?:is|=|was|equals|goes with|corresponds to)\s(?:(?:the|EP)\s)?metric\s[0-9]/i.test(place.after) ||
  METRIC_IS.test(place.before)
    ? ['usp']
    : [];

/** "3 and 4 both sit in metric 6": two sizes of one row. */
export const SHARE_METRIC =
  /^\s(?:both\s)?(?:sit|lie|fall|share|are|go|come|live)\s(?:both\s)?(?:(?:in|under|at|as|to|on|with)\s)?(?:the\s(?:same\s)?)?metric\s[0-9]/i;

/** "metric 4 is 1": the other way round. */
const METRIC_IS =
  /\bmetric\s[0-9](?:\.5)?\s(?:is|=|was|equals|goes with|corresponds to|means)\s(?:(?:an?|the|size)\s)?$/i;

/** How far back the question of such an answer begins. */
const LINE = 120;

/** "4 metric (1)", "2-0 (3)": the other number of the same thread. */
export const bracket: Rung = ({ place, known, bare }) => {
  // "Finer needle: 18 or 21 G [21]"
  if (place.before.endsWith('[') && place.after.startsWith(']'))
    return systemsOf(
      mentionsIn(known, { start: Math.max(0, place.span.start - LINE), end: place.span.start }).filter(
        (one) => holds(one, bare.value),
      ),
    );
  if (!place.before.endsWith('(') || !place.after.startsWith(')')) return [];
  const before = mentionsIn(known, { start: Math.max(0, place.span.start - 24), end: place.span.start }).at(
    -1,
  );
  const system = before?.span.end === place.span.start - 2 ? before.sizes[0]?.system : undefined;
  if (system === 'ep-metric') return ['usp'];
  return system === 'usp' ? ['ep-metric'] : [];
};
