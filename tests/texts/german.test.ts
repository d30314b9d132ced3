/** German is complete for whatever the tables and the notes can bring forth, and changes nothing but words. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { aboutCheck, CHECKS } from '../../server/src/checks/index.ts';
import { CATEGORIES, FORMULAS } from '../../server/src/claims/index.ts';
import { USUAL } from '../../server/src/claims/words/usual.ts';
import { type Analysis, analyseWhole, DEFAULT_SETTINGS } from '../../server/src/course/index.ts';
import {
  actionsIn,
  completionsAt,
  hintsIn,
  hoverAt,
  outline,
  tooltip,
} from '../../server/src/editor/index.ts';
import { plainOf } from '../../server/src/editor/plain.ts';
import { DEVICE_WORDS, TARGET_WORDS } from '../../server/src/editor/texts/words.ts';
import {
  CAUTION,
  COLOURS,
  convert,
  DEVICES,
  DIRECTION_WORDS,
  innerDiameter,
  MATERIALS,
  outerDiameter,
  POINTS,
  SYSTEM_NAMES,
} from '../../server/src/sizes/index.ts';
import type { Lens, Size } from '../../server/src/sizes/model.ts';
import { GERMAN, german, isKnown, localeOf, phrase, quote, say, tell } from '../../server/src/texts/index.ts';
import { ROOT } from '../house/source.ts';

/** Names that are the same in both languages. */
const ALIKE = /^(?:ePTFE|UHMWPE|PVDF|USP|mm|Hegar|ISO [\d-]+|USP <861>|AWG|SWG|1 Fr = 1\/3 mm)$/;

/** Known as a whole, or strung together of what is. */
const told = (english: string): boolean =>
  isKnown(english) ||
  ALIKE.test(english) ||
  ['; ', ', '].some((mark) => english.includes(mark) && english.split(mark).every(told));

describe('words of the tables', () => {
  const lenses: Lens[] = [
    {},
    ...DEVICES.map((device) => ({ device })),
    ...MATERIALS.map(({ id }) => ({ material: id })),
  ];
  const values: Record<string, readonly number[]> = {
    usp: Array.from({ length: 24 }, (_, i) => i - 12),
    'ep-metric': [0.1, 0.5, 1, 2, 3, 3.5, 5],
    'needle-gauge': Array.from({ length: 30 }, (_, i) => i + 6),
    'wire-gauge': [10, 18, 24],
    french: [4, 6, 7.5, 14, 24],
    millimetre: [0.3, 0.9, 2],
    inch: [0.035, 1],
    'wire-inch': [0.014, 0.035],
    'tube-id': [3.5, 7],
    hegar: [4, 8],
  };
  const sizes = Object.entries(values).flatMap(([system, all]) =>
    all.map((value) => ({ system, value }) as Size),
  );
  const measured = sizes.flatMap((size) =>
    lenses.flatMap((lens) => [outerDiameter(size, lens), innerDiameter(size, lens), ...convert(size, lens)]),
  );

  it.each(
    Object.entries({
      devices: Object.values(DEVICE_WORDS),
      columns: Object.values(TARGET_WORDS),
      systems: Object.values(SYSTEM_NAMES),
      directions: Object.values(DIRECTION_WORDS),
      colours: Object.values(COLOURS).flatMap((rows) => rows.flatMap(({ colours }) => colours)),
      materials: MATERIALS.map(({ name }) => name),
      points: POINTS.map(({ name }) => name),
      uses: POINTS.flatMap(({ use, fit, unfit }) => [use, ...fit, ...unfit]),
      rules: FORMULAS.flatMap(({ says, holds, standard }) => [says, holds, standard]),
      classes: CATEGORIES.flatMap(({ label, holds }) => [label, holds]),
      habits: USUAL.map(({ holds }) => holds),
      standards: measured.flatMap((each) => each?.standard ?? []),
      cautions: [CAUTION, ...measured.flatMap((each) => each?.caution ?? [])],
    }),
  )('%s', (_, words) => {
    expect(words.length).toBeGreaterThan(0);
    expect([...new Set(words)].filter((word) => !told(word))).toEqual([]);
  });

  it('values keep their numbers, with a comma', () => {
    const numbers = (text: string): string[] => text.match(/\d+(?:[.,]\d+)?/g) ?? [];
    for (const { text } of measured.filter((each) => each !== undefined && 'text' in each) as {
      text: string;
    }[]) {
      expect(numbers(german(text))).toEqual(numbers(text).map((each) => each.replace('.', ',')));
      expect(german(text)).not.toMatch(/\b(?:about|inside|accepts|needle|catheter|metric|gut|silk)\b/);
    }
  });

  it('stand in one table each', () => {
    const all = GERMAN.flatMap((table) => Object.keys(table));
    expect(all.filter((word, i) => all.indexOf(word) !== i)).toEqual([]);
  });

  it.each(CHECKS)('the page of $id', (check) => {
    const { title, docs } = aboutCheck(check, 'de');
    expect(title).not.toBe(check.title);
    expect(docs).toMatch(/\b(?:ist|die|der|das|ein|eine|nicht|kein|keine)\b/);
    expect(aboutCheck(check)).toEqual({ title: check.title, docs: check.docs });
  });
});

const notesIn = (folder: string): [string, string][] =>
  readdirSync(join(ROOT, folder))
    .filter((name) => name.endsWith('.md'))
    .map((name) => [name, readFileSync(join(ROOT, folder, name), 'utf8')]);

/** Words that no German sentence has, outside of what is quoted from the note. */
const ENGLISH =
  /\b(?:the|is|are|of|than|and|or|to|says|with|which|this|that|by|from|needle|thread|size|source)\b/i;
const unquoted = (text: string): string =>
  text.replace(/„[^“]*“|“[^”]*”|\([^)]*\)|`[^`]*`|!\[[^\]]*\]\([^)]*\)|<!--.*?-->/g, '');

/** Everything an author is shown about a note, for its findings and at each of its sizes. */
function shown({ statements, findings }: Analysis): string[] {
  return [
    ...statements.flatMap(({ says, holds, source, derivation }) => [
      says,
      holds,
      source,
      ...derivation.filter(({ label }) => label === 'value' || label === 'rule').map(({ text }) => text),
    ]),
    ...findings.flatMap(({ says, holds, source, fixes }) => [
      says,
      holds,
      source,
      ...fixes.map((fix) => fix.title),
    ]),
  ];
}

const bare = ({ statements, findings }: Analysis) => ({
  statements: statements.map(({ claim, stance, verdict, sources, repair }) => [
    claim.kind,
    claim.span,
    claim.focus,
    stance,
    verdict,
    sources,
    repair?.edit,
  ]),
  findings: findings.map(({ check, kind, severity, span, sources, fixes, deliberate }) => [
    check,
    kind,
    severity,
    span,
    sources,
    fixes.map(({ edits, safety }) => [edits, safety]),
    deliberate,
  ]),
});

const GERMAN_SETTINGS = { ...DEFAULT_SETTINGS, context: { locale: 'de' } } as const;

describe.each([...notesIn('tests/claims/bank'), ...notesIn('tests/course')])('%s', (_, text) => {
  const english = analyseWhole(text);
  const inGerman = analyseWhole(text, GERMAN_SETTINGS);

  it('is read and judged alike in both languages', () => {
    expect(bare(inGerman)).toEqual(bare(english));
  });

  it('has no English sentence and no point in a number', () => {
    const words = shown(inGerman).map(unquoted);
    expect(words.filter((each) => ENGLISH.test(each) || /\d\.\d/.test(each))).toEqual([]);
  });
});

describe('what the editor shows', () => {
  const text = notesIn('tests/course')
    .map(([, note]) => note)
    .join('\n\n');
  const analysis = analyseWhole(text, GERMAN_SETTINGS);
  const all = { start: 0, end: text.length };

  it('hovers', () => {
    for (const mention of analysis.mentions) {
      const { markdown } = hoverAt(analysis, mention.source.start, { picture: true, locale: 'de' })!;
      // Works are cited in the language they are in.
      const words = unquoted(plainOf(markdown)).replace(/^Quelle:.*$/gm, '');
      expect(words.split('\n').filter((line) => ENGLISH.test(line))).toEqual([]);
    }
  });

  it('tooltips, hints, completions, the outline', () => {
    const words = [
      ...analysis.mentions
        .filter(({ kind }) => kind !== 'ambiguous')
        .map((mention) => tooltip(mention, 'de')),
      ...hintsIn(analysis, all, 'de').map(({ because }) => because),
      ...completionsAt(analysis, text.length, [], 'de').map(({ detail }) => detail),
      ...outline(analysis, 'de').flatMap(({ sizes }) => sizes.map(({ detail }) => detail)),
    ];
    expect(words.length).toBeGreaterThan(100);
    expect(words.filter((each) => ENGLISH.test(each))).toEqual([]);
  });

  it('fixes write what they wrote, under a German title', () => {
    const [english, inGerman] = [undefined, 'de' as const].map((locale) => actionsIn(analysis, all, locale));
    expect(inGerman!.map(({ edits }) => edits)).toEqual(english!.map(({ edits }) => edits));
    expect(
      inGerman!.filter(
        ({ title }) =>
          !/ (?:schreiben|umrechnen|einfügen|bringen|entfernen|lassen …)(?: \(.*\))?$/.test(title),
      ),
    ).toEqual([]);
  });
});

describe('telling', () => {
  const TEXT = { en: 'From {a} to {^b}.', de: 'Von {a} bis {^b}.' } as const;

  it('fills slots in the language', () => {
    expect(say('en', TEXT, { a: 0.5, b: 'silk' })).toBe('From 0.5 to Silk.');
    expect(say('de', TEXT, { a: 0.5, b: 'silk' })).toBe('Von 0,5 bis Seide.');
    expect(say(undefined, TEXT, { a: phrase({ en: 'x', de: 'y' }), b: '' })).toBe('From x to .');
  });

  it('leaves quoted text alone, and slots in it', () => {
    expect(tell(quote('silk 0.5 {a}'), 'de')).toBe('silk 0.5 {a}');
    expect(say('de', TEXT, { a: quote('{b}'), b: quote('$&') })).toBe('Von {b} bis $&.');
  });

  it.each([
    ['de', 'de'],
    ['de-AT', 'de'],
    ['DE_ch', 'de'],
    ['den', 'en'],
    ['fr', 'en'],
    [undefined, 'en'],
    [7, 'en'],
  ])('%s is told in %s', (tag, locale) => expect(localeOf(tag)).toBe(locale));
});
