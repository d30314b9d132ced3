/** Every size mention of a note, in order. */

import { sourceSpan } from '../notes/index.ts';
import type { Note } from '../notes/model.ts';
import { deviceOf, materialOf } from './attach.ts';
import { bareSizes } from './bare.ts';
import type { Context, Mention } from './model.ts';
import { joinRanges } from './ranges.ts';
import { type Candidate, scan } from './scan.ts';
import { type Scene, type Surroundings, sentenceIndex, survey } from './scene.ts';
import { LENGTHS, lengthRule, RULES } from './sense/decide.ts';
import { type Place, placeOf } from './sense/place.ts';
import { plausible } from './sense/systems.ts';
import type { Verdict } from './sense/verdict.ts';
import { approximate, boundOf } from './words/bounds.ts';

/** Sorted by passage and span. Never throws; linear in the length of the note. */
export function findMentions(note: Note, context: Context = {}): Mention[] {
  const around = survey(note, context);
  const settled = around.scenes.map((scene) => passageMentions(around, scene));
  return settled.flatMap((mentions, i) => {
    const scene = around.scenes[i]!;
    const all = [...mentions, ...bareSizes(around, scene, settled)];
    return joinRanges(
      scene,
      all.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end),
    );
  });
}

function passageMentions(around: Surroundings, scene: Scene): Mention[] {
  const candidates = scan(scene.passage.text);
  const sized = new Set<number>();
  const first = candidates.flatMap((candidate) => {
    const rule = RULES[candidate.notation.id];
    if (!rule) return [];
    const place = placeOf(around, scene, candidate);
    const mention = mentionOf(place, candidate, rule(place, matched(scene, candidate), candidate));
    if (mention?.kind !== 'ambiguous' && mention) sized.add(sentenceIndex(scene, candidate.span.start));
    return mention ?? [];
  });
  const lengths = candidates.flatMap((candidate) => {
    const system = LENGTHS[candidate.notation.id];
    if (!system) return [];
    const place = placeOf(around, scene, candidate);
    const verdict = lengthRule(
      place,
      matched(scene, candidate),
      system,
      sized.has(sentenceIndex(scene, candidate.span.start)) || rowSized(place),
    );
    return mentionOf(place, candidate, verdict) ?? [];
  });
  return [...first, ...lengths];
}

const matched = (scene: Scene, candidate: Candidate): string =>
  scene.passage.text.slice(candidate.match.start, candidate.match.end);

/** Is there a size elsewhere in the cell's row? Cheap look: a digit before a unit letter. */
function rowSized(place: Place): boolean {
  const cell = place.scene.passage.cell;
  if (!cell) return false;
  const row = place.around.note.tables[cell.table]?.rows[cell.row] ?? [];
  return row
    .slice(0, 12)
    .some((index) =>
      /[0-9]\s?(?:G|Fr|F|Ch)\b|[0-9]-0\b|gauge/.test(
        place.around.scenes[index]?.passage.text.slice(0, 200) ?? '',
      ),
    );
}

/** Builds the mention a verdict stands for. */
export function mentionOf(place: Place, candidate: Candidate, verdict: Verdict): Mention | undefined {
  if (verdict.is === 'nothing') return undefined;
  const { passage } = place.scene;
  const { span, item, notation } = candidate;
  const base = {
    passage: passage.index,
    span,
    source: sourceSpan(passage, span),
    text: passage.text.slice(span.start, span.end),
    notation: notation.id,
    decimals: item.decimals,
    evidence: [verdict.evidence],
    ...(item.spoken ? { spoken: true } : {}),
  };
  if (verdict.is === 'ambiguous')
    return { ...base, kind: 'ambiguous', sizes: [], readings: verdict.readings };
  const { system } = verdict;
  const values = verdict.values ?? item.values;
  if (!values.every((value) => plausible(system, value))) return undefined;
  const device = deviceOf(place, system);
  const material = materialOf(place, system);
  const bound = boundOf(place.before, place.after, base.text);
  return {
    ...base,
    kind: values.length > 1 ? 'range' : 'size',
    sizes: values.map((value) => ({ system, value })),
    readings: [],
    ...(device ? { device } : {}),
    ...(material ? { material } : {}),
    ...(bound ? { bound } : {}),
    ...(approximate(place.before) ? { approximate: true } : {}),
    ...(isLength(place, verdict.evidence.rule, system) ? { length: true } : {}),
  };
}

/** G × length, "1½ in long", an inch on a needle: how far it reaches, not how thick it is. */
function isLength(place: Place, rule: string, system: string): boolean {
  if (system !== 'millimetre' && system !== 'inch') return false;
  if (rule === 'gauge-by-length' || /^[\s-]?(?:long|length|in length)\b/i.test(place.after)) return true;
  return system === 'inch' && rule !== 'diameter-word';
}
