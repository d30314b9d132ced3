/** Every size mention of a note, in order. */
import type { Note, Span } from '../notes/model.ts';
import { questionsOf } from './asked/index.ts';
import { type Board, bareSizes, boardOf, type Written } from './bare/index.ts';
import { mentionOf } from './build.ts';
import type { Context, Mention } from './model.ts';
import { native } from './native.ts';
import { joinRanges } from './ranges.ts';
import { type Candidate, scan } from './scan.ts';
import { type Scene, type Surroundings, sentenceIndex, survey } from './scene.ts';
import { LENGTHS, RULES } from './sense/decide.ts';
import { type Beside, companyOf, equated, type LengthSystem, lengthSense } from './sense/length.ts';
import { type Place, placeOf } from './sense/place.ts';
import { tubeLength } from './sense/tube-length.ts';
import { size, type Verdict } from './sense/verdict.ts';
import { shareThings } from './share.ts';

/** Sorted by passage and span. Never throws; linear in the length of the note. */
export function findMentions(note: Note, context: Context = {}): Mention[] {
  const around = survey(note, context);
  const board = boardOf(
    around,
    around.scenes.map((scene) => written(around, scene)),
  );
  return around.scenes.flatMap((scene) => joinRanges(scene, shareThings(scene, together(board, scene))));
}

const inOrder = <T extends { readonly span: Span }>(all: readonly T[]): T[] =>
  [...all].sort((a, b) => a.span.start - b.span.start);

const together = (board: Board, scene: Scene): readonly Mention[] =>
  clear([
    ...board.settled[scene.passage.index]!,
    ...bareSizes(board, scene),
    ...questionsOf(board.around, scene),
  ]);

/** In order; a question about words gives way to a size inside them. */
const clear = (mentions: readonly Mention[]): readonly Mention[] =>
  inOrder(
    mentions.filter(
      (one) =>
        one.notation !== 'unsized' ||
        !mentions.some((m) => m !== one && m.span.start < one.span.end && m.span.end > one.span.start),
    ),
  );

/** Judges what the notations found: lengths last, since a size beside them decides. */
function written(around: Surroundings, scene: Scene): Written {
  const candidates = native(scan(scene.passage.text), scene.passage.text, around.context.languages);
  const sized = new Set<number>();
  const mentions: Mention[] = [];
  const refused: Span[] = [];
  const judge = (candidate: Candidate, place: Place, verdict: Verdict): void => {
    const mention = mentionOf(place, candidate, verdict);
    if (mention) mentions.push(mention);
    else if (!mayBeBare(candidate, matched(scene, candidate))) refused.push(candidate.span);
  };
  for (const candidate of candidates) {
    const rule = RULES[candidate.notation.id];
    if (!rule) continue;
    const place = placeOf(around, scene, candidate);
    const verdict = rule(place, matched(scene, candidate), candidate);
    if (verdict.is === 'size') sized.add(sentenceIndex(scene, candidate.span.start));
    judge(candidate, place, verdict);
  }
  const measured = new Set<number>();
  for (const candidate of candidates) {
    const system = LENGTHS[candidate.notation.id];
    if (!system) continue;
    const place = placeOf(around, scene, candidate);
    const verdict = lengthVerdict(place, candidate, system, { sized, measured });
    if (verdict.is === 'size' && system === 'millimetre')
      measured.add(sentenceIndex(scene, candidate.span.start));
    judge(candidate, place, verdict);
  }
  return { mentions: inOrder(mentions), refused };
}

/** Notations that name no unit, and "in" and quotation marks that are none: the bare number may still be a size. */
const mayBeBare = (candidate: Candidate, match: string): boolean =>
  OPEN_ENDED.has(candidate.notation.id) ||
  (candidate.notation.id === 'french-after' && candidate.span.end < candidate.match.end) ||
  (candidate.notation.id === 'metric-before' && candidate.span.start > candidate.match.start) ||
  (candidate.notation.id === 'inches' && /(?:[\s]in|["”″])\.?$/.test(match));
const OPEN_ENDED: ReadonlySet<string> = new Set([
  'numbered',
  'numbered-spoken',
  'usp-decimal-slip',
  'usp-spoken',
]);

/** A length: a tracheal tube's number, a diameter, a needle's reach, or nothing. */
function lengthVerdict(place: Place, candidate: Candidate, system: LengthSystem, beside: Beside): Verdict {
  const match = matched(place.scene, candidate);
  const tube = system === 'millimetre' && !/cm$/i.test(match);
  if (
    tube &&
    !equated(place) &&
    !roomLeft(place) &&
    tubeLength(place, candidate.item.values, candidate.item.decimals)
  )
    return size('tube-id', 'tube-in-mm', match);
  const company = companyOf(place.scene, candidate.span.start, beside, sizedBefore(place));
  return lengthSense(place, match, system, rowSized(place) ? { ...company, sentence: true } : company);
}

/** "An 8.0 tube leaves 4 mm for it, which is 12 Fr": the room for a catheter, told again in French, and no tube. */
const roomLeft = ({ before, after }: Place): boolean =>
  /^[^,.;]{0,16},\s(?:which|that|this|it|so|and\s(?:that|this))(?:['’]s|\s(?:is|makes?|gives|means|comes\sto|would\sbe))?\s(?:about\s|roughly\s)?(?:an?\s)?[0-9]{1,2}\s?(?:Fr|French|Ch|F|Charri[eè]re)\b/.test(
    after,
  ) &&
  /\b(?:leaves?|left|half|halved|room|space|lets|allows?|have|takes|gets?)\b[^.;]{0,40}$/i.test(before) &&
  !/\btubes?\s(?:of|is|at|with)\s(?:an?\s)?$/i.test(before);

/** In short answers and options the size stands in the passage before. */
function sizedBefore(place: Place): boolean {
  const { passage } = place.scene;
  const question = passage.list?.leadIn ?? passage.list?.parent ?? passage.path.at(-1);
  const last = place.around.scenes[passage.index - 1];
  const short = last && last.passage.text.length < 60 ? place.around.scenes[passage.index - 2] : undefined;
  const before = [last, short, place.around.scenes[question ?? -1]];
  if (last && MEASURE_TITLE.test(last.passage.text)) return true;
  if (passage.text.length >= 80) return lineLength(place) < 80 && isKeyed(place);
  return before.some((scene) => scene && SIZED.test(scene.passage.text.slice(-400))) || isKeyed(place);
}

/** A line of its own above: "Needle length:". */
const MEASURE_TITLE = /^\W*(?:needle )?(?:lengths?|diameters?|gauges?)(?: of (?:the )?needles?)?:\W*$/i;

/** How long the line is on which it stands; a key may hold many. */
function lineLength({ scene, span }: Place): number {
  const { text } = scene.passage;
  const start = text.slice(Math.max(0, span.start - 80), span.start).lastIndexOf('\n');
  const end = text.slice(span.end, span.end + 80).indexOf('\n');
  const before = start < 0 ? Math.min(80, span.start) : span.start - Math.max(0, span.start - 80) - start;
  return before + (end < 0 ? Math.min(80, text.length - span.end) : end);
}

/** A line of an answer key. */
const isKeyed = ({ around, scene: { passage } }: Place): boolean =>
  [passage.path.at(-1), passage.list?.leadIn].some((index) =>
    KEY.test(around.scenes[index ?? -1]?.brief.slice(0, 80) ?? ''),
  );
const KEY = /\b(?:answers?|key|quiz|solutions?)\b/i;

const SIZED =
  /[0-9]\s?-?(?:G|Fr|F|Ch|mm)\b|[0-9]-0\b|gauge|French|diameter|across|[Nn]eedles?\b|\b[Ll]ength\b/;

const matched = (scene: Scene, candidate: Candidate): string =>
  scene.passage.text.slice(candidate.match.start, candidate.match.end);

/** Is there a size elsewhere in the cell's row, or a bare number where the other rows have one? Cheap look: its first cells. */
function rowSized(place: Place): boolean {
  const { cell } = place.scene.passage;
  if (!cell) return false;
  const textOf = (index: number | undefined): string =>
    place.around.scenes[index ?? -1]?.passage.text.slice(0, 200) ?? '';
  const sized = (row: readonly number[]): boolean =>
    row.slice(0, 12).some((index) => UNITED.test(textOf(index)));
  const { rows } = place.around.note.tables[cell.table]!;
  const row = rows[cell.row]!;
  if (sized(row)) return true;
  return (
    BARE.test(textOf(row[0])) &&
    rows.slice(0, 12).some((other) => sized(other) && /[0-9]\s?mm\b/.test(textOf(other[cell.column])))
  );
}
/** A digit before a unit letter. */
const UNITED = /[0-9]\s?(?:G|Fr|F|Ch)\b|[0-9]-0\b|gauge/;
const BARE = /^\s*#?[0-9]{1,2}(?:\s?(?:,|\/|and|or|to|–|-)\s?#?[0-9]{1,2}){0,3}\s*$/;
