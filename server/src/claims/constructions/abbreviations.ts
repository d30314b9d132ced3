/** What an abbreviation stands for: "the F in 14F is to be read as Foley", "the French abbreviations are Fr, Ch and GA". */
import { finds } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import { ABBREVIATIONS, EXPANSIONS } from '../words/abbreviations.ts';
import { NEGATIONS } from '../words/changes.ts';
import type { Construction, Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

export const abbreviations: Construction = {
  id: 'abbreviations',
  needs: () => [{ holds: ['system'] }, { sizes: 1 }],
  read(scene) {
    const { items } = scene;
    if (scene.sentence.close === '?' || items.length > 40 || !finds(SPEAKS, joined(items))) return [];
    if (items.some(({ word }) => NEGATIONS.has(word) || TURNS.test(word))) return [];
    return [...listed(scene), ...stoodFor(scene)].slice(0, 1);
  },
};

const SPEAKS =
  /\b(?:stands? for|short for|abbreviat\w+|means?|is to be read|reads? as|read as|denotes?|letters?|hash|is for|symbols?)\b/;
const TURNS =
  /^(?:or|instead|rather|if|unless|wrongly|mistak.*|confus.*|misread.*|could|might|may|some|than|myth|also)$/;
const STANDS =
  /^(?:stands? for|(?:is|are|was|being) short for|abbreviates?|is (?:the|an) abbreviation (?:of|for)|means?|(?:is|are) (?:to be |always )?read as|reads? as|denotes?|counts?|is for|should be read as|must be read as|says)\b/;

function stoodFor(scene: Scene): Reading[] {
  const { items } = scene;
  for (let i = 0; i < items.length; i++) {
    const short = shortAt(items, i);
    if (!short) continue;
    const link = linkAfter(items, i);
    const object =
      link < 0
        ? -1
        : items.findIndex(
            ({ word, kind }, k) => k > link && k <= link + 6 && kind === 'word' && EXPANSIONS.test(word),
          );
    if (object < 0 || short.means.test(items[object]!.word)) continue;
    // "Fr means a third of a millimetre": a value, not a name.
    if (
      /\b(?:of|per|a|one|in)$/.test(joined(items, object - 1, object)) &&
      /^(?:mm|milli|inch|length|size|number)/.test(items[object]!.word)
    )
      continue;
    // "EP means the European number": the right word may still follow.
    if (items.slice(object + 1, object + 3).some(({ word }) => short.means.test(word))) continue;
    return [rule(scene, short.rule, object, i)];
  }
  return [];
}

/** The link behind an abbreviation; where it stands and what it is printed on may come between. */
function linkAfter(items: readonly Item[], i: number): number {
  for (let k = i + 1; k <= i + 8 && k < items.length; k++) {
    if (/^[;:.]$/.test(items[k]!.word)) return -1;
    const match = STANDS.exec(joined(items, k, k + 5));
    if (match) return k + match[0].split(' ').length - 1;
    if (items[k]!.word === 'and' || /^(?:is|are|has|have)$/.test(items[k]!.word)) return -1;
  }
  return -1;
}

function shortAt(items: readonly Item[], i: number) {
  const item = items[i]!;
  const short = ABBREVIATIONS.get(item.word);
  // "USP 3-0 stands for three noughts": what the size stands for.
  if (!short || item.kind !== 'word' || items[i + 1]?.kind === 'size') return undefined;
  if (item.word === 'hash') return /\bthe$/.test(joined(items, i - 1, i)) ? short : undefined;
  const named = item.capital && (item.word.length > 1 || LETTER.test(joined(items, i - 3, i)));
  return named ? short : undefined;
}
const LETTER = /\b(?:the|letter|unit|symbol|capital|a|an)(?: ["“'‘])?$/;

/** "The French abbreviations are Fr, Ch and GA": each of them must be one. */
function listed(scene: Scene): Reading[] {
  const { items } = scene;
  const at = items.findIndex(({ word }) => /^(?:abbreviations?|symbols?|initials|shorthands?)$/.test(word));
  if (at < 0) return [];
  const near = [...items.slice(Math.max(0, at - 2), at), ...items.slice(at + 1, at + 4)].flatMap(
    ({ system, word }) => (system && word.length > 2 ? system : []),
  );
  const system = near.length === 1 ? near[0] : undefined;
  const expected =
    system === 'french' ? 'short-for-french' : system === 'needle-gauge' ? 'short-for-gauge' : undefined;
  if (!expected) return [];
  const stray = items.findIndex(
    (item, i) => i > at + 1 && item.capital && item.kind === 'word' && isOther(item.word, expected),
  );
  return stray < 0 ? [] : [rule(scene, expected, stray, at)];
}

const isOther = (word: string, expected: string): boolean => {
  const short = ABBREVIATIONS.get(word);
  return short !== undefined && short.rule !== expected && short.rule !== 'short-for-number';
};

function rule(scene: Scene, id: string, at: number, from: number): Reading {
  const system = id === 'short-for-french' ? 'french' : id === 'short-for-gauge' ? 'needle-gauge' : 'usp';
  const claim = ruleClaim(scene, 'abbreviations', system, id, at);
  return { claim, at, from: Math.min(at, from), to: Math.max(at, from), unconditional: true };
}
