/** Builds the scenes of a note: every sentence of every passage with what stands around it. Linear in the note. */
import type { Mention } from '../../mentions/model.ts';
import type { Note, Passage } from '../../notes/model.ts';
import { type Answers, answersOf } from '../quiz/answers.ts';
import { type Around, PassagePlace, speaks } from './passage-place.ts';
import { PassageRead, type Read, ROOM, Shelf } from './reads.ts';
import { forget } from './remember.ts';
import type { Scene } from './scene.ts';
import { sizesNamed } from './sizes-named.ts';

export type { Read } from './reads.ts';

function readPassages(note: Note, mentions: readonly Mention[]): PassageRead[] {
  const byPassage = new Map<number, Mention[]>();
  for (const mention of mentions) {
    // Words that name no size stay words: the grammar reads them.
    if (mention.kind === 'ambiguous' && mention.notation === 'unsized') continue;
    const list = byPassage.get(mention.passage);
    if (list) list.push(mention);
    else byPassage.set(mention.passage, [mention]);
  }
  const shelf = new Shelf(note.text.length);
  return note.passages.map((passage) => {
    const own = (byPassage.get(passage.index) ?? []).sort((a, b) => a.span.start - b.span.start);
    return new PassageRead(passage, own, shelf);
  });
}

export interface Whole {
  readonly reads: readonly Read[];
  readonly scenes: Scenes;
  readonly answers: Answers;
}

/** The note read last: its statements and its named sizes are asked for one after the other. */
let last: { readonly note: Note; readonly mentions: readonly Mention[]; readonly whole: Whole } | undefined;

/** Passages and scenes of a note, read once for all who ask in a row. */
export function readWhole(note: Note, mentions: readonly Mention[]): Whole {
  if (last?.note !== note || last.mentions !== mentions) {
    const reads = readPassages(note, mentions);
    const answers = answersOf(note, reads);
    const scenes = new Scenes(reads, { note, reads, answers, named: sizesNamed(mentions) });
    last = { note, mentions, whole: { reads, scenes, answers } };
  }
  return last.whole;
}

/** The scenes of a note in order, and the first of each passage. Made when asked for, and kept as long as their passage is. */
export class Scenes implements Iterable<Scene> {
  readonly #reads: readonly PassageRead[];
  readonly #around: Around;

  constructor(reads: readonly PassageRead[], around: Around) {
    this.#reads = reads;
    this.#around = around;
  }

  *[Symbol.iterator](): Generator<Scene> {
    for (const read of this.#reads) yield* this.#of(read);
  }

  /** Those of one passage. */
  in(passage: number): Iterable<Scene> {
    return this.#of(this.#reads[passage]!);
  }

  /** The first scene of a passage. */
  get({ index }: Passage): Scene | undefined {
    const read = this.#reads[index]!;
    const { made } = read;
    made.first ??= { scene: made.scenes?.[0] ?? scenesOfPassage(read, this.#around).next().value };
    return made.first.scene;
  }

  #of(read: PassageRead): Iterable<Scene> {
    if (read.sentences.length > ROOM.sentences) return passing(read, this.#around);
    const { made } = read;
    made.scenes ??= [...scenesOfPassage(read, this.#around)];
    return made.scenes;
  }
}

/** Sentences behind the one that is read which may still be asked about. */
const BEHIND = 8;

/** The scenes of a long passage, one at a time. What was found out about a sentence is let go of when it lies behind. */
function* passing(read: Read, around: Around): Generator<Scene> {
  const { sentences } = read;
  let done = 0;
  for (const scene of scenesOfPassage(read, around)) {
    yield scene;
    const past = (at: number): boolean => (sentences[at]?.end ?? Infinity) <= scene.sentence.start;
    for (; past(done + BEHIND); done++) {
      forget(sentences[done]!);
      forget(sentences[done]!.items);
    }
  }
}

function* scenesOfPassage(read: Read, around: Around): Generator<Scene, undefined> {
  if (!speaks(read)) return;
  const place = new PassagePlace(read, around);
  for (let i = 0; i < read.sentences.length; i++) yield* place.scenesOf(i);
}
