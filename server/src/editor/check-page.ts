/** What a check is about, as a page. */
import { CHECKS } from '../checks/index.ts';
import { CAUTION } from './words.ts';

const KINDS = {
  contradiction: 'A contradiction: the text says what no standard allows.',
  ambiguity: 'An unclear size: a reader could take the text in more than one way.',
  style: 'Style and housekeeping.',
} as const;

/** Undefined when there is no such check. */
export function checkPage(id: string): string | undefined {
  const check = CHECKS.find((each) => each.id === id);
  if (check === undefined) return undefined;
  return [
    `# ${check.title}`,
    check.docs,
    KINDS[check.kind],
    `Its id is \`${check.id}\`, its own level \`${check.severity}\`. Change the level in the settings of the editor (\`sizewright.findings.severity\`) or for the whole course in \`sizewright.course.json\` (\`checks\`).`,
    `*${CAUTION}*\n`,
  ].join('\n\n');
}
