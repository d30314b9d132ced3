/** A candidate's surroundings as strings and hits, cut to a reach once. */
import type { Span } from '../../notes/model.ts';
import type { Device } from '../../sizes/model.ts';
import type { Candidate } from '../scan.ts';
import {
  type Hit,
  headingsOf,
  labelsOf,
  type Scene,
  type Surroundings,
  sentenceAround,
  sentenceIndex,
  within,
} from '../scene.ts';

export interface Place {
  readonly around: Surroundings;
  readonly scene: Scene;
  readonly span: Span;
  /** The sentence, cut to a reach. */
  readonly sentence: Span;
  readonly before: string;
  readonly after: string;
  readonly text: string;
  readonly devices: readonly Hit<Device>[];
  readonly materials: readonly Hit<string>[];
}

export function placeOf(
  around: Surroundings,
  scene: Scene,
  candidate: Pick<Candidate, 'span' | 'match'>,
): Place {
  const span = candidate.span;
  const sentence = sentenceAround(scene, candidate.match);
  const text = scene.passage.text;
  return {
    around,
    scene,
    span,
    sentence,
    before: text.slice(sentence.start, candidate.match.start),
    after: text.slice(candidate.match.end, sentence.end),
    text: text.slice(sentence.start, sentence.end),
    devices: within(scene.devices, sentence),
    materials: within(scene.materials, sentence),
  };
}

/** Scenes from near to far: this passage's labels, earlier sentences, lead-in, list parent, headings. */
export function wider(place: Place): readonly Scene[] {
  const { around, scene } = place;
  const { header, row, corner } = labelsOf(around, scene.passage);
  const table = scene.passage.cell ? around.note.tables[scene.passage.cell.table] : undefined;
  const at = (index: number | undefined): Scene | undefined =>
    index === undefined || index < 0 ? undefined : around.scenes[index];
  const list = scene.passage.list;
  const near = [row, header, corner, at(list?.parent), at(list?.leadIn), at(table?.leadIn)];
  return [...near, ...headingsOf(around, scene.passage)].filter((one): one is Scene => one !== undefined);
}

/** Device hits of the sentences before this one in the passage, nearest first. */
export function earlier<T>(place: Place, hits: readonly Hit<T>[]): readonly Hit<T>[] {
  const from = place.scene.sentences[Math.max(0, sentenceIndex(place.scene, place.span.start) - 2)]!;
  const start = Math.max(from.start, place.sentence.start - 600);
  return [...within(hits, { start, end: place.sentence.start })].reverse();
}

/** Hits ordered by how near they stand; one right after the number counts before one in front. */
export function byNearness<T>(hits: readonly Hit<T>[], span: Span, text: string): readonly Hit<T>[] {
  const far = (hit: Hit<T>): number => {
    const after = hit.start >= span.end;
    const between = after
      ? text.slice(span.end, Math.min(hit.start, span.end + 400))
      : text.slice(Math.max(hit.end, span.start - 400), span.start);
    if (between.trim() === '') return after ? 0 : 1;
    const stops = (between.match(/,|\b(?:but|than|while|whereas|against)\b/g) ?? []).length;
    const walls = (between.match(/[;:–—(]|\.\s/g) ?? []).length;
    const joins = (between.match(/\b(?:and|or)\b/g) ?? []).length;
    return between.length + joins * (after ? 12 : 0) + stops * 25 + walls * 70 + (after ? 0 : 12);
  };
  return hits
    .map((hit) => ({ hit, far: far(hit) }))
    .sort((a, b) => a.far - b.far)
    .map((one) => one.hit);
}
