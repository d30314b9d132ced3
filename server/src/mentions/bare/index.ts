/** Bare numbers whose system the context settles: table cells, chains, "the 22", "a 16 flows faster". */
import { mentionOf } from '../build.ts';
import type { Mention } from '../model.ts';
import type { Scene } from '../scene.ts';
import { placeOf } from '../sense/place.ts';
import { size } from '../sense/verdict.ts';
import { fetchQuestion, threadQuestion } from './ask.ts';
import type { Board } from './board.ts';
import { tableNumbers } from './cells.ts';
import { chains } from './chain.ts';
import { frameOf, isClosed } from './frame.ts';
import { settle } from './settle.ts';
import { type Bare, bareNumbers } from './tokens.ts';

export { type Board, boardOf } from './board.ts';

/** Bare sizes of one passage, given what the notations found everywhere. */
export function bareSizes(board: Board, scene: Scene): Mention[] {
  const own = board.settled[scene.passage.index] ?? [];
  if (scene.passage.cell) {
    const cells = tableNumbers(board.around, scene, own);
    if (cells.length > 0) return cells;
  }
  const free = bareNumbers(scene.passage.text, own);
  if (free.length === 0) return [];
  const chained = chains(board.around, scene, own, free);
  const known = [...own, ...chained].sort((a, b) => a.span.start - b.span.start);
  const taken = new Set(chained.map((one) => one.span.start));
  const rest = free.filter((bare) => !taken.has(bare.span.start));
  return [...chained, ...rest.flatMap((bare) => understood(board, scene, known, bare) ?? [])];
}

/** One bare number: a size, a question or nothing. */
function understood(board: Board, scene: Scene, known: readonly Mention[], bare: Bare): Mention | undefined {
  const place = placeOf(board.around, scene, bare);
  const frame = frameOf(place, bare);
  if (!frame) return undefined;
  const thread = threadQuestion(place, bare);
  if (thread) return mentionOf(place, bare, thread);
  const closed = frame === 'alone' || frame === 'option' || isClosed(place, bare);
  const settled = settle({ board, place, bare, frame, known });
  if (settled && (closed || settled.rung === 'noun'))
    return mentionOf(
      place,
      bare,
      size(settled.system, `settled-by-${settled.rung}`, place.text.slice(0, 80).trim()),
    );
  return undefined;
}

/** Rungs too far away to answer "fetch a 16". */
const FAR: ReadonlySet<string> = new Set(['before', 'heading', 'note', 'general-device', 'label']);
/** Rungs that settle a number whatever word follows. */
const OPEN: ReadonlySet<string> = new Set(['noun', 'asked', 'tube-decimal']);
