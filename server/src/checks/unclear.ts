/** A number that a reader could take two ways. */

import type { Mention, Reading } from '../mentions/model.ts';
import type { Note } from '../notes/model.ts';
import { type Locale, list, type Phrase, phrase, quote, say, tell } from '../texts/index.ts';
import type { CheckDefinition } from './definition.ts';
import type { Finding, Fix } from './model.ts';
import { UNCLEAR } from './texts/findings.ts';

const ID = 'unclear-size';
const NO_SOURCE = 'common practice, no source';

export const unclear: CheckDefinition = {
  id: ID,
  kind: 'ambiguity',
  severity: 'info',
  title: 'This can be read two ways',
  docs: 'A reader could take the number two ways: “pass a 2” may mean size 2 or 2-0, “14F” a woman of 14 or a 14 French catheter, “18g” a weight or a gauge, “the next gauge up” a wider needle or a higher number, “a green one” two sizes when neither needle nor cannula is named. The fixes write each reading out; the author chooses.',
  run: ({ note, mentions, locale }) =>
    mentions
      .filter((mention) => mention.kind === 'ambiguous' && !struck(note, mention) && !spokenOf(note, mention))
      .map((mention) => toFinding(mention, locale)),
};

/** What is struck out is no longer said. */
const struck = ({ passages }: Note, { passage, span }: Mention): boolean =>
  passages[passage]!.marks.some(
    ({ kind, start, end }) => kind === 'strike' && start <= span.start && span.end <= end,
  );

/** 'Never say "a 24" without its unit', 'with a "one silk" make clear which you mean': the number is what is spoken of. */
function spokenOf({ passages }: Note, { passage, span }: Mention): boolean {
  const { text } = passages[passage]!;
  const before = text.slice(Math.max(0, span.start - REACH), span.start);
  const behind = text.slice(span.end, span.end + REACH);
  return WARNS.test(before) ? QUOTED.test(behind) : OPENED.test(before) && SETTLES.test(behind);
}
const REACH = 60;
const WARNS =
  /\b(?:never|do not|don't|don’t|please do not|avoid|stop|no more) (?:just |only |simply |ever )?(?:say|saying|write|writing|ask(?:ing)? for|order(?:ing)?|call(?:ing)? (?:it|for)|request(?:ing)?)\s["“‘][^"”\n]{0,24}$|["”] is not ["“]$/i;
const QUOTED = /^[^"”’\n]{0,24}["”’]/;
const OPENED = /["“‘][^"”\n]{0,24}$/;
const SETTLES =
  /^[^"”’\n]{0,24}["”’],? [^.\n]{0,24}\b(?:whether|which (?:one |of (?:them|the two) )?(?:you|they|he|she|is|was))\b/;

function toFinding(mention: Mention, locale?: Locale): Finding {
  const readings = either(mention.readings.map((reading) => reading.meant));
  return {
    check: ID,
    kind: 'ambiguity',
    severity: 'info',
    span: mention.source,
    says: say(locale, UNCLEAR.says, { text: quote(mention.text), readings }),
    holds: say(locale, UNCLEAR.holds),
    source: tell(NO_SOURCE, locale),
    sources: [],
    fixes: mention.readings.map((reading) => fixOf(mention, reading, locale)),
    related: [],
    derivation: mention.evidence.map((seen) => ({
      label: 'read',
      text: say(locale, UNCLEAR.evidence, { rule: seen.rule, saw: quote(seen.saw) }),
    })),
  };
}

const fixOf = ({ source }: Mention, { meant, write }: Reading, locale?: Locale): Fix => ({
  title: say(locale, UNCLEAR.fix, { text: quote(write), meaning: meant }),
  safety: 'choice',
  edits: [{ span: source, text: write }],
});

/** "one, as two, or as three". */
const either = (all: readonly Phrase[]): Phrase =>
  phrase(UNCLEAR.either, { first: list(all.slice(0, -1), UNCLEAR.as), last: all.at(-1) ?? '' });
