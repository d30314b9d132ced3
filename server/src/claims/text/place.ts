/** A sentence in its place. What the place settles takes long to find out and is seldom asked: it is found when asked for. */
import type { Note, Passage } from '../../notes/model.ts';
import type { Item } from './items.ts';
import type { Scene } from './scene.ts';
import type { Sentence } from './sentences.ts';

type Late = 'system' | 'option' | 'truthItem' | 'key' | 'keyAt';

/** What is known of a sentence at once. */
export type Given = Omit<Scene, Late>;

/** The key of a statement to be called true or false. */
export type Keys = Pick<Scene, 'truthItem' | 'key' | 'keyAt'>;

/** What is found out when asked. */
export interface Settles {
  readonly system: () => Scene['system'];
  readonly option: () => boolean;
  readonly keys: () => Keys;
}

/** One shape for all scenes: reading a property of any of them is then as fast as can be. */
class SceneInPlace implements Scene {
  readonly note: Note;
  readonly passage: Passage;
  readonly sentence: Sentence;
  readonly items: readonly Item[];
  readonly before: readonly Sentence[];
  readonly after: readonly Sentence[];
  readonly context: readonly Sentence[];
  readonly headings: readonly string[];
  readonly named: Scene['named'];
  readonly next: Scene['next'];
  readonly lead: Scene['lead'];
  readonly quotes: Scene['quotes'];
  readonly erratum: Scene['erratum'];
  readonly reported: Scene['reported'];
  readonly #settles: Settles;

  constructor(given: Given, settles: Settles) {
    this.note = given.note;
    this.passage = given.passage;
    this.sentence = given.sentence;
    this.items = given.items;
    this.before = given.before;
    this.after = given.after;
    this.context = given.context;
    this.headings = given.headings;
    this.named = given.named;
    this.next = given.next;
    this.lead = given.lead;
    this.quotes = given.quotes;
    this.erratum = given.erratum;
    this.reported = given.reported;
    this.#settles = settles;
  }

  get system(): Scene['system'] {
    return this.#settles.system();
  }
  get option(): boolean {
    return this.#settles.option();
  }
  get truthItem(): Scene['truthItem'] {
    return this.#settles.keys().truthItem;
  }
  get key(): Scene['key'] {
    return this.#settles.keys().key;
  }
  get keyAt(): Scene['keyAt'] {
    return this.#settles.keys().keyAt;
  }

  with(changes: Partial<Given>): Scene {
    return new SceneInPlace({ ...(this as Given), ...changes }, this.#settles);
  }
}

export const placed = (given: Given, settles: Settles): Scene => new SceneInPlace(given, settles);

/** The same place with other words, or without its neighbours. */
export const changed = (scene: Scene, changes: Partial<Given>): Scene =>
  scene instanceof SceneInPlace ? scene.with(changes) : { ...scene, ...changes };
