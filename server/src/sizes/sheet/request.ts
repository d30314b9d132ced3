/** What a sheet is to show: a subject and its sizes, as an author writes them in a comment: "gauge 14 16 18". */
import { type Phrase, phrase, quote } from '../../texts/index.ts';
import { parseValue } from '../format.ts';
import type { Device, Lens, Size, System } from '../model.ts';
import { neighbours } from '../neighbours.ts';
import { REQUEST } from '../texts/sheets.ts';

export type Subject = 'usp' | 'metric' | 'gauge' | 'needle' | 'cannula' | 'french' | 'wire' | 'hegar';

interface SubjectRow {
  readonly system: System;
  readonly device?: Device;
  /** The part of the series shown when no size is chosen, thinnest first. */
  readonly from: string;
  readonly to: string;
}

export const SUBJECTS: Readonly<Record<Subject, SubjectRow>> = {
  usp: { system: 'usp', from: '8-0', to: '2' },
  metric: { system: 'ep-metric', from: '0.4', to: '5' },
  gauge: { system: 'needle-gauge', from: '30', to: '14' },
  needle: { system: 'needle-gauge', device: 'needle', from: '30', to: '14' },
  cannula: { system: 'needle-gauge', device: 'cannula', from: '26', to: '14' },
  french: { system: 'french', from: '3', to: '34' },
  wire: { system: 'wire-inch', from: '0.014', to: '0.038' },
  hegar: { system: 'hegar', from: '3', to: '12' },
};

export const SUBJECT_WORDS = Object.keys(SUBJECTS) as readonly Subject[];

export interface Request {
  readonly subject: Subject;
  /** Thinnest first when the whole series is shown, else as chosen. */
  readonly sizes: readonly Size[];
}

export interface Misread {
  readonly problem: Phrase;
}

/** Most sizes in one sheet. */
const MOST = 60;

/** Reads "usp", "gauge 14 16 18", "french 12, 14 Fr". */
export function readRequest(text: string): Request | Misread {
  const [word = '', ...values] = text
    .trim()
    .split(/[\s,;]+/)
    .filter((part) => part !== '');
  const subject = word.toLowerCase();
  if (!isSubject(subject))
    return {
      problem: phrase(REQUEST.noSubject, { word: quote(word), subjects: quote(SUBJECT_WORDS.join(', ')) }),
    };
  if (values.length > MOST) return { problem: phrase(REQUEST.tooMany, { most: MOST }) };
  if (values.length === 0) return { subject, sizes: wholeSystem(subject) };
  const sizes: Size[] = [];
  for (const value of values.filter((each) => !isUnit(each))) {
    const size = parseValue(SUBJECTS[subject].system, value.replace(/[a-z]+\.?$/i, ''));
    if (size === undefined) return { problem: phrase(REQUEST.noSize, { value: quote(value) }) };
    sizes.push(size);
  }
  return { subject, sizes };
}

const isSubject = (word: string): word is Subject => Object.hasOwn(SUBJECTS, word);

const isUnit = (word: string): boolean => /^(?:g|ga|gauge|fr|ch|f|french|in|mm)\.?$/i.test(word);

export const lensOfSubject = (subject: Subject): Lens => {
  const { device } = SUBJECTS[subject];
  return device === undefined ? {} : { device };
};

/** The usual part of a series, from thin to thick. */
export function wholeSystem(subject: Subject): Size[] {
  const { system, from, to } = SUBJECTS[subject];
  const last = parseValue(system, to)!;
  const sizes: Size[] = [];
  let next = parseValue(system, from);
  while (next !== undefined && sizes.length < MOST) {
    sizes.push(next);
    if (next.value === last.value) break;
    next = neighbours(next, lensOfSubject(subject)).thicker;
  }
  return sizes;
}
