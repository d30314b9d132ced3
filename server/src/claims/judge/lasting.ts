/** How long a thread is said to last, alone or against another. Texts differ: only what all of them rule out is wrong. */
import { LASTING, longer, materialById } from '../../sizes/index.ts';
import type { PropertyClaim, Verdict } from '../model.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';

const WHAT: Readonly<Record<string, string>> = {
  strength: 'holds longer than',
  absorption: 'is absorbed later than',
  both: 'lasts longer than',
};
const name = (id: string): string => materialById(id)?.name ?? id;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function judgeLasting({ property, subject }: PropertyClaim): Judgement {
  const [kind, first = '', second = '', third = ''] = property.split(':');
  if (kind === 'weak') return judgeWeak(subject, Number(first), Number(second));
  return kind === 'gone'
    ? judgeGone(subject, Number(first), Number(second))
    : judgeOutlasts(first, second, third);
}

/** `shorter` is what the text says lasts less long, `lasting` what it says lasts longer. */
function judgeOutlasts(what: string, shorter: string, lasting: string): Judgement {
  const says = `Says ${name(lasting)} ${WHAT[what]} ${name(shorter)}.`;
  const [a, b] = [LASTING[lasting], LASTING[shorter]];
  if (!a || !b) return cannotTell(says, '');
  const holds = longer(a.holds, b.holds);
  const stay = (span: typeof a.gone) =>
    span ?? ([Number.MAX_SAFE_INTEGER, Number.POSITIVE_INFINITY] as const);
  const stays = a.gone || b.gone ? longer(stay(a.gone), stay(b.gone)) : undefined;
  const found =
    what === 'strength' ? holds : what === 'absorption' ? stays : holds === stays ? holds : undefined;
  const sources = [...a.sources, ...b.sources];
  const rule = `${capital(name(shorter))} outlasts ${name(lasting)}`;
  return judged(verdictOf(found), says, found === false ? `${rule}.` : '', sources);
}

const verdictOf = (found: boolean | undefined): Verdict =>
  found === undefined ? 'cannot-tell' : found ? 'agrees' : 'contradicted';

/** Less than half of the least, or more than twice the most that any text gives. */
function judgeGone(id: string, low: number, high: number): Judgement {
  const says = `Says ${name(id)} is gone after ${low === high ? low : `${low} to ${high}`} days.`;
  const row = LASTING[id];
  if (!row?.gone) return cannotTell(says, '');
  const [least, most] = row.gone;
  const off = high < least / 2 || low > most * 2;
  const within = low >= least && high <= most;
  const verdict = off ? 'contradicted' : within ? 'agrees' : 'cannot-tell';
  return judged(
    verdict,
    says,
    `${capital(name(id))} is absorbed in about ${least} to ${most} days.`,
    row.sources,
  );
}

/** Strength said to be lost in less than half of the least, or after more than twice the most, that any text gives. */
function judgeWeak(id: string, low: number, high: number): Judgement {
  const says = `Says ${name(id)} has lost its strength after ${low === high ? low : `${low} to ${high}`} days.`;
  const row = LASTING[id];
  if (!row) return cannotTell(says, '');
  const [least, most] = row.holds;
  const off = high < least / 2 || low > most * 2;
  const lasts = Number.isFinite(most)
    ? `holds for about ${least} to ${most} days`
    : 'keeps strength for months or longer';
  return judged(off ? 'contradicted' : 'cannot-tell', says, `${capital(name(id))} ${lasts}.`, row.sources);
}

const judged = (verdict: Verdict, says: string, holds: string, sources: readonly string[]): Judgement => ({
  verdict,
  says,
  holds,
  source: sourceNames(sources),
  sources: [...new Set(sources)],
  steps: holds ? [{ label: 'value', text: holds, sources }] : [],
});
