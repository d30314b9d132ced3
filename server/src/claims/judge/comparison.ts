/** Comparisons of named sizes: on the order of one system, or on intervals across systems. */

import type { Context } from '../../mentions/model.ts';
import type { Note, Span } from '../../notes/model.ts';
import { finds } from '../../notes/patterns.ts';
import { compareThickness, label, outerDiameter } from '../../sizes/index.ts';
import type { Lens, Size, Thickness } from '../../sizes/model.ts';
import { type Part, type Phrase, phrase, quote, tell } from '../../texts/index.ts';
import type { Axis, ComparisonClaim, Operand, Relation, Verdict } from '../model.ts';
import { COMPARISON, OUTCOME } from '../texts/comparison.ts';
import { cannotTell, intervalWords, type Judgement, lensOf, sourceNames, unanimous } from './model.ts';
import { swapEdit } from './swap.ts';
import { relationWords, ruleWords, sizeWords } from './words.ts';

export function judgeComparison(claim: ComparisonClaim, note: Note, context?: Context): Judgement {
  const [left, right] = spoken(claim);
  const relation = relationWords(spokenAxis(claim), claim.relation);
  const says = phrase(COMPARISON.says, { left, relation, right });
  if (!judged(claim, note)) return cannotTell(says, phrase(COMPARISON.unsettled));
  const lenses = [lensOf(claim.left, context), lensOf(claim.right, context)] as const;
  const pairs = claim.left.sizes.flatMap((a) =>
    claim.right.sizes.map((b) => ({ a, b, ...compared(a, b, lenses, claim.axis) })),
  );
  const verdicts = pairs.map((pair) => verdictOf(pair.result, claim.relation));
  const broken = claim.each ? verdicts.indexOf('contradicted') : -1;
  const verdict = broken >= 0 ? 'contradicted' : (unanimous(verdicts) ?? 'cannot-tell');
  const worst = pairs[Math.max(broken, 0)];
  if (!worst) return cannotTell(says, '');
  // Where the two are the same, the opposite word would be as wrong.
  const opposite = claim.relation !== 'same' && worst.result !== 'same';
  const swap = claim.word && opposite ? swapEdit(note, claim.word) : undefined;
  return {
    verdict,
    says,
    holds: holdsWords(worst.a, worst.b, worst.result, spokenAxis(claim), lenses),
    source: sourceNames(worst.sources) || ruleWords(worst.a, worst.b),
    sources: worst.sources,
    ...(swap ? { repair: swap } : {}),
    steps: [
      { label: 'rule', text: ruleWords(worst.a, worst.b) },
      {
        label: 'value',
        text: phrase(COMPARISON.value, {
          left: label(worst.a),
          outcome: phrase(OUTCOME[worst.result]),
          right: label(worst.b),
          because: worst.ground,
        }),
        sources: worst.sources,
      },
    ],
  };
}

/** What goes by its inside is said to be wider or narrower inside, not thicker or thinner. */
const spokenAxis = ({ axis, left }: ComparisonClaim): Axis =>
  axis === 'outer' && left.sizes[0]?.system === 'tube-id' ? 'bore' : axis;

/** The two sides in words; as written when they are two ways to write one size. */
function spoken({ left, right }: ComparisonClaim): [Part, Part] {
  const words: [Part, Part] = [sizeWords(left), sizeWords(right)];
  const [a, b] = [left.mentions[0]?.text, right.mentions[0]?.text];
  return tell(words[0]) === tell(words[1]) && a && b ? [quote(bareName(a)), quote(bareName(b))] : words;
}
const bareName = (text: string): string => text.replace(/^(?:size|number|no\.?)\s/i, '');

function compared(a: Size, b: Size, lenses: readonly [Lens, Lens], axis: Axis): Thickness {
  const found = compareThickness(a, b, lenses[0], lenses[1]);
  const across = a.system !== b.system;
  // Bore, flow and strength follow the number only inside one system and one kind of device.
  if (across && axis !== 'outer' && axis !== 'hole') return { ...found, result: 'cannot-tell' };
  if (
    axis !== 'outer' &&
    axis !== 'hole' &&
    lenses[0].device !== lenses[1].device &&
    lenses[0].device &&
    lenses[1].device
  )
    return { ...found, result: 'cannot-tell' };
  return found;
}

function verdictOf(result: Thickness['result'], relation: Relation): Verdict {
  if (result === 'cannot-tell') return 'cannot-tell';
  const said = relation === 'more' ? 'thicker' : relation === 'less' ? 'thinner' : 'same';
  return said === result ? 'agrees' : 'contradicted';
}

const LENGTH =
  /\b(?:block\w*|clot(?!s\b)\w*|clots (?:off|up|sooner|earlier|first|faster|(?:more|less) (?:often|than))|kink\w*|occlu\w*|heal\w*|fail\w*|infect\w*|tissued|dislodge\w*|longer|shorter|long|short|length|midlines?|piccs?|central|tunnell?ed)\b/i;
/** Help and thickness of the fluid count where they may be of one side only, not where a sentence opens with them. */
const HELPED = /\b(?:mmhg|gravity|squeezed?|warm(?:ed)?|cold|viscosity|viscous)\b/i;
const OPENING = 14;
/** "when the bag is squeezed": of both sides alike. */
const OF_BOTH =
  /\b(?:when|if|once|while|because|since|as) (?:the|your|our|a) (?:same )?(?:bag|fluid|infusion|drip) (?:is|was|gets) (?:being )?(?:squeezed|warm|warmed|cold)\b|\b(?:by|under|with|on|through) gravity ?:/gi;
const SAME_LENGTH =
  /\b(?:same|equal|identical|similar|like|equally)[ -](?:length|long)|lengths? (?:being )?(?:equal|the same)|length for length|as long as each other|of one length|(?:equal|same|like|identical) \w+ and length/i;

/** One may hang under pressure and the other not, unless the text says that both do. */
const PRESSED =
  /\bpressure[ -](?:bags?|cuffs?|infus\w+)\b|\bhangs? free\b|\b(?:through|behind|with) (?:an?|the|its|our) (?:[a-z-]+ )?(?:valve|filter|extension|connector)\b|\bagainst (?:an?|the|its) (?:[a-z]+ )?(?:valve|wall)\b/i;
/** One of these against one of those: not only the widths differ. */
const THICKER_FLUID = /\b(?:oil|blood|cells|albumin|plasma|syrup|honey|pus|contrast|gelatine?|starch)\b/i;
const THINNER_FLUID = /\b(?:water|saline|crystalloids?|urine|air|gas)\b/i;
/** What runs into the marrow meets another resistance. */
const MARROW = /\b(?:io|intraosseous|marrow)\b/i;
const ALIKE = /\b(?:both|each|all|same|equal\w*|identical|either|alike)\b/i;

/** "takes longer" is time, not length; "less likely to kink" is told beside the flow. */
const LASTS =
  /\b(?:takes?|took|needs?|lasts?|wait)s?\s+(?:\w+ )?(?:longer|shorter)\b|\btimes?\b(?:\s+\S+){0,6}?\s+(?:is|are|was|gets)\s+(?:\w+ )?(?:longer|shorter)\b|\b(?:twice|half|times|nearly|almost) as long\b|\b(?:less|more) (?:likely|prone|apt|liable|inclined) to \w+/gi;

/** The bore depends on the wall too, unless both are of one make: "a 20 Fr three-way, an 18 Fr three-way". */
const WALL = /\bwall(?:ed|s)?\b|\bsilicone\b|\blatex\b/i;
const WAYS = /\b(?:two|three|2|3)-way\b/gi;

function wallsDiffer(text: string): boolean {
  const ways = text.match(WAYS) ?? [];
  return WALL.test(text) || ways.length === 1 || new Set(ways.map((way) => way.toLowerCase())).size > 1;
}

/** Threads laid double are thicker than one, and stronger. */
const MANIFOLD = /\b(?:doubled|looped|folded|(?:strands|loops|plies|lengths) of)\b/i;
/** The strength of a thread changes with its age and with how it is tied. */
const WORN =
  /\b(?:days?|weeks?|months?|years?|fresh(?:ly)?|new|old|frayed|worn|crushed|damaged|wet|knot(?:s|ted)?|tied|was|single|two strands)\b/i;
/** ", it snaps if you throw the knot hard": what comes of it. */
const FATE =
  /[,;:] ?(?:and |so )?(?:it|they|which) (?:will |can )?(?:snaps?|breaks?|parts|gives way)\b[^.;]*[.;]?\s*$/i;

/** A stretch of the note, whatever lines it is broken into. */
const writtenIn = ({ text }: Note, { start, end }: Span): string =>
  text.slice(start, end).replace(/\s+/g, ' ');

/** Flow depends on length too; strength on the material too. */
function judged(claim: ComparisonClaim, note: Note): boolean {
  if (claim.axis === 'other' || claim.axis === 'number') return false;
  const system = claim.left.sizes[0]?.system;
  const said = writtenIn(note, claim.span);
  if (finds(MANIFOLD, said)) return false;
  if (claim.axis === 'strength' && WORN.test(said.replace(FATE, ' '))) return false;
  if (claim.axis === 'strength')
    return system === 'usp' && claim.left.material === claim.right.material && claim.left.sizes.length === 1;
  if (claim.axis === 'bore' && wallsDiffer(writtenIn(note, claim.span))) return false;
  if (claim.axis !== 'flow') return true;
  const text = writtenIn(note, claim.span).replace(LASTS, ' ');
  if (THICKER_FLUID.test(text) && THINNER_FLUID.test(text)) return false;
  if (MARROW.test(text)) return false;
  if (PRESSED.test(text) && !ALIKE.test(text)) return false;
  if (system === 'usp' || helped(claim, note)) return false;
  return !LENGTH.test(text) || SAME_LENGTH.test(text) || lengthsAgree(claim, note);
}

const HINDERED =
  /\b(?:block\w*|clot(?!s\b)\w*|kink\w*|occlu\w*|heal\w*|fail\w*|infect\w*|tissued|dislodge\w*|longer|shorter|length|midlines?)\b/i;
const LONG = /\b(?:long|central|piccs?|tunnell?ed)\b/i;
const SHORT = /\bshort\b/i;

/** "The long 18 G lumen of a central line runs faster than a short 14 G": the narrower is the longer as well. */
function lengthsAgree({ left, right, span }: ComparisonClaim, note: Note): boolean {
  const [a, b] = [left.sizes[0], right.sizes[0]];
  if (!a || !b || a.system !== b.system || HINDERED.test(fromFirst(left, right, span, note))) return false;
  const wider = compareThickness(a, b, {}, {}).result;
  if (wider !== 'thicker' && wider !== 'thinner') return false;
  const [wide, narrow] = wider === 'thicker' ? [left, right] : [right, left];
  const [atWide, atNarrow] = [besideIn(note, span, wide, narrow), besideIn(note, span, narrow, wide)];
  return !LONG.test(atWide) && !SHORT.test(atNarrow) && (LONG.test(atNarrow) || SHORT.test(atWide));
}

/** The words of a side: from a little before it up to the next mark or the other side. */
function besideIn(note: Note, span: Span, { span: own }: Operand, { span: other }: Operand): string {
  const from = Math.max(span.start, own.start - OPENING, other.end <= own.start ? other.end : 0);
  const to = Math.min(span.end, own.end + REACH, other.start >= own.end ? other.start - OPENING : span.end);
  const behind =
    note.text.slice(own.end, Math.max(own.end, to)).split(/[.;,:!?]|\bthan\b|\bbecause\b/)[0] ?? '';
  return `${note.text.slice(from, own.start)} ${behind}`;
}
const REACH = 40;

function helped({ left, right, span }: ComparisonClaim, note: Note): boolean {
  const whole = writtenIn(note, span);
  const even = EVEN.exec(whole)?.[0].length ?? 0;
  const said = fromFirst(left, right, { ...span, start: span.start + even }, note).replace(OF_BOTH, ' ');
  // By gravity runs what nothing presses.
  return HELPED.test(PUSHED.test(whole) ? said : said.replace(/\bgravity\b/gi, ' '));
}
/** "With venous pressure held at 150 mmHg, the 17 G …": of both sides alike. */
const EVEN =
  /^\W{0,4}(?:with|under|at) [^,.;]{0,60}\b(?:held|kept|fixed|constant|same|equal|given)\b[^,.;]{0,40},/i;
const PUSHED = /\b(?:press\w*|pump\w*|squeez\w*|syringes?|pushed|by hand|injectors?|mmhg)\b/i;

/** The statement from a little before its first side on. */
function fromFirst(left: Operand, right: Operand, span: Span, note: Note): string {
  const first = Math.min(left.span.start, right.span.start) - OPENING;
  return writtenIn(note, { start: Math.max(span.start, first), end: span.end });
}

function holdsWords(
  a: Size,
  b: Size,
  result: Thickness['result'],
  axis: Axis,
  lenses: readonly [Lens, Lens],
): Phrase {
  if (result === 'cannot-tell') return phrase(COMPARISON.alike, { left: label(a), right: label(b) });
  if (a.system === b.system && a.value === b.value) return phrase(COMPARISON.oneSize, { size: label(a) });
  const relation: Relation = result === 'thicker' ? 'more' : result === 'thinner' ? 'less' : 'same';
  const shown = (size: Size, lens: Lens): Part => {
    const interval = LENGTHS.has(size.system) ? undefined : outerDiameter(size, lens);
    return interval
      ? phrase(COMPARISON.measured, { size: label(size), measure: intervalWords(interval) })
      : label(size);
  };
  return phrase(COMPARISON.holds, {
    left: shown(a, lenses[0]),
    relation: relationWords(axis, relation),
    right: shown(b, lenses[1]),
    rule: ruleWords(a, b),
  });
}
const LENGTHS = new Set(['millimetre', 'inch', 'wire-inch']);
