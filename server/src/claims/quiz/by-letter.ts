/**
 * Choices under whatever letters an author likes, and keys that name the things themselves: "(p) 28 Fr (q) 12 Fr (r) 36 Fr. Key: q,
 * p, r", "(k) 9 mm (l) 1 mm (m) 3.33 mm. Key: 3 Fr – l; 10 Fr – m".
 */
import { matchesOf } from '../../notes/index.ts';
import type { Span } from '../../notes/model.ts';
import { orderCue } from '../constructions/order.ts';
import type { Claim } from '../model.ts';
import type { Read } from '../text/scenes.ts';
import { type Desk, type KeyReading, mark, onKey, readAs, sceneOf, spanOf } from './desk.ts';
import { fillsWhole } from './fillers.ts';
import type { Keyed } from './key.ts';
import { type Piece, piece, written } from './piece.ts';

const LONGEST = 600;
const FEWEST = 3;
/** Longest thing under a letter, in characters. */
const LONGEST_THING = 40;
/** Passages between the letters and their key. */
const FAR = 3;
/** The first letters are read wherever questions with choices are. */
const LAST_USUAL = 'f';

/** Ways of labelling choices: each label follows the one before, or, of shapes, differs from all. */
const LABELS = [
  /(?<=^|[\s,;:])\(?([A-Za-z])\)\s+(?=\S)/g,
  /(?<=^|[\s,;:])([a-f])\/\s+(?=\S)/g,
  /(?<=^|\n)[ \t]*([a-fA-F])\s[-–—=]\s(?=\S)/g,
  /(?<=^|[\s,;:?])([1-9])\uFE0F?\u20E3\s*(?=\S)/g,
  /(?<=^|[\s,;:?])([①-⑨])\s*(?=\S)/g,
  /(?<=^|[\s,;:?])([▲△◆◇●■★♦♣♥♠])\s*(?=\S)/gu,
] as const;
/** What stands in a text with two labels of some kind, asked before any is looked for. */
const MAY_LABEL = /\b[A-Za-z]\)|\bb\/|\n[ \t]*[bB]\s[-–—=]|\u20E3|[②▲△◆◇●■★♦♣♥♠]/u;
const SHAPE = /[▲△◆◇●■★♦♣♥♠]/u;
const KEY =
  /(?<=^|[\n.;?!)]\s*)(?:(?:the|right|correct|model) )*(?:answers?|ans|key|solutions?|order|sequence|correct|right)(?: order| sequence)?\s*(?:is|are|[.:=→–-])\s*(?=\S)([^\n]{1,160})/i;
const LETTERS = /^\(?[a-z]\)?(?:(?:\s*[,;>–→-]\s*|\s+)\(?[a-z]\)?)*[^a-z0-9▲△◆◇●■★♦♣♥♠]*$/i;
const ALONE = /\(?\b([a-z])\b\)?/gi;
const SIGN = /^([1-9①-⑨▲△◆◇●■★♦♣♥♠])(?![\d.,]*\s?[a-z])/u;
const JOINED = /^(.{2,40}?)\s*(?:[–—:=→-]|\sis\b|\bgoes (?:with|to)\b)\s*\(?([a-z])\)?\W*$/i;

interface Lettered {
  readonly read: Read;
  readonly things: ReadonlyMap<string, Piece>;
  readonly start: number;
  readonly end: number;
}

export interface ByLetter {
  readonly keys: readonly Keyed[];
  readonly readings: readonly KeyReading[];
}

export function byLetter(desk: Desk): ByLetter {
  const found = desk.reads.flatMap((read) => {
    const run = lettered(read);
    const key = run && keyBelow(desk.reads, run);
    return run && key ? [{ run, key }] : [];
  });
  return {
    keys: found.flatMap(({ run, key }) => chosen(run, key)),
    readings: found.flatMap(({ run, key }) => joined(run, key, desk)),
  };
}

/** Things under letters that follow one another, in one passage. */
function lettered(read: Read): Lettered | undefined {
  const { passage } = read;
  if (passage.cell || passage.kind === 'heading' || passage.text.length > LONGEST) return undefined;
  if (!MAY_LABEL.test(passage.text)) return undefined;
  const found = LABELS.map((label) => runIn(passage.text, label)).find(({ length }) => length >= FEWEST);
  return found && thingsOf(read, found);
}

interface Label {
  readonly letter: string;
  readonly at: number;
  readonly body: number;
}

function runIn(text: string, label: RegExp): Label[] {
  const run: Label[] = [];
  for (const match of matchesOf(text, label)) {
    const letter = match[1]!.toLowerCase();
    const last = run.at(-1);
    const fits = SHAPE.test(letter)
      ? run.every((one) => one.letter !== letter)
      : !last || letter.charCodeAt(0) === last.letter.charCodeAt(0) + 1;
    if (fits) run.push({ letter, at: match.index, body: match.index + match[0].length });
  }
  return run;
}

function thingsOf(read: Read, run: readonly Label[]): Lettered | undefined {
  const { passage } = read;
  const lastBody = run.at(-1)!.body;
  const stop = /[.;]\s|\n|[.;]?$/.exec(passage.text.slice(lastBody));
  const end = lastBody + (stop?.index ?? 0);
  const things = run.map(({ letter, body }, i) => {
    const to = run[i + 1]?.at ?? end;
    const text = passage.text.slice(body, to).replace(/[\s,;(]+$/, '');
    return [letter, piece(read, body, body + text.length)] as const;
  });
  const short = things.every(([, { span }]) => span.end - span.start <= LONGEST_THING);
  return short ? { read, things: new Map(things), start: run[0]!.at, end } : undefined;
}

/** What calls itself the key, behind the letters or in one of the next passages. */
function keyBelow(reads: readonly Read[], { read, end }: Lettered): Piece | undefined {
  const { index, text } = read.passage;
  const own = keyIn(read, { start: end, end: text.length });
  if (own) return own;
  for (const next of reads.slice(index + 1, index + 1 + FAR)) {
    if (next.passage.cell || next.passage.kind === 'heading') return undefined;
    const key = keyIn(next, { start: 0, end: next.passage.text.length });
    if (key) return key;
    if (!fillsWhole(next)) return undefined;
  }
  return undefined;
}

function keyIn(read: Read, { start, end }: Span): Piece | undefined {
  const match = KEY.exec(read.passage.text.slice(start, end));
  if (!match) return undefined;
  const to = start + match.index + match[0].length;
  return piece(read, to - match[1]!.length, to);
}

/** "r", "q, s, p, r": the choice, or all of them in an order. */
function chosen({ read, things, start }: Lettered, key: Piece): Keyed[] {
  const text = written(key);
  const first = [...things.keys()][0]!;
  const sign = SIGN.exec(text)?.[1];
  const usual =
    first <= LAST_USUAL && /[a-z]/.test(first) && /\(?[a-z]\)\s*$/i.test(before(things.get(first)!));
  if (usual || !(sign ?? LETTERS.test(text))) return [];
  const said = sign ? [sign] : matchesOf(text, ALONE).map((match) => match[1]!.toLowerCase());
  const pieces = said.map((label) => things.get(label));
  const [one] = pieces;
  if (!one || pieces.some((thing) => thing === undefined) || start === 0) return [];
  const question = piece(read, 0, start);
  const quiz = { question, number: -1, options: [...things.values()], end: start, last: read.passage.index };
  if (pieces.length === 1) return [{ quiz, chosen: one, at: key }];
  const whole = pieces.length === things.size && new Set(pieces).size === pieces.length;
  return whole && orderCue(question.items)
    ? [{ quiz, chosen: one, at: key, several: true, sequence: pieces as Piece[] }]
    : [];
}

const before = ({ read, span }: Piece): string =>
  read.passage.text.slice(Math.max(0, span.start - 5), span.start);

/** "3 Fr – l; 10 Fr – m": each thing that the key names, with what stands under the letter. */
function joined({ things }: Lettered, key: Piece, desk: Desk): KeyReading[] {
  const { read, span } = key;
  let at = span.start;
  const entries = written(key)
    .split(/[;,](?=\s)/)
    .flatMap((text) => {
      const start = at;
      at += text.length + 1;
      const match = JOINED.exec(text);
      const thing = match && things.get(match[2]!.toLowerCase());
      return match && thing
        ? [
            {
              named: piece(read, start, start + match[0].indexOf(match[1]!) + match[1]!.length),
              thing,
              start,
              end: start + text.length,
            },
          ]
        : [];
    });
  if (entries.length < 2) return [];
  return entries.flatMap(({ named, thing, start, end }) => {
    const scene = sceneOf(desk, key);
    if (!scene || !named.items.some(({ kind, colour }) => kind === 'size' || colour)) return [];
    const claims = readAs(scene, [...named.items, mark(':'), ...thing.items]).filter(({ kind }) =>
      KINDS.has(kind),
    );
    const place = spanOf(piece(read, start, end));
    return claims
      .slice(0, 1)
      .map((claim): KeyReading => ({ claim: onKey(claim, place, place), stance: 'asserted' }));
  });
}
const KINDS: ReadonlySet<Claim['kind']> = new Set(['equivalence', 'colour', 'property', 'category']);
