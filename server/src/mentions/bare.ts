/** Bare numbers whose system the context settles: table cells, chains, "the 22", "a 16 flows faster". */
import type { Span } from '../notes/model.ts';
import type { System } from '../sizes/model.ts';
import { tableNumbers } from './cells.ts';
import { mentionOf } from './find.ts';
import type { Mention } from './model.ts';
import type { Candidate } from './scan.ts';
import type { Scene, Surroundings } from './scene.ts';
import { bareQuestion, settledSystem, suitsBare } from './sense/bare.ts';
import { type Place, placeOf } from './sense/place.ts';
import { size } from './sense/verdict.ts';
import { CLOSED, DETERMINED, FETCHED, HANDED } from './words/frames.ts';
import { COUNTED, LABELLED } from './words/lookalikes.ts';
import { readNumber, WORD_NUMBER } from './words/numbers.ts';

const TOKEN = new RegExp(
  `(?<![0-9A-Za-zÀ-ÿ.,:/⁄$€£#%°_+-])(?:[0-9]{1,2}(?:[.][0-9])?|${WORD_NUMBER}(?:[\\s]and[\\s]a[\\s]half)?)(?:s(?=[\\s.,;:)]|$))?(?![0-9A-Za-zÀ-ÿ%°_]|[.,:/][0-9]|-[0-9A-Za-z]|'s\\s[a-z]+\\sbirthday)`,
  'gi',
);

const NOTATION = {
  id: 'bare',
  title: 'Bare number',
  about: '',
  pattern: '',
  anyCase: true,
  read: () => [],
  examples: [],
  counterExamples: [],
};

/** A candidate for a bare number; undefined when the text is none. */
export function bareCandidate(text: string, span: Span): Candidate | undefined {
  const read = readNumber(
    text
      .slice(span.start, span.end)
      .replace(/s$/i, (s) => (/[0-9]s$/.test(text.slice(span.start, span.end)) ? '' : s)),
  );
  if (!read) return undefined;
  const item = {
    start: 0,
    end: span.end - span.start,
    values: [read.value],
    decimals: read.decimals,
    ...(read.spoken ? { spoken: true } : {}),
  };
  return { notation: NOTATION, span, match: span, item };
}

/** Bare sizes of one passage, given what the notations found everywhere. */
export function bareSizes(
  around: Surroundings,
  scene: Scene,
  settled: readonly (readonly Mention[])[],
): Mention[] {
  const own = settled[scene.passage.index] ?? [];
  if (scene.passage.cell) {
    const cells = tableNumbers(around, scene, own);
    if (cells.length > 0) return cells;
  }
  const free = tokens(scene.passage.text, own);
  const chained = chains(around, scene, own, free);
  const known = [...own, ...chained].sort((a, b) => a.span.start - b.span.start);
  const rest = free.filter((candidate) => !chained.some((one) => one.span.start === candidate.span.start));
  return [...chained, ...rest.flatMap((candidate) => framed(around, scene, settled, known, candidate) ?? [])];
}

/** Number tokens that belong to no mention yet. */
function tokens(text: string, taken: readonly Mention[]): readonly Candidate[] {
  const found: Candidate[] = [];
  let next = 0;
  const spans = [...taken].sort((a, b) => a.span.start - b.span.start).map((one) => one.span);
  for (const match of text.matchAll(TOKEN)) {
    const span = { start: match.index, end: match.index + match[0].length };
    while (next < spans.length && spans[next]!.end <= span.start) next++;
    if (next < spans.length && spans[next]!.start < span.end) continue;
    const candidate = bareCandidate(text, span);
    if (candidate) found.push(candidate);
  }
  return found;
}

const LINK =
  /^\s?(?:,|→|>|<|\/|–|-|>>|->)\s?(?:and\s|or\s|then\s)?(?:an?\s|the\s)?$|^\s(?:or|and|to|then)\s(?:an?\s|the\s)?$/i;

/** Numbers chained to a size: "one, zero, two-oh", "18 G, 20, 22". */
function chains(
  around: Surroundings,
  scene: Scene,
  own: readonly Mention[],
  free: readonly Candidate[],
): Mention[] {
  const text = scene.passage.text;
  const found: Mention[] = [];
  const grow = (
    order: readonly Candidate[],
    touching: (candidate: Candidate, mention: Mention) => string,
  ): void => {
    let edge = new Map<number, Mention>();
    for (const mention of [...own, ...found]) edge = edge.set(mention.span.start, mention);
    for (const candidate of order) {
      const neighbour = nearest(edge, candidate, touching);
      const mention =
        neighbour && chainedTo(around, scene, candidate, neighbour, touching(candidate, neighbour));
      if (!mention || found.some((one) => one.span.start === mention.span.start)) continue;
      found.push(mention);
      edge.set(mention.span.start, mention);
    }
  };
  const forward = (candidate: Candidate, mention: Mention): string =>
    text.slice(mention.span.end, candidate.span.start);
  const backward = (candidate: Candidate, mention: Mention): string =>
    text.slice(candidate.span.end, mention.span.start);
  grow([...free].reverse(), backward);
  grow(free, forward);
  return found;
}

/** The mention within a few characters on the wanted side. */
function nearest(
  edge: ReadonlyMap<number, Mention>,
  candidate: Candidate,
  between: (c: Candidate, m: Mention) => string,
): Mention | undefined {
  for (const mention of edge.values()) {
    const gap = between(candidate, mention);
    if (gap.length > 0 && gap.length < 14 && LINK.test(gap)) return mention;
  }
  return undefined;
}

function chainedTo(
  around: Surroundings,
  scene: Scene,
  candidate: Candidate,
  neighbour: Mention,
  gap: string,
): Mention | undefined {
  const system = neighbour.sizes[0]?.system;
  if (!system || system === 'millimetre' || system === 'inch' || neighbour.kind === 'ambiguous')
    return undefined;
  const place = placeOf(around, scene, candidate);
  if (
    LABELLED.test(place.before) ||
    COUNTED.test(place.after) ||
    !suitsBare(system, candidate.item.values[0]!)
  )
    return undefined;
  if (!CLOSED.test(place.after) && !/^\s?[/–-]/.test(place.after)) return undefined;
  return mentionOf(place, candidate, size(system, 'chain', gap.trim() || neighbour.text));
}

/** "the 22", "a 16 flows faster", "from twenty-five down to …", "pass a 2". */
function framed(
  around: Surroundings,
  scene: Scene,
  settled: readonly (readonly Mention[])[],
  known: readonly Mention[],
  candidate: Candidate,
): Mention | undefined {
  const place = placeOf(around, scene, candidate);
  const value = candidate.item.values[0]!;
  if (COUNTED.test(place.after) && !/^:/.test(place.after)) return undefined;
  const question = bareQuestion(place, value, known);
  if (question) return mentionOf(place, candidate, question);
  const frame = frameOf(place, candidate);
  if (!frame || !CLOSED.test(place.after)) return fetched(place, candidate, settled);
  const system: System | undefined = settledSystem(place, value, known, settled, frame);
  if (system)
    return mentionOf(place, candidate, size(system, `settled-${frame}`, place.text.slice(0, 80).trim()));
  return fetched(place, candidate, settled);
}

export type Frame = 'article' | 'handed' | 'plural' | 'loose';

function frameOf(place: Place, candidate: Candidate): Frame | undefined {
  if (/[0-9]s$/.test(place.scene.passage.text.slice(candidate.span.start, candidate.span.end)))
    return 'plural';
  if (DETERMINED.test(place.before)) return 'article';
  if (HANDED.test(place.before)) return 'handed';
  if (LABELLED.test(place.before)) return undefined;
  return 'loose';
}

/** A size asked for with no system in sight. */
function fetched(
  place: Place,
  candidate: Candidate,
  settled: readonly (readonly Mention[])[],
): Mention | undefined {
  if (!FETCHED.test(place.before) || !settled.some((mentions) => mentions.length > 0)) return undefined;
  if (!/^\s?(?:[.,;:)?!"”’'*_]|$|for\b|when\b|from\b)/.test(place.after.trimStart())) return undefined;
  const value = candidate.item.values[0]!;
  const systems = (['needle-gauge', 'french', 'tube-id', 'usp'] as const).filter((system) =>
    suitsBare(system, value),
  );
  if (systems.length < 1) return undefined;
  const NAMES = {
    'needle-gauge': ['gauge', 'G'],
    french: ['French', 'Fr'],
    'tube-id': ['mm inner diameter', 'mm ID'],
    usp: ['USP thread size', ''],
  } as const;
  const readings = systems.map((system) => ({
    size: { system, value },
    words: `${value} ${NAMES[system][0]}`,
    ...(NAMES[system][1] ? { write: `${value} ${NAMES[system][1]}` } : {}),
  }));
  return mentionOf(place, candidate, {
    is: 'ambiguous',
    readings,
    evidence: { rule: 'no-system', saw: place.text.slice(0, 80).trim() },
  });
}
