/** How long a thread is said to last, alone or against another. Texts differ: only what all of them rule out is wrong. */

import { isCollagen, LASTING, longer, materialById } from '../../sizes/index.ts';
import { type Part, phrase } from '../../texts/index.ts';
import type { PropertyClaim, Verdict } from '../model.ts';
import { LASTING as LASTING_TEXTS } from '../texts/materials.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';

const WHAT = {
  strength: LASTING_TEXTS.saysStrength,
  absorption: LASTING_TEXTS.saysAbsorption,
  both: LASTING_TEXTS.saysBoth,
} as const;
const name = (id: string): string => materialById(id)?.name ?? id;

export function judgeLasting({ property, subject }: PropertyClaim): Judgement {
  const [kind, first = '', second = '', third = ''] = property.split(':');
  if (kind === 'weak') return judgeWeak(subject, Number(first), Number(second));
  if (kind === 'lasts') return judgeLasts(subject, Number(first), Number(second));
  if (kind === 'half' || kind === 'most') return judgeLeft(kind, subject, Number(first), Number(second));
  return kind === 'gone'
    ? judgeGone(subject, Number(first), Number(second))
    : judgeOutlasts(first as keyof typeof WHAT, second, third);
}

/** `shorter` is what the text says lasts less long, `lasting` what it says lasts longer. */
function judgeOutlasts(what: keyof typeof WHAT, shorter: string, lasting: string): Judgement {
  const says = phrase(WHAT[what], { longer: name(lasting), shorter: name(shorter) });
  const [a, b] = [LASTING[lasting], LASTING[shorter]];
  if (!a || !b) return cannotTell(says, '');
  const holds = longer(a.holds, b.holds);
  const stay = (span: typeof a.gone) =>
    span ?? ([Number.MAX_SAFE_INTEGER, Number.POSITIVE_INFINITY] as const);
  const stays = a.gone || b.gone ? longer(stay(a.gone), stay(b.gone)) : undefined;
  const found =
    what === 'strength' ? holds : what === 'absorption' ? stays : holds === stays ? holds : undefined;
  const sources = [...a.sources, ...b.sources];
  const rule = phrase(LASTING_TEXTS.outlasts, { longer: name(shorter), shorter: name(lasting) });
  return judged(verdictOf(found), says, found === false ? rule : '', sources);
}

const verdictOf = (found: boolean | undefined): Verdict =>
  found === undefined ? 'cannot-tell' : found ? 'agrees' : 'contradicted';

/** Less than half of the least, or more than twice the most that any text gives. */
function judgeGone(id: string, low: number, high: number): Judgement {
  const says = phrase(LASTING_TEXTS.saysGone, { material: name(id), days: days(low, high) });
  const row = LASTING[id];
  if (!row?.gone) return cannotTell(says, '');
  const [least, most] = row.gone;
  // Of gut many texts call absorbed what has only lost its strength.
  const soonest = isCollagen(id) ? Math.min(least, row.holds[0]) : least;
  const off = high < soonest / 2 || low > most * 2;
  const within = low >= least && high <= most;
  const verdict = off ? 'contradicted' : within ? 'agrees' : 'cannot-tell';
  return judged(
    verdict,
    says,
    phrase(LASTING_TEXTS.absorbed, { material: name(id), least, most }),
    row.sources,
  );
}

/** Strength said to be lost in less than half of the least, or after more than twice the most, that any text gives. */
function judgeWeak(id: string, low: number, high: number): Judgement {
  const says = phrase(LASTING_TEXTS.saysWeak, { material: name(id), days: days(low, high) });
  const row = LASTING[id];
  if (!row) return cannotTell(says, '');
  const [least, most] = row.holds;
  const off = high < least / 2 || low > most * 2;
  const lasts = Number.isFinite(most)
    ? phrase(LASTING_TEXTS.holds, { material: name(id), least, most })
    : phrase(LASTING_TEXTS.keeps, { material: name(id) });
  return judged(off ? 'contradicted' : 'cannot-tell', says, lasts, row.sources);
}

/** "lasts for …" may be said of the strength or of the thread: wrong where it fits neither. */
function judgeLasts(id: string, low: number, high: number): Judgement {
  const [weak, gone] = [judgeWeak(id, low, high), judgeGone(id, low, high)];
  const row = LASTING[id];
  const off = row?.gone && (high < row.holds[0] / 2 || low > row.gone[1] * 2);
  return off
    ? { ...(high < row.holds[0] / 2 ? weak : gone), verdict: 'contradicted' }
    : { ...gone, verdict: 'cannot-tell' };
}

/**
 * Half of the strength said to be left: wrong before a quarter of the least, or after half as long again as the most, that
 * any text gives for all of it. Most of it said to be left: wrong once every text has it gone.
 */
function judgeLeft(kind: 'half' | 'most', id: string, low: number, high: number): Judgement {
  const says = phrase(kind === 'half' ? LASTING_TEXTS.saysHalf : LASTING_TEXTS.saysMost, {
    material: name(id),
    days: days(low, high),
  });
  const row = LASTING[id];
  if (!row) return cannotTell(says, '');
  const [least, most] = row.holds;
  const off = kind === 'most' ? low >= most : high < least / 4 || low > most * 1.5;
  const lasts = Number.isFinite(most)
    ? phrase(LASTING_TEXTS.holds, { material: name(id), least, most })
    : phrase(LASTING_TEXTS.keeps, { material: name(id) });
  return judged(off ? 'contradicted' : 'cannot-tell', says, lasts, row.sources);
}

const days = (low: number, high: number): Part =>
  low === high ? low : phrase(LASTING_TEXTS.days, { low, high });

const judged = (verdict: Verdict, says: Part, holds: Part, sources: readonly string[]): Judgement => ({
  verdict,
  says,
  holds,
  source: sourceNames(sources),
  sources: [...new Set(sources)],
  steps: holds ? [{ label: 'value', text: holds, sources }] : [],
});
