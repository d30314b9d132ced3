/** Bare numbers whose system the context settles: table cells, chains, "the 22", "a 16 flows faster". */
import { finds } from '../../notes/patterns.ts';
import type { System } from '../../sizes/model.ts';
import { mentionOf } from '../build.ts';
import type { Mention } from '../model.ts';
import { labelsOf, type Scene } from '../scene.ts';
import { tubeQuestion } from '../sense/numbered.ts';
import { earlier, type Place, placeOf } from '../sense/place.ts';
import { systemOf, WIDEST_TUBE } from '../sense/systems.ts';
import { ofOtherTrade } from '../sense/trade.ts';
import { size, type Verdict } from '../sense/verdict.ts';
import { BLADED } from '../words/counted.ts';
import { departs, fetchQuestion, handedThread, saidQuestion, threadQuestion } from './ask.ts';
import type { Board } from './board.ts';
import { tableNumbers } from './cells.ts';
import { chains } from './chain.ts';
import { frameOf, isClosed } from './frame.ts';
import { isOther } from './measures.ts';
import { jottingQuestion, messageQuestion } from './messages.ts';
import { isPlainNumber } from './plain-number.ts';
import { answersElse, asksElse } from './replies.ts';
import { type RungName, type Settled, settle } from './settle.ts';
import { type Bare, bareNumbers } from './tokens.ts';

export { type Board, boardOf, type Written } from './board.ts';

/** Bare sizes of one passage, given what the notations found everywhere. */
export function bareSizes(board: Board, scene: Scene): Mention[] {
  const own = board.settled[scene.passage.index]!;
  if (scene.passage.cell) {
    const { header, row } = labelsOf(board.around, scene.passage);
    if (
      (header && isOther(board.around, header)) ||
      (row && (isOtherRow(row.passage.text) || asksElse(row.passage.text)))
    )
      return [];
    const cells = tableNumbers(board.around, scene, own);
    if (cells.length > 0) return cells;
  }
  const taken = [...own.map((one) => one.span), ...board.refused[scene.passage.index]!];
  const free = bareNumbers(
    scene.passage.text,
    taken.sort((a, b) => a.start - b.start),
  );
  if (free.length === 0) return [];
  const chained = chains(board.around, scene, own, free);
  const known = [...own, ...chained].sort((a, b) => a.span.start - b.span.start);
  const inChain = new Set(chained.map((one) => one.span.start));
  const rest = free.filter((bare) => !inChain.has(bare.span.start));
  const found: Mention[] = [];
  for (const bare of rest) {
    const mention = understood({ board, scene, known, found }, bare);
    if (mention) found.push(mention);
  }
  return [...chained, ...found];
}

/** "Catheter length (cm)": the label of a row of other measures. */
const OTHER_ROW =
  /(?:\(|,\s|\bin\s)(?:cm|m|m[lL]|kg|g|mg|min|minutes?|s|days?|hours?|weeks?|months?|years?|%|m[lL]\/(?:min|h|hr|kg)|mmHg|cmH2O)\)?\s*$/;

/** "| Gloves | 7.5 |": a row of something that has numbers of its own. */
const isOtherRow = (label: string): boolean =>
  OTHER_ROW.test(label.slice(0, 60)) || (label.length < 30 && BLADED.test(label));

interface Passing {
  readonly board: Board;
  readonly scene: Scene;
  /** Mentions and chains of the passage, in text order. */
  readonly known: readonly Mention[];
  /** Bare numbers understood so far. */
  readonly found: readonly Mention[];
}

/** One bare number: a size, a question or nothing. */
function understood({ board, scene, known, found }: Passing, bare: Bare): Mention | undefined {
  const place = placeOf(board.around, scene, bare);
  if (countsLines(place) || isPlainNumber(place, bare) || ofOtherTrade(place)) return undefined;
  const frame = frameOf(place, bare);
  const message = messageQuestion(place, bare, board, known);
  if (message) return mentionOf(place, bare, message);
  if (!frame) {
    const said = saidQuestion(place, bare, board);
    return said && mentionOf(place, bare, said);
  }
  if (answersElse(place, bare, frame)) return undefined;
  const asked = questionAbout(place, bare);
  if (asked) return mentionOf(place, bare, asked);
  const read = settle({ board, place, bare, frame, known, settledBare: found });
  const settled =
    read?.unsure || (read && (countsSize(known, place, read.system) || underOther(place, read.system)))
      ? undefined
      : read;
  const handed = read?.system === 'usp' ? handedThread(place, bare) : undefined;
  if (handed) return mentionOf(place, bare, handed);
  const fetched = isFar(settled, place)
    ? fetchQuestion(place, bare, board, settled?.rung === 'before')
    : undefined;
  if (fetched) return mentionOf(place, bare, fetched);
  const jotted =
    settled && !REMOTE.has(settled.rung) ? undefined : jottingQuestion(place, bare, board, known);
  if (jotted) return mentionOf(place, bare, jotted);
  const closed = frame === 'alone' || frame === 'option' || isClosed(place, bare) || bare.decimals > 0;
  if (!settled || !(closed || OPEN.has(settled.rung)) || !runFits(settled.system, bare)) return undefined;
  const saw = place.text.slice(0, 80).trim();
  const values = settled.value === undefined ? undefined : [settled.value];
  return mentionOf(place, bare, size(settled.system, `settled-by-${settled.rung}`, saw, values));
}

/** "l. 31", "pp. 8": where in a book something stands. */
const countsLines = ({ scene, span }: Place): boolean =>
  finds(
    /(?:^|[\s(;,])(?:ll?|pp?|figs?)\.\s?$/i,
    scene.passage.text.slice(Math.max(0, span.start - 7), span.start),
  );

/** "Gauge – the other way about. 21 bigger than 22.": a line of a glossary about the other scale. */
function underOther({ scene, span, before }: Place, system: System): boolean {
  if (OPENS_OTHER.test(before) && !OUR_SCALES.test(before))
    return system === 'french' || system === 'needle-gauge';
  const near = scene.passage.text.slice(Math.max(0, span.start - 120), span.start);
  const line = near.lastIndexOf('\n') + 1;
  if (system === 'french' && OF_HEGAR.test(near)) return true;
  if (line === 0 && span.start > near.length) return false;
  const [, term] = TERM.exec(near.slice(line, line + 30)) ?? [];
  if (term === undefined)
    return (
      OTHER_SCALE.test(near.slice(line, line + 30)) && (system === 'french' || system === 'needle-gauge')
    );
  return /^g/i.test(term) ? system === 'french' : system === 'needle-gauge';
}
/** "Hegar dilators go by mm, so the 8 is as wide as a 24 Fr": no French was spoken of since. */
const OF_HEGAR =
  /\b(?:hegars?|pratts?)\b(?!.*(?:[0-9]\s?(?:Fr|Ch|F)\b|\b(?:French|charri|catheters?|drains?|tubes?|sounds?)\b))/is;
/** "Hegar: mm. 8 is 8 mm." */
const OTHER_SCALE =
  /^\W{0,3}(?:hegar|b[eé]niqu[eé]|pratt|(?:english|american)(?: (?:sounds?|scale|gauge))?|awg|swg|bwg|stubs|magill|thou)(?![a-zé])[^\n]{0,16}?\W{0,3}[–—:-]\s/i;
/** "Hegar dilators go by mm, so the 8 is …": as long as no scale of ours is named. */
const OPENS_OTHER =
  /^\W{0,3}(?:the |an? |our |all )?(?:hegar|b[eé]niqu[eé]|pratt|(?:english|american) sounds?|awg|swg|bwg|stubs)(?![a-zé])/i;
const OUR_SCALES = /\b(?:fr|ch|french|charri[eè]re|gauges?|[0-9]+\s?g)\b/i;
const TERM = /^\W{0,3}(gauge|french|charri[eè]re)\W{0,3}[–—:-]\s/i;

/** "18 G: 20" in a list of what is in stock: so many of that size. */
const countsSize = (known: readonly Mention[], { before, span }: Place, system: System): boolean =>
  /:\s?$/.test(before) &&
  known.some(
    (one) => one.span.end < span.start && span.start - one.span.end <= 2 && one.sizes[0]?.system === system,
  );

/** Loose bounds for the other numbers of a run: "1, 2, 3" are no French sizes, so its 3 is none either. */
const RUN_BOUNDS: Readonly<Partial<Record<System, readonly [number, number]>>> = {
  'needle-gauge': [7, 36],
  french: [3, 60],
  'tube-id': [2, WIDEST_TUBE],
  usp: [0, 12],
};

function runFits(system: System, { run, spoken }: Bare): boolean {
  const bounds = RUN_BOUNDS[system];
  // "the fat one and a twenty-two": a pronoun is no number.
  return (
    !bounds ||
    run.values.length === 1 ||
    run.values.every((value) => (spoken && value === 1) || (value >= bounds[0] && value <= bounds[1]))
  );
}

/** "2 silk", "a 6 tube". */
function questionAbout(place: Place, bare: Bare): Verdict | undefined {
  const thread = threadQuestion(place, bare);
  if (thread) return thread;
  const whole = bare.decimals === 0 && !bare.plural;
  const tube = whole ? tubeQuestion(place, place.text.slice(0, 60).trim(), [bare.value]) : undefined;
  return tube && tube.is !== 'nothing' ? tube : undefined;
}

/** Rungs too far away to answer "fetch a 16". */
const FAR: ReadonlySet<RungName> = new Set([
  'before',
  'heading',
  'title',
  'note',
  'general-device',
  'label',
  'tube-decimal',
]);
/** What the note as a whole is about says nothing of a line on a scrap of paper. */
const REMOTE: ReadonlySet<RungName> = new Set(['title', 'note', 'general-device']);
/** Rungs that settle a number whatever word follows. */
const OPEN: ReadonlySet<RungName> = new Set(['noun', 'asked', 'tube-decimal']);

/** "Feeding tubes and IV catheters share a bin. Toss me a 12": things of two systems were named before. */
const severalBefore = (place: Place): boolean =>
  new Set(
    earlier(place, place.scene.devices).flatMap((hit) =>
      hit.means === 'catheter' ? [] : (systemOf(hit.means) ?? []),
    ),
  ).size > 1;

/** Nothing near settles it, or the things named in the sentence disagree. */
function isFar(settled: Settled | undefined, place: Place): boolean {
  if (!settled || FAR.has(settled.rung)) return true;
  if (/^(?:earlier|passage)-device$/.test(settled.rung) && severalBefore(place)) return true;
  if (departs(place) || (settled.rung === 'flow' && /\b(?:put|lay|set)\sout\san?\s$/i.test(place.before)))
    return true;
  return (
    settled.rung === 'sentence-device' && new Set(place.devices.map((hit) => systemOf(hit.means))).size > 1
  );
}
