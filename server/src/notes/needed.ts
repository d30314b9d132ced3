/**
 * What a text must hold for a pattern to match it, read from the pattern itself: pieces of text, one of which stands in every
 * match. What is not understood needs nothing, so that a pattern is tried once too often rather than once too little. It is
 * read in one go with few objects made: it has to be much quicker than compiling the pattern.
 */

/** A piece of text, and whether a word must begin with it, or end. */
export interface Piece {
  text: string;
  readonly begins: boolean;
  ends: boolean;
  /** It ends where what is read ends, so that what follows says whether a word ends there. */
  open: boolean;
}

/** How often a piece of so many characters and edges of words stands in a sentence by chance, roughly. */
const CHANCE = [99, 2, 0.5, 0.2, 0.1, 0.05];
const RARE = 0.02;
/** Pieces that stand nearly everywhere are not worth looking for. */
const TOO_COMMON = 6;

/**
 * Pieces one of which stands in every text that the pattern matches, in lower case where the pattern takes any; undefined
 * when there are none worth looking for. Takes the source and the flags of a pattern.
 */
export function neededBy(source: string, flags: string): readonly Piece[] | undefined {
  if (flags.includes('v')) return undefined;
  const reader = new Reader(source, flags.includes('i'), flags.includes('u'));
  return reader.choice(false) < TOO_COMMON ? reader.pieces : undefined;
}

/** Does one of the pieces stand in a text? Where the pattern takes any case, the text is in lower case. */
export const standsOne = (pieces: readonly Piece[], text: string): boolean =>
  pieces.some((piece) => stands(piece, text));

function stands({ text: piece, begins, ends }: Piece, text: string): boolean {
  for (let at = text.indexOf(piece); at >= 0; at = text.indexOf(piece, at + 1))
    if (!(begins && wordly(text.charCodeAt(at - 1))) && !(ends && wordly(text.charCodeAt(at + piece.length))))
      return true;
  return false;
}

/** A letter or figure; what else the engine takes for a sign of a word may as well be none. */
function wordly(code: number): boolean {
  const lower = code | 0x20;
  return (lower >= 0x61 && lower <= 0x7a) || (code >= 0x30 && code <= 0x39);
}

/** How often a part of a pattern must match. */
const ONCE = 0;
const SOME = 1;
const MAYBE = 2;

const BACKSLASH = 0x5c;
const BAR = 0x7c;
const OPEN = 0x28;
const CLOSE = 0x29;
const CLASS = 0x5b;
const BRACE = 0x7b;
const CARET = 0x5e;
const DOLLAR = 0x24;
const DOT = 0x2e;
const PLUS = 0x2b;
const STAR = 0x2a;
const ASK = 0x3f;
/** Signs that do not stand for themselves. */
const SPECIAL = new Uint8Array(0x80);
for (const sign of '\\^$.()[]{}|?*+') SPECIAL[sign.charCodeAt(0)] = 1;

/** What stands in a class without letters and figures, and without ranges that might hold some. */
const NO_WORD = /^(?!\^)-?(?:[^\\\-0-9A-Za-z]|\\[sWnrtfv]|\\[^0-9A-Za-z]|\\u(?!00[0-7])[0-9a-fA-F]{4})+-?$/;
const PLAIN = /[\w ,;:'"!&/<=>@~#%-]+/y;
const COUNT = /\{(\d+)(?:,\d*)?\}/y;
/** What is left of an escape behind its letter. */
const ESCAPED: Readonly<Record<string, RegExp>> = {
  u: /\{[0-9a-fA-F]+\}|[0-9a-fA-F]{4}|/y,
  x: /[0-9a-fA-F]{2}|/y,
  p: /\{[^}]*\}|/y,
  P: /\{[^}]*\}|/y,
  k: /<[^>]*>|/y,
  c: /[A-Za-z]|/y,
};
const FIGURES = /[0-9]*/y;
const BEYOND_ASCII = /^\\u(?!00[0-7])[0-9a-fA-F]{4}$/;

/** Reads the source of a pattern that the engine has taken, from its beginning to its end. */
class Reader {
  readonly pieces: Piece[] = [];
  private readonly source: string;
  private readonly anyCase: boolean;
  private readonly unicode: boolean;
  private at = 0;
  /** Where the plain signs before here begin, and whether a word must begin with what comes there. */
  private from = 0;
  private edge = false;
  /** Where the pieces of the sequence begin, and how often one of them stands in a sentence by chance. */
  private base = 0;
  private best = Number.POSITIVE_INFINITY;

  constructor(source: string, anyCase: boolean, unicode: boolean) {
    this.source = source;
    this.anyCase = anyCase;
    this.unicode = unicode;
  }

  /** Adds what one of several sequences needs; says how often that stands in a sentence. A word begins here, or maybe not. */
  choice(edge: boolean): number {
    const { length } = this.pieces;
    let sum = this.sequence(edge);
    let closed = this.edge;
    while (this.code() === BAR) {
      this.at++;
      sum += this.sequence(edge);
      closed &&= this.edge;
    }
    this.edge = closed;
    if (sum >= TOO_COMMON) this.pieces.length = length;
    return sum < TOO_COMMON ? sum : Number.POSITIVE_INFINITY;
  }

  private code(): number {
    return this.source.charCodeAt(this.at);
  }

  /** Leaves in `edge` whether a word that follows must begin there. */
  private sequence(edge: boolean): number {
    const { base, best } = this;
    this.base = this.pieces.length;
    this.best = Number.POSITIVE_INFINITY;
    this.from = this.at;
    this.edge = edge;
    for (;;) {
      this.skipPlain();
      const sign = this.code();
      if (sign === BAR || sign === CLOSE || this.at >= this.source.length) break;
      this.part(sign);
    }
    const after = this.edgeAfterRun();
    this.offer(false, true);
    this.edge = after;
    const found = this.best;
    this.base = base;
    this.best = best;
    return found;
  }

  /** Goes past signs that stand for themselves once, all at once. */
  private skipPlain(): void {
    if (this.anyCase && this.unicode) return;
    PLAIN.lastIndex = this.at;
    if (!PLAIN.test(this.source)) return;
    const next = this.source.charCodeAt(PLAIN.lastIndex);
    this.at = PLAIN.lastIndex - (next === ASK || next === STAR || next === BRACE || next === PLUS ? 1 : 0);
  }

  private part(sign: number): void {
    if (sign === OPEN) this.group();
    else if (sign === CLASS) this.signs();
    else if (sign === BACKSLASH) this.escape();
    else if (sign === CARET || sign === DOLLAR) this.atEdge(1);
    else if (sign === DOT || SPECIAL[sign] === 1 || this.odd(sign)) this.unknown(1);
    else this.plain(1, wordly(sign));
  }

  /** Under `i` a sign beyond ASCII may stand for another one, and with `u` two letters of ASCII for one beyond it. */
  private odd(sign: number): boolean {
    if (sign >= 0x80) return this.anyCase || (sign >= 0xd800 && sign < 0xe000);
    const lower = sign | 0x20;
    return this.anyCase && this.unicode && (lower === 0x6b || lower === 0x73);
  }

  /** A sign that stands for itself, of so many characters. */
  private plain(length: number, ofWord: boolean): void {
    const next = this.source.charCodeAt(this.at + length);
    if (next === ASK || next === STAR || next === BRACE) this.between(length, ofWord);
    else {
      this.at += length;
      if (next !== PLUS) return;
      this.offer(false, false);
      this.repeated();
      this.restart(!ofWord);
    }
  }

  private atEdge(length: number): void {
    this.offer(true, false);
    this.at += length;
    this.restart(true);
  }

  private unknown(length: number): void {
    this.offer(false, false);
    this.at += length;
    this.repeated();
    this.restart(false);
  }

  /** One sign of some, which is of a word or is not. */
  private between(length: number, ofWord: boolean): void {
    const end = this.at;
    const before = this.edgeAfterRun();
    this.at += length;
    const must = this.repeated() !== MAYBE;
    const next = this.at;
    this.at = end;
    this.offer(must && !ofWord, false);
    this.at = next;
    this.restart(!ofWord && (must || before));
  }

  private restart(edge: boolean): void {
    this.from = this.at;
    this.edge = edge;
  }

  /** Would a word that comes here have to begin here? */
  private edgeAfterRun(): boolean {
    return this.at === this.from ? this.edge : !wordly(this.source.charCodeAt(this.at - 1));
  }

  /** The plain signs before here are needed, if nothing rarer is. */
  private offer(ends: boolean, open: boolean): void {
    const length = this.at - this.from;
    if (length === 0) return;
    const begins = this.edge && wordly(this.source.charCodeAt(this.from));
    const closes = ends && wordly(this.source.charCodeAt(this.at - 1));
    const chance = CHANCE[length + (begins ? 1 : 0) + (closes ? 1 : 0)] ?? RARE;
    if (chance >= this.best) return;
    this.best = chance;
    const written = this.source.slice(this.from, this.at);
    const plain = written.includes('\\') ? written.replaceAll('\\', '') : written;
    this.pieces.length = this.base;
    this.pieces.push({ text: this.anyCase ? plain.toLowerCase() : plain, begins, ends: closes, open });
  }

  private group(): void {
    const looks = this.looks();
    const before = this.edgeAfterRun();
    this.offer(false, false);
    this.at += this.opening();
    const { length } = this.pieces;
    const chance = this.choice(before);
    const inside = this.edge;
    this.at++;
    const often = this.repeated();
    if (looks) {
      this.pieces.length = length;
      this.restart(before);
      return;
    }
    this.restart(inside && (often !== MAYBE || before));
    this.take(length, often === MAYBE ? Number.POSITIVE_INFINITY : chance, often === ONCE);
  }

  private opening(): number {
    if (this.source.charCodeAt(this.at + 1) !== ASK) return 1;
    const third = this.source[this.at + 2];
    if (third === ':' || third === '=' || third === '!') return 3;
    return this.looks() ? 4 : this.source.indexOf('>', this.at) + 1 - this.at;
  }

  /** What looks ahead or back takes nothing, and what it asks for is left out. */
  private looks(): boolean {
    const { source, at } = this;
    if (source.charCodeAt(at + 1) !== ASK) return false;
    const sign = source[at + 2] === '<' ? source[at + 3] : source[at + 2];
    return sign === '=' || sign === '!';
  }

  /** Takes the pieces of a group, from one on, for those of the sequence if they are rarer. */
  private take(first: number, chance: number, once: boolean): void {
    if (chance >= this.best) {
      this.pieces.length = first;
      return;
    }
    this.best = chance;
    const own = this.pieces.splice(first);
    this.pieces.length = this.base;
    const sign = this.code();
    const open = once && (sign === BAR || sign === CLOSE);
    const ends = once && this.wordEnds();
    for (const piece of own) {
      if (piece.open) {
        piece.open = open;
        piece.ends = ends && wordly(piece.text.charCodeAt(piece.text.length - 1));
      }
      this.pieces.push(piece);
    }
  }

  /** Must a word that stands before here end here? */
  private wordEnds(): boolean {
    const sign = this.code();
    if (sign === DOLLAR) return true;
    if (sign === BACKSLASH) return /[bsW]/.test(this.source[this.at + 1]!) && this.mustMatch(2);
    return SPECIAL[sign] === 0 && !wordly(sign) && this.mustMatch(1);
  }

  private mustMatch(length: number): boolean {
    const next = this.source.charCodeAt(this.at + length);
    return next !== ASK && next !== STAR && next !== BRACE;
  }

  private signs(): void {
    let end = this.at + 1;
    for (; this.source[end] !== ']'; end++) if (this.source.charCodeAt(end) === BACKSLASH) end++;
    const none = NO_WORD.test(this.source.slice(this.at + 1, end));
    const length = end + 1 - this.at;
    if (none) this.between(length, false);
    else this.unknown(length);
  }

  private escape(): void {
    const sign = this.source[this.at + 1]!;
    const length = 2 + this.restOf(sign);
    if (sign === 'b') this.atEdge(2);
    else if ('sWnrtfv'.includes(sign) || BEYOND_ASCII.test(this.source.slice(this.at, this.at + length)))
      this.between(length, false);
    else if (/\w/.test(sign) || this.odd(sign.charCodeAt(0))) this.unknown(length);
    else this.plain(2, false);
  }

  private restOf(sign: string): number {
    const rest = ESCAPED[sign] ?? (/[0-9]/.test(sign) ? FIGURES : undefined);
    if (!rest) return 0;
    rest.lastIndex = this.at + 2;
    return rest.exec(this.source)![0].length;
  }

  /** How often what stands before here must match; goes past what says so. */
  private repeated(): number {
    const sign = this.code();
    if (sign === BRACE) return this.counted();
    if (sign !== PLUS && sign !== STAR && sign !== ASK) return ONCE;
    this.at++;
    if (this.code() === ASK) this.at++;
    return sign === PLUS ? SOME : MAYBE;
  }

  private counted(): number {
    COUNT.lastIndex = this.at;
    const count = COUNT.exec(this.source);
    if (!count) return ONCE;
    this.at += count[0].length;
    if (this.code() === ASK) this.at++;
    return Number(count[1]) === 0 ? MAYBE : SOME;
  }
}
