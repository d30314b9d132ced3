/** Every size mention of a note, in order. */
import type { Note } from '../notes/model.ts';
import { type Board, bareSizes, boardOf } from './bare/index.ts';
import { mentionOf } from './build.ts';
import type { Context, Mention } from './model.ts';
import { joinRanges } from './ranges.ts';
import { type Candidate, scan } from './scan.ts';
import { type Scene, type Surroundings, sentenceIndex, survey } from './scene.ts';
import { LENGTHS, RULES } from './sense/decide.ts';
import { companyOf, type LengthSystem, lengthSense, tubeLength } from './sense/length.ts';
import { type Place, placeOf, wider } from './sense/place.ts';
import { size, type Verdict } from './sense/verdict.ts';

/** Sorted by passage and span. Never throws; linear in the length of the note. */
export function findMentions(note: Note, context: Context = {}): Mention[] {
  const around = survey(note, context);
  const settled = around.scenes.map((scene) => passageMentions(around, scene));
  const board = boardOf(around, settled);
  return around.scenes.flatMap((scene) => joinRanges(scene, together(board, scene)));
}

const inOrder = (mentions: readonly Mention[]): Mention[] =>
  [...mentions].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);

const together = (board: Board, scene: Scene): readonly Mention[] =>
  inOrder([...(board.settled[scene.passage.index] ?? []), ...bareSizes(board, scene)]);

function passageMentions(around: Surroundings, scene: Scene): Mention[] {
  const candidates = scan(scene.passage.text);
  const sized = new Set<number>();
  const first = candidates.flatMap((candidate) => {
    const rule = RULES[candidate.notation.id];
    if (!rule) return [];
    const place = placeOf(around, scene, candidate);
    const mention = mentionOf(place, candidate, rule(place, matched(scene, candidate), candidate));
    if (mention?.kind !== 'ambiguous' && mention) sized.add(sentenceIndex(scene, candidate.span.start));
    return mention ?? [];
  });
  const lengths = candidates.flatMap((candidate) => {
    const system = LENGTHS[candidate.notation.id];
    if (!system) return [];
    const place = placeOf(around, scene, candidate);
    return mentionOf(place, candidate, lengthVerdict(place, candidate, system, sized)) ?? [];
  });
  return inOrder([...first, ...lengths]);
}

/** A length: a tracheal tube's number, a diameter, a needle's reach, or nothing. */
function lengthVerdict(
  place: Place,
  candidate: Candidate,
  system: LengthSystem,
  sized: ReadonlySet<number>,
): Verdict {
  const match = matched(place.scene, candidate);
  if (system === 'millimetre' && tubeLength(place, candidate.item.values, candidate.item.decimals))
    return size('tube-id', 'tube-in-mm', match);
  const company = companyOf(place.scene, candidate.span.start, sized, sizedBefore(place));
  return lengthSense(place, match, system, rowSized(place) ? { ...company, sentence: true } : company);
}

/** In short answers and options the size stands in the passage before. */
function sizedBefore(place: Place): boolean {
  const { passage } = place.scene;
  const question = passage.list?.leadIn ?? passage.list?.parent ?? passage.path.at(-1);
  const before = [place.around.scenes[passage.index - 1], place.around.scenes[question ?? -1]];
  return (
    passage.text.length < 80 && before.some((scene) => scene && SIZED.test(scene.passage.text.slice(-400)))
  );
}

const SIZED = /[0-9]\s?-?(?:G|Fr|F|Ch|mm)\b|[0-9]-0\b|gauge|French|diameter|across/;

const matched = (scene: Scene, candidate: Candidate): string =>
  scene.passage.text.slice(candidate.match.start, candidate.match.end);

/** Is there a size elsewhere in the cell's row? Cheap look: a digit before a unit letter. */
function rowSized(place: Place): boolean {
  const cell = place.scene.passage.cell;
  if (!cell) return false;
  const row = place.around.note.tables[cell.table]?.rows[cell.row] ?? [];
  return row
    .slice(0, 12)
    .some((index) =>
      /[0-9]\s?(?:G|Fr|F|Ch)\b|[0-9]-0\b|gauge/.test(
        place.around.scenes[index]?.passage.text.slice(0, 200) ?? '',
      ),
    );
}
