/** JUnit XML, as continuous integration servers read it: a suite a note, a case a finding. */
import { hostname } from 'node:os';
import type { NoteResult, PlacedFinding } from '../result.ts';
import { isOpen, type ReportKind } from './model.ts';

const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;
/** Controls and direction overrides that XML can hold: written as references, so that no terminal obeys them. */
const UNSEEN = /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;
const MARKUP: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\n': '&#10;',
  '\r': '&#13;',
  '\t': '&#9;',
};

/** Text inside an attribute or element. Lone surrogates and what XML 1.0 cannot hold become a replacement sign. */
export function xml(text: string): string {
  return text
    .replace(NOT_XML, '\ufffd')
    .replace(/[&<>"\n\r\t]/g, (sign) => MARKUP[sign]!)
    .replace(UNSEEN, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** Seconds since 1970 may be given for reports that come out the same every time (SOURCE_DATE_EPOCH). */
function timestamp(): string {
  const fixed = Number(process.env.SOURCE_DATE_EPOCH ?? Number.NaN);
  return (Number.isFinite(fixed) ? new Date(fixed * 1000) : new Date()).toISOString().slice(0, 19);
}

function failure(one: PlacedFinding): string {
  const { line, column } = one.place;
  const body = `${one.says} ${one.holds}\n${one.source}\n${line}:${column}: ${one.excerpt}`;
  return `<failure message="${xml(one.says)}" type="${xml(one.check)}">${xml(body)}</failure>`;
}

function testcase(path: string, one: PlacedFinding): string {
  const name = `${one.place.line}:${one.place.column} ${one.check}`;
  const body = isOpen(one) ? failure(one) : '<skipped/>';
  return `    <testcase name="${xml(name)}" classname="${xml(path)}" time="0">${body}</testcase>\n`;
}

function suite({ path, findings }: NoteResult, id: number, head: string): string {
  const failures = findings.filter(isOpen).length;
  const cases = findings.map((one) => testcase(path, one)).join('');
  const clean = `    <testcase name="sizes" classname="${xml(path)}" time="0"/>\n`;
  const counts = `tests="${Math.max(1, findings.length)}" failures="${failures}" errors="0" skipped="${findings.length - failures}"`;
  return [
    `  <testsuite id="${id}" package="sizewright" name="${xml(path)}" ${head} ${counts} time="0">\n`,
    '    <properties/>\n',
    cases || clean,
    '    <system-out/>\n    <system-err/>\n  </testsuite>\n',
  ].join('');
}

export const junitReport: ReportKind = () => {
  const head = `timestamp="${timestamp()}" hostname="${xml(hostname() || 'localhost')}"`;
  let id = 0;
  return {
    begin: () => '<?xml version="1.0" encoding="UTF-8"?>\n<testsuites>\n',
    note: (result) => suite(result, id++, head),
    end: () => '</testsuites>\n',
  };
};
