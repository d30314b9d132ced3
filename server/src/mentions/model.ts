/** A size mention: where the prose names a size, how it reads, and the evidence for that reading. */
import type { Span } from '../notes/model.ts';
import type { Device, Size } from '../sizes/model.ts';
import type { Locale, Phrase } from '../texts/index.ts';
import type { Language } from './words/units.ts';

/** One way to take an unclear token. */
export interface Reading {
  readonly size?: Size;
  /** Plain words: "size 2, 0.5 mm thick". */
  readonly words: string;
  /** The same, not yet in any language. */
  readonly meant: Phrase;
  /** Text that would say this reading without doubt: "2-0", "14 Fr", "25 g of". */
  readonly write: string;
}

/** Why a token was read as it was: the rule's id and the words it saw. */
export interface Evidence {
  readonly rule: string;
  readonly saw: string;
  readonly span?: Span;
}

export interface Mention {
  /** Index of the passage. */
  readonly passage: number;
  /** Span in the passage's text. */
  readonly span: Span;
  /** Span in the note's source. */
  readonly source: Span;
  readonly text: string;
  readonly kind: 'size' | 'range' | 'ambiguous';
  /** One size; both ends in text order for a range; none when ambiguous. */
  readonly sizes: readonly Size[];
  readonly readings: readonly Reading[];
  /** Id of the notation in `grammars/notations`. */
  readonly notation: string;
  readonly device?: Device;
  /** Generic material id. */
  readonly material?: string;
  /** "≥18 G", "18G+", "at least": a bound, not a size by itself. */
  readonly bound?: 'at-least' | 'at-most' | 'more-than' | 'less-than';
  /** "about", "~": widens an equivalence. */
  readonly approximate?: boolean;
  /** Decimal places as written ("4.7" is 1), for the tolerance of an equivalence. */
  readonly decimals: number;
  /** True when written as a needle or device length (G × length), not a diameter. */
  readonly length?: boolean;
  /** True for words ("eighteen gauge"). */
  readonly spoken?: boolean;
  readonly evidence: readonly Evidence[];
}

/** What a course settles beforehand: it decides only what the note itself leaves open. */
export interface Context {
  /** Device meant when a note does not say. */
  readonly device?: Device;
  /** Which USP table holds when the material is not said. */
  readonly suture?: 'synthetic' | 'collagen';
  /** Local name (lower case) → generic material id. */
  readonly materials?: Readonly<Record<string, string>>;
  /** Local name (lower case) → device. */
  readonly devices?: Readonly<Record<string, Device>>;
  /** Languages the note is written in; all that are known when it is not said. */
  readonly languages?: readonly Language[];
  /** Language of the words that a reader is shown; changes nothing that is read. English when it is not said. */
  readonly locale?: Locale;
}
