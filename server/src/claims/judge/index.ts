/** Judges a claim on the tables and intervals of `sizes`, with the stance applied. */

import type { Step } from '../../checks/model.ts';
import type { Context } from '../../mentions/model.ts';
import type { Note } from '../../notes/model.ts';
import { oneForAll } from '../../notes/once.ts';
import { type Locale, type Part, phrase, quote, say, tell } from '../../texts/index.ts';
import type { Claim, Stance, Statement, Verdict } from '../model.ts';
import { FRAME } from '../texts/frame.ts';
import { judgeCategory } from './category.ts';
import { judgeColour } from './colour.ts';
import { judgeComparison } from './comparison.ts';
import { judgeDirection } from './direction.ts';
import { judgeEquivalence } from './equivalence.ts';
import { judgeExistence } from './existence.ts';
import { judgeFit } from './fit.ts';
import { judgeFormula } from './formula.ts';
import { judgeLimit } from './limit.ts';
import type { Judgement } from './model.ts';
import { judgeOrder } from './order.ts';
import { judgeProperty } from './property.ts';
import { judgeRange } from './range.ts';

export function judge(claim: Claim, stance: Stance, note: Note, context?: Context): Statement {
  const judgement = judgeClaim(claim, note, context);
  const passing = stance === 'denied' && claim.kind === 'property' && claim.presupposed === true;
  const open = passing || (stance === 'denied' && judgement.partly === true);
  const verdict = open ? 'cannot-tell' : underStance(judgement.verdict, stance);
  const { sources, repair } = judgement;
  const inWords = (part: Part): string => oneOf(tell(part, context?.locale));
  const says = inWords(judgement.says);
  const kept = verdict === 'contradicted' && stance === 'asserted' ? repair : undefined;
  return {
    claim,
    stance,
    verdict,
    says: stance === 'denied' ? oneOf(denied(says, context?.locale)) : says,
    holds: inWords(judgement.holds),
    source: inWords(judgement.source),
    sources,
    ...(kept ? { repair: { ...kept, title: inWords(kept.title) } } : {}),
    derivation: [
      {
        label: 'read',
        text: oneOf(
          say(context?.locale, FRAME.read, { says: quote(says), construction: claim.construction, stance }),
        ),
      },
      ...judgement.steps.map((step) => ({ ...step, text: inWords(step.text) })),
      RESULT[verdict],
    ],
  };
}

const RESULT: Readonly<Record<Verdict, Step>> = {
  contradicted: { label: 'result', text: 'contradicted' },
  agrees: { label: 'result', text: 'agrees' },
  'cannot-tell': { label: 'result', text: 'cannot tell' },
};

/** A long note says the same of the same few sizes over and over, and what is told of it is held once. */
const oneOf = oneForAll(5000);

function judgeClaim(claim: Claim, note: Note, context?: Context): Judgement {
  switch (claim.kind) {
    case 'direction':
      return judgeDirection(claim, note);
    case 'comparison':
      return judgeComparison(claim, note, context);
    case 'equivalence':
      return judgeEquivalence(claim, note, context);
    case 'order':
      return judgeOrder(claim, note, context);
    case 'range':
      return judgeRange(claim);
    case 'limit':
      return judgeLimit(claim, context);
    case 'category':
      return judgeCategory(claim);
    case 'fit':
      return judgeFit(claim, context);
    case 'formula':
      return judgeFormula(claim);
    case 'colour':
      return judgeColour(claim, note);
    case 'property':
      return judgeProperty(claim);
    case 'existence':
      return judgeExistence(claim);
    case 'key':
      return {
        verdict: 'contradicted',
        says: phrase(FRAME.keyMarks),
        holds: claim.problem,
        source: '',
        sources: [],
        steps: [],
      };
  }
}

/** The sentence without its opening, as what the text denies. */
function denied(says: string, locale: Locale = 'en'): string {
  const opening = FRAME.opening[locale];
  if (says.startsWith(opening)) return say(locale, FRAME.denied, { said: quote(says.slice(opening.length)) });
  return say(locale, FRAME.deniedWhole, { said: quote(says.charAt(0).toLowerCase() + says.slice(1)) });
}

/** Only what the author asserts or denies is judged; a true denial agrees. */
function underStance(verdict: Verdict, stance: Stance): Verdict {
  if (stance === 'asserted' || verdict === 'cannot-tell')
    return stance === 'asserted' ? verdict : 'cannot-tell';
  if (stance !== 'denied') return 'cannot-tell';
  return verdict === 'contradicted' ? 'agrees' : 'contradicted';
}
