/**
 * Statements below a heading such as "What people get wrong". Such a section lists the mistakes, or tells what is right where
 * people go wrong; its company tells which. Where most of what it says holds, and what does not hold is nowhere put right,
 * its sentences are the author's own.
 */

import type { Passage } from '../notes/model.ts';
import { finds } from '../notes/patterns.ts';
import type { Claim, Operand, Statement } from './model.ts';
import { changed } from './text/place.ts';
import { remembered } from './text/remember.ts';
import { type Scene, sizeKeys } from './text/scene.ts';

type Read = (scene: Scene) => readonly Statement[];

const SOFT =
  /\b(?:gets?|getting|got|goes?|going|go) (?:it |this |them |things )?wrong\b|\b(?:common|typical|frequent|usual|classic) (?:errors?|slips?|pitfalls)\b|\bpitfalls\b/;
const HARD = /\b(?:myths?|misconceptions?|false|on purpose|spot|find|correct|heard|quotes?|say|said)\b/;

/** What is told of each scene; `read` reads one. */
export function inCompany(scenes: Iterable<Scene>, read: Read): Statement[] {
  const sections = new Map<string, Scene[]>();
  const found: Statement[] = [];
  for (const scene of scenes) {
    if (!softly(scene.headings)) {
      found.push(...read(scene));
      continue;
    }
    const key = scene.passage.path.join(' ');
    const own = sections.get(key);
    if (own) own.push(scene);
    else sections.set(key, [scene]);
  }
  for (const own of sections.values()) found.push(...readSection(own, read));
  return found;
}

const soft = (heading: string): boolean => finds(SOFT, heading) && !HARD.test(heading);
/** Asked once a passage: its sentences stand below one row of headings. */
const softly = remembered((headings: readonly string[]): boolean => headings.some(soft));

function readSection(scenes: readonly Scene[], read: Read): readonly Statement[] {
  const plain = scenes.map((scene) => ({
    scene,
    said: read(changed(scene, { headings: scene.headings.filter((heading) => !soft(heading)) })),
  }));
  return tellsWhatHolds(plain)
    ? plain.flatMap(({ said }) => said)
    : scenes.flatMap((scene) => [...read(scene)]);
}

interface Told {
  readonly scene: Scene;
  readonly said: readonly Statement[];
}

/** Passages with something that holds, at the least. */
const ENOUGH = 3;

function tellsWhatHolds(told: readonly Told[]): boolean {
  const all = told.flatMap(({ scene, said }) => said.map((one) => ({ passage: scene.passage, ...one })));
  const right = all.filter(({ verdict }) => verdict === 'agrees');
  const wrong = all.filter(({ verdict }) => verdict === 'contradicted');
  if (right.length < wrong.length || new Set(right.map(({ passage }) => passage)).size < ENOUGH) return false;
  return wrong.every(
    ({ passage, claim }) =>
      !mends(passage) && !right.some((other) => other.passage === passage && alike(other.claim, claim)),
  );
}

const mends = ({ text }: Passage): boolean =>
  text.length > LONGEST ||
  /\b(?:in fact|actually|in truth|really|the truth|reality|not|never|isn't|aren't|no|other way|opposite|instead|reverse|backwards)\b/i.test(
    text,
  );
const LONGEST = 2000;

/** Two claims of one kind, or about one size: the one may put the other right. */
const alike = (a: Claim, b: Claim): boolean =>
  (a.kind === b.kind && a.kind !== 'equivalence') ||
  a.kind === 'direction' ||
  valuesOf(a).some((value) => valuesOf(b).includes(value));

function valuesOf(claim: Claim): string[] {
  const parts: readonly Operand[] =
    'left' in claim
      ? [claim.left, claim.right]
      : 'size' in claim && typeof claim.size === 'object'
        ? [claim.size]
        : 'items' in claim
          ? claim.items
          : [];
  return parts.flatMap(({ sizes }) => sizeKeys(sizes));
}
