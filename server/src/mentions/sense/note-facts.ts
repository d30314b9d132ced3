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

/** Each is found out when it is first asked for: most notes ask for few. */
class Facts implements NoteFacts {
  readonly #around: Surroundings;
  readonly #known = new Map<keyof NoteFacts, unknown>();

  constructor(around: Surroundings) {
    this.#around = around;
  }

  #once<T>(fact: keyof NoteFacts, find: () => T): T {
    if (!this.#known.has(fact)) this.#known.set(fact, find());
    return this.#known.get(fact) as T;
  }

  #any(fact: keyof NoteFacts, pattern: RegExp): boolean {
    return this.#once(fact, () => this.#matches(pattern));
  }

  #matches(pattern: RegExp): boolean {
    return this.#around.scenes.some((scene) => pattern.test(scene.passage.text));
  }

  #names(test: (device: Device) => boolean): boolean {
    return this.#around.scenes.some((scene) => [...scene.kinds].some(test));
  }

  get #word(): boolean {
    return this.#matches(/\bgauge\b/i);
  }

  get gauge(): boolean {
    return this.#once('gauge', () => this.#word || this.#matches(/[0-9]{2}\s?-?(?:G\b|gauge|ga\b)/));
  }
  get needles(): boolean {
    return this.#once('needles', () => this.#word || this.#names((one) => systemOf(one) === 'needle-gauge'));
  }
  get smallLetterGauge(): boolean {
    return this.#once('smallLetterGauge', () => {
      let small = 0;
      for (const { passage } of this.#around.scenes) small += passage.text.match(SMALL_GAUGE)?.length ?? 0;
      return small >= 2;
    });
  }
  get french(): boolean {
    return this.#once(
      'french',
      () =>
        this.#matches(/[0-9]\s?-?(?:Fr\b|French|Ch\b)/) ||
        this.#names((one) => one !== 'catheter' && systemOf(one) === 'french'),
    );
  }
  get charriere(): boolean {
    return this.#any('charriere', CHARRIERE);
  }
  get letterFrench(): boolean {
    return this.#any('letterFrench', LETTER_FRENCH);
  }
  get trueFalse(): boolean {
    return this.#any('trueFalse', TRUE_FALSE);
  }
  get threadNames(): ReadonlySet<string> {
    return this.#once(
      'threadNames',
      () => new Set(this.#around.scenes.flatMap((scene) => namesIn(scene.passage.text))),
    );
  }
  get thread(): boolean {
    return this.#once('thread', () => this.#material || this.#matches(THREAD));
  }
  get things(): boolean {
    return this.#once('things', () => this.#names(() => true) || this.#material);
  }
  get #material(): boolean {
    return this.#around.scenes.some((scene) => scene.materials.length > 0);
  }
  get tracheal(): boolean {
    return this.#once('tracheal', () => this.#names((one) => one === 'tracheal-tube'));
  }
  get wires(): boolean {
    return this.#once('wires', () => this.#names((one) => one === 'guidewire'));
  }
  get dogs(): boolean {
    return this.#any('dogs', DOGS);
  }
  get largeAnimals(): boolean {
    return this.#any('largeAnimals', LARGE_ANIMALS);
  }
}

/** "3 T." at the head of a line. */
const TRUE_FALSE = /(?:^|\n)[0-9]{1,2}\s?[.):]?\s?T(?:\.|\s|$)/;

/** A tracheal tube of a horse, a cow or a large dog, in a note that treats some. */
export const largeTube = (around: Surroundings, system: System, value: number): boolean =>
  ofLargeAnimal(system, value) &&
  (factsOf(around).largeAnimals || (value <= WIDEST_OF_DOGS && factsOf(around).dogs));
