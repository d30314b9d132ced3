/**
 * Passages read into items and sentences when somebody asks. Of a note of usual length all of it is kept. Of a long one only
 * what was read last is, and a passage that is asked for later is read anew, so that memory does not go with the length.
 */
import type { Mention } from '../../mentions/model.ts';
import type { Passage } from '../../notes/model.ts';
import { type Item, readItems } from './items.ts';
import { quotationSpans } from './quotations.ts';
import type { Scene } from './scene.ts';
import { type Sentence, splitSentences } from './sentences.ts';

/** A passage read: items, sentences, quotation spans. */
export interface Read {
  readonly passage: Passage;
  readonly items: readonly Item[];
  readonly sentences: readonly Sentence[];
  readonly quotes: readonly (readonly [number, number])[];
  /** How many items it has; known from the first reading on. */
  readonly size: number;
}

/** How much is kept. Tests make it small, which changes no reading. */
export const ROOM = {
  /** Of a note up to this length all is kept; no note of usual length comes near. */
  text: 500_000,
  /** Items of all passages together in a longer one. Few enough to be dropped while the collector still finds them young. */
  items: 5000,
  /** Passages in any case, however long: neighbours ask for each other. */
  passages: 8,
  /** Sentences of one passage whose scenes are kept. */
  sentences: 400,
};

/** What was read of a passage, and the scenes made of it. */
interface Made extends Omit<Read, 'passage' | 'size'> {
  scenes?: readonly Scene[];
  first?: { readonly scene: Scene | undefined };
}

export class PassageRead implements Read {
  readonly passage: Passage;
  /** Items that the shelf had read when this was read. */
  readAt = 0;
  readonly #mentions: readonly Mention[];
  readonly #shelf: Shelf;
  #made: Made | undefined;
  #size: number | undefined;

  constructor(passage: Passage, mentions: readonly Mention[], shelf: Shelf) {
    this.passage = passage;
    this.#mentions = mentions;
    this.#shelf = shelf;
  }

  get made(): Made {
    return this.#made ?? this.#make();
  }
  get items(): readonly Item[] {
    return this.made.items;
  }
  get sentences(): readonly Sentence[] {
    return this.made.sentences;
  }
  get quotes(): Read['quotes'] {
    return this.made.quotes;
  }

  get size(): number {
    return this.#size ?? this.made.items.length;
  }

  drop(): void {
    this.#made = undefined;
  }

  #make(): Made {
    const { text } = this.passage;
    const items = readItems(text, this.#mentions);
    const made = { items, sentences: splitSentences(items, text), quotes: quotationSpans(items) };
    this.#made = made;
    this.#size = items.length;
    this.#shelf.put(this);
    return made;
  }
}

/** The passages that are kept, in the order in which they were read. */
export class Shelf {
  #kept: PassageRead[] = [];
  #from = 0;
  #read = 0;
  readonly #items: number;

  /** `length`: of the note. */
  constructor(length: number) {
    this.#items = length > ROOM.text ? ROOM.items : Infinity;
  }

  put(read: PassageRead): void {
    this.#read += read.size;
    read.readAt = this.#read;
    this.#kept.push(read);
    while (this.#kept.length - this.#from > ROOM.passages && this.#isOld(this.#kept[this.#from]!))
      this.#kept[this.#from++]!.drop();
    if (this.#from > this.#kept.length / 2) {
      this.#kept = this.#kept.slice(this.#from);
      this.#from = 0;
    }
  }

  /** A long passage stays until as much as itself was read behind it, so that to read it anew never costs more than the rest. */
  #isOld({ readAt, size }: PassageRead): boolean {
    return this.#read - readAt >= Math.max(this.#items, size);
  }
}
