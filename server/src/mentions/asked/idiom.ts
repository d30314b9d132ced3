/** "The next gauge up", "a smaller gauge needle", "go down a size": a step whose direction the words leave open. */

import { everyMatch, finds } from '../../notes/patterns.ts';
import { phrase, type Text } from '../../texts/index.ts';
import type { Reading } from '../model.ts';
import { reading } from '../reading.ts';
import { headingsOf, type Scene, type Surroundings, sentenceAround } from '../scene.ts';
import { systemOf } from '../sense/systems.ts';
import { READING } from '../texts/readings.ts';
import { speaksOfClinic, tradeIn } from '../words/other-trades.ts';
import type { Question } from './model.ts';

const SIGN = '(?:larg|small|bigg)er';
const DEVICE = '(?:needles?|cannula[es]?|iv|ivs|iv lines?|catheters?|lines?)';

/** The scale is named: gauge. */
const GAUGE = new RegExp(
  `\\b(?:(?:the )?next gauge (?:up|down)|(?:an?|one) gauge (?:up|down)|(?:up|down) (?:an?|one) gauge|${SIGN}[ -]gauge(?: (?:iv )?${DEVICE})?)(?![\\w-]|,? (?:numbers?|figures?|sizes?|means?|is|are|runs?|such|wir(?:es?|ing)|cables?|cords?)\\b)`,
  'gi',
);
/** No scale is named: what is spoken of around it must be needles or thread. */
const STEP =
  /\b(?:go(?:ing)? (?:up|down) a size|(?:the )?next size (?:up|down)|next thread (?:up|down)|ask(?:s|ed)? for a (?:bigger|smaller|larger) number)(?![\w-])/gi;

/** Words that say which way is meant, or that the words are themselves what is talked about. */
const SETTLED =
  /[0-9](?:[\s-]?(?:G|ga|gauge|Fr|French)\b|-0\b)|[<>]|\b(?:bores?|wid\w+|narrow\w*|thick\w*|thinn?\w*|fine[rst]*|stout\w*|diameters?|radi(?:us|i)|lumens?|flows?|fast\w*|slow\w*|quick\w*|numbers?|figures?|holes?|viscous|oily?|confus\w*|idiom|ambiguous|meaning|means?|bigger|inverse\w*|opposite|paradox\w*|fragile|transfus\w*|blood|trauma|rapid\w*|resus\w*|headaches?|pain\w*|hurt\w*|bruis\w*|bleed\w*|infants?|neonat\w*|children|elderly|\w*hydrat\w*|leaks?|comfort\w*)\b/i;

const other = (match: string): string => (/\b(?:down|small)/i.test(match) ? 'thinner' : 'wider');

function readings(match: string, thread: boolean): readonly Reading[] {
  const up = !/\b(?:down|small)/i.test(match);
  const width = thread ? (up ? 'thicker' : 'thinner') : other(match);
  const thing = thread ? 'thread' : 'needle or cannula';
  const [zeros, gauge] = up
    ? [READING.moreZeros, READING.higherGauge]
    : [READING.fewerZeros, READING.lowerGauge];
  const number = `${up ? 'higher' : 'lower'} ${thread ? 'number of zeros' : 'gauge number'}`;
  return [
    reading(phrase(WIDTHS[`${width} ${thing}`]!), `${width} ${thing}`),
    reading(phrase(thread ? zeros : gauge), number),
  ];
}

const WIDTHS: Readonly<Record<string, Text>> = {
  'thicker thread': READING.thickerThread,
  'thinner thread': READING.thinnerThread,
  'wider needle or cannula': READING.wider,
  'thinner needle or cannula': READING.thinner,
};

/** The first such step of a passage; the habit is asked about once. */
export function stepQuestion(around: Surroundings, scene: Scene): Question | undefined {
  const { text } = scene.passage;
  if (!/gauge|size|thread|number/i.test(text) || finds(SIZED, text) || elsewhere(scene.brief))
    return undefined;
  for (const pattern of [GAUGE, STEP])
    for (const match of everyMatch(pattern, text)) {
      const span = { start: match.index, end: match.index + match[0].length };
      const deals = pattern === STEP ? dealsIn(around, scene) : 'gauge';
      if (!deals || settled(scene, span) || !requested(scene, span)) continue;
      return { span, readings: readings(match[0], deals === 'thread'), rule: 'step-without-direction' };
    }
  return undefined;
}

/** Yarn, dials, electric wire. */
function elsewhere(brief: string): boolean {
  const trade = tradeIn(brief);
  return trade === 'needled' || (trade === 'needleless' && !speaksOfClinic(brief));
}

/** A size of the scale in the passage shows the author's habit. */
const SIZED = /[0-9][\s-]?(?:G|ga|gauge)\b/;

/** Somebody is to use, fetch or change something: the effect of a size is no request. */
const REQUEST =
  /\b(?:use|using|choose|take|try|switch|swap|chang(?:e|ing)|need(?:s|ed)?|requir(?:e|es|ed)|want(?:s|ed)?|get|give|fetch|bring|pick|select|prefer|go|move|ask(?:s|ed)?|ring|order|stock|insert|place|consider|find|send|open)\b/i;

function requested(scene: Scene, span: Question['span']): boolean {
  const sentence = sentenceAround(scene, span);
  return REQUEST.test(scene.passage.text.slice(sentence.start, sentence.end));
}

function settled(scene: Scene, span: Question['span']): boolean {
  const sentence = sentenceAround(scene, span);
  const { text } = scene.passage;
  const rest = `${text.slice(sentence.start, span.start)} ${text.slice(span.end, sentence.end)}`;
  return SETTLED.test(rest) || text.slice(sentence.start, sentence.end).trimEnd().endsWith('?');
}

/** What the passage, the few before it and the heading deal in. */
function nearby(around: Surroundings, scene: Scene): readonly Scene[] {
  const { index } = scene.passage;
  const before = [1, 2, 3].flatMap((back) => around.scenes[index - back] ?? []);
  return [scene, ...before, ...headingsOf(around, scene.passage).slice(0, 1)];
}

/** The nearest passage that names anything of ours decides. */
function dealsIn(around: Surroundings, scene: Scene): 'thread' | 'gauge' | undefined {
  for (const one of nearby(around, scene)) {
    const systems = new Set([...one.kinds].flatMap((kind) => systemOf(kind) ?? []));
    if (systems.has('french') || systems.has('tube-id')) return undefined;
    if (one.materials.length > 0 || systems.has('usp') || /[0-9]-0\b/.test(one.brief)) return 'thread';
    if (systems.has('needle-gauge') || /[0-9]\s?G\b|\bgauge\b/.test(one.brief)) return 'gauge';
  }
  return undefined;
}
