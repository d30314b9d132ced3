/** A ladder of evidence for the system of a bare number: the nearest rung that names one system decides. */
import { matchesOf } from '../../notes/index.ts';
import type { System } from '../../sizes/model.ts';
import { largeTube } from '../sense/note-facts.ts';
import type { Place } from '../sense/place.ts';
import { holds, mentionsIn } from './board.ts';
import type { Frame } from './frame.ts';
import type { Question } from './question.ts';
import { RUNGS, writtenBefore } from './rungs.ts';
import { besideZeros, suits } from './suits.ts';
import { SHARE_METRIC } from './thread-rungs.ts';

export type RungName = keyof typeof RUNGS;

export interface Settled {
  readonly system: System;
  /** Set where the number stands for another value: a 35 wire is 0.035 in. */
  readonly value?: number;
  readonly rung: RungName;
  /** The context speaks of it, yet a reader would not be sure. */
  readonly unsure?: true;
}

/** Rungs from near to far, and the frames in which each may be climbed. */
const LADDER: readonly (readonly [RungName, readonly Frame[] | 'any'])[] = [
  ['bracket', 'any'],
  ['metric-figure', 'any'],
  ['of-metric', 'any'],
  ['a-third', 'any'],
  ['said-once', 'any'],
  ['unit-before', 'any'],
  ['reply', 'any'],
  ['inner-numbered', 'any'],
  ['fellow-options', 'any'],
  ['asked', ['option', 'alone', 'run', 'colon', 'loose', 'handed']],
  ['noun', ['article', 'plural', 'handed', 'run', 'colour', 'colon', 'loose']],
  ['noun-before', ['article', 'run', 'handed', 'loose']],
  ['noun-apart', 'any'],
  ['ends-with', ['loose']],
  ['catheter-is', ['article']],
  ['thrice', 'any'],
  ['longer', ['article']],
  ['sentence', 'any'],
  ['sentence-thread', ['article', 'handed', 'colon', 'run']],
  ['thread-rule', ['article', 'run', 'handed']],
  ['cells', ['alone']],
  ['siblings', ['alone', 'option', 'colour', 'article']],
  ['site', ['article', 'plural', 'run', 'handed', 'colour']],
  ['for-people', 'any'],
  ['sentence-word', ['article', 'plural', 'run', 'colour', 'colon']],
  ['sentence-device', ['article', 'plural', 'run', 'colour', 'handed', 'option']],
  ['which-flows', ['run', 'option']],
  ['earlier', ['article', 'plural', 'run', 'colour', 'handed', 'colon', 'option']],
  ['earlier-device', ['article', 'plural', 'run', 'colour', 'colon', 'option', 'handed']],
  ['earlier-word', ['article', 'plural', 'run', 'colour']],
  ['label', ['article', 'plural', 'run', 'colour', 'colon', 'option', 'alone']],
  ['passage', ['article', 'plural', 'run', 'colour', 'option']],
  ['passage-device', ['article', 'plural', 'run', 'colour']],
  ['flow', ['article', 'plural']],
  ['before', ['article', 'plural', 'run', 'colour', 'option']],
  ['heading', ['article', 'plural', 'run', 'colour', 'colon']],
  ['title', ['article', 'plural', 'run', 'colour', 'colon']],
  ['tube-decimal', ['article', 'plural', 'run', 'handed', 'colon', 'option', 'alone', 'loose']],
  ['gauge-run', ['run']],
  ['note', ['article', 'run', 'colour', 'plural']],
  ['general-device', ['article', 'plural', 'run', 'colour']],
];

/** The system that the context settles, with the rung that did. */
export function settle(question: Question): Settled | undefined {
  const { frame, bare, place } = question;
  for (const [rung, frames] of LADDER) {
    if (frames !== 'any' && !frames.includes(frame)) continue;
    if (place.scene.passage.list && rung === 'before' && frame !== 'colour') continue;
    const systems = RUNGS[rung](question).filter(
      (system) =>
        (bare.decimals < 2 || system === 'millimetre') &&
        !(system === 'french' && AROUND.has(rung) && RUNS.test(place.text)) &&
        (suits(system, bare) ||
          (system === 'usp' && (countsUp(bare) || besideZeros(place, bare) || rung === 'fellow-options')) ||
          rung === 'asked' ||
          rung === 'reply' ||
          rung === 'longer' ||
          rung === 'a-third' ||
          rung === 'said-once' ||
          holdsNearby(question, system) ||
          wideGauge(question, system) ||
          (rung === 'before' && writtenBefore(question, system)) ||
          horsesTube(question, rung, system)),
    );
    const [system] = systems;
    if (system && systems.length === 1)
      return { system, rung, ...(allowed(system, rung, question) ? {} : { unsure: true }) };
    if (systems.length > 1) return undefined;
    if (
      WIRE_FRAMES.has(frame) &&
      WIRES.has(bare.value) &&
      RUNGS[rung](question).includes('wire-inch') &&
      !gaugeBefore(question)
    )
      return { system: 'wire-inch', value: bare.value / 1000, rung };
  }
  return undefined;
}

/** "20 isn't faster than 18": a litre through cannulas, whatever French was spoken of around. */
const AROUND: ReadonlySet<RungName> = new Set<RungName>(['passage', 'passage-device']);
const RUNS = /\b(?:faster|slower|fastest|slowest)\b/i;

/** "0, 1, 2, 3, 4, 5, 6, 7": the whole numbers of the threads, told one after the other. */
const countsUp = ({ run, value, spoken }: Question['bare']): boolean =>
  !spoken && value <= 10 && run.values.includes(0) && run.values.includes(value - 1);

/** Thousandths of an inch by which guidewires are asked for: "swap the 35 for an 18". */
const WIRES: ReadonlySet<number> = new Set([14, 16, 18, 21, 25, 32, 35, 38]);
const WIRE_FRAMES: ReadonlySet<Frame> = new Set<Frame>(['article', 'plural']);

/** "a 21 G for the small ones … the 21 is thinner": no thousandths of an inch where a gauge of that number was spoken of. */
function gaugeBefore({ bare, place }: Question): boolean {
  const { passage } = place.scene;
  const above = place.around.scenes[passage.index - 1]?.passage.text ?? '';
  const before = `${above}\n${passage.text.slice(0, bare.span.start)}`.slice(-GAUGE_REACH);
  return matchesOf(before, GAUGE).some((match) => match[1] === `${bare.value}`);
}
const GAUGE_REACH = 600;
const GAUGE = /\b(\d+) ?(?:G|gauge)\b/g;

/** "a 26 cuffed tube"; "the 28 was a tight fit", where the tubes of horses were spoken of. */
const horsesTube = ({ bare, place }: Question, rung: RungName, system: System): boolean =>
  system === 'tube-id' &&
  (bare.value * 2) % 1 === 0 &&
  !bare.spoken &&
  (!/^(?:tube-decimal|inner-numbered)$/.test(rung) || bare.value <= 16) &&
  ((rung === 'noun' && bare.value <= 30 && /^\s(?:mm\s)?cuffed\b/i.test(place.after)) ||
    (TUBE_NAMED.has(rung) && largeTube(place.around, system, bare.value)));
const TUBE_NAMED: ReadonlySet<RungName> = new Set<RungName>([
  'sentence',
  'earlier',
  'earlier-device',
  'sentence-device',
  'passage',
  'passage-device',
  'before',
  'noun',
  'tube-decimal',
  'inner-numbered',
]);

/** French decimals are read where the same value was written in full: "the 8.5". */
const holdsNearby = ({ bare, known: mentions, place }: Question, system: System): boolean =>
  bare.decimals > 0 &&
  mentionsIn(mentions, { start: Math.max(0, place.span.start - 400), end: place.span.start }).some(
    (one) => one.decimals > 0 && one.sizes[0]?.system === system && holds(one, bare.value),
  );

/** "a 10 is narrower than a 14", where "10 gauge" was written in full a few lines before. */
const wideGauge = ({ bare, known: mentions, place, board, frame }: Question, system: System): boolean =>
  system === 'needle-gauge' &&
  frame === 'article' &&
  [
    ...mentionsIn(mentions, { start: Math.max(0, place.span.start - 400), end: place.span.start }),
    ...[1, 2, 3, 4].flatMap((back) => board.settled[place.scene.passage.index - back] ?? []),
  ].some((one) => one.sizes[0]?.system === system && holds(one, bare.value));

/** Rungs near enough for "a seven" to be a tube. */
const TUBE_RUNGS: ReadonlySet<RungName> = new Set<RungName>([
  'sentence',
  'sentence-device',
  'earlier',
  'earlier-device',
  'noun',
]);

/** "… in children 1, 2" at the very end, after a word that hands nothing over: numbers of references. */
function citation(
  { scene, devices, materials }: Place,
  { run, spoken, decimals }: Question['bare'],
): boolean {
  const { text } = scene.passage;
  if (spoken || decimals > 0 || run.values.length < 2 || run.values.includes(0)) return false;
  if (!/^[.)]?\s*(?:\n|$)/.test(text.slice(run.end)) || !/[a-z]{4}[).]?\s$/.test(text.slice(0, run.start)))
    return false;
  if (!/^[0-9]{1,2}(?:,\s[0-9]{1,2})+$/.test(text.slice(run.start, run.end))) return false;
  return (
    ![...devices, ...materials].some((hit) => hit.end === run.start - 1) &&
    !HANDING.test(text.slice(0, run.start))
  );
}
const HANDING =
  /\b(?:sizes?|numbers?|USP|sutures?|threads?|strands?|stitch(?:es)?|gut|with|using|from|than|into|between|either|comes|stocked|need(?:s|ed)?|want(?:s|ed)?|take[ns]?|call(?:s|ed)?|then|also|only|just)\s$/i;

/** "Size 2 and 2-0 are two threads. A 2 is …": the whole number stands in full shortly before. */
const toldWhole = ({ bare, known: mentions, place }: Question): boolean =>
  mentionsIn(mentions, { start: Math.max(0, place.sentence.start - 240), end: place.sentence.start }).some(
    (one) => one.sizes[0]?.system === 'usp' && holds(one, bare.value),
  );

/** "Metric" stands right before, or behind both of "3 and 4 sit in metric 6". */
const besideMetric = ({ before, scene }: Place, { run }: Question['bare']): boolean =>
  /\bmetric\b/i.test(before.slice(-24)) ||
  (run.values.length > 1 && SHARE_METRIC.test(scene.passage.text.slice(run.end, run.end + 40)));

/** Thread numbers and small number words need more than a context. */
function allowed(system: System, rung: RungName, question: Question): boolean {
  const { bare, frame, place } = question;
  if (bare.spoken && bare.value < 12 && system !== 'usp' && bare.decimals === 0)
    return system === 'tube-id' && TUBE_RUNGS.has(rung) && /\ban?\s$/i.test(place.before);
  if (system !== 'usp') return true;
  if (bare.spoken)
    return rung === 'sentence' && bare.value <= 1 && frame === 'article' && /\ban?\s$/i.test(place.before);
  if (rung === 'bracket' || (rung === 'of-metric' && besideMetric(place, bare))) return true;
  if (citation(place, bare)) return false;
  if (rung === 'sentence') return frame !== 'loose' || bare.value === 0;
  return (
    frame === 'alone' ||
    frame === 'option' ||
    bare.run.values.includes(0) ||
    (rung === 'earlier' && frame === 'article' && toldWhole(question)) ||
    (bare.value === 1 && frame === 'article') ||
    /\b(?:thick|thin|heav|fin|strong|weak|stout|coarse|plain|whole|numbers?|sizes?|USP)/i.test(place.text)
  );
}
