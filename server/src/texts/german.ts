/** Words of the tables in German: the whole if it is known, else its parts, else the number with its comma. */
import { CAUTIONS } from './words/cautions.ts';
import { CLASSES } from './words/classes.ts';
import { COLOURS } from './words/colours.ts';
import { DEVICES } from './words/devices.ts';
import { MATERIALS } from './words/materials.ts';
import { POINTS } from './words/points.ts';
import { RULES } from './words/rules.ts';
import { SERIES } from './words/series.ts';
import { SOURCES } from './words/sources.ts';
import { STANDARDS } from './words/standards.ts';
import { SYSTEMS } from './words/systems.ts';
import { AFTER, BEFORE } from './words/values.ts';

/** English words of the tables → German, one table an idea. A word stands in one of them. */
export const GERMAN: readonly Readonly<Record<string, string>>[] = [
  SYSTEMS,
  DEVICES,
  MATERIALS,
  POINTS,
  COLOURS,
  STANDARDS,
  CAUTIONS,
  SERIES,
  RULES,
  CLASSES,
  SOURCES,
];

const KNOWN: ReadonlyMap<string, string> = new Map(GERMAN.flatMap((table) => Object.entries(table)));

/** True for words the tables know as a whole. */
export const isKnown = (english: string): boolean => KNOWN.has(english);

/** What is not known stays as it is, but for the comma in numbers. */
export function german(english: string): string {
  const whole = KNOWN.get(english);
  if (whole !== undefined) return whole;
  for (const mark of JOINTS) {
    const parts = english.split(mark);
    if (parts.length > 1 && parts.some((part) => KNOWN.has(part))) return parts.map(german).join(mark);
  }
  return withComma(affixed(english));
}

/** How words of several tables are strung together. */
const JOINTS = ['; ', ', '];

const withComma = (text: string): string => text.replace(/([0-9])\.(?=[0-9])/g, '$1,');

/** "about 3 Fr", "0.8 mm (needle)": a value with a word before or behind it. */
function affixed(text: string): string {
  const before = BEFORE.find(([english]) => text.startsWith(english) && text.length > english.length);
  if (before) return before[1] + affixed(text.slice(before[0].length));
  const after = AFTER.find(([english]) => text.endsWith(english) && text.length > english.length);
  return after ? affixed(text.slice(0, -after[0].length)) + after[1] : text;
}
