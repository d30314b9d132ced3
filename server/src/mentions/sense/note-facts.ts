/** What the whole note deals in, found once a note: the last resort of a rule, never its first. */
import { matchesOf } from '../../notes/index.ts';
import type { Device, System } from '../../sizes/model.ts';
import type { Surroundings } from '../scene.ts';
import { ofLargeAnimal, systemOf } from './systems.ts';

export interface NoteFacts {
  /** Needle gauges are written with a capital letter or the word. */
  readonly gauge: boolean;
  /** Needles or cannulas are named, or the word gauge. */
  readonly needles: boolean;
  /** "18g" stands beside a needle at least twice: the note's own way to write gauge. */
  readonly smallLetterGauge: boolean;
  /** French sizes are written, or things sized in French are named. */
  readonly french: boolean;
  /** Charrière is explained, or Ch is written behind a number: "Ch 14" is then no chapter. */
  readonly charriere: boolean;
  /** "7F" stands beside a catheter: the note's own way to write French. */
  readonly letterFrench: boolean;
  readonly thread: boolean;
  /** Names that stand after a thread size, as in "3-0 Such": the note's own names of threads. */
  readonly threadNames: ReadonlySet<string>;
  /** Answers are keyed "3 T", "4 F". */
  readonly trueFalse: boolean;
  /** Tracheal tubes are named. */
  readonly tracheal: boolean;
  /** A thing that comes in sizes, or a material of threads, is named. */
  readonly things: boolean;
  /** Guidewires are named. */
  readonly wires: boolean;
  /** Dogs are treated: the largest take wider tracheal tubes than people. */
  readonly dogs: boolean;
  /** Horses or cattle are treated: their tracheal tubes are wider than anybody else's. */
  readonly largeAnimals: boolean;
}

const facts = new WeakMap<Surroundings, NoteFacts>();

export function factsOf(around: Surroundings): NoteFacts {
  const known = facts.get(around);
  if (known) return known;
  const found = new Facts(around);
  facts.set(around, found);
  return found;
}

const THREAD = /\b(?:USP|sutur\w*|stitch\w*|ligatures?|thread|strand)\b/i;
const SMALL_GAUGE = /[0-9]{2}\s?g\s(?:[a-z-]+\s)?(?:needles?|cannula\w*|butterfly|iv|spinal|hub)/g;
const LETTER_FRENCH =
  /[0-9]\s?F\s(?:[a-z-]+\s)?(?:catheters?|sheaths?|foley|drains?|introducers?|dilators?|tubes?|lines?|pigtails?)/;

/** The word, "12 Ch", or Ch beside another name of the unit: "Ch, Fr or FG". */
const CHARRIERE =
  /charri[eè]re|[0-9]\s?Ch\b|\b(?:Fr|FG|F)(?:\s(?:or|and|=|ou|oder|o|y)\s|[,/]\s?)C[Hh]\b|\bC[Hh](?:\s(?:or|and|=|ou|oder|o|y)\s|[,/]\s?)(?:Fr|FG|F)\b/i;

/** "3-0 Such": a word with a capital right after a thread size. */
const NAMED = /(?<![0-9A-Za-z.-])(?:[1-9]|1[0-2])[-/]0\s([A-Z][A-Za-z]{2,23})\b/g;
const namesIn = (text: string): readonly string[] =>
  text.includes('0 ') ? matchesOf(text, NAMED).map((match) => match[1]!) : [];

const LARGE_ANIMALS =
  /\b(?:horses?|mares?|foals?|stallions?|geldings?|pon(?:y|ies)|equine|warmbloods?|thoroughbreds?|donkeys?|cows?|cattle|bovine|calves|heifers?|camels?|giraffes?|elephants?)\b/i;

const DOGS =
  /\b(?:dogs?|canine|bitch(?:es)?|pupp(?:y|ies)|great danes?|mastiffs?|labradors?|bulldogs?|greyhounds?|chihuahuas?)\b/i;
/** Widest tracheal tube of a dog, mm. */
const WIDEST_OF_DOGS = 16;

type Scenes = Surroundings['scenes'];

const matches = (scenes: Scenes, pattern: RegExp): boolean =>
  scenes.some(({ passage }) => pattern.test(passage.text));
const names = (scenes: Scenes, test: (device: Device) => boolean): boolean =>
  scenes.some(({ kinds }) => [...kinds].some(test));
const namesMaterial = (scenes: Scenes): boolean => scenes.some(({ materials }) => materials.length > 0);

const GAUGE_WORD = /\bgauge\b/i;
const gauge = (scenes: Scenes) =>
  matches(scenes, GAUGE_WORD) || matches(scenes, /[0-9]{2}\s?-?(?:G\b|gauge|ga\b)/);
const needles = (scenes: Scenes) =>
  matches(scenes, GAUGE_WORD) || names(scenes, (one) => systemOf(one) === 'needle-gauge');
const smallLetterGauge = (scenes: Scenes) =>
  scenes.flatMap(({ passage }) => passage.text.match(SMALL_GAUGE) ?? []).length >= 2;
const french = (scenes: Scenes) =>
  matches(scenes, /[0-9]\s?-?(?:Fr\b|French|Ch\b)/) ||
  names(scenes, (one) => one !== 'catheter' && systemOf(one) === 'french');
const threadNames = (scenes: Scenes) => new Set(scenes.flatMap(({ passage }) => namesIn(passage.text)));
const thread = (scenes: Scenes) => namesMaterial(scenes) || matches(scenes, THREAD);
const things = (scenes: Scenes) => names(scenes, () => true) || namesMaterial(scenes);
const tracheal = (scenes: Scenes) => names(scenes, (one) => one === 'tracheal-tube');
const wires = (scenes: Scenes) => names(scenes, (one) => one === 'guidewire');

/** Each is found out when it is first asked for: most notes ask for few. */
class Facts implements NoteFacts {
  readonly #scenes: Scenes;
  readonly #known = new Map<unknown, unknown>();

  constructor({ scenes }: Surroundings) {
    this.#scenes = scenes;
  }

  #once<T>(find: (scenes: Scenes) => T, key: unknown = find): T {
    if (!this.#known.has(key)) this.#known.set(key, find(this.#scenes));
    return this.#known.get(key) as T;
  }

  #any(pattern: RegExp): boolean {
    return this.#once((scenes) => matches(scenes, pattern), pattern);
  }

  get gauge(): boolean {
    return this.#once(gauge);
  }
  get needles(): boolean {
    return this.#once(needles);
  }
  get smallLetterGauge(): boolean {
    return this.#once(smallLetterGauge);
  }
  get french(): boolean {
    return this.#once(french);
  }
  get charriere(): boolean {
    return this.#any(CHARRIERE);
  }
  get letterFrench(): boolean {
    return this.#any(LETTER_FRENCH);
  }
  get trueFalse(): boolean {
    return this.#any(TRUE_FALSE);
  }
  get threadNames(): ReadonlySet<string> {
    return this.#once(threadNames);
  }
  get thread(): boolean {
    return this.#once(thread);
  }
  get things(): boolean {
    return this.#once(things);
  }
  get tracheal(): boolean {
    return this.#once(tracheal);
  }
  get wires(): boolean {
    return this.#once(wires);
  }
  get dogs(): boolean {
    return this.#any(DOGS);
  }
  get largeAnimals(): boolean {
    return this.#any(LARGE_ANIMALS);
  }
}

/** "3 T." at the head of a line. */
const TRUE_FALSE = /(?:^|\n)[0-9]{1,2}\s?[.):]?\s?T(?:\.|\s|$)/;

/** A tracheal tube of a horse, a cow or a large dog, in a note that treats some. */
export const largeTube = (around: Surroundings, system: System, value: number): boolean =>
  ofLargeAnimal(system, value) &&
  (factsOf(around).largeAnimals || (value <= WIDEST_OF_DOGS && factsOf(around).dogs));
