/** What a check is: a name, its words for readers, and a function from what was read to what is reported. */

import type { Statement } from '../claims/model.ts';
import type { Mention } from '../mentions/model.ts';
import type { Note } from '../notes/model.ts';
import type { Locale } from '../texts/index.ts';
import type { Finding, FindingKind, Severity } from './model.ts';

/** The ways a house may choose to write each kind of size. Settings, schema and editor read this table. */
export const STYLE_KEYS = [
  {
    name: 'usp',
    about: 'Suture sizes with more than one zero.',
    shape: { is: 'choice', of: ['2-0', '2/0'] },
    example: '2-0',
  },
  {
    name: 'gauge',
    about: 'Gauge numbers and their unit.',
    shape: { is: 'choice', of: ['18 G', '18G', '18-gauge'] },
    example: '18 G',
  },
  {
    name: 'french',
    about: 'French numbers and their unit.',
    shape: { is: 'choice', of: ['14 Fr', '14Fr', '14 Ch', '14-French'] },
    example: '14 Fr',
  },
  {
    name: 'millimetre',
    about: 'The space before mm.',
    shape: { is: 'choice', of: ['0.9 mm', '0.9mm'] },
    example: '0.9 mm',
  },
] as const;

/** How a house writes its sizes. Absent keys leave the author free. */
export interface HouseStyle {
  /** USP with more than one zero. */
  readonly usp?: '2-0' | '2/0';
  readonly gauge?: '18 G' | '18G' | '18-gauge';
  readonly french?: '14 Fr' | '14Fr' | '14 Ch' | '14-French';
  readonly millimetre?: '0.9 mm' | '0.9mm';
}

export interface CheckInput {
  readonly note: Note;
  readonly mentions: readonly Mention[];
  readonly statements: readonly Statement[];
  readonly style?: HouseStyle;
  /** Language of what is said; English when it is not given. */
  readonly locale?: Locale;
}

export interface CheckDefinition {
  readonly id: string;
  readonly kind: FindingKind;
  readonly severity: Severity;
  readonly title: string;
  /** What it reports, what it leaves alone, and an example: Markdown for hovers and the README. */
  readonly docs: string;
  readonly run: (input: CheckInput) => Finding[];
}
