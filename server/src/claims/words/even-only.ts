/** Of what it is said that it comes in even or in whole numbers only, and how that is said. */
import type { PartlySeries } from '../../sizes/tables/between.ts';

/** How the things of a series are named; French is named by its numbers. */
const NAMES: Readonly<Record<PartlySeries, string>> = {
  fistula: '(?:(?:av |arteriovenous )?fistula|(?:ha?emo)?dialysis|buttonhole)',
  spinal: '(?:spinal|lumbar puncture)',
  epidural: '(?:epidural|tuohy)',
  dental: 'dental',
  pen: '(?:insulin pen|pen)',
  winged: '(?:winged|butterfly)',
  french: '',
};
const NEEDLES = 'needles?(?: (?:gauges?|sizes?))?';
const FRENCH =
  '(?:(?:the )?french(?: (?:sizes?|numbers?|gauges?|scale|system|series))?|(?:the )?charri[eè]re(?: (?:sizes?|numbers?|scale|system))?|(?:the )?catheter french sizes|sizes in french)';

/** How a series is named in full. */
const subjectOf = (series: PartlySeries): string =>
  series === 'french' ? FRENCH : `${NAMES[series]} ${NEEDLES}`;
/** How a single size of it is named. */
const onesOf = (series: PartlySeries): string =>
  series === 'french'
    ? '(?:french(?: (?:sizes?|numbers?|gauges?))?|frenches|charri[eè]re (?:sizes?|numbers?)|sizes in french)'
    : `${NAMES[series]} needles?`;

const ONLY = '(?:only|always|all|just|exclusively)';
const SO = '(?: (?:therefore|thus|really|of course|indeed|simply))?';
const COMES = `(?:go(?:es)?|comes?|runs?|exists?|(?:is|are)${SO} (?:numbered|made|sold|produced|manufactured))`;
const NONE =
  "(?:there is|there's|there are)(?: (?:simply|really|just|in fact|actually|therefore|thus|of course|indeed))? no";
const GONE =
  "(?:do not|don't|does not|doesn't) exist|(?:are|is) (?:not|never) made|aren't made|isn't made|(?:are|is) (?:a |all )?misprints?";
/** A clause begins here; a person's word before it was looked for already. */
const OPENS =
  '(?:^|[,;:.—–(] )(?:(?:and|but|so|because|since|as|remember|note that|well|also|remember that) (?:, )?)*';
const CLOSES = '(?= ?$| [;:,.!)—–(]| (?:and|but|so|because|since|which)\\b)';

/** What is said of `subject`, or of `they` where the series was named before. */
const comes = (subject: string, numbers: string): string =>
  `${subject} (?:${ONLY} ${COMES} (?:in|by|as) (?:an? )?${numbers}|${COMES}(?: up)? (?:${ONLY} (?:in|by|as) ${numbers}|(?:in|by|as) ${numbers} (?:only|alone|throughout))|(?:is|are)${SO} ${ONLY} (?:an? )?${numbers}|(?:is|are)${SO} ${numbers} only)`;
const EVEN = 'even(?:-numbered)?(?: (?:numbers?|gauges?|sizes?))?';
const WHOLE = '(?:whole|full)(?: (?:numbers?|gauges?|sizes?|frenches))';

const without = (ones: string, subject: string, kind: string, noun: string): readonly string[] => [
  `${NONE} ${kind} ${ones}(?: (?:at all|anywhere|made|on the market))?`,
  `${NONE} such thing as an? ${kind} ${ones}`,
  `${kind} ${ones} (?:${GONE})`,
  `${NONE} ${noun} (?:in|on|among|of) ${subject}`,
  `${subject} (?:has|have|knows?) no ${noun}`,
  `(?:in|on) ${subject} (?:, )?${NONE} ${noun}`,
];
const ODD = '(?:odd|uneven|odd-numbered)';
const ODD_NOUN = '(?:odd (?:ones|numbers|sizes|gauges)|odds)';
const HALF = 'half(?:-sizes?)?';
const HALF_NOUN = '(?:halves|half sizes?|half numbers?|half-sizes)';

const HALF_A_FRENCH = `${NONE} such thing as half a french|french (?:has|knows) only whole (?:numbers|sizes)`;

export interface EvenWay {
  readonly series: PartlySeries;
  readonly absent: 'uneven' | 'half';
  readonly like: RegExp;
  /** The same said of "they", where the sentence before names the series. */
  readonly they: RegExp;
  readonly named: RegExp;
}

const THEY = '(?:they|these|those)(?: all)?';
const of = (text: string): RegExp => new RegExp(`${OPENS}(?:${text})${CLOSES}`);

function waysOf(series: PartlySeries): readonly EvenWay[] {
  const [subject, ones] = [subjectOf(series), onesOf(series)];
  const named = new RegExp(`\\b${ones}\\b`);
  const uneven: EvenWay = {
    series,
    absent: 'uneven',
    named,
    like: of([comes(`(?:all )?${subject}`, EVEN), ...without(ones, subject, ODD, ODD_NOUN)].join('|')),
    they: of(comes(THEY, EVEN)),
  };
  if (series !== 'french') return [uneven];
  const half: EvenWay = {
    series,
    absent: 'half',
    named,
    like: of(
      [comes(`(?:all )?${subject}`, WHOLE), HALF_A_FRENCH, ...without(ones, subject, HALF, HALF_NOUN)].join(
        '|',
      ),
    ),
    they: of(comes(THEY, WHOLE)),
  };
  return [uneven, half];
}

const SERIES: readonly PartlySeries[] = [
  'fistula',
  'spinal',
  'epidural',
  'dental',
  'pen',
  'winged',
  'french',
];
export const EVEN_WAYS: readonly EvenWay[] = SERIES.flatMap(waysOf);

/** One of them stands in whatever is said so. */
export const EVEN_WORDS: readonly string[] =
  'even even-numbered odd uneven odd-numbered odds half halves whole full half-size half-sizes'.split(' ');
