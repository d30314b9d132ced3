/** Statements of several parts: who denies the whole ("False.", "No.", "it is not true that …") leaves open which part fails. */
import type { Claim, Statement } from './model.ts';
import type { Item } from './text/items.ts';

/** Words that join a second statement to the first: a reason, an aside, a contrast. */
const JOINS =
  /^(?:because|since|which|who|whose|being|so|therefore|hence|thus|but|yet|while|whereas|although|though|;)$/;
/** Of a material or a point: an aside, or a claim that it is the only one. */
const PROPERTY_JOINS =
  /^(?:with|only|sole|always|exclusively|than|more|less|faster|slower|quicker|sooner|longer)$/;
/** Of a scale: how much a step makes of it may be what is denied. */
const TIMES =
  /^(?:halves|halved|halving|half|doubles?|doubled|doubling|triples?|trebles?|quarters?|twice|thrice|threefold|twofold|tenfold|always|exactly|equally|evenly|proportional\w*|linear\w*)$/;
const ARTICLE = /^(?:an?|the|with)$/;

/** Does the sentence say more than one thing? */
export const compound = (items: readonly Item[], kind: Claim['kind']): boolean =>
  items.some(
    (item, i) =>
      JOINS.test(item.word) ||
      (kind === 'property' && PROPERTY_JOINS.test(item.word)) ||
      ((kind === 'direction' || kind === 'comparison') && TIMES.test(item.word)) ||
      reason(items, i) ||
      another(items, i, kind),
  );

/** "As 3-0 is thicker, …", "…, as it has fewer zeros": not the "as" of "as thick as". */
const reason = (items: readonly Item[], i: number): boolean => {
  const before = items[i - 1];
  return items[i]!.word === 'as' && (before === undefined || before.kind === 'punctuation');
};

/** "and absorbable", "and thinner than 5-0"; sizes joined by "and" are one side of a comparison. */
function another(items: readonly Item[], i: number, kind: Claim['kind']): boolean {
  if (items[i]!.word !== 'and' || i === 0) return false;
  const next = ARTICLE.test(items[i + 1]?.word ?? '') ? items[i + 2] : items[i + 1];
  // "one and the same" is one thing.
  if (items[i - 1]!.word === 'one' && next?.word === 'same') return false;
  return kind === 'property' || (kind === 'comparison' && next?.kind !== 'size');
}

/** Once a part of a statement is rightly denied, nothing is known of its other parts. */
export function spared(statements: readonly Statement[]): Statement[] {
  const settled = new Set(
    statements.flatMap(({ claim, stance, verdict }) =>
      stance === 'denied' && verdict === 'agrees' ? [place(claim)] : [],
    ),
  );
  return statements.map((one) =>
    one.stance === 'denied' && one.verdict === 'contradicted' && settled.has(place(one.claim))
      ? { ...one, verdict: 'cannot-tell' }
      : one,
  );
}

const place = ({ span }: Claim): string => `${span.start} ${span.end}`;
