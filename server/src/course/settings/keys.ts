/**
 * The keys of a course settings file, declared once: reading, the JSON Schema, the editor's completion and the
 * documentation all come from this table.
 */
import { CHECKS, STYLE_KEYS } from '../../checks/index.ts';
import { LANGUAGES } from '../../mentions/words/units.ts';
import { DEVICES, MATERIALS } from '../../sizes/index.ts';

/** Name of the settings file, in any folder of a course. */
export const SETTINGS_FILE = 'sizewright.course.json';

export type Shape =
  | { readonly is: 'flag' }
  | { readonly is: 'patterns' }
  | { readonly is: 'choice'; readonly of: readonly string[] }
  /** A list of at least one. */
  | { readonly is: 'choices'; readonly of: readonly string[] }
  /** `keys` undefined: any key. */
  | {
      readonly is: 'map';
      readonly keys?: readonly string[];
      readonly of: Shape;
      readonly what: 'check' | 'name';
    }
  | { readonly is: 'group'; readonly keys: readonly Key[] };

export interface Key {
  readonly name: string;
  readonly about: string;
  readonly shape: Shape;
  readonly example: unknown;
}

export const LEVELS = ['error', 'warning', 'info', 'hint', 'off'] as const;

const device: Shape = { is: 'choice', of: DEVICES };
const material: Shape = { is: 'choice', of: MATERIALS.map(({ id }) => id) };

const ASSUME: readonly Key[] = [
  { name: 'device', about: 'Device meant when a note does not say.', shape: device, example: 'needle' },
  {
    name: 'suture',
    about: 'Which diameters a suture size has when a note does not name the material.',
    shape: { is: 'choice', of: ['synthetic', 'collagen'] },
    example: 'synthetic',
  },
];

const NAMES: readonly Key[] = [
  {
    name: 'materials',
    about: 'Local names of suture materials, each with its generic material.',
    shape: { is: 'map', of: material, what: 'name' },
    example: { 'our blue monofilament': 'polypropylene' },
  },
  {
    name: 'devices',
    about: 'Local names of devices, each with the kind of device.',
    shape: { is: 'map', of: device, what: 'name' },
    example: { 'skills-lab drip set': 'cannula' },
  },
];

export const KEYS: readonly Key[] = [
  {
    name: 'notes',
    about: 'Which files below this folder are notes, as patterns. Without it: .md, .markdown, .vtt and .srt.',
    shape: { is: 'patterns' },
    example: ['lectures/**/*.md'],
  },
  {
    name: 'leaveOut',
    about: 'Files and folders below this folder that are not read, as patterns.',
    shape: { is: 'patterns' },
    example: ['drafts/**'],
  },
  {
    name: 'ignoreFiles',
    about: 'Names of files with ignore patterns to honour, one pattern a line as in .gitignore.',
    shape: { is: 'patterns' },
    example: ['.gitignore'],
  },
  {
    name: 'checks',
    about: 'Severity by check; off silences it.',
    shape: {
      is: 'map',
      keys: CHECKS.map(({ id }) => id),
      of: { is: 'choice', of: LEVELS },
      what: 'check',
    },
    example: { [CHECKS[0]!.id]: 'warning' },
  },
  {
    name: 'style',
    about: 'How the course writes its sizes. Nothing about style is reported without it.',
    shape: { is: 'group', keys: STYLE_KEYS },
    example: {},
  },
  {
    name: 'assume',
    about: 'What holds where a note leaves it open. What a note says itself always wins.',
    shape: { is: 'group', keys: ASSUME },
    example: { suture: 'synthetic' },
  },
  {
    name: 'names',
    about: 'Local names of the course.',
    shape: { is: 'group', keys: NAMES },
    example: { materials: { 'our blue monofilament': 'polypropylene' } },
  },
  {
    name: 'languages',
    about:
      'Languages the notes are written in; units in the words of other languages are not read. Without it: all. Statements are read in English: where it is not among them, only sizes set beside one another are judged.',
    shape: { is: 'choices', of: LANGUAGES },
    example: ['en', 'fr'],
  },
  {
    name: 'outermost',
    about: 'True when settings of folders further out do not apply.',
    shape: { is: 'flag' },
    example: true,
  },
];
