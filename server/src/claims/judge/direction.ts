/** Which way the numbers of a system run. */

import type { Note } from '../../notes/model.ts';
import { DIRECTION_WORDS, direction } from '../../sizes/index.ts';
import { phrase } from '../../texts/index.ts';
import type { DirectionClaim } from '../model.ts';
import { DIRECTION } from '../texts/direction.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';
import { swapEdit } from './swap.ts';
import { endWords, numberWords } from './words.ts';

const SOURCES: Readonly<Record<string, readonly string[]>> = {
  'needle-gauge': ['ISO9626-scope'],
  french: ['UCUM', 'ISO20696'],
  usp: ['USP29-861'],
  'ep-metric': ['PhEur-table'],
};
const STANDARDS: Readonly<Record<string, string>> = {
  'needle-gauge': 'ISO 9626',
  french: 'definition of the French (UCUM, ISO 20696)',
  usp: 'USP <861>',
  'ep-metric': 'European Pharmacopoeia',
  'tube-id': 'by definition',
  'wire-inch': 'by definition',
};

export function judgeDirection(claim: DirectionClaim, note: Note): Judgement {
  if (claim.system === 'millimetre') return judgeCoupled(claim, note);
  const zeros = claim.zeros ?? false;
  const says = phrase(zeros ? DIRECTION.saysMany : DIRECTION.says, {
    number: numberWords(claim.system, claim.number === 'up', zeros),
    end: endWords(claim.axis, claim.size === 'up'),
  });
  const runs = zeros ? 'down' : claim.whole ? 'up' : direction(claim.system);
  if (runs === 'split' || claim.axis === 'number' || claim.axis === 'other')
    return cannotTell(
      says,
      phrase(DIRECTION.holds, { system: SYSTEM_WORDS.usp!, rule: DIRECTION_WORDS.usp }),
    );
  const right = (runs === 'up') === (claim.number === claim.size);
  const swap = swapEdit(note, claim.focus);
  const holds = phrase(DIRECTION.holds, {
    system: SYSTEM_WORDS[claim.system] ?? 'these sizes',
    rule: zeros ? phrase(DIRECTION.moreZerosThinner) : DIRECTION_WORDS[claim.system],
  });
  return {
    verdict: right ? 'agrees' : 'contradicted',
    says,
    holds,
    source: STANDARDS[claim.system] ?? 'by definition',
    sources: SOURCES[claim.system] ?? [],
    ...(swap ? { repair: swap } : {}),
    steps: [{ label: 'rule', text: holds, sources: SOURCES[claim.system] ?? [] }],
  };
}

/** What is wider runs faster, holds more and leaves a larger hole, all else equal (source of the flow: mcpherson). */
function judgeCoupled(claim: DirectionClaim, note: Note): Judgement {
  const wide = endWords('outer', claim.number === 'up');
  const says = phrase(DIRECTION.coupled, { wide, end: endWords(claim.axis, claim.size === 'up') });
  const holds = phrase(DIRECTION.coupledHolds, { wide, end: endWords(claim.axis, claim.number === 'up') });
  const sources = claim.axis === 'flow' ? ['mcpherson'] : [];
  const swap = swapEdit(note, claim.focus);
  return {
    verdict: claim.number === claim.size ? 'agrees' : 'contradicted',
    says,
    holds,
    source: sourceNames(sources) || 'common practice, no source',
    sources,
    ...(swap ? { repair: swap } : {}),
    steps: [{ label: 'rule', text: holds, sources }],
  };
}

const SYSTEM_WORDS: Readonly<Record<string, string>> = {
  'needle-gauge': 'needle and cannula gauge',
  french: 'French',
  usp: 'USP sizes',
  'ep-metric': 'metric suture numbers',
  'tube-id': 'tracheal tubes',
  'wire-inch': 'guidewires',
  hegar: 'Hegar dilators',
  'wire-gauge': 'wire gauge',
};
